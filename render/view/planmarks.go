package view

import (
	"strconv"
	"strings"

	"bunkwright/render"
	"bunkwright/room/geom"
)

// cutMark shows where the section is cut: along the middle of the mattresses, looking at the wall side of the bed.
func (p *planner) cutMark() {
	if p.o.CutOn == 0 || !p.s.Stands {
		return
	}
	mid := p.s.Bed.Upper.Mattress.C
	along := p.s.ToRoom.Dir(geom.V3{X: 1}).XY()
	look := p.dir(p.s.ToRoom.Dir(geom.V3{Y: 1}).XY())
	from := p.cutEnd(p.s.ToRoom.Point(geom.V3{Y: mid.Y}).XY(), along.Mul(-1), look)
	to := p.cutEnd(p.s.ToRoom.Point(geom.V3{X: p.s.Bed.Long, Y: mid.Y}).XY(), along, look)
	if p.dir(to.Sub(from)).X < 0 { // its name stands after the right end
		from, to = to, from
	}
	p.add(p.st.SectionMark("section", p.on(from), p.on(to), p.dir(to.Sub(from)).Cross(look) < 0)...)
	home := p.on(to).Plus(render.Point{X: p.st.Body.Size * 3, Y: p.st.Body.Size})
	p.nameOf("section", p.on(to), home, farAway, p.words("section,"), p.words("sheet "+strconv.Itoa(p.o.CutOn)))
}

// cutBeyond is how far the mark of the section stands out beyond the bed, mm.
const cutBeyond = 220.0

// cutEnd returns where the mark ends beyond an end of the bed: out in the room, or within a wall that is in the way, on bare ground there;
// a bed that reaches out of the room is no reason for the mark to do so.
func (p *planner) cutEnd(at, dir, look geom.V2) geom.V2 {
	least := -1.0
	if !p.s.Outline.Contains(at) {
		least = -p.s.Bed.Long / 2
	}
	for _, seg := range crossing(p.s.Outline, at, dir) {
		d := seg[1].Sub(at).Dot(dir)
		if d < least || d > cutBeyond {
			continue
		}
		end := at.Add(dir.Mul(d + framedWall/2))
		tip := p.on(end).Plus(render.Point{X: render.Paper(look.X), Y: render.Paper(-look.Y)}.Times(float64(p.st.Tick) * 1.4))
		box := render.Around(p.on(end), tip).Grow(min(p.st.Tick*0.7, p.mm(framedWall/2)-p.st.Cut.Width))
		p.fill("", render.Box(box), p.ground())
		return end
	}
	return at.Add(dir.Mul(cutBeyond))
}

// foot stands under the drawing: what is left out of it, and on the screen a scale bar; a sheet carries its own.
func (p *planner) foot() {
	b := render.Bounds(p.marks)
	top, wide := b.Max.Y+p.st.Gap*2, b.W()
	if !p.paper() {
		wide -= p.scaleBar(b.Max.X, top) + p.st.Gap*4
	}
	if !p.s.Stands {
		words := joined(": ", "The bed is not placed yet", p.s.Wants)
		if p.s.Bed == nil {
			words = joined(": ", "The bed cannot be built", strings.Join(unbuiltWords(p.s, p.o.Unit), "; "))
		}
		at := render.Point{X: b.Min.X, Y: top + p.st.Body.Size}
		p.add(p.st.Body.Paragraph("bed", at, words, max(wide, 40), render.InkCannotTell)...)
	}
}

// scaleBar draws the scale with its right upper end at a place, and returns its width.
func (p *planner) scaleBar(right, top render.Paper) render.Paper {
	unit, n, name := p.o.barOf(p.k)
	marks := p.st.ScaleBar("scale", render.Point{}, unit, n, name)
	box := render.Bounds(marks)
	p.add(render.Shift(marks, render.Point{X: right - box.Max.X, Y: top - box.Min.Y})...)
	return box.W()
}
