package length

import "math/big"

// piece is a number with the unit written after it.
type piece struct {
	amount
	unit  unit
	colon bool // a colon stands after it
}

// quantity is a length as written, or a number without a unit.
type quantity struct {
	v        *big.Rat // in nanometres; the number itself where the unit is bare
	unit     unit     // the last one written
	mixed    bool     // holds inches and millimetres
	fraction bool     // holds a fraction
	head     *big.Rat // the part before the last tight dash, on the scale of v; nil without one
	pieces   []piece  // as written; nil for sums and brackets
}

// scaled gives a bare quantity its unit.
func (q quantity) scaled(u unit) quantity {
	q.unit = u
	q.v = inUnit(q.v, u)
	return q
}

func (q quantity) is(u unit) bool   { return len(q.pieces) == 1 && q.unit == u }
func (q quantity) feetOnly() bool   { return q.is(foot) && q.pieces[0].form == wholeNumber }
func (q quantity) inchesOnly() bool { return q.is(inch) && q.pieces[0].form != fractional }
func (q quantity) wholeOnly() bool  { return len(q.pieces) == 1 && q.pieces[0].form == wholeNumber }
func inUnit(v *big.Rat, u unit) *big.Rat {
	return new(big.Rat).Mul(v, rat(units[u].length))
}

// nm scales a number, a bare one by the unit of the job.
func (p *reader) nm(v *big.Rat, u unit) *big.Rat {
	if u == bare {
		return new(big.Rat).Mul(v, rat(p.ctx.Unit.length()))
	}
	return inUnit(v, u)
}

// quantity reads numbers that stand side by side, each with or without its unit.
func (p *reader) quantity() (quantity, *refusal) {
	var ps []piece
	for more := true; more; {
		pc, refused := p.piece()
		if refused != nil {
			return quantity{}, refused
		}
		more = p.joined(pc)
		pc.colon = more && p.toks[p.pos-1].kind == colon
		ps = append(ps, pc)
	}
	return p.compose(ps)
}

func (p *reader) piece() (piece, *refusal) {
	a, refused := p.amount()
	if refused != nil {
		return piece{}, refused
	}
	pc := piece{amount: a}
	if p.peek(0).kind == mark {
		pc.unit = p.next().unit
		if p.peek(0).kind == mark {
			return pc, p.misplaced()
		}
	}
	return pc, nil
}

// joined passes what separates two numbers of one quantity and reports whether another follows. A dash with a space before
// it is left to the sum as a minus; so is one with a space after it, but after feet it only separates (rule R1).
func (p *reader) joined(pc piece) bool {
	switch t := p.peek(0); t.kind {
	case number, vulgar:
		return true
	case and, colon:
		p.pos++
		return true
	case dash:
		if !p.tight() && (t.gap || pc.unit != foot) {
			return false
		}
		p.pos++
		return true
	}
	return false
}

// compose makes one quantity of numbers side by side.
func (p *reader) compose(ps []piece) (quantity, *refusal) {
	p.checkCommas(ps)
	switch {
	case len(ps) == 1:
		return p.oneNumber(ps[0]), nil
	case len(ps) == 2 && ps[0].unit == foot && (ps[1].unit == inch || ps[1].unit == bare) && !ps[0].colon:
		return p.feetInches(ps[0], ps[1]), nil
	}
	if refused := misordered(ps); refused != nil {
		return quantity{}, refused
	}
	if descending(ps) {
		return p.metricChain(ps), nil
	}
	p.askSeveral(ps)
	return quantity{v: p.nm(ps[0].v, ps[0].unit), unit: inch}, nil
}

// oneNumber makes a quantity of one number; a part of a foot is asked about (rule R8).
func (p *reader) oneNumber(pc piece) quantity {
	q := quantity{v: pc.v, unit: pc.unit, head: pc.head, fraction: pc.below != nil, pieces: []piece{pc}}
	if pc.unit != bare {
		q.v = inUnit(pc.v, pc.unit)
	}
	if pc.unit != bare && pc.head != nil {
		q.head = inUnit(pc.head, pc.unit)
	}
	switch {
	case pc.lead.grouped && q.v.Cmp(rat(longestTape)) > 0:
		p.ask("R10", "longer than any tape", p.option(q.v, pc.unit), twoNumbers)
	case pc.unit == foot && pc.form != wholeNumber:
		p.askPartOfFoot(pc)
	default:
		p.checkFraction(pc, new(big.Rat))
	}
	return q
}

// longestTape bounds figures in groups of three, which may also be two numbers (common practice, no source).
const longestTape = 50_000 * Millimetre

// feetInches makes a quantity of feet and inches, marked or not.
func (p *reader) feetInches(f, i piece) quantity {
	feet := inUnit(f.v, foot)
	v := new(big.Rat).Add(feet, inUnit(i.v, inch))
	if i.unit == bare {
		i.unit = inch
	}
	switch {
	case f.form != wholeNumber:
		p.ask("R8", "a part of a foot, and inches beside it", p.option(v, inch), twoLengths)
	case i.v.Cmp(twelve) >= 0:
		p.ask("R17", numberText(i.v)+" in after feet", p.option(v, inch))
	default:
		p.checkFraction(i, feet)
	}
	return quantity{v: v, unit: inch, head: feet, fraction: i.below != nil}
}

// metricChain makes a quantity of metres, centimetres and millimetres in that order (rule R10).
func (p *reader) metricChain(ps []piece) quantity {
	v, last := p.total(ps), ps[len(ps)-1].unit
	for i, pc := range ps[1:] {
		before := ps[i]
		if before.form != wholeNumber || inUnit(pc.v, pc.unit).Cmp(rat(units[before.unit].length)) >= 0 {
			p.ask("R18", "one length, or two", p.option(v, last), twoLengths)
		}
	}
	return quantity{v: v, unit: last}
}

// descending reports metric units from large to small.
func descending(ps []piece) bool {
	for i, pc := range ps {
		if !pc.unit.metric() || pc.colon || i > 0 && pc.unit >= ps[i-1].unit {
			return false
		}
	}
	return true
}

// misordered refuses units that nobody writes in that order, and two systems in one length (rule R16).
func misordered(ps []piece) *refusal {
	for i := 1; i < len(ps); i++ {
		a, b := ps[i-1].unit, ps[i].unit
		switch {
		case a == inch && b == foot:
			return refuse("inches before feet")
		case a.metric() && b.metric() && a < b:
			return refuse("%s before %s", units[a].plural, units[b].plural)
		case a != bare && b != bare && a.metric() != b.metric() && inUnit(ps[i].v, b).Cmp(rat(units[a].length)) < 0:
			return refuse("%s and %s in one length", units[a].plural, units[b].plural)
		}
	}
	return nil
}
