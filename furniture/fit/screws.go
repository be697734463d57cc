package fit

import (
	"fmt"

	"bunkwright/furniture/yardstick"
)

var screwLength = Question{
	ID:       "screw-length",
	Sentence: "Are the cleat screws long enough?",
	Group:    Safety,
	Why:      "A screw that ends in plasterboard holds nothing, and one that goes too deep may find a cable.",
	How: "Length under the head less the cleat and the wall's covering is the depth in wood. It must reach the least penetration of that " +
		"fastener: 6 diameters with the tip for wood screws, 4 diameters without the tip for lag screws. The heads are taken flush with the cleat.",
	Caution: "Cables run where nobody drew them: look for them before drilling, whatever the depth. Drywall screws are never counted.",
	Depends: Standing | Studs,
	Propose: []Driver{ScrewLong},
	Measure: func(s *Scene) Finding { return s.screwLength() },
}

const (
	screwBite  = "own-screw-bite"
	cableDepth = "own-cable-depth"
)

// DepthInWood returns how deep a screw goes into the stud: its length less the cleat and the covering, all in one unit.
func DepthInWood(screw, cleat, buildUp float64) float64 { return screw - cleat - buildUp }

// ScrewBite returns how much deeper than it must a screw goes: depth in wood less the least depth of that fastener, in one unit.
func ScrewBite(depth, least float64) float64 { return depth - least }

func (s *Scene) screwLength() Finding {
	rows := []string{screwBite, cableDepth}
	if f, done := s.withoutCleats(rows); done {
		return f
	}
	if !s.Stands {
		return Finding{Readings: []Reading{ask("cleat", s.Wants, rows...)}}
	}
	what := s.wallTakesScrews(s.At)
	if what == "" && s.unread(s.At.Refs.BuildUp) {
		what = fmt.Sprintf("how thick is the covering of wall %s before the studs (look behind an outlet plate there)?", s.At.Key)
	}
	if what != "" {
		return Finding{Readings: []Reading{ask("cleat", what, rows...)}}
	}
	var f Finding
	for i := range s.Bed.Cleats {
		f.Readings = append(f.Readings, s.biteReadings(i)...)
	}
	return f
}

// biteReadings measures how deep the screws of one cleat go.
func (s *Scene) biteReadings(i int) []Reading {
	c := &s.Bed.Cleats[i]
	shelf := &s.Bed.Sizes.Shelves[c.Shelf]
	screw, known := fastener(shelf.Fastener)
	if !known {
		return []Reading{ask(c.ID, fmt.Sprintf("which screws hold %s to wall %s?", c.ID, s.At.Key), screwBite, cableDepth)}
	}
	long, least := shelf.FastenerLong.MM(), screw.LeastDepth().MM()
	depth := DepthInWood(long, c.Thick, s.v(s.At.Refs.BuildUp))
	parts := append([]string{s.At.Name}, c.Parts...)
	uses := []Use{{fmt.Sprintf("bed.shelf.%d.fastener_long", c.Shelf+1), long, "mm", "chosen"},
		{fmt.Sprintf("bed.shelf.%d.cleat", c.Shelf+1), c.Thick, "mm", "chosen"}, {screw.ID + " least depth", least, "mm", "table"}}
	deep := Reading{At: c.ID + ".depth", Rows: []string{cableDepth}, Have: depth, Parts: parts, Uses: uses[:2]}
	if row, _, _ := s.row(cableDepth); row.Outcome(depth) != yardstick.Pass {
		deep.Edge = "check for a cable first"
	}
	return []Reading{{At: c.ID + ".bite", Rows: []string{screwBite}, Have: ScrewBite(depth, least), Parts: parts, Uses: uses}, deep}
}
