package geom

import "math"

// Box is a solid with square edges: a centre, three unit axes at right angles (right-handed) and half a size along each, in mm.
// Most boxes stand upright (axis 2 is z) and are turned about z only; ladder members also tilt.
type Box struct {
	C    V3
	Ax   [3]V3
	Half V3
}

// NewBox returns the upright box between two opposite corners.
func NewBox(lo, hi V3) Box {
	return Box{
		C:    lo.Add(hi).Mul(0.5),
		Ax:   [3]V3{{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
		Half: V3{math.Abs(hi.X-lo.X) / 2, math.Abs(hi.Y-lo.Y) / 2, math.Abs(hi.Z-lo.Z) / 2},
	}
}

// Upright tells whether the box only turns about z.
func (b Box) Upright() bool { return b.Ax[2].Z > 1-1e-12 }

// Corner returns one of the eight corners; bits 0, 1, 2 of i choose the far side along axes 0, 1, 2.
func (b Box) Corner(i int) V3 {
	p := b.C
	for k := 0; k < 3; k++ {
		h := b.Half.Axis(k)
		if i>>k&1 == 0 {
			h = -h
		}
		p = p.Add(b.Ax[k].Mul(h))
	}
	return p
}

// Reach returns half the box's size along the unit direction n, in mm.
func (b Box) Reach(n V3) float64 {
	return b.Half.X*math.Abs(b.Ax[0].Dot(n)) + b.Half.Y*math.Abs(b.Ax[1].Dot(n)) + b.Half.Z*math.Abs(b.Ax[2].Dot(n))
}

// Bounds returns the corners of the box along the world axes that holds b.
func (b Box) Bounds() (lo, hi V3) {
	r := V3{b.Reach(V3{X: 1}), b.Reach(V3{Y: 1}), b.Reach(V3{Z: 1})}
	return b.C.Sub(r), b.C.Add(r)
}

// Top and Bottom return the highest and lowest z of the box.
func (b Box) Top() float64    { return b.C.Z + b.Reach(V3{Z: 1}) }
func (b Box) Bottom() float64 { return b.C.Z - b.Reach(V3{Z: 1}) }

// Size returns the full size along the box's own axes.
func (b Box) Size() V3 { return b.Half.Mul(2) }

// Footprint returns the outline of the box seen from above, anticlockwise: four points where it stands upright, else its hull.
func (b Box) Footprint() Polygon {
	if b.Upright() {
		out := make(Polygon, 0, 4)
		for _, i := range [4]int{0, 1, 3, 2} {
			out = append(out, b.Corner(i).XY())
		}
		return out
	}
	var pts [8]V2
	for i := range pts {
		pts[i] = b.Corner(i).XY()
	}
	return Hull(pts[:])
}

// Contains tells whether p lies in the box or on it.
func (b Box) Contains(p V3) bool {
	d := p.Sub(b.C)
	for k := 0; k < 3; k++ {
		if math.Abs(d.Dot(b.Ax[k])) > b.Half.Axis(k)+1e-9 {
			return false
		}
	}
	return true
}

// Ray returns where the line p + t d enters and leaves the box; ok is false where it misses.
func (b Box) Ray(p, d V3) (t0, t1 float64, ok bool) {
	t0, t1 = math.Inf(-1), math.Inf(1)
	o := p.Sub(b.C)
	for k := 0; k < 3; k++ {
		s, v, h := o.Dot(b.Ax[k]), d.Dot(b.Ax[k]), b.Half.Axis(k)
		if math.Abs(v) < 1e-15 {
			if math.Abs(s) > h {
				return 0, 0, false
			}
			continue
		}
		a, c := (-h-s)/v, (h-s)/v
		t0, t1 = max(t0, min(a, c)), min(t1, max(a, c))
	}
	return t0, t1, t0 <= t1
}
