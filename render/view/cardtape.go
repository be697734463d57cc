package view

import (
	"slices"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
)

// jobfileCorner is the corner at which the height of a ceiling is read, "" where it is read elsewhere.
func jobfileCorner(p *cardPainter) string {
	ref := p.c.Shown.Thing
	if corner := jobfile.Shown(p.s.Job, ref+".corner"); corner != "" || jobfile.Shown(p.s.Job, ref+".wall") != "" {
		return corner
	}
	return p.c.Shown.Wall[:min(1, len(p.c.Shown.Wall))]
}

// Lengths of a tape on paper, in letters: below shortTape it is drawn as a line only; below sameSide, level, or sameSideUp both words do not
// stand on one side of it.
const (
	shortTape  = 2.5
	sameSide   = 9
	sameSideUp = 4.2
)

// tape draws the tape from its hook at a to its case at b, with an arrow at each end. Arrows come from the side on which inside lies; where
// there is no room for both words there, the arrow at the case comes from the other side.
func (p *cardPainter) tape(a, b, inside render.Point) {
	d := b.Minus(a)
	long := d.Length()
	if long < 1e-6 {
		return
	}
	d = d.Times(1 / float64(long))
	n := render.Point{X: -d.Y, Y: d.X}
	mid := a.Between(b, 0.5)
	if side := inside.Minus(mid); side.X*n.X+side.Y*n.Y < 0 || along0(side, n) && n.Y > 0 {
		n = n.Times(-1)
	}
	half := float64(p.bandHigh() / 2)
	if long < p.words.Size*shortTape {
		p.span(a, b, n)
		half = float64(p.st.Gap)
	} else {
		p.band(a, b, d)
	}
	other := n
	if upright := d.Y > 0.7 || d.Y < -0.7; long < p.words.Size*sameSide && !upright || long < p.words.Size*sameSideUp {
		other = n.Times(-1)
	}
	p.end(a.Plus(n.Times(half)), p.lean(d, n, p.c.Shown.From.At, other == n), "from")
	p.end(b.Plus(other.Times(half)), p.lean(d.Times(-1), other, p.c.Shown.To.At, other == n), "to")
}

// lean is the direction that an arrow comes from at an end of a tape which runs along d from there, on the side n of it: square to the tape
// at the edge of a thing, and off the line of a wall, a floor or a ceiling.
func (p *cardPainter) lean(d, n render.Point, at ask.Place, beside bool) render.Point {
	switch {
	case p.slanted(d):
		return d.Times(0.87).Plus(n.Times(0.5))
	case beside || slices.Contains([]ask.Place{ask.AtCorner, ask.AtWall, ask.AtFloor, ask.AtCeiling}, at):
		return d.Times(0.55).Plus(n.Times(0.83))
	}
	return n
}

// slanted tells whether a tape goes through the room at a slant.
func (p *cardPainter) slanted(d render.Point) bool {
	return p.c.Shown.View == ask.FromAbove && !render.Aligned(d.X, 0) && !render.Aligned(d.Y, 0) && p.c.Shown.To.At == ask.AtCorner
}

func along0(v, n render.Point) bool {
	across := v.X*n.X + v.Y*n.Y
	return across < 0.01 && across > -0.01
}

func (p *cardPainter) bandHigh() render.Paper { return p.words.Size * 0.62 }

// band draws the tape: its marks, its hook and its case.
func (p *cardPainter) band(a, b, d render.Point) {
	n := render.Point{X: -d.Y, Y: d.X}
	h := float64(p.bandHigh() / 2)
	corners := func(from, to render.Point, half float64) render.Path {
		return render.Polygon(from.Plus(n.Times(half)), to.Plus(n.Times(half)), to.Minus(n.Times(half)), from.Minus(n.Times(half)))
	}
	p.add(render.Outlined("tape", corners(a, b, h), render.InkTape, p.st.Thin)...)
	step := float64(p.words.Size * 0.5)
	for at, i := step, 1; at < float64(b.Minus(a).Length()); at, i = at+step, i+1 {
		q := a.Plus(d.Times(at))
		deep := h * 0.7
		if i%4 == 0 {
			deep = h * 1.2
		}
		p.add(render.Stroke("tape", render.Line(q.Minus(n.Times(h)), q.Minus(n.Times(h-deep))), p.st.Thin))
	}
	p.add(render.Fill("tape", corners(a, a.Plus(d.Times(h*0.7)), h*1.7), render.InkMain))
	back := b.Minus(d.Times(min(h*3.4, float64(b.Minus(a).Length())*0.4)))
	p.add(render.Outlined("tape", corners(back, b, h*1.9), render.InkEndGrain, p.st.Seen)...)
}

// span draws what is measured where it is too short for a tape: a heavy line, and the hook.
func (p *cardPainter) span(a, b, n render.Point) {
	h := float64(p.words.Size * 0.5)
	p.add(render.Stroke("tape", render.Line(a, b), p.st.Cut))
	for _, q := range []render.Point{a, b} {
		p.add(render.Stroke("tape", render.Line(q.Plus(n.Times(h)), q.Minus(n.Times(h))), p.st.Cut))
	}
}

// end draws an arrow whose tip is at a place, coming from a direction, and the word at its tail.
func (p *cardPainter) end(tip, from render.Point, word string) {
	long := p.words.Size * 2
	p.arrow(tip, from, long)
	tail := tip.Plus(from.Times(float64(long)))
	if word == "from" && p.c.Shown.View != ask.NoView {
		word = "from (hook)"
	}
	p.label(tail, from, word)
}

// label puts words where an arrow begins, within the page and off what is drawn already.
func (p *cardPainter) label(tail, from render.Point, words string) {
	gap := p.words.Size * 0.3
	t := p.words.Text(render.Point{X: tail.X, Y: tail.Y + gap}, words, render.InkMain, render.Centre)
	switch {
	case from.X > 0.75:
		t.Anchor, t.At.X = render.Left, tail.X+gap
	case from.X < -0.75:
		t.Anchor, t.At.X = render.Right, tail.X-gap
	case from.Y > 0:
		t.At.Y = tail.Y + gap + p.words.Size*0.9
	default:
		t.At.Y = tail.Y - gap
	}
	t = p.free(t)
	p.add(render.Label("", t, render.InkField, p.words.Size*0.12)...)
	p.body = append(p.body, t.Bounds())
}

// free moves words onto the page, and off letters and other words where a little way helps.
func (p *cardPainter) free(t render.Text) render.Text {
	step := p.words.Size * 0.7
	for i := range 5 {
		for _, to := range []render.Point{{Y: 1}, {Y: -1}, {X: 1}, {X: -1}} {
			moved := t
			moved.At = t.At.Plus(to.Times(float64(step) * float64(i)))
			moved = p.within(moved)
			if !slices.ContainsFunc(p.body, moved.Bounds().Overlaps) {
				return moved
			}
		}
	}
	return p.within(t)
}

// within moves words onto the page.
func (p *cardPainter) within(t render.Text) render.Text {
	b, page := t.Bounds(), p.page.Grow(-p.words.Size*0.25)
	t.At.X += max(0, page.Min.X-b.Min.X) - max(0, b.Max.X-page.Max.X)
	t.At.Y += max(0, page.Min.Y-b.Min.Y) - max(0, b.Max.Y-page.Max.Y)
	return t
}

// arrow draws a heavy arrow with its tip at a place; from is the direction it comes from, of length 1.
func (p *cardPainter) arrow(tip, from render.Point, long render.Paper) {
	n := render.Point{X: -from.Y, Y: from.X}
	head, half, shaft := float64(p.words.Size*0.75), float64(p.words.Size*0.42), float64(p.words.Size*0.15)
	neck := tip.Plus(from.Times(head))
	tail := tip.Plus(from.Times(float64(long)))
	shape := render.Polygon(tip, neck.Plus(n.Times(half)), neck.Plus(n.Times(shaft)), tail.Plus(n.Times(shaft)), tail.Minus(n.Times(shaft)), neck.Minus(n.Times(shaft)), neck.Minus(n.Times(half)))
	p.add(render.Outlined("", shape, render.InkMain, render.Pen{Width: p.st.Thin.Width, Ink: render.InkField})...)
}
