package render

import (
	"math"
	"slices"
)

// pickTolerance is how far a flattened curve may stray when it is picked.
const pickTolerance Paper = 0.05

// Pick returns what is shown at a point, the topmost first, each once. A line is hit within the
// tolerance of its edge; so is the outside of a fill or a text. Marks that show nothing in
// particular hide nothing.
func (d Drawing) Pick(at Point, tolerance Paper) []string {
	var refs []string
	for _, m := range slices.Backward(d.Marks) {
		if m.Ref == "" || !m.Bounds().Grow(tolerance).Contains(at) || slices.Contains(refs, m.Ref) {
			continue
		}
		if m.hit(at, tolerance) {
			refs = append(refs, m.Ref)
		}
	}
	return refs
}

func (m Mark) hit(at Point, tolerance Paper) bool {
	switch m.Kind {
	case KindStroke:
		return m.Path.distance(at, false) <= m.Pen.Width/2+tolerance
	case KindFill:
		return m.Path.Inside(at) || m.Path.distance(at, true) <= tolerance
	}
	return m.Kind == KindText
}

// distance returns how far a point is from the path, infinite if there is none.
func (p Path) distance(at Point, closeAll bool) Paper {
	nearest := Paper(math.Inf(1))
	segments(p.Flatten(pickTolerance), closeAll, func(a, b Point) {
		nearest = min(nearest, toSegment(at, a, b))
	})
	return nearest
}

func toSegment(p, a, b Point) Paper {
	ab, ap := b.Minus(a), p.Minus(a)
	square := ab.X*ab.X + ab.Y*ab.Y
	if square == 0 {
		return ap.Length()
	}
	t := min(1, max(0, (ap.X*ab.X+ap.Y*ab.Y)/square))
	return p.Minus(a.Between(b, float64(t))).Length()
}

// Inside reports whether a point is within an odd number of the subpaths.
func (p Path) Inside(at Point) bool {
	inside := false
	segments(p.Flatten(pickTolerance), true, func(a, b Point) {
		if (a.Y <= at.Y) == (b.Y <= at.Y) {
			return
		}
		if x := a.X + (at.Y-a.Y)/(b.Y-a.Y)*(b.X-a.X); x > at.X {
			inside = !inside
		}
	})
	return inside
}
