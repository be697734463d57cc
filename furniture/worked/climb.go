package worked

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
)

var climbMeasures = []measured{
	{rows: "eu-tread-pitch play-rung-rise play-step-rise-5-12 play-step-rise-2-5 imc-rung-pitch own-climb-foothold",
		ways: []way{each("tread_pitch", "tread_pitches")}},
	{rows: "ladder-clear-gap", ways: []way{two(fit.ClearGap, "tread_pitch", "tread_thick"), each("gap", "gaps")}},
	{rows: "eu-tread-depth play-step-depth-open-5-12 play-step-depth-closed-5-12 play-step-depth-2-5", ways: []way{each("tread_depth")}},
	{rows: "eu-tread-width play-rung-width-2-5 play-rung-width-5-12 play-step-width-5-12 imc-ladder-width", ways: []way{each("ladder_width")}},
	{rows: "play-rung-slope play-step-slope-5-12", ways: []way{each("ladder_angle")}},
	{rows: "play-handrail-preschool play-handrail-school", ways: []way{each("handrail")}},
	{rows: "play-even-spacing", ways: []way{yes(evenSteps, "tread_pitches")}},
	{rows: "f1427-ladder-top-gap", ways: []way{each("ladder_top_gap", "gap", "gaps")}},
	{rows: "us-ladder-lower-bunk-gap", ways: []way{each("next_step_gap", "gap", "gaps"),
		four(nextStep, "lower_deck_top", "lower_mattress", "tread_pitch", "tread_thick")}, settled: needsLowerBunk},
	{rows: "play-rung-diameter imc-rung-diameter", ways: []way{each("rung_diameter")}},
	{rows: "imc-toe-depth", ways: []way{each("toe_depth")}},
	{rows: "au-grip-width play-grip-width", ways: []way{each("grip")}},

	{rows: "play-climb-attached play-climb-attached-young", ways: []way{each("foothold")}},
	{rows: "play-climb-free", ways: []way{each("climber_top", "top_grip", "foothold")}},
	{rows: "eu-fall-surface-scope eu-fall-max", ways: []way{each("fall_height"), one(fit.HangFall, "top_grip")}},
	{rows: "eu-impact-area", ways: []way{each("clear_floor", "gap")}, settled: higherFall},
	{rows: "play-use-zone", ways: []way{each("clear_floor", "gap")}},
	{rows: "eu-wall-hold-insert", ways: []way{each("movement")}},
	{rows: "eu-wall-deflection", ways: []way{two(shareOfSpan, "deflection", "span")}},
}

// evenSteps lays the steps on one another from the floor up to the deck.
func evenSteps(g *given) bool {
	tops, deck := []float64{}, 0.0
	for _, step := range g.values["tread_pitches"] {
		tops = append(tops, deck)
		deck += step
	}
	return fit.EvenSteps(tops, deck)
}

// nextStep is the gap from the lower mattress up to the first tread whose top is over it, treads counted from the floor.
func nextStep(deck, mattress, pitch, thick float64) float64 {
	top := deck + mattress
	return max(0, fit.ClearGap((math.Floor(top/pitch)+1)*pitch-top, thick))
}

func shareOfSpan(deflection, span float64) float64 { return 100 * deflection / span }

// higherFall knows that the row holds only for falls whose clear floor it gives; for higher ones there is a calculation.
func higherFall(g *given) (yardstick.Outcome, string) {
	row, _ := yardstick.Find("eu-impact-area")
	if g.has("fall_height") && fit.ImpactArea(g.v("fall_height")) > row.Need[0] {
		return yardstick.NotApplies, "the fall is higher: calc-impact-area gives the clear floor"
	}
	return yardstick.NotJudged, ""
}
