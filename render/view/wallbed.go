package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// seen is one body as it looks from inside the room: its outline on the wall, and how far out it stands.
type seen struct {
	body
	outline   geom.Polygon
	near, far float64 // out from the wall
	lo, hi    geom.V2
	square    bool // the outline is its bounds
}

// bed draws the bed before the wall, what is nearer to the viewer over what is farther.
func (f *facing) bed() {
	if !f.beside {
		return
	}
	for i := range f.bodies {
		f.bodyInFront(&f.bodies[i])
	}
	f.sleepers()
}

// seenBodies returns the bodies that are seen, in the order in which they are painted.
func (f *facing) seenBodies() []seen {
	bodies := append(bodiesOf(f.s), f.pillows()...)
	list := make([]seen, 0, len(bodies))
	for _, b := range bodies {
		list = append(list, f.see(b))
	}
	slices.SortStableFunc(list, func(a, b seen) int { return cmp.Compare(a.near, b.near) })
	out := list[:0]
	for i := range list {
		if !hiddenBy(&list[i], list[i+1:]) {
			out = append(out, list[i])
		}
	}
	return out
}

func (f *facing) see(b body) seen {
	v := seen{body: b, near: 1e9, far: -1e9}
	var pts [8]geom.V2
	for i, q := range b.corners(f.s.ToRoom) {
		_, out := f.w.Along(q.XY())
		v.near, v.far = min(v.near, out), max(v.far, out)
		pts[i] = f.project(q)
	}
	v.outline = geom.Hull(pts[:])
	v.lo, v.hi = v.outline.Bounds()
	size := v.hi.Sub(v.lo)
	v.square = math.Abs(v.outline.Area()) > size.X*size.Y*squareShare
	return v
}

// squareShare is how much of its bounds an outline must fill to count as them.
const squareShare = 0.995

// hiddenBy tells whether one of the bodies nearer to the viewer covers another wholly.
func hiddenBy(b *seen, nearer []seen) bool {
	for i := range nearer {
		o := &nearer[i]
		if o.square && o.role != rolePillow && o.near >= b.far-coverAir &&
			b.lo.X >= o.lo.X-coverAir && b.hi.X <= o.hi.X+coverAir && b.lo.Y >= o.lo.Y-coverAir && b.hi.Y <= o.hi.Y+coverAir {
			return true
		}
	}
	return false
}

func (f *facing) bodyInFront(v *seen) {
	pen := f.st.Seen
	switch v.role {
	case bunk.RoleSlat, bunk.RoleBlock, bunk.RoleLip, bunk.RoleCheek, bunk.RoleSpacer, rolePillow, roleMattress:
		pen = f.st.Thin
	}
	outline := f.shape(v.outline)
	if v.role == rolePillow {
		outline = render.RoundBox(f.rect(v.lo.X, v.lo.Y, v.hi.X, v.hi.Y), 1.5)
	}
	f.outlined(v.ref, outline, v.ink(), pen)
	mid := v.lo.Lerp(v.hi, 0.5)
	f.spots[v.ref] = f.pt(mid.X, mid.Y)
	switch v.role {
	case bunk.RoleCleat:
		f.screws(v)
	case bunk.RoleFront:
		f.pull(v)
	}
}

// screws crosses a cleat where it is screwed: at the chosen places, else at the studs it meets.
func (f *facing) screws(v *seen) {
	at, each := f.screwPlaces(v)
	var crosses render.Path
	for _, x := range at {
		for k := range each {
			z := v.lo.Y + (v.hi.Y-v.lo.Y)*(float64(k)+1)/float64(each+1)
			crosses = append(crosses, crossAt(f.pt(x, z), f.st.Tick*0.22)...)
		}
	}
	if len(crosses) > 0 {
		f.stroke(v.ref+".screws", crosses, f.st.Thin)
	}
}

// crossAt is a small cross.
func crossAt(c render.Point, r render.Paper) render.Path {
	return append(render.Line(render.Point{X: c.X - r, Y: c.Y - r}, render.Point{X: c.X + r, Y: c.Y + r}),
		render.Line(render.Point{X: c.X - r, Y: c.Y + r}, render.Point{X: c.X + r, Y: c.Y - r})...)
}

// screwPlaces returns where along the wall a cleat's screws stand, and how many over one another.
func (f *facing) screwPlaces(v *seen) (at []float64, each int) {
	for _, c := range f.s.Bed.Cleats {
		if c.ID != v.ref {
			continue
		}
		each = max(f.s.Bed.Sizes.Shelves[c.Shelf].ScrewsPerStud, 1)
		for _, x := range c.Screws {
			at = append(at, f.project(f.s.ToWall.Point(geom.V3{X: x})).X)
		}
	}
	if len(at) > 0 {
		return at, each
	}
	for _, st := range studsOf(f.s, f.w) {
		if st.at > v.lo.X && st.at < v.hi.X {
			at = append(at, st.at)
		}
	}
	return at, each
}

// pull draws the grip of a drawer's front.
func (f *facing) pull(v *seen) {
	mid, half := v.lo.Lerp(v.hi, 0.5), min(60, (v.hi.X-v.lo.X)/4)
	f.stroke(v.ref, render.Line(f.pt(mid.X-half, mid.Y), f.pt(mid.X+half, mid.Y)), f.st.Post)
}

// pillows returns the pillows as bodies lying on the mattresses.
func (f *facing) pillows() []body {
	thick := yardstick.Figures(yardstick.Pillow)[2]
	var out []body
	for i, right := range []bool{f.s.Bed.Lower.HeadAtRight, f.s.Bed.Upper.HeadAtRight} {
		m := f.s.Boxes[i]
		q := pillowAt(m, right == (f.s.ToRoom.Dir(geom.V3{X: 1}).Dot(m.Ax[0]) > 0))
		lo, hi := q.Bounds()
		b := m
		c := centroid(q)
		b.C = c.At(m.Top() + thick/2)
		b.Half.X, b.Half.Y, b.Half.Z = q[0].Dist(q[1])/2, q[1].Dist(q[2])/2, thick/2
		out = append(out, body{ref: "pillow." + deckNames[i], role: rolePillow, box: b, lo: lo.At(m.Top()), hi: hi.At(m.Top() + thick)})
	}
	return out
}

// deckNames name the two beds.
var deckNames = [2]string{"lower", "upper"}

// sleepers writes who sleeps where, over each mattress that is seen along its length.
func (f *facing) sleepers() {
	if along := f.s.ToRoom.Dir(geom.V3{X: 1}).XY(); math.Abs(along.Dot(f.w.Dir)) < 0.9 {
		return
	}
	for i, m := range f.s.Boxes {
		c := f.project(m.C)
		z := m.Top() + 330
		for k, sl := range f.s.Job.Sleepers {
			if sl.Bed == deckNames[i] && sl.Name != "" {
				f.notes = append(f.notes, label{ref: sl.Key(k), lines: []line{f.soft(sl.Name + " sleeps here")}, home: f.pt(c.X, z), near: 30, dot: f.pt(c.X, m.Top()), inside: true, on: patchGround})
				z -= float64(f.st.Body.Leading()) / f.k
			}
		}
	}
}
