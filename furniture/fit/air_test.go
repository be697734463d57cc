package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
)

// register lies in the floor, 250 along wall CD and 100 away from it.
func register(at, out float64) func(*job.Job) {
	return func(j *job.Job) {
		has("register")(j)
		j.Room.Registers = []room.Register{{Key: "1", Kind: "supply", In: "floor", Spot: spotAt("CD", "C", at, out), Wide: read(250), Deep: read(100)}}
	}
}

// At the foot end the front post stands 1968.25 to 2057.15 from corner C; its block reaches from 995.25 to 1033.35 out from wall CD, the post to
// 1071.45. A register 1900 to 2150 along and 915 to 1015 out lies under 19.75 x 88.9 = 1755.775 mm2 of 25000: a share of 0.070231.
func TestAir(t *testing.T) {
	runHouse(t, air, nil, []houseCase{
		{"under a foot", "US", register(1900, 915), DoesNotFit, -19.75 * 88.9 / 25000, "register.1"},
		// 895.5 to 995.5: 0.25 x 88.9, less than anybody can read
		{"just under a foot", "EU", register(1900, 895.5), TooClose, -0.25 * 88.9 / 25000, "register.1"},
		{"beside a foot by less than can be read", "EU", register(1900, 894), TooClose, 0, "register.1"},
		{"between the feet", "US", register(1000, 400), Fits, 0, "register.1"},
		{"under a drawer", "US", both(register(400, 400), func(j *job.Job) { j.Bed.Drawers = &bunk.Drawers{} }), DoesNotFit, -1, "register.1"},
		{"its place not read", "US", both(register(1000, 400), func(j *job.Job) { j.Room.Registers[0].Out = nil }), CannotTell, noSpare, "register.1"},
		{"in floor, wall or ceiling not told", "US", both(register(1000, 400), func(j *job.Job) { j.Room.Registers[0].In = "" }), CannotTell, noSpare, "register.1"},
	})
	a := stage(t, houseJob("US", register(1900, 915), nil)).Ask(air)
	if l := spareOf(t, a, "register-cover", "register.1.cover"); l.Verdict != DoesNotFit || l.Force != yardstick.Advice {
		t.Errorf("covered: %v with force %v, want yes, as advice", l.Verdict, l.Force)
	}
	// between the feet the lowest over it are the slats at 330.95: the ledges and rails are nearer to the sides
	a = stage(t, houseJob("US", register(1000, 400), nil)).Ask(air)
	if len(a.Figures) != 1 || math.Abs(a.Figures[0].Value-330.95) > 1e-6 {
		t.Errorf("free height %v, want 330.95", a.Figures)
	}
}

// A grille in wall CD behind the bed, 300 to 500 from corner C and 300 to 400 high: the lower side rail stands 38.1 before it, within 4 in =
// 101.6, from 292.85 to 432.55: all covered. From 450 to 550 high the mattress is 85.725 away and 500 high: half of it.
func TestAirOfAWallGrille(t *testing.T) {
	grille := func(height float64) func(*job.Job) {
		return func(j *job.Job) {
			has("register")(j)
			j.Room.Registers = []room.Register{{Key: "1", Kind: "return", In: "wall", Spot: spotAt("CD", "C", 300, 0), Wide: read(200), Deep: read(100), Height: read(height)}}
		}
	}
	runHouse(t, air, nil, []houseCase{
		{"behind the rail", "US", grille(300), DoesNotFit, -1, "register.1"},
		{"half behind the mattress", "US", grille(450), DoesNotFit, -0.5, "register.1"},
		{"over the mattress", "US", grille(700), Fits, 0, "register.1"},
		{"its height not read", "US", both(grille(700), func(j *job.Job) { j.Room.Registers[0].Height = nil }), CannotTell, noSpare, "register.1"},
	})
}

// A register in the ceiling at 2440 is far over the bed's top at 1798.45; under a ceiling at 1880 it is nearer than 4 in, over the end board.
func TestAirOfACeilingRegister(t *testing.T) {
	over := func(j *job.Job) {
		has("register")(j)
		j.Room.Registers = []room.Register{{Key: "1", Kind: "supply", In: "ceiling", Spot: spotAt("CD", "C", 0, 300), Wide: read(50), Deep: read(100)}}
	}
	low := func(j *job.Job) {
		for i := range j.Room.Ceilings[0].Heights {
			j.Room.Ceilings[0].Heights[i].Height = read(1880)
		}
	}
	// the end board is 19.05 thick and lies 19.05 to 38.1 from the outline's end, all across the register
	runHouse(t, air, over, []houseCase{
		{"far over the bed", "US", nil, Fits, 0, "register.1"},
		{"close over the end board", "US", low, DoesNotFit, -19.05 / 50, "register.1"},
	})
}

// A property: what covers a register and what leaves it free make up the whole.
func TestCoveredShare(t *testing.T) {
	for free := 0.0; free <= 1; free += 0.125 {
		if got := CoveredShare(2, 2*free); math.Abs(got+free-1) > 1e-12 {
			t.Errorf("free %v: covered %v", free, got)
		}
	}
}
