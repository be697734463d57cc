package fit

import (
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/job"
)

// TestSleepersWithoutNamesKeepApart: each place of a reading is there once, whoever has no name.
func TestSleepersWithoutNamesKeepApart(t *testing.T) {
	s := stage(t, bedroom(4000, 3500, func(j *job.Job) {
		j.Sleepers = []job.Sleeper{{Age: 8, Bed: "upper"}, {Age: 11, Bed: "upper"}, {Bed: "lower"}}
	}))
	for _, q := range []Question{sitUpTop, sitUpBottom} {
		var at []string
		for _, r := range q.Measure(s).Readings {
			if slices.Contains(at, r.At) {
				t.Errorf("%s stands twice in %s", r.At, q.ID)
			}
			at = append(at, r.At)
		}
		if len(at) == 0 {
			t.Errorf("%s: nothing is read", q.ID)
		}
	}
	if want, got := "how old is the lower sleeper, or how high does the lower sleeper sit?", s.Ask(sitUpBottom).Ask; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// TestGrownUpsOutgrowNothing: the ages at which children outgrow a place stand beside an answer only where a child sits there, and are
// those of the children's sex.
func TestGrownUpsOutgrowNothing(t *testing.T) {
	gran, girl := job.Sleeper{Name: "Gran", Sex: "woman", Bed: "upper"}, job.Sleeper{Name: "Ida", Age: 8, Sex: "girl", Bed: "upper"}
	ages := func(who ...job.Sleeper) string {
		s := stage(t, bedroom(4000, 3500, func(j *job.Job) { j.Sleepers = who }))
		var out []string
		for _, f := range s.Ask(sitUpTop).Figures {
			if strings.HasPrefix(f.Name, "age_") {
				out = append(out, f.Name)
			}
		}
		return strings.Join(out, " ")
	}
	if got := ages(gran); got != "" {
		t.Errorf("a grown-up: %s", got)
	}
	if got := ages(girl); got == "" {
		t.Error("a girl: no ages")
	}
	if alone, both := ages(girl), ages(gran, girl); alone != both {
		t.Errorf("a girl %q, with her grandmother %q", alone, both)
	}
}
