package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
)

// Case c31 of rule_cases.csv (AS/NZS 4220:2003 warning text): bunk top 1.9 m, fan centre 2.4 m away, radius 0.66 m, blades at 2.2 m: 1.77 m.
func TestFanDistanceRuleCase(t *testing.T) {
	got := FanDistance(1.9, 2.4, 0.66, 2.2)
	if math.Abs(got-1.77) > 0.01 {
		t.Errorf("%v m, want 1.77", got)
	}
	row, _ := yardstick.Find("asnzs-fan-distance")
	if row.Outcome(got*1000) != yardstick.Fail {
		t.Error("1.77 m is less than 2 m")
	}
}

// hallFan turns over x = 1000, y = -1000, 1000 over the tips, blades at 2200.
func hallFan(j *job.Job) {
	has("fan", "light")(j)
	j.Room.Fans = []room.Fan{{Key: "main", Spot: spotAt("AB", "A", 1000, 1000), Sweep: read(1000), Blades: read(2200)}}
	j.Room.Absent = append(j.Room.Absent, "light")
}

func fanAt(x, y, blades float64) func(*job.Job) {
	return func(j *job.Job) {
		j.Room.Fans[0].Spot, j.Room.Fans[0].Blades = spotAt("AB", "A", x, y), read(blades)
	}
}

// Reach of a ten-year-old of unknown sex, P95 of child_sizes.csv: girls 1822.4 - 476.3 = 1346.1 up (boys 1784.4 - 488.0 = 1296.4), 643.0 sideways.
// So the reach ends 1650 + 1346.1 = 2996.1 high, and 643 beyond the bed's outline.
//
// The corner of the outline is at (2404.75, -2928.55): from the fan's centre hypot(1404.75, 1928.55) = 2385.865, from its tips 1885.865, and
// less the reach 1242.865.
func TestFanOutOfReach(t *testing.T) {
	corner := math.Hypot(1404.75, 1928.55)
	// The nearest of the upper bed is the end board at the foot (1x6 under the guardrail's top, 19.05 in from the outline's end): it comes up to
	// 1798.45, its near end at (2423.8, -2928.55).
	board := math.Hypot(math.Hypot(1423.8, 1928.55)-500, 2200-1798.45)
	runHouse(t, fanAndLights, hallFan, []houseCase{
		{"out of reach", "US", nil, Fits, corner - 500 - 643, "fan.main.reach"},
		{"nearer than 2 m, in AU", "AU", nil, DoesNotFit, board - 2000, "fan.main.distance"},
		{"further in AU", "AU", fanAt(600, 300, 2300), Fits, noSpare, "fan.main.distance"},
		// over the bed and lower than the reach: 2200 - 2996.1
		{"over the bed", "US", fanAt(3500, 3500, 2200), DoesNotFit, 2200 - 2996.1, "fan.main.reach"},
		// straight before the bed's side, at the middle of its length: 2928.55 - 1784 - 500 - 643 = 1.55
		{"reached, give or take", "US", fanAt(3500, 1784, 2200), TooClose, 1.55, "fan.main.reach"},
		{"blades not read", "US", func(j *job.Job) { j.Room.Fans[0].Blades = nil }, CannotTell, noSpare, "fan.main.reach"},
		{"nobody said to sleep on top", "US", func(j *job.Job) { j.Sleepers = nil }, CannotTell, noSpare, "fan.main.reach"},
		{"a light nobody asked about", "US", func(j *job.Job) { has("light")(j) }, CannotTell, noSpare, "light"},
	})
	a := stage(t, houseJob("US", hallFan, fanAt(3500, 3500, 2200))).Ask(fanAndLights)
	if l := spareOf(t, a, "us-not-under-fan", "fan.main.under"); l.Verdict != DoesNotFit || l.Force != yardstick.Advice {
		t.Errorf("over the bed: %v with force %v, want no, as advice", l.Verdict, l.Force)
	}
	a = stage(t, houseJob("US", hallFan, nil)).Ask(fanAndLights)
	// 84 in = 2133.6; the tips are 500 from walls AB and DA, 18 in = 457.2
	for at, want := range map[[2]string]float64{{"fan-floor", "fan.main.floor"}: 66.4, {"fan-wall", "fan.main.wall"}: 42.8} {
		if l := spareOf(t, a, at[0], at[1]); math.Abs(l.Spare-want) > 1e-3 || l.Force != yardstick.Advice {
			t.Errorf("%v: %v to spare, want %v as advice", at, l.Spare, want)
		}
	}
}

// In New Zealand lights count with fans, at 2000 or more (asnzs-fan-distance, of AU, decides there too, for fans).
func TestLights(t *testing.T) {
	lamp := func(kind string, x, y float64, lowest room.Measure) func(*job.Job) {
		return func(j *job.Job) {
			has("light")(j)
			j.Room.Lights = []room.Light{{Key: "1", Kind: kind, Spot: spotAt("AB", "A", x, y), Wide: read(300), Lowest: lowest}}
		}
	}
	// before the bed's side: 2928.55 - 1500 = 1428.55 from the middle, 1278.55 from the rim, the front post's top 2300 - 1798.45 = 501.55 lower
	side := math.Hypot(1278.55, 501.55)
	runHouse(t, fanAndLights, nil, []houseCase{
		{"near the bed, in NZ", "NZ", lamp("surface", 4400, 1500, read(2300)), DoesNotFit, side - 2000, "light.1.distance"},
		{"near the bed, in the US out of reach", "US", lamp("surface", 4400, 1500, read(2300)), Fits, 1278.55 - 643, "light.1.reach"},
		// flush with the ceiling at 2440 over the bed, within the reach of 2996.1
		{"recessed over the bed", "US", lamp("recessed", 3500, 3500, nil), DoesNotFit, 2440 - 2996.1, "light.1.reach"},
		{"a pendant of unknown height", "US", lamp("pendant", 3500, 3500, nil), CannotTell, noSpare, "light.1.reach"},
		{"none of it", "US", nil, NotApplicable, noSpare, ""},
	})
	// lamp to bedding: the upper mattress, 1650 high, straight below
	a := stage(t, houseJob("US", nil, lamp("surface", 3500, 3500, read(2300)))).Ask(fanAndLights)
	if l := spareOf(t, a, "light-storage-surface", "light.1.storage"); math.Abs(l.Value-(2300-1650)) > 1e-6 || l.Verdict != None {
		t.Errorf("lamp to bedding %v (%v), want 650 as an outside figure", l.Value, l.Verdict)
	}
	a = stage(t, houseJob("US", nil, lamp("recessed", 3500, 3500, nil))).Ask(fanAndLights)
	if l := spareOf(t, a, "light-storage-recessed", "light.1.storage"); math.Abs(l.Value-(2440-1650)) > 1e-6 {
		t.Errorf("recessed lamp to bedding %v, want 790", l.Value)
	}
}

// A property: a fan hung higher is never nearer.
func TestAHigherFanIsNeverNearer(t *testing.T) {
	last := math.Inf(-1)
	for z := 1000.0; z <= 3000; z += 50 {
		s := stage(t, houseJob("AU", hallFan, fanAt(3500, 3500, 2200)))
		f := s.fan(0)
		f.low = z
		d, _ := s.fromUpperBed(&f)
		if z > 1800 && d < last {
			t.Errorf("blades at %v: %v, lower was %v", z, d, last)
		}
		if last = d; z < 1500 && d > 1500-z+1e-9 {
			t.Errorf("blades under the deck at %v: %v, want at most the way up to the deck", z, d)
		}
	}
}
