package fit

import (
	"testing"

	"bunkwright/furniture/bunk"
)

// The rails stand 180 over the mattress and 300 over the base. US 5 in = 127 (16 CFR 1213.3(a)(6)), EU and AU 160 over the mattress and
// 260 over the base (EN 747-1, Australian mandatory standard).
func TestRailHeight(t *testing.T) {
	thick := func(d float64) func(*Scene) { return func(s *Scene) { s.Bed.Upper.MattressTop = 1500 + d } }
	runCases(t, "rail-height", []bedCase{
		{"US", "US", nil, Fits, 180 - 127, "rail"},
		{"EU", "EU", nil, Fits, 180 - 160, "barrier"},
		{"AU", "AU", nil, Fits, 180 - 160, "barrier"},
		{"a thick mattress in the US", "US", thick(180), DoesNotFit, 120 - 127, "rail"},
		{"exactly 5 in is enough", "US", thick(173), Fits, 0, "rail"},
		{"a thin mattress under a low rail", "EU", func(s *Scene) {
			thick(60)(s)
			for i := range s.Bed.Guards {
				s.Bed.Guards[i].Top = 1740
			}
		}, DoesNotFit, 240 - 260, "barrier.base"},
		// 6 mm to spare, tolerance 9 as a half-width: u = 9/sqrt(3) = 5.2, safety asks 2 u = 10.4
		{"within the build tolerance", "US", func(s *Scene) { thick(167)(s); s.Bed.Sizes.Tolerance = mm(9) }, TooClose, 133 - 127, "rail"},
		{"no rail at all stands at the deck", "US", func(s *Scene) { s.Bed.Guards = nil }, DoesNotFit, -120 - 127, "rail"},
		{"advice only", "CA", nil, None, none, ""},
		{"a bed too low to be covered, outside figures stay", "US", low, None, none, ""},
		{"no bed", "US", unbuildable, CannotTell, none, ""},
	})
}

// A low end is a matter of the end rules in the US (1213.3(b)), but part of the barrier in EU and AU texts.
func TestRailHeightLowEnd(t *testing.T) {
	low := func(s *Scene) { s.Bed.Guards[3].Top = 1700 }
	runCases(t, "rail-height", []bedCase{
		{"US", "US", low, Fits, 53, "rail"},
		{"EU", "EU", low, DoesNotFit, 80 - 160, "barrier"},
	})
}

// An end that only its member closes (top at 1440 + 140) has no barrier, so that its height does not count as one.
func TestEndMemberIsNoBarrier(t *testing.T) {
	s := plainScene(t, "EU")
	s.Bed.Guards[3].Top = 1580
	if a := answer(t, s, "rail-height"); a.Verdict != Fits {
		t.Errorf("rail-height: %v", a.Verdict)
	}
	if a := answer(t, s, "rail-sides"); a.Verdict != DoesNotFit || a.Spare != -1 {
		t.Errorf("rail-sides: %v, spare %v", a.Verdict, a.Spare)
	}
}

// Thickest mattress: 300 - 127 = 173 in the US, 300 - 160 = 140 in the EU and AU (calc-max-mattress-us and -eu); Canada, which
// has no limit of its own, takes the number of the US as advice. A bed that the text does not cover has none.
func TestThickestMattress(t *testing.T) {
	s := plainScene(t, "US EU AU NZ CA")
	want := []Figure{{"max_mattress.US", 173, "mm"}, {"max_mattress.EU", 140, "mm"}, {"max_mattress.AU", 140, "mm"}, {"max_mattress.NZ", 140, "mm"}, {"max_mattress.CA", 173, "mm"}}
	got := answer(t, s, "rail-height").Figures
	if len(got) != len(want) {
		t.Fatalf("%v, want %v", got, want)
	}
	for i := range want {
		if got[i] != want[i] {
			t.Errorf("%v, want %v", got[i], want[i])
		}
	}
	for name, edit := range map[string]func(*Scene){
		"too low to be covered": low,
		"no mattress goes under": func(s *Scene) {
			for i := range s.Bed.Guards {
				s.Bed.Guards[i].Top = 1600
			}
		},
	} {
		s := plainScene(t, "US")
		edit(s)
		if got := answer(t, s, "rail-height").Figures; len(got) != 0 {
			t.Errorf("%s: %v", name, got)
		}
	}
}

// Rails asked: one on each long side and the full-length one away from the ladder (16 CFR 1213.3(a)(1), (2), (4)); four sides in EU, FR
// and AU; all sides in CA. Beside the wall a rail is advice of Queensland.
func TestRailSides(t *testing.T) {
	drop := func(k int) func(*Scene) {
		return func(s *Scene) {
			s.Bed.Guards = append(append([]bunk.GuardAt{}, s.Bed.Guards[:k]...), s.Bed.Guards[k+1:]...)
		}
	}
	runCases(t, "rail-sides", []bedCase{
		{"all sides, US", "US", nil, Fits, 0, ""},
		{"all sides, EU", "EU", nil, Fits, 0, "sides"},
		{"all sides, CA", "CA", nil, Fits, none, "sides.all"},
		{"no rail on the wall, US", "US", drop(0), DoesNotFit, none, "wall"},
		{"no rail on the front, EU", "EU", drop(1), DoesNotFit, -1, "sides"},
		{"no rail on the front, FR", "FR", drop(1), DoesNotFit, -1, "sides"},
		{"no rail at an end, AU", "AU", drop(3), DoesNotFit, -1, "sides"},
		{"no rail at an end, CA", "CA", drop(3), DoesNotFit, none, "sides.all"},
		{"a rail short on both sides", "US", func(s *Scene) { s.Bed.Guards[0].Full = false }, DoesNotFit, none, "full"},
		{"a bed too low to be covered", "US", low, NotApplicable, none, ""},
		{"no bed", "CA", unbuildable, CannotTell, none, ""},
	})
}

// The row's own words: away from the ladder, or against the wall.
func TestFullRailAway(t *testing.T) {
	for _, c := range []struct {
		full, ladder, wall string
		want               bool
	}{
		{"wall", "front", "wall", true},
		{"front", "front", "wall", false},
		{"front", "left", "wall", true},
		{"front", "front", "front", true},
		{"", "front", "wall", false},
	} {
		if got := FullRailAway(c.full, c.ladder, c.wall); got != c.want {
			t.Errorf("full rail on %q, ladder on %q, wall at %q: %v", c.full, c.ladder, c.wall, got)
		}
	}
}
