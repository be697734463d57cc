package geom

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func close(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 1e-9*(1+math.Abs(want))) {
		t.Errorf("%s = %.12g, want %.12g", what, got, want)
	}
}

// TestDistancesByHand: 3-4-5 triangles and unit squares.
func TestDistancesByHand(t *testing.T) {
	d, at := SegmentPoint(V2{0, 0}, V2{10, 0}, V2{13, 4})
	close(t, "beyond the end", d, 5)
	close(t, "nearest at", at, 1)
	close(t, "parallel", SegmentSegment(V2{0, 0}, V2{10, 0}, V2{3, 2}, V2{7, 2}), 2)
	close(t, "crossing", SegmentSegment(V2{0, 0}, V2{10, 10}, V2{0, 10}, V2{10, 0}), 0)
	close(t, "squares apart", Gap(Rect(0, 0, 1, 1), Rect(4, 5, 6, 7)), 5)
	close(t, "squares overlapping by 0.25", Gap(Rect(0, 0, 1, 1), Rect(0.75, 0, 2, 1)), -0.25)
	if p, ok := LinesMeet(V2{0, 0}, V2{1, 0}, V2{5, 5}, V2{0, 1}); !ok || p != (V2{5, 0}) {
		t.Errorf("lines meet at %v, %v, want 5, 0", p, ok)
	}
}

func TestPolygonByHand(t *testing.T) {
	l := Polygon{{0, 0}, {4, 0}, {4, 2}, {2, 2}, {2, 4}, {0, 4}} // an L of area 12, anticlockwise
	close(t, "area of an L", l.Area(), 12)
	for _, c := range []struct {
		p    V2
		want bool
	}{{V2{1, 3}, true}, {V2{3, 3}, false}, {V2{2, 3}, true}, {V2{-1, 1}, false}} {
		if l.Contains(c.p) != c.want {
			t.Errorf("contains %v = %v", c.p, !c.want)
		}
	}
	if !l.Simple() || (Polygon{{0, 0}, {2, 2}, {2, 0}, {0, 2}}).Simple() {
		t.Error("an L is simple, a bow tie is not")
	}
	close(t, "clipped L", l.Intersect(Rect(0, 0, 3, 3)).Area(), 8) // 9 less the square 2..3
}

func TestBoxesByHand(t *testing.T) {
	a := NewBox(V3{0, 0, 0}, V3{2, 2, 2})
	close(t, "apart in plan and height", BoxGap(a, NewBox(V3{5, 6, 14}, V3{7, 8, 15})), 13) // 3, 4 and 12: root of 169
	close(t, "overlap", BoxGap(a, NewBox(V3{1.5, 0, 0}, V3{3, 2, 2})), -0.5)
	close(t, "touching", BoxGap(a, NewBox(V3{2, 0, 0}, V3{3, 2, 2})), 0)
	turned := NewPlace(math.Pi/4, V3{10, 0, 0}).Box(NewBox(V3{-1, -1, 0}, V3{1, 1, 2}))
	close(t, "a square on its corner", BoxGap(a, turned), 8-math.Sqrt2)
	close(t, "top", a.Top(), 2)
	lo, hi := turned.Bounds()
	close(t, "bounds", hi.X-lo.X, 2*math.Sqrt2)
}

// tilted is a box turned about two axes.
func tilted(t *rapid.T, name string) Box {
	num := func(lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, name) }
	b := NewPlace(num(0, 6.3), V3{num(-5, 5), num(-5, 5), num(-5, 5)}).Box(NewBox(V3{}, V3{num(0.1, 3), num(0.1, 3), num(0.1, 3)}))
	a := num(-1.5, 1.5)
	y, z := b.Ax[1], b.Ax[2]
	b.Ax[1] = y.Mul(math.Cos(a)).Add(z.Mul(math.Sin(a)))
	b.Ax[2] = z.Mul(math.Cos(a)).Sub(y.Mul(math.Sin(a)))
	return b
}

// TestBoxGapProperties: the gap is the same either way, does not change when both move together, and no pair of points of the two
// boxes is nearer.
func TestBoxGapProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := tilted(t, "a"), tilted(t, "b")
		g := BoxGap(a, b)
		if math.Abs(g-BoxGap(b, a)) > 1e-6 {
			t.Fatalf("not symmetric: %g, %g", g, BoxGap(b, a))
		}
		move := Place{Cos: math.Cos(1), Sin: math.Sin(1), At: V3{3, -2, 1}, Mirrored: rapid.Bool().Draw(t, "mirrored"), Mirror: 4}
		if h := BoxGap(move.Box(a), move.Box(b)); math.Abs(g-h) > 1e-6 {
			t.Fatalf("moved together: %g, was %g", h, g)
		}
		in := func(b Box) V3 {
			p := b.C
			for k := 0; k < 3; k++ {
				p = p.Add(b.Ax[k].Mul(b.Half.Axis(k) * rapid.Float64Range(-1, 1).Draw(t, "inside")))
			}
			return p
		}
		if d := in(a).Dist(in(b)); d < g-1e-6 {
			t.Fatalf("two points are %g apart, the boxes %g", d, g)
		}
	})
}

// TestPlaceAndBack: a point moved into the room and back is where it was.
func TestPlaceAndBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := func() float64 { return rapid.Float64Range(-100, 100).Draw(t, "n") }
		move := NewPlace(n(), V3{n(), n(), n()})
		move.Mirrored, move.Mirror = rapid.Bool().Draw(t, "mirrored"), n()
		p := V3{n(), n(), n()}
		if d := move.Back(move.Point(p)).Dist(p); d > 1e-9 {
			t.Fatalf("%v came back %g off", p, d)
		}
	})
}

// TestHullHoldsEverything: every point lies on or inside the hull, and the hull runs anticlockwise.
func TestHullHoldsEverything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		pts := rapid.SliceOfN(rapid.Custom(func(t *rapid.T) V2 {
			return V2{float64(rapid.IntRange(-9, 9).Draw(t, "x")), float64(rapid.IntRange(-9, 9).Draw(t, "y"))}
		}), 3, 30).Draw(t, "pts")
		h := Hull(pts)
		if h.Area() < 0 {
			t.Fatal("clockwise")
		}
		if len(h) < 3 {
			return // all in a line
		}
		for _, p := range pts {
			if !h.Contains(p) {
				t.Fatalf("%v outside %v", p, h)
			}
		}
	})
}
