package view

import (
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// A laid is a dimension across the room that is still to be drawn: where on its line the value may stand, and by which ways the line may be
// moved aside, the best first.
type laid struct {
	d      render.Dimension
	shares []float64
	shifts []render.Point
}

// sharesInside are where on its line a value may stand, the best first.
var sharesInside = []float64{0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78}

// How far from its wall a reading along it stands inside the room, and in what steps it moves on.
var firstOff, nextOff = render.Px(24), render.Px(13)

// lay asks for a dimension where it is.
func (p *planner) lay(d render.Dimension, shares []float64) {
	p.inside = append(p.inside, laid{d, shares, []render.Point{{}}})
}

// layAlong asks for a reading along a wall at the first distance from it that is free.
func (p *planner) layAlong(d render.Dimension, w *fit.Wall) {
	in := p.on(w.A.Add(w.In.Mul(1000))).Minus(p.on(w.A))
	in = in.Times(1 / float64(in.Length()))
	l := laid{d: d, shares: sharesInside}
	for i := range 8 {
		l.shifts = append(l.shifts, in.Times(float64(firstOff+nextOff*render.Paper(i))))
	}
	p.inside = append(p.inside, l)
}

// layBeside asks for a dimension a little aside of where it is, since another one has its line.
func (p *planner) layBeside(d render.Dimension) {
	way := d.To.Minus(d.From)
	side := render.Point{X: -way.Y, Y: way.X}.Times(1 / float64(way.Length()))
	l := laid{d: d, shares: sharesInside}
	for _, k := range [6]render.Paper{1.4, -1.4, 2.1, -2.1, 2.8, -2.8} {
		l.shifts = append(l.shifts, side.Times(float64(nextOff*k)))
	}
	p.inside = append(p.inside, l)
}

// layInside draws what was asked for: first all lines find their place, then all values, each where it meets the least; of lines that still run
// through the words of another one, that piece is left out.
func (p *planner) layInside(g *crowd) {
	slices.SortStableFunc(p.inside, func(a, b laid) int { return min(len(a.shifts), 2) - min(len(b.shifts), 2) })
	first := len(p.marks)
	for i := range p.inside {
		l := &p.inside[i]
		by := l.shift(g)
		if by != (render.Point{}) {
			for _, end := range [2]render.Point{l.d.From, l.d.To} {
				m := p.st.ExtensionLine(l.d.Ref, end, end.Plus(by))
				p.add(m)
				g.mark(m)
			}
		}
		l.d.From, l.d.To = l.d.From.Plus(by), l.d.To.Plus(by)
		g.line(l.d.From, l.d.To, lineInk)
	}
	for _, l := range p.inside {
		p.valued(g, l)
	}
	p.inside = nil
	breakLines(p.marks[first:], p.st.Gap/2)
}

// shift returns the way aside on which the line meets the least.
func (l *laid) shift(g *crowd) (best render.Point) {
	least := math.Inf(1)
	for n, by := range l.shifts {
		cost := 8*float64(n) + 2*g.way(l.d.From.Plus(by), l.d.To.Plus(by))
		if cost < least {
			best, least = by, cost
		}
	}
	return best
}

// valued draws a dimension with its value at the share of its line where it meets the least.
func (p *planner) valued(g *crowd, l laid) {
	var best []render.Mark
	least := math.Inf(1)
	for i, share := range l.shares {
		try := l.d
		try.Share = share
		marks := p.st.Dimension(try)
		cost := float64(i)
		for _, m := range marks {
			if m.Kind == render.KindText {
				cost += float64(g.cost(m.Bounds().Grow(p.st.Gap/2), floorGround))
			}
		}
		if cost < least {
			best, least = marks, cost
		}
	}
	p.add(best...)
	for _, m := range best {
		if m.Kind == render.KindText {
			g.mark(m)
		}
	}
}

// breakLines leaves out of strokes what runs through the words of other refs.
func breakLines(marks []render.Mark, air render.Paper) {
	for i := range marks {
		if marks[i].Kind != render.KindStroke {
			continue
		}
		for _, words := range marks {
			if words.Kind == render.KindText && words.Ref != marks[i].Ref {
				marks[i].Path = cutOut(marks[i].Path, words.Bounds().Grow(air))
			}
		}
	}
}

// cutOut returns straight lines without what lies in a rectangle.
func cutOut(path render.Path, box render.Rect) render.Path {
	if !path.Bounds().Overlaps(box) {
		return path
	}
	var out render.Path
	for _, run := range path.Flatten(0.1) {
		for i := 1; i < len(run.Points); i++ {
			a, b := run.Points[i-1], run.Points[i]
			lo, hi := sharesIn(a, b, box)
			if lo >= hi {
				out = append(out, render.Line(a, b)...)
				continue
			}
			if lo > 0 {
				out = append(out, render.Line(a, a.Between(b, lo))...)
			}
			if hi < 1 {
				out = append(out, render.Line(a.Between(b, hi), b)...)
			}
		}
	}
	return out
}

// sharesIn returns from where to where on the way from a to b a rectangle is; lo is not below hi where it is not met.
func sharesIn(a, b render.Point, box render.Rect) (lo, hi float64) {
	lo, hi = 0, 1
	for _, c := range [2][4]render.Paper{{a.X, b.X, box.Min.X, box.Max.X}, {a.Y, b.Y, box.Min.Y, box.Max.Y}} {
		d := float64(c[1] - c[0])
		if d == 0 {
			if c[0] < c[2] || c[0] > c[3] {
				return 1, 0
			}
			continue
		}
		t0, t1 := float64(c[2]-c[0])/d, float64(c[3]-c[0])/d
		lo, hi = max(lo, min(t0, t1)), min(hi, max(t0, t1))
	}
	return lo, hi
}
