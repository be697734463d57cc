package fit

import (
	"math"

	"bunkwright/furniture/yardstick"
)

// outOfScope asks the scope rows of a row. why is set where one of them does not hold; want where one cannot be told yet.
func (s *Scene) outOfScope(row *yardstick.Row, r *Reading) (why, want string) {
	for _, id := range row.When {
		scope, _, _ := s.row(id)
		have, missing := s.scopeValue(id, r)
		switch {
		case missing != "":
			want = missing
		case scope.Outcome(have) == yardstick.NotApplies:
			return s.outsideWords(scope), ""
		}
	}
	return "", want
}

// scopeValue returns what a scope row is asked with: the reading's own, else that of the whole bed.
func (s *Scene) scopeValue(id string, r *Reading) (have float64, missing string) {
	for _, sc := range r.Scope {
		if sc.Row == id {
			return sc.Have, sc.Ask
		}
	}
	if s.Bed == nil {
		return math.NaN(), noBed
	}
	switch id {
	case "us-bunk-scope":
		return s.Bed.Upper.Underside, ""
	case "eu-bunk-scope-base", "uk-1987-scope", "nz-bunk-scope":
		return s.Bed.Upper.Top, ""
	case "au-bunk-scope": // a stacked pair of beds is covered at any height
		return math.Inf(1), ""
	case "au-mark-scope": // a bed without a rail has none high enough to do without the mark
		return s.railOverBase(s.lowestGuard(anySide)), ""
	case "eu-bunk-scope-length":
		return s.Bed.Inside.Long, ""
	case "eu-bunk-scope-width":
		return s.Bed.Inside.Wide, ""
	}
	return math.NaN(), "whether " + id + " applies"
}
