package length

import (
	"strconv"
	"strings"
)

// Style says how lengths are shown. The zero Style is tape notation to the nearest 1/16 in.
type Style struct {
	Unit       Unit     // Millimetres: 1711 mm; otherwise tape notation: 5' 7-3/8"
	InchesOnly bool     // 67-3/8 in instead of feet and inches
	Step       Length   // 0: 1/16 in or 1 mm. In inches a multiple of 1/64 in; what is not one counts as 0
	Rounding   Rounding // 0: Nearest
}

// Format writes l rounded to the step of the style, with a minus before a negative one. What is not valid is "out of range".
func Format(l Length, s Style) string {
	if !l.Valid() {
		return "out of range"
	}
	l = l.Round(s.step(), s.Rounding)
	switch {
	case s.Unit == Millimetres:
		return decimalText(l, Millimetre, 6) + " mm"
	case s.InchesOnly:
		return inches(l) + " in"
	}
	return tape(l)
}

// FormatSpare writes a spare or, negative, a shortage: rounded toward zero or away from it, so that neither looks better
// than it is.
func FormatSpare(l Length, s Style) string {
	s.Rounding = TowardZero
	if l < 0 {
		s.Rounding = AwayFromZero
	}
	return Format(l, s)
}

func (s Style) step() Length {
	switch {
	case s.Unit == Millimetres && s.Step > 0:
		return s.Step
	case s.Unit == Millimetres:
		return Millimetre
	case s.Step > 0 && s.Step%sixtyFourth == 0:
		return s.Step
	}
	return Inch / 16
}

// tape writes feet and inches; l is a whole number of 1/64 in.
func tape(l Length) string {
	switch {
	case l < 0:
		return "-" + tape(-l)
	case l < Foot:
		return inches(l) + `"`
	}
	rest := l % Foot
	text := strconv.FormatInt(int64(l/Foot), 10) + "' "
	if rest > 0 && rest < Inch {
		text += "0-"
	}
	return text + inches(rest) + `"`
}

// inches writes whole inches and a reduced fraction; l is a whole number of 1/64 in.
func inches(l Length) string {
	if l < 0 {
		return "-" + inches(-l)
	}
	whole := strconv.FormatInt(int64(l/Inch), 10)
	n, d := int64(l%Inch/sixtyFourth), int64(64)
	if n == 0 {
		return whole
	}
	for n%2 == 0 {
		n, d = n/2, d/2
	}
	fraction := strconv.FormatInt(n, 10) + "/" + strconv.FormatInt(d, 10)
	if l < Inch {
		return fraction
	}
	return whole + "-" + fraction
}

// decimalText writes l in units; l is a whole number of 10^-places of one.
func decimalText(l, unit Length, places int) string {
	sign := ""
	if l < 0 {
		sign, l = "-", -l
	}
	text := sign + strconv.FormatInt(int64(l/unit), 10)
	part := int64(l % unit)
	if part == 0 {
		return text
	}
	for range places {
		part *= 10
	}
	figures := strconv.FormatInt(part/int64(unit), 10)
	figures = strings.Repeat("0", places-len(figures)) + figures
	return text + "." + strings.TrimRight(figures, "0")
}

// hundredThousandth of an inch is the finest decimal of one that is a whole number of nanometres.
const hundredThousandth = Inch / 100_000

// Exact writes l for a file, without rounding: in inches where the unit is inches and l is a whole number of 1/64 in
// ("67-3/8 in") or of 1/100,000 in ("67.3 in"), otherwise in millimetres ("1711.325 mm"). Read gives l back from 0 to MaxRead.
func Exact(l Length, u Unit) string {
	switch {
	case !l.Valid():
		return "out of range"
	case u == Inches && l%sixtyFourth == 0:
		return inches(l) + " in"
	case u == Inches && l%hundredThousandth == 0:
		return decimalText(l, Inch, 5) + " in"
	}
	return decimalText(l, Millimetre, 6) + " mm"
}

// String is Exact in millimetres.
func (l Length) String() string { return Exact(l, Millimetres) }
