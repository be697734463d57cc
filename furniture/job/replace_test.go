package job_test

import (
	"errors"
	"reflect"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
	"bunkwright/room/length"
	"bunkwright/room/misread"
	"bunkwright/room/survey"
)

const readTwice = `format = 1
name = "x"
unit = "in"
places = ["US"]
[readings]
by = "Ida"
[room]
outline = "ABCD"
[[wall]]
key = "AB"
length = [{ read = "12 ft", when = "2027-06-01" }, { read = "11 ft strong", how = "photo" }]
[[wall.stud]]
at = "15-1/4 in"
[[window]]
key = "garden"
wall = "AB"
sill = "27 in"
[[sleeper]]
name = "Ben"
seated = "30 in"
`

func loaded(t *testing.T, text string) *job.Job {
	t.Helper()
	f, err := jobfile.Load([]byte(text), "job.toml")
	if err != nil {
		t.Fatal(err)
	}
	return &f.Job
}

// TestReplace: a reading is replaced, the old one kept with the reason; the job it was done to stays as it was, and the file says it all.
func TestReplace(t *testing.T) {
	j, same := loaded(t, readTwice), loaded(t, readTwice)
	by := job.Decision{Why: "asked by phone", By: "Ida", When: "2027-06-03"}
	got, err := j.Replace("wall.AB.length", 1, 12*length.Foot, by)
	if err != nil {
		t.Fatal(err)
	}
	if !reflect.DeepEqual(j, same) {
		t.Error("the old job changed")
	}
	w := got.Room.Walls[0].Length
	if len(w) != 2 || w[1].Value != 12*length.Foot || w[1].How != room.Photo || w[1].Light != 0 || w[0] != j.Room.Walls[0].Length[0] {
		t.Errorf("readings %+v", w)
	}
	want := job.Replaced{Reading: "wall.AB.length", Was: j.Room.Walls[0].Length[1:], Taken: 12 * length.Foot, Why: by.Why, By: "Ida", When: by.When}
	if len(got.Replaced) != 1 || !reflect.DeepEqual(got.Replaced[0], want) {
		t.Errorf("kept %+v, want %+v", got.Replaced, want)
	}
	if back := loaded(t, string(jobfile.Encode(got))); !reflect.DeepEqual(back.Replaced, got.Replaced) {
		t.Errorf("from the file: %+v", back.Replaced)
	}
}

// TestSetAside: every kind of key that the survey gives a reading is found.
func TestSetAside(t *testing.T) {
	for _, key := range []string{"wall.AB.length", "wall.AB.stud.1.at", "window.garden.sill", "sleeper.Ben.seated"} {
		j := loaded(t, readTwice)
		got, err := j.SetAside(key, 0, job.Decision{Why: "taken again"})
		if err != nil || len(got.Replaced) != 1 || got.Replaced[0].Taken != 0 || len(got.Replaced[0].Was) != 1 {
			t.Errorf("%s: %+v, %v", key, got, err)
			continue
		}
		if _, err := got.SetAside(key, 1, job.Decision{}); !errors.As(err, new(*job.NoReadingError)) {
			t.Errorf("%s: a second reading: %v", key, err)
		}
	}
	for _, key := range []string{"", "wall", "wall.AB", "wall.XY.length", "wall.AB.length.2", "name", "window.garden.at", "bed.upper.height"} {
		if _, err := loaded(t, readTwice).SetAside(key, 0, job.Decision{}); !errors.As(err, new(*job.NoReadingError)) {
			t.Errorf("%q: %v", key, err)
		}
	}
}

// TestTakeCause: a foot dropped has a value that stands in the reading's place; how long a tape's case is nobody knows, so that reading is set
// aside; a wall that leans leaves all as it is.
func TestTakeCause(t *testing.T) {
	j, src := loaded(t, readTwice), survey.Source{Key: "wall.AB.length", Index: 1}
	cause := misread.Causes(11*length.Foot, 144*25.4, 0, misread.Context{})[0]
	got, err := j.TakeCause(src, cause, job.Decision{By: "Ida"})
	if err != nil || got.Room.Walls[0].Length[1].Value != 12*length.Foot || got.Replaced[0].Why != misread.Find(misread.Feet).Cause {
		t.Errorf("a foot: %+v, %v", got, err)
	}
	cause = misread.Causes(11*length.Foot, 135*25.4, 0, misread.Context{Inside: true})[0]
	got, err = j.TakeCause(src, cause, job.Decision{Why: "she remembers"})
	if err != nil || len(got.Room.Walls[0].Length) != 1 || got.Replaced[0].Why != "she remembers; tape case not added in an inside measure" {
		t.Errorf("the case: %+v, %v", got, err)
	}
	if _, err := j.TakeCause(src, misread.Cause{Read: 1, Value: 1}, job.Decision{}); !errors.Is(err, job.ErrNothingToReplace) {
		t.Errorf("nothing to replace: %v", err)
	}
}
