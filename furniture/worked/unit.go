package worked

import "strings"

// A dimension says what an input is counted in, and so which units its key may end in.
type dimension string

const (
	lengths dimension = "length"
	areas   dimension = "area"
	angles  dimension = "angle"
	ages    dimension = "age"
	masses  dimension = "mass"
	numbers dimension = "number" // the unit, if any, is part of the name
	words   dimension = "word"
	answers dimension = "yes or no"
)

// base is the unit in which a case is worked out.
var base = map[dimension]string{lengths: "mm", areas: "mm2", angles: "deg", ages: "y", masses: "kg"}

// A unit is one that a key may end in; per is how many of the base unit it holds.
type unit struct {
	name string
	dim  dimension
	per  float64
}

const (
	mmPerInch = 25.4 // exact, as are the other two
	mmPerFoot = 12 * mmPerInch
	kgPerLb   = 0.45359237
)

var units = []unit{
	{"in", lengths, mmPerInch},
	{"mm", lengths, 1},
	{"cm", lengths, 10},
	{"m", lengths, 1000},
	{"ft", lengths, mmPerFoot},
	{"ft2", areas, mmPerFoot * mmPerFoot},
	{"in2", areas, mmPerInch * mmPerInch},
	{"m2", areas, 1e6},
	{"cm2", areas, 100},
	{"mm2", areas, 1},
	{"deg", angles, 1},
	{"y", ages, 1},
	{"months", ages, 1.0 / 12},
	{"kg", masses, 1},
	{"lb", masses, kgPerLb},
}

func unitNamed(name string) (unit, bool) {
	for _, u := range units {
		if u.name == name {
			return u, true
		}
	}
	return unit{}, false
}

// splitUnit parts a key from the unit at its end: rail_over_base and in.
func splitUnit(name string) (stem string, u unit, ok bool) {
	i := strings.LastIndexByte(name, '_')
	if i <= 0 {
		return name, unit{}, false
	}
	u, ok = unitNamed(name[i+1:])
	return name[:i], u, ok
}

// unitsOf lists the units of a dimension as keys end in them.
func unitsOf(d dimension) string {
	var names []string
	for _, u := range units {
		if u.dim == d {
			names = append(names, "_"+u.name)
		}
	}
	return strings.Join(names, " ")
}
