package view

import (
	"slices"

	"bunkwright/render"
)

// side is where dimensions stand round a drawing.
type side int

const (
	above side = iota
	right
	below
	left
	aslant // along a wall that is not square to the paper
)

func (k side) level() bool { return k == above || k == below }

// sign is the direction on paper in which a side lies.
func (k side) sign() render.Paper {
	if k == above || k == left {
		return -1
	}
	return 1
}

// rule is a row of dimensions on paper: its ticks along it, and where the extension line of each starts across it.
type rule struct {
	stops, from []render.Paper
	spans       []render.Span
}

// ruleSide draws rows beside a frame, the innermost first; the rules of one level share a line. Spill is how much farther out the rows
// start where one reaches beyond the frame's corners.
func (c *canvas) ruleSide(k side, frame render.Rect, levels [][]rule, spill render.Paper) {
	at := [aslant]render.Paper{above: frame.Min.Y, right: frame.Max.X, below: frame.Max.Y, left: frame.Min.X}[k]
	taken := boxes{lines: []render.Rect{frame.Grow(c.st.Gap)}}
	for i, rules := range levels {
		marks := c.chains(k, 0, rules)
		if b := render.Bounds(marks); i == 0 && k.level() && (b.Min.X < frame.Min.X || b.Max.X > frame.Max.X) {
			at += k.sign() * spill
		}
		own := boxesOf(marks)
		at += k.sign() * c.st.Tick * 0.9
		for own.meet(taken, k.along(at), c.st.Gap) {
			at += k.sign() * rowStep
		}
		marks = render.Shift(marks, k.along(at))
		c.add(marks...)
		c.extensions(k, at, rules)
		taken = taken.with(boxesOf(marks))
	}
}

// rowStep is the fineness with which rows of dimensions are moved apart.
const rowStep render.Paper = 0.5

// along returns the way to a row at a distance across.
func (k side) along(at render.Paper) render.Point {
	if k.level() {
		return render.Point{Y: at}
	}
	return render.Point{X: at}
}

// boxes are the rectangles round the words and the lines of rows of dimensions.
type boxes struct{ words, lines []render.Rect }

func boxesOf(marks []render.Mark) boxes {
	var b boxes
	for _, m := range marks {
		if m.Kind == render.KindText {
			b.words = append(b.words, m.Bounds())
			continue
		}
		var from render.Point
		for _, s := range m.Path {
			if s.Op == render.OpLine {
				b.lines = append(b.lines, render.Around(from, s.To))
			}
			from = s.To
		}
	}
	return b
}

func (b boxes) with(o boxes) boxes {
	return boxes{append(b.words, o.words...), append(b.lines, o.lines...)}
}

// meet tells whether b, moved, has words on anything of o, or a line through its words.
func (b boxes) meet(o boxes, by render.Point, air render.Paper) bool {
	moved := func(r render.Rect, air render.Paper) render.Rect {
		return render.Rect{Min: r.Min.Plus(by), Max: r.Max.Plus(by)}.Grow(air)
	}
	for _, r := range b.words {
		r = moved(r, air)
		if slices.ContainsFunc(o.words, r.Overlaps) || slices.ContainsFunc(o.lines, r.Overlaps) {
			return true
		}
	}
	for _, r := range b.lines {
		r = moved(r, air)
		if slices.ContainsFunc(o.words, r.Overlaps) {
			return true
		}
	}
	return false
}

// chains draws the rules of one level at a distance across.
func (c *canvas) chains(k side, at render.Paper, rules []rule) []render.Mark {
	var marks []render.Mark
	for _, r := range rules {
		chain := render.Chain{At: at, Less: k.sign() < 0, Stops: slices.Clone(r.stops), Spans: slices.Clone(r.spans)}
		if !k.level() {
			chain.Along = render.Upright
		}
		if n := len(chain.Stops); chain.Stops[0] > chain.Stops[n-1] {
			slices.Reverse(chain.Stops)
			slices.Reverse(chain.Spans)
		}
		marks = append(marks, c.st.Chain(chain)...)
	}
	return marks
}

// extensions draws the lines from what is measured to the ticks.
func (c *canvas) extensions(k side, at render.Paper, rules []rule) {
	for _, r := range rules {
		for i, s := range r.stops {
			from, to := render.Point{X: s, Y: r.from[i]}, render.Point{X: s, Y: at}
			if !k.level() {
				from, to = render.Point{X: r.from[i], Y: s}, render.Point{X: at, Y: s}
			}
			c.add(c.st.ExtensionLine("", from, to))
		}
	}
}
