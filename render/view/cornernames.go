package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// smallWords are the names of parts that only the view from a corner shows, beside those of partWords.
var smallWords = map[string]string{
	bunk.RoleFoot: "foot block", bunk.RoleMiddle: "second layer", bunk.RoleHanger: "hanger", bunk.RoleSpacer: "spacer block", bunk.RoleLip: "lip",
	bunk.RoleBlock: "tread block",
}

func cornerName(role string) string {
	if words := partWords[role]; words != "" {
		return words
	}
	return smallWords[role]
}

// A pointer3 is a name and the place on a part that it points at.
type pointer3 struct {
	part  int // number of the block
	words string
	dot   render.Point
}

// Between names below each other, in their leading, and from a name to the bed, in gaps.
const (
	nameLeading = 1.35
	nameAway    = 6
)

// nameRoom is how much room the names take on one side.
func (v *cornerView) nameRoom(st render.Style) render.Paper {
	wide := render.Paper(0)
	for i := range v.blocks {
		wide = max(wide, st.Body.Wide(cornerName(v.blocks[i].part.Role)))
	}
	return wide + nameAway*st.Gap
}

// nameParts names one part of every role at the sides, the part that most is seen of, with leaders that do not cross.
func (v *cornerView) nameParts() {
	left, right := math.Inf(1), math.Inf(-1)
	for i := range v.blocks {
		left, right = min(left, v.blocks[i].lo.X), max(right, v.blocks[i].hi.X)
	}
	all := v.pointers()
	slices.SortStableFunc(all, func(a, b pointer3) int { return cmp.Compare(a.dot.X, b.dot.X) })
	middle := v.pt((left+right)/2, 0).X
	half := 0
	for half < len(all) && all[half].dot.X < middle {
		half++
	}
	if most := v.mostNames(); most < len(all) {
		half = max(len(all)-most, min(half, most))
	}
	v.column(all[:half], v.pt(left, 0).X-nameAway*v.st.Gap, render.Right)
	v.column(all[half:], v.pt(right, 0).X+nameAway*v.st.Gap, render.Left)
}

// mostNames is how many names a side of the box takes.
func (v *cornerView) mostNames() int {
	if v.o.H <= 0 {
		return math.MaxInt
	}
	return int((v.o.H - 2*edge) / (v.st.Body.Leading() * nameLeading))
}

// column sets names below each other, each as near to its part as the others leave room, with their leaders.
func (v *cornerView) column(list []pointer3, x render.Paper, anchor render.Anchor) {
	slices.SortStableFunc(list, func(a, b pointer3) int { return cmp.Compare(a.dot.Y, b.dot.Y) })
	want, size := make([]render.Paper, len(list)), make([]render.Paper, len(list))
	for i := range list {
		want[i], size[i] = list[i].dot.Y, v.st.Body.Leading()*nameLeading
	}
	ys := render.Spread(want, size)
	v.within(ys)
	uncross(list, x, ys)
	gap := v.st.Gap
	if anchor == render.Right {
		gap = -gap
	}
	for i, p := range list {
		at := render.Point{X: x, Y: ys[i]}
		id := v.blocks[p.part].part.ID
		v.stroke(id, render.Line(at.Minus(render.Point{X: gap}), p.dot), v.st.Extension)
		v.fill(id, render.Circle(p.dot, v.st.Tick/5), render.InkMain)
		v.add(render.Words(id, v.st.Body.Text(at, p.words, render.InkSoft, anchor).Middled()))
	}
}

// within moves a column up or down where it leaves the box.
func (v *cornerView) within(ys []render.Paper) {
	if len(ys) == 0 || v.o.H <= 0 {
		return
	}
	half := v.st.Body.Leading()/2 + edge
	by := max(0, half-ys[0])
	by += min(0, v.o.H-half-(ys[len(ys)-1]+by))
	for i := range ys {
		ys[i] += by
	}
}

// uncross swaps names of a column until no swap makes their leaders shorter: leaders that cross could be made so.
func uncross(list []pointer3, x render.Paper, ys []render.Paper) {
	long := func(i, k int) render.Paper {
		return list[i].dot.Minus(render.Point{X: x, Y: ys[k]}).Length()
	}
	for again := true; again; {
		again = false
		for i := range list {
			for k := range i {
				if long(i, k)+long(k, i) < long(i, i)+long(k, k)-1e-9 {
					list[i], list[k] = list[k], list[i]
					again = true
				}
			}
		}
	}
}

// pointers finds one part of every role that has a name, and a place on it that is seen.
func (v *cornerView) pointers() []pointer3 {
	best, most := map[string]pointer3{}, map[string]float64{}
	var roles []string
	for i := range v.blocks {
		role := v.blocks[i].part.Role
		if cornerName(role) == "" || v.blocks[i].largest() <= most[role] {
			continue
		}
		dot, area := v.seenSpot(i)
		if area == 0 {
			continue
		}
		if most[role] == 0 {
			roles = append(roles, role)
		}
		if area > most[role] {
			best[role], most[role] = pointer3{i, cornerName(role), v.onPage(dot)}, area
		}
	}
	var out []pointer3
	for _, role := range roles {
		out = append(out, best[role])
	}
	return out
}

// Where on a face it is looked for a spot that is seen, along each of its sides; not in the very middle, where other parts often end.
var spots = [...]float64{0.21, 0.48, 0.79}

// seenSpot returns the place nearest to the middle of the largest face of a block that is seen, and about how much of that face is, mm².
func (v *cornerView) seenSpot(i int) (at geom.V3, area float64) {
	b := &v.blocks[i]
	for k := range b.faces {
		f := &b.faces[k]
		if f.toward <= leastTurned {
			continue
		}
		p, q, r := b.at[f.corners[0]], b.at[f.corners[1]], b.at[f.corners[3]]
		each := q.Sub(p).Cross(r.Sub(p)).Len() * f.toward / float64(len(spots)*len(spots))
		sum, near, spot := 0.0, math.Inf(1), geom.V3{}
		for _, x := range spots {
			for _, y := range spots {
				s := p.Add(q.Sub(p).Mul(x)).Add(r.Sub(p).Mul(y))
				if v.covered(i, s) {
					continue
				}
				sum += each
				if d := math.Hypot(x-0.5, y-0.5); d < near {
					near, spot = d, s
				}
			}
		}
		if sum > area {
			area, at = sum, spot
		}
	}
	return at, area
}

// largest returns how large the largest face would be on paper if nothing stood before it, mm².
func (b *block3) largest() float64 {
	area := 0.0
	for k := range b.faces {
		f := &b.faces[k]
		p, q, r := b.at[f.corners[0]], b.at[f.corners[1]], b.at[f.corners[3]]
		area = max(area, q.Sub(p).Cross(r.Sub(p)).Len()*f.toward)
	}
	return area
}

// covered tells whether another block stands before a point of a block.
func (v *cornerView) covered(own int, p geom.V3) bool {
	at, depth := v.flat(p), p.Dot(v.toward)
	for i := range v.blocks {
		o := &v.blocks[i]
		if i == own || o.near <= depth || at.X <= o.lo.X || at.X >= o.hi.X || at.Y <= o.lo.Y || at.Y >= o.hi.Y {
			continue
		}
		if s, ok := o.hides(p, geom.V3{}); ok && s.to > s.from {
			return true
		}
	}
	return false
}
