package fit

import (
	"testing"

	"bunkwright/furniture/yardstick"
)

// TestVerdictByTheProjectRule: conformity_cases.csv con-016, con-018, con-020, con-024 (alcove, u = 0.098) and con-025, con-026 (safety
// answers need twice u). At m = 0 and u = 0 the row's own word on equality decides (design: "How sure").
func TestVerdictByTheProjectRule(t *testing.T) {
	pass, fail, border := yardstick.EqualPasses, yardstick.EqualFails, yardstick.EqualBorderline
	for _, c := range []struct {
		name    string
		m, u, k float64
		equal   yardstick.Equality
		want    Verdict
	}{
		{"con-016", 120 - 119.75, 0.098, coverBuild, pass, Fits},
		{"con-018", 120 - 119.9, 0.098, coverBuild, pass, TooClose},
		{"con-020", 120 - 120.25, 0.098, coverBuild, pass, DoesNotFit},
		{"con-024", 120 - 119.83, 0.098, coverBuild, pass, Fits},
		{"con-025", 0.2, 0.1, coverSafety, pass, Fits},
		{"con-026", 0.19, 0.1, coverSafety, pass, TooClose},
		{"exact and on the right side", 1e-6, 0, coverSafety, fail, Fits},
		{"exact and on the wrong side", -1e-6, 0, coverSafety, pass, DoesNotFit},
		{"on the limit, equality passes", 0, 0, coverSafety, pass, Fits},
		{"on the limit, equality fails", 0, 0, coverBuild, fail, DoesNotFit},
		{"on the limit, not settled by the text", 0, 0, coverBuild, border, TooClose},
		{"short, within doubt", -0.1, 0.098, coverBuild, pass, TooClose},
		{"short by 1.645 u", -0.1645, 0.1, coverSafety, pass, DoesNotFit},
	} {
		if got := verdictOf(c.m, c.u, c.k, c.equal); got != c.want {
			t.Errorf("%s: m %g, u %g: %v, want %v", c.name, c.m, c.u, got, c.want)
		}
	}
}

// TestZeroVerdictNeverFits: nothing measured is "cannot tell yet".
func TestZeroVerdictNeverFits(t *testing.T) {
	var v Verdict
	if v != CannotTell {
		t.Errorf("zero verdict is %v", v)
	}
}

// TestOrderOfVerdicts: questions.md, worst first.
func TestOrderOfVerdicts(t *testing.T) {
	order := []Verdict{DoesNotFit, CannotTell, TooClose, Fits}
	for i := 1; i < len(order); i++ {
		if !order[i-1].Worse(order[i]) {
			t.Errorf("%v should be worse than %v", order[i-1], order[i])
		}
	}
}
