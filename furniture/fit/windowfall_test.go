package fit

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
)

// highWindow is the east window with a drop of 3000 outside (more than 72 in = 1828.8) and a sill at 2300: over the lower mattress
// 2300 - 500 = 1800, over the upper 2300 - 1650 = 650, which spares 650 - 609.6 = 40.4 of 24 in.
func highWindow(j *job.Job) {
	eastWindow(j)
	window("east", func(w *room.Window) { w.Sill, w.Head, w.Drop, w.Opens = read(2300), read(2400), read(3000), read(90) })(j)
}

func TestWindowFall(t *testing.T) {
	runHouse(t, windowFall, highWindow, []houseCase{
		{"high enough over the upper mattress", "EU", nil, Fits, 40.4, "window.east.upper"},
		{"give or take", "EU", window("east", func(w *room.Window) { w.Sill = read(2260) }), TooClose, 0.4, "window.east.upper"},
		// 600 - 1650 - 609.6
		{"lower than the upper mattress", "EU", window("east", func(w *room.Window) { w.Sill = read(600) }), DoesNotFit, -1659.6, "window.east.upper"},
		{"nobody knows the drop", "EU", window("east", func(w *room.Window) { w.Drop = nil }), CannotTell, noSpare, "window.east.lower"},
		{"the ground is near", "EU", window("east", func(w *room.Window) { w.Drop = read(1000) }), NotApplicable, noSpare, ""},
		{"a drop of just 72 in, as far as a tape tells: kept from falling anyway", "EU", window("east", func(w *room.Window) { w.Drop = read(1828.8) }), Fits, 40.4, "window.east.upper"},
		{"the same, and the sill is low", "EU", window("east", func(w *room.Window) { w.Sill, w.Drop = read(600), read(1828.8) }), TooClose, -1659.6, "window.east.upper"},
		{"the ground is near, in the US", "US", window("east", func(w *room.Window) { w.Drop = read(1000) }), NotApplicable, noSpare, ""},
		{"a guard", "US", window("east", func(w *room.Window) { w.Sill, w.Guard = read(600), "yes" }), NotApplicable, noSpare, ""},
		{"a fixed pane", "US", window("east", func(w *room.Window) { w.Sill, w.Kind = read(600), "fixed" }), NotApplicable, noSpare, ""},
		{"sill not read", "EU", window("east", func(w *room.Window) { w.Sill = nil }), CannotTell, noSpare, "window.east.lower"},
	})
}

// IRC R312.2 asks about every window with a low sill, bed or not: how far it opens, less than 4 in (101.6).
func TestWindowThatOpensFar(t *testing.T) {
	west := both(westWindow, window("west", func(w *room.Window) { w.Drop, w.Opens = read(3000), read(90) }))
	runHouse(t, windowFall, west, []houseCase{
		{"opens less", "US", nil, Fits, 11.6, "window.west.opens"},
		{"opens just 4 in, as far as a tape tells", "US", window("west", func(w *room.Window) { w.Opens = read(101.6) }), TooClose, 0, "window.west.opens"},
		{"opens 10 in", "US", window("west", func(w *room.Window) { w.Opens = read(254) }), DoesNotFit, -152.4, "window.west.opens"},
		{"not read", "US", window("west", func(w *room.Window) { w.Opens = nil }), CannotTell, noSpare, "window.west.opens"},
		{"sill not low: advice alone", "US", window("west", func(w *room.Window) { w.Sill = read(700) }), None, noSpare, ""},
		{"no text asks there, and no bed is beside it", "EU", nil, NotApplicable, noSpare, ""},
	})
	a := stage(t, houseJob("US", west, window("west", func(w *room.Window) { w.Sill = read(700) }))).Ask(windowFall)
	if len(a.Notes) != 1 || !strings.Contains(a.Notes[0], "under the IBC") {
		t.Errorf("a sill of 700 is low under the IBC: notes %q", a.Notes)
	}
}

// Cases c35 and c36: a sill of 22 in with a drop of 110 in asks for a guard, one of 40 in does not; 40 - 20 = 20 in over a mattress.
func TestWindowFallRuleCases(t *testing.T) {
	const in = 25.4
	for _, c := range []struct {
		row  string
		have float64
		want yardstick.Outcome
	}{
		{"irc-fall-drop", 110 * in, yardstick.Applies},
		{"irc-fall-sill", 22 * in, yardstick.Applies},
		{"irc-fall-opening", 10 * in, yardstick.Fail},
		{"irc-fall-sill", 40 * in, yardstick.NotApplies},
		{"own-sill-over-mattress", SillOverMattress(40*in, 20*in), yardstick.Fail},
	} {
		row, _ := yardstick.Find(c.row)
		if got := row.Outcome(c.have); got != c.want {
			t.Errorf("%s of %v: %v, want %v", c.row, c.have, got, c.want)
		}
	}
}

// The bed stands before the east window and beside it; it does neither with the west one, 2000 and more away.
func TestBedBeforeTheWindow(t *testing.T) {
	low := window("east", func(w *room.Window) { w.Sill = read(600) })
	a := stage(t, houseJob("US NZ", both(highWindow, low, westWindow), window("west", func(w *room.Window) { w.Drop = read(3000) }))).Ask(windowFall)
	for at, want := range map[[2]string]Verdict{
		{"cpsc-window-furniture", "window.east.before"}: DoesNotFit,
		{"nz-window-near", "window.east.near"}:          DoesNotFit,
		{"cpsc-window-furniture", "window.west.before"}: Fits,
		{"nz-window-near", "window.west.near"}:          Fits,
	} {
		if l := spareOf(t, a, at[0], at[1]); l.Verdict != want || l.Force != yardstick.Advice {
			t.Errorf("%v: %v with force %v, want %v as advice", at, l.Verdict, l.Force, want)
		}
	}
}

// A property: a thicker mattress never leaves more sill.
func TestMoreMattressLessSill(t *testing.T) {
	last := math.Inf(1)
	for thick := 80.0; thick <= 300; thick += 20 {
		a := stage(t, houseJob("EU", highWindow, func(j *job.Job) { j.Bed.Upper.MattressThick = mm(thick) })).Nominal(windowFall)
		if a.Spare >= last {
			t.Errorf("%v thick leaves %v, thinner left %v", thick, a.Spare, last)
		}
		last = a.Spare
	}
}
