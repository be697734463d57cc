package worked

import (
	"slices"

	"bunkwright/room/survey"
)

// Tapes and what a reading is worth: tape_error, tape_sag, tau_critical, conformity_cases, the topics of room_cases whose case
// is a row of inputs, and misread_cases.
var surveyTopics = slices.Concat(tapeTopics, tapingTopics, chanceTopics, conformityTopics, planTopics, slipTopics)

var chanceTopics = []topic{
	{name: "tau_critical", keys: vocabulary{plain("f", "3", "readings more than needed"), plain("alpha", "0.05", "chance of a false alarm, two-sided")},
		quantities: []asked{{name: "tau", of: func(g *given) (any, error) {
			f, err := g.whole("f")
			return survey.TauCritical(f, g.v("alpha")), err
		}}}},
	{name: "normal_quantile", keys: vocabulary{plain("p", "0.95", "chance below")},
		quantities: []asked{{name: "z", of: func(g *given) (any, error) { return survey.NormalQuantile(g.v("p")), nil }}}},
	{name: "noncentrality", keys: vocabulary{plain("alpha", "0.001", "chance of a false alarm, two-sided"), plain("power", "0.8", "chance of finding a slip")},
		quantities: []asked{{name: "d0", of: func(g *given) (any, error) { return survey.Noncentrality(g.v("alpha"), g.v("power")), nil }}}},
}

var conformityTopics = []topic{
	{name: "conformity_quantile", keys: vocabulary{plain("pc", "0.95", "probability of conformity")},
		quantities: []asked{{name: "z", of: func(g *given) (any, error) { return survey.NormalQuantile(g.v("pc")), nil }}}},
	{name: "speed_limit", keys: vocabulary{plain("limit", "100", "limit, km/h"), plain("relative_u", "0.02", "relative standard uncertainty"),
		plain("pc", "0.999", "probability that it is over")},
		quantities: []asked{{name: "smallest_reading", unit: "km/h", of: func(g *given) (any, error) {
			return survey.SmallestReadingBeyond(g.v("limit"), g.v("relative_u"), g.v("pc")), nil
		}}}},
	{name: "alcove", keys: vocabulary{inch("measured", "120", "measured width"), inch("u", "0.098", "its standard uncertainty"), inch("need", "119.9", "width needed")},
		quantities: []asked{
			{name: "pc", of: func(g *given) (any, error) {
				return survey.ConformityProbability(g.v("measured")-g.v("need"), g.v("u")), nil
			}},
			{name: "verdict", of: func(g *given) (any, error) {
				return string(survey.ConformityWord(g.v("measured")-g.v("need"), g.v("u"))), nil
			}},
		}},
	{name: "safety_verdict", keys: vocabulary{inch("margin", "0.2", "margin over the limit"), inch("u", "0.1", "its standard uncertainty")},
		quantities: []asked{{name: "pass", of: func(g *given) (any, error) { return survey.SafetyConforms(g.v("margin"), g.v("u")), nil }}}},
	{name: "guard_band", keys: vocabulary{word("rule", "g = U, k = 2", "guard band")},
		quantities: []asked{{name: "max_risk_percent", unit: "percent", of: func(g *given) (any, error) {
			guard, k, err := survey.ParseGuardBand(g.texts["rule"])
			return 100 * survey.GuardBandRisk(guard, k), err
		}}}},
}
