// The blanks of a card: a length with its echo, a count, or a choice.

// inOwnUnit adds the unit of the tape to a number without one, where the reader knows it by name only.
function inOwnUnit (text) {
  return ['cm', 'm', 'ft'].includes(unit()) && !/[\p{L}"'\u2032\u2033\u2018\u2019\u201c\u201d]/u.test(text) ? text + ' ' + unit() : text
}

const readHere = (card, text) => read(inOwnUnit(text), {unit: unit() === 'mm' || (unit() !== 'in' && sheet.unit === 'mm') ? 'mm' : 'in', field: card.field})

function blanksOf (card) {
  if (card.kind === 'word') return [choiceOf(card, card.words)]
  if (card.kind === 'yes-no') return [choiceOf(card, [['yes', 'yes'], ['no', 'no']])]
  if (card.kind === 'count') return [blank(card, 0, questionOf(card), 'A whole number.', {inputMode: 'numeric'})]
  const first = blank(card, 0, questionOf(card), '', {})
  const other = elementOf(card).querySelector('.other')
  if (!other) return [first]
  const [, again, how] = other.textContent.match(/^(once more,? *)?(.*)$/)
  return [first, blank(card, 1, again ? 'Once more' : 'Now from the other end', sentence(how), {})]
}

const sentence = words => words ? words[0].toUpperCase() + words.slice(1) + '.' : ''

function questionOf (card) {
  const ask = elementOf(card).querySelector('.ask')
  return ask ? ask.textContent : 'What does the tape say?'
}

// blank is one field with its echo below it.
function blank (card, at, label, hint, props) {
  const id = 'blank-' + card.n + '-' + at
  const echo = make('p', {className: 'echo', id: id + '-echo'})
  const offers = make('div', {className: 'offers', role: 'group', 'aria-label': 'Which was meant?'})
  const input = make('input', Object.assign({
    id,
    type: 'text',
    value: answerOf(card).values[at] || '',
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: false,
    enterKeyHint: 'next',
    maxLength: 200,
    'aria-describedby': echo.id
  }, props))
  const retell = () => tell(card, input, echo, offers, hint)
  input.addEventListener('input', () => {
    answerOf(card).values[at] = input.value
    entered()
    retell()
    announce(echo.textContent)
  })
  whenUnitChanges.push(retell)
  retell()
  return make('div', {className: 'field'}, make('label', {htmlFor: id}, label), input, echo, offers)
}

const whenUnitChanges = []

// tell echoes what a blank was understood to mean. It does not judge the value; it asks where it could
// mean two things.
function tell (card, input, echo, offers, hint) {
  fill(offers)
  input.removeAttribute('aria-invalid')
  if (isBlank(input.value)) { echo.textContent = hint; return }
  const got = card.kind === 'count' ? countOf(input.value) : readHere(card, input.value)
  if (got.outcome === 'value') {
    fill(echo, 'Understood: ', make('b', {}, got.words || spoken(got)))
    return
  }
  input.setAttribute('aria-invalid', 'true')
  if (got.outcome === 'refuse') { echo.textContent = 'Not understood: ' + got.reason + '.'; return }
  fill(echo, 'It can mean more than one thing: ', make('b', {}, got.question))
  offers.append(...got.choices.map(c => button(c.text, () => choose(input, sure(c)))))
}

function choose (input, words) {
  input.value = words
  input.dispatchEvent(new Event('input'))
  input.focus()
}

const COUNTED = {none: 0, no: 0, zero: 0, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6}

function countOf (text) {
  const plain = text.replace(/^[ .!]+|[ .!]+$/g, '').toLowerCase()
  const n = /^\d{1,2}$/.test(plain) ? Number(plain) : Object.prototype.hasOwnProperty.call(COUNTED, plain) ? COUNTED[plain] : -1
  if (n < 0 || n > 20) return {outcome: 'refuse', reason: 'a whole number up to 20 is wanted'}
  return {outcome: 'value', words: n === 0 ? 'none' : String(n)}
}

// choiceOf is one answer of a few; a second touch takes it back.
function choiceOf (card, words) {
  const name = 'blank-' + card.n
  const rows = words.map(([value, label]) => {
    const radio = make('input', {type: 'radio', name, value, checked: answerOf(card).values[0] === value})
    const take = words => { answerOf(card).values[0] = words; entered() }
    radio.addEventListener('change', () => take(value))
    radio.addEventListener('click', () => {
      if (radio.wasChecked) { radio.checked = false; take('') }
      rows.forEach(r => { r.firstChild.wasChecked = r.firstChild.checked })
    })
    radio.wasChecked = radio.checked
    return make('label', {className: 'choice'}, radio, make('span', {}, label))
  })
  return make('fieldset', {className: 'field'}, make('legend', {}, questionOf(card)), ...rows)
}
