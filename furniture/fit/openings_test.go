package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
)

// The rail leaves 68 open. US at most 3.5 in = 88.9 (16 CFR 1213.3(a)(7)), EU 60 to 75 over the base (EN 747-1), AU never 95 to 230 nor
// 30 to 50 (Australian mandatory standard).
func TestRailOpenings(t *testing.T) {
	high := func(d float64) func(*Scene) { return func(s *Scene) { s.Bed.Openings[0].Top = 1580 + d } }
	byHand := func(d float64, how bunk.GapSetting) func(*Scene) {
		return func(s *Scene) { high(d)(s); s.Bed.Openings[0].Set, s.Bed.Sizes.Gaps = true, how }
	}
	const at = "wall.rail.1.fresh"
	runCases(t, "rail-openings", []bedCase{
		{"US", "US", nil, Fits, 88.9 - 68, at},
		{"EU", "EU", nil, Fits, 75 - 68, at},
		{"AU", "AU", nil, Fits, 68 - 50, at},
		{"wide enough to slip through", "US", high(100), DoesNotFit, 88.9 - 100, at},
		{"as wide as the block", "US", high(88.9), TooClose, 0, at},
		{"a limb trap", "AU", high(40), DoesNotFit, -10, at},
		{"both ends of the limb band are forbidden", "AU", high(50), DoesNotFit, 0, at},
		{"a head trap", "AU", high(100), DoesNotFit, -5, at},
		{"too small for EN 747-1", "EU", high(40), DoesNotFit, 40 - 60, at},
		{"the smaller side counts", "US", func(s *Scene) { s.Bed.Openings[0].Top, s.Bed.Openings[0].Wide = 1780, 80 }, Fits, 88.9 - 80, at},
		// by spacer 1.5875/sqrt(3) = 0.917, by eye 6.35/sqrt(3) = 3.667; a safety answer asks for twice that
		{"set by spacer, 2 to spare", "US", byHand(86.9, bunk.BySpacer), Fits, 2, at},
		{"set by spacer, 1.8 to spare", "US", byHand(87.1, bunk.BySpacer), TooClose, 1.8, at},
		{"set by eye, 7.4 to spare", "US", byHand(81.5, bunk.ByEye), Fits, 7.4, at},
		{"set by eye, 7.3 to spare", "US", byHand(81.6, bunk.ByEye), TooClose, 7.3, at},
		{"not said how it is set counts as by eye", "US", byHand(81.6, ""), TooClose, 7.3, at},
		{"no opening", "US", func(s *Scene) { s.Bed.Openings = s.Bed.Openings[1:] }, NotApplicable, none, ""},
		{"advice only", "CA", nil, None, none, ""},
		{"no bed", "US", unbuildable, CannotTell, none, ""},
	})
}

// A gap between boards that are 5-1/2 in wide together grows by 0.13 in as they dry from 19 to 8 % (FPL-RP-489, worked in its text:
// 0.13 in for a 5-1/2 in board). 3.4 in fresh fit, 3.53 in dried do not.
func TestDryingOpensAGap(t *testing.T) {
	s := plainScene(t, "US")
	o := &s.Bed.Openings[0]
	o.Top, o.Grows = 1580+3.4*25.4, 5.5*25.4
	a := answer(t, s, "rail-openings")
	fresh, dried := line(t, a, "us-rail-opening", "wall.rail.1.fresh"), line(t, a, "us-rail-opening", "wall.rail.1.dried")
	if fresh.Verdict != Fits || dried.Verdict != DoesNotFit || a.Verdict != DoesNotFit {
		t.Errorf("fresh %v, dried %v, answer %v", fresh.Verdict, dried.Verdict, a.Verdict)
	}
	if growth := (dried.Value - fresh.Value) / 25.4; math.Abs(growth-0.13) > 0.005 {
		t.Errorf("grows by %v in, want 0.13", growth)
	}
}

// A band is left by drying: 74 fresh are inside 60 to 75, 76.04 dried are not; the dried state decides.
func TestDryingLeavesABand(t *testing.T) {
	s := plainScene(t, "EU")
	s.Bed.Openings[0].Top, s.Bed.Openings[0].Grows = 1580+74, 85
	a := answer(t, s, "rail-openings")
	if l := line(t, a, "eu-rail-base-gap", "wall.rail.1.fresh"); l.Verdict != Fits {
		t.Errorf("fresh: %v", l.Verdict)
	}
	// (4.311 - 1.946) / (100 - 1.946) = 0.0241194 of 85 is 2.05015
	if l := line(t, a, "eu-rail-base-gap", "wall.rail.1.dried"); a.Verdict != DoesNotFit || math.Abs(l.Spare-(75-74-2.05015)) > 1e-4 {
		t.Errorf("dried: %v with %v, answer %v", l.Verdict, l.Spare, a.Verdict)
	}
}

// Drying makes an opening higher, never wider: where the width is the smaller side there is only one state.
func TestDryingKeepsTheWidth(t *testing.T) {
	s := plainScene(t, "US")
	s.Bed.Openings[0].Top, s.Bed.Openings[0].Wide, s.Bed.Openings[0].Grows = 1780, 80, 140
	for _, l := range answer(t, s, "rail-openings").Lines {
		if l.At != "wall.rail.1.fresh" {
			t.Errorf("a line at %s", l.At)
		}
	}
}

// The EN 747-1 band is that over the base; a second gap higher up is held to the others only.
func TestBaseGapIsTheLowest(t *testing.T) {
	s := plainScene(t, "EU")
	s.Bed.Openings = append(s.Bed.Openings, bunk.Opening{ID: "wall.rail.2", Side: "wall", Zone: bunk.ZoneRail, Bottom: 1700, Top: 1755, Wide: 1800})
	a := answer(t, s, "rail-openings")
	for _, l := range a.Lines {
		if l.At == "wall.rail.2.fresh" && (l.Row.ID == "eu-rail-base-gap" || l.Row.ID == "wi-camp-rail-gap") {
			t.Errorf("%s is asked of the upper gap", l.Row.ID)
		}
	}
	line(t, a, "or-camp-rail-gap", "wall.rail.2.fresh")
	line(t, a, "uk-1987-other-gap", "wall.rail.2.fresh")
}

// Bays between uprights that measure the same are one line with the parts of all.
func TestLikeBaysAreOneLine(t *testing.T) {
	s := plainScene(t, "US")
	twin := s.Bed.Openings[0]
	twin.ID, twin.Wide, twin.Parts = "wall.rail.1.2", 700, []string{"b"}
	s.Bed.Openings[0].Parts = []string{"a"}
	s.Bed.Openings = append(s.Bed.Openings, twin)
	a := answer(t, s, "rail-openings")
	count := 0
	for _, l := range a.Lines {
		if l.Row.ID == "us-rail-opening" {
			count++
		}
	}
	if count != 1 || len(a.Parts) != 2 {
		t.Errorf("%d lines about %v", count, a.Parts)
	}
}

// Upper opening 70, lower 840 x 1010 (smaller side 840). US: at most 3.5 in over the deck, never between 3.5 and 9 in (88.9 to 228.6)
// between the decks (16 CFR 1213.3(b)(2), (3)).
func TestEndOpenings(t *testing.T) {
	upper := func(d float64) func(*Scene) { return func(s *Scene) { s.Bed.Openings[1].Top = 1580 + d } }
	lower := func(d float64) func(*Scene) { return func(s *Scene) { s.Bed.Openings[2].Top = 430 + d } }
	runCases(t, "end-openings", []bedCase{
		{"US", "US", nil, Fits, 88.9 - 70, "left.upper.1.fresh"},
		{"AU", "AU", nil, Fits, 70 - 50, "left.upper.1.fresh"},
		{"EU", "EU", nil, Fits, 70 - 12, "left.upper.1.fresh"},
		{"too wide over the deck", "US", upper(90), DoesNotFit, 88.9 - 90, "left.upper.1.fresh"},
		{"as wide as the block", "US", upper(88.9), TooClose, 0, "left.upper.1.fresh"},
		{"the height may be the trap", "US", lower(100), DoesNotFit, 88.9 - 100, "left.lower.1.fresh"},
		{"as wide as the ball", "US", func(s *Scene) { s.Bed.Openings[2].Wide = 228.6 }, TooClose, 0, "left.lower.1.fresh"},
		{"a finger trap", "EU", upper(9), DoesNotFit, -2, "left.upper.1.fresh"},
		{"7 is allowed", "EU", upper(7), Fits, 0, "left.upper.1.fresh"},
		{"no opening", "US", func(s *Scene) { s.Bed.Openings = s.Bed.Openings[:1] }, NotApplicable, none, ""},
		{"advice only", "CA", nil, None, none, ""},
		{"no bed", "US", unbuildable, CannotTell, none, ""},
	})
}

// 16 CFR 1213.4(c)(2): the same opening once more with the thickest mattress in it. Bare it is 430 to 660 = 230 high and clears the
// ball; the mattress, top at 500, leaves 160, a trap. A thicker one, top at 600, leaves 60; one to 700 closes it.
func TestMadeUpOpening(t *testing.T) {
	for _, c := range []struct {
		mattressTop, left float64
		want              Verdict
	}{{500, 160, DoesNotFit}, {600, 60, Fits}, {700, 0, NotApplicable}} {
		s := plainScene(t, "US")
		s.Bed.Openings[2].Top, s.Bed.Lower.MattressTop = 660, c.mattressTop
		a := answer(t, s, "end-openings")
		if l := line(t, a, "us-lower-end-opening", "left.lower.1.fresh"); l.Verdict != Fits || l.Value != 230 {
			t.Errorf("bare: %v, %v", l.Verdict, l.Value)
		}
		at := "left.lower.1.made-up.fresh"
		if c.want == NotApplicable {
			at = "left.lower.1.made-up"
		}
		if l := line(t, a, "us-lower-end-opening-made-up", at); l.Verdict != c.want || l.Value != c.left {
			t.Errorf("mattress to %v: %v with %v left, want %v with %v", c.mattressTop, l.Verdict, l.Value, c.want, c.left)
		}
	}
}

// An opening ends at the deck that crosses it: 1450 to 1560 shows 60 over the upper deck at 1500, 300 to 1440 begins at the lower deck,
// and one between the decks that reaches past the upper slats ends at their underside, 1480.
func TestDecksCloseOpenings(t *testing.T) {
	s := plainScene(t, "US")
	s.Bed.Openings[1].Bottom, s.Bed.Openings[1].Top = 1450, 1560
	s.Bed.Openings[2].Bottom, s.Bed.Openings[2].Top, s.Bed.Openings[2].Wide = 300, 1490, 2000
	a := answer(t, s, "end-openings")
	if l := line(t, a, "us-upper-end-opening", "left.upper.1.fresh"); l.Value != 60 {
		t.Errorf("over the deck: %v", l.Value)
	}
	if l := line(t, a, "us-lower-end-opening", "left.lower.1.fresh"); l.Value != 1480-350 {
		t.Errorf("between the decks: %v", l.Value)
	}
}

// Heights of scope rows are over the floor: on carpet the bed sinks, and 605 over the feet is 597 over the floor.
func TestGapScopeIsOverTheFloor(t *testing.T) {
	s := plainScene(t, "AU")
	s.Bed.Openings[2].Bottom, s.Bed.Openings[2].Top = 605, 705
	if l := line(t, answer(t, s, "end-openings"), "au-gap-head", "left.lower.1.fresh"); l.Verdict != DoesNotFit {
		t.Errorf("on a hard floor: %v", l.Verdict)
	}
	s.Feet = -8
	if l := line(t, answer(t, s, "end-openings"), "au-gap-head", "left.lower.1.fresh"); l.Verdict != NotApplicable {
		t.Errorf("on carpet: %v", l.Verdict)
	}
	s.Stands = false
	if l := line(t, answer(t, s, "end-openings"), "au-gap-head", "left.lower.1.fresh"); l.Verdict != DoesNotFit {
		t.Errorf("without a place: %v", l.Verdict)
	}
}

// The play analogue of a body is asked of the tightest opening over 600 that takes one (EN 1176-1): 200 is 30 short of 230.
func TestBodyOpening(t *testing.T) {
	s := plainScene(t, "EU")
	s.Bed.Openings[2].Bottom, s.Bed.Openings[2].Top = 700, 900
	if l := line(t, answer(t, s, "end-openings"), "play-large-opening", "body"); l.Spare != 200-230 || l.Verdict != None {
		t.Errorf("spare %v, %v", l.Spare, l.Verdict)
	}
}
