// The two sizes of a board, thickness first as the trade says them (rule R15).
const WIDEST_LUMBER = 16n

const pairText = (a, b) => inchText(a) + ' x ' + inchText(b)
const timberLoss = nominal => nominal < 7n ? INCH_NM / 2n : nominal < 16n ? 3n * INCH_NM / 4n : INCH_NM
const widthLoss = nominal => nominal < 8n ? INCH_NM / 2n : 3n * INCH_NM / 4n

// dressed returns the dry dressed size [thick, wide] of a nominal one (American Softwood Lumber
// Standard PS 20), or null where no lumber has it.
function dressed (n) {
  if (n.thick > 4n * n.wide || n.wide < 2n) return null
  if (n.thick >= 20n && !n.quart) {
    const thick = n.thick / 4n
    return n.wide <= 24n ? [thick * INCH_NM - timberLoss(thick), n.wide * INCH_NM - timberLoss(n.wide)] : null
  }
  const quarters = {4: 3n, 5: 4n, 6: 5n, 8: 6n, 12: 10n, 16: 14n}[n.thick]
  if (!quarters || n.wide > WIDEST_LUMBER) return null
  return [quarters * INCH_NM / 4n, n.wide * INCH_NM - widthLoss(n.wide)]
}

function dressedOption (n) {
  const [thick, wide] = dressed(n)
  return {text: pairText(rat(thick), rat(wide)) + ' (' + n.text + ', dressed)'}
}

// swapped is the size with its numbers the other way round, for sizes in whole inches.
function swapped (n) {
  const thick = 4n * n.wide
  const wide = n.thick / 4n
  return Object.assign({}, n, {thick, wide, text: n.wide + 'x' + wide})
}

Object.assign(Reader.prototype, {
  section () {
    if (this.note) this.ask('R15', 'a remark on a section', {text: 'about which of the two sizes'})
    const n = this.lumberName()
    if (n) return this.lumber(n)
    const [first, second] = this.sides()
    return this.pending || this.both(...this.shareUnit(first, second))
  },

  // lumberName recognises two whole numbers, or a thickness of 5/4 or 6/4 and a whole width. In a job
  // in millimetres numbers too large for lumber are millimetres.
  lumberName () {
    let toks = this.toks.filter(t => !(t.kind === 'mark' && t.unit === INCH))
    const marked = toks.length < this.toks.length
    const quart = toks.length === 5 && toks[1].kind === 'bar' && toks[2].text === '4' && (toks[0].text === '5' || toks[0].text === '6')
    const front = toks[0]
    if (quart) toks = toks.slice(2)
    if (toks.length !== 3 || !wholeToken(toks[0]) || toks[1].kind !== 'by' || !wholeToken(toks[2])) return null
    const [a, b] = [toks[0].val.n, toks[2].val.n]
    if (a > 1000000n || b > 1000000n || a === 0n || b === 0n) return null
    const thick = quart ? front.val.n : 4n * a
    const metric = this.own === MILLIMETRE && !marked && !quart && (b > WIDEST_LUMBER || thick > 4n * WIDEST_LUMBER)
    return metric ? null : {marked, quart, thick, wide: b, text: (quart ? front.text + '/4' : toks[0].text) + 'x' + toks[2].text}
  },

  // lumber reads a nominal size as its dry dressed size; it asks where the numbers may be actual.
  lumber (n) {
    const size = dressed(n)
    const actual = {text: pairText(rat(n.thick * INCH_NM, 4n), rat(n.wide * INCH_NM))}
    const metric = {text: numberText(rat(n.thick, 4n)) + ' x ' + n.wide + ' mm'}
    if (!size && dressed(swapped(n))) this.ask('R15', 'thickness comes first', dressedOption(swapped(n)), actual)
    else if (!size) this.ask('R15', 'no lumber has this nominal size', actual, metric)
    else if (this.own === MILLIMETRE && !n.marked && !n.quart) {
      this.ask('R15', 'a nominal size, and the job is in mm', dressedOption(n), metric)
    } else if (n.marked) this.ask('R15', 'a nominal size with an inch mark', dressedOption(n), actual)
    if (this.hedge && size) this.ask('R18', this.doubt(), dressedOption(n), READ_AGAIN)
    if (this.pending) return this.pending
    return reading({outcome: 'value', value: size[0], second: size[1], reason: 'nominal size: taken as dry and dressed', rule: 'R15'})
  },

  // sides reads a x b; where one is missing it asks for it.
  sides () {
    const missing = (reason, which) => this.ask('R15', reason, {text: `what is the ${which} size`})
    if (this.peek().kind === 'by') {
      this.pos++
      missing('the second size only', 'first')
      const only = this.values()
      return [only, only]
    }
    const first = this.sum()
    if (this.peek().kind !== 'by') {
      missing('one size only', 'second')
      this.rest()
      return [first, first]
    }
    this.pos++
    if (this.peek().kind === 'end') {
      missing('the first size only', 'second')
      return [first, first]
    }
    const second = this.sum()
    this.rest()
    return [first, second]
  },

  // rest reads what follows a section; anything that can be read is asked about.
  rest () {
    const k = this.peek().kind
    if (k === 'end') return
    if (k !== 'by' && k !== 'split') this.misplaced()
    this.pos++
    this.ask('R15', 'more than two sizes', READ_AGAIN)
    this.sum()
    this.rest()
  },

  // shareUnit gives both sizes the unit that is written once: after the second, or after the first
  // where it is the job's own.
  shareUnit (a, b) {
    if (a.unit === BARE && b.unit !== BARE) a = scaled(a, b.unit)
    else if (b.unit === BARE && a.unit !== BARE && a.unit !== this.own) {
      this.ask('R15', 'a unit after the first size only', {text: 'the same unit for both'}, {text: 'another'})
    } else if (b.unit === BARE && a.unit !== BARE) b = scaled(b, a.unit)
    if (a.unit === FOOT || b.unit === FOOT) this.ask('R15', 'a section in feet', {text: 'inches meant'}, READ_AGAIN)
    return [a, b]
  },

  both (a, b) {
    const first = this.finish(a)
    if (first.outcome !== 'value') return first
    const second = this.finish(b)
    if (second.outcome !== 'value') return second
    if (first.value === 0n || second.value === 0n) return reading({rule: 'R16', reason: 'a section has no size of zero'})
    const widest = WIDEST_LUMBER * MM_NM
    if (b.unit === BARE && this.own === MILLIMETRE && first.value <= widest && second.value <= widest) {
      this.ask('R15', 'small for a section in mm', {text: pairText(inUnit(a.v, INCH), inUnit(b.v, INCH))},
        {text: numberText(a.v) + ' x ' + numberText(b.v) + ' mm'})
      return this.pending
    }
    return reading({outcome: 'value', value: first.value, second: second.value, reason: 'actual size', rule: 'R15'})
  }
})
