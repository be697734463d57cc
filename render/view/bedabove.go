package view

import (
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// BedAbove draws the bed from above, the wall side at the top, the upper mattress left out so that the slats are seen.
func BedAbove(b *bunk.Bed, o Options) render.Drawing {
	v := bedView{b: b, mirrored: o.Mirror}
	v = bedView{b: b, mirrored: o.Mirror,
		across: func(q geom.V3) float64 { return v.along(q.X) }, up: func(q geom.V3) float64 { return q.Y }, near: func(q geom.V3) float64 { return q.Z }}
	return o.draw("Bed from above", b.Long, b.Wide, func(c *canvas) {
		w := v
		w.canvas = c
		w.paintFrame()
		w.aboveRules()
	})
}

// paintFrame draws what reaches up to the upper bed, but the mattresses.
func (v *bedView) paintFrame() {
	list := v.outlines()
	for i := range list {
		low := list[i].near < v.b.Upper.Frame
		if !low && list[i].role != roleMattress && !covered(list[i], list[i+1:]) {
			v.paintBody(&list[i])
		}
	}
}

func (v *bedView) aboveRules() {
	long, wide := v.b.Long, v.b.Wide
	frame := v.frame()
	x := (long - v.b.Inside.Long) / 2
	y := (wide - v.b.Inside.Wide) / 2
	v.ruleSide(below, frame, rulesOf(v.levelAt(v.stopsOf(0, x, long-x, long), -wide), v.levelAt(v.stopsOf(0, long), -wide)), 0)
	v.ruleSide(left, frame, rulesOf(v.uprightAt(v.stopsOf(-wide, y-wide, -y, 0), 0), v.uprightAt(v.stopsOf(-wide, 0), 0)), 0)
	var slats []float64
	for i := range v.b.Parts {
		if p := &v.b.Parts[i]; p.Role == bunk.RoleSlat && p.Box.C.Z > v.b.Lower.MattressTop {
			lo, hi := p.Box.Bounds()
			slats = append(slats, v.along(lo.X), v.along(hi.X))
		}
	}
	if len(slats) >= 6 { // the first few show the gap
		v.ruleSide(above, frame, rulesOf(v.levelAt(v.stopsOf(firstGaps(x, slats)...), 0)), 0)
	}
}

// firstGaps returns the stops that show the first two slats and the gaps beside them.
func firstGaps(from float64, slats []float64) []float64 {
	slices.Sort(slats)
	return append([]float64{from}, slats[:4]...)
}
