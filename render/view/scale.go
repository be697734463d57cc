package view

import (
	"fmt"

	"bunkwright/render"
	"bunkwright/room/length"
)

// barOf returns the units of a scale bar at a scale: as large as can be read and compared.
func (o Options) barOf(k float64) (unit render.Paper, n int, name string) {
	if o.Unit == length.Millimetres {
		if unit := render.Paper(100 * k); unit > 2.8 {
			return unit, 10, "x 100 mm"
		}
		return render.Paper(1000 * k), 3, "m"
	}
	if unit := render.Paper(304.8 * k); unit < 45 {
		return unit, 3, "ft"
	}
	return render.Paper(25.4 * k), 6, "in"
}

// A scale is a usual scale of drawings with its name.
type scale struct {
	k    float64
	name string
}

// The usual scales, the largest first.
var (
	inchScales = []scale{
		{1.0 / 4, "3 in to 1 ft (1:4)"}, {1.0 / 8, "1-1/2 in to 1 ft (1:8)"}, {1.0 / 12, "1 in to 1 ft (1:12)"}, {1.0 / 16, "3/4 in to 1 ft (1:16)"},
		{1.0 / 24, "1/2 in to 1 ft (1:24)"}, {1.0 / 32, "3/8 in to 1 ft (1:32)"}, {1.0 / 48, "1/4 in to 1 ft (1:48)"}, {1.0 / 64, "3/16 in to 1 ft (1:64)"},
		{1.0 / 96, "1/8 in to 1 ft (1:96)"},
	}
	metricScales = metric(2, 5, 10, 15, 20, 25, 30, 40, 50, 75, 100)
)

func metric(ratios ...float64) []scale {
	list := make([]scale, len(ratios))
	for i, r := range ratios {
		list[i] = scale{1 / r, fmt.Sprintf("1:%g", r)}
	}
	return list
}

// usualScales returns those of a unit.
func usualScales(u length.Unit) []scale {
	if u == length.Millimetres {
		return metricScales
	}
	return inchScales
}
