package view

import (
	"bunkwright/furniture/bunk"
	"bunkwright/render"
)

// BedViews draws the bed from the front, from one end and from above in one scale: front and end on one floor line, the view from above
// straight under the front.
func BedViews(b *bunk.Bed, end bunk.End, o Options) render.Drawing {
	front, side, above := frontOf(b, o), endOf(b, end, o), aboveOf(b, o)
	return o.draw("The bed", b.Long+b.Wide, front.top()+b.Wide, func(c *canvas) {
		air := c.st.Heading.Leading()
		a := c.alone(front.onCanvas((*bedView).paintFront))
		e := c.alone(side.onCanvas(func(v *bedView) { v.paintEnd(end) }))
		p := c.alone(above.onCanvas((*bedView).paintAbove))
		fa, fe, fp := render.Bounds(a), render.Bounds(e), render.Bounds(p)
		right := render.Point{X: fa.Max.X - fe.Min.X + air*2}
		under := render.Point{Y: max(fa.Max.Y, fe.Max.Y) - fp.Min.Y + air*3}
		c.titled(a, render.Point{}, "From the front")
		c.titled(e, right, "From the "+string(end)+" end")
		c.titled(p, under, "From above")
	})
}

// BedSides draws the bed from the front and, beside it on one floor line, from one end, in one scale. EndFrom is where the view of the end
// begins on the page.
func BedSides(b *bunk.Bed, end bunk.End, o Options) (d render.Drawing, endFrom render.Paper) {
	front, side := frontOf(b, o), endOf(b, end, o)
	d = o.draw("The bed", b.Long+b.Wide, front.top(), func(c *canvas) {
		a := c.alone(front.onCanvas((*bedView).paintFront))
		e := c.alone(side.onCanvas(func(v *bedView) { v.paintEnd(end) }))
		endFrom = render.Bounds(a).Max.X + c.st.Heading.Leading()
		c.add(render.Shift(a, c.at)...)
		c.add(render.Shift(e, c.at.Plus(render.Point{X: endFrom - render.Bounds(e).Min.X}))...)
	})
	return d, d.Origin.X + endFrom
}

// alone paints a view on a canvas of its own, with the same scale and its origin at the origin of the paper.
func (c *canvas) alone(paint func(*canvas)) []render.Mark {
	own := newCanvas(c.o, c.k)
	own.at = render.Point{}
	paint(own)
	return own.marks
}

// titled adds marks, moved, with a heading over their left end.
func (c *canvas) titled(marks []render.Mark, by render.Point, words string) {
	by = by.Plus(c.at)
	b := render.Bounds(marks)
	at := b.Min.Plus(by).Minus(render.Point{Y: c.st.Heading.Leading() * 0.7})
	c.add(render.Words("", c.st.Heading.Text(at, words, render.InkMain, render.Left)))
	c.add(render.Shift(marks, by)...)
}
