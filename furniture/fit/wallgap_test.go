package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/room"
)

// wardrobe stands at wall CD, from 1004.75 to 1304.75 off corner D: 100 beside the right end of the bed, which is 1404.75 off; the end's board of 19.05 lies 38.1 - 19.05 = 19.05 farther in.
func wardrobe(high float64) func(*job.Job) {
	return func(j *job.Job) {
		j.Places = []string{"EU"}
		j.Room.Pieces = []room.Piece{{
			Key: "wardrobe", Spot: room.Spot{Wall: "CD", From: "D", At: read(1004.75), Out: read(0)},
			Wide: read(300), Deep: read(600), High: read(high), Climb: "no",
		}}
	}
}

// TestWallGapCupboard: a cupboard beside the end counts like a wall (EN 747-1 warning text, secondary: not more than 75 up to 230); one
// that ends far below the rail's top, 1798.45 up, does not stand beside it.
func TestWallGapCupboard(t *testing.T) {
	a := stage(t, bedroom(3500, 3000, wardrobe(2000))).Nominal(wallGap)
	l := line(t, a, "eu-adjoining-gap", "right.furniture.wardrobe")
	nearly(t, "the gap", l.Value, 119.05)
	nearly(t, "its spare", l.Spare, -44.05)
	if a.Verdict != DoesNotFit {
		t.Errorf("%v", a.Verdict)
	}
	low := stage(t, bedroom(3500, 3000, wardrobe(800))).Nominal(wallGap)
	for _, l := range low.Lines {
		if l.At == "right.furniture.wardrobe" {
			t.Errorf("a chest 800 high is %g away", l.Value)
		}
	}
}

// TestWallGapAsksForCupboards: furniture whose place nobody read may stand beside the bed.
func TestWallGapAsksForCupboards(t *testing.T) {
	s := stage(t, bedroom(3500, 3000, wardrobe(2000), func(j *job.Job) { j.Room.Pieces[0].At = nil }))
	if a := s.Nominal(wallGap); a.Verdict != CannotTell || a.Ask == "" {
		t.Errorf("%v, asks %q", a.Verdict, a.Ask)
	}
}

// TestGapThatRunsThroughTheBand: from 60 to 300 along a crooked wall, a gap is somewhere 152.5, in the middle of 75 to 230, and so it is
// from 80 on, which lies in the band already; from 200 on, 200 is the worst of it. From 250 on it is clear of the band all along.
func TestGapThatRunsThroughTheBand(t *testing.T) {
	s := stage(t, bedroom(3500, 3000))
	widest := Reading{At: "left.DA", Rows: []string{"eu-adjoining-gap"}, Have: 300}
	for narrow, want := range map[float64]float64{60: 152.5, 80: 152.5, 200: 200} {
		if out := s.through(widest, narrow); len(out) != 1 || out[0].Have != want {
			t.Errorf("from %g: %+v", narrow, out)
		}
	}
	if out := s.through(widest, 250); len(out) > 0 {
		t.Errorf("%+v", out)
	}
}

// TestSlopeDistance: the knee wall is 1850 high and the rail's top 1695 at the wall itself: 155 straight up, 155 cos 45 square to the
// slope.
func TestSlopeDistance(t *testing.T) {
	nearly(t, "square to the slope", SlopeDistance(1850, 0, 45, 1695), 155/math.Sqrt2)
	nearly(t, "farther out", SlopeDistance(1000, 800, 45, 1500), 300/math.Sqrt2)
}
