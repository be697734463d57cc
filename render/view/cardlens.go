package view

import (
	"bunkwright/furniture/ask"
	"bunkwright/render"
)

// magnify shows in a circle which edge of an opening is meant.
func (f *cardFace) magnify(t cardThing, a, b render.Point) {
	if t.table != "window" && t.table != "door" || f.c.Shown.From.At != ask.AtCorner || !render.Aligned(a.Y, b.Y) {
		return
	}
	r := f.box.H() * 0.21
	side := render.Paper(1) // of the opening, seen from its edge
	if onLeft := b.X < f.pt((t.x0+t.x1)/2, 0).X; !onLeft {
		side = -1
	}
	c := render.Point{X: f.pt(t.x0, 0).X - r - f.words.Size*1.6, Y: f.box.Min.Y + r + f.words.Size*0.4}
	if c.X-r < f.box.Min.X+f.words.Size*0.4 {
		c.X = f.pt(t.x1, 0).X + r + f.words.Size*1.6
	}
	if c.X-r < f.box.Min.X || c.X+r > f.box.Max.X {
		return
	}
	f.add(render.Stroke("", render.Line(b, c), f.st.Behind))
	glass := render.InkGlass
	if t.table == "door" {
		glass = render.InkDrawerFront
	}
	f.add(render.Fill("", render.Circle(c, r), render.InkField))
	f.lens(c, r, 0, side, glass)
	f.lens(c, r, 0, -side*0.45, render.InkBoard)
	f.add(render.Stroke("", render.Line(render.Point{X: c.X, Y: c.Y - r}, render.Point{X: c.X, Y: c.Y + r}), f.st.Cut))
	f.add(render.Stroke("", render.Circle(c, r), f.st.Post))
	f.arrow(c, render.Point{X: side}, r*0.85)
}

// lens fills the part of a circle between two upright lines, given as shares of its radius from its middle.
func (f *cardFace) lens(c render.Point, r render.Paper, from, to render.Paper, ink render.Ink) {
	lo, hi := min(from, to), max(from, to)
	box := render.Rect{Min: render.Point{X: c.X + r*lo, Y: c.Y - r}, Max: render.Point{X: c.X + r*hi, Y: c.Y + r}}
	for _, m := range render.Fill("", render.Circle(c, r), ink).Clip(box) {
		f.add(m)
	}
	if to != 1 && to != -1 {
		x := c.X + r*to
		half := r * 0.89
		f.add(render.Stroke("", render.Line(render.Point{X: x, Y: c.Y - half}, render.Point{X: x, Y: c.Y + half}), f.st.Seen))
	}
}
