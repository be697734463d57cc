package fit

import (
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"
)

var ladderSteps = Question{
	ID:       "ladder-steps",
	Sentence: "Are the ladder steps right for feet and heads?",
	Group:    Safety,
	Why:      "Uneven or narrow treads are missed in the dark, and a gap between treads can hold a head.",
	How:      "Tread to tread, the clear gap between them, depth, width and slope, the top tread to the bed, and the lower mattress to the next tread.",
	Caution:  "Most of these figures are for other ladders. A ladder that can be moved shows wider gaps than one that stands still.",
	OfBed:    true,
	Propose:  []Driver{Treads, DeckDown, DeckUp},
	Measure:  func(s *Scene) Finding { return s.ladderSteps() },
}

var (
	pitchRows     = []string{"eu-tread-pitch", "imc-rung-pitch", "play-rung-rise", "play-step-rise-5-12", "play-step-rise-2-5"}
	clearGapRows  = []string{"ladder-clear-gap"}
	evenRows      = []string{"play-even-spacing"}
	topGapRows    = []string{"f1427-ladder-top-gap"}
	mattressRows  = []string{"us-ladder-lower-bunk-gap"}
	treadDeepRows = []string{"eu-tread-depth", "play-step-depth-open-5-12", "play-step-depth-2-5"}
	treadWideRows = []string{"eu-tread-width", "play-rung-width-2-5", "play-rung-width-5-12", "play-step-width-5-12", "imc-ladder-width"}
	slopeRows     = []string{"play-rung-slope", "play-step-slope-5-12"}
	toeRows       = []string{"imc-toe-depth"}
	roundRows     = []string{"play-rung-diameter", "imc-rung-diameter"}
	handrailRows  = []string{"play-handrail-preschool", "play-handrail-school"}
	closedRows    = []string{"play-step-depth-closed-5-12"}
)

func (s *Scene) ladderSteps() Finding {
	judged := []string{"eu-tread-pitch", "eu-tread-depth", "eu-tread-width", "f1427-ladder-top-gap", "us-ladder-lower-bunk-gap", "ladder-clear-gap"}
	switch {
	case s.Bed == nil:
		return unbuilt("ladder", judged...)
	case s.Bed.Steps == nil && s.Bed.Climb != nil:
		return absent("there is no ladder: the way up is the climbing end")
	case s.Bed.Steps == nil:
		return Finding{Readings: []Reading{ask("ladder", howUp, judged...)}}
	}
	t := s.Bed.Steps
	f := Finding{Readings: append(s.pitches(t), s.lowerBunkGap(t),
		Reading{At: "top-tread", Rows: topGapRows, Have: t.ToBed},
		Reading{At: "width", Rows: treadWideRows, Have: t.Clear})}
	s.addBuildTolerance(f.Readings)
	f.Readings = append(f.Readings,
		Reading{At: "steps", Rows: evenRows, Yes: EvenSteps(t.Tops, s.Bed.Upper.Top), Edge: "the step onto the deck counted"},
		Reading{At: "depth", Rows: treadDeepRows, Have: t.Deep},
		Reading{At: "slope", Rows: slopeRows, Have: t.Angle},
		s.toeDepth(t),
		Reading{At: "rungs", Rows: roundRows, Skip: "the treads are flat boards, not round rungs"},
		Reading{At: "handrail", Rows: handrailRows, Skip: "the ladder has no handrail"},
		Reading{At: "risers", Rows: closedRows, Skip: "it is open between the treads"})
	for i := range f.Readings {
		f.Readings[i].Parts = t.Parts
	}
	return s.traced(f)
}

// ClearGap returns the clear gap between one tread and the next, all in one unit.
func ClearGap(pitch, thick float64) float64 { return pitch - thick }

// pitches measures the smallest step from tread to tread and, where they differ, the largest.
func (s *Scene) pitches(t *bunk.Steps) []Reading {
	if len(t.Tops) < 2 {
		one := "there is one tread only"
		return []Reading{{At: "treads", Rows: pitchRows, Skip: one}, {At: "treads.clear", Rows: clearGapRows, Skip: one}}
	}
	least, most := stepRange(t.Tops)
	out := []Reading{{At: "treads", Rows: pitchRows, Have: least}, {At: "treads.clear", Rows: clearGapRows, Have: ClearGap(least, t.Thick)}}
	if most > least+1e-6 {
		out = append(out, Reading{At: "treads.widest", Rows: pitchRows, Have: most}, Reading{At: "treads.widest.clear", Rows: clearGapRows, Have: ClearGap(most, t.Thick)})
	}
	return out
}

// alike is how far two steps may differ and still print as one size, mm.
const alike = 0.5

// EvenSteps tells whether all steps from tread to tread and onto the deck are alike; heights in mm, lowest tread first. A top tread level
// with the deck is the step onto it.
func EvenSteps(tops []float64, deck float64) bool {
	if len(tops) == 0 {
		return false
	}
	if tops[len(tops)-1] < deck-alike {
		tops = append(tops[:len(tops):len(tops)], deck)
	}
	least, most := stepRange(tops)
	return most-least <= alike || len(tops) < 3
}

// stepRange returns the smallest and the largest step between heights, lowest first.
func stepRange(tops []float64) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for i := 1; i < len(tops); i++ {
		least, most = min(least, tops[i]-tops[i-1]), max(most, tops[i]-tops[i-1])
	}
	return least, most
}

// lowerBunkGap measures the lower mattress to the underside of the tread next above it; a tread beside the mattress leaves no gap.
func (s *Scene) lowerBunkGap(t *bunk.Steps) Reading {
	r := Reading{At: "lower-mattress", Rows: mattressRows, Skip: "no tread is over the lower mattress"}
	mtop, what := s.Bed.Lower.MattressTop, s.askThick(lowerBed)
	for _, z := range t.Tops {
		if what != "" && z > s.Bed.Lower.Top {
			r.Ask, r.Skip = what, ""
			break
		}
		if z > mtop {
			r.Have, r.Skip = max(0, ClearGap(z-mtop, t.Thick)), ""
			break
		}
	}
	return r
}

// toeDepth measures the middle of a tread to the nearest part of the bed behind it.
func (s *Scene) toeDepth(t *bunk.Steps) Reading {
	r := Reading{At: "toes", Rows: toeRows, Have: math.Inf(1)}
	in := t.Out.Mul(-1).At(0)
	for i := range s.Bed.Parts {
		if p := &s.Bed.Parts[i]; p.Role == bunk.RoleTread {
			r.Have = min(r.Have, s.behind(p.Box.C, in, ladderPart))
		}
	}
	if math.IsInf(r.Have, 1) {
		r.Skip = "nothing stands behind the treads"
	}
	return r
}

func ladderPart(p *furniture.Part) bool {
	return p.Role == bunk.RoleTread || p.Role == bunk.RoleStile || p.Role == bunk.RoleBlock || p.Role == bunk.RoleHanger
}

// behind returns how far the nearest part of the bed lies from a point in a level direction, own parts left out; infinite where there is
// none.
func (s *Scene) behind(p, dir geom.V3, own func(*furniture.Part) bool) float64 {
	near := math.Inf(1)
	for i := range s.Bed.Parts {
		q := &s.Bed.Parts[i]
		if q.Frame != furniture.OnBed || math.Abs(p.Z-q.Box.C.Z) > q.Box.Reach(geom.V3{Z: 1}) {
			continue
		}
		if t, _, ok := q.Box.Ray(p, dir); ok && t >= 0 && t < near && !own(q) {
			near = t
		}
	}
	return near
}
