package fit

import (
	"math"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"
)

// Five treads 300 apart, the top one level with the deck; 40 thick, 95 deep, 360 between the stiles, 40 to the bed. EN 747-1: 200 to 300
// apart, 90 deep, 300 wide; US: at most 3.5 in = 88.9 from the top tread to the bed (ASTM F1427).
func TestLadderSteps(t *testing.T) {
	tops := func(z ...float64) func(*Scene) { return func(s *Scene) { s.Bed.Steps.Tops = z } }
	steps := func(edit func(*bunk.Steps)) func(*Scene) { return func(s *Scene) { edit(s.Bed.Steps) } }
	runCases(t, "ladder-steps", []bedCase{
		{"US", "US", nil, Fits, 88.9 - 40, "top-tread"},
		{"EU", "EU", nil, Fits, 0, "treads"},
		{"one step too high", "EU", tops(250, 500, 750, 1060, 1310), DoesNotFit, 300 - 310, "treads.widest"},
		{"one step too low", "EU", tops(250, 500, 690, 940, 1190), DoesNotFit, 190 - 200, "treads"},
		{"shallow treads", "EU", steps(func(t *bunk.Steps) { t.Deep = 80; t.Tops = []float64{250, 500} }), DoesNotFit, 80 - 90, "depth"},
		{"narrow", "EU", steps(func(t *bunk.Steps) { t.Clear = 290; t.Tops = []float64{250, 500} }), DoesNotFit, 290 - 300, "width"},
		{"a head-sized gap to the bed", "US", steps(func(t *bunk.Steps) { t.ToBed = 100 }), DoesNotFit, 88.9 - 100, "top-tread"},
		{"as wide as the block", "US", steps(func(t *bunk.Steps) { t.ToBed = 88.9 }), TooClose, 0, "top-tread"},
		{"within the build tolerance", "EU", func(s *Scene) { tops(250, 545)(s); s.Bed.Sizes.Tolerance = mm(9) }, TooClose, 5, "treads"},
		{"the climbing end is the way up", "EU", func(s *Scene) { s.Bed.Steps, s.Bed.Climb = nil, &bunk.ClimbAt{} }, NotApplicable, none, ""},
		{"nobody said how to get up", "EU", func(s *Scene) { s.Bed.Steps = nil }, CannotTell, none, "ladder"},
		{"advice only", "CA", nil, None, none, ""},
		{"no bed", "EU", unbuildable, CannotTell, none, ""},
	})
}

// Advice in the US: the clear gap between treads, 300 - 40 = 260, and from the lower mattress (500) to the underside of the next tread
// (600 - 40 = 560), 60, stay out of 3.5 to 9 in (88.9 to 228.6). With the mattress at 450 that gap is 110, a trap; a tread beside the
// mattress leaves none.
func TestLadderHeadGaps(t *testing.T) {
	s := plainScene(t, "US")
	a := answer(t, s, "ladder-steps")
	if l := line(t, a, "ladder-clear-gap", "treads.clear"); math.Abs(l.Spare-(260-228.6)) > 1e-6 || l.Verdict != Fits {
		t.Errorf("between treads: %v, %v", l.Spare, l.Verdict)
	}
	for mattress, spare := range map[float64]float64{500: 88.9 - 60, 450: 88.9 - 110, 570: 88.9} {
		s.Bed.Lower.MattressTop = mattress
		if l := line(t, answer(t, s, "ladder-steps"), "us-ladder-lower-bunk-gap", "lower-mattress"); math.Abs(l.Spare-spare) > 1e-6 {
			t.Errorf("lower mattress to %v: spare %v, want %v", mattress, l.Spare, spare)
		}
	}
	s.Bed.Lower.MattressTop = math.NaN()
	if l := line(t, answer(t, s, "ladder-steps"), "us-ladder-lower-bunk-gap", "lower-mattress"); l.Has || l.Ask == "" {
		t.Errorf("a mattress of unknown thickness: %v, %v", l.Value, l.Ask)
	}
}

// CPSC Publication 325, 5.2.1: all steps alike, the one onto the deck included.
func TestEvenSteps(t *testing.T) {
	for _, c := range []struct {
		tops []float64
		want bool
	}{
		{[]float64{300, 600, 900, 1200, 1500}, true}, // the last is level with the deck
		{[]float64{300, 600, 900, 1200}, true},
		{[]float64{300, 600, 900, 1100}, false}, // 400 onto the deck
		{[]float64{300, 600, 900.4, 1200}, false},
		{[]float64{300, 600, 900.2, 1200}, true}, // prints alike
		{[]float64{500, 800, 1100}, false},
		{[]float64{1500}, true},
		{nil, false},
	} {
		if got := EvenSteps(c.tops, 1500); got != c.want {
			t.Errorf("%v: %v, want %v", c.tops, got, c.want)
		}
	}
}

// IMC 306.5 asks 6 in = 152.4 from the middle of a rung to what is behind. The tread's middle is at y = -1050; the nearest board behind it
// at that height has its face at -980, 70 away. A post beside the ray and the ladder's own stile do not count.
func TestToeDepth(t *testing.T) {
	s := plainScene(t, "US")
	s.Bed.Steps.Out = geom.V2{Y: -1}
	box := func(x0, y0, z0, x1, y1, z1 float64) geom.Box {
		return geom.NewBox(geom.V3{X: x0, Y: y0, Z: z0}, geom.V3{X: x1, Y: y1, Z: z1})
	}
	s.Bed.Parts = []furniture.Part{
		{ID: "ladder.tread.1", Role: bunk.RoleTread, Box: box(140, -1097, 260, 500, -1003, 300)},
		{ID: "ladder.stile.1", Role: bunk.RoleStile, Box: box(100, -1095, 0, 400, -1000, 1800)},
		{ID: "lower.rail.front", Role: bunk.RoleSideRail, Box: box(40, -980, 250, 2060, -940, 390)},
		{ID: "lower.rail.wall", Role: bunk.RoleSideRail, Box: box(40, -60, 250, 2060, -20, 390)},
		{ID: "left.post.front", Role: bunk.RolePost, Box: box(40, -1000, 0, 130, -960, 1800)},
	}
	if l := line(t, answer(t, s, "ladder-steps"), "imc-toe-depth", "toes"); math.Abs(l.Value-70) > 1e-9 {
		t.Errorf("toes have %v, want 70", l.Value)
	}
	s.Bed.Parts = s.Bed.Parts[:2]
	if l := line(t, answer(t, s, "ladder-steps"), "imc-toe-depth", "toes"); l.Verdict != NotApplicable {
		t.Errorf("nothing behind: %v", l.Verdict)
	}
}
