package view

import (
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// partWords are the names of parts as the drawings have them.
var partWords = map[string]string{
	bunk.RolePost: "post", bunk.RoleSideRail: "side rail", bunk.RoleGuard: "guardrail", bunk.RoleBookLedge: "book ledge", bunk.RoleFront: "drawer",
	bunk.RoleTread: "tread", bunk.RoleStile: "ladder side", bunk.RoleMember: "end member", bunk.RoleEndBoard: "end board",
	bunk.RoleClimbSlat: "climbing slat", bunk.RoleClimbPanel: "climbing panel", bunk.RoleUpright: "upright", bunk.RoleSlat: "slat",
	bunk.RoleLedge: "ledge", roleMattress: "mattress",
}

// manyNamed are the roles of which each part is named, not one for all.
var manyNamed = []string{bunk.RoleFront, bunk.RoleSideRail, roleMattress, bunk.RoleMember}

// names writes on the parts what they are, where there is room on them; of the roles that need one, one part is named beside it with a
// leader. Hidden are bodies drawn over the others, dashed.
func (v *bedView) names(list []bedBody, hidden []bedBody, leaders ...string) {
	done := map[string]bool{}
	for _, role := range v.rolesOf(list) {
		best, where := -1, geom.Rectangle{}
		for i := range list {
			b := &list[i]
			if b.role != role || !b.square || v.endOn(b.box) && b.part != nil {
				continue
			}
			free := freeOn(b, list[i+1:], hidden)
			if z, ok := b.gripAt(); ok {
				free.Hi.Y = min(free.Hi.Y, z)
			}
			if slices.Contains(manyNamed, role) {
				done[role] = v.nameOn(b.ref, free, partWords[role]) || done[role]
			} else if best < 0 || free.Area() > where.Area() {
				best, where = i, free
			}
		}
		if best >= 0 {
			done[role] = v.nameOn(list[best].ref, where, partWords[role])
		}
	}
	for _, role := range leaders {
		if !done[role] && !v.o.Beside {
			v.nameBeside(list, role)
		}
	}
}

// rolesOf lists the roles of bodies that have a name, each once.
func (v *bedView) rolesOf(list []bedBody) []string {
	var roles []string
	for i := range list {
		if r := list[i].role; partWords[r] != "" && !slices.Contains(roles, r) {
			roles = append(roles, r)
		}
	}
	return roles
}

// freeOn returns the largest rectangle of a body that nothing nearer hides and nothing is dashed over.
func freeOn(b *bedBody, nearer, hidden []bedBody) geom.Rectangle {
	in := geom.Rectangle{Lo: b.lo, Hi: b.hi}
	var taken []geom.Rectangle
	for _, o := range [][]bedBody{nearer, hidden} {
		for i := range o {
			if r := (geom.Rectangle{Lo: o[i].lo, Hi: o[i].hi}); r.Overlaps(in) && o[i].ref != b.ref {
				taken = append(taken, r)
			}
		}
	}
	return geom.LargestRectangle(in, taken)
}

// nameOn writes a name into a rectangle of the view if it has room there.
func (v *bedView) nameOn(ref string, in geom.Rectangle, words string) bool {
	wide, high := v.mm(in.Wide()), v.mm(in.High())
	if v.st.Body.Wide(words)+v.st.Gap*2 > wide || v.st.Body.Size*1.15 > high {
		return false
	}
	mid := v.pt((in.Lo.X+in.Hi.X)/2, (in.Lo.Y+in.Hi.Y)/2)
	v.add(render.Words(ref, v.st.Body.Text(mid, words, render.InkMain, render.Centre).Middled()))
	return true
}

// nameBeside names the part of a role that is seen the most on free ground near it, with a leader.
func (v *bedView) nameBeside(list []bedBody, role string) {
	best, where := -1, geom.Rectangle{}
	for i := range list {
		if b := &list[i]; b.role == role {
			if free := freeOn(b, list[i+1:], nil); best < 0 || free.Area() > where.Area() {
				best, where = i, free
			}
		}
	}
	if best < 0 {
		return
	}
	dot := v.pt((where.Lo.X+where.Hi.X)/2, where.Lo.Y*0.45+where.Hi.Y*0.55)
	words := partWords[role]
	if mid, ok := v.gapBeside(list, dot, v.st.Body.Wide(words)); ok {
		t := v.st.Body.Text(mid, words, render.InkSoft, render.Centre).Middled()
		end := foot(dot, t.Bounds().Grow(v.st.Gap/2))
		v.stroke(list[best].ref, render.Line(dot, end), v.st.Extension)
		v.fill(list[best].ref, render.Circle(dot, v.st.Tick/6), render.InkMain)
		v.add(render.Words(list[best].ref, t))
	}
}

// How far a name may stand from its part, in ticks across and in mm up and down, how finely it is tried, and the longest leader in ticks.
const (
	nearestName, farthestName = 2, 8
	highestName               = 25
	nameStep                  = 0.5
	longestLeader             = 8
)

// gapBeside returns where words of a width find bare ground within the view: as near as it goes to a dot, on the inner side of it.
func (v *bedView) gapBeside(list []bedBody, dot render.Point, wide render.Paper) (best render.Point, ok bool) {
	half := render.Point{X: wide/2 + v.st.Gap/2, Y: v.st.Body.Leading()*0.5 + v.st.Gap*0.3}
	boxes := make([]render.Rect, len(list))
	for i := range list {
		boxes[i] = v.rect(list[i].lo.X, list[i].lo.Y, list[i].hi.X, list[i].hi.Y)
	}
	taken := boxesOf(v.marks).words
	for _, w := range taken {
		boxes = append(boxes, w.Grow(v.st.Gap)) // names side by side read as one
	}
	frame := v.frameOf(list)
	side := render.Paper(1)
	if dot.X > frame.Centre().X {
		side = -1
	}
	least := half.X + v.st.Tick*longestLeader
	for across := nearestName; across <= farthestName; across++ {
		for up := render.Paper(-highestName); up <= highestName; up += nameStep {
			d := render.Point{X: side * (half.X + v.st.Tick*render.Paper(across)), Y: up}
			mid := dot.Plus(d)
			box := render.Rect{Min: mid.Minus(half), Max: mid.Plus(half)}
			if d.Length() < least && frame.Holds(box) && !slices.ContainsFunc(boxes, box.Overlaps) && !crosses(dot, mid, taken) {
				best, least, ok = mid, d.Length(), true
			}
		}
	}
	return best, ok
}

// crosses tells whether the way from a to b leads over one of the boxes.
func crosses(a, b render.Point, boxes []render.Rect) bool {
	const steps = 40
	for i := range steps + 1 {
		p := a.Between(b, float64(i)/steps)
		if slices.ContainsFunc(boxes, func(r render.Rect) bool { return r.Contains(p) }) {
			return true
		}
	}
	return false
}
