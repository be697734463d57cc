package render

import (
	"math"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

func TestSpreadByHand(t *testing.T) {
	for _, c := range []struct{ want, size, at []Paper }{
		{nil, nil, []Paper{}},
		{[]Paper{5}, []Paper{2}, []Paper{5}},
		{[]Paper{0, 10}, []Paper{2, 2}, []Paper{0, 10}},
		{[]Paper{0, 0, 0}, []Paper{2, 2, 2}, []Paper{-2, 0, 2}},
		{[]Paper{0, 1}, []Paper{2, 4}, []Paper{-1, 2}},
		{[]Paper{0, 0, 2.5}, []Paper{2, 2, 2}, []Paper{-7.0 / 6, 5.0 / 6, 17.0 / 6}},
	} {
		got := Spread(c.want, c.size)
		if !slices.EqualFunc(got, c.at, func(a, b Paper) bool { return math.Abs(float64(a-b)) < 1e-9 }) {
			t.Errorf("%v of %v: got %v, want %v", c.want, c.size, got, c.at)
		}
	}
}

// TestSpreadIsLeast: labels do not overlap, and no other such layout tried moves them less.
func TestSpreadIsLeast(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 8).Draw(t, "n")
		want := make([]Paper, n)
		size := make([]Paper, n)
		for i := range n {
			want[i] = Paper(rapid.Float64Range(0, 20).Draw(t, "want"))
			size[i] = Paper(rapid.Float64Range(0, 9).Draw(t, "size"))
		}
		slices.Sort(want)
		at := Spread(want, size)
		if gap := tightest(at, size); gap < -1e-9 {
			t.Fatalf("labels overlap by %v: %v", -gap, at)
		}
		other := slices.Clone(at)
		for i := range other {
			other[i] += Paper(rapid.Float64Range(-1, 1).Draw(t, "nudge"))
		}
		if tightest(other, size) >= 0 && moves(other, want) < moves(at, want)-1e-9 {
			t.Fatalf("%v moves labels less than %v", other, at)
		}
	})
}

// tightest returns the least air between two labels.
func tightest(at, size []Paper) Paper {
	least := Paper(math.Inf(1))
	for i := 1; i < len(at); i++ {
		least = min(least, at[i]-at[i-1]-(size[i]+size[i-1])/2)
	}
	return least
}

func moves(at, want []Paper) (sum Paper) {
	for i := range at {
		sum += (at[i] - want[i]) * (at[i] - want[i])
	}
	return sum
}
