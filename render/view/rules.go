package view

import (
	"cmp"
	"math"
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

// joinedRules makes one row of those that go on where another one ends, so that the values of all of them keep off each other.
func joinedRules(list []rule) []rule {
	if len(list) < 2 {
		return list
	}
	for i := range list {
		if n := len(list[i].stops); list[i].stops[0] > list[i].stops[n-1] {
			list[i] = list[i].backwards()
		}
	}
	slices.SortStableFunc(list, func(a, b rule) int { return cmp.Compare(a.stops[0], b.stops[0]) })
	var out []rule
	for _, r := range list {
		if n := len(out); n > 0 && math.Abs(float64(out[n-1].stops[len(out[n-1].stops)-1]-r.stops[0])) < float64(rowStep) {
			last := &out[n-1]
			last.stops, last.from = append(last.stops, r.stops[1:]...), append(last.from, r.from[1:]...)
			last.spans = append(last.spans, r.spans...)
			continue
		}
		out = append(out, r)
	}
	return out
}

// backwards is the same row from its other end.
func (r rule) backwards() rule {
	out := rule{stops: slices.Clone(r.stops), from: slices.Clone(r.from), spans: slices.Clone(r.spans)}
	slices.Reverse(out.stops)
	slices.Reverse(out.from)
	slices.Reverse(out.spans)
	return out
}

// ruleSide draws rows beside a frame, the innermost first; the rules of one level share a line. Spill is how much farther out the rows
// start where one reaches beyond the frame's corners.
func (c *canvas) ruleSide(k side, frame render.Rect, levels [][]rule, spill render.Paper) {
	at := [aslant]render.Paper{above: frame.Min.Y, right: frame.Max.X, below: frame.Max.Y, left: frame.Min.X}[k]
	taken := boxes{words: slices.Clone(c.stood), lines: []render.Rect{frame.Grow(c.st.Gap)}}
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
		taken = taken.with(boxesOf(marks))
		c.extensions(k, at, rules, taken.words)
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

// extensions draws the lines from what is measured to the ticks, broken where they would run through words.
func (c *canvas) extensions(k side, at render.Paper, rules []rule, words []render.Rect) {
	for _, r := range rules {
		for i, s := range r.stops {
			from, to := render.Point{X: s, Y: r.from[i]}, render.Point{X: s, Y: at}
			if !k.level() {
				from, to = render.Point{X: r.from[i], Y: s}, render.Point{X: at, Y: s}
			}
			m := c.st.ExtensionLine("", from, to)
			m.Path = broken(m.Path[0].To, m.Path[1].To, words, c.st.Gap/2)
			c.add(m)
		}
	}
}

// broken returns the level or upright line from a to b without the parts that words stand on.
func broken(a, b render.Point, words []render.Rect, air render.Paper) render.Path {
	spans := [][2]float64{{0, 1}}
	for _, w := range words {
		if w = w.Grow(air); w.Overlaps(render.Around(a, b).Grow(air / 10)) {
			spans = without(spans, share(a, b, w.Min), share(a, b, w.Max))
		}
	}
	var path render.Path
	for _, s := range spans {
		path = append(path, render.Line(a.Between(b, s[0]), a.Between(b, s[1]))...)
	}
	return path
}

// share returns how far along a level or upright line a point lies.
func share(a, b, p render.Point) float64 {
	d := b.Minus(a)
	if d.X == 0 {
		return float64((p.Y - a.Y) / d.Y)
	}
	return float64((p.X - a.X) / d.X)
}

// without takes the stretch between two shares out of spans.
func without(spans [][2]float64, lo, hi float64) [][2]float64 {
	if lo > hi {
		lo, hi = hi, lo
	}
	var out [][2]float64
	for _, s := range spans {
		for _, part := range [][2]float64{{s[0], min(s[1], lo)}, {max(s[0], hi), s[1]}} {
			if part[1] > part[0] {
				out = append(out, part)
			}
		}
	}
	return out
}
