// What a card asks besides its blanks: a note, and why it is left out.

// notePart is a blank for words, closed until it is wanted.
function notePart (card) {
  const area = make('textarea', {id: 'note-' + card.n, value: answerOf(card).note, rows: 2, maxLength: 400})
  area.addEventListener('input', () => { answerOf(card).note = area.value; entered() })
  const body = make('div', {hidden: answerOf(card).note === ''}, make('label', {htmlFor: area.id}, 'Note'), area)
  const opener = button('Add a note', () => { body.hidden = false; opener.hidden = true; area.focus() }, {className: 'more', hidden: !body.hidden})
  return make('div', {}, opener, body)
}

const REASONS = ['cannot get at it', 'there is no such thing here', 'no time now, later', 'not sure what is meant']

// skipPart asks why a card is left out; one touch on a reason goes on.
function skipPart (card, goOn) {
  const own = make('input', {id: 'why-' + card.n, type: 'text', maxLength: 120, value: answerOf(card).skip, autocomplete: 'off'})
  const take = words => { answerOf(card).skip = words; mark(); entered() }
  const reasons = REASONS.map(r => button(r, () => { own.value = r; take(r); goOn() }))
  const mark = () => reasons.forEach(b => b.setAttribute('aria-pressed', String(b.textContent === answerOf(card).skip)))
  own.addEventListener('input', () => take(own.value.trim()))
  const panel = make('fieldset', {hidden: true, className: 'skip', id: 'skip-' + card.n},
    make('legend', {}, 'Why not?'),
    make('div', {className: 'choices'}, ...reasons),
    make('label', {htmlFor: own.id}, 'Or in your own words'), own)
  const opener = button('Not now', () => {
    panel.hidden = !panel.hidden
    opener.setAttribute('aria-expanded', String(!panel.hidden))
    if (!panel.hidden) reasons[0].focus()
  }, {'aria-expanded': 'false', 'aria-controls': panel.id})
  mark()
  return {panel, opener}
}
