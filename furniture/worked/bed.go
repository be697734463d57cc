package worked

import (
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
)

var bedMeasures = []measured{
	{rows: "us-bunk-scope", ways: []way{each("foundation_underside", "upper_underside")}},
	{rows: "eu-bunk-scope-base uk-1987-scope nz-bunk-scope", ways: []way{each("base_top", "upper_deck_top")}},
	{rows: "au-bunk-scope", ways: []way{each("base_top", "upper_deck_top")}, settled: stacked},
	{rows: "eu-bunk-scope-length", ways: []way{each("frame_length")}},
	{rows: "eu-bunk-scope-width", ways: []way{each("frame_width")}},

	{rows: "us-rail-over-mattress eu-rail-over-mattress au-rail-over-mattress or-camp-rail wi-camp-rail",
		ways: []way{two(fit.RailOverMattress, "rail_over_base", "mattress"), two(fit.RailOverMattress, "rail_over_base", "upper_mattress"),
			three(railFromFloor, "rail_top", "base_top", "mattress"), three(railFromFloor, "rail_top", "upper_deck_top", "upper_mattress")}},
	{rows: "eu-rail-over-base au-rail-over-base au-mark-scope eu-barrier-height eu-guardrail-height",
		ways: []way{each("rail_over_base")}},
	{rows: "au-mark-line", ways: []way{each("mark_line")}},

	{rows: "us-rail-each-side", ways: []way{{needs: []string{"rails_front", "rails_wall"}, of: longSides}}},
	{rows: "eu-rail-four-sides fr-rail-four-sides au-rail-four-sides",
		ways:    []way{{needs: []string{"rails_front", "rails_wall"}, of: func(g *given) []float64 { return []float64{railedSides(g)} }}},
		settled: endsTaken},
	{rows: "ca-rail-all-sides", ways: []way{yes(allSides, "rails_front", "rails_wall")}, settled: endsTaken},
	{rows: "qld-wall-rail", ways: []way{
		yes(func(g *given) bool { return g.v("rails_wall") > 0 || g.said("fixed_to_wall", "yes") }, "rails_wall", "fixed_to_wall"),
		yes(func(g *given) bool { return g.v("rails_wall") > 0 }, "rails_wall"),
	}},
	{rows: "us-rail-full-side", ways: []way{yes(fullRailSide, "ladder_side", "full_rail_side")}},

	{rows: "us-end-over-mattress", ways: []way{each("end_over_mattress")}},
	{rows: "us-end-share", ways: []way{{needs: []string{"end_between_posts", "end_high_parts"}, of: highShare}}},

	{rows: "us-age-upper fr-age-upper ca-age-upper asnzs-age-upper qld-age-upper", ways: []way{each("youngest", "age")}},
	{rows: "own-mattress-gap own-mattress-gap-need", ways: []way{bothAxes, width, long, each("gap", "gaps")}},
	{rows: "eu-base-slat-gap uk-1987-surface-gap own-slat-gap",
		ways: []way{each("slat_gap", "gap", "gaps"), two(fit.ClearGap, "slat_pitch", "slat_width")}},
	{rows: "eu-base-vent", ways: []way{each("open_area")}},
	{rows: "eu-post-over-neighbour", ways: []way{each("post_over_neighbour")}},
	{rows: "au-protrusion", ways: []way{each("protrusion")}},
	{rows: "au-access-count", ways: []way{each("ways_in")}},
	{rows: "mi-camp-topmax", ways: []way{each("upper_deck_top", "base_top")}},
	{rows: "or-camp-underbed md-camp-underbed", ways: []way{each("under_bed")}},
	{rows: "wa-labor-underbed", ways: []way{each("lower_deck_top", "under_bed")}},
}

var (
	width = two(fit.MattressGap, "frame_width", "mattress_width")
	long  = two(fit.MattressGap, "frame_length", "mattress_length")
	// bothAxes is the way of a frame with both its sides.
	bothAxes = way{needs: slices.Concat(width.needs, long.needs), of: func(g *given) []float64 { return append(width.of(g), long.of(g)...) }}
)

// stacked knows that a stacked pair of beds is in scope at any height (caution of au-bunk-scope).
func stacked(g *given) (yardstick.Outcome, string) {
	if g.said("lower_bunk", "yes") {
		return yardstick.Applies, "a stacked pair of beds is always in scope"
	}
	return yardstick.NotJudged, ""
}

// railFromFloor is the rail over the mattress where both are measured from the floor.
func railFromFloor(top, deck, mattress float64) float64 {
	return fit.RailOverMattress(top-deck, mattress)
}

// longSides holds each long side by itself.
func longSides(g *given) []float64 { return []float64{g.v("rails_front"), g.v("rails_wall")} }

// railedSides counts the sides with a barrier; both ends count as one each unless the inputs say otherwise.
func railedSides(g *given) float64 {
	return min(1, g.v("rails_front")) + min(1, g.v("rails_wall")) + min(2, g.or("rails_ends", 2))
}

func endsTaken(g *given) (yardstick.Outcome, string) {
	if g.has("rails_ends") || g.has("value") || g.has("answer") {
		return yardstick.NotJudged, ""
	}
	return yardstick.NotJudged, "both ends are taken as barriers: say rails_ends if they are not"
}

func allSides(g *given) bool { return railedSides(g) == 4 }

func fullRailSide(g *given) bool {
	return fit.FullRailAway(g.texts["full_rail_side"], g.texts["ladder_side"], "wall")
}

// highShare counts the parts of an end only where they stand high enough over the mattress.
func highShare(g *given) []float64 {
	over, _ := yardstick.Find("us-end-over-mattress")
	if g.has("end_over_mattress") && over.Outcome(g.v("end_over_mattress")) == yardstick.Fail {
		return []float64{0}
	}
	return []float64{fit.EndShare(g.values["end_high_parts"], g.v("end_between_posts"))}
}
