package fit_test

import (
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
)

// canGive lists the verdicts that each question can give, in table order. A question of counts and words has no doubt in it; what only
// advice and outside figures speak of never judges; what rests on needs of our own is judged at every place.
var canGive = [][2]string{
	{"sit-up-top", "fits does-not-fit too-close cannot-tell"},
	{"sit-up-bottom", "fits does-not-fit too-close cannot-tell"},
	{"lie-and-turn", "fits does-not-fit too-close cannot-tell"},
	{"old-enough", "fits does-not-fit cannot-tell not-applicable none"},
	{"rail-height", "fits does-not-fit too-close cannot-tell none"},
	{"rail-sides", "fits does-not-fit cannot-tell not-applicable"},
	{"rail-ends", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"rail-openings", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"end-height", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"end-openings", "fits does-not-fit too-close cannot-tell none"},
	{"ladder-steps", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"climb-steps", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"slat-gaps", "fits does-not-fit too-close cannot-tell"},
	{"mattress-fits", "fits does-not-fit too-close cannot-tell"},
	{"nothing-catches", "fits does-not-fit cannot-tell not-applicable"},
	{"marks", "fits does-not-fit cannot-tell not-applicable none"},
	{"stands", "fits does-not-fit too-close cannot-tell"},
	{"wall-gap", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"doors-swing", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"ladder-landing", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"walkway", "fits does-not-fit too-close cannot-tell"},
	{"drawers-slide", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"drawers-open", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"climb-space", "not-applicable none"},
	{"make-the-bed", "none"},
	{"see-them", "none"},
	{"way-out", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"window-fall", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"window-cords", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"fan-and-lights", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"heat", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"air", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"power", "not-applicable none"},
	{"smoke-alarm", "fits does-not-fit too-close cannot-tell not-applicable none"},
	{"room-height", "fits does-not-fit too-close cannot-tell none"},
	{"studs-hit", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"screw-length", "fits does-not-fit too-close cannot-tell not-applicable"},
	{"shelf-heights", "fits does-not-fit too-close cannot-tell not-applicable"},
}

// TestEveryVerdictIsMet: every question meets every verdict that it can give somewhere in the samples or the fixtures, and no other.
func TestEveryVerdictIsMet(t *testing.T) {
	met := metVerdicts(t)
	all := fit.All()
	if len(all) != len(canGive) {
		t.Errorf("%d questions, %d in the table", len(all), len(canGive))
	}
	for i, q := range all {
		if i >= len(canGive) || canGive[i][0] != q.ID {
			t.Errorf("%s is not in its place in the table", q.ID)
			continue
		}
		want := strings.Fields(canGive[i][1])
		for _, v := range want {
			if !slices.Contains(met[q.ID], v) {
				t.Errorf("%s never meets %s", q.ID, v)
			}
		}
		for _, v := range met[q.ID] {
			if !slices.Contains(want, v) {
				t.Errorf("%s meets %s, which the table does not list", q.ID, v)
			}
		}
	}
}

// metVerdicts collects the verdicts of every question over all samples and fixtures.
func metVerdicts(t *testing.T) map[string][]string {
	t.Helper()
	met := map[string][]string{}
	note := func(name string, data []byte) {
		_, answers := ask(t, name, data)
		for _, a := range answers {
			if v := a.Verdict.String(); !slices.Contains(met[a.ID], v) {
				met[a.ID] = append(met[a.ID], v)
			}
		}
	}
	for name, data := range sampleFiles(t) {
		note(name, data)
	}
	for _, f := range fixtures(t) {
		note(f.path, f.data)
	}
	return met
}

// TestEveryVerdictIsWanted: each verdict that a question can give is what some fixture says it wants of it, so that none is met by chance
// only.
func TestEveryVerdictIsWanted(t *testing.T) {
	wanted := map[[2]string]bool{}
	for _, f := range fixtures(t) {
		for _, w := range f.wants {
			wanted[[2]string{w.question, w.verdict}] = true
		}
	}
	for _, row := range canGive {
		for _, v := range strings.Fields(row[1]) {
			if !wanted[[2]string{row[0], v}] {
				t.Errorf("no fixture wants %s of %s", v, row[0])
			}
		}
	}
}
