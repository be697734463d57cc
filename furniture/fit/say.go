package fit

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

// Say returns an answer in one line: verdict, colon, spare or shortage, plus-or-minus, and why.
func (a Answer) Say(unit length.Unit) string {
	words := a.Verdict.Words()
	if a.Accepted != "" {
		words += ", accepted"
	}
	if told := a.Tell(unit); told != "" {
		return words + ": " + told
	}
	return words
}

// Tell returns what stands after the verdict.
func (a Answer) Tell(unit length.Unit) string {
	switch {
	case a.Ask != "":
		return Spoken(a.Ask)
	case a.HasSpare && a.Verdict != NotApplicable && a.Verdict != None:
		return a.spareWords(unit)
	}
	return Spoken(a.Reason)
}

func (a Answer) spareWords(unit length.Unit) string {
	text := SpareWords(a.Spare, a.Unit, unit)
	if a.PlusMinus > 0 {
		text += ", ±" + Amount(a.PlusMinus, a.Unit, unit, length.AwayFromZero)
	}
	if a.Verdict.Open() && a.Reason != "" {
		text += "; " + Spoken(a.Reason)
	}
	return text
}

// SpareWords prints a spare: rounded toward zero where there is room, a shortage away from zero.
func SpareWords(spare float64, of yardstick.Unit, unit length.Unit) string {
	if spare < 0 {
		return Amount(-spare, of, unit, length.AwayFromZero) + " short"
	}
	return Amount(spare, of, unit, length.TowardZero) + " to spare"
}

// Amount prints a size in its own unit: lengths in tape notation or mm.
func Amount(x float64, of yardstick.Unit, unit length.Unit, r length.Rounding) string {
	switch of {
	case yardstick.MM:
		return length.Format(length.FromMM(x), length.Style{Unit: unit, Rounding: r})
	case yardstick.Year:
		return plural(math.Floor(x), "year")
	case yardstick.Count:
		return strconv.FormatFloat(x, 'f', -1, 64)
	case yardstick.Degree:
		return decimals(x, 1, r) + "°"
	case yardstick.Share:
		return decimals(x*100, 1, r) + " %"
	case yardstick.Percent:
		return decimals(x, 1, r) + " %"
	}
	return strings.TrimSpace(decimals(x, 2, r) + " " + string(of))
}

func plural(n float64, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%.0f %ss", n, thing)
}

// decimals prints x to n places in the rounding direction asked for.
func decimals(x float64, n int, r length.Rounding) string {
	k := math.Pow10(n)
	y := x * k
	switch r {
	case length.TowardZero:
		y = math.Trunc(y + math.Copysign(1e-9, y))
	case length.AwayFromZero:
		y = math.Copysign(math.Ceil(math.Abs(y)-1e-9), y)
	default:
		y = math.RoundToEven(y)
	}
	return strconv.FormatFloat(y/k, 'f', -1, 64)
}

// Against returns what a line is held against, in words: "at least 5\" : quantity of the row".
func (l Line) Against(unit length.Unit) string {
	r := l.Row
	if r.Relation.Answer() || len(r.Need) == 0 {
		return r.Quantity
	}
	num := func(x float64) string { return needed(r, x, unit) }
	switch {
	case r.Relation == yardstick.AtLeast:
		return "at least " + num(r.Need[0])
	case r.Relation == yardstick.MoreThan:
		return "more than " + num(r.Need[0])
	case r.Relation == yardstick.AtMost:
		return "at most " + num(r.Need[0])
	case r.Relation == yardstick.LessThan:
		return "less than " + num(r.Need[0])
	case r.Relation == yardstick.Inside:
		return num(r.Need[0]) + " to " + num(r.Need[1])
	}
	return "not between " + num(r.Need[0]) + " and " + num(r.Need[1])
}

// needed writes one number of a row: a length as the source writes it, since a limit of 0.22 in is not 1/4 in. A planning figure of our own
// in inches is a round number there and to the nearest mm in a metric job: 610 mm (24 in).
func needed(r *yardstick.Row, x float64, unit length.Unit) string {
	if r.Unit != yardstick.MM {
		return Amount(x, r.Unit, unit, length.Nearest)
	}
	l := length.FromMM(x)
	if r.Own != yardstick.NoForce && unit == length.Millimetres && l%length.Millimetre != 0 {
		return length.Format(l, length.Style{Unit: unit}) + " (" + length.Exact(l, length.Inches) + ")"
	}
	return length.Exact(l, unit)
}

// Caution is the line that every screen and sheet with a safety answer carries.
const Caution = "A planning help, not an approval: measured against named texts used as a yardstick. It holds only for the sizes entered; " +
	"measure again on the day. Local code, the landlord and licensed trades decide."

// Cautions is the whole text behind that line.
var Cautions = []string{
	"\"Measured against\" a named text never means that the bed meets it: nothing here is approved, certified or called safe.",
	"These texts bind sold beds, camps, worker housing, play equipment or buildings. A one-off bed in a relative's room is none of those; they are used here as a yardstick.",
	"Local code, the landlord and licensed trades decide about wiring, heating, alarms, windows and structure. Ask them; this sheet does not replace them.",
	"Each number carries its source and its basis. A secondary or practice number is weaker than a published one and says so.",
	"An answer that fits holds only for the sizes entered. Measure again on the day, with the real mattress, and try every opening with a 3-1/2 in (89 mm) block.",
	"Different countries' numbers differ; what fits under one may not under another. Both are shown where both are named.",
	"A missing measurement gives \"cannot tell yet\", never a silent pass. A value equal to its limit says so.",
	"Ages and sizes are averages of groups; a real child may differ. Ages are about, in whole years.",
	"No load, strength or fall-injury promise follows from any line here. No child under 6 (9 or 10 in some places) on an upper bed.",
}
