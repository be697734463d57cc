package people

import "math"

// Measures that the package itself uses. The tables hold more: see their measure column.
const (
	Stature             = "stature"
	Weight              = "weight"
	SittingHeightErect  = "sitting_height_erect"
	KneeHeightSeated    = "knee_height_seated"
	VerticalGripReach   = "vertical_grip_reach"     // children
	FrontalGripReach    = "frontal_grip_reach"      // children
	OverheadReach       = "overhead_reach_standing" // grown-ups, to the fingertip
	OverheadReachSeated = "overhead_reach_seated"   // grown-ups
	ThumbtipReach       = "thumbtip_reach_forward"  // grown-ups
	ShoulderHeight      = "shoulder_height_standing"
	EyeHeight           = "eye_height_standing"
)

// The tables of children hold from FirstChildAge up to LastChildAge, in years; above it a sleeper is a grown-up.
const (
	FirstChildAge = 2
	LastChildAge  = 18
)

// ChildSize returns a statistic of one body size, in Unit(measure). Age a counts the children from a-0.5 up to a+0.5
// years, ages 2 to 18 (age 2 from 2.0); the percentiles are counted from the sample, not smoothed.
// Source: UM-HSRI-77-17 (1977), records published by NIST.
func ChildSize(measure string, sex Sex, age float64, stat Stat) (float64, error) {
	t := childSizes()
	asked := cell{measure, sex, age, stat}
	if age < FirstChildAge {
		return 0, t.lacks(asked)
	}
	bin := asked
	bin.age = math.Floor(age + 0.5)
	value, err := t.at(bin)
	if err != nil {
		return 0, t.lacks(asked)
	}
	return value, nil
}

// AdultSize returns a statistic of one body size of men or women, in Unit(measure), barefoot.
// Source: ANSUR II 2012 and ANSUR 1988: soldiers, not the public.
func AdultSize(measure string, sex Sex, stat Stat) (float64, error) {
	return adultSizes().at(cell{measure, sex, grownUp, stat})
}

// Size returns a statistic of one body size of a child up to LastChildAge or of a grown-up above it.
func Size(measure string, sex Sex, age float64, stat Stat) (float64, error) {
	if age > LastChildAge {
		return AdultSize(measure, sex, stat)
	}
	return ChildSize(measure, sex, age, stat)
}

// LargestSize is Size for a body that must fit or must not get there: the larger of the two when the sex is unknown.
func LargestSize(measure string, sex Sex, age float64, stat Stat) (float64, error) {
	return larger(sex, func(s Sex) (float64, error) { return Size(measure, s, age, stat) })
}

// SmallestSize is Size for a reach that must be enough: the smaller of the two when the sex is unknown.
func SmallestSize(measure string, sex Sex, age float64, stat Stat) (float64, error) {
	return smaller(sex, func(s Sex) (float64, error) { return Size(measure, s, age, stat) })
}

// Unit returns the unit of a measure, mm or kg; false when no table has the measure.
func Unit(measure string) (unit string, ok bool) {
	if unit, ok = childSizes().units[measure]; !ok {
		unit, ok = adultSizes().units[measure]
	}
	return unit, ok
}

// chartsEnd is the last age of the growth charts in years, lastMidMonth the middle of the month that begins then: the charts' own tables
// name an age by its mid-month.
const (
	chartsEnd    = 20
	lastMidMonth = chartsEnd + 0.5/12
)

// ChartSize returns a percentile of stature in cm or weight in kg, the straight line between birthdays, age 2 to 20; the half month after
// that counts as 20.
// The weights understate children of today: they are no load to design for.
// Source: CDC/NCHS 2000 growth charts.
func ChartSize(measure string, sex Sex, age float64, stat Stat) (float64, error) {
	if age > chartsEnd && age <= lastMidMonth {
		age = chartsEnd
	}
	return growthCharts().between(cell{measure, sex, age, stat}, 1)
}

func larger(sex Sex, of func(Sex) (float64, error)) (float64, error) { return pick(sex, of, math.Max) }

func smaller(sex Sex, of func(Sex) (float64, error)) (float64, error) { return pick(sex, of, math.Min) }

// pick settles an unknown sex from both; one of them missing from the tables is an error.
func pick(sex Sex, of func(Sex) (float64, error), choose func(a, b float64) float64) (float64, error) {
	if sex != Unknown {
		return of(sex)
	}
	m, err := of(Male)
	if err != nil {
		return 0, err
	}
	f, err := of(Female)
	return choose(m, f), err
}
