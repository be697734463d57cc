package fit_test

import (
	"testing"

	"bunkwright/furniture/fit"
)

// TestSamplesSayWhatTheyAreFor: the basement is the room where much does not fit, the half-measured one where the honest answer is often
// "cannot tell yet", and in the town house most is settled.
func TestSamplesSayWhatTheyAreFor(t *testing.T) {
	least := map[string]struct {
		verdict fit.Verdict
		many    int
	}{
		"basement.toml":      {fit.DoesNotFit, 15},
		"half-measured.toml": {fit.CannotTell, 15},
		"town-house.toml":    {fit.Fits, 20},
		"attic.toml":         {fit.Fits, 15},
		"l-shaped.toml":      {fit.Fits, 12},
	}
	for name, data := range sampleFiles(t) {
		_, answers := ask(t, name, data)
		n := 0
		for _, a := range answers {
			if a.Verdict == least[name].verdict {
				n++
			}
		}
		if n < least[name].many {
			t.Errorf("%s: %d answers are %v, want at least %d", name, n, least[name].verdict, least[name].many)
		}
	}
}

// TestEverySafetyAnswerCarriesItsCaution: no safety answer that applies is shown without one.
func TestEverySafetyAnswerCarriesItsCaution(t *testing.T) {
	for name, data := range sampleFiles(t) {
		_, answers := ask(t, name, data)
		for _, a := range answers {
			if a.Group == fit.Safety && a.Verdict != fit.NotApplicable && a.Caution == "" {
				t.Errorf("%s: %s has no caution", name, a.ID)
			}
			if a.Verdict == fit.CannotTell && a.Ask == "" {
				t.Errorf("%s: %s cannot be told and does not say what to ask", name, a.ID)
			}
		}
	}
}
