package view

import (
	"cmp"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// How thick walls are drawn, in mm. Nobody reads the thickness of a wall in a room: a framed wall with board on both sides, and a
// masonry wall of one brick (common practice, no source).
const (
	framedWall  = 115.0
	masonryWall = 220.0
)

// planWall is one wall cut through.
type planWall struct {
	w              *fit.Wall
	ref            string
	deep           float64
	outerA, outerB geom.V2 // where its outer face meets those of its neighbours
	gaps           []gap   // openings, sorted
}

// gap is a stretch that is open.
type gap struct{ lo, hi float64 }

func sortGaps(list []gap) {
	slices.SortFunc(list, func(a, b gap) int { return cmp.Compare(a.lo, b.lo) })
}

// point returns a point of the wall, out counted outwards from its inner face.
func (w *planWall) point(along, out float64) geom.V2 { return w.w.Point(along, -out) }

func wallDeep(kind string) float64 {
	if kind == "masonry" {
		return masonryWall
	}
	return framedWall
}

// planWalls works out the outer faces.
func (p *planner) planWalls() {
	n := len(p.s.Walls)
	p.walls = make([]planWall, n)
	for i := range p.walls {
		w := &p.s.Walls[i]
		read, _ := p.s.Job.Room.Wall(w.Key)
		p.walls[i] = planWall{w: w, ref: "wall." + w.Key, deep: wallDeep(read.Kind)}
	}
	for i := range p.walls {
		w, next := &p.walls[i], &p.walls[(i+1)%n]
		w.outerB = outerCorner(w, next)
		next.outerA = w.outerB
	}
}

// sharpest keeps the outer corner of a very sharp angle near the wall, in wall thicknesses.
const sharpest = 3

// outerCorner returns where the outer faces of two neighbours meet.
func outerCorner(w, next *planWall) geom.V2 {
	a, b := w.point(w.w.Len, w.deep), next.point(0, next.deep)
	cross := w.w.Dir.Cross(next.w.Dir)
	if cross > -1e-3 && cross < 1e-3 {
		return a
	}
	at := a.Add(w.w.Dir.Mul(b.Sub(a).Cross(next.w.Dir) / cross))
	if far := sharpest * max(w.deep, next.deep); at.Dist(w.w.B) > far {
		at = w.w.B.Add(at.Sub(w.w.B).Unit().Mul(far))
	}
	return at
}

// drawWalls draws floor and walls; the openings are left out of the walls.
func (p *planner) drawWalls() {
	p.fill("floor", p.floor(), p.ground())
	for i := range p.walls {
		p.wallBody(&p.walls[i])
	}
	for i := range p.walls {
		p.wallEdges(&p.walls[i])
	}
	p.baseboards()
}

// floor is the outline of the room; of one that is all but a rectangle the upright rectangle round it, since the walls cover its edges and
// outputs fill it faster.
func (p *planner) floor() render.Path {
	shape := p.shape(p.s.Outline)
	box := shape.Bounds()
	for _, w := range p.walls {
		c := p.on(w.w.A)
		aside := max(min(c.X-box.Min.X, box.Max.X-c.X), min(c.Y-box.Min.Y, box.Max.Y-c.Y))
		if aside > p.mm(framedWall/2) {
			return shape
		}
	}
	if len(p.walls) != 4 {
		return shape
	}
	return render.Box(box)
}

// wallBody fills the pieces of a wall between its openings.
func (p *planner) wallBody(w *planWall) {
	at := 0.0
	for _, g := range w.gaps {
		p.wallPiece(w, at, g.lo)
		at = max(at, g.hi)
	}
	p.wallPiece(w, at, w.w.Len)
	for _, g := range w.gaps {
		p.fill("", p.shape(geom.Polygon{w.point(g.lo, 0), w.point(g.hi, 0), w.point(g.hi, w.deep), w.point(g.lo, w.deep)}), p.ground())
	}
}

func (p *planner) wallPiece(w *planWall, lo, hi float64) {
	if hi-lo < 0.5 {
		return
	}
	outerLo, outerHi := w.point(lo, w.deep), w.point(hi, w.deep)
	if lo <= 0 {
		outerLo = w.outerA
	}
	if hi >= w.w.Len {
		outerHi = w.outerB
	}
	quad := p.shape(geom.Polygon{w.point(lo, 0), w.point(hi, 0), outerHi, outerLo})
	if p.paper() {
		p.fill(w.ref, quad, render.InkPaper)
		p.stroke(w.ref, render.Hatch(quad, p.st.Hatch, 45), p.st.Thin)
		return
	}
	ink := p.wallInk(w)
	p.fill(w.ref, quad, ink)
	if hi >= w.w.Len { // closes the seam that is left between two walls where a fill's edge is soft
		p.stroke("", p.line(w.w.B, w.outerB), p.st.Post.In(ink))
	}
}

// wallInk is that of a wall cut through, another for the chosen one.
func (p *planner) wallInk(w *planWall) render.Ink {
	if render.Under(p.o.Chosen, w.ref) {
		return render.InkChosenWall
	}
	return render.InkWallCut
}

// wallEdges draws both faces of a wall and the ends at its openings.
func (p *planner) wallEdges(w *planWall) {
	var edges render.Path
	inner, outer := w.w.A, w.outerA
	for _, g := range w.gaps {
		if g.lo > 0.5 {
			edges = append(edges, render.Polyline(p.on(inner), p.on(w.point(g.lo, 0)), p.on(w.point(g.lo, w.deep)), p.on(outer))...)
		}
		inner, outer = w.point(g.hi, 0), w.point(g.hi, w.deep)
	}
	if n := len(w.gaps); n > 0 {
		if w.gaps[n-1].hi < w.w.Len-0.5 {
			edges = append(edges, render.Polyline(p.on(w.w.B), p.on(inner), p.on(outer), p.on(w.outerB))...)
		}
	} else {
		edges = append(p.line(inner, w.w.B), p.line(outer, w.outerB)...)
	}
	p.stroke(w.ref, edges, p.st.Cut)
}

// baseboards draws the boards at the foot of the walls, seen from above, between the doors.
func (p *planner) baseboards() {
	for i := range p.walls {
		w := &p.walls[i]
		deep := w.w.BaseDeep
		if !(deep > 0) {
			continue
		}
		at := 0.0
		for _, o := range doorways(p.s, w.w) {
			p.baseboard(w, at, o.lo, deep)
			at = max(at, o.hi)
		}
		p.baseboard(w, at, w.w.Len, deep)
	}
}

func (p *planner) baseboard(w *planWall, lo, hi, deep float64) {
	if hi-lo > deep {
		p.stroke(w.ref+".baseboard", p.line(w.w.Point(lo, deep), w.w.Point(hi, deep)), p.st.Extension)
	}
}

// letters puts the letter of every corner outside it.
func (p *planner) letters() {
	for i, l := range []rune(p.s.Job.Room.Outline) {
		n := len(p.walls)
		a, b := &p.walls[(i+n-1)%n], &p.walls[i]
		c := p.on(b.outerA)
		out := p.on(b.w.A.Sub(a.w.In.Add(b.w.In).Unit().Mul(100))).Minus(p.on(b.w.A))
		c = c.Plus(out.Times(float64((p.letterReach() * 0.6) / out.Length())))
		ring := p.st.Corner("corner."+string(l), string(l), c)
		p.add(ring...)
		p.stood = append(p.stood, render.Bounds(ring).Grow(p.st.Gap/2))
	}
}

// letterReach is how far the ring of a corner letter reaches out from the walls.
func (p *planner) letterReach() render.Paper { return p.st.Body.Size*1.9 + p.st.Gap }
