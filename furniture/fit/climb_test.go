package fit

import (
	"math"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"
)

// slats is a climbing end with members 20 deep at those heights.
func slats(tops ...float64) func(*Scene) {
	return func(s *Scene) {
		s.Bed.Climb = &bunk.ClimbAt{End: bunk.Left, Grip: 20}
		for _, z := range tops {
			s.Bed.Climb.Footholds = append(s.Bed.Climb.Footholds, bunk.Foothold{Top: z, Deep: 20, Part: "climb.slat"})
		}
	}
}

// Footholds at most 12 in = 304.8 apart (own-climb-foothold, from the play-equipment draft tables), the floor counted; a member counts
// from 3/4 in = 19.05 deep (own-foothold-depth). Parts to grip at most 45 (AS/NZS 4220). Two attributes wait for the maker in the US.
func TestClimbSteps(t *testing.T) {
	both := []func(*Scene){slats(250, 500, 750), confirm("play-second-plane", "play-rung-fixed")}
	with := func(more ...func(*Scene)) func(*Scene) {
		return func(s *Scene) {
			for _, edit := range append(append([]func(*Scene){}, both...), more...) {
				edit(s)
			}
		}
	}
	runCases(t, "climb-steps", []bedCase{
		{"US, confirmed", "US", with(), Fits, none, ""},
		{"US, not confirmed yet", "US", slats(250, 500, 750), CannotTell, none, "confirmed.play-second-plane"},
		{"the maker says no", "US", func(s *Scene) { with()(s); s.Job.Confirmed["play-rung-fixed"] = "no" }, DoesNotFit, none, "confirmed.play-rung-fixed"},
		{"EU", "EU", slats(250, 500, 750), Fits, 304.8 - 250, "footholds"},
		{"far apart", "EU", slats(250, 600, 750), DoesNotFit, 304.8 - 350, "footholds"},
		{"the first too high", "EU", slats(320, 500), DoesNotFit, 304.8 - 320, "footholds"},
		{"exactly 12 in", "EU", slats(304.8, 500), Fits, 0, "footholds"},
		{"a thin member is no foothold", "EU", func(s *Scene) { slats(250, 500, 750)(s); s.Bed.Climb.Footholds[1].Deep = 19 }, DoesNotFit, 304.8 - 500, "footholds"},
		{"3/4 in deep is one", "EU", func(s *Scene) { slats(250, 500, 750)(s); s.Bed.Climb.Footholds[1].Deep = 19.05 }, Fits, 304.8 - 250, "footholds"},
		{"no foothold", "EU", slats(), DoesNotFit, 304.8 - 1500, "footholds"},
		{"too thick to grip", "AU", func(s *Scene) { slats(250, 500)(s); s.Bed.Climb.Grip = 50 }, DoesNotFit, 45 - 50, "grip"},
		{"a bought hold", "AU", func(s *Scene) { slats(250, 500)(s); s.Bed.Climb.Grip = 0 }, CannotTell, none, "grip"},
		// 4.8 to spare, u = 9/sqrt(3) = 5.2, safety asks 10.4
		{"within the build tolerance", "EU", func(s *Scene) { slats(300, 500)(s); s.Bed.Sizes.Tolerance = mm(9) }, TooClose, 4.8, "footholds"},
		{"no climbing end", "EU", nil, NotApplicable, none, ""},
		{"no bed", "EU", func(s *Scene) { unbuildable(s); s.Job.Bed.Climb = &bunk.Climb{} }, CannotTell, none, "climbing-end"},
		{"no bed, and none was asked for", "EU", unbuildable, NotApplicable, none, ""},
	})
}

// TM 5-803-11 table 7-2: highest foothold at most 56 in over the floor, 48 in for younger children. On carpet the bed sinks by 10.
func TestHighestFoothold(t *testing.T) {
	s := plainScene(t, "US")
	slats(250, 500, 1440)(s)
	s.Feet = -10
	a := answer(t, s, "climb-steps")
	if l := line(t, a, "play-climb-attached", "highest"); math.Abs(l.Spare-(56*25.4-1430)) > 1e-6 || l.Verdict != None {
		t.Errorf("spare %v, %v", l.Spare, l.Verdict)
	}
	if l := line(t, a, "play-climb-attached-young", "highest"); math.Abs(l.Spare-(48*25.4-1430)) > 1e-6 {
		t.Errorf("young: spare %v", l.Spare)
	}
}

// Slats from x = 0 to 20 with an end board behind, its face at 60: the second plane is 40 behind them at both ends alike.
func TestSecondPlane(t *testing.T) {
	box := func(x0, x1, z0, z1 float64) geom.Box {
		return geom.NewBox(geom.V3{X: x0, Y: -1000, Z: z0}, geom.V3{X: x1, Y: 0, Z: z1})
	}
	for _, end := range []bunk.End{bunk.Left, bunk.Right} {
		s := plainScene(t, "EU")
		slats(250, 500)(s)
		s.Bed.Climb.End, s.Bed.Climb.Parts = end, []string{"climb.slat.1", "climb.slat.2"}
		mirror := func(x0, x1, z0, z1 float64) geom.Box {
			if end == bunk.Right {
				x0, x1 = 2100-x1, 2100-x0
			}
			return box(x0, x1, z0, z1)
		}
		s.Bed.Parts = []furniture.Part{
			{ID: "climb.slat.1", Box: mirror(0, 20, 160, 250)}, {ID: "climb.slat.2", Box: mirror(0, 20, 410, 500)},
			{ID: "board", Box: mirror(60, 80, 300, 400)}, {ID: "high board", Box: mirror(30, 40, 600, 700)},
		}
		f := answer(t, s, "climb-steps").Figures
		if len(f) != 1 || f[0].Name != "second_plane" || math.Abs(f[0].Value-40) > 1e-9 {
			t.Errorf("%s: %v, want 40", end, f)
		}
	}
}
