package fit

import (
	"testing"

	"bunkwright/furniture/bunk"
)

// Way in 360: at most 15 in = 381 from the short rail to the end (16 CFR 1213.3(a)(3)), 300 to 400 clear (EN 747-1), at most 400
// (Australian mandatory standard). Full-length rail: at most 0.22 in = 5.588 to each end (1213.3(a)(2)).
func TestRailEnds(t *testing.T) {
	way := func(d float64) func(*Scene) {
		return func(s *Scene) { s.Bed.WayIn.Clear, s.Bed.Guards[1].GapFrom = d, d }
	}
	full := func(from, to float64) func(*Scene) {
		return func(s *Scene) { s.Bed.Guards[0].GapFrom, s.Bed.Guards[0].GapTo = from, to }
	}
	runCases(t, "rail-ends", []bedCase{
		{"US", "US", nil, Fits, 5.588, "rail.wall.full"},
		{"EU", "EU", nil, Fits, 400 - 360, "way-in"},
		{"the larger end counts", "US", full(2, 6), DoesNotFit, 5.588 - 6, "rail.wall.full"},
		{"a short rail too short", "US", way(400), DoesNotFit, 381 - 400, "rail.front.left"},
		{"the other end of it by itself", "US", func(s *Scene) { s.Bed.Guards[1].GapTo = 382 }, DoesNotFit, -1, "rail.front.right"},
		{"too narrow to get in", "EU", way(290), DoesNotFit, 290 - 300, "way-in"},
		{"too wide", "AU", way(410), DoesNotFit, 400 - 410, "way-in"},
		{"exactly 400", "AU", way(400), Fits, 0, "way-in"},
		// 10 to spare, u = 9/sqrt(3) = 5.2, safety asks 10.4
		{"within the build tolerance", "AU", func(s *Scene) { way(390)(s); s.Bed.Sizes.Tolerance = mm(9) }, TooClose, 10, "way-in"},
		{"nobody said how to get up", "EU", func(s *Scene) { s.Bed.WayIn, s.Bed.Steps = bunk.WayIn{}, nil }, CannotTell, none, "way-in"},
		{"advice only", "CA", nil, None, none, ""},
		{"no bed", "US", unbuildable, CannotTell, none, ""},
	})
}

// AS/NZS 4220 tests gaps from 600 over the floor; a bed with its base lower than that has none.
func TestRailEndsScope(t *testing.T) {
	s := plainScene(t, "AU")
	s.Bed.Upper.Top, s.Bed.WayIn.Clear = 599, 500
	if l := line(t, answer(t, s, "rail-ends"), "au-gap-rollout", "way-in"); l.Verdict != NotApplicable {
		t.Errorf("base at 599: %v", l.Verdict)
	}
	s.Bed.Upper.Top = 600
	if l := line(t, answer(t, s, "rail-ends"), "au-gap-rollout", "way-in"); l.Verdict != DoesNotFit {
		t.Errorf("base at 600: %v", l.Verdict)
	}
}

// With the way in at an end both long rails run through: one of them is the full-length one, the other is held to 15 in.
func TestRailEndsTwoFullRails(t *testing.T) {
	s := plainScene(t, "US")
	s.Bed.WayIn = bunk.WayIn{Side: "left", Clear: 360, Short: 360}
	s.Bed.Guards[0].GapTo, s.Bed.Guards[1] = 9, bunk.GuardAt{Side: "front", Top: 1800, Full: true, GapTo: 3}
	a := answer(t, s, "rail-ends")
	if l := line(t, a, "us-rail-full-length-gap", "rail.front.full"); l.Value != 3 || a.Verdict != Fits {
		t.Errorf("full-length rail with %v, answer %v", l.Value, a.Verdict)
	}
}

// One way in of at most four (AS/NZS 4220:2010).
func TestWaysIn(t *testing.T) {
	if l := line(t, answer(t, plainScene(t, "AU"), "rail-ends"), "au-access-count", "ways-in"); l.Value != 1 || l.Spare != 3 {
		t.Errorf("%v ways in, spare %v", l.Value, l.Spare)
	}
}
