package length

import "math/big"

var readAgain = option{text: "read it again"}

// option shows nm the way a tape of that unit would: feet and inches for inches and feet, metric as written.
func (p *reader) option(nm *big.Rat, u unit) option {
	if u == bare {
		u = p.ctx.Unit.written()
	}
	if u.metric() {
		return option{nm, numberText(new(big.Rat).Quo(nm, rat(units[u].length))) + " " + units[u].name}
	}
	return option{nm, inchText(nm)}
}

// inchText shows a number of nanometres in tape notation where a tape has the mark, otherwise in decimal inches with the
// nearest mark beside it.
func inchText(nm *big.Rat) string {
	l, ok := nearestNM(nm)
	if !ok {
		return numberText(new(big.Rat).Quo(nm, rat(Inch))) + " in"
	}
	if new(big.Rat).SetInt64(int64(l)).Cmp(nm) == 0 && l%sixtyFourth == 0 {
		return tape(l)
	}
	return numberText(new(big.Rat).Quo(nm, rat(Inch))) + " in (about " + tape(l.Round(Inch/16, Nearest)) + ")"
}

// optionOf shows a quantity that may be bare.
func (p *reader) optionOf(q quantity) option {
	if q.unit == bare {
		return p.option(p.nm(q.v, bare), bare)
	}
	return p.option(q.v, q.unit)
}

func (p *reader) optionsOf(qs []quantity) []option {
	var out []option
	for _, q := range qs {
		out = append(out, p.optionOf(q))
	}
	return out
}

// feetInchOption shows two bare numbers as feet and inches.
func feetInchOption(feet, inches *big.Rat) option {
	nm := inUnit(feet, foot)
	nm.Add(nm, inUnit(inches, inch))
	return option{nm, inchText(nm)}
}

// tapeNeighbours are the marks of a sixteenth on either side of nm; for metric units nm itself.
func (p *reader) tapeNeighbours(nm *big.Rat, u unit) []option {
	l, ok := nearestNM(nm)
	if u.metric() || !ok || u == bare && p.ctx.Unit == Millimetres {
		return []option{p.option(nm, u), readAgain}
	}
	return marksAround(l, Inch/16)
}

// marksAround are the multiples of step on either side of l, one where l is a multiple.
func marksAround(l, step Length) []option {
	low, high := l.Round(step, TowardZero), l.Round(step, AwayFromZero)
	out := []option{{rat(low), tape(low)}}
	if high != low {
		out = append(out, option{rat(high), tape(high)})
	}
	return out
}

// askPartOfFoot asks about 5.8 ft: 5-8/10 ft, or 5 ft 8 in written with a point (rule R8).
func (p *reader) askPartOfFoot(pc piece) {
	exactly := p.option(inUnit(pc.v, foot), foot)
	if pc.form != decimal {
		p.ask("R8", "a part of a foot is on no tape", exactly, p.option(inUnit(pc.v, inch), inch))
		return
	}
	options := []option{exactly}
	if feet, inches := inchesAfterPoint(pc.lead); inches != nil {
		options = append(options, feetInchOption(feet, inches))
	}
	p.ask("R8", "a decimal foot is on no tape", options...)
}

// inchesAfterPoint takes the figures after the point for inches: 5.8 for 5 ft 8, 5.10 for 5 ft 10, 10.25 for 10 ft 2.5;
// no inches where they cannot be.
func inchesAfterPoint(t token) (feet, inches *big.Rat) {
	if t.odd {
		return nil, nil
	}
	feet, inches = splitNumeral(t)
	switch {
	case inches.Sign() == 0 || t.tail > 2:
		return feet, nil
	case inches.Cmp(twelve) >= 0:
		inches.Quo(inches, big.NewRat(10, 1))
	}
	return feet, inches
}

// spelled writes a fraction without a unit the way it was typed.
func (p *reader) spelled(pc piece) string {
	text := pc.top.text + "/" + pc.below.Num().String() + " of "
	if p.ctx.Unit == Millimetres {
		return text + "a millimetre"
	}
	return text + "an inch"
}

var partNames = map[string]string{
	"3": "thirds", "5": "fifths", "6": "sixths", "7": "sevenths", "9": "ninths", "10": "tenths", "12": "twelfths",
}

// parts names what a denominator counts.
func parts(below *big.Rat) string {
	d := below.Num().String()
	if name := partNames[d]; name != "" {
		return name
	}
	return "parts of " + d
}
