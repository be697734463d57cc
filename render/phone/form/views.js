// The three kinds of view, and the way between them. The phone's own way back goes a view back.
const place = button('', () => go('end'))
const bar = make('span', {})
const start = document.querySelector('.start')
const startFoot = make('div', {})
const end = make('section', {className: 'view end', hidden: true})
const groups = Array.from(document.querySelectorAll('.group'))

function begin () {
  document.documentElement.classList.add('live')
  const strip = document.querySelector('.strip .place')
  strip.textContent = ''
  strip.append(place)
  document.querySelector('.tape').append(make('div', {className: 'progress', 'aria-hidden': 'true'}, bar))
  start.append(startFoot)
  sheet.cards.forEach((card, i) => { label(card); elementOf(card).append(...cardParts(card, i)) })
  document.querySelector('main').append(end, announcer)
  window.addEventListener('popstate', e => show((e.state && e.state.view) || 'start'))
  show(state.view === 'end' || cardIndex(state.view) >= 0 ? state.view : 'start')
  try { history.replaceState({view: state.view}, '') } catch (e) { /* no history here: the page's own buttons do */ }
}

// label says in words what a drawing shows.
function label (card) {
  const drawing = elementOf(card).querySelector('.drawing')
  const [from, to] = Array.from(elementOf(card).querySelectorAll('dd'), dd => dd.textContent)
  if (!drawing) return
  drawing.setAttribute('role', 'img')
  drawing.setAttribute('aria-label', to ? `Drawing of the tape, from ${from} to ${to}` : 'Drawing')
}

const cardIndex = view => sheet.cards.findIndex(c => c.key === view)

function go (view) {
  try { history.pushState({view}, '') } catch (e) { /* as above */ }
  show(view)
}

function show (view) {
  const at = cardIndex(view)
  state.view = view
  start.hidden = view !== 'start'
  end.hidden = view !== 'end'
  if (view === 'start') fill(startFoot, ...startParts())
  if (view === 'end') fill(end, ...endParts())
  sheet.cards.forEach((card, i) => { elementOf(card).hidden = i !== at })
  for (const g of groups) showGroup(g, at < 0 ? null : elementOf(sheet.cards[at]))
  tellPlace(at)
  window.scrollTo(0, 0)
  keep()
  focusHeading(at < 0 ? (view === 'end' ? end : start) : elementOf(sheet.cards[at]))
}

// showGroup shows the group of the card, what it is about before its first card only.
function showGroup (group, card) {
  group.hidden = !card || !group.contains(card)
  const lead = group.querySelector('.lead')
  if (lead) lead.hidden = group.querySelector('li') !== card
}

function tellPlace (at) {
  const n = sheet.cards.length
  const done = at < 0 ? countIn(sheet.cards) : at + 1
  place.textContent = at < 0 ? done + ' of ' + n + ' done' : 'card ' + done + ' of ' + n
  place.setAttribute('aria-label', place.textContent + ': see what is in, and send')
  bar.style.width = 100 * done / n + '%'
}

// focusHeading lets a screen reader begin at the top of what came; it opens no keyboard.
function focusHeading (view) {
  const heading = view.querySelector('h1, h2, h3')
  heading.tabIndex = -1
  heading.focus({preventScroll: true})
}

const UNIT_NAMES = {in: 'inches', ft: 'feet', mm: 'millimetres', cm: 'centimetres', m: 'metres'}

function startParts () {
  const name = make('input', {id: 'by', type: 'text', value: state.by, autocomplete: 'name', maxLength: 60})
  name.addEventListener('input', () => { state.by = name.value; keep() })
  const units = (sheet.unit === 'mm' ? ['mm', 'cm', 'in'] : ['in', 'cm', 'mm']).map(u => {
    const radio = make('input', {type: 'radio', name: 'unit', value: u, checked: u === unit()})
    radio.addEventListener('change', () => { state.unit = u; keep(); whenUnitChanges.forEach(f => f()) })
    return make('label', {className: 'choice'}, radio, make('span', {}, UNIT_NAMES[u]))
  })
  const begun = sheet.cards.some(c => isIn(c) || isSkipped(c))
  const first = sheet.cards.find(c => !isIn(c) && !isSkipped(c))
  return [
    make('label', {htmlFor: 'by'}, 'Who reads the tape?'), name,
    make('fieldset', {className: 'row'}, make('legend', {}, 'A number without a unit is in'), ...units),
    make('div', {className: 'buttons'}, button(begun ? 'Go on' : 'Begin', () => go(first ? first.key : 'end'), {className: 'main'})),
    anewPart(begun),
    keptLine()
  ]
}

// anewPart empties the form, or brings back what was emptied; the page is read again with what is kept then.
function anewPart (begun) {
  const swap = () => {
    [state.cards, state.before] = [begun ? {} : state.before, begun ? state.cards : null]
    if (keeper.save(state)) location.reload()
  }
  if (!keeper.works || (!begun && !state.before)) return ''
  return button(begun ? 'Start anew with empty cards' : 'Bring back what was there', swap, {className: 'more'})
}

// cardParts are the blanks and buttons of a card.
function cardParts (card, i) {
  const skip = skipPart(card, () => go(after(i)))
  const photo = elementOf(card).querySelector('.photo')
  const form = make('form', {
    noValidate: true,
    autocomplete: 'off',
    on: {submit: e => { e.preventDefault(); onward(form, after(i)) }, keydown: e => { pressed = e }}
  }, ...blanksOf(card), photo || '', notePart(card), skip.panel, make('div', {className: 'buttons'},
    button('Back', () => go(i === 0 ? 'start' : sheet.cards[i - 1].key)),
    skip.opener,
    make('button', {type: 'submit', className: 'main'}, 'Next')))
  return [form, keptLine()]
}

const after = i => i + 1 < sheet.cards.length ? sheet.cards[i + 1].key : 'end'

// onward goes to the next blank or view.
function onward (form, view) {
  const next = nextBlank(form)
  pressed = null
  next ? next.focus() : go(view)
}

// pressed is the last key on a card.
let pressed = null

// nextBlank is the blank that the Enter key goes to: the one below on the same card. From the last, and from
// a button, it is on to the next card.
function nextBlank (form) {
  const inputs = Array.from(form.querySelectorAll('.field input[type=text]'))
  const at = inputs.indexOf(document.activeElement)
  return pressed && pressed.key === 'Enter' && pressed.target === document.activeElement && at >= 0 ? inputs[at + 1] : undefined
}
