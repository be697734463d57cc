package geom

// Line is an endless line through At along Along; what lies on its left is inside.
type Line struct{ At, Along V2 }

// Lines returns the lines along the edges of an anticlockwise outline.
func (p Polygon) Lines() []Line {
	out := make([]Line, len(p))
	for i := range p {
		a, b := p.Edge(i)
		out[i] = Line{a, b.Sub(a)}
	}
	return out
}

// Without returns what is left of the outline outside the convex region that lies inside all the lines, as outlines that do not
// overlap. Of a non-convex outline they may hold edges that run twice along a line, as Clip leaves them: their areas add up all the
// same.
func (p Polygon) Without(region ...Line) []Polygon {
	var out []Polygon
	rest := p
	for _, l := range region {
		if len(rest) == 0 {
			break
		}
		if outside := rest.Clip(l.At, l.Along.Mul(-1)); len(outside) > 2 {
			out = append(out, outside)
		}
		rest = rest.Clip(l.At, l.Along)
	}
	return out
}

// Triangles cuts a simple anticlockwise outline into triangles (ear clipping, Meisters 1975).
func (p Polygon) Triangles() []Polygon {
	rest := append(Polygon(nil), p...)
	var out []Polygon
	for len(rest) > 3 {
		i := rest.ear()
		n := len(rest)
		out = append(out, Polygon{rest[(i+n-1)%n], rest[i], rest[(i+1)%n]})
		rest = append(rest[:i:i], rest[i+1:]...)
	}
	return append(out, rest)
}

// ear returns a corner that can be cut off: it bulges out, and no other corner lies in the triangle.
func (p Polygon) ear() int {
	n := len(p)
	for i := range p {
		a, b, c := p[(i+n-1)%n], p[i], p[(i+1)%n]
		if b.Sub(a).Cross(c.Sub(b)) <= 0 {
			continue
		}
		free := true
		for _, q := range p {
			free = free && (q == a || q == b || q == c || !(Polygon{a, b, c}).Contains(q))
		}
		if free {
			return i
		}
	}
	return 0
}

// Convex tells whether an anticlockwise outline bulges out at every corner.
func (p Polygon) Convex() bool {
	n := len(p)
	for i := range p {
		if p[(i+1)%n].Sub(p[i]).Cross(p[(i+2)%n].Sub(p[(i+1)%n])) < 0 {
			return false
		}
	}
	return true
}

// Turned returns the outline running the other way round.
func (p Polygon) Turned() Polygon {
	out := make(Polygon, len(p))
	for i, q := range p {
		out[len(p)-1-i] = q
	}
	return out
}
