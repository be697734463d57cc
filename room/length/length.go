// Package length answers what length a text means, exactly, and how a length is written.
package length

import "math"

// Length is an exact length in whole nanometres. Every reading of a tape in inches or millimetres is a whole number of
// them: 1/64 in is 396,875 nm (1 in is 25.4 mm by definition, NIST Handbook 44 Appendix C).
//
// Valid lengths lie within ±Max. A sum of 9000 valid lengths cannot overflow. Two lengths are never multiplied: the product
// of two of 3.1 m already overflows, so areas are made of MM.
type Length int64

// Units of length, and the bounds of what is valid and of what is read.
const (
	Millimetre Length = 1_000_000
	Inch       Length = 25_400_000
	Foot              = 12 * Inch

	// Max is the largest valid length, 1000 km.
	Max Length = 1_000_000_000_000_000
	// MaxRead is the longest length that Read takes from a text, 1 km: more than that is a slip in any house.
	MaxRead Length = 1_000_000_000_000
	// OutOfRange is what FromMM returns for what is no length. It is not valid and prints as words, never as a number.
	OutOfRange Length = math.MinInt64
)

// sixtyFourth is the finest mark of an inch tape.
const sixtyFourth = Inch / 64

// Valid reports whether l lies within ±Max.
func (l Length) Valid() bool { return -Max <= l && l <= Max }

// MM returns l in millimetres, the nearest float64; NaN where l is not valid.
func (l Length) MM() float64 { return l.in(Millimetre) }

// Inches returns l in inches, the nearest float64; NaN where l is not valid.
func (l Length) Inches() float64 { return l.in(Inch) }

func (l Length) in(unit Length) float64 {
	if !l.Valid() {
		return math.NaN()
	}
	return float64(l) / float64(unit)
}

// FromMM returns the length nearest to mm, ties to even; OutOfRange for NaN and for more than Max either way.
func FromMM(mm float64) Length {
	nm := math.RoundToEven(mm * float64(Millimetre))
	if math.IsNaN(nm) || math.Abs(nm) > float64(Max) {
		return OutOfRange
	}
	return Length(nm)
}

// Rounding says to which multiple of a step a length goes when it lies between two.
type Rounding int

// Directions of rounding. A spare is shown TowardZero and a shortage AwayFromZero, so that neither looks better than it is.
const (
	Nearest Rounding = iota // ties to the even multiple
	TowardZero
	AwayFromZero
)

// Round returns the multiple of step that l rounds to; l itself when step is not positive or l is not valid.
func (l Length) Round(step Length, r Rounding) Length {
	if step <= 0 || !l.Valid() || !step.Valid() {
		return l
	}
	rest := l % step
	down := l - rest
	if rest == 0 || r == TowardZero || r == Nearest && !upward(rest, step, down/step) {
		return down
	}
	if l < 0 {
		return down - step
	}
	return down + step
}

// upward reports whether the nearest multiple lies away from zero: count is the multiple toward zero.
func upward(rest, step, count Length) bool {
	twice := 2 * max(rest, -rest)
	return twice > step || twice == step && count%2 != 0
}
