package fit_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/people"
)

// TestImpactArea: rule cases c41-a and c41-b (EN 1176-1, secondary), the end of the flat part, and a grip 1 m over the fall that hangs
// from it (calc-hang-fall).
func TestImpactArea(t *testing.T) {
	for _, c := range []struct{ fall, want float64 }{
		{1400, 1500},
		{1500, 1500}, // 2/3 x 1500 + 500: both parts meet
		{1800, 1700},
	} {
		if got := fit.ImpactArea(c.fall); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("a fall of %g: %g, want %g", c.fall, got, c.want)
		}
	}
	if got := fit.ImpactArea(fit.HangFall(2800)); math.Abs(got-1700) > 1e-9 {
		t.Errorf("hanging at 2800 falls as 1800 does: %g, want 1700", got)
	}
}

// TestBunkReachRuleCase: rule case c67-a, root((742 - 110)^2 - (1600 - 1332)^2).
func TestBunkReachRuleCase(t *testing.T) {
	if got, ok := people.BunkReach(1332, 742, 1600); !ok || math.Abs(got-572) > 2 {
		t.Errorf("reach %g (%v), want 572 to within 2", got, ok)
	}
}

// TestSlopeDistance by hand: a 3-4-5 slope. Knee 1000, rail 400 out: the slope is 1000 + 400 x 3/4 = 1300 up there; a rail top at 1050 is
// 250 below it and 250 x 4/5 = 200 from it. The distance is the same over and under the slope, and level it is the height itself.
func TestSlopeDistance(t *testing.T) {
	steep := math.Atan2(3, 4) * 180 / math.Pi
	for _, c := range []struct{ knee, run, slope, top, want float64 }{
		{1000, 400, steep, 1050, 200},
		{1000, 400, steep, 1550, 200},
		{2400, 400, 0, 1700, 700},
	} {
		if got := fit.SlopeDistance(c.knee, c.run, c.slope, c.top); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%v: %g, want %g", c, got, c.want)
		}
	}
}

// TestWallGapRuleCases: rule cases c26-a to c26-i: the top rail stands off the wall by the gap of the case, the posts of 45 before it by
// less. The spare by hand: outside a band
// max(a - x, x - b), with 75..230 (EN 747-1 warning text) and 95..230 (Queensland Government guidance). What counts at the ends of a band
// is tested with the rows themselves.
func TestWallGapRuleCases(t *testing.T) {
	for _, c := range []struct {
		row        string
		gap, spare float64
	}{
		{"eu-adjoining-gap", 50, 25},
		{"eu-adjoining-gap", 75, 0},
		{"eu-adjoining-gap", 80, -5},
		{"eu-adjoining-gap", 120, -45},
		{"eu-adjoining-gap", 230, 0},
		{"eu-adjoining-gap", 231, 1},
		{"qld-wall-gap", 75, 20},
		{"qld-wall-gap", 80, 15},
		{"qld-wall-gap", 120, -25},
	} {
		l := wallGapLine(t, c.row, c.gap)
		if math.Abs(l.Value-c.gap) > 1e-6 || math.Abs(l.Spare-c.spare) > 1e-6 {
			t.Errorf("%s at %g: have %g, spare %g, want %g", c.row, c.gap, l.Value, l.Spare, c.spare)
		}
	}
}

// wallGapLine stands the plain bed off its wall and returns the line of a row there.
func wallGapLine(t *testing.T, row string, gap float64) fit.Line {
	t.Helper()
	job := fmt.Sprintf("places = [\"EU\", \"AU\"]\n[place]\ngap = \"%g mm\"\n", gap-45)
	_, answers := ask(t, "wall gap", overlay(t, "plain", []byte(job)))
	a := answers[slices.IndexFunc(answers, func(a fit.Answer) bool { return a.ID == "wall-gap" })]
	i := slices.IndexFunc(a.Lines, func(l fit.Line) bool { return l.Row.ID == row && l.At == "wall.AB" })
	if i < 0 {
		t.Fatalf("no line of %s at the wall", row)
	}
	return a.Lines[i]
}

// TestShelfGapRuleCase: rule case c27-a. A shelf 150 over the outer top edge of the rail is in the band 75..230 by min(75, 80): the cleat's
// underside at 1695 + 150 puts the board's top at 1845 + 95 + 18.
func TestShelfGapRuleCase(t *testing.T) {
	job := "places = [\"EU\"]\n[[bed.shelf]]\nfor = \"upper\"\nheight = \"1958 mm\"\n"
	_, answers := ask(t, "shelf gap", overlay(t, "plain", []byte(job)))
	a := answers[slices.IndexFunc(answers, func(a fit.Answer) bool { return a.ID == "wall-gap" })]
	i := slices.IndexFunc(a.Lines, func(l fit.Line) bool { return l.At == "wall.shelf" })
	if i < 0 || math.Abs(a.Lines[i].Spare+75) > 1e-6 || a.Lines[i].Verdict != fit.DoesNotFit {
		t.Errorf("%+v, want 75 short", a.Lines)
	}
}
