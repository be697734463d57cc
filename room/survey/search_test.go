package survey

import (
	"math"
	"testing"
)

// search looks for wrong readings in a network as it stands in a folder or in a case.
func search(t *testing.T, n Network, how Testing) Found {
	t.Helper()
	found, err := FindSlipsIn(n, how)
	if err != nil {
		t.Fatal(err)
	}
	return found
}

// Hoepke (1980), Example 35.5, with the slip of the listing: 5 cm in 1059-75 (snooping_cases.csv). Sigmas there are only relative.
func TestSearchFindsTheListingSlip(t *testing.T) {
	n := readFolder(t, "n6b_large_blunder")
	found := search(t, n, Testing{Tau: true})
	if len(found.Misfits) != 1 || len(found.Misfits[0].Suspects) != 1 {
		t.Fatalf("got %+v, want one reading", found.Misfits)
	}
	s := found.Misfits[0].Suspects[0]
	if o := n.Observations[s.Equation]; o.From+"-"+o.To != "1059-75" || math.Abs(s.Off-0.0501) > 0.0002 || math.Abs(s.Test+3.2908) > 0.0005 {
		t.Errorf("got %s-%s off by %.4f with tau %.4f", o.From, o.To, s.Off, s.Test)
	}
	sameWithout(t, s.Equation)
	clean := readFolder(t, "n6_large_free")
	if found := search(t, clean, Testing{Tau: true}); len(found.Misfits) != 0 {
		t.Errorf("the clean network: %+v", found.Misfits)
	}
	clean.Observations = append(clean.Observations[:s.Equation:s.Equation], clean.Observations[s.Equation+1:]...)
	a, err := Adjust(clean)
	if err != nil {
		t.Fatal(err)
	}
	for u, x := range a.Solution.X { // setting a reading aside is leaving it out
		if math.Abs(x-found.Solution.X[u]) > 1e-7 || math.Abs(a.Solution.Sigma(u)-found.Solution.Sigma(u)) > 1e-8 {
			t.Errorf("unknown %d: %v, without the reading %v", u, found.Solution.X[u], x)
		}
	}
	if found.Solution.F != a.F || math.Abs(found.Solution.S0-a.S0) > 1e-6 {
		t.Errorf("f %d, s0 %.7f; without the reading %d, %.7f", found.Solution.F, found.Solution.S0, a.F, a.S0)
	}
}

// With one check a slip is seen, and every reading may be it (snooping_cases.csv sno-005 to 007; w of n1 is 0.69: nothing to see).
func TestSearchOneCheck(t *testing.T) {
	for folder, want := range map[string]int{"n1_braced_square": 0, "n2_braced_quad": 5, "n3_three_circles": 3} {
		found := search(t, readFolder(t, folder), Testing{})
		switch {
		case want == 0 && len(found.Misfits) > 0, want > 0 && (len(found.Misfits) != 1 || len(found.Misfits[0].Suspects) != want):
			t.Errorf("%s: got %+v, want %d that cannot be told apart", folder, found.Misfits, want)
		case len(found.Aside) > 0:
			t.Errorf("%s: %v set aside", folder, found.Aside)
		}
	}
}

// The constructed room of room_cases.csv: six readings, one of them 12 in too long, leave six suspects, off by 7-1/2 to 12 in; read twice
// each, the wrong one is found (roo-015, roo-030, roo-031).
func TestSearchRoom(t *testing.T) {
	for name, want := range map[string]int{"six_readings": 0, "twice": 0, "six_readings_DA_plus_12": 6, "twice_DA_plus_12": 1} {
		found := search(t, roomNetwork(t, name), Testing{})
		if want == 0 {
			if len(found.Misfits) > 0 {
				t.Errorf("%s: %+v", name, found.Misfits)
			}
			continue
		}
		if len(found.Misfits) != 1 || len(found.Misfits[0].Suspects) != want {
			t.Fatalf("%s: got %+v, want one of %d", name, found.Misfits, want)
		}
		checkSuspects(t, name, found.Misfits[0].Suspects)
	}
}

// checkSuspects holds how far off each would be, if it alone is, against what the room says without it; the reference file has the same to
// first order, reading less -residual/redundancy: within 1 part in 80 of it.
func checkSuspects(t *testing.T, name string, suspects []Suspected) {
	t.Helper()
	least, most := math.Inf(1), 0.0
	for _, s := range suspects {
		least, most = min(least, math.Abs(s.Off)), max(most, math.Abs(s.Off))
		wantNear(t, name+" without", s.Off, offWithout(t, roomNetwork(t, name), s.Equation), 1e-6)
		first := map[bool]int{true: 6, false: 24}[len(suspects) > 1] // where the case begins in the file
		r := readRecords(t, "room_reference.csv")[first+s.Equation]
		wantNear(t, name+" "+r["obs"], s.Off, -r.float(t, "residual_adj_minus_obs")/r.float(t, "redundancy"), math.Abs(s.Off)/80)
	}
	if len(suspects) > 1 { // "one of these six is off, by 7-1/2 to 12 in"
		wantNear(t, "least", least, 7.5, 0.1)
		wantNear(t, "most", most, 12, 0.1)
		return
	}
	if suspects[0].Equation != 3 {
		t.Errorf("%s: reading %d, want o04", name, suspects[0].Equation+1)
	}
}

// offWithout adjusts a network without one distance and compares.
func offWithout(t *testing.T, n Network, i int) float64 {
	t.Helper()
	o := n.Observations[i]
	n.Observations = append(n.Observations[:i:i], n.Observations[i+1:]...)
	a, err := Adjust(n)
	if err != nil {
		t.Fatal(err)
	}
	p, q := a.point(t, o.From), a.point(t, o.To)
	return o.Value - math.Hypot(p.X-q.X, p.Y-q.Y)
}

// Two slips in the room that was read twice: both are found, whatever one hides of the other.
func TestSearchTwoSlips(t *testing.T) {
	n := roomNetwork(t, "twice")
	n.Observations[0].Value += 10
	n.Observations[9].Value -= 2
	found := search(t, n, Testing{})
	var got []int
	for _, m := range found.Misfits {
		if len(m.Suspects) == 1 {
			got = append(got, m.Suspects[0].Equation)
		}
	}
	if len(got) != 2 || got[0] != 0 || got[1] != 9 {
		t.Errorf("found %v, want readings 0 and 9", got)
	}
	for _, a := range found.Aside {
		if c := found.Checks[a.Equation]; math.Abs(c.Error) < 1.5 || math.Abs(c.W) < found.Limit {
			t.Errorf("reading %d as if it were back: %+v", a.Equation, c)
		}
	}
}

// What is believed is no witness against a reading that others watch, and the only one where none do: a square room of four walls, one of
// them a foot long. By symmetry it may be either of the two that face each other.
func TestSearchBelieved(t *testing.T) {
	for _, c := range []struct{ diagonals, want int }{{0, 2}, {2, 6}} {
		p, _, _ := RectanglePlan{A: 144, B: 120, Sigma: 0.125, AngleSigma: 0.5, Walls: 4, Diagonals: c.diagonals, RightAngles: 4}.problem()
		believed := map[int]bool{}
		for e := range p.Equations {
			believed[e] = e >= 4+c.diagonals
		}
		p.Equations[0].Observed += 12
		found, err := FindSlips(p, Testing{Believed: believed})
		if err != nil || len(found.Misfits) != 1 || len(found.Misfits[0].Suspects) != c.want {
			t.Fatalf("%d diagonals: got %+v, %v, want %d suspects", c.diagonals, found.Misfits, err, c.want)
		}
		if found.Misfits[0].Believed != (c.diagonals == 0) {
			t.Errorf("%d diagonals: believed %v", c.diagonals, found.Misfits[0].Believed)
		}
	}
}

// A check of a reading set aside, as if it were back, is the check it had among the others: by hand 10, 10 and 16 with sigma 1 have mean
// 12, redundancies 2/3, residual -4 of the last, w = -4/sqrt(2/3), error 6, and it would move the mean by 1/3.
func TestAsIfBack(t *testing.T) {
	var p Problem
	p.Start = []float64{0}
	for _, v := range []float64{10, 10, 16} {
		p.Equations = append(p.Equations, linear(v, 1, Term{0, 1}))
	}
	found, err := FindSlips(p, Testing{})
	if err != nil || len(found.Aside) != 1 || found.Aside[0].Equation != 2 {
		t.Fatalf("got %+v, %v", found, err)
	}
	c := found.Checks[2]
	wantNear(t, "residual", c.Residual, -4, 1e-6)
	wantNear(t, "redundancy", c.Redundancy, 2.0/3, 1e-6)
	wantNear(t, "w", c.W, -4/math.Sqrt(2.0/3), 1e-6)
	wantNear(t, "error", c.Error, 6, 1e-6)
	_, gain := found.Solution.Gain(0)
	wantNear(t, "what it would do", gain[2]*found.Aside[0].Back, 1.0/3, 1e-6)
	wantNear(t, "mean of the others", found.Solution.X[0], 10, 1e-6)
}
