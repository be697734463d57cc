package fit

import (
	"math"

	"bunkwright/furniture/yardstick"
)

// scope tells whether a row speaks of a reading at all.
type scope struct {
	why   string // it does not: one of its scope rows does not hold
	want  string // what is missing to tell
	doubt string // it may not: a scope row is too close to call
}

// scope asks the scope rows of a row.
func (j judge) scope(row *yardstick.Row, r *Reading) (out scope) {
	for _, id := range row.When {
		when, _, _ := j.s.row(id)
		have := j.s.scopeValue(id, r)
		switch doubt := j.s.doubt(when, have.Have, have.U, j.k); {
		case have.Ask != "":
			out.want = have.Ask
		case doubt != "":
			out.doubt = doubt
		case when.Outcome(have.Have) == yardstick.NotApplies:
			return scope{why: j.s.outsideWords(when)}
		}
	}
	return out
}

// doubt tells why it is too close to call whether a scope row holds; it is empty where that is sure.
func (s *Scene) doubt(when *yardstick.Row, have, u, k float64) string {
	if !(math.Abs(when.Spare(have)) < k*u) {
		return ""
	}
	return "too close to call whether this counts, " + when.Quantity + " " + Line{Row: when}.Against(s.unit()) + ": take it again"
}

// scopeValue returns what a scope row is asked with: the reading's own, else that of the whole bed.
func (s *Scene) scopeValue(id string, r *Reading) Scope {
	for _, sc := range r.Scope {
		if sc.Row == id {
			return sc
		}
	}
	have, missing := s.scopeOfBed(id)
	return Scope{Row: id, Have: have, Ask: missing}
}

func (s *Scene) scopeOfBed(id string) (have float64, missing string) {
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
