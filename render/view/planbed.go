package view

import (
	"cmp"
	"slices"
	"strconv"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// bed draws the bed as it stands, seen from over it; one that has no place in the room is left out.
func (p *planner) bed() {
	if !p.s.Stands {
		return
	}
	for i := range p.bodies {
		p.bodyFromAbove(&p.bodies[i])
	}
	p.shelvesOver()
	p.sleepers()
}

// fromAbove returns the bodies of the bed from the lowest up, without what lies wholly under a single thing above it.
func fromAbove(s *fit.Scene) []body {
	if !s.Stands {
		return nil
	}
	bodies := bodiesOf(s)
	slices.SortStableFunc(bodies, func(a, b body) int { return cmp.Compare(a.lo.Z, b.lo.Z) })
	out := make([]body, 0, len(bodies)/2)
	for i := range bodies {
		if !bodies[i].hung && !coveredAbove(&bodies[i], bodies[i+1:]) {
			out = append(out, bodies[i])
		}
	}
	return out
}

func coveredAbove(b *body, higher []body) bool {
	for i := range higher {
		if b.under(&higher[i]) {
			return true
		}
	}
	return false
}

func (p *planner) bodyFromAbove(b *body) {
	outline := b.box.Footprint()
	lo, hi := outline.Bounds()
	p.spots[b.ref] = p.on(lo.Lerp(hi, 0.5))
	pen := p.st.Seen
	if b.role == bunk.RoleSlat || b.role == bunk.RoleTread || b.role == bunk.RoleBlock {
		pen = p.st.Thin
	}
	if b.role == bunk.RolePost && p.paper() {
		p.add(p.st.EndGrain(b.ref, render.Around(p.corners(outline)...), p.st.Thin)...)
		return
	}
	p.outlined(b.ref, p.shape(outline), b.ink(), pen)
}

func (p *planner) corners(q geom.Polygon) []render.Point {
	points := make([]render.Point, len(q))
	for i := range q {
		points[i] = p.on(q[i])
	}
	return points
}

// shelvesOver marks the shelves that hang over the bed.
func (p *planner) shelvesOver() {
	for i := range p.s.Solids {
		b := &p.s.Solids[i]
		if b.Part.Role == bunk.RoleShelf {
			p.stroke(b.Part.ID, p.shape(b.Box.Footprint()), p.st.Behind)
		}
	}
}

// drawers shows them pulled out, and the floor that is kept clear before them.
func (p *planner) drawers() {
	if !p.s.Stands {
		return
	}
	out := p.s.ToRoom.Dir(geom.V3{Y: -1}).XY()
	p.kneeling(out)
	for _, d := range p.s.Bed.Drawers {
		quad := p.inRoom(slab(p.s.ToRoom.Box(d.Shut), out, 0, d.Travel))
		if len(quad) < 3 {
			continue
		}
		p.outlined(d.ID, p.shape(quad), p.ground(), p.st.Behind)
		p.spots[d.ID] = p.on(centroid(quad))
		p.nameIn(d.ID, render.Around(p.corners(quad)...), "drawer, out", render.InkSoft, false)
	}
}

// kneeling marks the floor before the drawers, once for all of them.
func (p *planner) kneeling(out geom.V2) {
	n := len(p.s.Bed.Drawers)
	if n == 0 {
		return
	}
	body := kneelDepth()
	first, last := p.s.Bed.Drawers[0], p.s.Bed.Drawers[n-1]
	a := slab(p.s.ToRoom.Box(first.Shut), out, first.Travel, first.Travel+body)
	b := slab(p.s.ToRoom.Box(last.Shut), out, last.Travel, last.Travel+body)
	whole := p.inRoom(geom.Hull(append(a, b...)))
	if len(whole) < 3 {
		return
	}
	p.stroke("drawers.floor", p.shape(whole), p.st.KeepClear)
	p.nameIn("drawers.floor", render.Around(p.corners(whole)...), "kept clear to stand and kneel", render.InkSoft, false)
}

// inRoom returns the part of a convex outline that lies in the room: what is put in front of a wall is not drawn beyond it.
func (p *planner) inRoom(q geom.Polygon) geom.Polygon {
	if q.Area() < 0 {
		slices.Reverse(q)
	}
	return p.s.Outline.Intersect(q)
}

// kneelDepth is the free floor that somebody before a drawer takes, mm.
func kneelDepth() float64 { return yardstick.Figures("own-drawer-body")[0] }

// slab returns the outline of the stretch before the front of a box, from one distance out to another.
func slab(b geom.Box, out geom.V2, from, to float64) geom.Polygon {
	across := out.Left()
	c := b.C.XY()
	face := b.Reach(out.At(0))
	half := b.Reach(across.At(0))
	at := func(a, o float64) geom.V2 { return c.Add(across.Mul(a)).Add(out.Mul(face + o)) }
	return geom.Polygon{at(-half, from), at(half, from), at(half, to), at(-half, to)}
}

// pillowAt returns the outline of a pillow of the usual size, 40 mm from the head end of a mattress and at least 20 mm from its sides.
func pillowAt(mattress geom.Box, headAtRight bool) geom.Polygon {
	size := yardstick.Figures(yardstick.Pillow)
	h := mattress.Half
	long, wide := min(size[1], 2*h.X-40), min(size[0], 2*h.Y-40)
	x0 := -h.X + 40
	if headAtRight {
		x0 = h.X - 40 - long
	}
	at := func(x, y float64) geom.V2 {
		return mattress.C.Add(mattress.Ax[0].Mul(x)).Add(mattress.Ax[1].Mul(y)).XY()
	}
	return geom.Polygon{at(x0, -wide/2), at(x0+long, -wide/2), at(x0+long, wide/2), at(x0, wide/2)}
}

// sleepers draws the pillows, the upper one seen and the lower one hidden, and says who sleeps where.
func (p *planner) sleepers() {
	upper, lower := p.s.Boxes[1], p.s.Boxes[0]
	up := pillowAt(upper, p.headRight(p.s.Bed.Upper.HeadAtRight))
	down := pillowAt(lower, p.headRight(p.s.Bed.Lower.HeadAtRight))
	p.spots["mattress.upper"] = p.on(upper.C.XY().Mul(2).Sub(centroid(up))) // at the foot: the middle is for names
	p.outlined("pillow.upper", p.rounded(up), render.InkWhite, p.st.Thin)
	p.stroke("pillow.lower", p.rounded(down), p.st.Behind)
	p.sleeperName("upper", upper, up)
	p.sleeperName("lower", lower, down)
}

// headRight turns "the right end as seen from the front" into the positive axis of the box in the room.
func (p *planner) headRight(right bool) bool {
	along := p.s.ToRoom.Dir(geom.V3{X: 1})
	return right == (along.Dot(p.s.Boxes[0].Ax[0]) > 0)
}

// rounded returns an outline with rounded corners.
func (c *planner) rounded(q geom.Polygon) render.Path { return roundCorners(c.corners(q), 2) }

// roundCorners replaces every corner by a curve.
func roundCorners(q []render.Point, r render.Paper) render.Path {
	n := len(q)
	var path render.Path
	for i := range q {
		prev, at, next := q[(i+n-1)%n], q[i], q[(i+1)%n]
		in, out := prev.Minus(at), next.Minus(at)
		cut := min(r, in.Length()/2, out.Length()/2)
		from := at.Plus(in.Times(float64(cut / in.Length())))
		to := at.Plus(out.Times(float64(cut / out.Length())))
		if i == 0 {
			path = path.Move(from)
		} else {
			path = path.Line(from)
		}
		path = path.Cubic(from.Between(at, 0.55), to.Between(at, 0.55), to)
	}
	return path.Close()
}

// sleeperName writes who sleeps in a bed: the upper in the upper half of the mattress as it lies on paper, the lower in the lower half.
func (p *planner) sleeperName(bed string, mattress geom.Box, pillow geom.Polygon) {
	m := render.Around(p.corners(mattress.Footprint())...)
	word := "on top"
	half := render.Rect{Min: m.Min, Max: render.Point{X: m.Max.X, Y: m.Centre().Y}}
	if bed == "lower" {
		word = "below"
		half.Min.Y, half.Max.Y = half.Max.Y, m.Max.Y
	}
	half = beside(half, render.Around(p.corners(pillow)...), p.st.Body.Size*2)
	for i, sl := range p.s.Job.Sleepers {
		if sl.Bed == bed {
			p.nameIn(sl.Key(i), half, joined(", ", sl.Name, ageWord(sl.Age), word), render.InkMain, true)
			last := &p.notes[len(p.notes)-1]
			last.on, last.patch = thingGround, render.InkWhite
		}
	}
}

// beside returns the largest part of a rectangle that lies beside another, as long as it is not narrower than least; else all of it.
func beside(r, other render.Rect, least render.Paper) render.Rect {
	if !r.Overlaps(other) {
		return r
	}
	best := render.Rect{}
	for _, part := range []render.Rect{
		{Min: r.Min, Max: render.Point{X: other.Min.X, Y: r.Max.Y}}, {Min: render.Point{X: other.Max.X, Y: r.Min.Y}, Max: r.Max},
		{Min: r.Min, Max: render.Point{X: r.Max.X, Y: other.Min.Y}}, {Min: render.Point{X: r.Min.X, Y: other.Max.Y}, Max: r.Max},
	} {
		if part.W() > least && part.H() > least && part.W()*part.H() > best.W()*best.H() {
			best = part
		}
	}
	if best == (render.Rect{}) {
		return r
	}
	return best
}

func ageWord(age float64) string {
	if age <= 0 {
		return ""
	}
	return strconv.Itoa(int(age))
}
