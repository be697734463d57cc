package jobfile

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/samples"
)

func load(t *testing.T, name string) *File {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	f, err := Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

// TestWhatIsShownSetsTheSame: every key of the samples that is set to what a field shows of it leaves the job as it is.
func TestWhatIsShownSetsTheSame(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml", "half-measured.toml"} {
		f := load(t, name)
		tried := 0
		for key := range f.lines {
			text := Shown(&f.Job, key)
			if text == "" {
				continue
			}
			tried++
			got, err := Set(&f.Job, Change{key, text})
			if err != nil {
				t.Errorf("%s: %s = %s: %v", name, key, text, err)
			} else if diff := cmp.Diff(&f.Job, got); diff != "" {
				t.Errorf("%s: %s = %s changes the job:\n%s", name, key, text, diff)
			}
		}
		if tried < 60 {
			t.Errorf("%s: only %d keys tried", name, tried)
		}
	}
}

func TestSet(t *testing.T) {
	f := load(t, "town-house.toml")
	before := string(Encode(&f.Job))
	for _, c := range []struct{ key, text, shown string }{
		{"name", "Another name", "Another name"},
		{"wall.AB.length.1", `11' 7"`, `11' 7"`},
		{"wall.AB.length.3", "3.5 m", "3500 mm"}, // a third reading; on no sixteenth, so shown exactly
		{"wall.AB.length.1.how", "photo", "photo"},
		{"wall.AB.length.1.by", "Somebody", "Somebody"},
		{"bed.guard.rows", "2", "2"},
		{"bed.rail", "2x6 = 1-7/16 x 5-3/8 in", "2x6 = 1-7/16 x 5-3/8 in"},
		{"bed.upper.head", "right", "right"},
		{"place.along", "2 ft", `2' 0"`},
		{"place.gap", "0 in", `0"`},
		{"place.gap", "", ""},
		{"window.garden.guard", "yes", "yes"},
		{"confirmed.us-end-spacing", "", ""},
		{"room.absent", "heater, beam", "heater, beam"},
		{"sleeper.Maren.age", "11", "11"},
	} {
		got, err := Set(&f.Job, Change{c.key, c.text})
		if err != nil {
			if c.key != "confirmed.us-end-spacing" {
				t.Errorf("%s = %s: %v", c.key, c.text, err)
			}
			continue
		}
		if shown := Shown(got, c.key); shown != c.shown {
			t.Errorf("%s = %s: shown as %q, want %q", c.key, c.text, shown, c.shown)
		}
	}
	if after := string(Encode(&f.Job)); after != before {
		t.Error("an edit changed the job it was given")
	}
}

func TestSetRefuses(t *testing.T) {
	f := load(t, "town-house.toml")
	for _, c := range []struct{ key, text, says string }{
		{"wall.AB.length", "12x", "12x"},
		{"wall.AB.length.9", "11 ft", "no such key"},
		{"wall.XY.length", "11 ft", "no such key"},
		{"wall.AB.colour", "red", "no such key"},
		{"bed.guard.rows", "two", "whole number"},
		{"sleeper.Maren.age", "-3", "years"},
		{"window.garden.wall", "AC", "no wall"},
		{"place.from", "C", "no end of wall"},
		{"unit", "", "empty"},
		{"unit", "yards", "in or mm"},
		{"bed.post", "wood", "no size in it"},
		{"bed.upper.height", "67", ""}, // inches by the unit of the job
	} {
		_, err := Set(&f.Job, Change{c.key, c.text})
		switch {
		case c.says == "" && err != nil:
			t.Errorf("%s = %s: %v", c.key, c.text, err)
		case c.says != "" && (err == nil || !strings.Contains(err.Error(), c.says)):
			t.Errorf("%s = %s: %v, want a text with %q", c.key, c.text, err, c.says)
		}
	}
}

func TestAddAndRemove(t *testing.T) {
	f := load(t, "town-house.toml")
	lamp, err := Add(&f.Job, "light", "desk", Change{"kind", "wall"}, Change{"wall", "BC"}, Change{"from", "B"}, Change{"at", "2 ft"})
	if err != nil {
		t.Fatal(err)
	}
	i := slices.IndexFunc(lamp.Room.Lights, func(l room.Light) bool { return l.Key == "desk" })
	if i < 0 || lamp.Room.Lights[i].Kind != "wall" || Shown(lamp, "light.desk.at") != `2' 0"` {
		t.Fatalf("lights %+v", lamp.Room.Lights)
	}
	gone, err := Remove(lamp, "light.desk")
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(&f.Job, gone); diff != "" {
		t.Errorf("added and removed again:\n%s", diff)
	}
	bare, err := Remove(&f.Job, "bed.ladder")
	if err != nil || bare.Bed.Ladder != nil || f.Job.Bed.Ladder == nil {
		t.Fatalf("the ladder: %v, %v", bare.Bed.Ladder, err)
	}
	again, err := Add(bare, "bed.ladder", "", Change{"on", "end"}, Change{"at", "right"})
	if err != nil || !again.Bed.Ladder.OnEnd {
		t.Fatalf("a ladder on an end: %v", err)
	}
	if _, err := Add(&f.Job, "light", "desk", Change{"kind", "candle"}); err == nil {
		t.Error("a candle was taken for a lamp")
	}
	if _, err := Remove(&f.Job, "light.nothing"); err == nil {
		t.Error("what is not there was removed")
	}
}

// TestEditsLeaveALoadableJob types anything into any key: either it is refused and nothing changed, or the job can be saved and opened.
func TestEditsLeaveALoadableJob(t *testing.T) {
	f := load(t, "attic.toml")
	var keys []string
	for key := range f.lines {
		keys = append(keys, key)
	}
	slices.Sort(keys)
	before := string(Encode(&f.Job))
	rapid.Check(t, func(t *rapid.T) {
		j := &f.Job
		for range 5 {
			key := rapid.SampledFrom(keys).Draw(t, "key")
			text := rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{"", "0", "1", "AB", "A", "yes", "12 ft", "900 mm", "2x4", "left"})).Draw(t, "text")
			var next *job.Job
			var err error
			if rapid.IntRange(0, 9).Draw(t, "remove") == 0 {
				next, err = Remove(j, key)
			} else {
				next, err = Set(j, Change{key, text})
			}
			if err != nil {
				continue
			}
			if _, err := Load(Encode(next), ""); err != nil {
				t.Fatalf("%s = %q: %v", key, text, err)
			}
			j = next
		}
	})
	if after := string(Encode(&f.Job)); after != before {
		t.Error("an edit changed the job it was given")
	}
}
