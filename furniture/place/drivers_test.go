package place

import (
	"testing"

	"bunkwright/furniture/fit"
)

// TestEveryDriverIsTried: what questions propose can be tried, and what can be tried is proposed.
func TestEveryDriverIsTried(t *testing.T) {
	proposed := map[fit.Driver]bool{}
	for _, q := range fit.All() {
		for _, d := range q.Propose {
			proposed[d] = true
			if generators[d] == nil {
				t.Errorf("%s proposes %s, which nobody tries", q.ID, d)
			}
		}
	}
	for d := range generators {
		if !proposed[d] {
			t.Errorf("no question proposes %s", d)
		}
	}
}
