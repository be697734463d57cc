package fit

import "math"

// SlatsLetThrough returns the share of straight sight through thin slats of width s that stand h apart, tilted by slat degrees, along a
// profile angle in degrees; s and h in one unit. From the back the profile angle turns its sign.
// Source: ISO 15099:2003, direct transmittance of a slat blind; the form is from memory, its tabulated values confirm it.
func SlatsLetThrough(s, h, slat, profile float64) float64 {
	a, p := slat*math.Pi/180, profile*math.Pi/180
	return max(0, 1-s/h*math.Abs(math.Cos(a-p))/math.Cos(p))
}

// BoardsLetThrough returns the share of a panel of boards that is seen through: face and thickness of a board and the gap between two in
// one unit, the line of sight at an angle in degrees from square, across the boards. The same optics as SlatsLetThrough, with the
// thickness of the boards for slats along the normal.
func BoardsLetThrough(face, thickness, gap, angle float64) float64 {
	return max(0, gap-thickness*math.Abs(math.Tan(angle*math.Pi/180))) / (gap + face)
}

// BoardsCutoff returns the angle in degrees from square beyond which nothing is seen between boards.
func BoardsCutoff(thickness, gap float64) float64 { return math.Atan(gap/thickness) * 180 / math.Pi }
