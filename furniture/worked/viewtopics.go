package worked

import (
	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// Corners, slats that are looked through, door leaves and casters: square_cases, slat_view_cases, door_cases, caster_cases.
var viewTopics = []topic{
	{
		name: "corner_angle",
		keys: vocabulary{inch("a", "144", "one leg"), inch("b", "192", "other leg"), inch("d", "240.5", "diagonal between their ends")},
		quantities: []asked{{name: "angle_deg", unit: "deg", of: func(g *given) (any, error) {
			return geom.CornerAngle(g.v("a"), g.v("b"), g.v("d")), nil
		}}},
	},
	{
		name: "diagonal_error",
		keys: vocabulary{inch("a", "144", "one leg"), inch("b", "120", "other leg"), inch("e", "0.25", "error of the diagonal")},
		quantities: []asked{{name: "angle_error_deg", unit: "deg", of: func(g *given) (any, error) {
			return geom.DiagonalError(g.v("a"), g.v("b"), g.v("e")), nil
		}}},
	},
	{
		name: "blind_direct",
		keys: vocabulary{inch("s", "0.016", "width of a slat"), inch("h", "0.012", "one slat to the next"),
			{name: "slat", dim: angles, sample: "45 deg", means: "angle of the slats", bare: "deg"},
			{name: "profile", dim: angles, sample: "0 deg", means: "profile angle of the line of sight", bare: "deg"},
			word("face", "front", "front or back")},
		quantities: []asked{{name: "tau", of: blind}},
	},
	{
		name: "board_slats",
		keys: vocabulary{inch("face", "3.5", "face of a slat"), inch("thickness", "0.75", "thickness of a slat"), inch("gap", "3.375", "gap between slats"),
			maybe(key{name: "angle", dim: angles, sample: "30 deg", means: "line of sight off square, across the slats", bare: "deg"})},
		quantities: []asked{
			{name: "visible", needs: []string{"face", "thickness", "gap", "angle"}, of: func(g *given) (any, error) {
				return fit.BoardsLetThrough(g.v("face"), g.v("thickness"), g.v("gap"), g.v("angle")), nil
			}},
			{name: "cutoff_deg", unit: "deg", needs: []string{"thickness", "gap"}, of: func(g *given) (any, error) {
				return fit.BoardsCutoff(g.v("thickness"), g.v("gap")), nil
			}},
		},
	},
	{
		name: "clear_width",
		keys: vocabulary{inch("leaf", "32", "width of the leaf"), inch("leaf_thickness", "1.375", "thickness of the leaf"),
			maybe(inch("stop", "0.5", "stop")), maybe(inch("hinge_gap", "0.125", "gap at the hinges"))},
		quantities: []asked{{name: "clear", unit: asInputs, of: func(g *given) (any, error) {
			return fit.ClearWidth(g.v("leaf"), g.v("leaf_thickness"), g.or("stop", usualStop), g.or("hinge_gap", usualHingeGap)), nil
		}}},
	},
	{
		name: "rolling_force",
		keys: vocabulary{plain("load_lb", "60", "load on the wheels, lb"), {name: "wheel_diameter", dim: lengths, sample: "51 mm", means: "diameter of a wheel"},
			word("floor", "industrial carpet", "concrete, tile, asphalt or industrial carpet")},
		quantities: []asked{{name: "force", unit: "lb", of: func(g *given) (any, error) {
			return fit.RollingForce(g.texts["floor"], g.v("load_lb"), g.v("wheel_diameter"))
		}}},
	},
}

// Of a door leaf, mm: common practice, no source; with a 1-3/8 in leaf they make the 2 in that a 34 in leaf loses (US HUD Fair Housing
// Accessibility Guidelines, requirement 3(2)).
const (
	usualStop     = 0.5 * mmPerInch
	usualHingeGap = 0.125 * mmPerInch
)

func blind(g *given) (any, error) {
	profile := g.v("profile")
	switch g.texts["face"] {
	case "front":
	case "back":
		profile = -profile
	default:
		return nil, &InputError{Key: "face", Problem: g.texts["face"], Want: "front or back"}
	}
	return fit.SlatsLetThrough(g.v("s"), g.v("h"), g.v("slat"), profile), nil
}
