package length

import "math/big"

// sum reads products joined by + (rule R6). A minus is read and asked about (rule R7).
func (p *reader) sum() (quantity, *refusal) {
	left, refused := p.product()
	for refused == nil {
		t := p.peek(0)
		if t.kind != plus && t.kind != dash && t.kind != minus {
			return left, nil
		}
		p.pos++
		evenly := t.kind == dash && t.gap && p.peek(0).gap
		var right quantity
		if right, refused = p.product(); refused != nil {
			break
		}
		if t.kind == plus {
			left = p.add(left, right)
		} else {
			left, refused = p.less(left, right, evenly)
		}
	}
	return left, refused
}

// product reads factors joined by *.
func (p *reader) product() (quantity, *refusal) {
	left, refused := p.factor()
	for refused == nil && p.peek(0).kind == times {
		p.pos++
		var right quantity
		if right, refused = p.factor(); refused == nil {
			left, refused = p.multiply(left, right)
		}
	}
	return left, refused
}

// factor reads a bracket, with a unit after it where what it holds has none, or a quantity.
func (p *reader) factor() (quantity, *refusal) {
	if p.peek(0).kind != opening {
		return p.quantity()
	}
	p.pos++
	q, refused := p.sum()
	if refused != nil {
		return q, refused
	}
	if p.peek(0).kind != closing {
		return q, refuse("a bracket is not closed")
	}
	p.pos++
	q.pieces, q.head = nil, nil
	if p.peek(0).kind == mark {
		if q.unit != bare {
			return q, p.misplaced()
		}
		q = q.scaled(p.next().unit)
	}
	return q, nil
}

// add puts two terms on one scale. A term without a unit beside one with a unit is asked about unless the job's unit settles
// it, or it stands for inches after feet.
func (p *reader) add(a, b quantity) quantity {
	if (a.unit == bare) != (b.unit == bare) {
		a, b = p.settle(a, b)
	}
	sum := quantity{v: new(big.Rat).Add(a.v, b.v), unit: b.unit, fraction: a.fraction || b.fraction}
	sum.mixed = a.mixed || b.mixed || a.unit.metric() != b.unit.metric()
	return sum
}

// settle gives the bare one of two terms its unit.
func (p *reader) settle(a, b quantity) (quantity, quantity) {
	own := p.ctx.Unit.written()
	feetFirst := a.unit == foot && own == inch
	known := (a.unit == bare || a.unit == own || feetFirst) && (b.unit == bare || b.unit == own) && !a.mixed && !b.mixed
	plain := a.v
	if b.unit == bare {
		plain = b.v
	}
	if own == bare {
		own = max(a.unit, b.unit)
	}
	if !known {
		p.ask("R18", "one term has a unit and one has none", option{text: numberText(plain) + " " + units[own].name}, option{text: "another unit"})
	}
	if a.unit == bare {
		return a.scaled(own), b
	}
	return a, b.scaled(own)
}

// less asks about a minus: subtraction, or a dash with a space that should not be there. A dash with a space on both sides
// between feet and inches, as drawings have it, only separates (rule R1).
func (p *reader) less(a, b quantity, evenly bool) (quantity, *refusal) {
	if evenly && a.feetOnly() && b.inchesOnly() {
		return p.compose([]piece{a.pieces[0], b.pieces[0]})
	}
	joined := p.add(a, b)
	minus := b
	minus.v = new(big.Rat).Neg(b.v)
	rest := p.add(a, minus)
	var options []option
	if rest.v.Sign() >= 0 {
		options = append(options, p.optionOf(rest))
	}
	p.ask("R7", "a minus, or a dash with a space before it", append(options, p.dashOption(a, b, joined))...)
	return joined, nil
}

// dashOption is what was meant if the minus was a slip.
func (p *reader) dashOption(a, b, joined quantity) option {
	slip := option{text: "a slip of the pen"}
	if !a.wholeOnly() || len(b.pieces) != 1 || a.unit.metric() || b.unit.metric() {
		return slip
	}
	low := b.v.Cmp(twelve) < 0
	switch {
	case b.pieces[0].form == fractional:
		return p.optionOf(joined)
	case a.unit == bare && b.unit == bare && low && a.v.Cmp(tallest) < 0:
		return feetInchOption(a.v, b.v)
	case b.unit != bare || low:
		return p.optionOf(joined)
	}
	return slip
}

// multiply refuses an area and asks where the last factor has a dash: 14*3-1/2 may be 14 times 3-1/2, or 42 less 1/2.
func (p *reader) multiply(a, b quantity) (quantity, *refusal) {
	if a.unit != bare && b.unit != bare {
		return a, &refusal{"R6", "a length times a length is an area"}
	}
	out := quantity{v: new(big.Rat).Mul(a.v, b.v), unit: max(a.unit, b.unit), mixed: a.mixed || b.mixed}
	out.fraction = a.fraction || b.fraction
	if b.head != nil {
		rest := out
		tail := new(big.Rat).Sub(b.v, b.head)
		rest.v = new(big.Rat).Mul(a.v, b.head)
		rest.v.Sub(rest.v, tail)
		p.ask("R6", "a product that ends in a dash", p.optionOf(out), p.optionOf(rest))
	}
	return out, nil
}
