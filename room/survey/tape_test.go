package survey

import (
	"math"
	"testing"
)

func TestTapeErrors(t *testing.T) {
	topics := []string{"mpe", "mpe_surface", "mpe_marks", "uk_trade_imperial", "uk_trade_metric", "us_tape"}
	for _, r := range readCases(t, "tape_error.csv", topics...) {
		in := r.inputs()
		switch r["topic"] {
		case "mpe":
			r.compare(t, MaxTapeError(tapeClass(t, in), in.float(t, "length_m")))
		case "mpe_surface":
			r.compare(t, MaxTapeErrorFromEnd(tapeClass(t, in), in.float(t, "length_m")))
		case "mpe_marks":
			interval := map[string]float64{"up to 1 mm": 1, "over 1 mm to 1 cm": 10}[in["interval"]]
			r.compare(t, MaxMarkError(tapeClass(t, in), interval))
		case "uk_trade_imperial":
			r.compare(t, UKTradeToleranceInches(in.float(t, "length_ft")))
		case "uk_trade_metric":
			r.compare(t, UKTradeToleranceMM(in.float(t, "length_m")))
		case "us_tape":
			r.compare(t, USTapeTolerance(in.float(t, "length_ft")))
		}
	}
}

func tapeClass(t *testing.T, in record) TapeClass {
	t.Helper()
	c, err := ParseTapeClass(in["class"])
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func TestOutsideTheTapeTables(t *testing.T) {
	for _, v := range []float64{USTapeTolerance(0), USTapeTolerance(101), MaxTapeError(0, 1), MaxTapeErrorFromEnd(4, 1),
		MaxMarkError(ClassI, 11), MaxMarkError(ClassI, 0), MaxMarkError(0, 1)} {
		if !math.IsNaN(v) {
			t.Errorf("got %v, want NaN", v)
		}
	}
	for _, name := range []string{"", "IV", "2", "i"} {
		if c, err := ParseTapeClass(name); err == nil {
			t.Errorf("%q was read as class %d", name, c)
		}
	}
}
