package view

import (
	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// BedFront draws the bed from the front, as built: heights, lengths, the way in and the ladder's steps. Its origin is the bed's left end
// at the floor.
func BedFront(b *bunk.Bed, o Options) render.Drawing {
	v := frontOf(b, o)
	return o.draw("Bed from the front", b.Long, v.top(), v.onCanvas((*bedView).paintFront))
}

// frontOf looks at the bed's front.
func frontOf(b *bunk.Bed, o Options) *bedView {
	v := &bedView{b: b, mirrored: o.Mirror}
	v.across = func(q geom.V3) float64 { return v.along(q.X) }
	v.up = func(q geom.V3) float64 { return q.Z }
	v.near = func(q geom.V3) float64 { return -q.Y }
	return v
}

// onCanvas makes a function that paints the view on a canvas.
func (v *bedView) onCanvas(paint func(*bedView)) func(*canvas) {
	v.outlines()
	return func(c *canvas) {
		w := *v
		w.canvas = c
		paint(&w)
	}
}

func (v *bedView) paintFront() {
	seen := v.paintBed(v.outlines())
	v.hidden(bunk.RoleSlat)
	lo, hi := v.spread(seen)
	v.floorLine(lo.X, hi.X)
	v.names(seen, v.ofRole(bunk.RoleSlat), bunk.RolePost, bunk.RoleStile, bunk.RoleTread, bunk.RoleUpright, bunk.RoleClimbSlat, bunk.RoleBookLedge)
	if v.o.Beside && !v.o.Sparse {
		v.frontRulesBeside()
	} else {
		v.frontRules()
	}
}

// ofRole returns the bodies of one role.
func (v *bedView) ofRole(role string) []bedBody {
	var list []bedBody
	for _, b := range v.outlines() {
		if b.role == role {
			list = append(list, b)
		}
	}
	return list
}

// frontRules dimensions the steps of the ladder on its side and heights on the other; below lengths between the
// posts, between the ends and over all, above the way in. In little room only what is over all.
func (v *bedView) frontRules() {
	top, long := v.top(), v.b.Long
	frame := v.frame()
	if v.o.Sparse {
		v.ruleApart(left, frame, rulesOf(v.uprightAt(v.stopsOf(0, top), 0)))
		v.ruleApart(below, frame, rulesOf(v.levelAt(v.stopsOf(0, long), 0)))
		return
	}
	x := map[side]float64{left: 0, right: long}
	heights, steps := left, right
	if s := v.b.Steps; s != nil && s.Side == "front" {
		if lo, hi := s.Foot.Bounds(); v.along((lo.X+hi.X)/2) < long/2 {
			heights, steps = right, left
		}
		v.ruleApart(steps, frame, rulesOf(v.uprightAt(v.stopsOf(append([]float64{0}, s.Tops...)...), x[steps])))
	}
	v.ruleApart(heights, frame, rulesOf(v.uprightAt(v.stopsOf(v.frameHeights()...), x[heights]), v.uprightAt(v.stopsOf(0, top), x[heights])))
	stops := append([]float64{0, long}, v.postEdges()...)
	stops = append(stops, v.outmost(0, long)...)
	from, to := v.insideAlong()
	v.ruleApart(below, frame, rulesOf(v.levelAt(v.stopsOf(stops...), 0), v.levelAt(v.stopsOf(from, to), 0), v.levelAt(v.stopsOf(0, long), 0)))
	v.frontWayIn(frame)
}

// frontRulesBeside leaves the steps of the ladder to the view of the end, and the posts to the list of boards: the words of dimensions do
// not shrink, and each row takes room from the bed.
func (v *bedView) frontRulesBeside() {
	top, long, frame := v.top(), v.b.Long, v.frame()
	heights, x := left, 0.0
	if s := v.b.Steps; s != nil && s.Side == "front" {
		if lo, hi := s.Foot.Bounds(); v.along((lo.X+hi.X)/2) < long/2 {
			heights, x = right, long
		}
	}
	v.ruleApart(heights, frame, rulesOf(v.uprightAt(v.stopsOf(v.frameHeights()...), x), v.uprightAt(v.stopsOf(0, top), x)))
	from, to := v.insideAlong()
	out := v.outmost(0, long)
	v.ruleApart(below, frame, rulesOf(v.levelAt(v.stopsOf(append(out, 0, from, to, long)...), 0), v.levelAt(v.stopsOf(0, long), 0)))
	v.frontWayIn(frame)
}

// frontWayIn dimensions the way in above, where it is in the front.
func (v *bedView) frontWayIn(frame render.Rect) {
	top, long := v.top(), v.b.Long
	if w := v.b.WayIn; w.Side == "front" {
		first := len(v.marks)
		v.ruleApart(above, frame, rulesOf(v.levelAt(v.stopsOf(0, v.along(w.From), v.along(w.To), long), top)))
		v.wordsOver(v.marks[first:], v.pt(v.along((w.From+w.To)/2), 0).X, "way in")
	}
}

// postEdges returns where the posts begin and end along the front.
func (v *bedView) postEdges() []float64 {
	var edges []float64
	for _, b := range v.outlines() {
		if b.role == bunk.RolePost && b.box.C.Y < -v.b.Wide/2 {
			edges = append(edges, b.lo.X, b.hi.X)
		}
	}
	return edges
}
