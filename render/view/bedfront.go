package view

import (
	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// BedFront draws the bed from the front, as built: heights, lengths, the way in and the ladder's steps. Its origin is the bed's left end
// at the floor.
func BedFront(b *bunk.Bed, o Options) render.Drawing {
	v := bedView{b: b, mirrored: o.Mirror}
	v = bedView{b: b, mirrored: o.Mirror,
		across: func(q geom.V3) float64 { return v.along(q.X) }, up: func(q geom.V3) float64 { return q.Z }, near: func(q geom.V3) float64 { return -q.Y }}
	return o.draw("Bed from the front", b.Long, v.top(), func(c *canvas) {
		w := v
		w.canvas = c
		w.paintBed()
		w.hiddenSlats()
		w.floorLine(0, b.Long)
		w.frontRules()
	})
}

func (v *bedView) frontRules() {
	top, long := v.top(), v.b.Long
	frame := v.frame()
	v.ruleSide(left, frame, rulesOf(v.uprightAt(v.stopsOf(v.frameHeights()...), 0), v.uprightAt(v.stopsOf(0, top), 0)), 0)
	if s := v.b.Steps; s != nil {
		stops := append([]float64{0}, s.Tops...)
		v.ruleSide(right, frame, rulesOf(v.uprightAt(v.stopsOf(stops...), long)), 0)
	}
	var posts []float64
	for i := range v.b.Parts {
		if p := &v.b.Parts[i]; p.Role == bunk.RolePost {
			lo, hi := p.Box.Bounds()
			posts = append(posts, v.along(lo.X), v.along(hi.X))
		}
	}
	v.ruleSide(below, frame, rulesOf(v.levelAt(v.stopsOf(append([]float64{0, long}, posts...)...), 0), v.levelAt(v.stopsOf(0, long), 0)), 0)
	if w := v.b.WayIn; w.Side == "front" {
		v.ruleSide(above, frame, rulesOf(v.levelAt(v.stopsOf(0, v.along(w.From), v.along(w.To), long), top)), 0)
	}
}
