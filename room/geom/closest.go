package geom

import "math"

// Closest returns the least distance between two convex outlines in mm, 0 where they share a point, and where on each it is taken.
// An outline of two points is a straight wall.
func Closest(p, q Polygon) (d float64, on, to V2) { return extentOf(p).closest(p, q, extentOf(q)) }

// extent is the upright rectangle round an outline.
type extent struct{ lo, hi V2 }

func extentOf(p Polygon) extent {
	lo, hi := p.Bounds()
	return extent{lo, hi}
}

func (e extent) meets(o extent) bool {
	return e.lo.X <= o.hi.X && o.lo.X <= e.hi.X && e.lo.Y <= o.hi.Y && o.lo.Y <= e.hi.Y
}

// closest is Closest for outlines whose extents are known: e that of p.
func (e extent) closest(p, q Polygon, o extent) (d float64, on, to V2) {
	if e.meets(o) {
		if at, ok := common(p, q); ok {
			return 0, at, at
		}
	}
	d, on, to = cornersTo(p, q)
	if d2, r, s := cornersTo(q, p); d2 < d {
		return d2, s, r
	}
	return d, on, to
}

// cornersTo returns the least distance from a corner of p to an edge of q. Between outlines that do not meet, the nearest pair of
// points always has a corner in it.
func cornersTo(p, q Polygon) (d float64, on, to V2) {
	least := math.Inf(1)
	for i := range q {
		a, b := q.Edge(i)
		ab := b.Sub(a)
		l2 := ab.Dot(ab)
		for _, c := range p {
			t := 0.0
			if l2 > 0 {
				t = max(0, min(1, c.Sub(a).Dot(ab)/l2))
			}
			n := a.Lerp(b, t)
			v := n.Sub(c)
			if e := v.Dot(v); e < least {
				least, on, to = e, c, n
			}
		}
	}
	return math.Sqrt(least), on, to
}

// common returns a point that two convex outlines share.
func common(p, q Polygon) (at V2, ok bool) {
	for i := range p {
		a, b := p.Edge(i)
		for j := range q {
			c, d := q.Edge(j)
			if SegmentsCross(a, b, c, d) {
				return crossing(a, b, c, d), true
			}
		}
	}
	switch {
	case len(q) > 2 && q.Contains(p[0]):
		return p[0], true
	case len(p) > 2 && p.Contains(q[0]):
		return q[0], true
	}
	return V2{}, false
}

// crossing returns a point of two segments that are known to share one.
func crossing(a, b, c, d V2) V2 {
	u, v := b.Sub(a), d.Sub(c)
	if k := u.Cross(v); k != 0 {
		t := c.Sub(a).Cross(v) / k
		return a.Lerp(b, max(0, min(1, t)))
	}
	for _, p := range [2]V2{c, d} {
		if within(a, b, p) {
			return p
		}
	}
	return a
}
