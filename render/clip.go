package render

import "math"

// clipTolerance is how far a curve may stray once it is clipped, in millimetres: a sixth of a
// pixel at 1x.
const clipTolerance Paper = 0.04

// Clip returns the drawing with what lies outside r left out, for a drawing that is larger than
// its window. Coordinates and page stay. Lines are cut their own width beyond r, so that their
// ends do not show, and dashes stay where they were. A text is kept whole or left out.
func (d Drawing) Clip(r Rect) Drawing {
	kept := make([]Mark, 0, len(d.Marks))
	for _, m := range d.Marks {
		kept = append(kept, m.Clip(r)...)
	}
	d.Marks = kept
	return d
}

// Clip returns the part of the mark within r: nothing, itself, or a mark for each piece of a
// broken line.
func (m Mark) Clip(r Rect) []Mark {
	b := m.Bounds()
	if b.Empty() || !r.Overlaps(b) && !r.Holds(b) {
		return nil
	}
	if r.Holds(b) || m.Kind == KindText {
		return []Mark{m}
	}
	if m.Kind == KindFill {
		m.Path = clipFill(m.Path, r)
		return nonEmpty(m)
	}
	return clipStroke(m, r.Grow(m.Pen.Width))
}

func nonEmpty(m Mark) []Mark {
	if len(m.Path) == 0 {
		return nil
	}
	return []Mark{m}
}

// clipFill clips every subpath on its own: the edges this adds along r bound nothing outside it.
func clipFill(p Path, r Rect) Path {
	var out Path
	for _, run := range p.Flatten(clipTolerance) {
		out = append(out, Polygon(ClipPolygon(run.Points, r)...)...)
	}
	return out
}

// clipStroke returns one mark for all pieces of a solid line, and one for each piece of a
// dashed line, since each starts elsewhere in the pattern.
func clipStroke(m Mark, r Rect) []Mark {
	var pieces []piece
	for _, run := range m.Path.Flatten(clipTolerance) {
		points := run.Points
		if run.Closed {
			points = append(points[:len(points):len(points)], points[0])
		}
		pieces = append(pieces, clipLine(points, r)...)
	}
	period := float64(m.Pen.Dash.Period())
	if period == 0 {
		m.Path = nil
		for _, p := range pieces {
			m.Path = append(m.Path, Polyline(p.points...)...)
		}
		return nonEmpty(m)
	}
	var marks []Mark
	for _, p := range pieces {
		cut := m
		cut.Path = Polyline(p.points...)
		cut.Pen.Dash.Phase = Paper(math.Mod(float64(m.Pen.Dash.Phase+p.from), period))
		marks = append(marks, cut)
	}
	return marks
}

// piece is a part of a line, with its distance along it.
type piece struct {
	points []Point
	from   Paper
}

// ClipPolyline returns the parts of the line through the points that lie in r.
func ClipPolyline(points []Point, r Rect) [][]Point {
	var parts [][]Point
	for _, p := range clipLine(points, r) {
		parts = append(parts, p.points)
	}
	return parts
}

func clipLine(points []Point, r Rect) []piece {
	var pieces []piece
	joins := false // the last piece ends where the next segment begins
	var along Paper
	for i := 1; i < len(points); i++ {
		a, b := points[i-1], points[i]
		length := b.Minus(a).Length()
		t0, t1, ok := clipSegment(a, b, r)
		switch {
		case !ok:
			joins = false
		case joins:
			last := &pieces[len(pieces)-1]
			last.points = append(last.points, a.Between(b, t1))
		default:
			ends := []Point{a.Between(b, t0), a.Between(b, t1)}
			pieces = append(pieces, piece{ends, along + length*Paper(t0)})
		}
		joins = ok && t1 == 1
		along += length
	}
	return pieces
}

// clipSegment returns the shares of the way from a to b between which it lies in r (the
// parametric clipping of Liang and Barsky, 1984).
func clipSegment(a, b Point, r Rect) (t0, t1 float64, ok bool) {
	d := b.Minus(a)
	t0, t1 = 0, 1
	for _, side := range [4][2]Paper{
		{-d.X, a.X - r.Min.X}, {d.X, r.Max.X - a.X},
		{-d.Y, a.Y - r.Min.Y}, {d.Y, r.Max.Y - a.Y},
	} {
		towards, room := side[0], side[1]
		if towards == 0 && room < 0 {
			return 0, 0, false
		}
		if towards < 0 {
			t0 = max(t0, float64(room/towards))
		} else if towards > 0 {
			t1 = min(t1, float64(room/towards))
		}
	}
	return t0, t1, t0 <= t1
}

// ClipPolygon returns the part of the polygon that lies in r, nil if none does (Sutherland and
// Hodgman, 1974). Parts of a polygon that falls apart stay joined along the edge of r.
func ClipPolygon(points []Point, r Rect) []Point {
	for _, e := range [4]edge{
		{at: r.Min.X}, {at: r.Max.X, less: true},
		{at: r.Min.Y, level: true}, {at: r.Max.Y, level: true, less: true},
	} {
		points = e.clip(points)
	}
	return points
}

// edge is an edge of a rectangle, with the inside on its greater or lesser side.
type edge struct {
	at          Paper
	level, less bool
}

// depth returns how far inside a point lies.
func (e edge) depth(p Point) Paper {
	d := p.X - e.at
	if e.level {
		d = p.Y - e.at
	}
	if e.less {
		return -d
	}
	return d
}

// on returns the point with its place across the edge set to the edge, so that what is cut
// along it is exactly level or upright.
func (e edge) on(p Point) Point {
	if e.level {
		return Point{p.X, e.at}
	}
	return Point{e.at, p.Y}
}

// clip keeps the part of a polygon inside the edge.
func (e edge) clip(points []Point) []Point {
	var kept []Point
	for i, b := range points {
		a := points[(i+len(points)-1)%len(points)]
		da, db := e.depth(a), e.depth(b)
		if (da < 0) != (db < 0) {
			kept = append(kept, e.on(a.Between(b, float64(da/(da-db)))))
		}
		if db >= 0 {
			kept = append(kept, b)
		}
	}
	return kept
}
