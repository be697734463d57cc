package fit

import (
	"math"
	"slices"

	"bunkwright/furniture/bunk"
)

var railOpenings = Question{
	ID:       "rail-openings",
	Sentence: "Are the gaps in the rails too small for a child to slip through?",
	Group:    Safety,
	Why:      "A child slips feet first through a gap that its head does not pass.",
	How: "Smaller clear side of every opening from the top rail down to the underside of the deck, without the mattress, as built and once the " +
		"boards have dried, with the way gaps are set as its uncertainty.",
	Caution: "Try every opening with a 3-1/2 in (89 mm) block, pushed hard, and again after the first winter of heating.",
	OfBed:   true,
	Propose: []Driver{RailStock, RailRow, RailUp},
	Measure: func(s *Scene) Finding { return s.railOpenings() },
}

var (
	railGapRows = []string{"us-rail-opening", "au-gap-head", "au-gap-limb", "uk-1987-other-gap", "or-camp-rail-gap"}
	lowGapRows  = append(railGapRows[:len(railGapRows):len(railGapRows)], "eu-rail-base-gap", "wi-camp-rail-gap")
)

func (s *Scene) railOpenings() Finding {
	if s.Bed == nil {
		return unbuilt("rails", lowGapRows...)
	}
	holes := s.railHoles()
	f := Finding{Readings: make([]Reading, 0, 2*len(holes))}
	for _, h := range holes {
		rows := railGapRows
		if s.overTheBase(h.Opening) {
			rows = lowGapRows
		}
		f.Readings = h.measure(f.Readings, s, rows)
	}
	if len(f.Readings) == 0 {
		return absent("there is no opening in a rail")
	}
	return f
}

// railHoles lists the openings of the rails; those of one side that measure the same stand as one.
func (s *Scene) railHoles() []hole {
	var out []hole
	for i := range s.Bed.Openings {
		h := holeOf(&s.Bed.Openings[i])
		if h.Zone != bunk.ZoneRail {
			continue
		}
		if k := slices.IndexFunc(out, h.like); k >= 0 {
			out[k].parts = append(out[k].parts[:len(out[k].parts):len(out[k].parts)], h.parts...)
			continue
		}
		out = append(out, h)
	}
	return out
}

// overTheBase tells whether an opening is the lowest of its side: the one between the barrier and the base of the bed.
func (s *Scene) overTheBase(o *bunk.Opening) bool {
	low := math.Inf(1)
	for i := range s.Bed.Openings {
		if q := &s.Bed.Openings[i]; q.Zone == o.Zone && q.Side == o.Side {
			low = min(low, q.Bottom)
		}
	}
	return o.Bottom < low+1e-6
}
