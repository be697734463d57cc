package geom

import "math"

// Polygon is a closed outline in plan; its last point joins its first.
type Polygon []V2

// Rect returns the rectangle between two opposite corners, anticlockwise seen from above.
func Rect(x0, y0, x1, y1 float64) Polygon {
	return Polygon{{x0, y0}, {x1, y0}, {x1, y1}, {x0, y1}}
}

// Edge returns the ends of edge i, which leaves point i.
func (p Polygon) Edge(i int) (a, b V2) { return p[i], p[(i+1)%len(p)] }

// Area returns the signed area in mm2: positive where the outline runs anticlockwise seen from above.
func (p Polygon) Area() float64 {
	sum := 0.0
	for i := range p {
		a, b := p.Edge(i)
		sum += a.Cross(b)
	}
	return sum / 2
}

// Contains tells whether q lies inside the outline or on it.
func (p Polygon) Contains(q V2) bool {
	in := false
	for i := range p {
		a, b := p.Edge(i)
		if (a.Y > q.Y) != (b.Y > q.Y) && q.X < (b.X-a.X)*(q.Y-a.Y)/(b.Y-a.Y)+a.X {
			in = !in
		}
	}
	return in || p.Distance(q) == 0
}

// Distance returns how far q is from the outline itself, inside or out, in mm.
func (p Polygon) Distance(q V2) float64 {
	least := math.Inf(1)
	for i := range p {
		a, b := p.Edge(i)
		d2, _ := segmentPoint2(a, b, q)
		least = min(least, d2)
	}
	return math.Sqrt(least)
}

// Simple tells whether no two edges of the outline share a point other than the corner between neighbours.
func (p Polygon) Simple() bool {
	n := len(p)
	if n < 3 {
		return false
	}
	for i := 0; i < n; i++ {
		a, b := p.Edge(i)
		if a == b {
			return false
		}
		for j := i + 2; j < n; j++ {
			if i == 0 && j == n-1 {
				continue
			}
			c, d := p.Edge(j)
			if SegmentsCross(a, b, c, d) {
				return false
			}
		}
	}
	return true
}

// Bounds returns the corners of the upright rectangle round the outline.
func (p Polygon) Bounds() (lo, hi V2) {
	lo, hi = V2{math.Inf(1), math.Inf(1)}, V2{math.Inf(-1), math.Inf(-1)}
	for _, q := range p {
		lo = V2{min(lo.X, q.X), min(lo.Y, q.Y)}
		hi = V2{max(hi.X, q.X), max(hi.Y, q.Y)}
	}
	return lo, hi
}

// Clip returns what is left of the outline on the left of the line through a along u (Sutherland and Hodgman 1974). A result of a
// non-convex outline may hold edges that run along the line twice; its area is right all the same.
func (p Polygon) Clip(a, u V2) Polygon {
	side := func(q V2) float64 { return u.Cross(q.Sub(a)) }
	var out Polygon
	for i := range p {
		q, r := p.Edge(i)
		s, t := side(q), side(r)
		if s >= 0 {
			out = append(out, q)
		}
		if (s > 0 && t < 0) || (s < 0 && t > 0) {
			out = append(out, q.Lerp(r, s/(s-t)))
		}
	}
	return out
}

// Intersect returns what p and the convex anticlockwise outline c have in common.
func (p Polygon) Intersect(c Polygon) Polygon {
	out := p
	for i := range c {
		a, b := c.Edge(i)
		if out = out.Clip(a, b.Sub(a)); len(out) == 0 {
			return nil
		}
	}
	return out
}

// Gap returns the least distance between two outlines, in mm; where the convex outlines overlap it is negative: minus the
// shortest push that would part them.
func Gap(p, q Polygon) float64 {
	if d := -penetration(p, q); d < 0 {
		return d
	}
	least := math.Inf(1)
	for i := range p {
		a, b := p.Edge(i)
		for j := range q {
			c, d := q.Edge(j)
			least = min(least, SegmentSegment(a, b, c, d))
		}
	}
	return least
}

// penetration returns the shortest push in mm that parts two overlapping convex outlines; 0 or less where they do not overlap.
func penetration(p, q Polygon) float64 {
	return min(overlap(p, q), overlap(q, p))
}

func overlap(p, q Polygon) float64 {
	least := math.Inf(1)
	for i := range p {
		a, b := p.Edge(i)
		n := b.Sub(a).Left().Unit()
		lo0, hi0 := spread(p, n)
		lo1, hi1 := spread(q, n)
		if least = min(least, min(hi0-lo1, hi1-lo0)); least <= 0 {
			return least
		}
	}
	return least
}

func spread(p Polygon, n V2) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, v := range p {
		d := v.Dot(n)
		lo, hi = min(lo, d), max(hi, d)
	}
	return lo, hi
}
