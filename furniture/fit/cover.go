package fit

import "bunkwright/furniture/yardstick"

// Cover factors: how many standard uncertainties of spare it takes to call an answer.
const (
	coverBuild  = 1.645 // one-sided 95 % of a normal distribution
	coverSafety = 2
)

// cover returns the factor k of a question: an answer fits from k u of spare.
func (q Question) cover() float64 {
	if q.Group == Safety {
		return coverSafety
	}
	return coverBuild
}

// verdictOf calls a spare m with standard uncertainty u (design: "How sure"): fits from k u, does not fit from -1.645 u, too close
// between. At m = 0 and u = 0 the row's word on equality decides.
func verdictOf(m, u, k float64, equal yardstick.Equality) Verdict {
	switch {
	case u == 0 && m == 0:
		return onLimit(equal)
	case u == 0 && m < 0:
		return DoesNotFit
	case m >= k*u:
		return Fits
	case m <= -coverBuild*u:
		return DoesNotFit
	}
	return TooClose
}

func onLimit(equal yardstick.Equality) Verdict {
	switch equal {
	case yardstick.EqualFails:
		return DoesNotFit
	case yardstick.EqualBorderline:
		return TooClose
	}
	return Fits
}

// slack is what keeps the choice of the deciding line from dividing by nothing, in each unit.
func slack(unit yardstick.Unit) float64 {
	switch unit {
	case yardstick.MM:
		return 1
	case yardstick.SquareFoot:
		return 0.01
	case yardstick.Year, yardstick.Degree, yardstick.Percent:
		return 0.1
	case yardstick.Share:
		return 0.001
	}
	return 1
}
