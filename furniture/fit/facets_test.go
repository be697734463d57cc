package fit

import (
	"io/fs"
	"math"
	"testing"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/samples"
)

// sampleScenes returns the scene of every sample.
func sampleScenes(t *testing.T) map[string]*Scene {
	t.Helper()
	out := map[string]*Scene{}
	names, err := fs.Glob(samples.Files, "*.toml")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range names {
		data, err := fs.ReadFile(samples.Files, name)
		if err != nil {
			t.Fatal(err)
		}
		file, err := jobfile.Load(data, name)
		if err != nil {
			t.Fatal(err)
		}
		if out[name], err = NewScene(&file.Job); err != nil {
			t.Fatal(err)
		}
	}
	return out
}

// TestQuestionsNameWhatTheyDependOn moves every quantity of every sample by 3 mm (slopes by 3 in a thousand): a question whose readings
// change must have named the facet that the quantity belongs to, or its uncertainty would be left out. Looking at the pillow is advice
// without a plus-or-minus and says so.
func TestQuestionsNameWhatTheyDependOn(t *testing.T) {
	for name, s := range sampleScenes(t) {
		before := map[string]Finding{}
		for _, q := range questions {
			before[q.ID] = q.Measure(s)
		}
		for i, facet := range s.facets {
			s.moved(i, 3*s.scale(i))
			for _, q := range questions {
				if q.ID == seeThem.ID || q.Depends&facet != 0 {
					continue
				}
				now := q.Measure(s)
				for k, r := range before[q.ID].Readings {
					have, ok := match(now, k, r.At)
					if r.Ask == "" && r.Skip == "" && ok && math.Abs(have-r.Have) > 1e-6 {
						t.Errorf("%s: %s moves by %.3g with %s, which it does not depend on", name, q.ID+" "+r.At, have-r.Have, s.Survey.Keys[i])
					}
				}
			}
			s.restore(i)
		}
	}
}

// TestMovingBackLeavesNothing: after every quantity was moved and put back, all answers are what they were.
func TestMovingBackLeavesNothing(t *testing.T) {
	s := sampleScenes(t)["town-house.toml"]
	first, second := s.Answers(), s.Answers()
	for i := range first {
		a, b := first[i], second[i]
		if a.Verdict != b.Verdict || a.Spare != b.Spare || a.U != b.U {
			t.Errorf("%s: %v %g %g, then %v %g %g", a.ID, a.Verdict, a.Spare, a.U, b.Verdict, b.Spare, b.U)
		}
	}
}

// TestHigherCeilingNeverCosts: raising the ceiling takes no headroom from anybody.
func TestHigherCeilingNeverCosts(t *testing.T) {
	s := sampleScenes(t)["attic.toml"]
	for _, q := range []Question{sitUpTop, sitUpBottom, lieAndTurn} {
		low := s.Nominal(q)
		for i, key := range s.Survey.Keys {
			if key == "ceiling.flat.z" || key == "ceiling.slope.z" {
				s.moved(i, 50)
				if high := s.Nominal(q); high.Spare < low.Spare-1e-9 {
					t.Errorf("%s: %g with a higher %s, %g before", q.ID, high.Spare, key, low.Spare)
				}
				s.restore(i)
			}
		}
	}
}

// TestInRoom: a scene taken into a room in which one quantity is otherwise measures what it does when that quantity is moved, and taken back it
// answers as before.
func TestInRoom(t *testing.T) {
	s := sampleScenes(t)["town-house.toml"]
	first := s.Answers()
	for i := 0; i < len(s.facets); i += 5 {
		x := append([]float64(nil), s.Survey.X...)
		x[i] += 3 * s.scale(i)
		s.moved(i, 3*s.scale(i))
		want := map[string]Finding{}
		for _, q := range questions {
			want[q.ID] = q.Measure(s)
		}
		s.restore(i)
		s.InRoom(x)
		for _, q := range questions {
			for k, r := range q.Measure(s).Readings {
				if have, ok := match(want[q.ID], k, r.At); ok && math.Abs(have-r.Have) > 1e-9 {
					t.Errorf("%s %s: %g in the room, %g when %s is moved", q.ID, r.At, r.Have, have, s.Survey.Keys[i])
				}
			}
		}
		s.InRoom(nil)
	}
	for k, a := range s.Answers() {
		if a.Verdict != first[k].Verdict || a.Spare != first[k].Spare || a.U != first[k].U {
			t.Errorf("%s: %v %g, before %v %g", a.ID, a.Verdict, a.Spare, first[k].Verdict, first[k].Spare)
		}
	}
}
