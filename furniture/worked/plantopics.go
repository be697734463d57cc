package worked

import (
	"math"
	"strings"

	"bunkwright/room/survey"
)

var planTopics = []topic{
	{name: "rectangle_redundancy",
		keys: vocabulary{inch("a", "144", "first wall"), inch("b", "120", "second wall"), word("readings", "4 walls 2 diagonals, equal sd", "what is read")},
		quantities: []asked{
			{name: "r_wall_a", of: redundancy(func(o survey.RectangleOutlook) survey.Check { return o.Wall[0] })},
			{name: "r_wall_b", of: redundancy(func(o survey.RectangleOutlook) survey.Check { return o.Wall[1] })},
			{name: "r_diagonal", of: redundancy(func(o survey.RectangleOutlook) survey.Check { return o.Diagonal[0] })},
		}},
	{name: "design",
		keys: vocabulary{inch("a", "144", "first wall"), inch("b", "120", "second wall"), inch("sd", "0.125", "standard uncertainty of a length"),
			plain("angle_sd_deg", "0.5", "standard uncertainty of a right angle that is only believed"), word("set", "4 walls 2 diagonals", "what is read")},
		quantities: []asked{
			{name: "f", of: outlook(func(_ *given, o survey.RectangleOutlook) (any, error) { return float64(o.F), nil })},
			{name: "mdb_diagonal", unit: asInputs, of: outlook(func(_ *given, o survey.RectangleOutlook) (any, error) { return smallest(o.Diagonal[0]), nil })},
		},
		further: furtherOutlook, such: []string{"sd_C_x", "mdb_wall_144"}},
}

func redundancy(of func(survey.RectangleOutlook) survey.Check) func(g *given) (any, error) {
	return func(g *given) (any, error) {
		plan := survey.RectanglePlan{A: g.v("a"), B: g.v("b"), Sigma: 1}
		if err := plan.ParseRectangleSet(strings.TrimSuffix(g.texts["readings"], ", equal sd")); err != nil {
			return nil, err
		}
		out, err := plan.Outlook()
		return of(out).Redundancy, err
	}
}

func outlook(of func(*given, survey.RectangleOutlook) (any, error)) func(g *given) (any, error) {
	return func(g *given) (any, error) {
		plan := survey.RectanglePlan{A: g.v("a"), B: g.v("b"), Sigma: g.v("sd"), AngleSigma: g.v("angle_sd_deg")}
		if err := plan.ParseRectangleSet(g.texts["set"]); err != nil {
			return nil, err
		}
		out, err := plan.Outlook()
		if err != nil {
			return nil, err
		}
		return of(g, out)
	}
}

// smallest is the smallest slip that would be found, or a word where the reading is not taken or nothing checks it.
func smallest(c survey.Check) any {
	if c.Smallest == 0 || math.IsInf(c.Smallest, 1) {
		return "not checked"
	}
	return c.Smallest
}

// furtherOutlook answers sd_C_x and the like for every corner, and mdb_wall_144 for the wall of that length.
func furtherOutlook(quantity string) (asked, bool) {
	if wall, ok := strings.CutPrefix(quantity, "mdb_wall_"); ok {
		return asked{name: quantity, unit: asInputs, of: outlook(func(g *given, o survey.RectangleOutlook) (any, error) { return wallNamed(g, o, wall) })}, true
	}
	for i, corner := range "ABCD" {
		for j, axis := range "xy" {
			if quantity == "sd_"+string(corner)+"_"+string(axis) {
				return asked{name: quantity, unit: asInputs, of: outlook(func(_ *given, o survey.RectangleOutlook) (any, error) { return o.Corners[i][j], nil })}, true
			}
		}
	}
	return asked{}, false
}

func wallNamed(g *given, o survey.RectangleOutlook, wall string) (any, error) {
	for i, side := range []string{"a", "b"} {
		if wall == g.texts[side] || wall == side {
			return smallest(o.Wall[i]), nil
		}
	}
	return nil, &InputError{Key: "quantity", Problem: "no wall is " + wall + " long", Want: "mdb_wall_" + g.texts["a"] + " or mdb_wall_" + g.texts["b"]}
}
