package geom

import "math"

// SegmentPoint returns the distance from p to the segment a-b, in mm, and where along it (0 at a, 1 at b) the nearest point lies.
func SegmentPoint(a, b, p V2) (d, t float64) {
	d2, t := segmentPoint2(a, b, p)
	return math.Sqrt(d2), t
}

// segmentPoint2 is SegmentPoint with the square of the distance.
func segmentPoint2(a, b, p V2) (d2, t float64) {
	ab := b.Sub(a)
	l2 := ab.Dot(ab)
	if l2 > 0 {
		t = max(0, min(1, p.Sub(a).Dot(ab)/l2))
	}
	v := a.Lerp(b, t).Sub(p)
	return v.Dot(v), t
}

// SegmentsCross tells whether the segments a-b and c-d share a point.
func SegmentsCross(a, b, c, d V2) bool {
	d1, d2 := b.Sub(a).Cross(c.Sub(a)), b.Sub(a).Cross(d.Sub(a))
	d3, d4 := d.Sub(c).Cross(a.Sub(c)), d.Sub(c).Cross(b.Sub(c))
	if d1*d2 < 0 && d3*d4 < 0 {
		return true
	}
	touch := func(o float64, p, q, r V2) bool { return o == 0 && within(p, q, r) }
	return touch(d1, a, b, c) || touch(d2, a, b, d) || touch(d3, c, d, a) || touch(d4, c, d, b)
}

// within tells whether r, known to be in line with p-q, lies between them.
func within(p, q, r V2) bool {
	return min(p.X, q.X) <= r.X && r.X <= max(p.X, q.X) &&
		min(p.Y, q.Y) <= r.Y && r.Y <= max(p.Y, q.Y)
}

// SegmentSegment returns the least distance between the segments a-b and c-d, in mm; 0 where they cross.
func SegmentSegment(a, b, c, d V2) float64 {
	if SegmentsCross(a, b, c, d) {
		return 0
	}
	least := math.Inf(1)
	for _, x := range [4]struct{ p, q, r V2 }{{a, b, c}, {a, b, d}, {c, d, a}, {c, d, b}} {
		if e, _ := SegmentPoint(x.p, x.q, x.r); e < least {
			least = e
		}
	}
	return least
}

// LinesMeet returns where the endless lines through p along u and through q along v meet; ok is false where they are parallel.
func LinesMeet(p, u, q, v V2) (at V2, ok bool) {
	c := u.Cross(v)
	if math.Abs(c) < 1e-12 {
		return V2{}, false
	}
	return p.Add(u.Mul(q.Sub(p).Cross(v) / c)), true
}
