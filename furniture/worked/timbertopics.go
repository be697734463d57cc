package worked

import (
	"fmt"
	"strconv"
	"strings"

	"bunkwright/furniture/timber"
)

// The sizes, sections and counts of timber: lumber_cases, sheet_cases, slat_cases, and cable_window of fastener_cases.
var timberTopics = []topic{
	{
		name: "dressed_size",
		keys: vocabulary{word("nominal", "2x4", "nominal size"), word("state", "dry", "dry or green")},
		quantities: []asked{{name: "thickness_x_width", unit: "in", of: func(g *given) (any, error) {
			s, err := timber.DressedSize(g.texts["nominal"], timber.State(g.texts["state"]))
			return fmt.Sprintf("%gx%g", s.Thick.Inches(), s.Wide.Inches()), err
		}}},
	},
	{
		name: "section",
		keys: vocabulary{word("nominal", "2x4", "nominal size"), maybe(word("state", "dry", "dry or green"))},
		quantities: []asked{
			{name: "area_in2", unit: "in2", of: section(func(s timber.Section) float64 { return s.Area })},
			{name: "S_edge_in3", unit: "in3", of: section(func(s timber.Section) float64 { return s.SEdge })},
			{name: "I_edge_in4", unit: "in4", of: section(func(s timber.Section) float64 { return s.IEdge })},
			{name: "S_flat_in3", unit: "in3", of: section(func(s timber.Section) float64 { return s.SFlat })},
			{name: "I_flat_in4", unit: "in4", of: section(func(s timber.Section) float64 { return s.IFlat })},
		},
		further: weightPerFoot, such: []string{"weight_lb_per_ft_at_35pcf"},
	},
	{
		name: "shrink_to_8_percent",
		keys: vocabulary{inch("width", "5.5", "width of the board"),
			plain("from_moisture_percent", "19", "moisture when bought"), plain("to_moisture_percent", "8", "moisture in use")},
		quantities: []asked{{name: "width_loss", unit: asInputs, of: func(g *given) (any, error) {
			return timber.Shrink(g.v("width"), g.v("from_moisture_percent"), g.v("to_moisture_percent"))
		}}},
	},
	{
		name: "sheet_thickness_in_category",
		keys: vocabulary{word("category", "23/32", "thickness category"), inch("measured", "0.703", "measured thickness")},
		quantities: []asked{{name: "within", of: func(g *given) (any, error) {
			return timber.SheetWithin(g.texts["category"], g.v("measured")/mmPerInch)
		}}},
	},
	{
		name: "slat_gap",
		keys: vocabulary{inch("W", "75", "clear opening"), inch("s", "3.5", "width of a slat"), plain("n", "13", "slats")},
		quantities: []asked{{name: "gap", unit: asInputs, of: func(g *given) (any, error) {
			n, err := g.whole("n")
			return timber.SlatGap(g.v("W"), g.v("s"), n), err
		}}},
	},
	{
		name: "slat_count",
		keys: vocabulary{inch("W", "75", "clear opening"), inch("s", "3.5", "width of a slat"), inch("max_gap", "2.5", "largest gap")},
		quantities: []asked{{name: "n", of: func(g *given) (any, error) {
			n, err := timber.SlatCount(g.v("W"), g.v("s"), g.v("max_gap"))
			return float64(n), err
		}}},
	},
	{
		name: "cable_window",
		keys: vocabulary{inch("D", "0.164", "diameter of the wood screw"), maybe(inch("limit", "1.25", "depth in front of a cable"))},
		quantities: []asked{
			{name: "min_penetration", unit: asInputs, needs: []string{"D"}, of: func(g *given) (any, error) {
				return timber.LeastPenetration(timber.WoodScrew, g.v("D")), nil
			}},
			{name: "fits", needs: []string{"D", "limit"}, of: func(g *given) (any, error) {
				return timber.ClearOfCable(timber.LeastPenetration(timber.WoodScrew, g.v("D")), g.v("limit")), nil
			}},
		},
	},
}

// section takes one value of the section of a nominal size, dry unless the case says otherwise.
func section(of func(timber.Section) float64) func(g *given) (any, error) {
	return func(g *given) (any, error) {
		state := timber.Dry
		if g.has("state") {
			state = timber.State(g.texts["state"])
		}
		size, err := timber.DressedSize(g.texts["nominal"], state)
		return of(size.Section()), err
	}
}

// weightPerFoot answers weight_lb_per_ft_at_35pcf and the like.
func weightPerFoot(quantity string) (asked, bool) {
	rest, ok := strings.CutPrefix(quantity, "weight_lb_per_ft_at_")
	density, err := strconv.ParseFloat(strings.TrimSuffix(rest, "pcf"), 64)
	if !ok || err != nil || !strings.HasSuffix(rest, "pcf") || !finite(density) {
		return asked{}, false
	}
	of := section(func(s timber.Section) float64 { return s.PoundsPerFoot(density) })
	return asked{name: quantity, unit: "lb/ft", of: of}, true
}
