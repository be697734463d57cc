package fit

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/room"
)

// The bed of the tests about the house stands in a room of 4500 x 4000 with its wall side at wall CD, pushed into corner C. It is
// 2095.25 long (mattress 2000, play 19.05, two posts' layers and end members of 38.1 a side) and 1071.45 wide (900 + 19.05 + 4 x 38.1), so it
// covers x 2404.75 to 4500 and y -4000 to -2928.55. Decks at 350 and 1500, mattress tops at 500 and 1650, guardrail top at 1798.45.

// houseCase is one job and what is wanted of a question about it.
type houseCase struct {
	name   string
	places string
	edit   func(*job.Job)
	want   Verdict
	spare  float64 // of the line that decides, by hand; anything where there is none
	at     string
}

var noSpare = math.NaN() // no spare to look at

func runHouse(t *testing.T, q Question, base func(*job.Job), cases []houseCase) {
	t.Helper()
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			t.Helper()
			a := stage(t, houseJob(c.places, base, c.edit)).Ask(q)
			c.check(t, a)
		})
	}
}

func houseJob(places string, base, edit func(*job.Job)) *job.Job {
	j := bedroom(4500, 4000, sleepers)
	j.Places = strings.Fields(places)
	for _, f := range []func(*job.Job){base, edit} {
		if f != nil {
			f(j)
		}
	}
	return j
}

func (c houseCase) check(t *testing.T, a Answer) {
	t.Helper()
	at := ""
	if a.Decides >= 0 {
		at = a.Lines[a.Decides].At
	}
	switch {
	case a.Verdict != c.want:
		t.Errorf("%v (%s %s at %q, spare %v, u %v), want %v", a.Verdict, a.Reason, a.Ask, at, a.Spare, a.U, c.want)
	case c.at != "" && at != c.at:
		t.Errorf("decided at %q (spare %v), want %q", at, a.Spare, c.at)
	case !math.IsNaN(c.spare) && (!a.HasSpare || math.Abs(a.Spare-c.spare) > 1e-3):
		t.Errorf("spare %v at %q, want %v", a.Spare, at, c.spare)
	case a.Verdict == CannotTell && a.Ask == "":
		t.Error("cannot tell, and asks nothing")
	}
}

// none takes things from the list of what the room does not have.
func has(things ...string) func(*job.Job) {
	return func(j *job.Job) {
		var left []string
		for _, a := range j.Room.Absent {
			if !strings.Contains(" "+strings.Join(things, " ")+" ", " "+a+" ") {
				left = append(left, a)
			}
		}
		j.Room.Absent = left
	}
}

func both(edits ...func(*job.Job)) func(*job.Job) {
	return func(j *job.Job) {
		for _, e := range edits {
			e(j)
		}
	}
}

func spotAt(wall, from string, at, out float64) room.Spot {
	return room.Spot{Wall: wall, From: from, At: read(at), Out: read(out)}
}

// sure makes a reading with a standard uncertainty of its own, in mm.
func sure(x, u float64) room.Measure {
	m := read(x)
	m[0].U = mm(u)
	return m
}

// spareOf returns the line of a row at a place.
func spareOf(t *testing.T, a Answer, row, at string) Line {
	t.Helper()
	for _, l := range a.Lines {
		if l.Row.ID == row && l.At == at {
			return l
		}
	}
	t.Fatalf("%s: no line of %s at %q", a.ID, row, at)
	return Line{}
}

// Every question about the house that cannot be told asks for something a maker can do, and names a wall and a corner where it asks
// for a place.
func TestWhatIsAskedNamesWallAndCorner(t *testing.T) {
	j := houseJob("US NZ", nil, func(j *job.Job) {
		furnished(j)
		r := &j.Room
		r.Windows[0].At, r.Outlets[0].At, r.Registers[0].At, r.Heaters[0].At = nil, nil, nil, nil
		r.Fans[0].At, r.Lights[0].At, r.Alarms[0].At = nil, nil, nil
	})
	s := stage(t, j)
	want := map[string]string{
		"way-out":        "how far is the near edge of window.east from corner C along wall BC?",
		"window-fall":    "how far is the near edge of window.east from corner C along wall BC?",
		"window-cords":   "how far is the near edge of window.east from corner C along wall BC?",
		"fan-and-lights": "how far is the middle of fan.main from corner A along wall AB?",
		"heat":           "how far is the near end of heater.electric baseboard from corner A along wall DA?",
		"air":            "how far is the near edge of register.1 from corner D along wall CD?",
		"smoke-alarm":    "how far is the middle of alarm.1 from corner B along wall AB?",
	}
	for id, text := range want {
		q, ok := Find(id)
		if !ok {
			t.Fatalf("no question %s", id)
		}
		if a := s.Ask(q); a.Verdict == CannotTell && a.Ask != text {
			t.Errorf("%s asks %q, want %q", id, a.Ask, text)
		} else if a.Verdict != CannotTell && !askedSomewhere(a, text) {
			t.Errorf("%s: %v, and nowhere asks %q", id, a.Verdict, text)
		}
	}
	if !askedSomewhere(s.Ask(power), "how far is the middle of outlet.1 from corner C along wall CD?") {
		t.Error("power does not ask for the outlet's place")
	}
}

func askedSomewhere(a Answer, text string) bool {
	for _, l := range a.Lines {
		if l.Ask == text {
			return true
		}
	}
	return false
}

var houseQuestions = []Question{wayOut, windowFall, windowCords, fanAndLights, heat, air, power, smokeAlarm, roomHeight, studsHit, screwLength, shelfHeights}

// A thing that nobody asked about is never a silent pass, and one that the room does not have does not apply; without a window or an
// alarm a place that asks for one is not met.
func TestAbsentIsNotUnknown(t *testing.T) {
	bare := stage(t, houseJob("US", nil, nil))
	open := stage(t, houseJob("US", nil, func(j *job.Job) { j.Room.Absent = nil }))
	for _, q := range []Question{wayOut, windowFall, windowCords, fanAndLights, heat, air, smokeAlarm} {
		want := NotApplicable
		if q.ID == "way-out" || q.ID == "smoke-alarm" {
			want = DoesNotFit
		}
		if a := bare.Ask(q); a.Verdict != want {
			t.Errorf("%s where the room has none: %v, want %v", q.ID, a.Verdict, want)
		}
		if a := open.Ask(q); a.Verdict != CannotTell || !strings.HasPrefix(a.Ask, "is there") {
			t.Errorf("%s where nobody asked: %v, %q", q.ID, a.Verdict, a.Ask)
		}
	}
	if a := bare.Ask(power); a.Verdict != NotApplicable {
		t.Errorf("power where the room has none: %v", a.Verdict)
	}
	if a := open.Ask(power); a.Verdict != None || !askedSomewhere(a, "is there a switch in the room?") {
		t.Errorf("power where nobody asked: %v, %v", a.Verdict, a.Lines)
	}
}

// Without a bed, or with no place for it, nothing about it is told.
func TestNothingIsToldOfABedWithoutAPlace(t *testing.T) {
	for name, edit := range map[string]func(*job.Job){
		"no bed":   func(j *job.Job) { j.Bed.Upper.Height = mm(1) },
		"no wall":  func(j *job.Job) { j.Place.Wall = "" },
		"no shape": func(j *job.Job) { j.Room.Walls = nil },
	} {
		s, err := NewScene(houseJob("US", furnished, edit))
		if err != nil {
			t.Fatal(err)
		}
		for _, q := range houseQuestions {
			if q.ID == "smoke-alarm" || q.ID == "room-height" || q.ID == "power" {
				continue // about the room, or advice alone
			}
			if a := s.Ask(q); a.Verdict != CannotTell && a.Verdict != None {
				t.Errorf("%s, %s: %v %q", name, q.ID, a.Verdict, a.Reason)
			}
		}
	}
}

var houseLines int

func BenchmarkHouseQuestions(b *testing.B) {
	s := stage(b, bedroom(4500, 4000, sleepers, furnished))
	if a := s.Nominal(screwLength); math.Abs(a.Spare-(76.2-19.05-12-28.956)) > 1e-6 {
		b.Fatalf("screw-length: %v to spare", a.Spare)
	}
	b.ReportAllocs()
	for b.Loop() {
		for _, q := range houseQuestions {
			houseLines += len(s.Nominal(q).Lines)
		}
	}
}
