// The end: what is in, what is missing, and the three ways to send it.
function endParts () {
  const missing = sheet.cards.filter(c => !isIn(c) && !isSkipped(c))
  return [
    make('h2', {}, 'What is in'),
    make('ul', {className: 'groups'}, ...groupRows()),
    ...missingParts(missing),
    make('p', {}, missing.length ? 'Send it now; the rest can follow any time.' : 'All is in. Thank you.'),
    make('p', {className: 'aside'}, 'Goes out as plain text, to the person you choose.'),
    ...sendParts(),
    photoLine(),
    keptLine()
  ].filter(Boolean)
}

function groupRows () {
  const names = Array.from(new Set(sheet.cards.map(groupOf)))
  return names.map(name => {
    const cards = sheet.cards.filter(c => groupOf(c) === name)
    const n = countIn(cards)
    const kind = n === cards.length ? 'in' : n > 0 ? 'part' : 'out'
    return make('li', {}, dot(kind), make('span', {}, name), make('b', {}, n === cards.length ? 'all ' + n : n + ' of ' + cards.length))
  })
}

// SHOWN is how many missing cards are listed at once, so that sending stays in sight.
const SHOWN = 4

function missingParts (missing) {
  if (!missing.length) return []
  const list = make('ul', {className: 'rows'}, ...missing.slice(0, SHOWN).map(missingRow))
  const all = button(`All ${missing.length} that are missing`, () => {
    list.append(...missing.slice(SHOWN).map(missingRow))
    list.children[SHOWN].firstChild.focus()
    all.remove()
  }, {className: 'more'})
  return [
    make('div', {className: 'heading'}, make('h2', {}, 'Still missing'), make('span', {}, 'touch one to take it')),
    list,
    missing.length > SHOWN ? all : ''
  ]
}

function missingRow (card) {
  const row = button('', () => go(card.key))
  row.append(dot('out'), make('span', {}, titleOf(card)))
  return make('li', {}, row)
}

function photoLine () {
  const n = sheet.cards.filter(c => elementOf(c).querySelector('.photo') && isIn(c)).length
  if (!n) return null
  return make('p', {}, n === 1 ? 'Then send the photo in the same message.' : `Then send the ${n} photos in the same message.`)
}

// sendParts share, copy or save the reply. What a browser cannot do is not offered; the text itself can
// always be marked by hand.
function sendParts () {
  const text = replyText()
  const said = make('p', {className: 'said', role: 'status'})
  const shown = make('pre', {tabIndex: 0, hidden: true}, text)
  const show = words => { shown.hidden = false; said.textContent = words }
  const share = () => navigator.share({text}).then(
    () => { said.textContent = 'Handed over.' },
    e => { if (e.name !== 'AbortError') show('This phone does not share from here: copy the text or save the file.') })
  const copy = () => copied(text, shown).then(
    () => { said.textContent = 'Copied. Paste it into a message.' },
    () => show('Mark the text below, copy it, and paste it into a message.'))
  const save = () => { saveFile(text); said.textContent = 'Saved as ' + fileName() + '.' }
  const canShare = typeof navigator.share === 'function'
  return [
    make('div', {className: 'send'},
      button('Send this', canShare ? share : copy, {className: 'main'}),
      button('Copy the text', copy),
      button('Save a file', save)),
    said,
    button('See the text', () => { shown.hidden = !shown.hidden }, {className: 'more'}),
    shown
  ]
}

// copied uses the clipboard where the page may, else the older way of marking and copying.
function copied (text, shown) {
  if (navigator.clipboard && window.isSecureContext) return navigator.clipboard.writeText(text)
  return new Promise((resolve, reject) => {
    shown.hidden = false
    const range = document.createRange()
    range.selectNodeContents(shown)
    getSelection().removeAllRanges()
    getSelection().addRange(range)
    document.execCommand('copy') ? resolve() : reject(new Error('no clipboard'))
  })
}

const fileName = () => 'reply-' + sheet.job + '-' + sheet.version + '.txt'

function saveFile (text) {
  const url = URL.createObjectURL(new Blob([text], {type: 'text/plain;charset=utf-8'}))
  const link = make('a', {href: url, download: fileName()})
  document.body.append(link)
  link.click()
  link.remove()
  setTimeout(() => URL.revokeObjectURL(url), 60000)
}
