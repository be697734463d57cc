package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/room"
)

// The mattresses end 2095.25 - 47.625 from the foot and 47.625 from wall BC, so the east window is 47.625 from both. Frontal grip reach, P95
// of child_sizes.csv (UM-HSRI-77-17): 643.0 at 10 (a girl), 498.1 at 4 (a girl).
func TestWindowCords(t *testing.T) {
	cord := func(m room.Measure) func(*job.Job) {
		return window("east", func(w *room.Window) { w.Cord = m })
	}
	runHouse(t, windowCords, both(has("cord"), eastWindow), []houseCase{
		{"a short cord, 8 in = 203.2 asked", "US", cord(read(150)), Fits, 53.2, "window.east.cord"},
		{"a long one", "US", cord(read(700)), DoesNotFit, -496.8, "window.east.cord"},
		{"just as long as asked, give or take", "US", cord(read(203)), TooClose, 0.2, "window.east.cord"},
		{"not read", "US", nil, CannotTell, noSpare, "window.east.cord"},
		{"cordless", "US", window("east", func(w *room.Window) { w.Cordless = true }), NotApplicable, noSpare, ""},
		{"advice alone", "NZ", cord(read(150)), None, noSpare, ""},
		{"no text there", "EU", cord(read(700)), None, noSpare, ""},
		{"the bed stands elsewhere", "US", both(cord(read(700)), func(j *job.Job) { j.Place.From, j.Place.Along = "D", mm(0) }), NotApplicable, noSpare, ""},
	})
}

func TestCordsInReach(t *testing.T) {
	for _, c := range []struct {
		name  string
		edit  func(*job.Job)
		want  Verdict
		spare float64
	}{
		{"behind the pillow", nil, DoesNotFit, 47.625 - 643},
		// the bed 700 from wall BC: 747.625 from its mattresses
		{"over the reach of both", func(j *job.Job) { j.Place.Along = mm(700) }, Fits, 747.625 - 643},
		{"nobody said to sleep below", func(j *job.Job) { j.Sleepers = j.Sleepers[:1] }, CannotTell, math.NaN()},
	} {
		a := stage(t, houseJob("NZ", both(has("cord"), eastWindow, window("east", func(w *room.Window) { w.Cord = read(700) })), c.edit)).Ask(windowCords)
		if l := spareOf(t, a, "nz-cord-reach", "window.east.reach"); l.Verdict != c.want {
			t.Errorf("%s: %v (%s), want %v", c.name, l.Verdict, l.Ask, c.want)
		}
		if !math.IsNaN(c.spare) && (len(a.Figures) != 1 || math.Abs(a.Figures[0].Value-c.spare) > 1e-3) {
			t.Errorf("%s: figures %v, want %v out of reach", c.name, a.Figures, c.spare)
		}
	}
}
