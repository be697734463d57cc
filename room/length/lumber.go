package length

import (
	"math/big"
	"strconv"
)

// widestLumber is the widest nominal board and dimension lumber, in inches.
const widestLumber = 16

// lumberName is a nominal size as the trade says it: 2x4, 5/4x6.
type lumberName struct {
	text          string
	thick, wide   int64 // nominal, thickness in quarters of an inch, width in inches
	marked, quart bool  // written with an inch mark; thickness written in quarters
}

// lumberName recognises two whole numbers, or a thickness of 5/4 or 6/4 and a whole width. In a job in millimetres numbers
// too large for lumber are millimetres.
func (p *reader) lumberName() (lumberName, bool) {
	var n lumberName
	var toks []token
	for _, t := range p.toks {
		if t.kind == mark && t.unit == inch {
			n.marked = true
			continue
		}
		toks = append(toks, t)
	}
	n.quart = len(toks) == 5 && toks[1].kind == bar && toks[2].text == "4" && (toks[0].text == "5" || toks[0].text == "6")
	if n.quart {
		n.text = toks[0].text + "/4"
		n.thick = toks[0].val.Num().Int64()
		toks = toks[2:]
	}
	if len(toks) != 3 || !toks[0].whole() || toks[1].kind != by || !toks[2].whole() {
		return n, false
	}
	n, ok := n.sized(toks[0], toks[2])
	metric := p.ctx.Unit == Millimetres && !n.marked && !n.quart && (n.wide > widestLumber || n.thick > 4*widestLumber)
	return n, ok && !metric
}

// sized fills the numbers in; larger ones are no lumber in any unit.
func (n lumberName) sized(thick, wide token) (lumberName, bool) {
	limit := big.NewRat(1_000_000, 1)
	if thick.val.Cmp(limit) > 0 || wide.val.Cmp(limit) > 0 || thick.val.Sign() == 0 || wide.val.Sign() == 0 {
		return n, false
	}
	if !n.quart {
		n.text = thick.text
		n.thick = 4 * thick.val.Num().Int64()
	}
	n.text += "x" + wide.text
	n.wide = wide.val.Num().Int64()
	return n, true
}

// lumber reads a nominal size as its dry dressed size; it asks where the numbers may be actual.
func (p *reader) lumber(n lumberName) Reading {
	thick, wide, known := n.dressed()
	actual := option{text: pairText(rat(Length(n.thick)*Inch/4), rat(Length(n.wide)*Inch))}
	metric := option{text: numberText(big.NewRat(n.thick, 4)) + " x " + numberText(big.NewRat(n.wide, 1)) + " mm"}
	dressed := n.dressedOption()
	switch {
	case !known && n.swapped().known():
		p.ask("R15", "thickness comes first", n.swapped().dressedOption(), actual)
	case !known:
		p.ask("R15", "no lumber has this nominal size", actual, metric)
	case p.ctx.Unit == Millimetres && !n.marked && !n.quart:
		p.ask("R15", "a nominal size, and the job is in mm", dressed, metric)
	case n.marked:
		p.ask("R15", "a nominal size with an inch mark", dressed, actual)
	}
	if p.hedge != "" {
		p.ask("R18", p.doubt(), dressed, readAgain)
	}
	if p.pending != nil {
		return *p.pending
	}
	return Reading{Outcome: Value, Value: thick, Second: wide, Reason: "nominal size: taken as dry and dressed", Rule: "R15"}
}

// swapped is the size with its numbers the other way round, for sizes in whole inches.
func (n lumberName) swapped() lumberName {
	n.thick, n.wide = 4*n.wide, n.thick/4
	n.text = strconv.FormatInt(n.thick/4, 10) + "x" + strconv.FormatInt(n.wide, 10)
	return n
}

func (n lumberName) known() bool {
	_, _, known := n.dressed()
	return known
}

func (n lumberName) dressedOption() option {
	thick, wide, _ := n.dressed()
	return option{text: pairText(rat(thick), rat(wide)) + " (" + n.text + ", dressed)"}
}

// dressed returns the dry dressed size (American Softwood Lumber Standard PS 20, dressed sizes): boards of 1, 5/4 and 6/4
// to 3/4, 1 and 1-1/4 in; from 2 to 4 in 1/2 in less; timbers from 5 in both ways by the timber rule.
func (n lumberName) dressed() (thick, wide Length, known bool) {
	switch {
	case n.thick > 4*n.wide || n.wide < 2:
		return 0, 0, false
	case n.thick >= 4*5 && !n.quart:
		thick, wide = Length(n.thick/4), Length(n.wide)
		return thick*Inch - timberLoss(thick), wide*Inch - timberLoss(wide), wide <= 24
	}
	wide = Length(n.wide)*Inch - widthLoss(n.wide)
	switch n.thick {
	case 4, 5, 6:
		thick = Length(n.thick-1) * Inch / 4
	case 8, 12, 16:
		thick = Length(n.thick)*Inch/4 - Inch/2
	}
	return thick, wide, thick > 0 && n.wide <= widestLumber
}

func widthLoss(nominal int64) Length {
	if nominal < 8 {
		return Inch / 2
	}
	return 3 * Inch / 4
}

func timberLoss(nominal Length) Length {
	switch {
	case nominal < 7:
		return Inch / 2
	case nominal < 16:
		return 3 * Inch / 4
	}
	return Inch
}
