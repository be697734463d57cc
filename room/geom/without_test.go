package geom

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func areas(list []Polygon) float64 {
	sum := 0.0
	for _, p := range list {
		sum += p.Area()
	}
	return sum
}

// ell is a room of 4000 x 3000 less a corner of 2000 x 1000: 10 m2 by hand.
var ell = Polygon{{0, 0}, {4000, 0}, {4000, 2000}, {2000, 2000}, {2000, 3000}, {0, 3000}}

// What is left and what is taken make up the whole, whatever the region.
func TestWithoutAndIntersectMakeTheWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		at := func(name string) float64 { return rapid.Float64Range(-1000, 5000).Draw(t, name) }
		x, y := at("x"), at("y")
		w, h := rapid.Float64Range(1, 3000).Draw(t, "w"), rapid.Float64Range(1, 3000).Draw(t, "h")
		turn := rapid.Float64Range(0, 3).Draw(t, "turn")
		place := NewPlace(turn, V3{x, y, 0})
		var region Polygon
		for _, q := range Rect(0, 0, w, h) {
			region = append(region, place.Point(q.At(0)).XY())
		}
		left, taken := areas(ell.Without(region.Lines()...)), ell.Intersect(region).Area()
		if math.Abs(left+taken-10e6) > 1e-3 {
			t.Fatalf("left %v and taken %v do not make 10 m2", left, taken)
		}
	})
}

// By hand: the corner of 1000 x 1000 at the origin taken from the ell leaves 9 m2.
func TestWithoutACorner(t *testing.T) {
	if got := areas(ell.Without(Rect(-500, -500, 1000, 1000).Lines()...)); math.Abs(got-9e6) > 1e-6 {
		t.Errorf("left %v mm2, want 9e6", got)
	}
}

func TestTrianglesCoverTheOutline(t *testing.T) {
	got := ell.Triangles()
	if len(got) != 4 || math.Abs(areas(got)-10e6) > 1e-6 {
		t.Errorf("%d triangles of %v mm2, want 4 of 10e6", len(got), areas(got))
	}
	for _, p := range got {
		if p.Area() <= 0 || !p.Convex() {
			t.Errorf("triangle %v runs the wrong way", p)
		}
	}
	if ell.Convex() || !Rect(0, 0, 1, 1).Convex() {
		t.Error("the ell is not convex, a rectangle is")
	}
	if ell.Turned().Area() != -ell.Area() {
		t.Error("turned the other way round the area changes its sign")
	}
}
