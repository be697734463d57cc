package view

import (
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// BedCorner draws the bed without its mattresses in one view from a corner, without hidden lines. Turn is how far, in degrees, who looks
// has gone round from the front towards the right end, tilt how far up. The projection is parallel. Its origin is the middle of the bed at
// the floor, and the scale that a box gives holds for every turn, so that a bed that is turned neither jumps nor grows. Notches are not
// seen. What hangs on the wall is left out.
func BedCorner(b *bunk.Bed, turn, tilt float64, o Options) render.Drawing {
	v := newCorner(b, turn, tilt, o)
	if o.W > 0 && o.H > 0 {
		v.settle(&o)
	}
	return o.draw("Bed from a corner", b.Long, v.high, func(c *canvas) {
		v.canvas = c
		v.paint()
	})
}

// A cornerView looks at the bed from a corner. Right and up are the directions on paper, toward the one to who looks.
type cornerView struct {
	*canvas
	b                 *bunk.Bed
	right, up, toward geom.V3
	mid               geom.V3 // what the origin is of
	high              float64
	blocks            []block3
	kept, spare       geom.Polygon // see overlapOf
}

func newCorner(b *bunk.Bed, turn, tilt float64, o Options) *cornerView {
	st, ct := math.Sincos(turn * math.Pi / 180)
	su, cu := math.Sincos(tilt * math.Pi / 180)
	v := &cornerView{
		b: b, mid: geom.V3{X: b.Long / 2, Y: -b.Wide / 2},
		right:  geom.V3{X: ct, Y: st},
		up:     geom.V3{X: -st * su, Y: ct * su, Z: cu},
		toward: geom.V3{X: st * cu, Y: -ct * cu, Z: su},
	}
	for i := range b.Parts {
		if p := &b.Parts[i]; p.Frame == furniture.OnBed {
			v.blocks = append(v.blocks, v.block(p, o.Mirror))
		}
	}
	return v
}

// flat returns where a point lies on paper, in mm, x to the right and y up.
func (v *cornerView) flat(q geom.V3) geom.V2 {
	q = q.Sub(v.mid)
	return geom.V2{X: q.Dot(v.right), Y: q.Dot(v.up)}
}

// settle gives a box the scale at which the bed keeps within it however it is turned, and an origin that stays.
func (v *cornerView) settle(o *Options) {
	radius, top, foot := 0.0, math.Inf(-1), math.Inf(1)
	for i := range v.blocks {
		for _, q := range v.blocks[i].at {
			r := q.XY().Dist(v.mid.XY())
			radius = max(radius, r)
			high, deep := q.Z*v.up.Z, r*math.Hypot(v.up.X, v.up.Y)
			top, foot = max(top, high+deep), min(foot, high-deep)
		}
	}
	if o.Scale <= 0 {
		wide := float64(o.W - 2*edge)
		if o.Names {
			wide -= 2 * float64(v.nameRoom(o.Style()))
		}
		o.Scale = max(min(wide/(2*radius), float64(o.H-2*edge)/(top-foot)), 1e-4)
	}
	if o.Origin == nil {
		o.Origin = &render.Point{X: o.W / 2, Y: o.H/2 + render.Paper(o.Scale*(top+foot)/2)}
	}
}

// block3 is one part as a convex body with six faces: axis k of its box, near side then far side.
type block3 struct {
	part      *furniture.Part
	at        [8]geom.V3
	faces     [6]face3
	lo, hi    geom.V2 // bounds on paper
	far, near float64
	outline   geom.Polygon // on paper, anticlockwise
	solid     int          // which part it is, or is a piece of
}

// face3 is one face: its corners, and the plane n·p = c with n outwards.
type face3 struct {
	corners [4]int
	n       geom.V3
	c       float64
	toward  float64 // how much it faces who looks
	cut     bool    // no face of the part but where a block was cut in two
}

// leastTurned is the least that a face turns to who looks to be seen.
const leastTurned = 1e-9

// block looks at a part.
func (v *cornerView) block(p *furniture.Part, mirrored bool) block3 {
	b := block3{part: p, at: p.Corners(), solid: len(v.blocks)}
	for i := range b.at {
		if mirrored {
			b.at[i].X = v.b.Long - b.at[i].X
		}
		v.high = max(v.high, b.at[i].Z)
	}
	b.look(v)
	return b
}

// look works out everything about a block that follows from its corners.
func (b *block3) look(v *cornerView) {
	var mid geom.V3
	for _, q := range b.at {
		mid = mid.Add(q.Mul(1.0 / 8))
	}
	for k := range b.faces {
		axis, side := k/2, k%2
		i, j := 1<<((axis+1)%3), 1<<((axis+2)%3)
		first := side << axis
		f := face3{corners: [4]int{first, first | i, first | i | j, first | j}}
		p, q, r := b.at[f.corners[0]], b.at[f.corners[1]], b.at[f.corners[3]]
		f.n = q.Sub(p).Cross(r.Sub(p))
		f.n = f.n.Mul(1 / f.n.Len())
		if f.n.Dot(p.Sub(mid)) < 0 {
			f.n = f.n.Mul(-1)
		}
		f.c, f.toward, f.cut = f.n.Dot(p), f.n.Dot(v.toward), b.faces[k].cut
		b.faces[k] = f
	}
	b.flatten(v)
}

// flatten lays the block on paper.
func (b *block3) flatten(v *cornerView) {
	var flat [8]geom.V2
	b.far, b.near = math.Inf(1), math.Inf(-1)
	for i, q := range b.at {
		flat[i] = v.flat(q)
		d := q.Dot(v.toward)
		b.far, b.near = min(b.far, d), max(b.near, d)
	}
	b.outline = geom.Hull(flat[:])
	b.lo, b.hi = b.outline.Bounds()
}

// onPage is the point of the paper that a point of the bed stands at.
func (v *cornerView) onPage(q geom.V3) render.Point {
	f := v.flat(q)
	return v.pt(f.X, f.Y)
}

// paint fills the faces, the farthest first, then draws over them every edge as far as it is seen.
func (v *cornerView) paint() {
	for _, b := range inDepth(v, v.blocks) {
		v.fillFaces(&b)
	}
	for i := range v.blocks {
		b := &v.blocks[i]
		var path render.Path
		for _, s := range v.seenEdges(i) {
			path = append(path, render.Line(v.onPage(s.a), v.onPage(s.b))...)
		}
		if len(path) > 0 {
			v.stroke(b.part.ID, path, v.st.Thin)
		}
	}
	if v.o.Names && !v.rough {
		v.nameParts()
	}
}

func (v *cornerView) fillFaces(b *block3) {
	for k := range b.faces {
		f := &b.faces[k]
		if f.toward <= leastTurned || f.cut {
			continue
		}
		var pts [4]render.Point
		for i, c := range f.corners {
			pts[i] = v.onPage(b.at[c])
		}
		v.fill(b.part.ID, render.Polygon(pts[:]...), v.tint(b.part, f))
	}
}

// tint makes the three ways that faces look three tints: up the lightest, to an end the darkest. Drawer fronts keep their own.
func (v *cornerView) tint(p *furniture.Part, f *face3) render.Ink {
	switch {
	case math.Abs(f.n.Z) > 0.7, p.Role == bunk.RoleFront && math.Abs(f.n.Y) > 0.7:
		return render.InkDrawerFront
	case math.Abs(f.n.X) > math.Abs(f.n.Y):
		return render.InkEndGrain
	}
	return render.InkBoard
}
