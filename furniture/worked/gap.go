package worked

import (
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
)

var gapMeasures = []measured{
	{rows: "us-rail-full-length-gap", ways: []way{each("gap", "gaps")}},
	{rows: "us-rail-short-end-gap", ways: []way{each("access", "head_gap", "ladder_end_gap", "gap", "gaps")}},
	{rows: "eu-access-opening", ways: []way{widest("access", "ladder_end_gap", "gap", "gaps")}},
	{rows: "au-gap-rollout", ways: slices.Concat([]way{ladderEnds}, clearSides)},

	{rows: "us-rail-opening us-upper-end-opening eu-small-gap eu-rail-base-gap uk-1987-other-gap or-camp-rail-gap wi-camp-rail-gap",
		ways: clearSides},
	{rows: "au-gap-head au-gap-limb", ways: slices.Concat(clearSides, []way{bareOpening, ladderEnds})},
	{rows: "us-lower-end-opening", ways: slices.Concat(clearSides, []way{bareOpening}), settled: needsLowerBunk},
	{rows: "us-lower-end-opening-made-up", ways: slices.Concat(madeUp, clearSides), settled: needsLowerBunk},
	{rows: "play-head-band play-large-opening", ways: slices.Concat(clearSides, []way{bareOpening})},
	{rows: "play-corner-angle", ways: []way{each("corner_angle")}},
	{rows: "eu-head-gap-scope au-gap-scope-height", ways: []way{each("opening_from_floor")}},

	{rows: "eu-adjoining-gap", ways: slices.Concat([]way{each("gap", "gaps")}, neighbours), settled: adjoins},
	{rows: "qld-wall-gap", ways: []way{each("gap", "gaps", "bed_to_wall", "rail_from_wall")}, settled: toWall},
}

// clearSides are the ways to the smaller clear side of openings.
var clearSides = []way{
	two(fit.SmallerSide, "opening_short", "opening_long"),
	each("gap", "gaps", "opening_short"),
	two(fit.ClearGap, "slat_pitch", "slat_width"),
}

var (
	bareOpening = each("opening_above_lower_base")
	ladderEnds  = each("access", "head_gap", "ladder_end_gap")
	// madeUp is what the mattress leaves of the opening over the lower base; where its size is given too, the other is where it begins.
	madeUp = []way{
		three(leftAbove, "gap", "opening_above_lower_base", "lower_mattress"),
		three(leftAbove, "opening_short", "opening_above_lower_base", "lower_mattress"),
		two(fit.OpeningLeft, "opening_above_lower_base", "lower_mattress"),
		two(fit.OpeningLeft, "opening_above_lower_base", "mattress"),
		two(fit.OpeningLeft, "gap", "lower_mattress"),
		two(fit.OpeningLeft, "opening_short", "lower_mattress"),
	}
)

// leftAbove is what a mattress leaves of an opening that begins at a height over the base.
func leftAbove(opening, begins, mattress float64) float64 {
	return fit.OpeningLeft(opening, max(0, mattress-begins))
}

// neighbours are the ways to the gap between a rail and what is beside or over it.
var neighbours = []way{
	four(fit.SlopeDistance, "knee_wall", "rail_from_wall", "slope", "rail_top"),
	two(fit.Headroom, "ceiling", "rail_top").unless("slope", "knee_wall"),
	two(fit.Headroom, "ceiling_low", "rail_top").unless("slope", "knee_wall"),
	{needs: []string{"to", "rail_from_wall"}, of: straightToWall},
}

// straightToWall takes the level distance, which is the shortest line to a wall only: to a slope or a ceiling it gives no number.
func straightToWall(g *given) []float64 {
	if !g.said("to", "wall") {
		return []float64{math.NaN()}
	}
	return []float64{g.v("rail_from_wall")}
}

// widest takes the greatest of what is given.
func widest(names ...string) way {
	return way{any: names, of: func(g *given) []float64 { return []float64{slices.Max(g.all(names))} }}
}

func needsLowerBunk(g *given) (yardstick.Outcome, string) {
	if g.said("lower_bunk", "no") {
		return yardstick.NotApplies, "there is no bed below"
	}
	return yardstick.NotJudged, ""
}

func adjoins(g *given) (yardstick.Outcome, string) {
	if g.said("overlaps_in_plan", "no") {
		return yardstick.NotApplies, "it does not adjoin the bed"
	}
	return yardstick.NotJudged, ""
}

func toWall(g *given) (yardstick.Outcome, string) {
	if g.has("to") && !g.said("to", "wall") {
		return yardstick.NotApplies, "the row is about the wall beside the bed"
	}
	return yardstick.NotJudged, ""
}
