package worked

import (
	"errors"

	"bunkwright/furniture/people"
	"bunkwright/furniture/yardstick"
)

// never is the answer to the age at which a headroom is outgrown, where it is not by the end of the table.
const never = "not-by-18"

func (g *given) sex() (people.Sex, error)   { return people.ParseSex(g.texts["sex"]) }
func (g *given) stat() (people.Stat, error) { return people.ParseStat(g.texts["stat"]) }

// who reads the sex and the statistic of a case.
func (g *given) who() (people.Sex, people.Stat, error) {
	sex, err := g.sex()
	stat, bad := g.stat()
	return sex, stat, errors.Join(err, bad)
}

func sittingHeight(g *given) (any, error) {
	sex, stat, err := g.who()
	if err != nil {
		return nil, err
	}
	return people.SittingHeight(sex, g.v("age"), stat)
}

func childSize(g *given) (any, error) {
	sex, stat, err := g.who()
	if err != nil {
		return nil, err
	}
	size, err := people.ChildSize(g.texts["measure"], sex, g.v("age"), stat)
	return g.inTable(size), err
}

func adultSize(g *given) (any, error) {
	sex, stat, err := g.who()
	if err != nil {
		return nil, err
	}
	size, err := people.AdultSize(g.texts["measure"], sex, stat)
	return g.inTable(size), err
}

// inTable gives a size the unit that the tables hold its measure in.
func (g *given) inTable(size float64) sized {
	unit, _ := people.Unit(g.texts["measure"])
	return sized{size, unit}
}

// lms gives statures in cm and weights in kg, as the growth charts do.
func lms(g *given) (any, error) {
	stat, err := g.stat()
	if err != nil {
		return nil, err
	}
	z, ok := stat.Z()
	if !ok {
		return nil, &InputError{Key: "stat", Problem: string(stat) + " is no percentile", Want: "p5, p50 or p95"}
	}
	size, err := people.LMS(g.v("L"), g.v("M"), g.v("S"), z)
	if g.said("measure", people.Weight) {
		return sized{size, "kg"}, err
	}
	return size, err
}

func headroomAge(g *given) (any, error) {
	sex, stat, err := g.who()
	if err != nil {
		return nil, err
	}
	age, outgrown, err := people.HeadroomAge(g.v("headroom"), g.or("clearance", 0), g.or("compression", 0), sex, stat)
	if err == nil && !outgrown {
		return never, nil
	}
	return sized{age, "y"}, err
}

func namedChild(g *given) (any, error) {
	sex, err := g.sex()
	if err != nil {
		return nil, err
	}
	age, sitting := g.v("age"), g.v("sitting")
	switch g.texts["ask"] {
	case "z":
		z, err := people.NamedZ(sex, age, sitting)
		return sized{z, "z"}, err
	case "age":
		return namedAge(g, sex, 0)
	case "years":
		return namedAge(g, sex, age)
	}
	return nil, &InputError{Key: "ask", Problem: g.texts["ask"], Want: "z, age or years"}
}

// namedAge counts the age at which one child outgrows a headroom from an age on.
func namedAge(g *given, sex people.Sex, from float64) (any, error) {
	if !g.has("headroom") {
		return nil, missing(ruleKeys.pick([]string{"headroom"}))
	}
	age, outgrown, err := people.NamedAge(sex, g.v("age"), g.v("sitting"), g.v("headroom"), g.or("clearance", 0), g.or("compression", 0))
	if err == nil && !outgrown {
		return never, nil
	}
	return sized{age - from, "y"}, err
}

// posture takes the planning figures for clearance and slump where the case gives none.
func posture(g *given) (any, error) {
	clear := g.or("clearance", yardstick.Figure(yardstick.SeatClearance))
	slump := g.or("slump", yardstick.Figure(yardstick.Slump))
	return string(people.PostureBand(g.v("headroom"), g.v("sitting"), clear, slump)), nil
}

func bunkReach(g *given) (any, error) {
	level, ok := people.BunkReach(g.v("shoulder"), g.v("reach"), g.v("mattress_top"))
	if !ok {
		return "out of reach", nil
	}
	return level, nil
}
