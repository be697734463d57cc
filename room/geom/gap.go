package geom

import "math"

// BoxGap returns the least distance between two boxes in mm; where they overlap it is negative: minus the shortest push that
// would part them.
func BoxGap(a, b Box) float64 {
	if a.Upright() && b.Upright() {
		return prismGap(a, b)
	}
	if p := boxPenetration(a, b); p > 0 {
		return -p
	}
	return min(edgesGap(a, b), min(cornersGap(a, b), cornersGap(b, a)))
}

// prismGap takes upright boxes apart into plan and height, which do not depend on each other.
func prismGap(a, b Box) float64 {
	z := math.Abs(a.C.Z-b.C.Z) - a.Half.Z - b.Half.Z
	plan := rectanglesGap(&a, &b)
	if z <= 0 || plan <= 0 {
		return max(z, plan)
	}
	return math.Hypot(z, plan)
}

// rectanglesGap is the gap of two upright boxes in plan. Rectangles that do not overlap come nearest at a corner of one of them.
func rectanglesGap(a, b *Box) float64 {
	d := V2{b.C.X - a.C.X, b.C.Y - a.C.Y}
	apart := max(spreadApart(a, b, d), spreadApart(b, a, d))
	if apart <= 0 {
		return apart
	}
	return math.Sqrt(min(cornersToRectangle(a, b), cornersToRectangle(b, a)))
}

// spreadApart returns how far the two boxes are apart along the level axes of a: negative where they overlap on both.
func spreadApart(a, b *Box, d V2) float64 {
	most := math.Inf(-1)
	for k := 0; k < 2; k++ {
		n := a.Ax[k]
		reach := a.Half.Axis(k) + b.Half.X*math.Abs(b.Ax[0].X*n.X+b.Ax[0].Y*n.Y) + b.Half.Y*math.Abs(b.Ax[1].X*n.X+b.Ax[1].Y*n.Y)
		most = max(most, math.Abs(d.X*n.X+d.Y*n.Y)-reach)
	}
	return most
}

// cornersToRectangle returns the square of the least distance in plan from the corners of a to b.
func cornersToRectangle(a, b *Box) float64 {
	least := math.Inf(1)
	for i := 0; i < 4; i++ {
		x, y := a.Half.X, a.Half.Y
		if i&1 == 0 {
			x = -x
		}
		if i&2 == 0 {
			y = -y
		}
		p := V2{a.C.X + a.Ax[0].X*x + a.Ax[1].X*y - b.C.X, a.C.Y + a.Ax[0].Y*x + a.Ax[1].Y*y - b.C.Y}
		u := max(0, math.Abs(p.X*b.Ax[0].X+p.Y*b.Ax[0].Y)-b.Half.X)
		v := max(0, math.Abs(p.X*b.Ax[1].X+p.Y*b.Ax[1].Y)-b.Half.Y)
		least = min(least, u*u+v*v)
	}
	return least
}

// boxPenetration tries the fifteen separating axes of two boxes (Gottschalk, Lin and Manocha 1996).
func boxPenetration(a, b Box) float64 {
	least := math.Inf(1)
	try := func(n V3) {
		l := n.Len()
		if l < 1e-9 {
			return
		}
		n = n.Mul(1 / l)
		least = min(least, a.Reach(n)+b.Reach(n)-math.Abs(b.C.Sub(a.C).Dot(n)))
	}
	for i := 0; i < 3; i++ {
		try(a.Ax[i])
		try(b.Ax[i])
		for j := 0; j < 3; j++ {
			try(a.Ax[i].Cross(b.Ax[j]))
		}
	}
	return least
}

// PointGap returns how far p is from the box, 0 inside, in mm.
func (b Box) PointGap(p V3) float64 {
	d := p.Sub(b.C)
	sum := 0.0
	for k := 0; k < 3; k++ {
		if e := math.Abs(d.Dot(b.Ax[k])) - b.Half.Axis(k); e > 0 {
			sum += e * e
		}
	}
	return math.Sqrt(sum)
}

func cornersGap(a, b Box) float64 {
	least := math.Inf(1)
	for i := 0; i < 8; i++ {
		least = min(least, b.PointGap(a.Corner(i)))
	}
	return least
}

// boxEdges lists the twelve edges as pairs of corner numbers.
var boxEdges = [12][2]int{{0, 1}, {2, 3}, {4, 5}, {6, 7}, {0, 2}, {1, 3}, {4, 6}, {5, 7}, {0, 4}, {1, 5}, {2, 6}, {3, 7}}

// Edges calls f with the two ends of each of the twelve edges.
func (b Box) Edges(f func(p, q V3)) {
	for _, e := range boxEdges {
		f(b.Corner(e[0]), b.Corner(e[1]))
	}
}

func edgesGap(a, b Box) float64 {
	least := math.Inf(1)
	a.Edges(func(p, q V3) {
		b.Edges(func(r, s V3) { least = min(least, segmentGap3(p, q, r, s)) })
	})
	return least
}

// segmentGap3 returns the least distance between two segments in space (Lumelsky 1985).
func segmentGap3(p, q, r, s V3) float64 {
	u, v, w := q.Sub(p), s.Sub(r), p.Sub(r)
	a, b, c, d, e := u.Dot(u), u.Dot(v), v.Dot(v), u.Dot(w), v.Dot(w)
	clamp := func(t float64) float64 { return max(0, min(1, t)) }
	var t, k float64
	if den := a*c - b*b; den > 1e-12*a*c {
		t = clamp((b*e - c*d) / den)
	}
	if c > 0 {
		k = clamp((b*t + e) / c)
	}
	if a > 0 {
		t = clamp((b*k - d) / a)
	}
	return p.Add(u.Mul(t)).Dist(r.Add(v.Mul(k)))
}
