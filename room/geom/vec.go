// Package geom answers how far apart, how big and how placed plain shapes are: float64 millimetres on right-handed axes, z up.
package geom

import "math"

// V2 is a point or direction in plan, in mm.
type V2 struct{ X, Y float64 }

// V3 is a point or direction in space, in mm.
type V3 struct{ X, Y, Z float64 }

func (a V2) Add(b V2) V2             { return V2{a.X + b.X, a.Y + b.Y} }
func (a V2) Sub(b V2) V2             { return V2{a.X - b.X, a.Y - b.Y} }
func (a V2) Mul(k float64) V2        { return V2{a.X * k, a.Y * k} }
func (a V2) Dot(b V2) float64        { return a.X*b.X + a.Y*b.Y }
func (a V2) Cross(b V2) float64      { return a.X*b.Y - a.Y*b.X }
func (a V2) Len() float64            { return math.Sqrt(a.Dot(a)) }
func (a V2) Dist(b V2) float64       { return a.Sub(b).Len() }
func (a V2) At(z float64) V3         { return V3{a.X, a.Y, z} }
func (a V2) Lerp(b V2, t float64) V2 { return V2{a.X + (b.X-a.X)*t, a.Y + (b.Y-a.Y)*t} }

// Left returns a turned a quarter anticlockwise seen from above.
func (a V2) Left() V2 { return V2{-a.Y, a.X} }

// Right returns a turned a quarter clockwise seen from above.
func (a V2) Right() V2 { return V2{a.Y, -a.X} }

// Unit returns a at length 1; the zero vector stays zero.
func (a V2) Unit() V2 {
	l := a.Len()
	if l == 0 {
		return a
	}
	return a.Mul(1 / l)
}

func (a V3) Add(b V3) V3       { return V3{a.X + b.X, a.Y + b.Y, a.Z + b.Z} }
func (a V3) Sub(b V3) V3       { return V3{a.X - b.X, a.Y - b.Y, a.Z - b.Z} }
func (a V3) Mul(k float64) V3  { return V3{a.X * k, a.Y * k, a.Z * k} }
func (a V3) Dot(b V3) float64  { return a.X*b.X + a.Y*b.Y + a.Z*b.Z }
func (a V3) Len() float64      { return math.Sqrt(a.Dot(a)) }
func (a V3) Dist(b V3) float64 { return a.Sub(b).Len() }
func (a V3) XY() V2            { return V2{a.X, a.Y} }
func (a V3) Cross(b V3) V3 {
	return V3{a.Y*b.Z - a.Z*b.Y, a.Z*b.X - a.X*b.Z, a.X*b.Y - a.Y*b.X}
}

// Axis returns component i (0 x, 1 y, 2 z).
func (a V3) Axis(i int) float64 {
	switch i {
	case 0:
		return a.X
	case 1:
		return a.Y
	}
	return a.Z
}
