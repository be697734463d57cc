// What a card asks besides its drawing: blanks, a note, and why it is left out.
function fieldsOf (card) {
  return card.blanks.map((b, at) => lengthField(card, at, b.label, b.hint))
}

// photoOf takes the card's plea for a photo to its place below the blanks.
const photoOf = card => cardElement(card).querySelector('.photo')

// notePart is a blank for words, closed until it is wanted.
function notePart (card) {
  const area = make('textarea', {id: card.id + '-note', value: answerOf(card).note, rows: 2, maxLength: 400})
  area.addEventListener('input', () => { answerOf(card).note = area.value; keep() })
  const body = make('div', {hidden: answerOf(card).note === ''}, make('label', {htmlFor: area.id}, 'Note'), area)
  const opener = button('Add a note', () => { body.hidden = false; opener.hidden = true; area.focus() }, {className: 'more', hidden: !body.hidden})
  return make('div', {}, opener, body)
}

const REASONS = ['cannot get at it', 'there is no such thing here', 'no time now, later', 'not sure what is meant']

// skipPart asks why a card is left out; one touch on a reason goes on.
function skipPart (card, goOn) {
  const own = make('input', {id: card.id + '-why', type: 'text', maxLength: 120, value: answerOf(card).skip})
  const take = words => { answerOf(card).skip = words; own.value = words; mark(); keep() }
  const reasons = REASONS.map(r => button(r, () => { take(r); goOn() }))
  const mark = () => reasons.forEach(b => b.setAttribute('aria-pressed', String(b.textContent === answerOf(card).skip)))
  own.addEventListener('input', () => take(own.value))
  const panel = make('fieldset', {hidden: true, className: 'skip'},
    make('legend', {}, 'Why not?'),
    make('div', {className: 'choices'}, ...reasons),
    make('label', {htmlFor: own.id}, 'Or in your own words'), own)
  const opener = button('Not now', () => {
    panel.hidden = !panel.hidden
    opener.setAttribute('aria-expanded', String(!panel.hidden))
    if (!panel.hidden) { panel.scrollIntoView({block: 'nearest'}); reasons[0].focus() }
  }, {'aria-expanded': 'false'})
  mark()
  return {panel, opener}
}
