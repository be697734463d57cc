package fit

import (
	"slices"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/room"
)

// acceptedFan is the town house with its fan accepted as it is answered now.
func acceptedFan(t *testing.T) *job.Job {
	j := sample(t, "town-house.toml")
	print := stage(t, j).Ask(fanAndLights).Print()
	j.Accepted = []job.Accept{{Question: "fan-and-lights", Reason: "the fan comes down", Inputs: print}}
	return j
}

// TestAcceptedComesBack: questions.md, "comes back when any of its inputs changes".
func TestAcceptedComesBack(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(j *job.Job)
		holds  bool
	}{
		{"nothing changed", func(*job.Job) {}, true},
		{"a note was written", func(j *job.Job) { j.Note = "paint it green" }, true},
		{"the fan is larger", func(j *job.Job) { j.Room.Fans = []room.Fan{j.Room.Fans[0]}; j.Room.Fans[0].Sweep = read(1400) }, false},
		{"the bed was moved", func(j *job.Job) { j.Place.Along += mm(50) }, false},
		{"a lamp within reach came too", func(j *job.Job) {
			j.Room.Lights = append(slices.Clone(j.Room.Lights), room.Light{Key: "new", Kind: "pendant",
				Spot: room.Spot{Wall: "AB", From: "A", At: read(900), Out: read(500)}, Wide: read(300), Lowest: read(2200)})
		}, false},
	} {
		j := acceptedFan(t)
		c.change(j)
		a := stage(t, j).Ask(fanAndLights)
		if got := a.Accepted != ""; got != c.holds {
			t.Errorf("%s: accepted %t, want %t", c.name, got, c.holds)
		}
		if !c.holds && len(a.Notes) == 0 {
			t.Errorf("%s: nothing says that it was accepted before", c.name)
		}
	}
}

// TestOnePrintWhileDragging: a nominal answer has the print of the whole one, so that an acceptance does not flicker.
func TestOnePrintWhileDragging(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml", "half-measured.toml"} {
		s, err := NewScene(sample(t, name))
		if err != nil {
			t.Fatal(err)
		}
		for i, a := range s.Answers() {
			if got := s.Nominal(questions[i]).Print(); got != a.Print() {
				t.Errorf("%s, %s: print %s, nominal %s", name, a.ID, a.Print(), got)
			}
		}
	}
}

// TestTheSamplesAcceptanceHolds: the town house accepts its fan as it is; where a question comes to be judged otherwise, the file says so.
func TestTheSamplesAcceptanceHolds(t *testing.T) {
	a := stage(t, sample(t, "town-house.toml")).Ask(fanAndLights)
	if a.Accepted == "" {
		t.Errorf("not accepted any more; what it is judged by now prints %s", a.Print())
	}
}
