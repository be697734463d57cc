package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// A bedView looks at the bed alone, square to one of its sides: across and up name the directions on paper, near how near a point is to
// who looks. What hangs on the wall is drawn with the wall.
type bedView struct {
	*canvas
	b          *bunk.Bed
	mirrored   bool
	lift       float64 // how far the post feet are over the height 0 of the view
	across, up func(geom.V3) float64
	near       func(geom.V3) float64
	bodies     []bedBody // see outlines
}

// along returns how far a point is from the bed's left end, as the bed is built.
func (v *bedView) along(x float64) float64 {
	if v.mirrored {
		return v.b.Long - x
	}
	return x
}

// bedBody is one body of the bed as it looks from a side.
type bedBody struct {
	body
	outline   geom.Polygon
	lo, hi    geom.V2
	near, far float64
	square    bool
}

// outlines returns the parts and mattresses of the bed as they look, farthest first. They are worked out once; nobody may change them.
func (v *bedView) outlines() []bedBody {
	if v.bodies == nil {
		v.bodies = v.lookedAt()
	}
	return v.bodies
}

func (v *bedView) lookedAt() []bedBody {
	list := make([]bedBody, 0, len(v.b.Parts)+2)
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		if p.Frame == furniture.OnBed {
			list = append(list, v.see(body{ref: p.ID, role: p.Role, part: p, box: p.Box}, p.Corners()))
		}
	}
	for i, m := range []geom.Box{v.b.Lower.Mattress, v.b.Upper.Mattress} {
		var c [8]geom.V3
		for k := range c {
			c[k] = m.Corner(k)
		}
		list = append(list, v.see(body{ref: mattressRefs[i], role: roleMattress, box: m}, c))
	}
	slices.SortStableFunc(list, func(a, b bedBody) int { return cmp.Compare(a.near, b.near) })
	return list
}

func (v *bedView) see(b body, corners [8]geom.V3) bedBody {
	out := bedBody{body: b, near: math.Inf(-1), far: math.Inf(1)}
	var pts [8]geom.V2
	for i, q := range corners {
		pts[i] = geom.V2{X: v.across(q), Y: v.up(q)}
		out.near, out.far = max(out.near, v.near(q)), min(out.far, v.near(q))
	}
	out.outline = geom.Hull(pts[:])
	out.lo, out.hi = out.outline.Bounds()
	size := out.hi.Sub(out.lo)
	out.square = math.Abs(out.outline.Area()) > size.X*size.Y*squareShare
	return out
}

// covered tells whether one of the nearer bodies hides another wholly.
func covered(b bedBody, nearer []bedBody) bool {
	return slices.ContainsFunc(nearer, func(o bedBody) bool {
		return o.square && o.far >= b.near-coverAir &&
			b.lo.X >= o.lo.X-coverAir && b.hi.X <= o.hi.X+coverAir && b.lo.Y >= o.lo.Y-coverAir && b.hi.Y <= o.hi.Y+coverAir
	})
}

// paintBed draws the bodies, what is nearer over what is farther, and returns those that are seen.
func (v *bedView) paintBed(list []bedBody) []bedBody {
	var seen []bedBody
	for i := range list {
		if !covered(list[i], list[i+1:]) {
			v.paintBody(&list[i], v.edgePen(list[i].role))
			seen = append(seen, list[i])
		}
	}
	return seen
}

// edgePen is the pen for the edges of a thing that is seen.
func (v *bedView) edgePen(role string) render.Pen {
	switch role {
	case bunk.RoleSlat, bunk.RoleBlock, bunk.RoleLip, bunk.RoleSpacer, roleMattress:
		return v.st.Thin
	}
	return v.st.Seen
}

// paintBody draws one body; a board seen on its end shows its end grain.
func (v *bedView) paintBody(b *bedBody, pen render.Pen) {
	points := make([]render.Point, len(b.outline))
	for i, q := range b.outline {
		points[i] = v.pt(q.X, q.Y)
	}
	path, ink := render.Polygon(points...), b.ink()
	if b.part != nil && v.endOn(b.part.Box) {
		ink = render.InkEndGrain
		if r := path.Bounds(); v.paper() && b.square && min(r.W(), r.H()) > leastGrain {
			v.add(v.st.EndGrain(b.ref, r, pen)...)
			return
		}
	}
	v.outlined(b.ref, path, ink, pen)
	if b.role == bunk.RoleFront {
		v.pull(b)
	}
}

// leastGrain is the size under which the ends of boards carry no diagonals, on paper.
const leastGrain render.Paper = 1.2

// endOn tells whether a board is seen along its length.
func (v *bedView) endOn(box geom.Box) bool {
	var o geom.V3
	n := geom.V3{X: v.near(geom.V3{X: 1}) - v.near(o), Y: v.near(geom.V3{Y: 1}) - v.near(o), Z: v.near(geom.V3{Z: 1}) - v.near(o)}
	return math.Abs(n.Dot(box.Ax[0])) > 0.99
}

// pull draws the grip of a drawer's front, where that is seen face on.
func (v *bedView) pull(b *bedBody) {
	z, ok := b.gripAt()
	if !ok {
		return
	}
	mid, half := (b.lo.X+b.hi.X)/2, 60.0
	v.stroke(b.ref, render.Line(v.pt(mid-half, z), v.pt(mid+half, z)), v.st.Post)
}

// gripAt returns how high the grip of a drawer's front is, if it shows one.
func (b *bedBody) gripAt() (z float64, ok bool) {
	size := b.hi.Sub(b.lo)
	return b.lo.Y + size.Y*0.7, b.role == bunk.RoleFront && size.X >= 200 && size.Y >= 60
}

// hidden dashes parts of some roles that nearer ones hide.
func (v *bedView) hidden(roles ...string) {
	for _, b := range v.outlines() {
		if b.part != nil && slices.Contains(roles, b.role) {
			v.stroke(b.ref, render.Box(v.rect(b.lo.X, b.lo.Y, b.hi.X, b.hi.Y)), v.st.Behind)
		}
	}
}

// floorLine draws the floor under the bed, a little beyond it.
func (v *bedView) floorLine(from, to float64) {
	v.stroke("floor", render.Line(v.pt(from, 0).Plus(render.Point{X: -v.st.Tick}), v.pt(to, 0).Plus(render.Point{X: v.st.Tick})), v.st.Cut)
}

// spread returns the bounds of bodies.
func (v *bedView) spread(list []bedBody) (lo, hi geom.V2) {
	lo, hi = geom.V2{X: math.Inf(1), Y: math.Inf(1)}, geom.V2{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, b := range list {
		lo = geom.V2{X: min(lo.X, b.lo.X), Y: min(lo.Y, b.lo.Y)}
		hi = geom.V2{X: max(hi.X, b.hi.X), Y: max(hi.Y, b.hi.Y)}
	}
	return lo, hi
}

// frame is the rectangle that dimensions stand round.
func (v *bedView) frame() render.Rect { return v.frameOf(v.outlines()) }

func (v *bedView) frameOf(list []bedBody) render.Rect {
	lo, hi := v.spread(list)
	return v.rect(lo.X, lo.Y, hi.X, hi.Y)
}

// top returns the height of the bed.
func (v *bedView) top() float64 {
	top := 0.0
	for i := range v.b.Parts {
		if p := &v.b.Parts[i]; p.Frame == furniture.OnBed {
			for _, q := range p.Corners() {
				top = max(top, q.Z)
			}
		}
	}
	return top
}
