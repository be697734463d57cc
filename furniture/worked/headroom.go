package worked

import (
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/people"
)

var headroomMeasures = []measured{
	{rows: "md-camp-upper mi-camp-upper wi-camp-upper or-camp-upper oh-resident-camp-upper oh-labor-upper fl-labor-upper",
		ways: append(overUpper, each("headroom"))},
	{rows: "md-camp-lower mi-camp-lower wi-camp-lower or-camp-lower oh-resident-camp-lower oh-labor-lower fl-labor-lower osha-labor wa-labor nc-child",
		ways: slices.Concat(overLower, overBerth, []way{each("headroom", "berth_gap")})},
	{rows: "ny-camp fmcsa-sleeper uscg-passenger own-lie-height",
		ways: slices.Concat([]way{overBoth}, overUpper, overLower, overBerth, []way{each("headroom", "berth_gap")})},
	{rows: "uscg-modu-gap", ways: []way{each("berth_gap")}},
	{rows: "irc-loft", ways: []way{overDeck, each("headroom")}},
	{rows: "pa-resident", ways: []way{yes(erect, "headroom", "sitting")}},
}

// overhead is what may be over the upper sleeper; the lowest counts.
var overhead = []string{"ceiling", "ceiling_low", "ceiling_high"}

func lowestOver(g *given) float64 { return slices.Min(g.all(overhead)) }

var (
	overUpper = []way{overUpperWith("upper_mattress"), overUpperWith("mattress")}
	overLower = []way{
		three(headroom, "upper_underside", "lower_deck_top", "lower_mattress"),
		three(headroom, "upper_underside", "lower_deck_top", "mattress"),
	}
	overBoth = way{needs: slices.Concat(overUpper[0].needs, overLower[0].needs), any: overhead, of: func(g *given) []float64 {
		return append(overUpper[0].of(g), overLower[0].of(g)...)
	}}
	// overDeck is over the bare deck: a loft floor has no mattress.
	overDeck = way{needs: []string{"upper_deck_top"}, any: overhead, of: func(g *given) []float64 {
		return []float64{headroom(lowestOver(g), g.v("upper_deck_top"), 0)}
	}}
	// overBerth starts at the bottom of a berth, so its mattress comes off.
	overBerth = []way{two(berthRoom, "berth_gap", "mattress"), two(berthRoom, "berth_gap", "lower_mattress"), two(berthRoom, "berth_gap", "upper_mattress")}
)

func overUpperWith(mattress string) way {
	return way{needs: []string{"upper_deck_top", mattress}, any: overhead, of: func(g *given) []float64 {
		return []float64{headroom(lowestOver(g), g.v("upper_deck_top"), g.v(mattress))}
	}}
}

func berthRoom(gap, mattress float64) float64 { return headroom(gap, 0, mattress) }

// headroom starts at a deck with a mattress on it.
func headroom(lowest, deck, mattress float64) float64 { return fit.Headroom(lowest, deck+mattress) }

// erect tells whether a head of that sitting height fits under.
func erect(g *given) bool {
	return people.PostureBand(g.v("headroom"), g.v("sitting"), 0, 0) == people.SitsFreely
}
