package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
)

func laddered(j *job.Job) { j.Bed.Ladder = &bunk.Ladder{} }

// TestLanding: an upright ladder stands 88.9 out from the bed; before it the floor is free up to the far wall.
func TestLanding(t *testing.T) {
	a := stage(t, bedroom(3500, 3000, laddered)).Nominal(ladderLanding)
	nearly(t, "the landing", a.Value, 3000-1071.45-88.9)
}

// TestLandingInADoorsArc: the treads end 1900.05 off wall DA; the pin is 2500 off, so the leaf's outermost corner, root(760^2 + 35^2) from
// it, comes root(r^2 - 599.95^2) into the room at the edge of the landing.
func TestLandingInADoorsArc(t *testing.T) {
	s := stage(t, bedroom(3500, 3000, laddered, func(j *job.Job) { j.Room.Doors[0].At = read(1000) }))
	a := s.Nominal(ladderLanding)
	arc := math.Sqrt(760*760 + 35*35 - 599.95*599.95)
	nearly(t, "the landing", a.Value, 3000-1071.45-88.9-arc)
	if a.Lines[a.Decides].Parts[0] != "door.hall" {
		t.Errorf("ends at %v", a.Lines[a.Decides].Parts)
	}
}

// TestLandingOnARegister: a register in the floor 1000 to 1100 off the far wall ends the landing; one in the ceiling does not.
func TestLandingOnARegister(t *testing.T) {
	for in, want := range map[string]float64{"floor": 3000 - 1071.45 - 88.9 - 1100, "ceiling": 3000 - 1071.45 - 88.9} {
		s := stage(t, bedroom(3500, 3000, laddered, func(j *job.Job) {
			j.Room.Registers = []room.Register{{Key: "1", In: in, Spot: room.Spot{Wall: "AB", From: "A", At: read(1700), Out: read(1000)}, Wide: read(300), Deep: read(100)}}
		}))
		nearly(t, "with a register in the "+in, s.Nominal(ladderLanding).Value, want)
	}
}

// TestLandingTooShortForCertain: a chest 300 before the ladder is too near, whatever else stands there.
func TestLandingTooShortForCertain(t *testing.T) {
	s := stage(t, bedroom(3500, 3000, laddered, func(j *job.Job) {
		j.Room.Pieces = []room.Piece{
			{Key: "chest", Spot: room.Spot{Wall: "AB", From: "A", At: read(1600), Out: read(1000)}, Wide: read(300), Deep: read(539.65), High: read(900)},
			{Key: "desk"},
		}
	}))
	a := s.Nominal(ladderLanding)
	nearly(t, "the landing", a.Value, 300)
	if a.Verdict != DoesNotFit {
		t.Errorf("%v", a.Verdict)
	}
}

// TestStrip: a band 400 wide that runs up from the origin.
func TestStrip(t *testing.T) {
	b := strip{out: v(0, 1), half: 200}
	for _, c := range []struct {
		what  string
		p     [4]float64
		depth float64
		ok    bool
	}{
		{"across", [4]float64{-500, 700, 500, 800}, 700, true},
		{"at its edge", [4]float64{150, 300, 600, 400}, 300, true},
		{"beside it", [4]float64{200, 300, 600, 400}, 0, false},
		{"behind it", [4]float64{-500, -300, 500, 0}, 0, false},
		{"on its line", [4]float64{-500, -300, 500, 10}, 0, true},
	} {
		if d, ok := b.reach(rectangle(c.p)); ok != c.ok || math.Abs(d-c.depth) > 1e-9 {
			t.Errorf("%s: %g, %v", c.what, d, ok)
		}
	}
}
