package people

import (
	"math"
	"testing"
)

// By hand from the rows of sitting_height.csv and adult_sizes.csv: a child of exactly the mean of its age is later at the mean of that age, and one
// of a standard deviation over it at one over it; a grown-up stays.
func TestSittingLater(t *testing.T) {
	at := func(age float64, stat Stat) float64 {
		h, err := SittingHeight(Female, age, stat)
		if err != nil {
			t.Fatal(err)
		}
		return h
	}
	for _, c := range []struct {
		name                      string
		age, sitting, later, want float64
	}{
		{"mean at 9, at 14", 9, at(9, Mean), 14, at(14, Mean)},
		{"one over at 9, at 14", 9, at(9, Mean) + at(9, SD), 14, at(14, Mean) + at(14, SD)},
		{"mean at 9, grown", 9, at(9, Mean), 30, 856.6},
		{"one under at 9, grown", 9, at(9, Mean) - at(9, SD), 30, 856.6 - 33.1},
		{"grown already", 30, 901, 35, 901},
		{"now", 9, 733, 9, 733},
	} {
		if got, err := SittingLater(Female, c.age, c.sitting, c.later); err != nil || math.Abs(got-c.want) > 1e-6 {
			t.Errorf("%s: got %v, %v, want %v", c.name, got, err, c.want)
		}
	}
	if _, err := SittingLater(Female, 1, 500, 6); err == nil {
		t.Error("a child of 1 has no row")
	}
}
