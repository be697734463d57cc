package fit

import (
	"math"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/yardstick"
)

var endOpenings = Question{
	ID:       "end-openings",
	Sentence: "Do the openings in the ends keep heads and limbs from being caught?",
	Group:    Safety,
	Why:      "An opening that takes a body but not a head holds a child by the neck; a smaller one holds an arm or a finger.",
	How: "Smaller clear side of every opening in the ends: above the deck bare, between the decks bare and once more with mattress and base in " +
		"place, as built and once the boards have dried. Climbing slats are part of the end.",
	Caution: "Try every opening with a 3-1/2 in (89 mm) block and a 9 in (229 mm) ball, from outside and from the mattress.",
	OfBed:   true,
	Propose: []Driver{RailStock, RailRow, RailUp},
	Measure: func(s *Scene) Finding { return s.endOpenings() },
}

var (
	upperGapRows  = []string{"us-upper-end-opening", "au-gap-head", "au-gap-limb", "eu-small-gap", "play-head-band"}
	lowerGapRows  = []string{"us-lower-end-opening", "au-gap-head", "au-gap-limb", "eu-small-gap", "play-head-band"}
	madeUpGapRows = []string{"us-lower-end-opening-made-up"}
)

func (s *Scene) endOpenings() Finding {
	const corner, body = "play-corner-angle", "play-large-opening"
	if s.Bed == nil {
		return unbuilt("ends", append(append([]string{corner, body}, upperGapRows...), lowerGapRows...)...)
	}
	f := Finding{Readings: make([]Reading, 0, s.endReadings())}
	for i := range s.Bed.Openings {
		switch o := &s.Bed.Openings[i]; o.Zone {
		case bunk.ZoneUpper:
			f.Readings = s.bare(o).measure(f.Readings, s, upperGapRows)
		case bunk.ZoneLower:
			f.Readings = s.lowerEnd(f.Readings, o)
		}
	}
	if len(f.Readings) == 0 {
		return absent("there is no opening in the ends")
	}
	f.Readings = append(f.Readings,
		Reading{At: "corners", Rows: []string{corner}, Have: squareCorner, Edge: "every opening is square"},
		s.bodyOpening(body))
	return f
}

// endReadings is the most readings that the ends may need: two states of each opening, twice where a mattress may lie in it.
func (s *Scene) endReadings() int {
	n := 2
	for i := range s.Bed.Openings {
		switch s.Bed.Openings[i].Zone {
		case bunk.ZoneUpper:
			n += 2
		case bunk.ZoneLower:
			n += 4
		}
	}
	return n
}

// squareCorner is the inside angle, in degrees, of the openings between boards that cross square.
const squareCorner = 90

// lowerEnd measures an opening between the decks, bare and with the lower mattress made up.
func (s *Scene) lowerEnd(out []Reading, o *bunk.Opening) []Reading {
	h := s.bare(o)
	out = h.measure(out, s, lowerGapRows)
	h.at += ".made-up"
	if what := s.askThick(lowerBed); what != "" {
		return append(out, Reading{At: h.at, Rows: madeUpGapRows, Ask: what, Parts: o.Parts})
	}
	h.bottom = h.top - OpeningLeft(h.top-h.bottom, s.Bed.Lower.MattressTop-h.bottom)
	if h.top <= h.bottom {
		return append(out, Reading{At: h.at, Rows: madeUpGapRows, Skip: "mattress and base close it", Parts: o.Parts})
	}
	return h.measure(out, s, madeUpGapRows)
}

// OpeningLeft returns what is left of the height of an opening when something as high as covered lies at its lower edge, in their unit.
func OpeningLeft(opening, covered float64) float64 {
	return max(0, opening-max(0, covered))
}

// bare returns what the decks leave of an opening: it ends at the deck that crosses it.
func (s *Scene) bare(o *bunk.Opening) hole {
	h := holeOf(o)
	if o.Zone == bunk.ZoneUpper {
		h.bottom = max(h.bottom, s.Bed.Upper.Top)
		return h
	}
	h.top = min(h.top, s.Bed.Upper.Underside)
	if h.bottom < s.Bed.Lower.Top && s.Bed.Lower.Top < h.top {
		h.bottom = s.Bed.Lower.Top
	}
	return h
}

// bodyOpening measures the tightest opening high up that lets a body through: one that takes a head by the analogue of play equipment.
func (s *Scene) bodyOpening(row string) Reading {
	passes := yardstick.Figures("play-head-band")[0]
	high, _, _ := s.row("eu-head-gap-scope")
	r := Reading{At: "body", Rows: []string{row}, Have: math.Inf(1)}
	for i := range s.Bed.Openings {
		o := &s.Bed.Openings[i]
		h := s.bare(o)
		if o.Zone == bunk.ZoneRail || h.side(0) <= passes || high.Outcome(s.overFloor(h.bottom)) != yardstick.Applies || h.side(0) >= r.Have {
			continue
		}
		r.Have, r.Parts, r.Edge = h.side(0), o.Parts, o.ID
	}
	if math.IsInf(r.Have, 1) {
		r.Skip = "no opening high up lets a body through"
	}
	return r
}
