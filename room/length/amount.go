package length

import "math/big"

// form is how a number is written.
type form int

const (
	wholeNumber form = iota
	decimal
	fractional // n/d or a fraction in one character
	compound   // whole number and fraction
)

// amount is one number as written, without its unit.
type amount struct {
	v       *big.Rat
	form    form
	head    *big.Rat // the whole number before a tight dash, nil without one
	lead    token    // the first number
	top     token    // numerator, or the fraction in one character
	below   *big.Rat // denominator as written, nil without a fraction
	loose   bool     // spaces round the fraction bar
	overOne bool     // fraction of one or more
}

var (
	one    = big.NewRat(1, 1)
	twelve = big.NewRat(12, 1)
)

// amount reads a number: whole, decimal, fraction, or whole number and fraction (rules R2 to R5).
func (p *reader) amount() (amount, *refusal) {
	t := p.peek(0)
	switch {
	case t.kind == vulgar, t.kind == number && p.peek(1).kind == bar:
		return p.fraction()
	case t.kind != number:
		return amount{}, p.misplaced()
	case !t.whole():
		p.pos++
		return amount{v: t.val, form: decimal, lead: t}, nil
	}
	return p.compound()
}

// compound reads a whole number and the fraction that belongs to it, after a space, a tight dash or "and".
func (p *reader) compound() (amount, *refusal) {
	t := p.next()
	out := amount{v: t.val, lead: t}
	skip := 0
	if k := p.peek(0).kind; k == and || k == dash && p.tight() {
		skip = 1
	}
	first := p.peek(skip)
	if first.kind != vulgar && (first.kind != number || p.peek(skip+1).kind != bar) {
		return out, nil
	}
	dashed := p.peek(0).kind == dash
	p.pos += skip
	f, refused := p.fraction()
	if dashed {
		out.head = t.val
	}
	out.form, out.top, out.below, out.loose, out.overOne = compound, f.top, f.below, f.loose, f.overOne
	if refused == nil {
		out.v = new(big.Rat).Add(t.val, f.v)
	}
	return out, refused
}

// tight reports that no space stands on either side of the next token.
func (p *reader) tight() bool { return !p.peek(0).gap && !p.peek(1).gap }

// fraction reads n/d or a fraction in one character.
func (p *reader) fraction() (amount, *refusal) {
	top := p.next()
	out := amount{v: top.val, form: fractional, lead: top, top: top}
	if top.kind == vulgar {
		out.below = new(big.Rat).SetInt(top.val.Denom())
		return out, nil
	}
	line, below := p.next(), p.peek(0)
	switch {
	case below.kind != number:
		return out, p.misplaced()
	case below.val.Sign() == 0:
		return out, refuse("a fraction over zero")
	case !below.whole():
		return out, refuse("a fraction has a whole number below the bar")
	case p.peek(1).kind == bar:
		return out, refuse("two fraction bars")
	}
	p.pos++
	out.below, out.loose = below.val, line.gap || below.gap
	out.v = new(big.Rat).Quo(top.val, below.val)
	out.overOne = out.v.Cmp(one) >= 0
	return out, nil
}

// onTape reports a denominator that an inch tape has marks for.
func (a amount) onTape() bool {
	switch a.below.Num().Int64() {
	case 2, 4, 8, 16, 32, 64:
		return a.below.Num().IsInt64()
	}
	return false
}

// checkFraction asks about a fraction that no tape shows (rules R13, R17). The base is what the length has besides.
func (p *reader) checkFraction(pc piece, base *big.Rat) {
	if pc.below == nil {
		return
	}
	here := func(v *big.Rat) *big.Rat { return new(big.Rat).Add(base, p.nm(v, pc.unit)) }
	switch {
	case pc.top.sep != 0:
		p.askPointInFraction(pc, here)
	case pc.onTape() && !pc.overOne && !pc.loose:
	case pc.feetOver() && !pc.onTape():
		p.ask("R13", "two numbers with a slash", feetInchOption(pc.top.val, pc.below), option{here(pc.v), p.spelled(pc)})
	case pc.overOne && pc.feetOver() && pc.top.val.Cmp(tallest) < 0:
		p.ask("R17", "a fraction of one or more", p.option(here(pc.v), pc.unit), feetInchOption(pc.top.val, pc.below))
	case pc.overOne:
		p.ask("R17", "a fraction of one or more", p.option(here(pc.v), pc.unit))
	case !pc.onTape():
		p.ask("R17", parts(pc.below)+" are on no tape", p.tapeNeighbours(here(pc.v), pc.unit)...)
	default:
		p.ask("R5", "a space beside the fraction bar", p.option(here(pc.v), pc.unit))
	}
}

// feetOver reports n/d that can be feet and inches with a slash between: without a whole number, a unit or 12 inches.
func (pc piece) feetOver() bool {
	return pc.form == fractional && pc.top.kind == number && pc.unit == bare && pc.below.Cmp(twelve) < 0
}

// askPointInFraction asks whether 67.3/8 is 67-3/8.
func (p *reader) askPointInFraction(pc piece, here func(*big.Rat) *big.Rat) {
	rule, reason := "R17", "a point inside a fraction"
	if pc.top.sep == ',' {
		rule, reason = "R11", "a comma inside a fraction"
	}
	if pc.top.odd {
		p.ask(rule, reason, readAgain)
		return
	}
	head, tail := splitNumeral(pc.top)
	v := tail.Quo(tail, pc.below)
	p.ask(rule, reason, p.option(here(v.Add(v, head)), pc.unit), readAgain)
}

// splitNumeral returns the figures before and after the separator as two whole numbers.
func splitNumeral(t token) (head, tail *big.Rat) {
	at := len(t.text) - t.tail - 1
	return numeral("0" + t.text[:at]), numeral(t.text[at+1:])
}
