package survey

import "math"

// Coordinate is one coordinate of a point: an unknown of the problem, or a known number. Its zero value is a known 0.
type Coordinate struct {
	ref   int // index of the unknown plus one
	known float64
}

// Unknown is the coordinate that Problem.Start holds at index i.
func Unknown(i int) Coordinate { return Coordinate{ref: i + 1} }

// Known is a coordinate that is not adjusted.
func Known(v float64) Coordinate { return Coordinate{known: v} }

// Position is a point of the plane: x to the right (east), y up the page (north).
type Position struct{ X, Y Coordinate }

// AngleUnit is the size of an angle's unit in radians.
type AngleUnit float64

// The units that angles are read in.
const (
	Radian    AngleUnit = 1
	Degree    AngleUnit = math.Pi / 180
	Arcsecond AngleUnit = math.Pi / (180 * 3600)
)

// DistanceEquation is the horizontal distance between two points, in the unit of the coordinates.
func DistanceEquation(key string, a, b Position, observed, sigma float64) Equation {
	unknowns, predict := planar([]Position{a, b}, func(at [6]float64) (float64, [6]float64) {
		d, s := PredictDistance([4]float64(at[:4]))
		return d, [6]float64{s[0], s[1], s[2], s[3]}
	})
	return Equation{Key: key, Observed: observed, Sigma: sigma, Unknowns: unknowns, Predict: predict}
}

// ClockwiseEquation is the angle at station from one point to another, turned clockwise; observed and sigma in unit.
// Whole turns do not count: the prediction is the one nearest to the reading.
func ClockwiseEquation(key string, station, from, to Position, observed, sigma float64, unit AngleUnit) Equation {
	turn := 2 * math.Pi / float64(unit)
	unknowns, predict := planar([]Position{station, from, to}, func(at [6]float64) (float64, [6]float64) {
		a, s := inUnit(unit, PredictClockwise, at)
		return a + turn*math.Round((observed-a)/turn), s
	})
	return Equation{Key: key, Observed: observed, Sigma: sigma, Unknowns: unknowns, Predict: predict}
}

// CornerEquation is the angle between the two legs of a corner, 0 to a half turn, whichever way they lie;
// observed and sigma in unit. A soft right angle is CornerEquation(key, c, a, b, 90, 0.5, Degree).
func CornerEquation(key string, corner, a, b Position, observed, sigma float64, unit AngleUnit) Equation {
	unknowns, predict := planar([]Position{corner, a, b}, func(at [6]float64) (float64, [6]float64) {
		return inUnit(unit, PredictCorner, at)
	})
	return Equation{Key: key, Observed: observed, Sigma: sigma, Unknowns: unknowns, Predict: predict}
}

// LinearEquation is a fixed combination of unknowns plus a constant: a height, a position on a wall, a sum of both.
func LinearEquation(key string, terms []Term, constant, observed, sigma float64) Equation {
	unknowns, factors := make([]int, len(terms)), make([]float64, len(terms))
	for i, t := range terms {
		unknowns[i], factors[i] = t.Unknown, t.D
	}
	predict := func(at, slope []float64) float64 {
		copy(slope, factors)
		return constant + dot(factors, at)
	}
	return Equation{Key: key, Observed: observed, Sigma: sigma, Unknowns: unknowns, Predict: predict}
}

// PredictDistance returns the distance between points at = x1, y1, x2, y2, and its derivatives in that order.
// Two points in one place have no direction: the derivatives are zero.
func PredictDistance(at [4]float64) (float64, [4]float64) {
	dx, dy := at[2]-at[0], at[3]-at[1]
	d := math.Hypot(dx, dy)
	if d == 0 {
		return 0, [4]float64{}
	}
	c, s := dx/d, dy/d
	return d, [4]float64{-c, -s, c, s}
}

// PredictClockwise returns the clockwise angle in radians, in (-pi, pi], at the station from one point to another, and its
// derivatives; at and they are in the order x, y of station, from, to. A leg without length has zero derivatives.
func PredictClockwise(at [6]float64) (float64, [6]float64) {
	from, fx, fy := bearing(at[2]-at[0], at[3]-at[1])
	to, tx, ty := bearing(at[4]-at[0], at[5]-at[1])
	angle := math.Remainder(to-from, 2*math.Pi)
	return angle, [6]float64{fx - tx, fy - ty, -fx, -fy, tx, ty}
}

// PredictCorner returns the angle in radians, 0 to pi, between two legs, and its derivatives; at and they are in
// the order x, y of the corner and of the ends of the legs.
func PredictCorner(at [6]float64) (float64, [6]float64) {
	angle, slopes := PredictClockwise(at)
	if angle < 0 {
		angle = -angle
		for i := range slopes {
			slopes[i] = -slopes[i]
		}
	}
	return angle, slopes
}

// bearing returns the direction of a leg in radians, clockwise from y, and its derivatives with respect to dx and dy.
func bearing(dx, dy float64) (b, bx, by float64) {
	square := dx*dx + dy*dy
	if square == 0 {
		return 0, 0, 0
	}
	return math.Atan2(dx, dy), dy / square, -dx / square
}

func inUnit(unit AngleUnit, predict func([6]float64) (float64, [6]float64), at [6]float64) (float64, [6]float64) {
	value, slopes := predict(at)
	for i := range slopes {
		slopes[i] /= float64(unit)
	}
	return value / float64(unit), slopes
}

// planar makes a prediction of up to three points into one of those coordinates that are unknown.
func planar(points []Position, predict func([6]float64) (float64, [6]float64)) ([]int, func(at, slope []float64) float64) {
	var known [6]float64
	var unknowns, slots []int
	for i, p := range points {
		for k, c := range []Coordinate{p.X, p.Y} {
			if c.ref > 0 {
				unknowns, slots = append(unknowns, c.ref-1), append(slots, 2*i+k)
			} else {
				known[2*i+k] = c.known
			}
		}
	}
	return unknowns, func(at, slope []float64) float64 {
		all := known
		for i, s := range slots {
			all[s] = at[i]
		}
		value, slopes := predict(all)
		for i, s := range slots {
			slope[i] = slopes[s]
		}
		return value
	}
}
