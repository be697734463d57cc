package yardstick

import "math"

// Spare returns how far a value lies on the right side of the row's need, negative when it lies on the wrong side.
// have and the result are in mm for lengths and in r.Unit otherwise. The result is not rounded: see Round.
// It is NaN for yes/no rows and parameters, which have no distance.
func (r Row) Spare(have float64) float64 {
	switch {
	case r.Relation == AtLeast || r.Relation == MoreThan:
		return have - r.Need[0]
	case r.Relation == AtMost || r.Relation == LessThan:
		return r.Need[0] - have
	case r.Relation == Inside:
		return min(have-r.Need[0], r.Need[1]-have)
	case r.Relation.outside():
		return max(r.Need[0]-have, have-r.Need[1])
	}
	return math.NaN()
}

// SpareOf returns the spare of a yes/no row: 0 when the answer meets it, -1 when it does not, and NaN for a row that
// is not answered by yes or no.
func (r Row) SpareOf(answer bool) float64 {
	if !r.Relation.Answer() {
		return math.NaN()
	}
	if answer == (r.Relation == AnswerYes) {
		return 0
	}
	return -1
}

// Round rounds a spare of this row to 1 nm for lengths and to the decimal place at 1e-9 of the need (of its larger end for a band, 1e-9
// itself where the need is 0) otherwise, so that a value that equals the need in exact arithmetic has spare 0.
func (r Row) Round(spare float64) float64 {
	step := 1e-9
	if r.Unit == MM {
		return round(spare*1e6) / 1e6
	}
	largest := 0.0
	for _, n := range r.Need {
		largest = max(largest, math.Abs(n))
	}
	if largest > 0 {
		step *= largest
	}
	if digits := math.Floor(math.Log10(step)); digits > -15 { // a decimal step, so that 1 year to spare prints as 1
		return round(spare*math.Pow10(int(-digits))) / math.Pow10(int(-digits))
	}
	return spare
}

// round is math.Round without the negative zero.
func round(x float64) float64 { return math.Round(x) + 0 }

// An Equality says what a value equal to the need means.
type Equality int

// The equalities. EqualUnsaid is that of yes/no rows and parameters.
const (
	EqualUnsaid Equality = iota
	EqualPasses
	EqualFails
	EqualBorderline // the text does not settle it
)

func (e Equality) String() string {
	switch e {
	case EqualPasses:
		return "pass"
	case EqualFails:
		return "fail"
	case EqualBorderline:
		return "borderline"
	}
	return ""
}

// AtLimit returns what it would mean if the value were equal to the end of the need that it lies nearest to.
func (r Row) AtLimit(have float64) Equality {
	if !r.Relation.Band() {
		return r.equalLow
	}
	if have-r.Need[0] <= r.Need[1]-have {
		return r.equalLow
	}
	return r.equalHigh
}
