package yardstick

// A Force says how strongly a line of an answer is put. A greater one is stronger.
type Force int

// The forces.
const (
	NoForce       Force = iota // a row of other places, a scope row or a parameter: no line of an answer
	OutsideFigure              // binds something else; shown without a verdict
	Advice                     // has its own line after the verdict
	Need                       // physics or a planning figure of this project
	Limit                      // a number or an attribute asked for by a text that decides at the place
)

var forceWords = [...]string{"", "outside figure", "advice", "need", "limit"}

func (f Force) String() string {
	if f < 0 || int(f) >= len(forceWords) {
		return ""
	}
	return forceWords[f]
}

// Judged reports whether a line of this force counts for the verdict of its question.
func (f Force) Judged() bool { return f == Need || f == Limit }

// ForceOf returns the force of a row at a place. Outside figures and planning figures are the same everywhere.
func ForceOf(p Place, r Row) Force {
	switch r.Role {
	case RoleReference:
		return OutsideFigure
	case RoleJudged:
		return r.Own
	case RoleLimit, RoleAttribute:
		return stands()[p].force(r, Limit)
	case RoleAdvisory:
		return stands()[p].force(r, Advice)
	}
	return NoForce
}

func (s stand) force(r Row, deciding Force) Force {
	switch {
	case covers(s.decides, r.Jurisdiction):
		return deciding
	case covers(s.advice, r.Jurisdiction):
		return Advice
	}
	return NoForce
}

// StrongestForce returns the greatest force of a row among the places a job names, and the first place that gives it.
// Without places only planning figures and outside figures have a force.
func StrongestForce(places []Place, r Row) (Force, Place) {
	if len(places) == 0 {
		return ForceOf("", r), ""
	}
	best, where := ForceOf(places[0], r), places[0]
	for _, p := range places[1:] {
		if f := ForceOf(p, r); f > best {
			best, where = f, p
		}
	}
	return best, where
}
