package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
)

// westWindow is a window in wall DA, far from the bed: 1000 wide, clear opening 900 x 1000 from a sill at 600.
func westWindow(j *job.Job) {
	has("window")(j)
	j.Room.Windows = append(j.Room.Windows, room.Window{Key: "west", OnWall: room.OnWall{Wall: "DA", From: "D", At: read(2500)}, Wide: read(1000),
		Sill: read(600), Head: read(1600), ClearWide: read(900), ClearHigh: read(1000), Kind: "hinged at a side"})
	j.Confirmed = map[string]string{"irc-escape-key": "yes"}
}

// eastWindow is a window in wall BC behind the head of the bed: 200 to 1100 from corner C, clear opening 800 x 550 in its middle.
func eastWindow(j *job.Job) {
	has("window")(j)
	j.Room.Windows = append(j.Room.Windows, room.Window{Key: "east", OnWall: room.OnWall{Wall: "BC", From: "C", At: read(200)}, Wide: read(900),
		Sill: read(600), Head: read(1800), ClearWide: read(800), ClearHigh: read(550), Kind: "slides up"})
	j.Confirmed = map[string]string{"irc-escape-key": "yes"}
}

func window(key string, edit func(*room.Window)) func(*job.Job) {
	return func(j *job.Job) {
		for i := range j.Room.Windows {
			if j.Room.Windows[i].Key == key {
				edit(&j.Room.Windows[i])
			}
		}
	}
}

// Needs of IRC R310.1 as rules.csv quotes them: one opening, 5.7 ft2 (5.0 at ground level), 24 in high, 20 in wide, sill at most 44 in.
func TestWayOut(t *testing.T) {
	runHouse(t, wayOut, westWindow, []houseCase{
		{"clear of the bed: the count has least to spare", "US", nil, Fits, 0, "openings"},
		{"nothing asked for there", "EU", nil, None, noSpare, ""},
		{"advice in Canada", "CA", nil, None, noSpare, ""},
		// 700 x 680 = 476000 mm2 = 5.1236 ft2
		{"ground floor", "US", both(window("west", small), ground), Fits, 0, "openings"},
		{"the same upstairs", "US", window("west", small), DoesNotFit, 476000/92903.04 - 5.7, "opening.area"},
		{"as high as asked, give or take", "US", window("west", func(w *room.Window) { w.ClearHigh = read(610) }), TooClose, 0.4, "opening.height"},
		{"sill too high", "US", window("west", func(w *room.Window) { w.Sill = read(1130) }), DoesNotFit, -12.4, "opening.sill"},
		{"a fixed pane", "US", window("west", func(w *room.Window) { w.Kind = "fixed" }), DoesNotFit, noSpare, ""},
		{"clear opening not read", "US", window("west", func(w *room.Window) { w.ClearHigh = nil }), CannotTell, noSpare, "openings"},
		{"sill not read", "US", window("west", func(w *room.Window) { w.Sill = nil }), CannotTell, noSpare, "openings"},
		{"nobody tried the latch", "US", func(j *job.Job) { j.Confirmed = nil }, CannotTell, noSpare, "confirmed.irc-escape-key"},
		{"needs a tool", "US", func(j *job.Job) { j.Confirmed["irc-escape-key"] = "no" }, DoesNotFit, noSpare, "confirmed.irc-escape-key"},
		{"another window, unread, does not matter", "US", both(eastWindow, window("east", func(w *room.Window) { w.ClearWide = nil })), Fits, 0, "openings"},
		{"one too small and one unread", "US", both(window("west", small), eastWindow, window("east", func(w *room.Window) { w.ClearWide = nil })), CannotTell, noSpare, "openings"},
	})
	runHouse(t, wayOut, nil, []houseCase{
		{"no window where one is asked for", "US", nil, DoesNotFit, -1, "openings"},
		{"no window where none is asked for", "EU", nil, NotApplicable, noSpare, ""},
	})
}

func small(w *room.Window) { w.ClearWide, w.ClearHigh = read(700), read(680) }
func ground(j *job.Job)    { j.Room.Floor.Ground = true }

// The bed stands before the east window. Its clear opening runs 250 to 1050 from corner C, 600 to 1150 high. Of what is within 609.6 of
// the wall there reach into it: the front post's first layer, 1033.35 to 1071.45 from C up to 1798.45, and the piece behind it, 995.25 to 1033.35
// from C and 432.55 to 1442.85 high. The mattress ends at 500, the side rails at 432.55, and the wall-side post ends 76.2 from C.
// Left are 745.25 x 550, so 409887.5 mm2 or 4.412 ft2.
func TestWayOutBehindTheBed(t *testing.T) {
	a := stage(t, houseJob("US", eastWindow, nil)).Ask(wayOut)
	for at, want := range map[[2]string]float64{
		{"irc-escape-area", "opening.area"}:     745.25 * 550 / 92903.04,
		{"irc-escape-width", "opening.width"}:   745.25,
		{"irc-escape-height", "opening.height"}: 550,
		{"irc-escape-sill", "opening.sill"}:     600,
		{"irc-escape-count", "openings"}:        0,
	} {
		if l := spareOf(t, a, at[0], at[1]); math.Abs(l.Value-want) > 1e-4 {
			t.Errorf("%s: %v, want %v", at[0], l.Value, want)
		}
	}
	if l := spareOf(t, a, "nfpa-exits-clear", "clear"); l.Verdict != DoesNotFit || l.Force != yardstick.Advice {
		t.Errorf("free of furniture: %v with force %v, want no, as advice", l.Verdict, l.Force)
	}
	if l := spareOf(t, a, "irc-escape-area-grade", "opening.area.ground"); l.Verdict != NotApplicable {
		t.Errorf("5.0 ft2 is asked upstairs: %v", l.Verdict)
	}
}

// A wardrobe that stays, 500 before the west window and 1700 high over 300 of its clear opening (2550 to 3450 from D), leaves 600 of its
// width: 600 x 1000 = 6.458 ft2. Of unknown height it counts the same; further off than 24 in it does not count.
func TestWayOutBehindFurnitureThatStays(t *testing.T) {
	piece := func(out float64) func(*job.Job) {
		return func(j *job.Job) {
			j.Room.Pieces = []room.Piece{{Key: "wardrobe", Spot: spotAt("DA", "D", 3150, out), Wide: read(800), Deep: read(600)}}
		}
	}
	for out, want := range map[float64]float64{500: 600, 620: 900} {
		a := stage(t, houseJob("US", westWindow, piece(out))).Ask(wayOut)
		if l := spareOf(t, a, "irc-escape-width", "opening.width"); math.Abs(l.Value-want) > 1e-6 {
			t.Errorf("%v out from the wall: %v wide, want %v", out, l.Value, want)
		}
	}
}

// Cases c32, c33 and c34 of rule_cases.csv (IRC R310.1): 20 x 24 in is 3.33 ft2, 34.2 x 24 in is 5.70 ft2, a sill of 45 in is too high.
func TestWayOutRuleCases(t *testing.T) {
	const in = 25.4
	for _, c := range []struct {
		row  string
		have float64
		want yardstick.Outcome
	}{
		{"irc-escape-area", SquareFeet(20*in, 24*in), yardstick.Fail},
		{"irc-escape-width", 20 * in, yardstick.Pass},
		{"irc-escape-height", 24 * in, yardstick.Pass},
		{"irc-escape-area", SquareFeet(34.2*in, 24*in), yardstick.Pass},
		{"irc-escape-sill", 45 * in, yardstick.Fail},
	} {
		row, _ := yardstick.Find(c.row)
		if got := row.Outcome(c.have); got != c.want {
			t.Errorf("%s of %v: %v, want %v", c.row, c.have, got, c.want)
		}
	}
}

// A property that must always hold: moving the bed away from a window never takes from what is left of it.
func TestABedFurtherOffLeavesMoreOfTheWindow(t *testing.T) {
	last := -1.0
	for along := 0.0; along <= 800; along += 100 {
		a := stage(t, houseJob("US", eastWindow, func(j *job.Job) { j.Place.Along = mm(along) })).Nominal(wayOut)
		l := spareOf(t, a, "irc-escape-area", "opening.area")
		if l.Value < last-1e-9 {
			t.Errorf("%v from corner C: %v ft2, nearer left %v", along, l.Value, last)
		}
		last = l.Value
	}
}
