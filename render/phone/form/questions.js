// What the reader asks about, and how a reading ends.
Object.assign(Reader.prototype, {
  // option shows nm the way a tape of that unit would.
  option (nm, unit) {
    if (unit === BARE) unit = this.own
    if (isMetric(unit)) return {nm, text: numberText(over(nm, rat(UNITS[unit].nm))) + ' ' + UNITS[unit].name}
    return {nm, text: inchText(nm)}
  },

  optionOf (q) { return q.unit === BARE ? this.option(this.nm(q.v, BARE), BARE) : this.option(q.v, q.unit) },

  // checkCommas asks about a comma that may be a decimal comma or may group figures (rule R11).
  checkCommas (ps) {
    const shared = this.field === 'section' && this.toks.some(t => t.kind === 'mark')
    const united = shared || ps.some(pc => pc.unit !== BARE)
    for (const pc of ps) {
      const t = pc.lead
      if (t.sep !== ',' || pc.below || (united && !t.odd && t.tail !== 3)) continue
      this.askComma(pc)
    }
  },

  askComma (pc) {
    const t = pc.lead
    const decimal = this.option(this.nm(pc.v, pc.unit), pc.unit)
    if (t.odd) this.ask('R11', 'more than one separator in a number', decimal, READ_AGAIN)
    else if (t.tail === 3) {
      const whole = numeral(t.text.replace(',', ''))
      this.ask('R11', 'a decimal comma, or figures in groups', decimal, this.option(this.nm(whole, pc.unit), pc.unit))
    } else this.ask('R11', 'a decimal comma without a unit', decimal, ANOTHER_UNIT)
  },

  // checkFraction asks about a fraction that no tape shows (rules R13, R17). The base is what the length has besides.
  checkFraction (pc, base) {
    if (!pc.below) return
    const here = v => add(base, this.nm(v, pc.unit))
    const shown = () => this.option(here(pc.v), pc.unit)
    if (pc.top.sep) this.askPointInFraction(pc, here)
    else if (onTape(pc) && !pc.overOne && !pc.loose) return
    else if (feetOver(pc) && !onTape(pc)) {
      this.ask('R13', 'two numbers with a slash', feetInchOption(pc.top.val, pc.below), {nm: here(pc.v), text: this.spelled(pc)})
    } else if (pc.overOne && feetOver(pc) && isLess(pc.top.val, TALLEST)) {
      this.ask('R17', 'a fraction of one or more', shown(), feetInchOption(pc.top.val, pc.below))
    } else if (pc.overOne) this.ask('R17', 'a fraction of one or more', shown())
    else if (!onTape(pc)) this.ask('R17', partsName(pc.below) + ' are on no tape', ...this.tapeNeighbours(here(pc.v), pc.unit))
    else this.ask('R5', 'a space beside the fraction bar', shown())
  },

  // askPointInFraction asks whether 67.3/8 is 67-3/8.
  askPointInFraction (pc, here) {
    const [rule, reason] = pc.top.sep === ',' ? ['R11', 'a comma inside a fraction'] : ['R17', 'a point inside a fraction']
    if (pc.top.odd) { this.ask(rule, reason, READ_AGAIN); return }
    const [head, tail] = splitNumeral(pc.top)
    this.ask(rule, reason, this.option(here(add(over(tail, pc.below), head)), pc.unit), READ_AGAIN)
  },

  // tapeNeighbours are the marks of a sixteenth on either side of nm; for metric units nm itself.
  tapeNeighbours (nm, unit) {
    const l = nearestLength(nm)
    if (isMetric(unit) || l === null || (unit === BARE && this.own === MILLIMETRE)) return [this.option(nm, unit), READ_AGAIN]
    return marksAround(l, INCH_NM / 16n)
  },

  // spelled writes a fraction without a unit the way it was typed.
  spelled (pc) {
    return pc.top.text + '/' + pc.below.n + ' of ' + (this.own === MILLIMETRE ? 'a millimetre' : 'an inch')
  },

  // askPartOfFoot asks about 5.8 ft: 5-8/10 ft, or 5 ft 8 in written with a point (rule R8).
  askPartOfFoot (pc) {
    const exactly = this.option(inUnit(pc.v, FOOT), FOOT)
    if (pc.form !== 'decimal') {
      this.ask('R8', 'a part of a foot is on no tape', exactly, this.option(inUnit(pc.v, INCH), INCH))
      return
    }
    const [feet, inches] = inchesAfterPoint(pc.lead)
    this.ask('R8', 'a decimal foot is on no tape', exactly, ...(inches ? [feetInchOption(feet, inches)] : []))
  },

  // askSeveral asks about numbers side by side that make no length by themselves (rules R10, R13, R18).
  askSeveral (ps) {
    const a = ps[0]
    const last = ps[ps.length - 1]
    const two = ps.length === 2
    if (grouped(ps)) {
      const v = numeral(joinGroup(ps.map(pc => pc.lead)).text)
      this.ask('R10', 'figures in groups without a metric unit', this.option(this.nm(v, last.unit), last.unit), TWO_NUMBERS)
    } else if (two && feetBeside(a, last)) this.askFeet(a, last)
    else if (two && a.unit === METRE && last.unit === BARE && last.form === 'whole' && last.lead.text.length === 2) {
      const v = add(inUnit(last.v, CENTIMETRE), inUnit(a.v, METRE))
      this.ask('R18', 'metres, and a number without a unit', this.option(v, METRE), TWO_LENGTHS)
    } else if (afterMark(ps)) this.ask('R18', 'a fraction after the inch mark', this.option(this.total(ps), INCH), TWO_LENGTHS)
    else this.askSystems(ps)
  },

  askFeet (a, b) {
    const option = feetInchOption(a.v, b.v)
    if (a.unit === FOOT && b.unit === FOOT) this.ask('R18', 'two feet marks', option, TWO_LENGTHS)
    else this.ask('R13', 'two numbers side by side', option, ...(isLess(a.v, TALLEST) ? [] : [TWO_NUMBERS]))
  },

  // askSystems asks which value was meant; for the same length in two systems it says by how much they differ.
  askSystems (ps) {
    let cut = 1
    while (cut < ps.length && isMetric(ps[cut].unit) === isMetric(ps[cut - 1].unit)) cut++
    if (cut === ps.length || ps.some(pc => pc.unit === BARE)) {
      this.ask('R18', 'more than one number', ...ps.map(pc => this.option(this.nm(pc.v, pc.unit), pc.unit)))
      return
    }
    const a = this.total(ps.slice(0, cut))
    const b = this.total(ps.slice(cut))
    const off = over(isLess(a, b) ? subtract(b, a) : subtract(a, b), rat(MM_NM))
    this.ask('R18', 'two units that differ by ' + numberText(off) + ' mm',
      this.option(a, ps[cut - 1].unit), this.option(b, ps[ps.length - 1].unit))
  },

  // finish turns what was read into a value, unless there is a question: about its exactness (R5), a
  // bare number (R9), a swapped mark (R19) or a doubt (R18).
  finish (q) {
    if (this.pending) return this.pending
    if (q.unit === BARE && this.own === BARE) return reading({rule: 'R9', reason: WANT})
    const nm = q.unit === BARE ? this.nm(q.v, BARE) : q.v
    if (isLess(rat(MOST_READ), nm)) return reading({rule: 'R16', reason: 'more than 1 km'})
    this.checkExact(nm, q.unit)
    if (q.unit === BARE) this.checkBare(q, nm)
    this.checkNear(q, nm)
    if (this.hedge) this.ask('R18', this.doubt(), this.option(nm, q.unit), READ_AGAIN)
    return this.pending || this.value(nm, isMetric(q.unit === BARE ? this.own : q.unit))
  },

  doubt () { return this.hedge === '?' ? 'a question mark beside it' : 'an estimate: kept as told from memory' },

  value (nm, metric) {
    const out = reading({outcome: 'value', value: nm.n, metric, note64: this.note})
    if (this.note === 0) return out
    const remark = `value unchanged; remark of ${this.note > 0 ? '+1' : '-1'}/32 in kept beside it`
    return Object.assign(out, {rule: 'R14', reason: remark})
  },

  // checkExact asks about a value that is no whole number of nanometres, such as a decimal third.
  checkExact (nm, unit) {
    if (isWhole(nm)) return
    const l = nearestLength(nm)
    if (unit === BARE) unit = this.own
    const reason = 'not a whole number of nanometres'
    if (isImperial(unit)) { this.ask('R5', reason, ...marksAround(l, SIXTY_FOURTH)); return }
    this.ask('R5', reason, ...[roundDown, roundUp].map(round => this.option(rat(round(l, MM_NM / 10n)), unit)))
  },

  // checkBare asks about a number without a unit that is outside the range of its field, and about a
  // fraction of a millimetre, which no tape shows (rule R9).
  checkBare (q, nm) {
    if (q.fraction && this.own === MILLIMETRE) {
      const inches = inUnit(q.v, INCH)
      this.ask('R9', 'a fraction, and the job is in mm', {nm: inches, text: inchText(inches)}, this.option(nm, BARE))
    }
    const range = PLAUSIBLE[this.field]
    const wrong = range && outside(range, nm)
    if (wrong) this.ask('R9', spelledOut(q.v, this.own) + ' is ' + wrong, ...this.otherUnits(q.v, range))
  },

  // otherUnits are the units that bring v into the range, or the one that comes nearest to it.
  otherUnits (v, range) {
    const fit = []
    let nearest = READ_AGAIN
    let best = rat(0n)
    for (const unit of [INCH, FOOT, MILLIMETRE, CENTIMETRE, METRE]) {
      if (unit === this.own || (unit === FOOT && !isWhole(v)) || isZero(v)) continue
      const o = {nm: inUnit(v, unit), text: spelledOut(v, unit)}
      if (!outside(range, o.nm)) fit.push(o)
      else if (isLess(best, closeness(o.nm, range))) { nearest = o; best = closeness(o.nm, range) }
    }
    return fit.length ? fit : [nearest]
  },

  // checkNear asks about a foot or inch mark that puts a value far from its neighbours when the other
  // mark puts it among them (rule R19).
  checkNear (q, nm) {
    const inches = isOne(q, INCH) || (isOne(q, BARE) && this.own === INCH)
    const feet = isOne(q, FOOT)
    if (!this.near.length || this.among(nm) || (!inches && !feet)) return
    const other = feet ? over(nm, TWELVE) : times(nm, TWELVE)
    if (!this.among(other)) return
    const reason = 'the neighbours are near ' + inchText(other) + ': ' + (feet ? 'inch' : 'foot') + ' mark meant'
    this.ask('R19', reason, this.option(other, INCH), this.option(nm, INCH))
  },

  // among reports a value within the neighbours or a quarter beyond them.
  among (nm) {
    const low = this.near.reduce((a, b) => a < b ? a : b)
    const high = this.near.reduce((a, b) => a > b ? a : b)
    return 4n * nm.n >= 3n * low * nm.d && 4n * nm.n <= 5n * high * nm.d
  }
})
