package length

import "math/big"

var (
	twoNumbers = option{text: "two numbers"}
	twoLengths = option{text: "two lengths"}
)

// askSeveral asks about numbers side by side that make no length by themselves (rules R10, R13, R18).
func (p *reader) askSeveral(ps []piece) {
	last := ps[len(ps)-1]
	switch {
	case grouped(ps):
		v := numeral(joinGroup(leads(ps)).text)
		p.ask("R10", "figures in groups without a metric unit", p.option(p.nm(v, last.unit), last.unit), twoNumbers)
	case len(ps) == 2 && feetBeside(ps[0], last):
		p.askFeet(ps[0], last)
	case len(ps) == 2 && ps[0].unit == metre && last.unit == bare && last.form == wholeNumber && len(last.lead.text) == 2:
		v := inUnit(last.v, centimetre)
		p.ask("R18", "metres, and a number without a unit", p.option(v.Add(v, inUnit(ps[0].v, metre)), metre), twoLengths)
	case afterMark(ps):
		p.ask("R18", "a fraction after the inch mark", p.option(p.total(ps), inch), twoLengths)
	default:
		p.askSystems(ps)
	}
}

// feetBeside reports two numbers that can be feet and inches although their marks do not say so.
func feetBeside(a, b piece) bool {
	unmarked := a.unit == bare && (b.unit == bare || b.unit == inch)
	odd := a.unit == foot && (a.colon || b.unit == foot)
	return (unmarked || odd) && a.form == wholeNumber && b.v.Cmp(twelve) < 0 && !b.unit.metric()
}

// tallest bounds the feet of a number that is taken for feet without a mark.
var tallest = big.NewRat(24, 1)

func (p *reader) askFeet(a, b piece) {
	options := []option{feetInchOption(a.v, b.v)}
	switch {
	case a.unit == foot && b.unit == foot:
		p.ask("R18", "two feet marks", options[0], twoLengths)
		return
	case a.v.Cmp(tallest) >= 0:
		options = append(options, twoNumbers)
	}
	p.ask("R13", "two numbers side by side", options...)
}

// afterMark reports a fraction less than one after the inch mark: 5' 7" 3/8.
func afterMark(ps []piece) bool {
	n := len(ps)
	f := ps[n-1]
	feet := n == 2 || n == 3 && ps[0].unit == foot && ps[0].form == wholeNumber
	return feet && ps[n-2].unit == inch && ps[n-2].form == wholeNumber && f.unit == bare && f.form == fractional && !f.overOne
}

// askSystems asks which value was meant; for the same length in two systems it says by how much they differ.
func (p *reader) askSystems(ps []piece) {
	cut := 1
	for cut < len(ps) && ps[cut].unit.metric() == ps[cut-1].unit.metric() {
		cut++
	}
	if cut == len(ps) || !allMarked(ps) {
		p.ask("R18", "more than one number", p.optionsOfPieces(ps)...)
		return
	}
	a, b := p.total(ps[:cut]), p.total(ps[cut:])
	off := new(big.Rat).Sub(a, b)
	off.Quo(off.Abs(off), rat(Millimetre))
	p.ask("R18", "two units that differ by "+numberText(off)+" mm", p.option(a, ps[cut-1].unit), p.option(b, ps[len(ps)-1].unit))
}

// allMarked reports that every number has its unit.
func allMarked(ps []piece) bool {
	for _, pc := range ps {
		if pc.unit == bare {
			return false
		}
	}
	return true
}

func (p *reader) total(ps []piece) *big.Rat {
	v := new(big.Rat)
	for _, pc := range ps {
		v.Add(v, p.nm(pc.v, pc.unit))
	}
	return v
}

func (p *reader) optionsOfPieces(ps []piece) []option {
	var out []option
	for _, pc := range ps {
		out = append(out, p.option(p.nm(pc.v, pc.unit), pc.unit))
	}
	return out
}

// grouped reports whole numbers that look like one number in groups of three.
func grouped(ps []piece) bool {
	for i, pc := range ps {
		if pc.form != wholeNumber || i < len(ps)-1 && (pc.unit != bare || pc.colon) || i > 0 && !isGroup(pc.lead) {
			return false
		}
	}
	return len(ps[0].lead.text) <= 3 && ps[0].lead.text[0] != '0'
}

func leads(ps []piece) []token {
	var out []token
	for _, pc := range ps {
		out = append(out, pc.lead)
	}
	return out
}
