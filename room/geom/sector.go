package geom

import "math"

// Sector is a part of a disc in plan: from a pin out to a radius, from the direction From through an angle of at most pi radians
// towards Side, which is square to it. Lengths in mm.
type Sector struct {
	Pin        V2
	From, Side V2
	Angle      float64
	Radius     float64
}

// At returns the point of the arc at an angle from From.
func (c Sector) At(angle float64) V2 {
	u := turned(angle)
	return c.Pin.Add(c.From.Mul(u.X * c.Radius)).Add(c.Side.Mul(u.Y * c.Radius))
}

// edgeOfSector lets a direction that was worked out to lie on a side count as within, as a share of its length.
const edgeOfSector = 1e-12

// Spans tells whether a direction lies within the sector's angle.
func (c Sector) Spans(d V2) bool {
	x, y := d.Dot(c.From), d.Dot(c.Side)
	rounding := -edgeOfSector * (math.Abs(x) + math.Abs(y))
	return y >= rounding && V2{x, y}.Cross(turned(c.Angle)) >= rounding
}

// Sectors returns what the leaf itself sweeps: its room face out to its width as far as it opens, and its outermost corner as far as that
// comes.
func (l Leaf) Sectors() [2]Sector {
	s := Sector{Pin: l.Pin, From: l.Shut, Side: l.In, Angle: l.Opens, Radius: l.Wide}
	corner := s
	corner.Angle, corner.Radius = l.corner(), l.Reach()
	return [2]Sector{s, corner}
}

// HandleSweep returns what the handle sweeps beyond the open leaf, nil where there is none.
func (l Leaf) HandleSweep() Polygon {
	out := l.handle()
	for i, p := range out {
		out[i] = l.Pin.Add(l.Shut.Mul(p.X)).Add(l.In.Mul(p.Y))
	}
	return out
}
