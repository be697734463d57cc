package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
)

// readOnce makes the lengths of the walls single readings of somebody else.
func readOnce(j *job.Job) {
	for i := range j.Room.Walls {
		j.Room.Walls[i].Length[0].How = room.Once
	}
	j.Room.Diagonals[0].Length[0].How = room.Once
}

// nearly fails where a value is not what was worked out by hand. The corners of the test rooms lie within a nanometre or so of round
// numbers, since their diagonals are rounded.
func nearly(t *testing.T, what string, got, want float64) {
	t.Helper()
	if !(math.Abs(got-want) <= 2e-5) {
		t.Errorf("%s is %.6f, want %.6f", what, got, want)
	}
}

// TestStandsEachWallForItself: the bed is 2095.25 long, pushed against wall BC; in a room 2100 wide 4.75 is left to wall DA. The walls that
// it is set against are 0 away and sure, which must not hide that 4.75 of walls read once is too close to call.
func TestStandsEachWallForItself(t *testing.T) {
	s := stage(t, bedroom(2100, 3000, readOnce))
	a := s.Ask(stands)
	if a.Verdict != TooClose || a.Lines[a.Decides].At != "wall.DA" {
		t.Errorf("%v at %s, want too close at wall.DA", a.Verdict, a.Lines[a.Decides].At)
	}
	nearly(t, "to wall DA", line(t, a, "own-stands", "wall.DA").Value, 4.75)
	nearly(t, "to wall AB", line(t, a, "own-stands", "wall.AB").Value, 3000-1071.45)
	nearly(t, "to the walls it is set against", line(t, a, "own-stands", "walls").Value, 0)
}

// TestStandsLongBed: in a room 2090 wide the bed is 5.25 too long, whichever end it is counted from.
func TestStandsLongBed(t *testing.T) {
	for from, wall := range map[string]string{"C": "wall.DA", "D": "wall.BC"} {
		s := stage(t, bedroom(2090, 3000, func(j *job.Job) { j.Place.From = from }))
		a := s.Nominal(stands)
		if a.Verdict != DoesNotFit || a.Lines[a.Decides].At != wall {
			t.Errorf("from %s: %v at %s", from, a.Verdict, a.Lines[a.Decides].At)
		}
		nearly(t, "the shortage from "+from, a.Spare, -5.25)
	}
}

// TestStandsAtTheEndOnly: a ladder on the end that is pushed against a wall stands out into it, so there is no pushing it there.
func TestStandsAtTheEndOnly(t *testing.T) {
	s := stage(t, bedroom(3500, 3000, func(j *job.Job) { j.Bed.Ladder = &bunk.Ladder{OnEnd: true, At: bunk.Left} }))
	if a := s.Nominal(stands); a.Verdict != DoesNotFit || a.Lines[a.Decides].At != "walls" {
		t.Errorf("%v at %s", a.Verdict, a.Lines[a.Decides].At)
	}
}
