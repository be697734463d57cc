package fit

import (
	"math"

	"bunkwright/room/geom"
)

// How near a part must come to a casing or a sill board that nobody read for it to matter, mm: more than they are wide, and than a sill
// board stands out. How far a casing stands out has trimNear.
const (
	casingMost = 200
	sillMost   = 200
)

// anyHigh is over the head of any opening, mm.
const anyHigh = 10_000

// casings measures every solid against the casings round doors and windows, as boxes on their walls, and against the sill boards of
// windows; it returns what must be read first.
func (s *Scene) casings(n *nearestTo) (want string) {
	l := &s.Survey.Layout
	for i := range l.Doors {
		d := &l.Doors[i]
		if w, lo, hi, ok := s.interval(d.OnWallRefs, d.Wide); ok {
			want = or(want, s.trimBox(n, w, lo, hi, 0, s.v(d.High), s.v(d.Casing), s.v(d.CasingDeep), s.keys.doors[i]))
		}
	}
	for i := range l.Windows {
		d := &l.Windows[i]
		if w, lo, hi, ok := s.interval(d.OnWallRefs, d.Wide); ok {
			want = or(want, s.trimBox(n, w, lo, hi, s.v(d.Sill), s.v(d.Head), s.v(d.Casing), s.v(d.CasingDeep), s.keys.windows[i]))
			want = or(want, s.innerSill(n, w, lo, hi, s.v(d.Sill), s.v(d.SillDeep), s.keys.windows[i]))
		}
	}
	return want
}

func (s *Scene) trimBox(n *nearestTo, w *Wall, lo, hi, sill, head, wide, deep float64, what string) (want string) {
	if wide == 0 || deep == 0 {
		return ""
	}
	if math.IsNaN(sill + head + wide + deep) {
		z0, z1 := known(sill, 0), known(head, anyHigh)
		in := s.Nearest(w, z0, min(z1, s.All.Hi.Z))
		if s.anythingIn(w.box(lo-casingMost, hi+casingMost, in, in+trimNear, z0-casingMost, z1+casingMost)) {
			return askCasing(what, w, math.IsNaN(sill+head))
		}
		return ""
	}
	in := s.Nearest(w, sill, head)
	box := w.box(lo-wide, hi+wide, in, in+deep, sill-wide, head+wide)
	s.nearBox(n, box, what)
	return ""
}

// known returns a value, or another one where it is unread.
func known(v, or float64) float64 {
	if math.IsNaN(v) {
		return or
	}
	return v
}

func askCasing(what string, w *Wall, heights bool) string {
	if heights {
		return "how wide is the casing round " + what + " on wall " + w.Key + ", and how high are its lower and its upper edge?"
	}
	return "how wide is the casing round " + what + " on wall " + w.Key + " (0 where it has none)?"
}

// innerSill measures every solid against the sill board inside a window, taken without thickness; it returns what must be read first.
func (s *Scene) innerSill(n *nearestTo, w *Wall, lo, hi, sill, deep float64, what string) (want string) {
	if deep == 0 {
		return ""
	}
	if math.IsNaN(sill + deep) {
		z0, z1 := known(sill, 0), known(sill, anyHigh)
		in := s.Nearest(w, z0, min(z1, s.All.Hi.Z))
		if s.anythingIn(w.box(lo, hi, in, in+known(deep, sillMost), z0, z1)) {
			return "how far does the sill board of " + what + " on wall " + w.Key + " stand out of the wall (0 where it has none), and how high is it?"
		}
		return ""
	}
	in := s.Nearest(w, sill, sill)
	s.nearBox(n, w.box(lo, hi, in, in+deep, sill, sill), what)
	return ""
}

// anythingIn tells whether any solid of the bed, or of what hangs on the wall, reaches into a box.
func (s *Scene) anythingIn(box geom.Box) bool {
	lo, hi := box.Bounds()
	if boundsGap(lo, hi, s.All.Lo, s.All.Hi) > 0 {
		return false
	}
	for i := range s.Solids {
		if b := &s.Solids[i]; boundsGap(lo, hi, b.Lo, b.Hi) == 0 && geom.BoxGap(box, b.Box) < -touch {
			return true
		}
	}
	return false
}
