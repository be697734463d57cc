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
	across, up func(geom.V3) float64
	near       func(geom.V3) float64
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

// outlines returns the parts and mattresses of the bed as they look, farthest first.
func (v *bedView) outlines() []bedBody {
	var list []bedBody
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

// paintBed draws the bodies, what is nearer over what is farther.
func (v *bedView) paintBed() {
	list := v.outlines()
	for i := range list {
		if !covered(list[i], list[i+1:]) {
			v.paintBody(&list[i])
		}
	}
}

func (v *bedView) paintBody(b *bedBody) {
	pen := v.st.Seen
	switch b.role {
	case bunk.RoleSlat, bunk.RoleBlock, bunk.RoleLip, bunk.RoleSpacer, roleMattress:
		pen = v.st.Thin
	}
	points := make([]render.Point, len(b.outline))
	for i, q := range b.outline {
		points[i] = v.pt(q.X, q.Y)
	}
	v.outlined(b.ref, render.Polygon(points...), b.ink(), pen)
}

// hiddenSlats dashes the slats behind the side rails.
func (v *bedView) hiddenSlats() {
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		if p.Role != bunk.RoleSlat {
			continue
		}
		b := v.see(body{ref: p.ID, role: p.Role, part: p, box: p.Box}, p.Corners())
		v.stroke(p.ID, render.Box(v.rect(b.lo.X, b.lo.Y, b.hi.X, b.hi.Y)), v.st.Behind)
	}
}

// floorLine draws the floor under the bed, a little beyond it.
func (v *bedView) floorLine(from, to float64) {
	v.stroke("floor", render.Line(v.pt(from-100, 0), v.pt(to+100, 0)), v.st.Cut)
}

// stopsOf makes a row of dimensions of the stops, sorted; what is nearer than a hair is one.
func (v *bedView) stopsOf(stops ...float64) row {
	slices.Sort(stops)
	r := row{stops: stops[:1:1]}
	for _, s := range stops[1:] {
		if d := s - r.stops[len(r.stops)-1]; d >= shut {
			r.stops, r.spans = append(r.stops, s), append(r.spans, render.Span{Words: v.dim(d, true)})
		}
	}
	return r
}

// levelAt turns a row into a rule that starts at a height; uprightAt one that starts at a place across.
func (v *bedView) levelAt(r row, y float64) []rule {
	out := rule{spans: r.spans}
	for _, s := range r.stops {
		p := v.pt(s, y)
		out.stops, out.from = append(out.stops, p.X), append(out.from, p.Y)
	}
	return []rule{out}
}

func (v *bedView) uprightAt(r row, x float64) []rule {
	out := rule{spans: r.spans}
	for _, s := range r.stops {
		p := v.pt(x, s)
		out.stops, out.from = append(out.stops, p.Y), append(out.from, p.X)
	}
	return []rule{out}
}

// spread returns the bounds of everything the view shows.
func (v *bedView) spread(list []bedBody) (lo, hi geom.V2) {
	lo, hi = geom.V2{X: math.Inf(1), Y: math.Inf(1)}, geom.V2{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, b := range list {
		lo = geom.V2{X: min(lo.X, b.lo.X), Y: min(lo.Y, b.lo.Y)}
		hi = geom.V2{X: max(hi.X, b.hi.X), Y: max(hi.Y, b.hi.Y)}
	}
	return lo, hi
}

// frame is the rectangle that dimensions stand round.
func (v *bedView) frame() render.Rect {
	lo, hi := v.spread(v.outlines())
	return v.rect(lo.X, lo.Y, hi.X, hi.Y)
}

// rulesOf keeps the rows that dimension anything.
func rulesOf(rows ...[]rule) [][]rule {
	return slices.DeleteFunc(rows, func(r []rule) bool { return len(r[0].spans) == 0 })
}

// frameHeights returns the heights that matter of the frame: rails, guards, top.
func (v *bedView) frameHeights() []float64 {
	out := []float64{0}
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		if p.Role == bunk.RoleSideRail || p.Role == bunk.RoleGuard {
			out = append(out, p.Box.Bottom(), p.Box.Top())
		}
	}
	return out
}

// top returns the height of the bed.
func (v *bedView) top() float64 {
	top := 0.0
	for i := range v.b.Parts {
		if p := &v.b.Parts[i]; p.Frame == furniture.OnBed {
			top = max(top, p.Box.Top())
		}
	}
	return top
}
