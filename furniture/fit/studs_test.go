package fit

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
)

// shelf hangs a shelf of 900 with its cleat (1x4: 19.05 x 88.9) in the middle of the bed: 597.625 to 1497.625 from corner C. Its screws are
// #10, 3 in long, two per stud.
func shelf(j *job.Job) {
	j.Bed.Shelves = []bunk.Shelf{{For: "upper", Height: mm(2000), Long: mm(900), From: mm(597.625)}}
	w := &j.Room.Walls[2]
	w.BuildUp, w.StudWide = sure(12.7, 0.5), sure(38.1, 0.001)
}

// studsAt lists studs of wall CD, counted from C.
func studsAt(found string, at ...float64) func(*job.Job) {
	return func(j *job.Job) {
		for i, x := range at {
			j.Room.Walls[2].Studs = append(j.Room.Walls[2].Studs, room.Stud{Key: fmt.Sprint(i + 1), From: "C", At: read(x), Found: found})
		}
	}
}

func kind(word string) func(*job.Job) {
	return func(j *job.Job) { j.Room.Walls[2].Kind = word }
}

func screwsAt(at ...float64) func(*job.Job) {
	return func(j *job.Job) {
		for _, x := range at {
			j.Bed.Shelves[0].ScrewAt = append(j.Bed.Shelves[0].ScrewAt, mm(x))
		}
	}
}

// Edge distance of a #10 screw: 2.5 x 0.190 = 0.475 in = 12.065 (fasteners.csv). In the middle of a stud 38.1 wide that leaves 19.05 - 12.065 =
// 6.985. A stud found twice is sure to 3.175, so twice that fits; one found once is sure to 6.35 only (how_known.csv).
func TestStudsHit(t *testing.T) {
	sureOf := func(j *job.Job) {
		for i := range j.Room.Walls[2].Studs {
			j.Room.Walls[2].Studs[i].At[0].U = length.Millimetre
		}
	}
	runHouse(t, studsHit, shelf, []houseCase{
		{"three studs found twice", "US", studsAt("twice", 700, 1100, 1400), Fits, 0, "shelf.1.cleat.screws"},
		{"found once", "US", studsAt("once", 700, 1100, 1400), TooClose, 6.985, "shelf.1.cleat.screw.1"},
		{"assumed, however sure of its place", "EU", both(studsAt("assumed", 700, 1100, 1400), sureOf), TooClose, noSpare, ""},
		{"one stud", "US", studsAt("twice", 1047.625), DoesNotFit, 203.2 - 450, "shelf.1.cleat.overhang"},
		{"no stud behind it", "US", studsAt("twice", 200, 1800), DoesNotFit, -2, "shelf.1.cleat.screws"},
		// past the last stud: 1497.625 - 1200 = 297.625, 8 in = 203.2 allowed
		{"too far past the last stud", "US", studsAt("twice", 700, 1200), DoesNotFit, 203.2 - 297.625, "shelf.1.cleat.overhang"},
		// chosen 130 from the cleat's end, so 727.625 from C: 27.625 off the stud's middle; the first stud that holds the cleat is then at 1100
		{"a screw beside the stud", "US", both(studsAt("twice", 700, 1100, 1400), screwsAt(130, 502.375, 802.375)), DoesNotFit, 203.2 - 502.375, "shelf.1.cleat.overhang"},
		{"chosen in the middle, with the bed's place less sure", "US", both(studsAt("twice", 700, 1100, 1400), screwsAt(102.375, 502.375, 802.375)), TooClose, 6.985, "shelf.1.cleat.screw.1"},
		{"a thick lag", "US", both(studsAt("twice", 700, 1100, 1400), func(j *job.Job) { j.Bed.Shelves[0].Fastener = "lag-1/2" }), TooClose, 19.05 - 0.75*25.4, ""},
		{"nobody looked for studs", "US", nil, CannotTell, noSpare, "cleat"},
		{"masonry", "US", both(studsAt("twice", 700, 1100), kind("masonry")), CannotTell, noSpare, "cleat"},
		{"steel", "US", both(studsAt("twice", 700, 1100), kind("steel studs")), CannotTell, noSpare, "cleat"},
		{"a wall of who knows what", "US", both(studsAt("twice", 700, 1100), kind("")), CannotTell, noSpare, "cleat"},
		{"old plaster on its laths", "US", both(studsAt("twice", 700, 1100, 1400), kind("plaster on lath")), Fits, 0, "shelf.1.cleat.screws"},
	})
	runHouse(t, studsHit, nil, []houseCase{{"no shelf", "US", nil, NotApplicable, noSpare, ""}})
}

// A screw 27.625 beside the middle of a stud is in the air: 6.985 - 27.625.
func TestAScrewBesideTheStud(t *testing.T) {
	a := stage(t, houseJob("US", both(shelf, studsAt("twice", 700, 1100, 1400), screwsAt(130, 502.375, 802.375)), nil)).Ask(studsHit)
	if l := spareOf(t, a, "own-screw-edge", "shelf.1.cleat.screw.1"); l.Verdict != DoesNotFit || math.Abs(l.Spare-(6.985-27.625)) > 1e-3 {
		t.Errorf("%v with %v to spare, want does not fit with -20.64", l.Verdict, l.Spare)
	}
}

// What is said of a wall that takes no wood screws, and of a stud that may not be there.
func TestStudWords(t *testing.T) {
	for _, c := range []struct {
		edit func(*job.Job)
		want string
	}{
		{kind("masonry"), "plugs, not studs: ask"},
		{kind("steel studs"), "wood is assumed"},
		{kind(""), "what is wall CD from corner C to corner D made of"},
		{nil, "where are the studs in wall CD, measured from corner C?"},
	} {
		a := stage(t, houseJob("US", shelf, c.edit)).Ask(studsHit)
		if !strings.Contains(a.Ask, c.want) {
			t.Errorf("asks %q, want %q", a.Ask, c.want)
		}
	}
	spaced := both(shelf, studsAt("twice", 700), func(j *job.Job) { j.Room.Walls[2].Spacing = sure(350, 0.001) })
	a := stage(t, houseJob("US", spaced, nil)).Ask(studsHit)
	if a.Verdict != TooClose {
		t.Errorf("studs counted off: %v", a.Verdict)
	}
	if l := spareOf(t, a, "own-screws-per-stud", "shelf.1.cleat.screws"); l.Verdict != TooClose || !strings.HasSuffix(l.Reason, "is only counted off: probe it") {
		t.Errorf("%v: %q", l.Verdict, l.Reason)
	}
}

// A stud counted off two bays away is less sure: u = hypot(u of the found one, 6.35 sqrt(2)), with u = 3.175 found twice.
func TestACountedStudAddsUncertainty(t *testing.T) {
	spaced := both(shelf, studsAt("twice", 700), func(j *job.Job) { j.Room.Walls[2].Spacing = sure(300, 0.001) })
	a := stage(t, houseJob("US", spaced, nil)).Ask(studsHit)
	for k, bays := range []float64{0, 1, 2} { // 700, 1000, 1300
		want := math.Hypot(3.175, 6.35*math.Sqrt(bays))
		if l := spareOf(t, a, "own-screw-edge", fmt.Sprintf("shelf.1.cleat.screw.%d", k+1)); math.Abs(l.U-want) > 0.01 {
			t.Errorf("%v bays off: u %v, want %v", bays, l.U, want)
		}
	}
}

// The note of own-screws-per-stud: a cleat lower than 2-1/2 in takes one screw a stud.
func TestALowCleatTakesOneScrew(t *testing.T) {
	low := both(shelf, studsAt("twice", 700, 1100, 1400), func(j *job.Job) {
		j.Bed.Shelves[0].ScrewsPerStud = 1
		j.Bed.Shelves[0].Cleat.Name, j.Bed.Shelves[0].Cleat.Thick, j.Bed.Shelves[0].Cleat.Wide = "2x2", mm(38.1), mm(38.1)
	})
	if a := stage(t, houseJob("US", low, nil)).Ask(studsHit); a.Verdict != Fits {
		t.Errorf("a cleat of 38.1 with one screw a stud: %v %v", a.Verdict, a.Reason)
	}
	high := both(shelf, studsAt("twice", 700, 1100, 1400), func(j *job.Job) { j.Bed.Shelves[0].ScrewsPerStud = 1 })
	if a := stage(t, houseJob("US", high, nil)).Ask(studsHit); a.Verdict != DoesNotFit {
		t.Errorf("a cleat of 88.9 with one screw a stud: %v", a.Verdict)
	}
	a := stage(t, houseJob("US", high, nil)).Ask(studsHit)
	if l := spareOf(t, a, "anchor-to-stud", "shelf.1.cleat.anchored"); l.Verdict != Fits || l.Force != yardstick.Advice {
		t.Errorf("held by studs: %v with force %v, want yes, as advice", l.Verdict, l.Force)
	}
}

// Bands of fasteners.csv (NDS Commentary 2.5 D, from memory): the middle of a stud 1-1/2 in wide in which a screw may sit, from either side.
func TestScrewToEdgeGivesTheBandOfTheTable(t *testing.T) {
	for _, c := range []struct{ edge, band float64 }{{0.345, 0.405}, {0.41, 0.34}, {0.475, 0.275}, {0.54, 0.21}, {0.735, 0.015}} {
		if got := ScrewToEdge(1.5, c.band, c.edge); math.Abs(got) > 1e-9 {
			t.Errorf("edge distance %v: %v left at %v off the middle, want none", c.edge, got, c.band)
		}
	}
}

// A mirrored bed hangs its shelf the other way round: chosen screws go with it. Long is 2095.25, so a place 700 from the left end is 1395.25
// from the right one, which then stands in corner C.
func TestMirroredScrews(t *testing.T) {
	edit := both(shelf, screwsAt(102.375), studsAt("twice", 1395.25), func(j *job.Job) { j.Place.Mirror = true })
	a := stage(t, houseJob("US", edit, nil)).Ask(studsHit)
	if l := spareOf(t, a, "own-screw-edge", "shelf.1.cleat.screw.1"); math.Abs(l.Spare-6.985) > 1e-3 {
		t.Errorf("%v to spare, want 6.985", l.Spare)
	}
}
