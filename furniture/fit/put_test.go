package fit

import (
	"reflect"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/samples"
)

func sample(t *testing.T, name string) *job.Job {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	f, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return &f.Job
}

// places are some that differ in all that a place has.
func places(j *job.Job) []job.Placement {
	out := []job.Placement{j.Place, {}}
	for _, w := range j.Room.Walls {
		for _, t := range []job.Turn{job.AgainstSide, job.AgainstFront, job.AgainstLeft, job.AgainstRight} {
			out = append(out, job.Placement{Wall: w.Key, Along: mm(120), Turn: t, Mirror: t == job.AgainstLeft, Gap: job.Maybe{Value: mm(15), Set: true}})
		}
	}
	return append(out, j.Place)
}

// TestPutIsANewScene: a bed that is put somewhere else in a scene is answered like a bed that was there from the start, by its verdict alone
// too, and what is asked of the bed alone or does not hang on the place does not change.
func TestPutIsANewScene(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "l-shaped.toml", "half-measured.toml"} {
		j := sample(t, name)
		s, err := NewScene(j)
		if err != nil {
			t.Fatal(err)
		}
		first, roomWide := map[string]Answer{}, map[string]Answer{}
		for _, p := range places(j) {
			s.Put(p)
			at := *j
			at.Place = p
			fresh, err := NewScene(&at)
			if err != nil {
				t.Fatal(err)
			}
			for _, q := range questions {
				want, got := fresh.Nominal(q), s.Nominal(q)
				if !reflect.DeepEqual(got, want) {
					t.Errorf("%s, %s at %v: %+v, want %+v", name, q.ID, p, got, want)
				}
				if v, short := s.Verdict(q); v != want.Verdict || short > max(0, -want.Spare) {
					t.Errorf("%s, %s at %v: verdict alone %v, %g short, want %v %g", name, q.ID, p, v, short, want.Verdict, want.Spare)
				}
				if v := want.Verdict; !s.Judges(q) && (v == Fits || v == DoesNotFit || v == TooClose) {
					t.Errorf("%s, %s: %v, but nothing is judged", name, q.ID, v)
				}
				if !q.Placed() && s.Stands {
					if was, ok := roomWide[q.ID]; ok && (was.Verdict != want.Verdict || was.Spare != want.Spare) {
						t.Errorf("%s, %s at %v: %v %g, elsewhere %v %g, but does not hang on the place", name, q.ID, p, want.Verdict, want.Spare, was.Verdict, was.Spare)
					}
					roomWide[q.ID] = want
				}
				if was, ok := first[q.ID]; !q.OfBed || !ok {
					first[q.ID] = want
				} else if !reflect.DeepEqual(want, was) {
					t.Errorf("%s, %s at %v: %+v, but of the bed alone: %+v", name, q.ID, p, want, was)
				}
			}
			if got, want := s.Answers(), fresh.Answers(); !reflect.DeepEqual(got, want) {
				t.Errorf("%s at %v: other answers with how sure they are", name, p)
			}
		}
		if s.Job == j || j.Place != places(j)[0] {
			t.Error("the job itself was changed")
		}
	}
}

// TestChangeIsANewScene: a scene that is given another bed, and then the first one again, answers like a new one each time.
func TestChangeIsANewScene(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml"} {
		j := sample(t, name)
		s, err := NewScene(j)
		if err != nil {
			t.Fatal(err)
		}
		other, broken := *j, *j
		other.Bed.Upper.Height += mm(50)
		other.Place.Along += mm(30)
		broken.Bed.Upper.Height = mm(100)
		for i, to := range []*job.Job{&other, &broken, j, &other} {
			s.Change(to)
			fresh, err := NewScene(to)
			if err != nil {
				t.Fatal(err)
			}
			if got, want := s.Answers(), fresh.Answers(); !reflect.DeepEqual(got, want) {
				t.Errorf("%s, change %d: other answers than in a new scene", name, i)
			}
		}
	}
}
