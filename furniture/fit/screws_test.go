package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/timber"
	"bunkwright/furniture/yardstick"
)

// Least penetration (NDS 12.1.5, 12.1.4 by fasteners.csv): #10 6 x 0.190 = 1.14 in = 28.956 with the tip; lag 1/4 4 x 0.25 = 1 in without its tip of 5/32:
// 1.15625 in = 29.36875 in all. A screw of 76.2 through a cleat of 19.05 and 12.7 of drywall goes 44.45 into the stud.
func TestScrewLength(t *testing.T) {
	long := func(x float64) func(*job.Job) {
		return func(j *job.Job) { j.Bed.Shelves[0].FastenerLong = mm(x) }
	}
	runHouse(t, screwLength, shelf, []houseCase{
		{"3 in", "US", nil, Fits, 44.45 - 28.956, "shelf.1.cleat.bite"},
		{"2 in", "US", long(50.8), DoesNotFit, 19.05 - 28.956, "shelf.1.cleat.bite"},
		{"just long enough, give or take 0.5 of drywall", "US", long(61), TooClose, 61 - 31.75 - 28.956, "shelf.1.cleat.bite"},
		{"a lag", "EU", func(j *job.Job) { j.Bed.Shelves[0].Fastener = "lag-1/4" }, Fits, 44.45 - 29.36875, "shelf.1.cleat.bite"},
		{"covering not read", "US", func(j *job.Job) { j.Room.Walls[2].BuildUp = nil }, CannotTell, noSpare, "cleat"},
		{"masonry", "US", kind("masonry"), CannotTell, noSpare, "cleat"},
	})
	runHouse(t, screwLength, nil, []houseCase{{"no shelf", "US", nil, NotApplicable, noSpare, ""}})
}

// NEC 300.4: 1-1/4 in = 31.75 from the face of the stud. Just as deep is not flagged, deeper is, as advice beside an answer that fits.
func TestDeepScrewsAndCables(t *testing.T) {
	for long, want := range map[float64]Verdict{63.5: Fits, 63.6: DoesNotFit, 76.2: DoesNotFit} {
		s := stage(t, houseJob("US", shelf, func(j *job.Job) { j.Bed.Shelves[0].FastenerLong = mm(long) }))
		a := s.Nominal(screwLength)
		l := spareOf(t, a, "own-cable-depth", "shelf.1.cleat.depth")
		if l.Verdict != want || l.Force != yardstick.Advice || math.Abs(l.Spare-(63.5-long)) > 1e-6 {
			t.Errorf("%v long: %v, %v to spare with force %v, want %v as advice", long, l.Verdict, l.Spare, l.Force, want)
		}
		if clear := timber.ClearOfCable(l.Value, 31.75); clear != (want == Fits) {
			t.Errorf("%v long: clear of a cable %v", long, clear)
		}
	}
}
