package view

import (
	"strconv"

	"bunkwright/render"
	"bunkwright/room/geom"
)

// cutMark shows where the section is cut: along the middle of the mattresses, looking at the wall side of the bed.
func (p *planner) cutMark() {
	if p.o.CutOn == 0 || !p.s.Stands {
		return
	}
	m := p.s.Bed.Upper.Mattress
	a, b := m.C, m.C
	a.X, b.X = -cutBeyond, p.s.Bed.Long+cutBeyond
	from, to := p.s.ToRoom.Point(a), p.s.ToRoom.Point(b)
	look := p.dir(p.s.ToRoom.Dir(geom.V3{Y: 1}).XY())
	way := p.dir(to.Sub(from).XY())
	marks := p.st.SectionMark("section", p.on(from.XY()), p.on(to.XY()), way.Cross(look) < 0)
	p.add(marks...)
	p.name("section", p.on(to.XY()).Plus(render.Point{X: p.st.Body.Size * 3, Y: p.st.Body.Size}), 12,
		p.words("section,"), p.words("sheet "+strconv.Itoa(p.o.CutOn)))
}

// cutBeyond is how far the mark of the section stands out beyond the bed, mm.
const cutBeyond = 220

// foot stands under the drawing: what is left out of it, and on the screen a scale bar; a sheet carries its own.
func (p *planner) foot() {
	b := render.Bounds(p.marks)
	top, wide := b.Max.Y+p.st.Gap*2, b.W()
	if !p.paper() {
		unit, n, name := p.o.barOf(p.k)
		marks := p.st.ScaleBar("scale", render.Point{}, unit, n, name)
		box := render.Bounds(marks)
		p.add(render.Shift(marks, render.Point{X: b.Max.X - box.Max.X, Y: top - box.Min.Y})...)
		wide -= box.W() + p.st.Gap*4
	}
	if !p.s.Stands {
		words := joined(": ", "The bed is not placed yet", p.s.Wants)
		at := render.Point{X: b.Min.X, Y: top + p.st.Body.Size}
		p.add(p.st.Body.Paragraph("bed", at, words, max(wide, 40), render.InkCannotTell)...)
	}
}
