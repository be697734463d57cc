package length

import "math/big"

// section reads the two sizes of a board, thickness first as the trade says them (rule R15).
func (p *reader) section() Reading {
	if p.note != 0 {
		p.ask("R15", "a remark on a section", option{text: "about which of the two sizes"})
	}
	if name, ok := p.lumberName(); ok {
		return p.lumber(name)
	}
	first, second, refused := p.sides()
	if refused != nil {
		return refused.reading()
	}
	if p.pending != nil {
		return *p.pending
	}
	return p.both(p.shareUnit(first, second))
}

// sides reads a x b; where one is missing it asks for it.
func (p *reader) sides() (first, second quantity, refused *refusal) {
	if p.peek(0).kind == by {
		p.pos++
		p.ask("R15", "the second size only", option{text: "what is the first size"})
		second, refused = p.values()
		return second, second, refused
	}
	first, refused = p.sum()
	switch {
	case refused != nil:
		return first, first, refused
	case p.peek(0).kind != by:
		p.ask("R15", "one size only", option{text: "what is the second size"})
		refused = p.rest()
		return first, first, refused
	}
	p.pos++
	if p.peek(0).kind == end {
		p.ask("R15", "the first size only", option{text: "what is the second size"})
		return first, first, nil
	}
	second, refused = p.sum()
	if refused == nil {
		refused = p.rest()
	}
	return first, second, refused
}

// rest reads what follows a section; anything that can be read is asked about.
func (p *reader) rest() *refusal {
	switch p.peek(0).kind {
	case end:
		return nil
	case by, split:
		p.pos++
		p.ask("R15", "more than two sizes", readAgain)
		if _, refused := p.sum(); refused != nil {
			return refused
		}
		return p.rest()
	}
	return p.misplaced()
}

// shareUnit gives both sizes the unit that is written once: after the second, or after the first where it is the job's own.
func (p *reader) shareUnit(a, b quantity) (quantity, quantity) {
	switch own := p.ctx.Unit.written(); {
	case a.unit == bare && b.unit != bare:
		a = a.scaled(b.unit)
	case b.unit == bare && a.unit != bare && a.unit != own:
		p.ask("R15", "a unit after the first size only", option{text: "the same unit for both"}, option{text: "another"})
	case b.unit == bare && a.unit != bare:
		b = b.scaled(a.unit)
	}
	if a.unit == foot || b.unit == foot {
		p.ask("R15", "a section in feet", option{text: "inches meant"}, readAgain)
	}
	return a, b
}

// both joins the readings of the two sizes.
func (p *reader) both(a, b quantity) Reading {
	first, second := p.finish(a), p.finish(b)
	switch {
	case first.Outcome != Value:
		return first
	case second.Outcome != Value:
		return second
	case first.Value == 0 || second.Value == 0:
		return refuse("a section has no size of zero").reading()
	}
	widest := widestLumber * Millimetre
	if b.unit == bare && p.ctx.Unit == Millimetres && first.Value <= widest && second.Value <= widest {
		p.ask("R15", "small for a section in mm",
			option{text: pairText(inUnit(a.v, inch), inUnit(b.v, inch))},
			option{text: numberText(a.v) + " x " + numberText(b.v) + " mm"})
		return *p.pending
	}
	return Reading{Outcome: Value, Value: first.Value, Second: second.Value, Reason: "actual size", Rule: "R15"}
}

func pairText(a, b *big.Rat) string { return inchText(a) + " x " + inchText(b) }
