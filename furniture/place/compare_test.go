package place_test

import (
	"context"
	"math"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/place"
)

// TestCompare holds a bedroom against the same with the deck 50 mm lower and no ladder: by hand the top headroom is 50 mm more, the lower one 50 mm
// less, and there are fewer boards.
func TestCompare(t *testing.T) {
	a := bedroom(3600, 3200)
	b := bedroom(3600, 3200, func(j *job.Job) {
		j.Bed.Upper.Height = mm(1350)
		j.Bed.Ladder = nil
	})
	c, err := place.Compare(context.Background(), []place.Named{{Name: "as it is", Job: a}, {Name: "low", Job: b}})
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []float64{50, -50} {
		if free := c.Heads[i].Free; math.Abs(free[1]-free[0]-want) > 1e-6 {
			t.Errorf("%s: %v, want %g more", c.Heads[i].ID, free, want)
		}
	}
	pieces := [2]int{}
	for _, r := range c.Boards {
		pieces[0], pieces[1] = pieces[0]+r.Pieces[0], pieces[1]+r.Pieces[1]
		if !(r.Long[0] > 0) {
			t.Errorf("%s: %v mm", r.Stock, r.Long)
		}
	}
	if s := scene(t, a); pieces[0] != len(s.Bed.Parts) || pieces[1] >= pieces[0] {
		t.Errorf("%v pieces, the bed has %d", pieces, len(s.Bed.Parts))
	}
	differ := map[string]bool{}
	for i := range c.Answers {
		differ[c.Answers[i].ID] = c.Answers[i].Differs()
	}
	if !differ["sit-up-top"] || !differ["ladder-steps"] || differ["old-enough"] || differ["room-height"] {
		t.Errorf("differ: %v", differ)
	}
}
