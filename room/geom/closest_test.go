package geom

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestClosestByHand: 3-4-5.
func TestClosestByHand(t *testing.T) {
	d, p, q := Closest(Rect(0, 0, 1, 1), Rect(4, 5, 6, 7))
	close(t, "apart", d, 5)
	if p != (V2{1, 1}) || q != (V2{4, 5}) {
		t.Errorf("between %v and %v", p, q)
	}
	d, p, _ = Closest(Rect(0, 0, 10, 10), Rect(4, 5, 6, 7))
	close(t, "inside", d, 0)
	if p != (V2{0, 0}) && !Rect(4, 5, 6, 7).Contains(p) {
		t.Errorf("%v is not in both", p)
	}
	d, _, _ = Closest(Polygon{{0, 0}, {0, 10}}, Polygon{{-5, 5}, {5, 5}})
	close(t, "walls that cross", d, 0)
}

// TestClosestProperties: the same as Gap where outlines are apart; the two points are that far apart, each on its outline; where they
// overlap the point is in both.
func TestClosestProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := tilted(t, "a").Footprint(), tilted(t, "b").Footprint()
		d, p, q := Closest(a, b)
		if g := math.Max(0, Gap(a, b)); math.Abs(d-g) > 1e-9 {
			t.Fatalf("%g, gap %g", d, g)
		}
		in := func(o Polygon, p V2) bool { return o.Contains(p) || o.Distance(p) < 1e-9 }
		if math.Abs(p.Dist(q)-d) > 1e-9 || !in(a, p) || !in(b, q) {
			t.Fatalf("%v and %v are %g apart, want %g", p, q, p.Dist(q), d)
		}
	})
}
