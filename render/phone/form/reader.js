// What a typed text means: read(text, {unit: 'in' | 'mm' | '', field, near: [nm]}) returns
// {outcome: 'value' | 'ask' | 'refuse', value, metric, second, note64, question, choices, reason, rule}.
// Nothing is guessed: what has two meanings is asked about, what has none is refused.
const ONE = rat(1n)
const TWELVE = rat(12n)
// TALLEST bounds the feet of a number that is taken for feet without a mark, LONGEST_TAPE figures in
// groups of three, which may also be two numbers.
const TALLEST = rat(24n)
const LONGEST_TAPE = rat(50000n * MM_NM)
const END = {kind: 'end', unit: BARE, text: '', gap: false, sep: ''}

const READ_AGAIN = {text: 'read it again'}
const TWO_NUMBERS = {text: 'two numbers'}
const TWO_LENGTHS = {text: 'two lengths'}
const ANOTHER_UNIT = {text: 'another unit'}

const PLAUSIBLE = {
  wall_length: {low: 24n * INCH_NM, high: 480n * INCH_NM, short: 'too short for a wall', long: 'too long for a wall'},
  room_height: {low: 72n * INCH_NM, high: 144n * INCH_NM, short: 'too low for a room', long: 'too high for a room'},
  board_thickness: {low: INCH_NM / 5n, high: 4n * INCH_NM, short: 'too thin for a board', long: 'too thick for a board'}
}

const PART_NAMES = {3: 'thirds', 5: 'fifths', 6: 'sixths', 7: 'sevenths', 9: 'ninths', 10: 'tenths', 12: 'twelfths'}

function read (text, context) {
  try {
    const r = new Reader(context, groupDigits(lex(text)))
    r.setAside()
    return context.field === 'section' ? r.section() : r.single()
  } catch (e) {
    if (e instanceof Refusal) return reading({reason: e.reason, rule: e.rule})
    throw e
  }
}

function reading (fields) {
  const blank = {outcome: 'refuse', value: 0n, second: 0n, note64: 0, question: '', choices: [], reason: '', rule: ''}
  return Object.assign(blank, fields)
}

const unitOf = name => ({in: INCH, mm: MILLIMETRE})[name] || BARE
const splitNumeral = t => {
  const at = t.text.length - t.tail - 1
  return [numeral('0' + t.text.slice(0, at)), numeral(t.text.slice(at + 1))]
}
const partsName = below => PART_NAMES[below.n] || 'parts of ' + below.n
const onTape = a => [2n, 4n, 8n, 16n, 32n, 64n].includes(a.below.n)
const feetOver = pc => pc.form === 'fraction' && pc.top.kind === 'number' && pc.unit === BARE && isLess(pc.below, TWELVE)
const isOne = (q, unit) => q.pieces.length === 1 && q.unit === unit
const feetOnly = q => isOne(q, FOOT) && q.pieces[0].form === 'whole'
const inchesOnly = q => isOne(q, INCH) && q.pieces[0].form !== 'fraction'
const wholeOnly = q => q.pieces.length === 1 && q.pieces[0].form === 'whole'
const quantityOf = fields => Object.assign({mixed: false, fraction: false, head: null, pieces: []}, fields)
const scaled = (q, unit) => Object.assign({}, q, {unit, v: inUnit(q.v, unit)})

function feetInchOption (feet, inches) {
  const nm = add(inUnit(feet, FOOT), inUnit(inches, INCH))
  return {nm, text: inchText(nm)}
}

// marksAround are the multiples of step on either side of l, one where l is a multiple.
function marksAround (l, step) {
  const low = roundDown(l, step)
  const high = roundUp(l, step)
  return (low === high ? [low] : [low, high]).map(m => ({nm: rat(m), text: tapeText(m)}))
}

// inchesAfterPoint takes the figures after the point for inches: 5.8 for 5 ft 8, 5.10 for 5 ft 10,
// 10.25 for 10 ft 2.5; no inches where they cannot be.
function inchesAfterPoint (t) {
  if (t.odd) return []
  const [feet, inches] = splitNumeral(t)
  if (isZero(inches) || t.tail > 2) return []
  return [feet, isLess(inches, TWELVE) ? inches : over(inches, rat(10n))]
}

// spelledOut writes a number with its unit, and in tape notation beside it where a tape has feet for it.
function spelledOut (v, unit) {
  const text = numberText(v) + ' ' + (unit === BARE ? '' : UNITS[unit].name)
  const l = unit === BARE ? null : lengthOf(inUnit(v, unit))
  if (isMetric(unit) || l === null || l % SIXTY_FOURTH !== 0n || l < FOOT_NM) return text
  return unit === FOOT ? tapeText(l) : text + ' (' + tapeText(l) + ')'
}

function outside (range, nm) {
  if (isLess(nm, rat(range.low))) return range.short
  return isLess(rat(range.high), nm) ? range.long : ''
}

// closeness is 1 at the edge of the range and falls to 0 far from it.
function closeness (nm, range) {
  return isLess(nm, rat(range.low)) ? over(nm, rat(range.low)) : over(rat(range.high), nm)
}

// descending reports metric units from large to small.
function descending (ps) {
  return ps.every((pc, i) => isMetric(pc.unit) && !pc.colon && (i === 0 || pc.unit < ps[i - 1].unit))
}

// refuseMisordered refuses units that nobody writes in that order, and two systems in one length (rule R16).
function refuseMisordered (ps) {
  for (let i = 1; i < ps.length; i++) {
    const a = ps[i - 1].unit
    const b = ps[i].unit
    if (a === INCH && b === FOOT) refuse('inches before feet')
    if (isMetric(a) && isMetric(b) && a < b) refuse(`${UNITS[a].plural} before ${UNITS[b].plural}`)
    if (a !== BARE && b !== BARE && isMetric(a) !== isMetric(b) && isLess(inUnit(ps[i].v, b), rat(UNITS[a].nm))) {
      refuse(`${UNITS[a].plural} and ${UNITS[b].plural} in one length`)
    }
  }
}

// grouped reports whole numbers that look like one number in groups of three.
function grouped (ps) {
  const alike = ps.every((pc, i) => pc.form === 'whole' &&
    !(i < ps.length - 1 && (pc.unit !== BARE || pc.colon)) && (i === 0 || isGroup(pc.lead)))
  return alike && ps[0].lead.text.length <= 3 && ps[0].lead.text[0] !== '0'
}

// feetBeside reports two numbers that can be feet and inches although their marks do not say so.
function feetBeside (a, b) {
  const unmarked = a.unit === BARE && (b.unit === BARE || b.unit === INCH)
  const odd = a.unit === FOOT && (a.colon || b.unit === FOOT)
  return (unmarked || odd) && a.form === 'whole' && isLess(b.v, TWELVE) && !isMetric(b.unit)
}

// afterMark reports a fraction less than one after the inch mark: 5' 7" 3/8.
function afterMark (ps) {
  const n = ps.length
  const f = ps[n - 1]
  const feet = n === 2 || (n === 3 && ps[0].unit === FOOT && ps[0].form === 'whole')
  return feet && ps[n - 2].unit === INCH && ps[n - 2].form === 'whole' && f.unit === BARE && f.form === 'fraction' && !f.overOne
}

class Reader {
  constructor (context, toks) {
    this.own = unitOf(context.unit)
    this.field = context.field || 'length'
    this.near = context.near || []
    this.toks = toks
    this.pos = 0
    this.note = 0
    this.hedge = ''
    // the first question found
    this.pending = null
  }

  peek (n = 0) { return this.toks[this.pos + n] || END }
  next () { return this.toks[this.pos++] || END }
  tight () { return !this.peek(0).gap && !this.peek(1).gap }
  nm (v, unit) { return unit === BARE ? times(v, rat(this.own === MILLIMETRE ? MM_NM : INCH_NM)) : inUnit(v, unit) }

  // setAside takes hedges and remarks out of the text and refuses what is left without a number.
  setAside () {
    const empty = this.toks.length === 0
    this.dropHedges()
    if (empty) refuse('nothing typed: missing, not zero')
    if (!this.toks.some(t => t.kind === 'number' || t.kind === 'vulgar')) refuse('no number in it: ' + WANT)
    this.takeNote()
  }

  dropHedges () {
    const kept = []
    for (const t of this.toks) {
      if (t.kind !== 'hedge') { kept.push(t); continue }
      if (!this.hedge) this.hedge = t.text
      if (t.text === 'so' && kept.length > 0 && kept[kept.length - 1].text === 'or') kept.pop()
    }
    this.toks = kept
  }

  // takeNote takes the remark strong, heavy or light from either end (rule R14).
  takeNote () {
    if (this.toks[this.toks.length - 1].kind === 'note') this.note = this.toks.pop().note
    else if (this.toks[0].kind === 'note') this.note = this.toks.shift().note
    if (this.toks.some(t => t.kind === 'note')) refuse('strong, heavy or light stands once, after the length', 'R14')
  }

  single () {
    if (this.toks.some(t => t.kind === 'by')) refuse('a size of lumber, not a length; a product is written with *', 'R15')
    return this.finish(this.values())
  }

  // values reads lengths up to the end of the text; more than one is asked about (rule R18).
  values () {
    const first = this.sum()
    const found = [first]
    const comma = this.peek().text === ','
    while (this.peek().kind !== 'end') {
      if (!this.apart()) this.misplaced()
      found.push(this.sum())
    }
    if (found.length === 1) return first
    if (comma && found.length === 2 && feetOnly(first) && inchesOnly(found[1])) {
      this.ask('R11', 'a comma between feet and inches', this.optionOf(this.plus(first, found[1])), TWO_LENGTHS)
    } else {
      this.ask(...(comma ? ['R11', 'a comma between two values'] : ['R18', 'two values']), ...found.map(q => this.optionOf(q)))
    }
    return first
  }

  // apart passes what stands between two values; false where nothing of the kind does.
  apart () {
    const k = this.peek().kind
    if (k === 'split' || k === 'bar') { this.pos++; return true }
    return k === 'opening' || ((k === 'number' || k === 'vulgar') && this.toks[this.pos - 1].kind === 'closing')
  }

  misplaced () {
    const t = this.peek()
    if (t.kind === 'end') refuse('not finished: ' + WANT)
    if (t.kind === 'closing') refuse('a bracket is closed that was not opened, or holds nothing')
    if (t.kind === 'mark') refuse('marks in an order nobody writes: ' + WANT)
    if ((t.kind === 'dash' || t.kind === 'minus') && this.pos === 0) refuse('a length is not negative')
    refuse(`"${t.text}" does not belong here: ${WANT}`)
  }

  // ask keeps the first question. Its text is the options in order.
  ask (rule, reason, ...options) {
    if (this.pending) return
    const words = options.map(o => o.text)
    const last = words.pop()
    const choices = options.filter(o => lengthOf(o.nm) !== null).map(o => ({text: o.text, length: o.nm.n}))
    const question = (words.length ? words.join(', ') + ' or ' : '') + last + '?'
    this.pending = reading({outcome: 'ask', question, choices, reason, rule})
  }

  // sum reads products joined by + (rule R6). A minus is read and asked about (rule R7).
  sum () {
    let left = this.product()
    for (;;) {
      const t = this.peek()
      if (t.kind !== 'plus' && t.kind !== 'dash' && t.kind !== 'minus') return left
      this.pos++
      const evenly = t.kind === 'dash' && t.gap && this.peek().gap
      const right = this.product()
      left = t.kind === 'plus' ? this.plus(left, right) : this.less(left, right, evenly)
    }
  }

  product () {
    let left = this.factor()
    while (this.peek().kind === 'times') {
      this.pos++
      left = this.multiply(left, this.factor())
    }
    return left
  }

  // factor reads a bracket, with a unit after it where what it holds has none, or a quantity.
  factor () {
    if (this.peek().kind !== 'opening') return this.quantity()
    this.pos++
    let q = this.sum()
    if (this.peek().kind !== 'closing') refuse('a bracket is not closed')
    this.pos++
    q = Object.assign({}, q, {pieces: [], head: null})
    if (this.peek().kind === 'mark') {
      if (q.unit !== BARE) this.misplaced()
      q = scaled(q, this.next().unit)
    }
    return q
  }

  // plus puts two terms on one scale. A term without a unit beside one with a unit is asked about
  // unless the job's unit settles it, or it stands for inches after feet.
  plus (a, b) {
    if ((a.unit === BARE) !== (b.unit === BARE)) [a, b] = this.settle(a, b)
    return quantityOf({
      v: add(a.v, b.v),
      unit: b.unit,
      fraction: a.fraction || b.fraction,
      mixed: a.mixed || b.mixed || isMetric(a.unit) !== isMetric(b.unit)
    })
  }

  settle (a, b) {
    const feetFirst = a.unit === FOOT && this.own === INCH
    const known = (a.unit === BARE || a.unit === this.own || feetFirst) && (b.unit === BARE || b.unit === this.own) && !a.mixed && !b.mixed
    const plain = b.unit === BARE ? b.v : a.v
    const unit = this.own === BARE ? Math.max(a.unit, b.unit) : this.own
    if (!known) this.ask('R18', 'one term has a unit and one has none', {text: numberText(plain) + ' ' + UNITS[unit].name}, ANOTHER_UNIT)
    return a.unit === BARE ? [scaled(a, unit), b] : [a, scaled(b, unit)]
  }

  // less asks about a minus: subtraction, or a dash with a space that should not be there. A dash with
  // a space on both sides between feet and inches, as drawings have it, only separates (rule R1).
  less (a, b, evenly) {
    if (evenly && feetOnly(a) && inchesOnly(b)) return this.compose([a.pieces[0], b.pieces[0]])
    const joined = this.plus(a, b)
    const rest = this.plus(a, Object.assign({}, b, {v: negative(b.v)}))
    const options = rest.v.n >= 0n ? [this.optionOf(rest)] : []
    this.ask('R7', 'a minus, or a dash with a space before it', ...options, this.dashOption(a, b, joined))
    return joined
  }

  // dashOption is what was meant if the minus was a slip.
  dashOption (a, b, joined) {
    const slip = {text: 'a slip of the pen'}
    if (!wholeOnly(a) || b.pieces.length !== 1 || isMetric(a.unit) || isMetric(b.unit)) return slip
    const low = isLess(b.v, TWELVE)
    if (b.pieces[0].form === 'fraction') return this.optionOf(joined)
    if (a.unit === BARE && b.unit === BARE && low && isLess(a.v, TALLEST)) return feetInchOption(a.v, b.v)
    return b.unit !== BARE || low ? this.optionOf(joined) : slip
  }

  // multiply refuses an area and asks where the last factor has a dash: 14*3-1/2 may be 14 times
  // 3-1/2, or 42 less 1/2.
  multiply (a, b) {
    if (a.unit !== BARE && b.unit !== BARE) refuse('a length times a length is an area', 'R6')
    const out = quantityOf({
      v: times(a.v, b.v),
      unit: Math.max(a.unit, b.unit),
      mixed: a.mixed || b.mixed,
      fraction: a.fraction || b.fraction
    })
    if (b.head) {
      const tail = subtract(b.v, b.head)
      const rest = Object.assign({}, out, {v: subtract(times(a.v, b.head), tail)})
      this.ask('R6', 'a product that ends in a dash', this.optionOf(out), this.optionOf(rest))
    }
    return out
  }

  // quantity reads numbers that stand side by side, each with or without its unit.
  quantity () {
    const ps = []
    for (let more = true; more;) {
      const pc = this.piece()
      more = this.joined(pc)
      pc.colon = more && this.toks[this.pos - 1].kind === 'colon'
      ps.push(pc)
    }
    return this.compose(ps)
  }

  piece () {
    const pc = Object.assign(this.amount(), {unit: BARE, colon: false})
    if (this.peek().kind === 'mark') {
      pc.unit = this.next().unit
      if (this.peek().kind === 'mark') this.misplaced()
    }
    return pc
  }

  // joined passes what separates two numbers of one quantity and reports whether another follows. A
  // dash with a space before it is left to the sum as a minus; so is one with a space after it, but
  // after feet it only separates (rule R1).
  joined (pc) {
    const t = this.peek()
    if (t.kind === 'number' || t.kind === 'vulgar') return true
    if (t.kind === 'dash' && !this.tight() && (t.gap || pc.unit !== FOOT)) return false
    if (t.kind !== 'and' && t.kind !== 'colon' && t.kind !== 'dash') return false
    this.pos++
    return true
  }

  // amount reads a number: whole, decimal, fraction, or whole number and fraction (rules R2 to R5).
  amount () {
    const t = this.peek()
    if (t.kind === 'vulgar' || (t.kind === 'number' && this.peek(1).kind === 'bar')) return this.fraction()
    if (t.kind !== 'number') this.misplaced()
    if (wholeToken(t)) return this.compound()
    this.pos++
    return {v: t.val, form: 'decimal', lead: t, head: null, below: null}
  }

  // compound reads a whole number and the fraction that belongs to it, after a space, a tight dash or "and".
  compound () {
    const t = this.next()
    const k = this.peek().kind
    const skip = k === 'and' || (k === 'dash' && this.tight()) ? 1 : 0
    const first = this.peek(skip)
    if (first.kind !== 'vulgar' && (first.kind !== 'number' || this.peek(skip + 1).kind !== 'bar')) {
      return {v: t.val, form: 'whole', lead: t, head: null, below: null}
    }
    this.pos += skip
    const f = this.fraction()
    return Object.assign(f, {v: add(t.val, f.v), form: 'compound', lead: t, head: k === 'dash' ? t.val : null})
  }

  // fraction reads n/d or a fraction in one character.
  fraction () {
    const top = this.next()
    const out = {form: 'fraction', lead: top, top, head: null, loose: false, overOne: false}
    if (top.kind === 'vulgar') return Object.assign(out, {v: top.val, below: rat(top.val.d)})
    const line = this.next()
    const below = this.peek()
    if (below.kind !== 'number') this.misplaced()
    if (isZero(below.val)) refuse('a fraction over zero')
    if (!wholeToken(below)) refuse('a fraction has a whole number below the bar')
    if (this.peek(1).kind === 'bar') refuse('two fraction bars')
    this.pos++
    const v = over(top.val, below.val)
    return Object.assign(out, {v, below: below.val, loose: line.gap || below.gap, overOne: !isLess(v, ONE)})
  }

  // compose makes one quantity of numbers side by side.
  compose (ps) {
    this.checkCommas(ps)
    if (ps.length === 1) return this.oneNumber(ps[0])
    const [a, b] = ps
    if (ps.length === 2 && a.unit === FOOT && (b.unit === INCH || b.unit === BARE) && !a.colon) return this.feetInches(a, b)
    refuseMisordered(ps)
    if (descending(ps)) return this.metricChain(ps)
    this.askSeveral(ps)
    return quantityOf({v: this.nm(a.v, a.unit), unit: INCH})
  }

  // oneNumber makes a quantity of one number; a part of a foot is asked about (rule R8).
  oneNumber (pc) {
    const on = v => v && pc.unit !== BARE ? inUnit(v, pc.unit) : v
    const q = quantityOf({v: on(pc.v), unit: pc.unit, head: on(pc.head), fraction: pc.below !== null, pieces: [pc]})
    if (pc.lead.grouped && isLess(LONGEST_TAPE, q.v)) {
      this.ask('R10', 'longer than any tape', this.option(q.v, pc.unit), TWO_NUMBERS)
    } else if (pc.unit === FOOT && pc.form !== 'whole') this.askPartOfFoot(pc)
    else this.checkFraction(pc, rat(0n))
    return q
  }

  // feetInches makes a quantity of feet and inches, marked or not.
  feetInches (f, i) {
    const feet = inUnit(f.v, FOOT)
    const v = add(feet, inUnit(i.v, INCH))
    if (f.form !== 'whole') this.ask('R8', 'a part of a foot, and inches beside it', this.option(v, INCH), TWO_LENGTHS)
    else if (!isLess(i.v, TWELVE)) this.ask('R17', numberText(i.v) + ' in after feet', this.option(v, INCH))
    else this.checkFraction(Object.assign({}, i, {unit: INCH}), feet)
    return quantityOf({v, unit: INCH, head: feet, fraction: i.below !== null})
  }

  // metricChain makes a quantity of metres, centimetres and millimetres in that order (rule R10).
  metricChain (ps) {
    const v = this.total(ps)
    const last = ps[ps.length - 1].unit
    for (let i = 1; i < ps.length; i++) {
      const before = ps[i - 1]
      if (before.form !== 'whole' || !isLess(inUnit(ps[i].v, ps[i].unit), rat(UNITS[before.unit].nm))) {
        this.ask('R18', 'one length, or two', this.option(v, last), TWO_LENGTHS)
      }
    }
    return quantityOf({v, unit: last})
  }

  total (ps) { return ps.reduce((v, pc) => add(v, this.nm(pc.v, pc.unit)), rat(0n)) }
}
