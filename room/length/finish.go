package length

import (
	"fmt"
	"math/big"
)

// finish turns what was read into a value, unless there is a question: about its exactness (R5), a bare number (R9), a
// swapped mark (R19) or a doubt (R18).
func (p *reader) finish(q quantity) Reading {
	if p.pending != nil {
		return *p.pending
	}
	if q.unit == bare && p.ctx.Unit == Unstated {
		return (&refusal{"R9", want}).reading()
	}
	nm := q.v
	if q.unit == bare {
		nm = p.nm(q.v, bare)
	}
	if nm.Cmp(rat(MaxRead)) > 0 {
		return refuse("more than 1 km").reading()
	}
	p.checkExact(nm, q.unit)
	if q.unit == bare {
		p.checkBare(q, nm)
	}
	p.checkNear(q, nm)
	if p.hedge != "" {
		p.ask("R18", p.doubt(), p.option(nm, q.unit), readAgain)
	}
	if p.pending != nil {
		return *p.pending
	}
	return p.value(nm)
}

// doubt says what the word or sign of doubt means for the value.
func (p *reader) doubt() string {
	if p.hedge == "?" {
		return "a question mark beside it"
	}
	return "an estimate: kept as told from memory"
}

func (p *reader) value(nm *big.Rat) Reading {
	out := Reading{Outcome: Value, Value: Length(nm.Num().Int64()), Note64: p.note}
	if p.note != 0 {
		out.Rule = "R14"
		out.Reason = fmt.Sprintf("value unchanged; remark of %+d/32 in kept beside it", p.note/2)
	}
	return out
}

// checkExact asks about a value that is no whole number of nanometres, such as a decimal third.
func (p *reader) checkExact(nm *big.Rat, u unit) {
	if nm.IsInt() {
		return
	}
	l, _ := nearestNM(nm)
	if u == bare {
		u = p.ctx.Unit.written()
	}
	if u.imperial() {
		p.ask("R5", "not a whole number of nanometres", marksAround(l, sixtyFourth)...)
		return
	}
	low, high := l.Round(Millimetre/10, TowardZero), l.Round(Millimetre/10, AwayFromZero)
	p.ask("R5", "not a whole number of nanometres", p.option(rat(low), u), p.option(rat(high), u))
}

// checkBare asks about a number without a unit that is outside the range of its field, and about a fraction of a
// millimetre, which no tape shows (rule R9).
func (p *reader) checkBare(q quantity, nm *big.Rat) {
	if q.fraction && p.ctx.Unit == Millimetres {
		p.ask("R9", "a fraction, and the job is in mm", option{inUnit(q.v, inch), inchText(inUnit(q.v, inch))}, p.option(nm, bare))
	}
	r, limited := plausibleIn[p.ctx.Field]
	if !limited {
		return
	}
	if wrong := r.outside(nm); wrong != "" {
		p.ask("R9", spelledOut(q.v, p.ctx.Unit.written())+" is "+wrong, p.otherUnits(q.v, r)...)
	}
}

// otherUnits are the units that bring v into the range, or the one that comes nearest to it.
func (p *reader) otherUnits(v *big.Rat, r plausible) []option {
	var fit []option
	nearest, best := readAgain, new(big.Rat)
	for _, u := range []unit{inch, foot, millimetre, centimetre, metre} {
		if u == p.ctx.Unit.written() || u == foot && !v.IsInt() || v.Sign() == 0 {
			continue
		}
		nm := inUnit(v, u)
		o := option{nm, spelledOut(v, u)}
		if r.outside(nm) == "" {
			fit = append(fit, o)
		} else if c := closeness(nm, r); c.Cmp(best) > 0 {
			nearest, best = o, c
		}
	}
	if fit != nil {
		return fit
	}
	return []option{nearest}
}

// spelledOut writes a number with its unit, and in tape notation beside it where a tape has feet for it: 67 in (5' 7").
func spelledOut(v *big.Rat, u unit) string {
	text := numberText(v) + " " + units[u].name
	l, ok := exact(inUnit(v, u))
	switch {
	case u.metric() || !ok || l%sixtyFourth != 0 || l < Foot:
		return text
	case u == foot:
		return tape(l)
	}
	return text + " (" + tape(l) + ")"
}

// closeness is 1 at the edge of the range and falls to 0 far from it.
func closeness(nm *big.Rat, r plausible) *big.Rat {
	if low := rat(r.low); nm.Cmp(low) < 0 {
		return new(big.Rat).Quo(nm, low)
	}
	return new(big.Rat).Quo(rat(r.high), nm)
}

// checkNear asks about a foot or inch mark that puts a value far from its neighbours when the other mark puts it among them
// (rule R19).
func (p *reader) checkNear(q quantity, nm *big.Rat) {
	inches := q.is(inch) || q.is(bare) && p.ctx.Unit == Inches
	if len(p.ctx.Near) == 0 || p.among(nm) || !inches && !q.is(foot) {
		return
	}
	other := new(big.Rat).Mul(nm, twelve)
	meant := "foot mark"
	if q.is(foot) {
		other.Quo(nm, twelve)
		meant = "inch mark"
	}
	if p.among(other) {
		reason := "the neighbours are near " + inchText(other) + ": " + meant + " meant"
		p.ask("R19", reason, p.option(other, inch), p.option(nm, inch))
	}
}

// among reports a value within the neighbours or a quarter beyond them.
func (p *reader) among(nm *big.Rat) bool {
	low, high := p.ctx.Near[0], p.ctx.Near[0]
	for _, n := range p.ctx.Near {
		low, high = min(low, n), max(high, n)
	}
	return nm.Cmp(new(big.Rat).Mul(rat(low), big.NewRat(3, 4))) >= 0 && nm.Cmp(new(big.Rat).Mul(rat(high), big.NewRat(5, 4))) <= 0
}
