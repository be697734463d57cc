package fit

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
)

func shelfFor(who string, height float64) func(*job.Job) {
	return func(j *job.Job) {
		j.Bed.Shelves = append(j.Bed.Shelves, bunk.Shelf{For: who, Height: mm(height), Long: mm(900)})
	}
}

// Seated grip reach, P5 of child_sizes.csv (UM-HSRI-77-17): at 10 boys 1548.8 - 1272.3 + 673.0 = 949.5, girls 961.3; at 4 boys 1061.3 - 942.2 + 541.0 =
// 660.1, girls 685.8. The smaller counts where the sex is unknown.
func TestShelfHeights(t *testing.T) {
	runHouse(t, shelfHeights, nil, []houseCase{
		{"no shelf", "US", nil, NotApplicable, noSpare, ""},
		{"350 over the upper mattress", "US", shelfFor("upper", 2000), Fits, 949.5 - 350, "shelf.1.reach"},
		{"500 over the lower mattress", "EU", shelfFor("lower", 1000), Fits, 660.1 - 500, "shelf.1.reach"},
		{"too high for four years", "US", shelfFor("lower", 1300), DoesNotFit, 660.1 - 800, "shelf.1.reach"},
		{"nobody said to sleep there", "US", both(shelfFor("lower", 1000), func(j *job.Job) { j.Sleepers = j.Sleepers[:1] }), CannotTell, noSpare, "shelf.1.reach"},
		{"how old is not told", "US", both(shelfFor("upper", 2000), func(j *job.Job) { j.Sleepers[0].Age = 0 }), CannotTell, noSpare, "shelf.1.reach"},
		{"a younger one beside the ten-year-old", "US", both(shelfFor("upper", 2000), func(j *job.Job) {
			j.Sleepers = append(j.Sleepers, job.Sleeper{Name: "Tor", Age: 4, Bed: "upper"})
		}), Fits, 660.1 - 350, "shelf.1.reach"},
	})
	// on carpet the bed sinks half of 12 give or take 12/sqrt(12), the shelf does not
	a := stage(t, houseJob("US", shelfFor("lower", 1158), func(j *job.Job) { j.Room.Floor.Cover, j.Room.Floor.Thick = "carpet", read(12) })).Ask(shelfHeights)
	if a.Verdict != TooClose || math.Abs(a.Spare-(660.1-(1158-494))) > 0.1 {
		t.Errorf("on carpet: %v with %v to spare, want too close with -3.9", a.Verdict, a.Spare)
	}
}

// The board is 1x6, 139.7 deep, and the mattress lies 85.725 from the wall: 53.975 of the board hang over the sleeper. The upper shelf hangs over the
// upper mattress, not over the lower one.
func TestShelfOverASleeper(t *testing.T) {
	a := stage(t, houseJob("US", both(shelfFor("upper", 2000), shelfFor("lower", 1000)), nil)).Ask(shelfHeights)
	for at, want := range map[string]string{"shelf.1.over": "shelf.1.board is over mattress.upper", "shelf.2.over": "shelf.2.board is over mattress.lower"} {
		if l := spareOf(t, a, "shelf-over-bed", at); l.Verdict != DoesNotFit || l.Force != yardstick.Advice || l.Reason != want {
			t.Errorf("%s: %v, %q, force %v; want %q as advice", at, l.Verdict, l.Reason, l.Force, want)
		}
	}
	beyond := func(j *job.Job) { j.Bed.Shelves[0].From = mm(2200) }
	a = stage(t, houseJob("US", shelfFor("upper", 2000), beyond)).Ask(shelfHeights)
	if l := spareOf(t, a, "shelf-over-bed", "shelf.1.over"); l.Verdict != Fits {
		t.Errorf("beyond the foot of the bed: %v %q", l.Verdict, l.Reason)
	}
}

// The rail's top is at 1798.45: a shelf board at 1750 beyond the foot leaves 48.45 of it to whoever stands on it.
func TestShelfAsAFoothold(t *testing.T) {
	low := both(shelfFor("upper", 1750), func(j *job.Job) { j.Bed.Shelves[0].From = mm(2200) })
	a := stage(t, houseJob("US", low, nil)).Ask(shelfHeights)
	if len(a.Notes) != 1 || !strings.HasPrefix(a.Notes[0], "shelf.1.board is a foothold") {
		t.Errorf("notes %q", a.Notes)
	}
	if len(a.Figures) != 1 || math.Abs(a.Figures[0].Value-48.45) > 1e-6 {
		t.Errorf("figures %v, want 48.45 of rail over the shelf", a.Figures)
	}
	if a := stage(t, houseJob("US", shelfFor("upper", 2000), nil)).Ask(shelfHeights); len(a.Notes) != 0 {
		t.Errorf("a shelf over the rail: notes %q", a.Notes)
	}
}
