package fit

import (
	"math"

	"bunkwright/furniture/yardstick"
)

// addBuildTolerance gives readings of the bed alone the uncertainty that the maker states for heights and lengths.
func (s *Scene) addBuildTolerance(rs []Reading) {
	half := s.Bed.Sizes.Tolerance.MM()
	if half == 0 {
		return
	}
	for i := range rs {
		rs[i].U, rs[i].UKey = math.Hypot(rs[i].U, half/math.Sqrt(3)), "bed.tolerance"
	}
}

// thickestMattress returns the thickest mattress that each place of the job would take under the rails of the bed, rounded down to
// 1/16 in or 1 mm by whoever prints it. Where a place has no limit of its own, what is advice there counts. A place whose texts do not
// cover this bed, or let no mattress in at all, is left out.
func (s *Scene) thickestMattress() []Figure {
	over := map[string]float64{
		"us-rail-over-mattress": s.railOverBase(s.lowestGuard(long)),
		"eu-rail-over-mattress": s.railOverBase(s.lowestGuard(anySide)),
	}
	over["au-rail-over-mattress"] = over["eu-rail-over-mattress"]
	var out []Figure
	for _, p := range s.Places {
		thick := s.thickestAt(p, over, yardstick.Limit)
		if math.IsInf(thick, 1) {
			thick = s.thickestAt(p, over, yardstick.Advice)
		}
		if thick > 0 && !math.IsInf(thick, 1) {
			out = append(out, Figure{"max_mattress." + string(p), thick, "mm"})
		}
	}
	return out
}

// thickestAt is the thickest mattress by the rows that have a force at a place, infinite where there are none.
func (s *Scene) thickestAt(p yardstick.Place, over map[string]float64, force yardstick.Force) float64 {
	thick := math.Inf(1)
	for id, rail := range over {
		row, _, _ := s.row(id)
		if (judge{s: s}).scope(row, &Reading{}).why == "" && yardstick.ForceOf(p, *row) == force {
			thick = min(thick, MaxMattress(rail, row.Need[0]))
		}
	}
	return thick
}

// MaxMattress returns the thickest mattress under a rail that has to stand a given height over it (calc-max-mattress-us and -eu).
func MaxMattress(railOverBase, over float64) float64 { return railOverBase - over }
