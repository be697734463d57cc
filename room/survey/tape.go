package survey

import (
	"fmt"
	"math"
)

// TapeClass is an accuracy class of a measuring tape sold by law: 1, 2 or 3, printed on the tape as I, II or III.
type TapeClass int

// The three classes.
const (
	ClassI TapeClass = iota + 1
	ClassII
	ClassIII
)

// ParseTapeClass reads I, II or III.
func ParseTapeClass(text string) (TapeClass, error) {
	for c, name := range []string{"I", "II", "III"} {
		if text == name {
			return TapeClass(c + 1), nil
		}
	}
	return 0, fmt.Errorf("tape class %q: want I, II or III", text)
}

// classRule is UK SI 2016/1153, Schedule 1I (Directive 2014/32/EU, Annex X, MI-008), all in mm: the error at length L is
// a + b L with L rounded up to a whole metre, plus c where the tape is used from its hook or butt end; marks are the errors
// between neighbouring lines up to 1 mm and up to 1 cm apart. The class III marks and class I beyond 1 mm are from memory.
type classRule struct{ a, b, c, fineMarks, coarseMarks float64 }

var classRules = map[TapeClass]classRule{
	ClassI:   {0.1, 0.1, 0.1, 0.1, 0.2},
	ClassII:  {0.3, 0.2, 0.2, 0.2, 0.4},
	ClassIII: {0.6, 0.4, 0.3, 0.3, 0.6},
}

// MaxTapeError returns the error in mm, plus or minus, that the law allows a tape of the class between two
// lines lengthM metres apart (UK SI 2016/1153, Schedule 1I, paragraph 2). NaN for an unknown class.
func MaxTapeError(class TapeClass, lengthM float64) float64 {
	r, ok := classRules[class]
	if !ok {
		return math.NaN()
	}
	return r.a + r.b*wholeUp(lengthM)
}

// MaxTapeErrorFromEnd is MaxTapeError for a length that starts at the tape's hook or butt end.
func MaxTapeErrorFromEnd(class TapeClass, lengthM float64) float64 {
	return MaxTapeError(class, lengthM) + classRules[class].c
}

// MaxMarkError returns the error in mm allowed between two neighbouring lines intervalMM apart (Table 2 of the same
// paragraph, which ends at 10 mm). NaN for an unknown class or a wider interval.
func MaxMarkError(class TapeClass, intervalMM float64) float64 {
	r, ok := classRules[class]
	switch {
	case !ok || intervalMM <= 0 || intervalMM > 10:
		return math.NaN()
	case intervalMM <= 1:
		return r.fineMarks
	}
	return r.coarseMarks
}

// UKTradeToleranceInches returns the error in inches allowed a British tape in trade use: 0.025 in plus 0.015 in a yard,
// up to a whole yard (UK SI 1986/1682, regulation 24).
func UKTradeToleranceInches(lengthFt float64) float64 { return 0.025 + 0.015*wholeUp(lengthFt/3) }

// UKTradeToleranceMM is the same rule for a metric tape: 0.6 mm plus 0.4 mm a metre, up to a whole metre.
func UKTradeToleranceMM(lengthM float64) float64 { return 0.6 + 0.4*wholeUp(lengthM) }

// USTapeTolerance returns the error in inches, plus or minus, from zero, allowed a metal tape (NIST Handbook 44, 5.52,
// read second hand; the steps at 31 to 55 ft and 81 ft from memory). NaN beyond 100 ft, where the table was not seen.
func USTapeTolerance(lengthFt float64) float64 {
	switch {
	case !(lengthFt > 0 && lengthFt <= 100):
		return math.NaN()
	case lengthFt <= 6:
		return 1.0 / 32
	case lengthFt <= 30:
		return 1.0 / 16
	case lengthFt <= 55:
		return 1.0 / 8
	case lengthFt <= 80:
		return 3.0 / 16
	}
	return 1.0 / 4
}

// wholeUp is the next whole number; one part in a billion beyond a whole number is rounding.
func wholeUp(v float64) float64 { return math.Ceil(v - 1e-9) }
