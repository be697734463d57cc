package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
)

// TestWalkwayWithoutLadder: one leaves over the front of the bed, 1928.55 before the far wall. The disc ends touching the doorway, 100 to
// 860 off wall BC, so its middle is at most 860 off that wall and the disc 1720 wide.
func TestWalkwayWithoutLadder(t *testing.T) {
	nearly(t, "the way", stage(t, bedroom(3500, 3000)).Nominal(walkway).Value, 1720)
}

// TestWalkwayFromASlopingLadder: the stiles' toes stand 88.9 / sin 75 + 1798.45 / tan 75 before the bed, farther than the lowest tread;
// the disc starts before them, and what is left to the far wall decides.
func TestWalkwayFromASlopingLadder(t *testing.T) {
	s := stage(t, bedroom(3500, 3000, func(j *job.Job) { j.Bed.Ladder = &bunk.Ladder{Angle: 75} }))
	slope := 75 * math.Pi / 180
	toe := 88.9/math.Sin(slope) + 1798.45/math.Tan(slope)
	nearly(t, "the way", s.Nominal(walkway).Value, 3000-1071.45-toe)
}

// TestWalkwayTooNarrowForCertain: a chest leaves 400 before the bed on the way to the door; another thing whose place nobody read cannot
// make that wider.
func TestWalkwayTooNarrowForCertain(t *testing.T) {
	chest := func(at float64) room.Piece {
		return room.Piece{Key: "chest", Spot: room.Spot{Wall: "AB", From: "A", At: read(at), Out: read(0)}, Wide: read(400), Deep: read(1528.55), High: read(900)}
	}
	s := stage(t, bedroom(3500, 3000, func(j *job.Job) {
		j.Bed.Ladder = &bunk.Ladder{} // at the foot end, 1531.75 to 1900.05 off wall DA
		j.Room.Pieces = []room.Piece{chest(2300), {Key: "desk"}}
	}))
	a := s.Nominal(walkway)
	nearly(t, "the way", a.Value, 400)
	if a.Verdict != DoesNotFit {
		t.Errorf("%v", a.Verdict)
	}
	if l := line(t, a, "own-walkway", "unread"); l.Verdict != CannotTell {
		t.Errorf("the desk: %v", l.Verdict)
	}
}
