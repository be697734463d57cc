package fit

import (
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"bunkwright/furniture/job"
	"bunkwright/room"
)

// measuresIn returns every measure of a value, to be taken out.
func measuresIn(v reflect.Value) (out []reflect.Value) {
	switch {
	case v.Type() == reflect.TypeFor[room.Measure]():
		if v.Len() > 0 {
			out = append(out, v)
		}
	case v.Kind() == reflect.Struct:
		for i := range v.NumField() {
			out = append(out, measuresIn(v.Field(i))...)
		}
	case v.Kind() == reflect.Slice:
		for i := range v.Len() {
			out = append(out, measuresIn(v.Index(i))...)
		}
	}
	return out
}

// TestAnyReadingMayBeMissing: whatever somebody forgot to read, the rest is answered, and no answer that fits rests on a number that is
// none.
func TestAnyReadingMayBeMissing(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml"} {
		rapid.Check(t, func(r *rapid.T) {
			j := sample(t, name)
			out := rapid.SampledFrom([]int{2, 5, 20}).Draw(r, "one in")
			for _, m := range measuresIn(reflect.ValueOf(&j.Room).Elem()) {
				if rapid.IntRange(1, out).Draw(r, "gone") == 1 {
					m.SetZero()
				}
			}
			s, err := NewScene(j)
			if err != nil {
				r.Fatalf("%s: %v", name, err)
			}
			for _, a := range s.Answers() {
				if a.Verdict == Fits && a.HasSpare && !(a.Spare >= 0 && a.U >= 0) {
					r.Fatalf("%s, %s: fits with %g to spare, u %g", name, a.ID, a.Spare, a.U)
				}
			}
		})
	}
}

// TestForgettingMakesNothingFit: an answer that does not fit never fits because somebody forgot to read something, wherever the bed is put.
func TestForgettingMakesNothingFit(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml"} {
		whole := sample(t, name)
		for k, p := range places(whole) {
			if k%6 != 0 {
				continue
			}
			whole.Place = p
			short := map[string]bool{}
			for _, a := range mustAnswer(t, whole) {
				short[a.ID] = a.Verdict == DoesNotFit
			}
			for i := range measuresIn(reflect.ValueOf(&whole.Room).Elem()) {
				j := sample(t, name)
				j.Place = p
				m := measuresIn(reflect.ValueOf(&j.Room).Elem())[i]
				was := m.Interface()
				m.SetZero()
				for _, a := range mustAnswer(t, j) {
					if a.Verdict == Fits && short[a.ID] {
						t.Errorf("%s at %s %s: %s fits once %v is not read", name, p.Wall, p.Turn, a.ID, was)
					}
				}
			}
		}
	}
}

func mustAnswer(t *testing.T, j *job.Job) []Answer {
	t.Helper()
	_, answers, err := Answers(j)
	if err != nil {
		t.Fatal(err)
	}
	return answers
}
