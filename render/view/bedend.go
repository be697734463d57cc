package view

import (
	"fmt"
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// BedEnd draws the bed from one end, seen from outside: the wall is on the right of the right end and on the left of the left end.
func BedEnd(b *bunk.Bed, end bunk.End, o Options) render.Drawing {
	v := endOf(b, end, o)
	return o.draw("Bed from the "+string(end)+" end", b.Wide, v.top(), v.onCanvas(func(w *bedView) { w.paintEnd(end) }))
}

// endOf looks at one end, as the bed stands.
func endOf(b *bunk.Bed, end bunk.End, o Options) *bedView {
	dir := 1.0
	if end == bunk.Left {
		dir = -1
	}
	v := &bedView{b: b, mirrored: o.Mirror}
	v.across = func(q geom.V3) float64 { return dir * q.Y }
	v.up = func(q geom.V3) float64 { return q.Z }
	v.near = func(q geom.V3) float64 { return dir * v.along(q.X) }
	return v
}

func (v *bedView) paintEnd(end bunk.End) {
	seen := v.paintBed(v.outlines())
	v.hidden(bunk.RoleLedge)
	lo, hi := v.spread(seen)
	v.floorLine(lo.X, hi.X)
	v.wallSide(end)
	v.names(seen, v.ofRole(bunk.RoleLedge), bunk.RolePost, bunk.RoleStile)
	v.endRules(end)
}

// wallSide marks the side that stands at the wall with a heavy line.
func (v *bedView) wallSide(end bunk.End) {
	out := v.st.Gap * 0.8
	if end == bunk.Left {
		out = -out
	}
	over := render.Point{Y: -v.st.Tick * 1.2}
	foot, head := v.pt(0, 0).Plus(render.Point{X: out}), v.pt(0, v.top()).Plus(render.Point{X: out})
	v.stroke("wall", render.Line(foot, head.Plus(over)), v.st.Cut)
	if v.o.Beside { // the heading says it
		return
	}
	anchor := render.Left
	if end == bunk.Left {
		anchor = render.Right
	}
	at := head.Plus(render.Point{X: out * 2})
	v.add(render.Words("wall", v.st.Body.Text(at, "wall side", render.InkSoft, anchor).Middled()))
}

// acrossBounds returns the ends of the bed across the view, ladder and book ledge left out.
func (v *bedView) acrossBounds() (lo, hi float64) {
	a, b := v.across(geom.V3{Y: -v.b.Wide}), v.across(geom.V3{})
	return min(a, b), max(a, b)
}

// endRules dimensions heights on the side of the front, the steps of a ladder at this end on the other, widths below, the way in above. In
// little room only the width over all.
func (v *bedView) endRules(end bunk.End) {
	lo, hi := v.acrossBounds()
	frame := v.frame()
	if v.o.Sparse {
		v.ruleApart(below, frame, rulesOf(v.levelAt(v.stopsOf(lo, hi), 0)))
		return
	}
	out := v.outmost(lo, hi)
	front, wall := left, right
	if end == bunk.Left {
		front, wall = right, left
	}
	x := map[side]float64{left: slices.Min(append([]float64{lo}, out...)), right: slices.Max(append([]float64{hi}, out...))}
	heights, note := v.endHeights()
	if v.o.Beside { // the heights of the frame stand beside the view of the front
		heights = v.stopsOf(0, v.top())
		if s := v.b.Steps; s != nil {
			heights = v.stopsOf(append([]float64{0}, s.Tops...)...)
		}
		v.ruleApart(front, frame, rulesOf(v.uprightAt(heights, x[front])))
	} else {
		v.ruleApart(front, frame, rulesOf(v.uprightAt(heights, x[front]), v.uprightAt(v.stopsOf(0, v.top()), x[front])))
		if s := v.b.Steps; s != nil && v.seenFrom(end, s.Side) {
			v.ruleApart(wall, frame.Grow(v.st.Gap), rulesOf(v.uprightAt(v.stopsOf(append([]float64{0}, s.Tops...)...), x[wall])))
		}
	}
	if w := v.b.WayIn; v.seenFrom(end, w.Side) {
		first := len(v.marks)
		a, b := v.across(geom.V3{Y: -w.From}), v.across(geom.V3{Y: -w.To})
		up := frame
		up.Min.Y -= v.st.Tick * 1.2 // clear of the wall's line
		v.ruleApart(above, up, rulesOf(v.levelAt(v.stopsOf(lo, a, b, hi), v.top())))
		v.wordsOver(v.marks[first:], v.pt((a+b)/2, 0).X, "way in")
	}
	a, b := v.insideWide()
	stops := append(out, lo, v.across(geom.V3{Y: a}), v.across(geom.V3{Y: b}), hi)
	first := len(v.marks)
	v.ruleApart(below, frame, rulesOf(v.levelAt(v.stopsOf(stops...), 0), v.levelAt(v.stopsOf(lo, hi), 0)))
	v.wordsUnder(v.marks[first:], (lo+hi)/2, note...)
}

// seenFrom tells whether a side of the bed as built is the end that is seen.
func (v *bedView) seenFrom(end bunk.End, side string) bool {
	other := bunk.Left
	if end == bunk.Left {
		other = bunk.Right
	}
	return side == string(end) && !v.mirrored || side == string(other) && v.mirrored
}

// endHeights returns the edges of the members that cross the end that is seen. Members that are all equally wide get no dimension of
// their own; a note says how wide they are.
func (v *bedView) endHeights() (row, []string) {
	type member struct {
		lo, hi float64
		slat   bool
	}
	var list []member
	most := v.nearest()
	for _, b := range v.outlines() {
		size := b.hi.Sub(b.lo)
		crosses := b.role == bunk.RoleMember || b.role == bunk.RoleEndBoard || b.role == bunk.RoleClimbSlat
		if crosses && size.X > v.b.Wide/2 && size.Y < v.b.Wide/2 && b.near > most-endDeep {
			list = append(list, member{b.lo.Y, b.hi.Y, b.role == bunk.RoleClimbSlat})
		}
	}
	slices.SortFunc(list, func(a, b member) int { return int(a.lo - b.lo) })
	r, slats, wide := row{stops: []float64{0}}, 0, 0.0
	add := func(to float64, words string) {
		if to-r.stops[len(r.stops)-1] >= shut {
			r.stops, r.spans = append(r.stops, to), append(r.spans, render.Span{Words: words})
		}
	}
	for _, m := range list {
		if m.slat && v.o.Beside { // beside other views there is no room for a dimension of every gap
			slats, wide = slats+1, m.hi-m.lo
			continue
		}
		last := r.stops[len(r.stops)-1]
		if m.hi <= last+shut {
			continue
		}
		add(m.lo, v.dim(m.lo-last, true))
		words := v.dim(m.hi-max(m.lo, last), true)
		if m.slat && m.lo >= last-shut {
			words, slats, wide = "", slats+1, m.hi-m.lo
		}
		add(m.hi, words)
	}
	if slats == 0 {
		return r, nil
	}
	return r, []string{fmt.Sprintf("%d climbing slats, each %s wide", slats, v.o.Length(wide))}
}

// endDeep is how far in from the outermost face of an end its members lie, mm.
const endDeep = 150.0

// nearest returns how near the nearest part of the bed's frame is.
func (v *bedView) nearest() float64 {
	return max(v.near(geom.V3{}), v.near(geom.V3{X: v.b.Long}))
}
