package fit_test

import (
	"slices"
	"testing"

	"bunkwright/furniture/fit"
)

// canGive lists the verdicts that a question can give; every other question can give all of the first four.
// A question of counts and words has no doubt in it; one without limits or needs of its own at the places never judges.
var canGive = map[string][]string{
	"old-enough":      {"fits", "does-not-fit", "cannot-tell", "none"},
	"rail-sides":      {"fits", "does-not-fit", "cannot-tell"},
	"marks":           {"fits", "does-not-fit", "cannot-tell", "none"},
	"climb-space":     {"none", "not-applicable"},
	"make-the-bed":    {"none"},
	"see-them":        {"none"},
	"nothing-catches": {"fits", "does-not-fit", "cannot-tell"},
	"power":           {"none", "not-applicable"},
	"shelf-heights":   {"fits", "does-not-fit", "cannot-tell", "not-applicable"},
	"climb-steps":     {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"drawers-slide":   {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"drawers-open":    {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"wall-gap":        {"fits", "does-not-fit", "too-close", "cannot-tell", "none"},
	"ladder-landing":  {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"window-fall":     {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"window-cords":    {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"fan-and-lights":  {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"heat":            {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"air":             {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"studs-hit":       {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
	"screw-length":    {"fits", "does-not-fit", "too-close", "cannot-tell", "not-applicable"},
}

var usual = []string{"fits", "does-not-fit", "too-close", "cannot-tell"}

// TestEveryVerdictIsMet: every question meets every verdict that it can give somewhere in the samples or the fixtures.
func TestEveryVerdictIsMet(t *testing.T) {
	met := map[string][]string{}
	note := func(answers []fit.Answer) {
		for _, a := range answers {
			met[a.ID] = append(met[a.ID], a.Verdict.String())
		}
	}
	for name, data := range sampleFiles(t) {
		_, answers := ask(t, name, data)
		note(answers)
	}
	for _, f := range fixtures(t) {
		_, answers := ask(t, f.path, f.data)
		note(answers)
	}
	for _, q := range fit.All() {
		want, ok := canGive[q.ID]
		if !ok {
			want = usual
		}
		for _, v := range want {
			if !slices.Contains(met[q.ID], v) {
				t.Errorf("%s never meets %s", q.ID, v)
			}
		}
		for _, v := range met[q.ID] {
			if !slices.Contains(want, v) && v != "not-applicable" && v != "none" {
				t.Errorf("%s meets %s, which the table does not list", q.ID, v)
			}
		}
	}
}
