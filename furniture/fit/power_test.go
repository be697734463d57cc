package fit

import (
	"math"
	"slices"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
)

func outlet(kind, use string, at, height float64) func(*job.Job) {
	return func(j *job.Job) {
		has(kind)(j)
		j.Room.Outlets = append(j.Room.Outlets, room.Outlet{Key: kind, Kind: kind, Wall: "CD", From: "C", At: read(at), Height: read(height), InUse: use})
	}
}

// An outlet 300 high behind the bed: the lower side rail (292.85 to 432.55) stands 38.1 before the wall; 2 in = 50.8 of depth is advice.
func TestPower(t *testing.T) {
	for _, c := range []struct {
		name   string
		edit   func(*job.Job)
		hidden float64
		want   Verdict // of the plug's depth
		spare  float64
	}{
		{"behind the rail", outlet("outlet", "yes", 500, 300), 1, DoesNotFit, 38.1 - 50.8},
		{"a gap of 20", both(outlet("outlet", "yes", 500, 300), func(j *job.Job) { j.Place.Gap.Value = mm(20) }), 1, Fits, 58.1 - 50.8},
		{"not used any more", outlet("outlet", "no", 500, 300), 1, NotApplicable, noSpare},
		{"not told whether it is used", outlet("outlet", "", 500, 300), 1, CannotTell, noSpare},
		{"a switch between the beds", outlet("switch", "", 500, 1100), 0, NotApplicable, noSpare},
		{"a switch behind the upper rail", outlet("switch", "", 500, 1500), 1, NotApplicable, noSpare},
		{"beyond the foot", outlet("outlet", "yes", 2300, 300), 0, NotApplicable, noSpare},
		{"under the bed", outlet("outlet", "yes", 500, 200), 0, NotApplicable, noSpare},
		{"its height not read", both(outlet("outlet", "yes", 500, 300), func(j *job.Job) { j.Room.Outlets[0].Height = nil }), 0, CannotTell, noSpare},
	} {
		a := stage(t, houseJob("US", c.edit, nil)).Ask(power)
		key := "outlet." + a.Lines[0].At[len("outlet."):]
		l := spareOf(t, a, "own-plug-depth", key)
		switch {
		case a.Verdict != None && a.Verdict != NotApplicable:
			t.Errorf("%s: %v: there is advice alone", c.name, a.Verdict)
		case len(a.Figures) != 1 || a.Figures[0] != (Figure{"hidden", c.hidden, "count"}):
			t.Errorf("%s: figures %v, want %v hidden", c.name, a.Figures, c.hidden)
		case len(a.Notes) != int(c.hidden):
			t.Errorf("%s: notes %q, want each hidden one named", c.name, a.Notes)
		case l.Verdict != c.want:
			t.Errorf("%s: %v (%s%s), want %v", c.name, l.Verdict, l.Reason, l.Ask, c.want)
		case !math.IsNaN(c.spare) && math.Abs(l.Spare-c.spare) > 1e-3:
			t.Errorf("%s: %v to spare, want %v", c.name, l.Spare, c.spare)
		}
	}
}

// NEC 210.60(B) and 406.12 as rules.csv quotes them, as advice.
func TestPlugsBehindTheBed(t *testing.T) {
	for _, c := range []struct {
		edit func(*job.Job)
		want Verdict
	}{
		{outlet("outlet", "yes", 500, 300), DoesNotFit},
		{both(outlet("outlet", "yes", 500, 300), func(j *job.Job) { j.Place.Gap.Value = mm(20) }), Fits},
		{outlet("outlet", "yes", 3000, 300), NotApplicable},
	} {
		a := stage(t, houseJob("US", c.edit, nil)).Ask(power)
		if l := spareOf(t, a, "outlet-behind-bed", "behind"); l.Verdict != c.want {
			t.Errorf("%v (%s), want %v", l.Verdict, l.Reason, c.want)
		}
	}
	for word, want := range map[string]Verdict{"yes": Fits, "no": DoesNotFit, "": CannotTell} {
		a := stage(t, houseJob("US", outlet("outlet", "yes", 500, 300), func(j *job.Job) { j.Confirmed = map[string]string{"outlet-tamper": word} })).Ask(power)
		if l := spareOf(t, a, "outlet-tamper", "tamper"); l.Verdict != want || l.Force != yardstick.Advice {
			t.Errorf("confirmed %q: %v with force %v, want %v as advice", word, l.Verdict, l.Force, want)
		}
	}
}

// Case c40 of rule_cases.csv (NEC 210.52(A)(1)): a wall of 13 ft with receptacles at 0.5 and 12.6: 6.05 ft from the middle of them, over 6.
func TestFurthestFromOutlet(t *testing.T) {
	got := FurthestFromOutlet(13, 0.5, 12.6)
	if math.Abs(got-6.05) > 1e-9 {
		t.Errorf("%v ft, want 6.05", got)
	}
	if row, _ := yardstick.Find("outlet-reach"); row.Outcome(got*12*25.4) != yardstick.Fail {
		t.Error("6.05 ft is over 6")
	}
	if got := FurthestFromOutlet(10, 4); got != 6 {
		t.Errorf("one outlet at 4 of 10: %v, want 6", got)
	}
}

// The door takes 3640 to 4400 of wall AB. From its side at 4400 round to its side at 3640 are 17000 - 760 = 16240 mm; an outlet on CD, 500
// from C, is 100 + 4000 + 500 = 4600 along, so the worst place is 16240 - 4600 = 11640 from it. One higher than 66 in does not count.
func TestWallSpaces(t *testing.T) {
	a := stage(t, houseJob("US", outlet("outlet", "yes", 500, 300), nil)).Ask(power)
	l := spareOf(t, a, "outlet-reach", "wall.1")
	if math.Abs(l.Value-11640) > 1e-3 || l.Verdict != None {
		t.Errorf("%v (%v), want 11640 as an outside figure", l.Value, l.Verdict)
	}
	runs, what := stage(t, houseJob("US", outlet("outlet", "yes", 500, 1700), nil)).runs()
	if len(runs) != 1 || what != "" || len(runs[0].sockets) != 0 {
		t.Errorf("an outlet 1700 high counts: %v %q", runs, what)
	}
	second := func(j *job.Job) {
		j.Room.Doors = append(j.Room.Doors, room.Door{Key: "closet", OnWall: room.OnWall{Wall: "CD", From: "D", At: read(500)}, Wide: read(700), Kind: "slides"})
	}
	runs, _ = stage(t, houseJob("US", outlet("outlet", "yes", 500, 300), second)).runs()
	// CD from C: the closet takes 4500 - 1200 = 3300 to 4000
	want := []run{{4400, 4500 + 4000 + 3300, []float64{4600}}, {4500 + 4000 + 4000, 17000 + 3640, []float64{}}}
	same := len(runs) == 2
	for i := range runs {
		same = same && math.Abs(runs[i].from-want[i].from) < 1e-3 && math.Abs(runs[i].to-want[i].to) < 1e-3 &&
			slices.EqualFunc(runs[i].sockets, want[i].sockets, func(a, b float64) bool { return math.Abs(a-b) < 1e-3 })
	}
	if !same {
		t.Errorf("runs %v, want %v", runs, want)
	}
}
