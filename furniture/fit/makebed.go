package fit

import (
	"math"

	"bunkwright/furniture/people"
	"bunkwright/room/geom"
)

var makeTheBed = Question{
	ID:       "make-the-bed",
	Sentence: "Can somebody make the top bed?",
	Group:    Comfort,
	Why:      "A far edge that nobody reaches from the floor is made from the ladder, or not at all.",
	How: "Level reach of a small woman at the height of the upper mattress (own-bed-maker, calc-bunk-reach) against the far edge of the mattress " +
		"from the bed's open side; beside it the free floor to stand on.",
	Depends: Standing | FarLean | Heaters | Furniture,
	Propose: []Driver{DeckDown},
	Measure: func(s *Scene) Finding { return s.makeTheBed() },
}

var makeRows = []string{"housing-bedmaking"}

func (s *Scene) makeTheBed() Finding {
	if !s.Stands {
		return Finding{Readings: []Reading{ask("floor", s.Wants, makeRows...)}}
	}
	var f Finding
	shoulder, reach, err := people.BedMaker() // the sizes that the row "own-bed-maker" names
	level, ok := people.BunkReach(shoulder, reach, s.mattressTop(upperBed))
	edge := s.farEdge()
	switch what := s.askThick(upperBed); {
	case what != "":
		f.Notes = []string{"advice: " + what}
	case err == nil:
		if !ok {
			level = 0
		}
		f.Figures = []Figure{{"reach", level, "mm"}, {"far_edge", edge, "mm"}}
		f.Band = "from the ladder"
		if level >= edge {
			f.Band = "from the floor"
		}
		f.Notes = []string{"advice: the far edge is made " + f.Band}
	}
	all, want := s.beforeDrawers()
	lo, hi := s.Bed.Foot.Bounds()
	b := strip{from: s.ToRoom.Point(geom.V3{X: (lo.X + hi.X) / 2, Y: lo.Y}).XY(), out: s.ToRoom.Dir(geom.V3{Y: -1}).XY(), half: (hi.X - lo.X) / 2}
	depth, what := s.free(b, append(s.across(b), s.notLadder(all[len(s.Walls):])...))
	f.Readings = []Reading{{At: "floor", Rows: makeRows, Have: depth, Ask: want, Parts: []string{"mattress.upper", what}}}
	return s.traced(f)
}

// notLadder leaves the ladder out: one stands beside it.
func (s *Scene) notLadder(all []stander) []stander {
	if s.Bed.Steps == nil {
		return all
	}
	name := s.ladderAssembly()
	var out []stander
	for _, x := range all {
		if x.what != name {
			out = append(out, x)
		}
	}
	return out
}

// farEdge returns the level distance from the bed's open side to the far edge of the upper mattress.
func (s *Scene) farEdge() float64 {
	lo, _ := s.Bed.Foot.Bounds()
	m := s.Bed.Upper.Mattress
	return math.Abs(m.C.Y + m.Half.Y - lo.Y)
}
