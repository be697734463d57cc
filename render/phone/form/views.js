// The three kinds of view, and the way between them. The phone's own way back goes a view back.
const header = document.querySelector('.strip')
const title = header.querySelector('.job')
const place = button('', () => go('end'))
const bar = make('span', {})
const start = document.querySelector('.start')
const end = make('section', {className: 'view end', hidden: true})

function begin () {
  document.documentElement.classList.add('live')
  header.querySelector('.place').replaceWith(make('span', {className: 'place'}, place))
  document.querySelector('.tape').append(make('div', {className: 'progress', 'aria-hidden': 'true'}, bar))
  start.classList.add('view')
  start.append(...startParts())
  sheet.cards.forEach((card, i) => cardElement(card).append(...cardParts(card, i)))
  document.querySelector('main').append(end, announcer)
  window.addEventListener('popstate', e => show((e.state && e.state.view) || 'start'))
  show(viewKnown(state.view) ? state.view : 'start')
  try { history.replaceState({view: state.view}, '') } catch (e) { /* no history here: the page's own buttons do */ }
}

const cardElement = card => document.getElementById('card-' + card.id)
const cardIndex = view => sheet.cards.findIndex(c => c.id === view)
const viewKnown = view => view === 'end' || cardIndex(view) >= 0

function go (view) {
  try { history.pushState({view}, '') } catch (e) { /* as above */ }
  show(view)
}

function show (view) {
  state.view = view
  const at = cardIndex(view)
  const n = sheet.cards.length
  start.hidden = view !== 'start'
  end.hidden = view !== 'end'
  if (view === 'end') fill(end, ...endParts())
  sheet.cards.forEach((card, i) => { cardElement(card).hidden = i !== at })
  place.textContent = at < 0 ? countIn(sheet.cards) + ' of ' + n + ' done' : 'card ' + (at + 1) + ' of ' + n
  place.setAttribute('aria-label', place.textContent + ': see what is in and send')
  bar.style.width = 100 * (at < 0 ? countIn(sheet.cards) : at + 1) / n + '%'
  window.scrollTo(0, 0)
  keep()
  focusHeading(at < 0 ? (view === 'end' ? end : start) : cardElement(sheet.cards[at]))
}

// focusHeading lets a screen reader begin at the top of what came; it opens no keyboard.
function focusHeading (view) {
  const heading = view.querySelector('h1, h2')
  heading.tabIndex = -1
  heading.focus({preventScroll: true})
}

function startParts () {
  const name = make('input', {id: 'by', type: 'text', value: state.by, autocomplete: 'name', maxLength: 60})
  name.addEventListener('input', () => { state.by = name.value; keep() })
  const first = sheet.cards.find(c => !isIn(c) && !isSkipped(c))
  const next = countIn(sheet.cards) > 0 && first ? first.id : sheet.cards[0].id
  const words = countIn(sheet.cards) > 0 ? 'Go on' : 'Begin'
  return [
    make('label', {htmlFor: 'by'}, 'Who reads the tape?'), name,
    make('div', {className: 'buttons'}, button(words, () => go(next), {className: 'main'})),
    keptLine()
  ]
}

// cardParts are the fields and buttons of a card.
function cardParts (card, i) {
  const skip = skipPart(card, () => go(after(i)))
  const form = make('form', {noValidate: true, autocomplete: 'off', on: {submit: e => { e.preventDefault(); go(after(i)) }, keydown: enterMovesOn}})
  form.append(...[...fieldsOf(card), photoOf(card), notePart(card), skip.panel, make('div', {className: 'buttons'},
    button('Back', () => go(i === 0 ? 'start' : sheet.cards[i - 1].id)),
    skip.opener,
    make('button', {type: 'submit', className: 'main'}, 'Next'))].filter(Boolean))
  return [form, keptLine()]
}

const after = i => i + 1 < sheet.cards.length ? sheet.cards[i + 1].id : 'end'

// enterMovesOn: the Enter key of a blank goes to the next blank of the card, and from the last on to the next card.
function enterMovesOn (e) {
  if (e.key !== 'Enter' || e.isComposing || e.target.tagName !== 'INPUT') return
  const inputs = Array.from(e.currentTarget.querySelectorAll('.field input'))
  const next = inputs[inputs.indexOf(e.target) + 1]
  if (!next) return
  e.preventDefault()
  next.focus()
}
