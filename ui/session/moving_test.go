package session

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// TestMovedAlongItsWall: by hand, from the files: the town house's window begins 7' 8" from A and the attic's 900 mm from B; moved by a foot or
// 300 mm they are that much farther from the same corner, assumed, whatever way the walls run. The other readings are as they were.
func TestMovedAlongItsWall(t *testing.T) {
	for _, c := range []struct {
		sample, key string
		wall        string
		along       float64 // mm from the wall's first corner towards its second
		step        length.Length
		want        string
	}{
		{"town-house.toml", "window.garden", "AB", 304.8, length.Inch, `8' 8"`},
		{"town-house.toml", "door.hall", "BC", -304.8, length.Inch, `6' 0"`},
		{"town-house.toml", "door.closet", "CD", -304.8, length.Inch, `3' 6"`}, // counted from D
		{"attic.toml", "window.gable", "BC", 300, 10 * length.Millimetre, "1200 mm"},
		{"town-house.toml", "window.garden", "AB", 1e6, length.Inch, `8' 8"`}, // 11' 6" less its width of 2' 10": it stops in the corner
		{"town-house.toml", "door.hall", "BC", -1e6, length.Inch, `0"`},
	} {
		j := sampleJob(t, c.sample)
		s := sceneOf(t, j)
		var by geom.V2
		for _, w := range s.Walls {
			if w.Key == c.wall {
				by = w.Dir.Mul(c.along).Add(w.In.Mul(500)) // out of the wall it cannot go
			}
		}
		got, err := MoveThing(s, c.key, by.At(0), c.step)
		if err != nil {
			t.Fatal(err)
		}
		at := jobfile.Shown(got.Job, c.key+".at")
		if at != c.want || jobfile.Shown(got.Job, c.key+".at.1.how") != "assumed" || jobfile.Shown(got.Job, c.key+".at.2") != "" {
			t.Errorf("%s by %g: %s by %s, want %s", c.key, c.along, at, jobfile.Shown(got.Job, c.key+".at.1.how"), c.want)
		}
		if was, is := jobfile.Shown(j, c.key+".wide"), jobfile.Shown(got.Job, c.key+".wide"); was != is || jobfile.Shown(got.Job, c.key+".from") != jobfile.Shown(j, c.key+".from") {
			t.Errorf("%s: its width or its end changed", c.key)
		}
		if len(got.Aside) != 1 || got.Aside[0] != c.key+".at" {
			t.Errorf("%s: put aside %v", c.key, got.Aside)
		}
	}
}

// TestMovedOutInTheRoom: what hangs out in the room moves both ways; a way that is square to one reading leaves that one as it was read.
func TestMovedOutInTheRoom(t *testing.T) {
	s := sceneOf(t, sampleJob(t, "town-house.toml"))
	w := s.Walls[0] // A to B: the fan is 7' 4" along and 6' 2" out
	got, err := MoveThing(s, "fan.ceiling", w.In.Mul(-2*304.8).At(0), length.Inch)
	if err != nil {
		t.Fatal(err)
	}
	j := got.Job
	if jobfile.Shown(j, "fan.ceiling.out") != `4' 2"` || jobfile.Shown(j, "fan.ceiling.out.1.how") != "assumed" {
		t.Errorf("out %s", jobfile.Shown(j, "fan.ceiling.out"))
	}
	if jobfile.Shown(j, "fan.ceiling.at") != `7' 4"` || jobfile.Shown(j, "fan.ceiling.at.1.how") != "once" {
		t.Errorf("along it was not moved, and is %s by %s", jobfile.Shown(j, "fan.ceiling.at"), jobfile.Shown(j, "fan.ceiling.at.1.how"))
	}
	if len(got.Lengths) != 1 || got.Lengths[0].Key != "fan.ceiling.out" {
		t.Errorf("said to have changed: %+v", got.Lengths)
	}
}

// TestLiftedOnItsWall: face on, a window goes up with its sill and its head: 2' 3" and 6' 7" by half a foot.
func TestLiftedOnItsWall(t *testing.T) {
	s := sceneOf(t, sampleJob(t, "town-house.toml"))
	got, err := MoveThing(s, "window.garden", geom.V3{Z: 152.4}, length.Inch)
	if err != nil {
		t.Fatal(err)
	}
	for key, want := range map[string]string{"sill": `2' 9"`, "head": `7' 1"`, "at": `7' 8"`} {
		if is := jobfile.Shown(got.Job, "window.garden."+key); is != want {
			t.Errorf("%s is %s, want %s", key, is, want)
		}
	}
}

// TestWhatIsNotReadCanBeMoved: an outlet that nobody placed is drawn in the middle of its wall; moved, it has an assumed place from there:
// 9' 10-1/8" of D to A halved, less a foot, to the whole inch.
func TestWhatIsNotReadCanBeMoved(t *testing.T) {
	s := sceneOf(t, sampleJob(t, "town-house.toml"))
	got, err := MoveThing(s, "outlet.bed side", s.Walls[3].Dir.Mul(-304.8).At(0), length.Inch)
	if err != nil || jobfile.Shown(got.Job, "outlet.bed side.at") != `3' 11"` || len(got.Aside) != 0 {
		t.Errorf("at %s, put aside %v, %v", jobfile.Shown(got.Job, "outlet.bed side.at"), got.Aside, err)
	}
}

// TestMovedThingsStayInTheRoom: wherever a hand goes, a thing that was in the room stays in it, and the job can be opened.
func TestMovedThingsStayInTheRoom(t *testing.T) {
	for _, name := range []string{"town-house.toml", "l-shaped.toml", "attic.toml"} {
		s := sceneOf(t, sampleJob(t, name))
		had := map[string]bool{}
		for _, p := range s.Problems() {
			had[p.Key] = true
		}
		var keys []string
		for _, thing := range Things(&s.Job.Room) {
			if Movable(s.Job, thing.Key) {
				keys = append(keys, thing.Key)
			}
		}
		rapid.Check(t, func(t *rapid.T) {
			key := rapid.SampledFrom(keys).Draw(t, "key")
			way := rapid.Float64Range(-9000, 9000)
			got, err := MoveThing(s, key, geom.V3{X: way.Draw(t, "x"), Y: way.Draw(t, "y")}, 10*length.Millimetre)
			if err != nil {
				t.Fatalf("%s: %v", key, err)
			}
			at := jobfile.Shown(got.Job, key+".at")
			if l, err := length.Parse(at, length.Context{Unit: unitOf(got.Job)}); at != "" && (err != nil || l < 0 || math.IsNaN(l.MM())) {
				t.Fatalf("%s at %s: %v", key, at, err)
			}
			next, err := got.Job.Survey()
			if err != nil {
				t.Fatal(err)
			}
			for _, p := range job.Problems(got.Job, next) {
				if Subject(p.Key) == key && !had[p.Key] && !strings.HasSuffix(p.Key, ".wide") && !strings.HasSuffix(p.Key, ".sweep") { // too near a wall: that is told
					t.Fatalf("%s by the hand: %s", key, p)
				}
			}
		})
	}
}
