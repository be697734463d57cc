package worked

import (
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/people"
	"bunkwright/furniture/yardstick"
)

// A calculation stands beside the rules and gives a number or a word, with nothing to hold it against.
type calculation struct {
	id    string
	ways  []sum
	shown []string // an example, where the samples of the keys do not go together
}

// A sum is one way to work a calculation out; the first whose keys are given is taken.
type sum struct {
	needs []string
	any   []string // at least one of them must be given
	unit  string   // of the result: length for the unit of the inputs
	of    func(g *given) (any, error)
}

// asInputs stands for the unit of the inputs, in which an answer that is a length is given.
const asInputs = string(lengths)

// calculations maps ids of calcs.csv to how they are worked out.
var calculations = calculationsByID([]calculation{
	{id: "calc-headroom", ways: lengthsOf(slices.Concat(overUpper, overLower))},
	{id: "calc-berth-bottom", ways: lengthsOf(overBerth)},
	{id: "calc-max-mattress-us", ways: thickest("us-rail-over-mattress")},
	{id: "calc-max-mattress-eu", ways: thickest("eu-rail-over-mattress")},
	{id: "calc-impact-area", ways: []sum{lengthOf(one(fit.ImpactArea, "fall_height")), lengthOf(one(hangArea, "top_grip"))}},
	{id: "calc-hang-fall", ways: []sum{lengthOf(one(fit.HangFall, "top_grip"))}},
	{id: "calc-fan-distance", ways: []sum{lengthOf(fanDistance)}},
	{id: "calc-slope-distance", ways: []sum{lengthOf(four(fit.SlopeDistance, "knee_wall", "rail_from_wall", "slope", "rail_top"))}},
	{id: "calc-sitting-height", ways: []sum{{[]string{"sex", "age", "stat"}, nil, asInputs, sittingHeight}}},
	{id: "calc-child-bin", ways: []sum{{[]string{"measure", "sex", "age", "stat"}, nil, "", childSize}}},
	{id: "calc-adult-size", ways: []sum{{[]string{"measure", "sex", "stat"}, nil, "", adultSize}}},
	{id: "calc-lms", ways: []sum{{[]string{"L", "M", "S", "stat"}, nil, "cm", lms}}},
	{id: "calc-sitting-from-stature", ways: []sum{
		lengthOf(two(people.SittingFromStature, "stature", "ratio")),
		lengthOf(two(people.SittingBand, "stature", "sd_ratio")),
	}},
	{id: "calc-headroom-age", ways: []sum{{[]string{"headroom", "sex", "stat"}, nil, "", headroomAge}}},
	{id: "calc-named-child", ways: []sum{{[]string{"sex", "age", "sitting", "ask"}, nil, "", namedChild}}},
	{id: "calc-posture-band", ways: []sum{{[]string{"headroom", "sitting"}, nil, "", posture}}},
	{id: "calc-sight-line", ways: []sum{lengthOf(four(people.SightLine, "eye", "eye_to_slats", "target", "target_behind"))}},
	{id: "calc-bunk-reach", ways: []sum{{[]string{"shoulder", "reach", "mattress_top"}, nil, asInputs, bunkReach}},
		shown: []string{"shoulder_mm=1332", "reach_mm=742", "mattress_top_mm=1600"}},
})

func calculationsByID(list []calculation) map[string]calculation {
	out := map[string]calculation{}
	for _, c := range list {
		out[c.id] = c
	}
	return out
}

// lengthOf takes the way of a rule to a length as a calculation.
func lengthOf(w way) sum {
	return sum{w.needs, w.any, asInputs, func(g *given) (any, error) { return w.of(g)[0], nil }}
}

func lengthsOf(ways []way) []sum {
	var out []sum
	for _, w := range ways {
		out = append(out, lengthOf(w))
	}
	return out
}

// thickest is the mattress that the row about the rail over it still allows.
func thickest(id string) []sum {
	over := func(rail float64) float64 { return fit.MaxMattress(rail, yardstick.Figure(id)) }
	return []sum{lengthOf(one(over, "rail_over_base"))}
}

// hangArea is the clear floor that a hanging child needs.
func hangArea(grip float64) float64 { return fit.ImpactArea(fit.HangFall(grip)) }

func (c calculation) example() []string {
	if len(c.shown) > 0 {
		return c.shown
	}
	var out []string
	s := c.ways[0]
	for _, k := range ruleKeys.pick(way{needs: s.needs, any: s.any}.sample()) {
		out = append(out, k.sampleWord())
	}
	return out
}

func (c calculation) answer(quantity string, in Inputs) (Result, error) {
	if quantity != "" {
		return Result{}, &InputError{Key: "quantity", Problem: "a calculation gives one thing only: leave it out"}
	}
	g, err := ruleKeys.read(in)
	if err != nil {
		return Result{}, err
	}
	best := way{}
	for i, s := range c.ways {
		w := way{needs: s.needs, any: s.any}
		if w.complete(g) {
			return s.result(c.id, g)
		}
		if i == 0 || w.given(g) > best.given(g) {
			best = w
		}
	}
	return Result{}, missing(ruleKeys.pick(best.lacking(g)))
}

func (s sum) result(id string, g *given) (Result, error) {
	v, err := s.of(g)
	if err != nil {
		return Result{}, err
	}
	about, _ := yardstick.FindCalc(id)
	return finished(about.What, s.unit, v, g), nil
}

// A sized value names its own unit.
type sized struct {
	value float64
	unit  string
}

// finished turns what was worked out into a result: a number in base units, one that names its unit, or a word.
func finished(quantity, unitName string, v any, g *given) Result {
	r := Result{Quantity: quantity, Outcome: valueOutcome, Unit: unitName}
	switch v := v.(type) {
	case sized:
		r.Value, r.Unit = number(v.value), v.unit
	case float64:
		r.Value = number(v)
	case bool:
		r.Outcome, r.Unit = map[bool]string{true: "yes", false: "no"}[v], ""
	case string:
		r.Outcome = v
	}
	switch {
	case unitName == asInputs && r.Value != nil:
		u := g.lengthUnit()
		r.Value, r.Unit = number(*r.Value/u.per), u.name
	case unitName == asInputs: // a word stands for a length that there is not
		r.Unit = ""
	}
	return r
}
