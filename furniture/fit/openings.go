package fit

import (
	"math"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/timber"
	"bunkwright/furniture/yardstick"
)

// SmallerSide returns the smaller clear side of an opening, in the unit of its sides. A block or a ball that is wider does not pass.
func SmallerSide(high, wide float64) float64 { return min(high, wide) }

// DryingGrowth returns how much wider a gap gets in a heated room when the boards beside it, that wide together, dry from 19 to 8 %
// moisture, in the unit of the width (FPL-RP-489).
func DryingGrowth(boards float64) float64 { return timber.ShrinkIndoors(boards) }

// hole is an opening as a question looks at it: where it begins and ends, over the post feet.
type hole struct {
	*bunk.Opening
	at          string
	bottom, top float64
	parts       []string
}

// holeOf returns the whole of an opening.
func holeOf(o *bunk.Opening) hole { return hole{o, o.ID, o.Bottom, o.Top, o.Parts} }

// side returns the smaller clear side once the boards over and under the opening have made it higher by a growth.
func (h hole) side(growth float64) float64 { return SmallerSide(h.top-h.bottom+growth, h.Wide) }

// like tells whether two openings of one side, such as those of two bays between uprights, measure the same.
func (h hole) like(o hole) bool {
	if h.Side != o.Side || h.bottom != o.bottom || h.top != o.top || h.Grows != o.Grows || h.Set != o.Set {
		return false
	}
	growth := DryingGrowth(h.Grows)
	return h.side(0) == o.side(0) && h.side(growth) == o.side(growth)
}

// measure adds the readings of an opening as it is built and, where boards beside it will shrink, once they have dried.
func (h hole) measure(out []Reading, s *Scene, rows []string) []Reading {
	r := Reading{At: h.at + ".fresh", Rows: rows, Have: h.side(0), Parts: h.parts, Scope: s.gapScope(h.bottom), Edge: "as it is built"}
	if r.Have <= 0 {
		r.Skip = "the deck closes it"
		return append(out, r)
	}
	r.U, r.UKey = s.openingU(h.Opening)
	r.Uses = []Use{{h.at, r.Have, "mm", "worked out"}, {"own-drying", DryingGrowth(h.Grows), "mm", "table"}}
	dried := h.side(r.Uses[1].Value)
	out = append(out, r)
	if dried == r.Have {
		return out
	}
	r.At, r.Have, r.Edge = h.at+".dried", dried, "once the boards have dried indoors"
	return append(out, r)
}

// openingU returns the standard uncertainty of an opening and what it belongs to: the way gaps are set by hand, else the build
// tolerance that the maker states.
func (s *Scene) openingU(o *bunk.Opening) (u float64, key string) {
	if o.Set {
		return s.gapU(), "bed.gaps"
	}
	if half := s.Bed.Sizes.Tolerance.MM(); half > 0 {
		return half / math.Sqrt(3), "bed.tolerance"
	}
	return 0, ""
}

// gapU returns the standard uncertainty of a gap set by hand: half the width of what it may be, over root 3 (JCGM 100:2008, 4.3.7).
func (s *Scene) gapU() float64 {
	half := yardstick.Figure(yardstick.BuildByEye)
	if s.Bed.Sizes.Gaps == bunk.BySpacer {
		half = yardstick.Figure(yardstick.BuildBySpacer)
	}
	return half / math.Sqrt(3)
}
