package render

import (
	"math"
	"slices"
)

// maxHatch bounds the lines of one hatching.
const maxHatch = 100_000

// Hatch returns parallel lines across the inside of a shape, spacing apart measured square to
// them, at an angle in degrees counterclockwise from level as seen. The lines are counted from
// the origin of the paper, so that the hatching of shapes that touch runs through. More than
// maxHatch lines would be a mistake, and there are none.
func Hatch(shape Path, spacing Paper, angle float64) Path {
	sin, cos := math.Sincos(angle * math.Pi / 180)
	along := Point{Paper(cos), Paper(-sin)}
	across := Point{Paper(sin), Paper(cos)}
	runs := shape.Flatten(clipTolerance)
	low, high := span(runs, across)
	if count := (high - low) / spacing; !(spacing > 0 && count < maxHatch) {
		return nil
	}
	var lines Path
	for k := math.Ceil(float64(low / spacing)); k*float64(spacing) < float64(high); k++ {
		at := Paper(k) * spacing
		for _, s := range crossings(runs, along, across, at) {
			from := along.Times(float64(s[0])).Plus(across.Times(float64(at)))
			to := along.Times(float64(s[1])).Plus(across.Times(float64(at)))
			lines = lines.Move(from).Line(to)
		}
	}
	return lines
}

// span returns the least and largest distance of the runs' points in a direction.
func span(runs []Run, d Point) (low, high Paper) {
	low, high = nowhere.Min.X, nowhere.Max.X
	for _, r := range runs {
		for _, p := range r.Points {
			low, high = min(low, dot(p, d)), max(high, dot(p, d))
		}
	}
	return low, high
}

// crossings returns the stretches of the line "across = at" inside the runs, by odd and even.
// An end that lies on the line counts to one side only, so that a corner is not met twice.
func crossings(runs []Run, along, across Point, at Paper) [][2]Paper {
	var met []Paper
	segments(runs, true, func(a, b Point) {
		da, db := dot(a, across)-at, dot(b, across)-at
		if (da < 0) != (db < 0) {
			met = append(met, dot(a.Between(b, float64(da/(da-db))), along))
		}
	})
	slices.Sort(met)
	var inside [][2]Paper
	for i := 1; i < len(met); i += 2 {
		if met[i] > met[i-1] {
			inside = append(inside, [2]Paper{met[i-1], met[i]})
		}
	}
	return inside
}

func dot(a, b Point) Paper { return a.X*b.X + a.Y*b.Y }
