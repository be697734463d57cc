package fit

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
)

// onCeiling is a smoke alarm at x = 2000, y = -1000.
func onCeiling(j *job.Job) {
	has("alarm")(j)
	j.Room.Alarms = []room.Alarm{{Key: "1", In: "ceiling", Spot: spotAt("AB", "A", 2000, 1000)}}
}

func onWall(below float64) func(*job.Job) {
	return func(j *job.Job) {
		has("alarm")(j)
		j.Room.Alarms = []room.Alarm{{Key: "1", In: "wall", Spot: room.Spot{Wall: "CD", From: "C", At: read(1000)}, Below: read(below)}}
	}
}

// Limits of NFPA 72 as rules.csv quotes them: 36 in = 914.4 from fan tips, supply registers, kitchen and bathroom doors; a wall alarm within
// 12 in = 304.8 of the ceiling. IRC R314.3: one alarm in the room.
func TestSmokeAlarm(t *testing.T) {
	fan := func(x float64) func(*job.Job) {
		return func(j *job.Job) {
			has("fan")(j)
			j.Room.Fans = []room.Fan{{Key: "main", Spot: spotAt("AB", "A", x, 1000), Sweep: read(1000), Blades: read(2200)}}
		}
	}
	supply := func(kind string, x float64) func(*job.Job) {
		return func(j *job.Job) {
			has("register")(j)
			j.Room.Registers = []room.Register{{Key: "1", Kind: kind, In: "floor", Spot: spotAt("AB", "A", x, 900), Wide: read(300), Deep: read(200)}}
		}
	}
	leads := func(to string) func(*job.Job) {
		return func(j *job.Job) { j.Room.Doors[0].LeadsTo, j.Room.Alarms[0].Spot = to, spotAt("AB", "B", 900, 300) }
	}
	// the door takes 100 to 860 from B; an alarm 900 from B and 300 out is hypot(40, 300) from its side
	door := math.Hypot(40, 300)
	runHouse(t, smokeAlarm, onCeiling, []houseCase{
		{"alone", "US", nil, Fits, 0, "alarms"},
		{"no text there", "EU", nil, None, noSpare, ""},
		{"fan tips 30 in away (case c38)", "US", fan(2000 + 500 + 762), DoesNotFit, 762 - 914.4, "alarm.1.fan.main"},
		{"fan tips just far enough, give or take", "US", fan(2000 + 500 + 915), TooClose, 0.6, "alarm.1.fan.main"},
		{"sweep not read", "US", both(fan(4000), func(j *job.Job) { j.Room.Fans[0].Sweep = nil }), CannotTell, noSpare, "alarm.1.fan.main"},
		{"nobody asked about a fan", "US", has("fan"), CannotTell, noSpare, "alarm.1.fan"},
		// level distance to the near side of the register
		{"supply register", "US", supply("supply", 2700), DoesNotFit, 700 - 914.4, "alarm.1.register.1"},
		{"register not told what", "US", supply("", 2700), DoesNotFit, 700 - 914.4, "alarm.1.register.1"},
		{"a return does not blow", "US", supply("return", 2700), Fits, 0, "alarms"},
		{"bathroom door", "US", leads("bathroom"), DoesNotFit, door - 914.4, "alarm.1.door.hall"},
		{"a door that leads nobody knows where", "US", leads(""), CannotTell, noSpare, "alarm.1.door.hall"},
		{"hall door", "US", leads("hall"), Fits, 0, "alarms"},
		{"ceiling or wall not told", "US", func(j *job.Job) { j.Room.Alarms[0].In = "" }, CannotTell, noSpare, "alarm.1"},
	})
	runHouse(t, smokeAlarm, nil, []houseCase{
		{"on a wall, high enough", "US", onWall(200), Fits, 0, "alarms"},
		{"on a wall, too low", "US", onWall(400), DoesNotFit, 304.8 - 400, "alarm.1.below"},
		{"on a wall, not read", "US", both(onWall(200), func(j *job.Job) { j.Room.Alarms[0].Below = nil }), CannotTell, noSpare, "alarm.1.below"},
		{"none, where one is asked for", "US", nil, DoesNotFit, -1, "alarms"},
		{"none, where none is asked for", "EU", nil, NotApplicable, noSpare, ""},
	})
}

// Case c38: 30 in from the tips of a fan.
func TestSmokeAlarmRuleCase(t *testing.T) {
	if row, _ := yardstick.Find("alarm-fan"); row.Outcome(30*25.4) != yardstick.Fail {
		t.Error("30 in is less than 36")
	}
}

// What is straight below or before an alarm is told: a shelf at 2240 high before a wall alarm whose top is 200 under the ceiling of 2440, the
// upper mattress under one on the ceiling over the bed.
func TestInTheWayOfAnAlarm(t *testing.T) {
	shelf := func(j *job.Job) {
		j.Bed.Shelves = []bunk.Shelf{{For: "upper", Height: 2250 * length.Millimetre, Long: 900 * length.Millimetre}}
	}
	for _, c := range []struct {
		edit func(*job.Job)
		want string
	}{
		{both(onWall(200), shelf), "shelf.1.board is straight before alarm.1"},
		{onWall(200), ""},
		{both(onCeiling, func(j *job.Job) { j.Room.Alarms[0].Spot = spotAt("CD", "C", 1000, 500) }), "mattress.upper is straight below alarm.1"},
		{onCeiling, ""},
	} {
		a := stage(t, houseJob("US", c.edit, nil)).Ask(smokeAlarm)
		if got := strings.Join(a.Notes, "; "); got != c.want {
			t.Errorf("notes %q, want %q", got, c.want)
		}
	}
}
