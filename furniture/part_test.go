package furniture_test

import (
	"math"
	"testing"

	"bunkwright/furniture"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// standing is a 60 x 40 mm post, 300 mm high, its width along x and its thickness along y.
func standing() furniture.Part {
	return furniture.Part{Box: geom.Box{
		C:    geom.V3{X: 30, Y: 20, Z: 150},
		Ax:   [3]geom.V3{{Z: 1}, {X: 1}, {Y: 1}},
		Half: geom.V3{X: 150, Y: 30, Z: 20},
	}}
}

func TestSolidIsTheSameBoxUpright(t *testing.T) {
	for _, up := range []float64{1, -1} {
		p := standing()
		p.Box.Ax[0], p.Box.Ax[1] = p.Box.Ax[0].Mul(up), p.Box.Ax[1].Mul(up)
		s := p.Solid()
		lo, hi := s.Bounds()
		if !s.Upright() || lo != (geom.V3{}) || hi != (geom.V3{X: 60, Y: 40, Z: 300}) {
			t.Errorf("%+v", s)
		}
		if d := s.Ax[0].Cross(s.Ax[1]).Dot(s.Ax[2]); d != 1 {
			t.Errorf("axes are not right-handed: %g", d)
		}
	}
}

func TestSolidOfATiltedPartIsItsBox(t *testing.T) {
	p := standing()
	p.Box.Ax[0], p.Box.Ax[1] = geom.V3{X: -0.6, Z: 0.8}, geom.V3{X: 0.8, Z: 0.6}
	if p.Solid() != p.Box {
		t.Error("a tilted box changed")
	}
}

// TestCornersCutBevels: a bevel of 45 degrees over a width of 60 mm takes 60 mm off the short edge.
func TestCornersCutBevels(t *testing.T) {
	p := standing()
	p.Cuts = []furniture.Cut{{Kind: furniture.Bevel, End: 0, Angle: 45}, {Kind: furniture.Bevel, End: 1, Angle: -45}}
	c := p.Corners()
	// Positive at the foot: the far edge is the longer one there, so the near one starts 60 mm up. Negative at the top: the near edge is the
	// longer one, so the far one ends 60 mm short.
	want := [4]float64{60, 300, 0, 240} // near edge: foot, top; far edge: foot, top
	for i, z := range want {
		if math.Abs(c[i].Z-z) > 1e-9 {
			t.Errorf("corner %d at %g, by hand %g", i, c[i].Z, z)
		}
	}
}

func TestHoleAtCountsFromStartAndNearEdge(t *testing.T) {
	h := furniture.Hole{Along: 10 * length.Millimetre, Across: 15 * length.Millimetre}
	if at := standing().HoleAt(h); at != (geom.V3{X: 15, Y: 20, Z: 10}) {
		t.Errorf("%+v", at)
	}
}
