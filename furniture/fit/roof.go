package fit

import (
	"fmt"
	"math"

	"bunkwright/room/geom"
)

// roof is the ceiling over the whole room, as faces over parts of its plan; the lowest face counts.
type roof struct {
	plan            geom.Polygon // anticlockwise
	faces           []face
	lowest, highest float64
	what            string // the face that is lowest
}

// face is one plane of the ceiling: height z at corner A, gradient g, over the parts of the plan that each list of lines encloses.
type face struct {
	z     float64
	g     geom.V2
	parts [][]geom.Line
}

func (f *face) height(p geom.V2) float64 { return f.z + f.g.Dot(p) }

// roof puts the faces together, or says what is missing: a face without height, or a part of the room without a face.
func (s *Scene) roof(plan geom.Polygon) (*roof, string) {
	list := s.Survey.Layout.Ceilings
	if len(list) == 0 {
		return nil, "how high is the ceiling, at each corner of the room?"
	}
	r := &roof{plan: plan, lowest: math.Inf(1), highest: math.Inf(-1)}
	for i, refs := range list {
		f := face{z: s.v(refs.Z), g: geom.V2{X: s.v(refs.SlopeX), Y: s.v(refs.SlopeY)}}
		if math.IsNaN(f.z + f.g.X + f.g.Y) {
			return nil, fmt.Sprintf("how high is %s at one more point or corner?", s.keys.ceilings[i])
		}
		var what string
		if f.parts, what = s.faceParts(i); what != "" {
			return nil, what
		}
		r.add(f, s.keys.ceilings[i])
	}
	if left := r.without(func(*face) []geom.Line { return nil }); left > 1e-6*plan.Area() {
		return nil, "how high is the ceiling over the rest of the room?"
	}
	return r, ""
}

// faceParts returns the convex parts of the plan that a face covers.
func (s *Scene) faceParts(i int) (parts [][]geom.Line, what string) {
	c := s.Job.Room.Ceilings[i]
	switch {
	case c.Strip != "":
		w, deep := s.wallNamed(c.Strip), s.v(s.Survey.Layout.Ceilings[i].Deep)
		if w == nil || math.IsNaN(deep) {
			return nil, fmt.Sprintf("how far out from wall %s does %s come?", c.Strip, s.keys.ceilings[i])
		}
		return [][]geom.Line{{{At: w.Point(0, deep), Along: w.Dir}}}, ""
	case c.Corners == "":
		return [][]geom.Line{nil}, ""
	}
	p := s.cornersPolygon(c.Corners)
	if p.Area() < 0 {
		p = p.Turned()
	}
	if p.Convex() {
		return [][]geom.Line{p.Lines()}, ""
	}
	for _, t := range p.Triangles() {
		parts = append(parts, t.Lines())
	}
	return parts, ""
}

// add takes a face in, with its lowest and highest points over the plan.
func (r *roof) add(f face, key string) {
	r.faces = append(r.faces, f)
	for _, part := range f.parts {
		over := r.plan
		for _, l := range part {
			over = over.Clip(l.At, l.Along)
		}
		for _, p := range over {
			z := f.height(p)
			if z < r.lowest {
				r.lowest, r.what = z, key
			}
			r.highest = max(r.highest, z)
		}
	}
}

// without returns the area of the plan that lies in no part of a face narrowed by further lines, in mm2.
func (r *roof) without(narrow func(*face) []geom.Line) float64 {
	free := []geom.Polygon{r.plan}
	for i := range r.faces {
		f := &r.faces[i]
		for _, part := range f.parts {
			region := append(append([]geom.Line(nil), narrow(f)...), part...)
			var rest []geom.Polygon
			for _, p := range free {
				rest = append(rest, p.Without(region...)...)
			}
			free = rest
		}
	}
	sum := 0.0
	for _, p := range free {
		sum += p.Area()
	}
	return sum
}

// never encloses nothing that a room could hold: it lies beyond every wall.
var never = geom.Line{At: geom.V2{X: -1e9}, Along: geom.V2{Y: 1}}

// levelFace is the steepest gradient that counts as level: rounding.
const levelFace = 1e-12

// areaAt returns the area of the plan over which the ceiling is at least h high, in mm2.
func (r *roof) areaAt(h float64) float64 {
	return r.without(func(f *face) []geom.Line {
		switch g := f.g.Len(); {
		case g > levelFace: // lower than h on the left of the line where it is h high
			return []geom.Line{{At: f.g.Mul((h - f.z) / (g * g)), Along: f.g.Mul(-1).Right()}}
		case f.z < h:
			return nil
		}
		return []geom.Line{never}
	})
}

// heightOver returns the greatest height that the ceiling keeps over as much of the plan as an area, in mm2; its lowest point where the
// plan is no larger than that. The area shrinks steadily with the height, so halving finds it to within rounding.
func (r *roof) heightOver(area float64) float64 {
	if r.plan.Area() <= area {
		return r.lowest
	}
	lo, hi := r.lowest, r.highest
	for range 48 {
		if h := (lo + hi) / 2; r.areaAt(h) >= area {
			lo = h
		} else {
			hi = h
		}
	}
	return lo
}

// leastDimension returns the least distance between two walls that face each other, and their keys.
func (s *Scene) leastDimension() (least float64, walls []string) {
	least = math.Inf(1)
	for i := range s.Walls {
		for j := range s.Walls {
			if d, ok := s.Walls[i].faces(&s.Walls[j]); ok && d < least {
				least, walls = d, []string{s.Walls[i].Name, s.Walls[j].Name}
			}
		}
	}
	if walls == nil {
		least = leastWidth(s.Outline)
	}
	return least, walls
}

// faces returns the least distance, square to a wall, of another that faces it within 45 degrees over some stretch of it.
func (w *Wall) faces(o *Wall) (d float64, ok bool) {
	if w.In.Dot(o.In) > -math.Sqrt2/2 {
		return 0, false
	}
	a0, o0 := w.Along(o.B) // runs the other way, so its second corner comes first
	a1, o1 := w.Along(o.A)
	lo, hi := max(0, a0), min(w.Len, a1)
	if hi-lo < 1 {
		return 0, false
	}
	at := func(x float64) float64 { return o0 + (o1-o0)*(x-a0)/(a1-a0) }
	d = min(at(lo), at(hi))
	return d, d > 0
}

// leastWidth returns the least width of an outline, measured square to each side of its hull.
func leastWidth(p geom.Polygon) float64 {
	hull := geom.Hull(p)
	least := math.Inf(1)
	for i := range hull {
		a, b := hull.Edge(i)
		n, far := b.Sub(a).Left().Unit(), 0.0
		for _, q := range hull {
			far = max(far, q.Sub(a).Dot(n))
		}
		least = min(least, far)
	}
	return least
}
