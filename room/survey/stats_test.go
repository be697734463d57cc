package survey

import (
	"math"
	"testing"
)

func TestCriticalValues(t *testing.T) {
	for _, r := range readCases(t, "tau_critical.csv", "tau_critical", "normal_quantile", "noncentrality") {
		in := r.inputs()
		switch r["topic"] {
		case "tau_critical":
			r.compare(t, TauCritical(int(in.float(t, "f")), in.float(t, "alpha")))
		case "normal_quantile":
			r.compare(t, NormalQuantile(in.float(t, "p")))
		case "noncentrality":
			r.compare(t, Noncentrality(in.float(t, "alpha"), in.float(t, "power")))
		}
	}
	if got := TauCritical(1, 0.001); got != 1 {
		t.Errorf("tau with one check: got %v, want 1", got)
	}
	for _, v := range []float64{TauCritical(0, 0.05), TauCritical(3, 0), TauCritical(3, 1), NormalQuantile(0), NormalQuantile(1)} {
		if !math.IsNaN(v) {
			t.Errorf("got %v outside the range of the table, want NaN", v)
		}
	}
}

// NIST Statistical Reference Datasets, univariate summary. The same data as readings of one unknown must give the mean as
// the solution and the standard deviation as s0.
func TestUnivariate(t *testing.T) {
	for _, r := range readCases(t, "univariate_cases.csv", "univariate") {
		data := univariate(t, r.inputs()["set"])
		mean, sd := MeanSD(data)
		p := Problem{Start: []float64{0}}
		for _, v := range data {
			p.Equations = append(p.Equations, LinearEquation("", []Term{{0, 1}}, 0, v, 1))
		}
		s, err := Solve(p)
		if err != nil {
			t.Fatal(err)
		}
		switch r["quantity"] {
		case "mean":
			r.compare(t, mean)
			r.compare(t, s.X[0])
		case "sd":
			r.compare(t, sd)
			r.compare(t, s.S0)
		}
	}
}

// univariate builds a set by the rule in the column data.
func univariate(t *testing.T, set string) []float64 {
	t.Helper()
	rules := map[string]struct{ first, low, high float64 }{
		"NumAcc2": {1.2, 1.1, 1.3},
		"NumAcc4": {10000000.2, 10000000.1, 10000000.3},
	}
	if set == "NumAcc1" {
		return []float64{10000001, 10000003, 10000002}
	}
	rule, ok := rules[set]
	if !ok {
		t.Fatalf("no rule for %q", set)
	}
	data := []float64{rule.first}
	for range 500 {
		data = append(data, rule.low, rule.high)
	}
	return data
}
