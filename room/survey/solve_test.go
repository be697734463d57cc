package survey

import (
	"errors"
	"math"
	"reflect"
	"testing"
)

func linear(observed, sigma float64, terms ...Term) Equation {
	return LinearEquation("", terms, 0, observed, sigma)
}

// By hand: 10 with sigma 1 and 13 with sigma 2 weigh 1 and 1/4: mean 10.6, variance 1/1.25 = 0.8,
// gains 0.8 and 0.2, redundancies 0.2 and 0.8, vPv = 0.36 + (2.4/2)^2 = 1.8.
func TestWeightedMean(t *testing.T) {
	s, err := Solve(Problem{Start: []float64{0}, Equations: []Equation{linear(10, 1, Term{0, 1}), linear(13, 2, Term{0, 1})}})
	if err != nil {
		t.Fatal(err)
	}
	_, gain := s.Gain(0)
	first, second := s.Checks[0], s.Checks[1]
	for i, c := range []struct{ got, want float64 }{
		{s.X[0], 10.6}, {s.Covariance(0, 0), 0.8}, {gain[0], 0.8}, {gain[1], 0.2}, {s.VPV, 1.8}, {s.S0, math.Sqrt(1.8)}, {float64(s.F), 1},
		{first.Residual, 0.6}, {second.Residual, -2.4}, {first.Redundancy, 0.2}, {second.Redundancy, 0.8},
		{first.W, 0.6 / math.Sqrt(0.2)}, {second.W, -1.2 / math.Sqrt(0.8)}, {first.Error, -3}, {second.Error, 3},
		{first.Smallest, Noncentrality(DefaultAlpha, DefaultPower) / math.Sqrt(0.2)},
		{s.Variance([]Term{{0, 3}}), 7.2}, {s.ByReading([]Term{{0, 3}}, nil)[1], 0.6},
	} {
		if math.Abs(c.got-c.want) > 1e-12*max(1, math.Abs(c.want)) {
			t.Errorf("value %d: got %v, want %v", i, c.got, c.want)
		}
	}
}

func TestUndetermined(t *testing.T) {
	p := Problem{Start: []float64{1, 2, 3, 4, 5}, Equations: []Equation{
		linear(7, 1, Term{0, 1}),              // determined
		linear(9, 1, Term{1, 1}, Term{3, 1}),  // only a sum
		linear(20, 1, Term{4, 1}),             // determined
		linear(3, 1, Term{4, 1}, Term{4, -1}), // says nothing about it
	}} // nothing at all about unknown 2
	_, err := Solve(p)
	var open *UndeterminedError
	if !errors.As(err, &open) || !reflect.DeepEqual(open.Unknowns, []int{1, 2, 3}) {
		t.Fatalf("got %v, want unknowns 1, 2 and 3", err)
	}
	p.FreeDatum = true
	s, err := Solve(p)
	if err != nil {
		t.Fatal(err)
	}
	// The sum 9 is 3 more than the start values 2 and 4: half of it each is the smallest shift.
	for i, want := range []float64{7, 3.5, 3, 5.5, 20} {
		if math.Abs(s.X[i]-want) > 1e-12 {
			t.Errorf("unknown %d: got %v, want %v", i, s.X[i], want)
		}
	}
	if !reflect.DeepEqual(s.Undetermined, []int{1, 2, 3}) {
		t.Errorf("undetermined: got %v", s.Undetermined)
	}
	if s.F != 1 || s.Checks[1].Checked() {
		t.Errorf("f = %d, sum checked %v: want 1 (the empty reading) and false", s.F, s.Checks[1].Checked())
	}
}

// A weak reading beside a hard tie still determines what the tie leaves open, in either order.
func TestSigmasFarApart(t *testing.T) {
	tie, weak := linear(10, 1e-6, Term{0, 1}, Term{1, 1}), linear(4, 1e4, Term{0, 1})
	for _, equations := range [][]Equation{{tie, weak}, {weak, tie}} {
		s, err := Solve(Problem{Start: []float64{0, 0}, Equations: equations})
		if err != nil || math.Abs(s.X[0]-4) > 1e-6 || math.Abs(s.X[0]+s.X[1]-10) > 1e-12 {
			t.Errorf("got %v, %v; want 4 and 6", s.X, err)
		}
	}
}

func TestBlocks(t *testing.T) {
	s, err := Solve(Problem{Start: make([]float64, 4), Equations: []Equation{
		linear(1, 1, Term{3, 1}, Term{0, 1}), linear(2, 1, Term{1, 1}), linear(3, 1, Term{2, 1}), linear(4, 1, Term{0, 1}),
		linear(5, 1, Term{2, 1}), LinearEquation("fixed", nil, 7, 7.5, 1),
	}})
	if err != nil {
		t.Fatal(err)
	}
	var got [][2][]int
	for _, b := range s.Blocks() {
		got = append(got, [2][]int{b.Unknowns, b.Equations})
	}
	want := [][2][]int{{{0, 3}, {0, 3}}, {{1}, {1}}, {{2}, {2, 4}}, {{}, {5}}}
	if !reflect.DeepEqual(got, want) {
		t.Errorf("blocks: got %v, want %v", got, want)
	}
	if s.Covariance(0, 1) != 0 || s.F != 2 || s.BlockOf(2).F != 1 {
		t.Errorf("covariance %v, f %d, f of block 2 %d: want 0, 2, 1", s.Covariance(0, 1), s.F, s.BlockOf(2).F)
	}
	if c := s.Checks[5]; c.Residual != -0.5 || c.Redundancy != 1 || c.W != -0.5 {
		t.Errorf("a reading without unknowns: got %+v", c)
	}
}

func TestUnusableEquations(t *testing.T) {
	good := linear(1, 1, Term{0, 1})
	broken := map[string]func(*Equation){
		"sigma 0":          func(e *Equation) { e.Sigma = 0 },
		"negative sigma":   func(e *Equation) { e.Sigma = -1 },
		"sigma NaN":        func(e *Equation) { e.Sigma = math.NaN() },
		"reading infinite": func(e *Equation) { e.Observed = math.Inf(1) },
		"no prediction":    func(e *Equation) { e.Predict = nil },
		"unknown 7":        func(e *Equation) { e.Unknowns = []int{7} },
		"prediction NaN":   func(e *Equation) { e.Predict = func(_, _ []float64) float64 { return math.NaN() } },
		"slope infinite":   func(e *Equation) { e.Predict = func(_, s []float64) float64 { s[0] = math.Inf(1); return 0 } },
	}
	for name, breakIt := range broken {
		bad := good
		bad.Key = "bad"
		breakIt(&bad)
		_, err := Solve(Problem{Start: []float64{0}, Equations: []Equation{good, bad}})
		var e *EquationError
		if !errors.As(err, &e) || e.Index != 1 || e.Key != "bad" {
			t.Errorf("%s: got %v, want an EquationError of equation 1", name, err)
		}
	}
	if _, err := Solve(Problem{Start: []float64{math.NaN()}}); err == nil {
		t.Error("a start value that is not a number was accepted")
	}
	if s, err := Solve(Problem{}); err != nil || s.F != 0 {
		t.Errorf("nothing to solve: got %+v, %v", s, err)
	}
}

// x squared plus 1 is never 0: at its lowest point the reading says nothing about x any more.
func TestNotConverged(t *testing.T) {
	e := Equation{Observed: 0, Sigma: 1, Unknowns: []int{0}, Predict: func(at, slope []float64) float64 {
		slope[0] = 2 * at[0]
		return at[0]*at[0] + 1
	}}
	if s, err := Solve(Problem{Start: []float64{3}, Equations: []Equation{e}}); !errors.Is(err, ErrNotConverged) {
		t.Errorf("got %v, %v, want ErrNotConverged", s.X, err)
	}
}

func TestWorstOfNothing(t *testing.T) {
	s, err := Solve(Problem{Start: []float64{0}, Equations: []Equation{linear(1, 1, Term{0, 1})}})
	if err != nil {
		t.Fatal(err)
	}
	if e, located := s.Worst(); e != -1 || located {
		t.Errorf("got %d, %v; want -1: nothing is checked", e, located)
	}
}
