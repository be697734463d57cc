package view

import (
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// BedAbove draws the bed from above, the wall side at the top, the mattresses left out so that the slats are seen.
func BedAbove(b *bunk.Bed, o Options) render.Drawing {
	v := aboveOf(b, o)
	return o.draw("Bed from above", b.Long, b.Wide, v.onCanvas((*bedView).paintAbove))
}

// aboveOf looks down on the bed.
func aboveOf(b *bunk.Bed, o Options) *bedView {
	v := &bedView{b: b, mirrored: o.Mirror}
	v.across = func(q geom.V3) float64 { return v.along(q.X) }
	v.up = func(q geom.V3) float64 { return q.Y }
	v.near = func(q geom.V3) float64 { return q.Z }
	return v
}

// paintAbove draws the upper bed with book ledge and ladder, of that every tread; what else stands lower is hidden or left out.
func (v *bedView) paintAbove() {
	list := slices.DeleteFunc(slices.Clone(v.outlines()), func(b bedBody) bool {
		return b.near < v.b.Upper.Frame && b.role != bunk.RoleTread || b.role == roleMattress
	})
	seen := v.paintBed(list)
	v.wallAbove()
	v.stroke(mattressRefs[1], render.Box(v.mattressAbove()), v.st.Behind)
	v.names(seen, nil, bunk.RolePost, bunk.RoleStile)
	v.aboveRules()
}

// mattressAbove is where the upper mattress lies.
func (v *bedView) mattressAbove() render.Rect {
	lo, hi := v.b.Upper.Mattress.Bounds()
	return v.rect(v.along(lo.X), lo.Y, v.along(hi.X), hi.Y)
}

// wallAbove marks the wall side with a heavy line.
func (v *bedView) wallAbove() {
	up := render.Point{Y: -v.st.Gap * 0.8}
	side := render.Point{X: v.st.Tick}
	a, b := v.pt(0, 0).Plus(up).Minus(side), v.pt(v.b.Long, 0).Plus(up).Plus(side)
	v.stroke("wall", render.Line(a, b), v.st.Cut)
	v.add(render.Words("wall", v.st.Body.Text(b.Plus(render.Point{X: v.st.Gap * 1.5}), "wall side", render.InkSoft, render.Left).Middled()))
}

// aboveRules dimensions lengths below, widths on the left, and the slats with their gaps above.
func (v *bedView) aboveRules() {
	long, wide := v.b.Long, v.b.Wide
	frame := v.frameOf(v.outlines())
	frame.Min.Y = min(frame.Min.Y, v.pt(0, 0).Y-v.st.Gap*2)
	from, to := v.insideAlong()
	v.ruleApart(below, frame, rulesOf(v.levelAt(v.stopsOf(0, from, to, long), -wide), v.levelAt(v.stopsOf(0, long), -wide)))
	v.ruleApart(left, frame, rulesOf(v.uprightAt(v.stopsOf(v.depths()...), 0), v.uprightAt(v.stopsOf(-wide, 0), 0)))
	var edges []float64
	for _, b := range v.ofRole(bunk.RoleSlat) {
		if b.near > drawnTop(&v.b.Lower) {
			edges = append(edges, b.lo.X, b.hi.X)
		}
	}
	slices.Sort(edges)
	if len(edges) < 6 {
		return
	}
	row := v.stopsOf(append([]float64{from, to}, edges...)...)
	for i := range row.spans {
		if i != 0 && i != 1 && i != 2 { // the first gaps show what all are
			row.spans[i].Words = ""
		}
	}
	v.ruleApart(above, frame, rulesOf(v.levelAt(row, 0)))
	v.wordsUnder(v.marks, long/2, v.slatsOf(&v.b.Upper)+"; dashed: the mattress")
}

// depths returns the stops across the bed: what stands out in front, the sides, and the room for the mattress.
func (v *bedView) depths() []float64 {
	wide := v.b.Wide
	near, far := v.insideWide()
	out := []float64{-wide, near, far, 0}
	lo, _ := v.spread(v.outlines())
	if lo.Y < -wide-shut {
		out = append(out, lo.Y)
	}
	return out
}
