package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
)

// Ends reach 180 over the mattress over all of the 920 between the posts (1000 less two posts of 40). US: 5 in = 127 over at least half
// the length (16 CFR 1213.3(b)(1)).
func TestEndHeight(t *testing.T) {
	// The end in two pieces: 200 over the mattress on the wall side up to y, 100 beyond it.
	steps := func(y float64) func(*Scene) {
		return func(s *Scene) {
			s.Bed.Guards[3] = bunk.GuardAt{Side: "right", Top: 1820, From: 0, To: y}
			s.Bed.Guards = append(s.Bed.Guards, bunk.GuardAt{Side: "right", Top: 1720, From: y, To: 1000})
		}
	}
	short := func(to float64) func(*Scene) { return func(s *Scene) { s.Bed.Guards[2].To = to } }
	runCases(t, "end-height", []bedCase{
		{"whole", "US", nil, Fits, 180 - 127, "end.left"},
		{"low all along", "US", func(s *Scene) { s.Bed.Guards[3].Top = 1730 }, DoesNotFit, -50, "end.right.share"},
		// 40 to 500 is 460 of 920: exactly half is enough
		{"high over just half", "US", steps(500), Fits, 0, "end.right.share"},
		{"high over less than half", "US", steps(490), DoesNotFit, 100 - 127, "end.right"},
		// a gap for a ladder from 600 on leaves 560 of 920
		{"a way in at the end", "US", short(600), Fits, 180 - 127, "end.left"},
		// from 505 on, 465 of 920
		{"a wide way in at the end", "US", short(505), Fits, 100*465/920. - 50, "end.left.share"},
		{"most of the end open", "US", short(400), DoesNotFit, -120 - 127, "end.left"},
		{"no end at all", "US", func(s *Scene) { s.Bed.Guards = s.Bed.Guards[:2] }, DoesNotFit, none, ""},
		{"within the build tolerance", "US", func(s *Scene) { s.Bed.Upper.MattressTop = 1670; s.Bed.Sizes.Tolerance = mm(3) }, TooClose, 3, "end.left"},
		{"advice only", "CA", nil, None, none, ""},
		{"nothing asked here", "EU", nil, None, none, ""},
		{"a bed too low to be covered", "US", low, NotApplicable, none, ""},
		{"no bed", "US", unbuildable, CannotTell, none, ""},
	})
}

// The height of an end is the greatest that half its length reaches: 300 long at 10, 300 at 8, 400 at 2 of 1000: 300 are not half, 600 are.
func TestHeightOverHalf(t *testing.T) {
	list := []stretch{{2, 400}, {10, 300}, {8, 300}}
	for share, want := range map[float64]float64{30: 10, 31: 8, 50: 8, 60: 8, 61: 2, 100: 2} {
		if got := heightOverShare(list, 1000, share); got != want {
			t.Errorf("over %v %%: %v, want %v", share, got, want)
		}
	}
	if got := heightOverShare(nil, 1000, 50); !math.IsNaN(got) {
		t.Errorf("of nothing: %v", got)
	}
}
