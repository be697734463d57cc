package view

import (
	"math"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// BedEnd draws the bed from one end, seen from outside: the wall is on the right of the right end and on the left of the left end.
func BedEnd(b *bunk.Bed, end bunk.End, o Options) render.Drawing {
	dir := 1.0
	if end == bunk.Left {
		dir = -1
	}
	v := bedView{b: b, mirrored: o.Mirror}
	v = bedView{b: b, mirrored: o.Mirror,
		across: func(q geom.V3) float64 { return dir * q.Y }, up: func(q geom.V3) float64 { return q.Z }, near: func(q geom.V3) float64 { return dir * v.along(q.X) }}
	return o.draw("Bed from the "+string(end)+" end", b.Wide, v.top(), func(c *canvas) {
		w := v
		w.canvas = c
		w.paintBed()
		lo, hi := w.acrossBounds()
		w.floorLine(lo, hi)
		w.endRules(end)
	})
}

// acrossBounds returns the ends of the bed across the view, ladder and book ledge left out.
func (v *bedView) acrossBounds() (lo, hi float64) {
	a, b := v.across(geom.V3{Y: -v.b.Wide}), v.across(geom.V3{})
	return min(a, b), max(a, b)
}

func (v *bedView) endRules(end bunk.End) {
	lo, hi := v.acrossBounds()
	top := v.top()
	frame := v.frame()
	v.ruleSide(left, frame, rulesOf(v.uprightAt(v.stopsOf(v.endHeights(end)...), lo), v.uprightAt(v.stopsOf(0, top), lo)), 0)
	inside := (v.b.Wide - v.b.Inside.Wide) / 2
	v.ruleSide(below, frame, rulesOf(v.levelAt(v.stopsOf(lo, lo+inside, hi-inside, hi), 0), v.levelAt(v.stopsOf(lo, hi), 0)), 0)
}

// endHeights returns the edges of the members that cross one end.
func (v *bedView) endHeights(end bunk.End) []float64 {
	out := []float64{0}
	edge := 0.0
	if end == bunk.Right {
		edge = v.b.Long
	}
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		lo, hi := p.Box.Bounds()
		across := hi.Y-lo.Y > v.b.Wide/2 && hi.Z-lo.Z < v.b.Wide/2
		if across && (p.Role == bunk.RoleMember || p.Role == bunk.RoleEndBoard || p.Role == bunk.RoleClimbSlat) && math.Abs(v.along((hi.X+lo.X)/2)-edge) < 100 {
			out = append(out, lo.Z, hi.Z)
		}
	}
	return out
}
