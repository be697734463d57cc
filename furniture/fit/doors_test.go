package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
)

// The door of the test rooms is 760 wide with its pin on wall AB, 100 off wall BC.

// TestDoorClear: open, the leaf ends 760 into the room; the front of the bed is 1928.55 off.
func TestDoorClear(t *testing.T) {
	a := stage(t, bedroom(3500, 3000)).Nominal(doorsSwing)
	nearly(t, "the distance", a.Value, 3000-1071.45-760)
	nearly(t, "opens to", figure(t, a, "opens_to"), 90)
}

// TestDoorMeetsTheBed: in a room 1800 deep the front of the bed, its posts, is 728.55 off: the leaf lacks 760 - 728.55. The post nearest to
// wall BC ends 38.1 + 88.9 off it, 27 beyond the pin, and the leaf meets that corner.
func TestDoorMeetsTheBed(t *testing.T) {
	a := stage(t, bedroom(3500, 1800)).Nominal(doorsSwing)
	nearly(t, "what it lacks", a.Value, 728.55-760)
	nearly(t, "opens to", figure(t, a, "opens_to"), math.Atan2(728.55, 27)*180/math.Pi)
	if l := line(t, a, "door-sweep", "every door"); l.Verdict != DoesNotFit {
		t.Errorf("advice: %v", l.Verdict)
	}
}

// TestTwoLeaves: each is half as wide, 380, and open it is clear of the front of the bed 428.55 off.
func TestTwoLeaves(t *testing.T) {
	a := stage(t, bedroom(3500, 1500, func(j *job.Job) { j.Room.Doors[0].Leaves = 2 })).Nominal(doorsSwing)
	nearly(t, "the distance", a.Value, 428.55-380)
}

// TestOverTheDoorsHead: the leaf is 2030 high; what begins at 2100 is 70 over it.
func TestOverTheDoorsHead(t *testing.T) {
	s := stage(t, bedroom(3500, 3000))
	g := s.swings()[0]
	solid := s.Solids[0]
	solid.Lo.Z, solid.Hi.Z = 2100, 2200
	nearly(t, "over the head and 300 away", overhead(300, solid.Lo.Z-g.high), math.Hypot(300, 70))
	nearly(t, "straight over it", overhead(-50, solid.Lo.Z-g.high), 70)
	nearly(t, "as high as the leaf", overhead(-50, -10), -50)
}

// TestPulledDrawerMeetsDoor: drawers are advice: the door opens fully, and the line names drawer, door and angle.
func TestPulledDrawerMeetsDoor(t *testing.T) {
	s := stage(t, bedroom(3500, 2200, func(j *job.Job) { j.Bed.Drawers = &bunk.Drawers{} }))
	a := s.Nominal(doorsSwing)
	nearly(t, "the distance", a.Value, 2200-1071.45-760)
	l := line(t, a, "door-sweep", "every door")
	d := &s.Bed.Drawers[0]
	// Drawer 1 is next to wall BC; pulled out, its front stands 2200 - 1071.45 - travel off the wall with the door. The handle's tip, 690
	// along the leaf and 60 out from it, comes there first.
	at := (math.Asin((2200-1071.45-d.Travel)/math.Hypot(690, 60)) - math.Atan(60.0/690)) * 180 / math.Pi
	if m := s.drawerMeets(0); l.Verdict != DoesNotFit || m.door != "door.hall" || math.Abs(m.opens-at) > 1e-4 {
		t.Errorf("%v %q, %+v, want %g", l.Verdict, l.Reason, m, at)
	}
}

// figure returns a figure of an answer.
func figure(t *testing.T, a Answer, name string) float64 {
	t.Helper()
	for _, f := range a.Figures {
		if f.Name == name {
			return f.Value
		}
	}
	t.Fatalf("%s: no figure %s", a.ID, name)
	return 0
}
