package geom

import "math"

// Place moves a thing from its own axes into the room: mirrored left to right about Mirror first if asked, turned about z, then
// shifted.
type Place struct {
	Cos, Sin float64
	At       V3
	Mirrored bool
	Mirror   float64 // twice the x that stays where it is
}

// NewPlace turns by angle radians anticlockwise seen from above, then shifts to at.
func NewPlace(angle float64, at V3) Place {
	return Place{Cos: math.Cos(angle), Sin: math.Sin(angle), At: at}
}

// Dir turns a direction (and mirrors it).
func (t Place) Dir(v V3) V3 {
	if t.Mirrored {
		v.X = -v.X
	}
	return V3{t.Cos*v.X - t.Sin*v.Y, t.Sin*v.X + t.Cos*v.Y, v.Z}
}

// Point moves a point.
func (t Place) Point(p V3) V3 {
	if t.Mirrored {
		p.X = t.Mirror - p.X
	}
	return V3{t.Cos*p.X - t.Sin*p.Y, t.Sin*p.X + t.Cos*p.Y, p.Z}.Add(t.At)
}

// Box moves a box; a mirrored box keeps right-handed axes, since a box is its own mirror image.
func (t Place) Box(b Box) Box {
	out := Box{C: t.Point(b.C), Half: b.Half}
	for k := range b.Ax {
		out.Ax[k] = t.Dir(b.Ax[k])
	}
	if t.Mirrored {
		out.Ax[0] = out.Ax[0].Mul(-1)
	}
	return out
}

// Back moves a point of the room into the thing's own axes.
func (t Place) Back(p V3) V3 {
	d := p.Sub(t.At)
	v := V3{t.Cos*d.X + t.Sin*d.Y, -t.Sin*d.X + t.Cos*d.Y, d.Z}
	if t.Mirrored {
		v.X = t.Mirror - v.X
	}
	return v
}
