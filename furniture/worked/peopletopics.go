package worked

import (
	"strings"

	"bunkwright/furniture/people"
)

// Weights of people: people_cases.
var peopleTopics = []topic{
	{
		name:       "weight_percentile",
		keys:       vocabulary{word("sex", "female", "male or female"), {name: "age", dim: ages, sample: "120.5 months", means: "age"}},
		quantities: []asked{weightAt("P5"), weightAt("P50"), weightAt("P95")},
	},
	{name: "convert", keys: unitKeys(), quantities: unitQuantities(), shown: []string{"quantity=lb", "kg=95.7"}},
}

// weightAt reads a percentile off the growth charts.
func weightAt(percentile string) asked {
	return asked{name: percentile, unit: "kg", of: func(g *given) (any, error) {
		sex, err := g.sex()
		if err != nil {
			return nil, err
		}
		return people.ChartSize(people.Weight, sex, g.v("age"), people.Stat(strings.ToLower(percentile)))
	}}
}

// unitKeys are the units themselves as keys: kg=95.7.
func unitKeys() vocabulary {
	var out vocabulary
	for _, u := range units {
		out = append(out, key{name: u.name, dim: u.dim, sample: "1 " + u.name, means: string(u.dim), bare: u.name, optional: true})
	}
	return out
}

func unitQuantities() []asked {
	var out []asked
	for _, u := range units {
		out = append(out, asked{name: u.name, unit: u.name, of: func(g *given) (any, error) { return converted(g, u) }})
	}
	return out
}

// converted takes the one size of that dimension into another unit of it.
func converted(g *given, to unit) (any, error) {
	for _, from := range units {
		if from.dim == to.dim && g.has(from.name) {
			return g.v(from.name) / to.per, nil
		}
	}
	return nil, &InputError{Problem: "nothing is given that could be turned into " + to.name, Want: string(to.dim) + " in another unit, as name=value, such as kg=95.7"}
}
