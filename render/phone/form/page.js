// The page: a start, one card at a time, and an end that sends. The cards stand in the page already, so
// that it reads as a list where no script runs; here each gets its fields.
const sheet = JSON.parse(document.getElementById('sheet').textContent)
const keeper = new Keeper('bunkwright ' + sheet.id)
const state = keeper.load()

// make builds an element; words become text, never markup.
function make (tag, props, ...children) {
  const e = document.createElement(tag)
  for (const [key, value] of Object.entries(props || {})) {
    if (key === 'on') for (const [event, f] of Object.entries(value)) e.addEventListener(event, f)
    else if (key in e) e[key] = value
    else e.setAttribute(key, value)
  }
  e.append(...children.filter(c => c !== null))
  return e
}

// fill puts these in place of what an element holds.
function fill (e, ...children) {
  e.textContent = ''
  e.append(...children)
}

const button = (words, press, props) => make('button', Object.assign({type: 'button', on: {click: press}}, props), words)
const dot = kind => {
  const svg = document.createElementNS('http://www.w3.org/2000/svg', 'svg')
  const circle = document.createElementNS('http://www.w3.org/2000/svg', 'circle')
  for (const [k, v] of Object.entries({cx: 10, cy: 10, r: 6})) circle.setAttribute(k, v)
  for (const [k, v] of Object.entries({class: 'dot ' + kind, viewBox: '0 0 20 20', 'aria-hidden': 'true'})) svg.setAttribute(k, v)
  svg.append(circle)
  return svg
}

// answerOf returns what was entered on a card, made on first use.
function answerOf (card) {
  const kept = state.cards[card.id]
  if (!kept || !Array.isArray(kept.values)) state.cards[card.id] = {values: [], note: '', skip: ''}
  return state.cards[card.id]
}

const isIn = card => answerOf(card).values.some(v => String(v || '').trim() !== '')
const isSkipped = card => !isIn(card) && answerOf(card).skip !== ''
const countIn = cards => cards.filter(isIn).length

function keep () {
  const kept = keeper.save(state)
  for (const e of document.querySelectorAll('.kept')) tellKept(e, kept)
}

function tellKept (e, kept) {
  e.className = kept ? 'kept' : 'kept warned'
  e.textContent = kept
    ? 'Kept on this phone. Needs no network.'
    : 'This phone keeps nothing here: send what is in before you close the page. Needs no network.'
}

function keptLine () {
  const e = make('p', {})
  tellKept(e, keeper.works)
  return e
}

// A later announcement takes the place of one that is not read out yet.
const announcer = make('div', {className: 'away', 'aria-live': 'polite'})
let announcing = 0
function announce (words) {
  clearTimeout(announcing)
  announcing = setTimeout(() => { announcer.textContent = words }, 600)
}

// lengthField is a blank with its echo below it.
function lengthField (card, at, label, hint) {
  const id = card.id + '-' + at
  const echo = make('p', {className: 'echo', id: id + '-echo'})
  const offers = make('div', {className: 'offers', role: 'group', 'aria-label': 'Which was meant?'})
  const input = make('input', {
    id,
    type: 'text',
    value: answerOf(card).values[at] || '',
    autocomplete: 'off',
    autocapitalize: 'off',
    spellcheck: false,
    enterKeyHint: 'next',
    maxLength: 200,
    'aria-describedby': echo.id
  })
  const retell = aloud => {
    answerOf(card).values[at] = input.value
    tell(card, input, echo, offers, hint, aloud)
  }
  input.addEventListener('input', () => { retell(true); keep() })
  retell(false)
  return make('div', {className: 'field'}, make('label', {htmlFor: id}, label), input, echo, offers)
}

// tell echoes what a blank was understood to mean. It does not judge the value; it asks where it could
// mean two things.
function tell (card, input, echo, offers, hint, aloud) {
  fill(offers)
  input.removeAttribute('aria-invalid')
  if (input.value.trim() === '') { echo.textContent = hint; return }
  const got = read(input.value, {unit: sheet.unit, field: card.field})
  if (got.outcome === 'value') {
    const remark = got.note64 ? (got.note64 > 0 ? ', a little more' : ', a little less') : ''
    fill(echo, 'Understood: ', make('b', {}, spoken(got.value, got.metric) + remark))
  } else if (got.outcome === 'ask') {
    input.setAttribute('aria-invalid', 'true')
    fill(echo, 'It can mean more than one thing: ', make('b', {}, got.question))
    offers.append(...got.choices.map(c => button(c.text, () => choose(input, sure(c)))))
  } else {
    input.setAttribute('aria-invalid', 'true')
    echo.textContent = 'Not understood: ' + got.reason + '.'
  }
  if (aloud) announce(echo.textContent)
}

function choose (input, words) {
  input.value = words
  input.dispatchEvent(new Event('input'))
  input.focus()
}
