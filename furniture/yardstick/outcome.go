package yardstick

import "math"

// An Outcome is what an exact value means for a row.
type Outcome int

// The outcomes. NotJudged stands for a value that is missing (NaN) or of the wrong sort for the row.
const (
	NotJudged Outcome = iota
	Pass
	Fail
	Borderline
	Applies    // scope rows
	NotApplies // scope rows
)

var outcomeWords = [...]string{"not-judged", "pass", "fail", "borderline", "applies", "not-applies"}

func (o Outcome) String() string {
	if o < 0 || int(o) >= len(outcomeWords) {
		return outcomeWords[NotJudged]
	}
	return outcomeWords[o]
}

// Outcome judges an exact value, in mm for lengths and in r.Unit otherwise: pass, fail or borderline; for a scope row
// applies or not-applies. A value with an uncertainty is judged elsewhere, from Spare and AtLimit.
func (r Row) Outcome(have float64) Outcome {
	m := r.Round(r.Spare(have))
	switch {
	case math.IsNaN(m):
		return NotJudged
	case m > 0:
		return r.said(EqualPasses)
	case m < 0:
		return r.said(EqualFails)
	}
	return r.said(r.AtLimit(have))
}

// OutcomeOf judges the answer to a yes/no row.
func (r Row) OutcomeOf(answer bool) Outcome {
	switch r.SpareOf(answer) {
	case 0:
		return r.said(EqualPasses)
	case -1:
		return r.said(EqualFails)
	}
	return NotJudged
}

func (r Row) said(e Equality) Outcome {
	scope := r.Role == RoleScope
	switch {
	case e == EqualPasses && scope:
		return Applies
	case e == EqualFails && scope:
		return NotApplies
	case e == EqualPasses:
		return Pass
	case e == EqualFails:
		return Fail
	case e == EqualBorderline:
		return Borderline
	}
	return NotJudged
}
