package survey

import "testing"

func TestConformityCases(t *testing.T) {
	topics := []string{"conformity_quantile", "speed_limit", "alcove", "safety_verdict", "guard_band"}
	for _, r := range readCases(t, "conformity_cases.csv", topics...) {
		in := r.inputs()
		switch r["topic"] + " " + r["quantity"] {
		case "conformity_quantile z":
			r.compare(t, NormalQuantile(in.float(t, "pc")))
		case "speed_limit smallest_reading":
			r.compare(t, SmallestReadingBeyond(in.float(t, "limit"), in.float(t, "relative_u"), in.float(t, "pc")))
		case "alcove pc":
			r.compare(t, ConformityProbability(in.float(t, "measured")-in.float(t, "need"), in.float(t, "u")))
		case "alcove verdict":
			r.compareText(t, string(ConformityWord(in.float(t, "measured")-in.float(t, "need"), in.float(t, "u"))))
		case "safety_verdict pass":
			pass := SafetyConforms(in.float(t, "margin"), in.float(t, "u"))
			r.compareText(t, map[bool]string{true: "yes", false: "no"}[pass])
		case "guard_band max_risk_percent":
			guard, k, err := ParseGuardBand(in["rule"])
			if err != nil {
				t.Fatal(err)
			}
			r.compare(t, 100*GuardBandRisk(guard, k))
		default:
			t.Errorf("%s: unknown quantity", r["id"])
		}
	}
}

func TestConformityWithoutUncertainty(t *testing.T) {
	for margin, want := range map[float64]Conformity{1: Fits, 0: Fits, -1e-9: DoesNotFit} {
		if got := ConformityWord(margin, 0); got != want {
			t.Errorf("margin %v: got %q, want %q", margin, got, want)
		}
	}
}

func TestGuardBandRules(t *testing.T) {
	for rule, want := range map[string][2]float64{"g = U": {1, 2}, "g = 0": {0, 2}, "g = 0.83 U": {0.83, 2}, "g = 1.5U, k = 3": {1.5, 3}} {
		guard, k, err := ParseGuardBand(rule)
		if err != nil || guard != want[0] || k != want[1] {
			t.Errorf("%q: got %v, %v, %v", rule, guard, k, err)
		}
	}
	for _, rule := range []string{"", "g", "g = V", "g = . U", "g = U, k = "} {
		if _, _, err := ParseGuardBand(rule); err == nil {
			t.Errorf("%q was accepted", rule)
		}
	}
}
