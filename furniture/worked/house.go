package worked

import (
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
)

var houseMeasures = []measured{
	{rows: "asnzs-fan-distance qld-fan-distance nz-ceiling-fitting-distance",
		ways: []way{fanDistance, each("fan_distance", "gap")}},
	{rows: "us-not-under-fan", ways: []way{
		yes(func(g *given) bool { return g.v("fan_plan") >= g.v("fan_radius") }, "fan_plan", "fan_radius"),
		yes(clearInPlan, "overlaps_in_plan"),
	}},
	{rows: "fan-floor", ways: []way{each("blade_height", "blade_z")}},
	{rows: "fan-wall", ways: []way{each("fan_tip_to_wall", "gap")}},
	{rows: "light-storage-surface light-storage-recessed", ways: []way{each("lamp_to_bedding", "gap")}},
	{rows: "alarm-count", ways: []way{each("alarms_in_room")}},
	{rows: "alarm-fan", ways: []way{each("alarm_to_fan_tip")}},
	{rows: "alarm-register", ways: []way{each("alarm_to_register")}},
	{rows: "alarm-wet-door", ways: []way{each("alarm_to_wet_door")}},
	{rows: "alarm-wall-drop", ways: []way{each("alarm_below_ceiling")}},

	{rows: "heater-front own-heater-front", ways: []way{fromHeater("heater_front")}},
	{rows: "heater-side own-heater-side", ways: []way{fromHeater("heater_side")}},
	{rows: "heater-above own-heater-above", ways: []way{fromHeater("heater_above")}},
	{rows: "heater-wall-fan own-heater-wall-fan", ways: []way{fromHeater("heater_wall_fan")}},
	{rows: "heater-portable own-heater-portable", ways: []way{fromHeater("portable_heater")}},
	{rows: "heater-stove own-heater-stove", ways: []way{fromHeater("stove")}},
	{rows: "heater-radiator own-heater-radiator", ways: []way{fromHeater("radiator")}},

	{rows: "outlet-reach", ways: []way{alongWall("wall"), alongWall("wall_space")}},
	{rows: "outlet-wall-space", ways: []way{each("wall_space", "wall")}},
	{rows: "outlet-height", ways: []way{each("receptacle_height")}},

	{rows: "irc-escape-count", ways: []way{each("escape_openings")}},
	{rows: "irc-escape-area irc-escape-area-grade", ways: []way{{needs: []string{"opening_w", "opening_h"}, of: clearArea}, each("area")}},
	{rows: "irc-escape-width", ways: []way{{needs: []string{"opening_w"}, of: clearWidth}}},
	{rows: "irc-escape-height", ways: []way{each("opening_h")}},
	{rows: "irc-escape-sill irc-fall-sill ibc-fall-sill", ways: []way{each("sill")}},
	{rows: "irc-fall-drop", ways: []way{each("drop")}},
	{rows: "irc-fall-opening", ways: []way{each("opens")}, settled: guarded},
	{rows: "cpsc-window-stop", ways: []way{each("opens")}},
	{rows: "cpsc-window-furniture shelf-over-bed", ways: []way{yes(clearInPlan, "overlaps_in_plan")}},
	{rows: "own-sill-over-mattress own-window-sill", ways: []way{two(fit.SillOverMattress, "sill", "mattress_top"),
		three(headroom, "sill", "lower_deck_top", "lower_mattress"), three(headroom, "sill", "upper_deck_top", "upper_mattress")}},
	{rows: "wcma-cord-length", ways: []way{each("cord")}},
}

var fanDistance = four(fit.FanDistance, "bunk_top_z", "fan_plan", "fan_radius", "blade_z")

func clearInPlan(g *given) bool { return g.said("overlaps_in_plan", "no") }

func pastBedding(distance, overhang float64) float64 { return distance - overhang }

// fromHeater takes what the bedding hangs out off the distance of the bed.
func fromHeater(name string) way {
	return way{needs: []string{name}, of: func(g *given) []float64 { return []float64{pastBedding(g.v(name), g.or("bedding_overhang", 0))} }}
}

// alongWall takes the receptacles in any order; one beyond the wall gives no number.
func alongWall(name string) way {
	return way{needs: []string{name, "receptacles"}, of: func(g *given) []float64 {
		wall, at := g.v(name), slices.Sorted(slices.Values(g.values["receptacles"]))
		if at[0] < 0 || at[len(at)-1] > wall {
			return []float64{math.NaN()}
		}
		return []float64{fit.FurthestFromOutlet(wall, at...)}
	}}
}

// clearWidth is what is left of an opening beside something that stands before it over its whole height.
func clearWidth(g *given) []float64 {
	return []float64{fit.OpeningLeft(g.v("opening_w"), g.or("blocked_w", 0))}
}

func clearArea(g *given) []float64 {
	return []float64{fit.SquareFeet(clearWidth(g)[0], g.v("opening_h")) * scale(yardstick.SquareFoot)}
}

func guarded(g *given) (yardstick.Outcome, string) {
	if g.said("guard", "yes") {
		return yardstick.NotApplies, "a listed guard is fitted: the other way to meet the text"
	}
	return yardstick.NotJudged, ""
}
