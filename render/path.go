package render

import "math"

// Op says what a step of a path does.
type Op uint8

// The steps of a path.
const (
	OpMove  Op = iota // start a subpath at To
	OpLine            // straight to To
	OpCubic           // a cubic curve to To with the control points C1 and C2
	OpClose           // straight back to the start of the subpath
)

// Step is one step of a path.
type Step struct {
	Op         Op
	C1, C2, To Point
}

// Path is any number of subpaths. Filled, a point is inside if it lies within an odd number of
// them, so that a subpath within another is a hole.
type Path []Step

// Move returns p with a new subpath started at a.
func (p Path) Move(a Point) Path { return append(p, Step{Op: OpMove, To: a}) }

// Line returns p continued straight to a.
func (p Path) Line(a Point) Path { return append(p, Step{Op: OpLine, To: a}) }

// Cubic returns p continued by a cubic curve.
func (p Path) Cubic(c1, c2, a Point) Path {
	return append(p, Step{Op: OpCubic, C1: c1, C2: c2, To: a})
}

// Close returns p with its last subpath closed.
func (p Path) Close() Path { return append(p, Step{Op: OpClose}) }

// Line returns the straight line from a to b.
func Line(a, b Point) Path { return Path{}.Move(a).Line(b) }

// Polyline returns straight lines through the points.
func Polyline(points ...Point) Path {
	p := make(Path, 0, len(points)+1)
	for i, a := range points {
		if i == 0 {
			p = p.Move(a)
		} else {
			p = p.Line(a)
		}
	}
	return p
}

// Polygon returns the closed outline through the points.
func Polygon(points ...Point) Path {
	if len(points) == 0 {
		return nil
	}
	return Polyline(points...).Close()
}

// Box returns the outline of r.
func Box(r Rect) Path {
	return Polygon(r.Min, Point{r.Max.X, r.Min.Y}, r.Max, Point{r.Min.X, r.Max.Y})
}

// RoundBox returns the outline of r with corners of the given radius, at most half a side.
func RoundBox(r Rect, radius Paper) Path {
	radius = min(radius, r.W()/2, r.H()/2)
	in := r.Grow(-radius)
	p := arc(nil, in.Max, radius, 0, -90)
	p = arc(p, Point{in.Min.X, in.Max.Y}, radius, -90, -180)
	p = arc(p, in.Min, radius, 180, 90)
	return arc(p, Point{in.Max.X, in.Min.Y}, radius, 90, 0).Close()
}

// Circle returns the circle about c.
func Circle(c Point, r Paper) Path { return Arc(c, r, 0, 360).Close() }

// Arc returns the arc about c from one angle to the other, in degrees, counterclockwise as
// seen if to is the larger one; 0 points right and 90 points up the paper.
func Arc(c Point, r Paper, from, to float64) Path { return arc(nil, c, r, from, to) }

// arc goes on with p along an arc, in pieces of at most a quarter circle. Such a piece, drawn as
// the cubic that is exact at its ends and middle, strays from the circle by at most 0.00028 of
// the radius (a test measures it).
func arc(p Path, c Point, r Paper, from, to float64) Path {
	n := max(1, int(math.Ceil(math.Abs(to-from)/90-1e-9)))
	step := (to - from) / float64(n)
	reach := r * Paper(4.0/3*math.Tan(step*math.Pi/720))
	a, ta := onCircle(c, r, from)
	if len(p) == 0 {
		p = p.Move(a)
	} else {
		p = p.Line(a)
	}
	for i := 1; i <= n; i++ {
		b, tb := onCircle(c, r, from+float64(i)*step)
		p = p.Cubic(a.Plus(ta.Times(float64(reach))), b.Minus(tb.Times(float64(reach))), b)
		a, ta = b, tb
	}
	return p
}

// onCircle returns the point at the angle and the unit tangent towards larger angles.
func onCircle(c Point, r Paper, degrees float64) (at, tangent Point) {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	at = Point{c.X + r*Paper(cos), c.Y - r*Paper(sin)}
	return at, Point{Paper(-sin), Paper(-cos)}
}

// Bounds returns a rectangle that holds the path: the smallest for straight lines, and that of
// the control points for curves.
func (p Path) Bounds() Rect {
	r := nowhere
	for _, s := range p {
		switch s.Op {
		case OpCubic:
			r = r.Union(Around(s.C1, s.C2, s.To))
		case OpMove, OpLine:
			r = r.Union(Rect{s.To, s.To})
		}
	}
	return r
}

// Shift returns the path moved by d.
func (p Path) Shift(d Point) Path {
	q := make(Path, len(p))
	for i, s := range p {
		q[i] = s.shift(d)
	}
	return q
}

func (s Step) shift(d Point) Step { return Step{s.Op, s.C1.Plus(d), s.C2.Plus(d), s.To.Plus(d)} }
