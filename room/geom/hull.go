package geom

import "sort"

// Hull returns the convex outline round the points, anticlockwise (Andrew 1979).
func Hull(pts []V2) Polygon {
	p := append([]V2(nil), pts...)
	sort.Slice(p, func(i, j int) bool { return p[i].X < p[j].X || (p[i].X == p[j].X && p[i].Y < p[j].Y) })
	half := func(q []V2) Polygon {
		var h Polygon
		for _, v := range q {
			for len(h) >= 2 && h[len(h)-1].Sub(h[len(h)-2]).Cross(v.Sub(h[len(h)-1])) <= 0 {
				h = h[:len(h)-1]
			}
			h = append(h, v)
		}
		return h[:len(h)-1]
	}
	if len(p) < 3 {
		return p
	}
	lower := half(p)
	for i, j := 0, len(p)-1; i < j; i, j = i+1, j-1 {
		p[i], p[j] = p[j], p[i]
	}
	return append(lower, half(p)...)
}
