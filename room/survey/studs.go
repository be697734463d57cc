package survey

import (
	"fmt"
	"math"

	"bunkwright/room"
)

// studs makes the studs of wall i: those found or assumed at a place, then those counted off from a found one.
func (b *builder) studs(i int, w room.Wall) {
	refs := &b.s.Layout.Walls[i]
	for k, st := range w.Studs {
		key := fmt.Sprintf("wall.%s.stud.%s.at", w.Key, keyOr(st.Key, k))
		at := b.quantity(key, st.At, b.studU(st))
		if at == 0 {
			continue
		}
		found := st.Found
		if found == "" {
			found = "once"
		}
		refs.Studs = append(refs.Studs, StudRef{Key: keyOr(st.Key, k), At: at, FromEnd: st.From == w.To(), Found: found})
	}
	b.countedStuds(refs, w)
}

// studU returns the standard uncertainty of a stud's place: its own where a reading states one, else by how it was found.
func (b *builder) studU(st room.Stud) float64 {
	if len(st.At) > 0 && st.At[0].U > 0 {
		return st.At[0].U.MM()
	}
	if st.Found == "twice" {
		return b.s.u.StudTwice
	}
	return b.s.u.StudOnce
}

// countedStuds fills the wall with studs at the spacing, counted off from the one named (or the first found): each bay adds to the
// uncertainty, and that they are there at all stays assumed.
func (b *builder) countedStuds(refs *WallRefs, w room.Wall) {
	base, ok := spacingBase(refs.Studs, w.SpacingFrom)
	if !ok || len(w.Spacing) == 0 {
		return
	}
	step := w.Spacing[0].Value.MM()
	end := b.roughLength(w.Key)
	start := b.start[base.At-1]
	if step < 100 {
		return // closer than any framing: the loader lists it
	}
	found := refs.Studs
	for _, sign := range []float64{1, -1} {
		for n := 1.0; ; n++ {
			at := start + sign*n*step
			if at < 0 || at > end {
				break
			}
			if b.near(found, base.FromEnd, at, end, step/3) {
				continue
			}
			key := fmt.Sprintf("wall.%s.stud.%s%+d.at", w.Key, base.Key, int(sign*n))
			r := b.unknown(key, at)
			b.suppose(LinearEquation(key, []Term{{int(r - 1), 1}, {int(base.At - 1), -1}}, 0, sign*n*step, b.s.u.StudBay*math.Sqrt(n)))
			refs.Studs = append(refs.Studs, StudRef{Key: fmt.Sprintf("%s%+d", base.Key, int(sign*n)), At: r, FromEnd: base.FromEnd, Found: "counted"})
		}
	}
}

func spacingBase(studs []StudRef, key string) (StudRef, bool) {
	for _, st := range studs {
		if (key == "" && st.Found != "assumed") || (key != "" && st.Key == key) {
			return st, true
		}
	}
	return StudRef{}, false
}

// near tells whether a stud is listed within reach of a place counted from the given end.
func (b *builder) near(studs []StudRef, fromEnd bool, at, wall, reach float64) bool {
	for _, st := range studs {
		p := b.start[st.At-1]
		if st.FromEnd != fromEnd {
			p = wall - p
		}
		if math.Abs(p-at) < reach {
			return true
		}
	}
	return false
}

func (b *builder) roughLength(key string) float64 {
	i := b.s.wallIndex(key)
	if i < 0 {
		return 0
	}
	n := len(b.plan)
	p, q := b.plan[i], b.plan[(i+1)%n]
	return math.Hypot(q.x-p.x, q.y-p.y)
}
