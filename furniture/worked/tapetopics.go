package worked

import (
	"math"

	"bunkwright/room/survey"
)

var (
	tapeClass  = word("class", "II", "accuracy class printed on the tape: I, II or III")
	tapeLength = key{name: "length", dim: lengths, sample: "3.6576 m", means: "length measured"}
	tradeFeet  = key{name: "length", dim: lengths, sample: "12 ft", means: "length measured"}
)

var tapeTopics = []topic{
	{name: "mpe", keys: vocabulary{tapeClass, tapeLength}, quantities: []asked{{name: "mpe", unit: "mm", of: classed(survey.MaxTapeError)}}},
	{name: "mpe_surface", keys: vocabulary{tapeClass, tapeLength}, quantities: []asked{{name: "mpe", unit: "mm", of: classed(survey.MaxTapeErrorFromEnd)}}},
	{name: "mpe_marks", keys: vocabulary{tapeClass, word("interval", "up to 1 mm", "between neighbouring lines: up to 1 mm, or over 1 mm to 1 cm")},
		quantities: []asked{{name: "mpe", unit: "mm", of: markError}}},
	{name: "uk_trade_imperial", keys: vocabulary{tradeFeet}, quantities: []asked{{name: "tolerance", unit: "in", of: func(g *given) (any, error) {
		return survey.UKTradeToleranceInches(g.v("length") / mmPerFoot), nil
	}}}},
	{name: "uk_trade_metric", keys: vocabulary{tapeLength}, quantities: []asked{{name: "tolerance", unit: "mm", of: func(g *given) (any, error) {
		return survey.UKTradeToleranceMM(g.v("length") / 1000), nil
	}}}},
	{name: "us_tape", keys: vocabulary{tradeFeet}, quantities: []asked{{name: "tolerance", unit: "in", of: func(g *given) (any, error) {
		return survey.USTapeTolerance(g.v("length") / mmPerFoot), nil
	}}}},
}

// classed asks a table of tape classes, which counts in metres.
func classed(of func(c survey.TapeClass, lengthM float64) float64) func(g *given) (any, error) {
	return func(g *given) (any, error) {
		c, err := survey.ParseTapeClass(g.texts["class"])
		return of(c, g.v("length")/1000), err
	}
}

func markError(g *given) (any, error) {
	c, err := survey.ParseTapeClass(g.texts["class"])
	if err != nil {
		return nil, err
	}
	widest, ok := map[string]float64{"up to 1 mm": 1, "over 1 mm to 1 cm": 10}[g.texts["interval"]]
	if !ok {
		return nil, &InputError{Key: "interval", Problem: g.texts["interval"], Want: "up to 1 mm, or over 1 mm to 1 cm"}
	}
	return survey.MaxMarkError(c, widest), nil
}

var tapingTopics = []topic{
	{name: "reading_step_u", keys: vocabulary{inch("step", "0.0625", "step that is read to")},
		quantities: []asked{{name: "u", unit: asInputs, of: func(g *given) (any, error) { return survey.ReadingStepU(g.v("step")), nil }}}},
	{name: "even_graduation", keys: vocabulary{inch("value", "10.03125", "value"), inch("step", "0.0625", "step that is read to")},
		quantities: []asked{{name: "rounded", unit: asInputs, of: func(g *given) (any, error) {
			return survey.NearestGraduation(g.v("value")/mmPerInch, g.v("step")/mmPerInch) * mmPerInch, nil
		}}}},
	{name: "temperature", keys: vocabulary{tradeFeet, plain("dT_F", "20", "degrees Fahrenheit warmer")},
		quantities: []asked{{name: "change", unit: "in", of: func(g *given) (any, error) {
			return survey.TemperatureChange(g.v("length"), g.v("dT_F")) / mmPerInch, nil
		}}}},
	{name: "off_line", keys: vocabulary{inch("length", "144", "length"), inch("offset", "2", "how far one end is off to the side")},
		quantities: []asked{{name: "reads_long", unit: asInputs, of: func(g *given) (any, error) {
			return survey.OffLineExcess(g.v("length"), g.v("offset")), nil
		}}}},
	{name: "budget", keys: vocabulary{{name: "terms", dim: lengths, sample: "0.030,0.036 in", means: "standard uncertainties", bare: "in", list: true}},
		quantities: []asked{{name: "u", unit: asInputs, of: func(g *given) (any, error) { return survey.CombinedU(g.values["terms"]...), nil }}}},
	{name: "sag", keys: vocabulary{plain("weight_lb_per_ft", "0.015", "weight of the tape, lb/ft"),
		{name: "span", dim: lengths, sample: "8 ft", means: "span in which it hangs"}, plain("pull_lb", "2", "pull, lb")},
		quantities: []asked{{name: "reads_long", unit: "in", of: func(g *given) (any, error) {
			return survey.SagExcess(g.v("weight_lb_per_ft"), g.v("span")/mmPerFoot, g.v("pull_lb")) * mmPerFoot / mmPerInch, nil
		}}}},
	{name: "closure_tolerance", keys: vocabulary{plain("pieces", "4", "pieces that make up the whole")},
		quantities: []asked{{name: "quiet_up_to", unit: "in", of: func(g *given) (any, error) {
			n, err := g.whole("pieces")
			return survey.ClosureTolerance(n), err
		}}}},
	tapingCorrection,
}

func feet(name, sample, means string) key {
	return key{name: name, dim: lengths, sample: sample + " ft", means: means}
}

var tapingCorrection = topic{
	name: "taping_correction",
	keys: vocabulary{
		feet("measured", "436.48", "length as read"), feet("tape_true", "100.004", "length of the tape by its test"),
		maybe(feet("tape_nominal", "100", "length of the tape by its marks; else its test length to the nearest foot")),
		plain("std_pull_lb", "23", "pull of the test, lb"), plain("std_temp_F", "70", "temperature of the test"),
		plain("used_pull_lb", "15", "pull used, lb"), plain("used_temp_F", "50", "temperature of the tape in use"),
		plain("weight_lb", "2.2", "weight of the tape, lb"), feet("weight_length", "102", "length of the tape that was weighed"),
		plain("area_in2", "0.004", "section of the tape, in2"), plain("E_psi", "29000000", "elasticity of the tape, psi"),
		plain("expansion_per_F", "6.5e-06", "expansion of the tape per degree Fahrenheit"),
		maybe(feet("supported", "200", "length that lay supported")),
		maybe(key{name: "hanging_spans", dim: lengths, sample: "100,100,36.48 ft", means: "spans in which it hung", list: true}),
	},
	quantities: []asked{{name: "corrected", unit: "ft", of: corrected}},
}

func corrected(g *given) (any, error) {
	ft := func(name string) float64 { return g.v(name) / mmPerFoot }
	t := survey.Taping{
		Measured: ft("measured"), True: ft("tape_true"), Nominal: g.or("tape_nominal", math.Round(ft("tape_true"))*mmPerFoot) / mmPerFoot,
		StandardPull: g.v("std_pull_lb"), UsedPull: g.v("used_pull_lb"),
		StandardTemp: g.v("std_temp_F"), UsedTemp: g.v("used_temp_F"),
		WeightPerFoot: g.v("weight_lb") / ft("weight_length"),
		Area:          g.v("area_in2"), Elasticity: g.v("E_psi"), Expansion: g.v("expansion_per_F"),
	}
	for _, span := range g.values["hanging_spans"] {
		t.HangingSpans = append(t.HangingSpans, span/mmPerFoot)
	}
	return t.Corrected(), nil
}
