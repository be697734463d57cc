package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
)

// The questions of a bed as it is built from its stock, against a hand calculation in mm. Deck at 1500, slats 1x4 (19.05), ledges 2x2
// (38.1): underside of the frame 1500 - 19.05 - 38.1 = 1442.85; side rail 2x6 (139.7): its top 1582.55; a gap of 3 in (76.2) and a guardrail
// 1x6 (139.7): top 1798.45.
func TestBuiltBed(t *testing.T) {
	s := stage(t, bedroom(3500, 2990, sleepers, func(j *job.Job) { j.Bed.Ladder = &bunk.Ladder{}; j.Places = []string{"US", "EU"} }))
	for _, c := range []struct {
		question, row, at string
		want              float64
	}{
		{"rail-height", "us-rail-over-mattress", "rail", 1798.45 - 1650},
		{"rail-height", "eu-rail-over-base", "barrier.base", 1798.45 - 1500},
		{"rail-sides", "eu-rail-four-sides", "sides", 4},
		{"rail-ends", "us-rail-full-length-gap", "rail.wall.full", 0},
		{"rail-ends", "us-rail-short-end-gap", "rail.front.right", 14.5 * 25.4}, // the foot end, by default
		{"rail-ends", "eu-access-opening", "way-in", 14.5 * 25.4},
		{"rail-openings", "us-rail-opening", "wall.rail.1.1.fresh", 76.2},
		{"rail-openings", "us-rail-opening", "wall.rail.1.1.dried", 76.2 + 0.0241194*139.7}, // half of each board: 139.7
		{"end-height", "us-end-over-mattress", "end.left", 1798.45 - 1650},
		{"end-height", "us-end-share", "end.right.share", 100},
		{"end-openings", "us-upper-end-opening", "left.upper.1.fresh", 76.2},
		// across: 900 + 19.05 of play, side rails of 38.1 and posts of two layers of 38.1, less both layers at both sides
		{"end-openings", "us-lower-end-opening", "left.lower.1.fresh", 900 + 19.05 + 4*38.1 - 4*38.1},
		{"ladder-steps", "eu-tread-pitch", "treads", 300}, // 1500 in 5, nearest to 11 in
		{"ladder-steps", "ladder-clear-gap", "treads.clear", 300 - 38.1},
		{"ladder-steps", "eu-tread-depth", "depth", 88.9},
		{"ladder-steps", "us-ladder-lower-bunk-gap", "lower-mattress", 600 - 38.1 - 500},
		{"ladder-steps", "f1427-ladder-top-gap", "top-tread", 38.1}, // the post's layer lies between tread and side rail
		{"ladder-steps", "imc-toe-depth", "toes", 88.9/2 + 38.1},
		{"mattress-fits", "own-mattress-gap-need", "top.long", 19.05},
		{"nothing-catches", "eu-post-over-neighbour", "posts", 0},
	} {
		if l := line(t, answer(t, s, c.question), c.row, c.at); math.Abs(l.Value-c.want) > 1e-3 {
			t.Errorf("%s, %s at %s: %v, want %v", c.question, c.row, c.at, l.Value, c.want)
		}
	}
}

// A property that must always hold: a thicker mattress never leaves more rail, a wider gap setting never makes a gap surer.
func TestMoreMattressLessRail(t *testing.T) {
	last := math.Inf(1)
	for thick := 50.0; thick < 300; thick += 25 {
		s := stage(t, bedroom(3500, 2990, func(j *job.Job) { j.Bed.Upper.MattressThick = mm(thick) }))
		a := answer(t, s, "rail-height")
		if a.Spare >= last {
			t.Errorf("%v thick leaves %v, thinner left %v", thick, a.Spare, last)
		}
		last = a.Spare
	}
}

var bedAnswers int

// BenchmarkBedQuestions asks every question about the bed itself.
func BenchmarkBedQuestions(b *testing.B) {
	s := stage(b, bedroom(3500, 2990, sleepers, func(j *job.Job) { j.Bed.Ladder, j.Bed.Climb = &bunk.Ladder{}, &bunk.Climb{} }))
	bed := []Question{oldEnough, railHeight, railSides, railEnds, railOpenings, endHeight, endOpenings, ladderSteps, climbSteps, slatGaps, mattressFits, nothingCatches, marks}
	if a := s.Nominal(railHeight); math.Abs(a.Spare-21.45) > 1e-6 {
		b.Fatalf("rail-height: %v to spare, want 21.45", a.Spare)
	}
	b.ReportAllocs()
	for b.Loop() {
		for _, q := range bed {
			bedAnswers += len(s.Nominal(q).Lines)
		}
	}
}
