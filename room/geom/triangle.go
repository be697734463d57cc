package geom

import "math"

// CornerAngle returns the angle in degrees between two legs a and b whose far ends are d apart (law of cosines), all in one unit.
// It is NaN where no triangle has such sides.
func CornerAngle(a, b, d float64) float64 {
	return math.Acos((a*a+b*b-d*d)/(2*a*b)) * 180 / math.Pi
}

// DiagonalError returns how far off square, in degrees, a corner with legs a and b may be when its diagonal is off by e, all in one
// unit: e d / (a b), first order in e.
func DiagonalError(a, b, e float64) float64 {
	return e * math.Hypot(a, b) / (a * b) * 180 / math.Pi
}
