package worked

import (
	"fmt"
	"slices"

	"bunkwright/furniture/yardstick"
)

// A rule is a row of the yardstick with what it measures.
type rule struct {
	row yardstick.Row
	measured
}

// direct is the key under which the value itself, or the answer, can be given for every row.
func (r rule) direct() key {
	if r.row.Relation.Answer() {
		return key{name: "answer", dim: answers, sample: "yes", means: r.row.Quantity}
	}
	k := key{name: "value", dim: numbers, sample: "1", means: r.row.Quantity}
	switch r.row.Unit {
	case yardstick.MM:
		k.dim, k.sample = lengths, "100 mm"
	case yardstick.SquareFoot, yardstick.SquareCM:
		k.dim, k.sample, k.bare = areas, "10 "+string(r.row.Unit), string(r.row.Unit)
	case yardstick.Degree:
		k.dim, k.sample, k.bare = angles, "70 deg", "deg"
	case yardstick.Year:
		k.dim, k.sample, k.bare = ages, "8 y", "y"
	}
	return k
}

func (r rule) keys() vocabulary { return join([]key{r.direct()}, ruleKeys) }

// all adds to the ways of the row that of its value itself.
func (r rule) all() measured {
	m, direct := r.measured, each(r.direct().name)
	if r.row.Relation.Answer() {
		direct = yes(func(g *given) bool { return g.said("answer", "yes") }, "answer")
	}
	m.ways = append(slices.Clone(m.ways), direct)
	return m
}

func (r rule) example() []string {
	if r.row.Role == yardstick.RoleParameter {
		return nil
	}
	var out []string
	for _, k := range r.keys().pick(r.all().ways[0].sample()) {
		out = append(out, k.sampleWord())
	}
	return out
}

func (r rule) answer(quantity string, in Inputs) (Result, error) {
	if quantity != "" {
		return Result{}, &InputError{Key: "quantity", Problem: "a rule measures one thing only: leave it out"}
	}
	if r.row.Role == yardstick.RoleParameter {
		return Result{}, &InputError{Problem: "is a planning figure that measurements take, no rule: nothing is held against it"}
	}
	g, err := r.keys().read(in)
	if err != nil {
		return Result{}, err
	}
	out := Result{Quantity: r.row.Quantity}
	if why := outOfScope(r.row, g); why != "" {
		out.Outcome, out.Text = yardstick.NotApplies.String(), why
		return out, nil
	}
	if r.settled != nil {
		o, why := r.settled(g)
		out.Text = why
		if o != yardstick.NotJudged {
			out.Outcome = o.String()
			return out, nil
		}
	}
	return r.held(out, g)
}

// outOfScope says which scope row of a row does not hold, where the inputs tell.
func outOfScope(row yardstick.Row, g *given) string {
	for _, id := range row.When {
		scope, _ := yardstick.Find(id)
		m := measures()[id]
		if m.settled != nil {
			if o, _ := m.settled(g); o == yardstick.Applies {
				continue
			}
		}
		list, ok := m.values(g)
		if ok && scope.Outcome(list[0]/scale(scope.Unit)) == yardstick.NotApplies {
			return fmt.Sprintf("%s is not %s %s (%s)", scope.Quantity, scope.Relation, scope.Written, id)
		}
	}
	return ""
}

// held holds what the inputs measure against the row.
func (r rule) held(out Result, g *given) (Result, error) {
	m := r.all()
	list, ok := m.values(g)
	if !ok {
		return out, missing(r.keys().pick(m.nearest(g).lacking(g)))
	}
	if r.row.Relation.Answer() {
		out.Outcome = r.judge().OutcomeOf(list[0] == 1).String()
		return out, nil
	}
	have, outcome := r.worst(list)
	u := r.shownIn(g)
	out.Outcome, out.Unit = outcome.String(), u.name
	out.Value = number(have * scale(r.row.Unit) / u.per)
	out.Spare = number(r.row.Round(r.judge().Spare(have)))
	return out, nil
}

// judge is the row that judges: where a planning figure repeats a row, that figure does.
func (r rule) judge() yardstick.Row {
	if by, ok := r.row.JudgedBy(); ok {
		row, _ := yardstick.Find(by)
		return row
	}
	return r.row
}

// worst returns the value that decides, in the unit of the row: all of them must meet it.
func (r rule) worst(list []float64) (have float64, outcome yardstick.Outcome) {
	row := r.judge()
	for i, x := range list {
		x /= scale(row.Unit)
		o := row.Outcome(x)
		if i == 0 || rank[o] < rank[outcome] || rank[o] == rank[outcome] && row.Spare(x) < row.Spare(have) {
			have, outcome = x, o
		}
	}
	return have, outcome
}

// rank orders outcomes from worst to best.
var rank = map[yardstick.Outcome]int{
	yardstick.NotJudged: 0, yardstick.Fail: 1, yardstick.NotApplies: 1, yardstick.Borderline: 2, yardstick.Pass: 3, yardstick.Applies: 3,
}

// shownIn is the unit of the answer: that of the inputs for a length, else that of the row.
func (r rule) shownIn(g *given) unit {
	if r.row.Unit == yardstick.MM {
		return g.lengthUnit()
	}
	return unit{name: string(r.row.Unit), per: scale(r.row.Unit)}
}

// scale is how many of the base unit one unit of a row holds.
func scale(u yardstick.Unit) float64 {
	for _, x := range units {
		if x.name == string(u) {
			return x.per
		}
	}
	return 1
}
