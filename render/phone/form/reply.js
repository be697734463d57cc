// The reply as it is sent: plain ASCII, a line for each answer, the way the program reads it back.

// escaped writes a text byte by byte where a mail or a message might change it: "%", "|" and everything
// outside printable ASCII.
function escaped (text, keep) {
  const bytes = new TextEncoder().encode(text)
  return Array.from(bytes, b => keep.test(String.fromCharCode(b)) ? String.fromCharCode(b) : '%' + b.toString(16).toUpperCase().padStart(2, '0')).join('')
}

const plainly = text => escaped(text.trim(), /[ -$&-{}~]/)
const keyText = key => escaped(key, /[A-Za-z0-9\-_.!~*'()]/)

// unit is what a number without one is in.
const unit = () => state.unit || sheet.unit

function replyLine (card, values, note) {
  const parts = values.map(v => plainly(String(v || '')))
  if (note) parts.push(plainly(note))
  while (parts.length && parts[parts.length - 1] === '') parts.pop()
  return (card.n + ' ' + keyText(card.key) + ': ' + parts.join(' | ')).trimEnd()
}

// remark is the note of a card; on a card that was left out it says why.
function remark (card) {
  const a = answerOf(card)
  const why = isSkipped(card) ? ['left out: ' + a.skip] : []
  return why.concat(a.note.trim() || []).join('; ')
}

function replyText () {
  const heads = [['By', state.by], ['On', state.day], ['Unit', unit()]].filter(([, v]) => v.trim())
  const lines = sheet.cards.filter(c => isIn(c) || remark(c)).map(c => replyLine(c, isIn(c) ? answerOf(c).values : ['', ''], remark(c)))
  return ['Reply to sheet ' + sheet.version + ' of job ' + sheet.job + ': ' + plainly(sheet.name)]
    .concat(heads.map(([k, v]) => k + ': ' + plainly(v)), '', lines, '', 'End: ' + countIn(sheet.cards) + ' answers', '').join('\n')
}
