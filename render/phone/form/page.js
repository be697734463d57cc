// What the page is about, what was entered, and small helpers. The cards stand on the page already, so
// that it reads as a list where no script runs.
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
  e.append(...children)
  return e
}

// fill puts these in place of what an element holds.
function fill (e, ...children) {
  e.textContent = ''
  e.append(...children)
}

const button = (words, press, props) => make('button', Object.assign({type: 'button', on: {click: press}}, props), words)

function dot (kind) {
  const make = (tag, attributes) => {
    const e = document.createElementNS('http://www.w3.org/2000/svg', tag)
    for (const [k, v] of Object.entries(attributes)) e.setAttribute(k, v)
    return e
  }
  const svg = make('svg', {class: 'dot ' + kind, viewBox: '0 0 20 20', 'aria-hidden': 'true'})
  svg.append(make('circle', {cx: 10, cy: 10, r: 6}))
  return svg
}

const elementOf = card => document.querySelector('li[value="' + card.n + '"]')
const titleOf = card => elementOf(card).querySelector('h3').textContent
const groupOf = card => elementOf(card).closest('.group').querySelector('h2').textContent

// answerOf returns what was entered on a card, made on first use.
function answerOf (card) {
  const kept = state.cards[card.key]
  if (!kept || !Array.isArray(kept.values)) state.cards[card.key] = {values: ['', ''], note: '', skip: ''}
  return state.cards[card.key]
}

// isBlank tells whether a value says that there is none, as the reader of the reply does.
function isBlank (value) {
  const bare = String(value || '').replace(/^[ ._\u2013\u2014-]+|[ ._\u2013\u2014-]+$/g, '').toLowerCase()
  return ['', 'n/a', 'not now', 'skip', 'skipped'].includes(bare.trim())
}

const isIn = card => answerOf(card).values.some(v => !isBlank(v))
const isSkipped = card => !isIn(card) && answerOf(card).skip !== ''
const countIn = cards => cards.filter(isIn).length

// entered keeps what was entered, with its day.
function entered () {
  const d = new Date()
  state.day = [d.getFullYear(), d.getMonth() + 1, d.getDate()].map(n => String(n).padStart(2, '0')).join('-')
  keep()
}

function keep () {
  const kept = keeper.save(state)
  for (const e of document.querySelectorAll('.kept')) tellKept(e, kept)
}

function tellKept (e, kept) {
  e.className = kept ? 'kept' : 'kept warned'
  e.textContent = kept
    ? 'Kept on this phone. Needs no network.'
    : 'Nothing can be kept here: send what is in before you close the page. Needs no network.'
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
