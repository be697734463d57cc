package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/timber"
)

// Gaps of 60, set by spacer: u = 1.5875/sqrt(3) = 0.917. A foam mattress takes 3 in = 76.2 (own-slat-gap, common practice), EN 747-1 75.
// In the US the maker confirms that the slats are fastened.
func TestSlatGaps(t *testing.T) {
	fast := confirm("us-slats-fastened")
	gap := func(d float64) func(*Scene) {
		return func(s *Scene) { fast(s); s.Bed.Lower.SlatGap = d }
	}
	runCases(t, "slat-gaps", []bedCase{
		{"EU", "EU", nil, Fits, 75 - 60, "top"},
		{"US, fastened", "US", fast, Fits, none, ""},
		{"US, not confirmed yet", "US", nil, CannotTell, none, "confirmed.us-slats-fastened"},
		{"US, the maker says no", "US", func(s *Scene) { fast(s); s.Job.Confirmed["us-slats-fastened"] = "no" }, DoesNotFit, none, "confirmed.us-slats-fastened"},
		{"too wide below", "EU", gap(80), DoesNotFit, 75 - 80, "bottom"},
		{"too wide by the need alone", "UK", gap(80), DoesNotFit, 75 - 80, "bottom"},
		{"a place without a text", "CA", gap(80), DoesNotFit, 76.2 - 80, "bottom"},
		{"1.6 to spare by spacer", "EU", gap(73.4), Fits, 1.6, "bottom"}, // 1.645 u = 1.508
		{"1.4 to spare by spacer", "EU", gap(73.6), TooClose, 1.4, "bottom"},
		{"1.6 to spare by eye", "EU", func(s *Scene) { gap(73.4)(s); s.Bed.Sizes.Gaps = bunk.ByEye }, TooClose, 1.6, "bottom"},
		{"no bed", "EU", unbuildable, CannotTell, none, "slats"},
	})
}

// Open area: 13 gaps of 60 over 920 - 2 x 40 = 840 are 655200 mm2 = 6552 cm2, far over the 35 cm2 of EN 747-1.
func TestSlatVent(t *testing.T) {
	if l := line(t, answer(t, plainScene(t, "EU"), "slat-gaps"), "eu-base-vent", "top.open"); math.Abs(l.Value-6552) > 1e-9 || l.Verdict != Fits {
		t.Errorf("%v cm2, %v", l.Value, l.Verdict)
	}
}

// slat_cases.csv sla-001: 13 slats of 3.5 in in 75 in leave 2.1071 in. The gap that the question measures is the one of that formula.
func TestSlatGapOfABuiltBed(t *testing.T) {
	s := stage(t, bedroom(3500, 2990))
	d := s.Bed.Upper
	want := timber.SlatGap(s.Bed.Inside.Long, d.SlatWide, d.SlatCount)
	if l := line(t, answer(t, s, "slat-gaps"), "own-slat-gap", "top"); math.Abs(l.Value-want) > 1e-9 {
		t.Errorf("gap %v, formula %v", l.Value, want)
	}
	if got := timber.SlatGap(75, 3.5, 13); math.Abs(got-2.1071) > 1e-4 {
		t.Errorf("sla-001: %v", got)
	}
}
