package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
)

// heater puts one heater into the room, with no outlet in it.
func heater(kind string, spot room.Spot, wide, deep, high float64) func(*job.Job) {
	return func(j *job.Job) {
		has("heater")(j)
		j.Room.Heaters = []room.Heater{{Key: "1", Kind: kind, Spot: spot, Wide: read(wide), Deep: read(deep), High: read(high)}}
	}
}

func sheet(front, side, above float64) func(*job.Job) {
	return func(j *job.Job) {
		h := &j.Room.Heaters[0]
		h.Front, h.Side, h.Above = mm(front), mm(side), mm(above)
	}
}

// A baseboard heater on wall CD beyond the foot of the bed, 200 high, its near end at x = 2300. The nearest of the bed is the lower end
// member, x from 2404.75, 292.85 high: hypot(104.75, 92.85) = 139.977; 6 in = 152.4.
func TestHeatBesideABaseboard(t *testing.T) {
	gap := math.Hypot(104.75, 92.85)
	base := heater("electric baseboard", spotAt("CD", "D", 1300, 0), 1000, 80, 200)
	runHouse(t, heat, base, []houseCase{
		{"too near", "US", nil, DoesNotFit, gap - 152.4, "heater.1.side"},
		{"the planning figure counts everywhere", "EU", nil, DoesNotFit, gap - 152.4, "heater.1.side"},
		{"its own sheet asks for less", "US", sheet(0, 100, 0), Fits, gap - 100, "heater.1.side"},
		{"its own sheet asks for just this", "US", sheet(0, 139.5, 0), TooClose, gap - 139.5, "heater.1.side"},
		{"another side's sheet", "US", sheet(100, 0, 100), DoesNotFit, gap - 152.4, "heater.1.side"},
		{"of a kind nobody told", "US", func(j *job.Job) { j.Room.Heaters[0].Kind = "" }, CannotTell, noSpare, "heater.1"},
		{"its height not read", "US", func(j *job.Job) { j.Room.Heaters[0].High = nil }, CannotTell, noSpare, "heater.1"},
	})
	a := stage(t, houseJob("US", base, sheet(0, 100, 0))).Ask(heat)
	if l := spareOf(t, a, "own-heater-side", "heater.1.side"); l.Row.Source != "the heater's own sheet" || l.Row.Need[0] != 100 {
		t.Errorf("held against %v from %q", l.Row.Need, l.Row.Source)
	}
	if row, _ := yardstick.Find("own-heater-side"); row.Need[0] != 152.4 {
		t.Errorf("the yardstick itself was changed to %v", row.Need)
	}
}

// A baseboard heater under the head end, on wall BC from 100 to 700 of corner C, 80 deep and 200 high. Over it are the lower end member and
// side rails at 292.85: 92.85 above, 304.8 asked. Beside it the block under the wall-side rail ends 76.2 from C: 23.8.
func TestHeatAboveABaseboard(t *testing.T) {
	a := stage(t, houseJob("US", heater("electric baseboard", spotAt("BC", "C", 100, 0), 600, 80, 200), nil)).Ask(heat)
	for at, want := range map[string]float64{"above": 92.85 - 304.8, "side": 23.8 - 152.4} {
		if l := spareOf(t, a, "own-heater-"+at, "heater.1."+at); math.Abs(l.Spare-want) > 1e-3 {
			t.Errorf("%s: %v, want %v", at, l.Spare, want)
		}
	}
	// before it, lower than nothing over it: the slat nearest to wall BC, x up to 4400.2, 330.95 high: 19.8 on and 130.95 up
	if l := spareOf(t, a, "own-heater-front", "heater.1.front"); math.Abs(l.Value-math.Hypot(19.8, 130.95)) > 0.1 {
		t.Errorf("front: %v, want about 132.4", l.Value)
	}
	if a.Verdict != DoesNotFit || a.Caution == "" {
		t.Errorf("%v, caution %q", a.Verdict, a.Caution)
	}
}

// A portable heater 36 in (914.4) from everything: its front edge 1800 from wall AB, so the lower side rail, a post's
// layer of 38.1 behind the bed's outline, is 2928.55 + 38.1 - 1800 = 1166.65 away. A drawer of depth 1033.35 pulled out comes to 2928.55 -
// 1033.35 = 1895.2 from the wall: 95.2.
func TestHeatAndAPulledDrawer(t *testing.T) {
	base := heater("portable", spotAt("AB", "A", 3200, 1500), 300, 300, 400)
	runHouse(t, heat, base, []houseCase{
		{"no drawers", "US", nil, Fits, 1166.65 - 914.4, "heater.1.front"},
		{"drawers", "US", func(j *job.Job) { j.Bed.Drawers = &bunk.Drawers{} }, DoesNotFit, 95.2 - 914.4, "heater.1.front"},
		{"a wall heater with fan asks the same", "EU", func(j *job.Job) { j.Room.Heaters[0].Kind = "wall heater with fan" }, Fits, 252.25, "heater.1.front"},
		{"so does a stove", "EU", func(j *job.Job) { j.Room.Heaters[0].Kind = "stove" }, Fits, 252.25, "heater.1.front"},
		{"of a radiator there is advice alone", "US", func(j *job.Job) { j.Room.Heaters[0].Kind = "radiator" }, None, noSpare, ""},
	})
	a := stage(t, houseJob("US", base, func(j *job.Job) { j.Bed.Drawers = &bunk.Drawers{} })).Ask(heat)
	if a.Reason != "drawer.1, pulled out, before heater.1" {
		t.Errorf("reason %q", a.Reason)
	}
	a = stage(t, houseJob("US", base, func(j *job.Job) { j.Room.Heaters[0].Kind = "radiator" })).Ask(heat)
	if l := spareOf(t, a, "own-heater-radiator", "heater.1.front"); math.Abs(l.Spare-(1166.65-152.4)) > 1e-3 || l.Force != yardstick.Advice {
		t.Errorf("radiator: %v to spare with force %v", l.Spare, l.Force)
	}
}

// NEC 210.52 as rules.csv quotes it: no receptacle over a baseboard heater.
func TestOutletOverAHeater(t *testing.T) {
	base := heater("electric baseboard", spotAt("DA", "A", 1000, 0), 800, 80, 200)
	outlet := func(at, height float64) func(*job.Job) {
		return func(j *job.Job) {
			has("outlet")(j)
			j.Room.Outlets = []room.Outlet{{Key: "1", Kind: "outlet", Wall: "DA", From: "A", At: read(at), Height: read(height)}}
		}
	}
	for _, c := range []struct {
		edit func(*job.Job)
		want Verdict
	}{
		{nil, Fits}, {outlet(1400, 400), DoesNotFit}, {outlet(1900, 400), Fits}, {outlet(1400, 150), Fits},
		{func(j *job.Job) { has("outlet")(j) }, CannotTell},
		{both(outlet(1400, 400), func(j *job.Job) { j.Room.Outlets[0].Height = nil }), CannotTell},
	} {
		a := stage(t, houseJob("US", base, c.edit)).Ask(heat)
		if l := spareOf(t, a, "heater-no-outlet-above", "heater.1.outlet"); l.Verdict != c.want || l.Force != yardstick.Advice {
			t.Errorf("%v with force %v, want %v as advice", l.Verdict, l.Force, c.want)
		}
	}
}

// Case c37 of rule_cases.csv: 10 in before is less than 12, 7 in beside is more than 6 (common practice, no source). The row of
// rules.csv is the source line of the planning figure that judges.
func TestHeatRuleCases(t *testing.T) {
	for id, c := range map[string]struct {
		have length.Length
		want yardstick.Outcome
	}{"heater-front": {10 * length.Inch, yardstick.Fail}, "heater-side": {7 * length.Inch, yardstick.Pass}} {
		row, _ := yardstick.Find(id)
		own, _ := row.JudgedBy()
		judges, ok := yardstick.Find(own)
		if !ok || row.Outcome(c.have.MM()) != c.want || judges.Outcome(c.have.MM()) != c.want {
			t.Errorf("%s: %v, %s: %v, want %v", id, row.Outcome(c.have.MM()), own, judges.Outcome(c.have.MM()), c.want)
		}
	}
}
