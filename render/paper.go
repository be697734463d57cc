package render

import "math"

// Paper is a length or a coordinate on the finished drawing, in millimetres. It is a type of
// its own so that a length in the room does not compile where one on paper is wanted.
type Paper float64

// Px returns n screen pixels at 1x: 96 of them make an inch.
func Px(n float64) Paper { return Paper(n * 25.4 / 96) }

// Pt returns n printer's points: 72 of them make an inch.
func Pt(n float64) Paper { return Paper(n * 25.4 / 72) }

// In returns n inches.
func In(n float64) Paper { return Paper(n * 25.4) }

// Point is a place on the paper: X to the right, Y down, from the top left of the drawing.
type Point struct{ X, Y Paper }

// Plus returns p moved by q.
func (p Point) Plus(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Minus returns the way from q to p.
func (p Point) Minus(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Times returns p stretched from the origin.
func (p Point) Times(k float64) Point { return Point{p.X * Paper(k), p.Y * Paper(k)} }

// Length returns the distance from the origin.
func (p Point) Length() Paper { return Paper(math.Hypot(float64(p.X), float64(p.Y))) }

// Between returns the point that lies the share t of the way from p to q.
func (p Point) Between(q Point, t float64) Point { return p.Plus(q.Minus(p).Times(t)) }

// Aligned reports whether two coordinates are the same but for rounding in what led to them.
func Aligned(a, b Paper) bool { return a-b < 1e-6 && b-a < 1e-6 }

// Rect is an upright rectangle, its edges included. It is empty if Min lies beyond Max.
type Rect struct{ Min, Max Point }

// nowhere is the empty rectangle that leaves any other unchanged in a union.
var nowhere = Rect{
	Min: Point{Paper(math.Inf(1)), Paper(math.Inf(1))},
	Max: Point{Paper(math.Inf(-1)), Paper(math.Inf(-1))},
}

// Around returns the smallest rectangle that holds the points; it is empty without any.
func Around(points ...Point) Rect {
	r := nowhere
	for _, p := range points {
		r = r.Union(Rect{p, p})
	}
	return r
}

// W returns the width.
func (r Rect) W() Paper { return r.Max.X - r.Min.X }

// H returns the height.
func (r Rect) H() Paper { return r.Max.Y - r.Min.Y }

// Centre returns the middle.
func (r Rect) Centre() Point { return r.Min.Between(r.Max, 0.5) }

// Empty reports whether r holds no point.
func (r Rect) Empty() bool { return !(r.Min.X <= r.Max.X && r.Min.Y <= r.Max.Y) }

// Grow returns r with every side moved out by d, or in if d is negative.
func (r Rect) Grow(d Paper) Rect {
	return Rect{Point{r.Min.X - d, r.Min.Y - d}, Point{r.Max.X + d, r.Max.Y + d}}
}

// Union returns the smallest rectangle that holds both.
func (r Rect) Union(s Rect) Rect {
	return Rect{
		Point{min(r.Min.X, s.Min.X), min(r.Min.Y, s.Min.Y)},
		Point{max(r.Max.X, s.Max.X), max(r.Max.Y, s.Max.Y)},
	}
}

// Overlaps reports whether r and s share more than an edge.
func (r Rect) Overlaps(s Rect) bool {
	return r.Min.X < s.Max.X && s.Min.X < r.Max.X && r.Min.Y < s.Max.Y && s.Min.Y < r.Max.Y
}

// Holds reports whether s lies in r.
func (r Rect) Holds(s Rect) bool {
	return r.Min.X <= s.Min.X && r.Min.Y <= s.Min.Y && r.Max.X >= s.Max.X && r.Max.Y >= s.Max.Y
}

// Contains reports whether p lies in r.
func (r Rect) Contains(p Point) bool { return r.Holds(Rect{p, p}) }
