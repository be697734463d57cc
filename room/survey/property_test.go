package survey

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/mat"
	"pgregory.net/rapid"
)

// drawLinear makes a linear problem that determines its unknowns: one plain reading of each, and some mixed ones.
func drawLinear(t *rapid.T) Problem {
	n := rapid.IntRange(1, 6).Draw(t, "unknowns")
	p := Problem{Start: make([]float64, n)}
	for u := range n {
		p.Equations = append(p.Equations, drawEquation(t, []int{u}))
	}
	for range rapid.IntRange(0, 8).Draw(t, "more") {
		p.Equations = append(p.Equations, drawEquation(t, rapid.SliceOfN(rapid.IntRange(0, n-1), 1, 3).Draw(t, "on")))
	}
	return p
}

func drawEquation(t *rapid.T, unknowns []int) Equation {
	terms := make([]Term, len(unknowns))
	for i, u := range unknowns {
		terms[i] = Term{u, rapid.SampledFrom([]float64{-2, -1, 0.5, 1, 3}).Draw(t, "factor")}
	}
	return LinearEquation("", terms, 0, rapid.Float64Range(-100, 100).Draw(t, "reading"), rapid.Float64Range(0.1, 10).Draw(t, "sigma"))
}

func solved(t *rapid.T, p Problem) Solution {
	s, err := Solve(p)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func near(a, b, scale float64) bool { return math.Abs(a-b) <= 1e-9*(1+math.Abs(scale)) }

func TestGainTimesReadingsIsTheSolution(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawLinear(t)
		s := solved(t, p)
		for u := range p.Start {
			equations, gain := s.Gain(u)
			x, variance := 0.0, 0.0
			for k, e := range equations {
				x += gain[k] * p.Equations[e].Observed
				variance += math.Pow(gain[k]*p.Equations[e].Sigma, 2)
			}
			if !near(x, s.X[u], 1000) || !near(variance, s.Covariance(u, u), variance) {
				t.Fatalf("unknown %d: gain gives %v and variance %v, solution %v and %v", u, x, variance, s.X[u], s.Covariance(u, u))
			}
		}
	})
}

func TestAnotherReadingNeverHurts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawLinear(t)
		before := solved(t, p)
		n := len(p.Start)
		p.Equations = append(p.Equations, drawEquation(t, rapid.SliceOfN(rapid.IntRange(0, n-1), 1, 3).Draw(t, "on")))
		after := solved(t, p)
		for u := range p.Start {
			if after.Covariance(u, u) > before.Covariance(u, u)*(1+1e-12) {
				t.Fatalf("unknown %d: variance %v rose to %v", u, before.Covariance(u, u), after.Covariance(u, u))
			}
		}
	})
}

func TestRedundanciesAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := solved(t, drawLinear(t))
		sum := 0.0
		for _, c := range s.Checks {
			sum += c.Redundancy
		}
		if !near(sum, float64(s.F), 1) {
			t.Fatalf("redundancies add up to %v, f is %d", sum, s.F)
		}
	})
}

// The split into blocks must not show: gonum's dense least squares of the whole problem gives the same unknowns.
func TestBlocksDoNotShow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := drawLinear(t)
		s := solved(t, p)
		a, b := mat.NewDense(len(p.Equations), len(p.Start), nil), mat.NewVecDense(len(p.Equations), nil)
		for e, eq := range p.Equations {
			slope := make([]float64, len(eq.Unknowns))
			eq.Predict(make([]float64, len(eq.Unknowns)), slope)
			for i, u := range eq.Unknowns {
				a.Set(e, u, a.At(e, u)+slope[i]/eq.Sigma)
			}
			b.SetVec(e, eq.Observed/eq.Sigma)
		}
		var x mat.VecDense
		if err := x.SolveVec(a, b); err != nil {
			t.Fatal(err)
		}
		for u := range p.Start {
			if !near(x.AtVec(u), s.X[u], 1000) {
				t.Fatalf("unknown %d: %v in blocks, %v as a whole", u, s.X[u], x.AtVec(u))
			}
		}
	})
}

// drawNetwork is a braced four-corner figure of about 3 x 4, free or held at A and in the direction of B.
func drawNetwork(t *rapid.T) Network {
	free := rapid.Bool().Draw(t, "free")
	off := rapid.Float64Range(-0.2, 0.2)
	n := Network{Points: []Point{{ID: "A"}, {ID: "B", X: 3}, {ID: "C", X: 3, Y: 4}, {ID: "D", Y: 4}}}
	for i := range n.Points {
		n.Points[i].X += off.Draw(t, "x")
		n.Points[i].Y += off.Draw(t, "y")
		n.Points[i].FixedX, n.Points[i].FixedY = !free && i == 0, !free && i < 2
	}
	for _, o := range []Observation{{ID: "AB", Value: 3}, {ID: "BC", Value: 4}, {ID: "CD", Value: 3}, {ID: "DA", Value: 4}, {ID: "AC", Value: 5}, {ID: "BD", Value: 5}} {
		o.Kind, o.From, o.To, o.SD = DistanceKind, o.ID[:1], o.ID[1:], 0.1
		o.Value += rapid.Float64Range(-0.2, 0.2).Draw(t, o.ID)
		n.Observations = append(n.Observations, o)
	}
	return n
}

func TestShiftedNetworkShifts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := drawNetwork(t)
		dx, dy := rapid.Float64Range(-100, 100).Draw(t, "dx"), rapid.Float64Range(-100, 100).Draw(t, "dy")
		moved := Network{Observations: n.Observations}
		for _, p := range n.Points {
			p.X, p.Y = p.X+dx, p.Y+dy
			moved.Points = append(moved.Points, p)
		}
		a, err1 := Adjust(n)
		b, err2 := Adjust(moved)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		for i, p := range a.Points {
			q := b.Points[i]
			if math.Abs(q.X-p.X-dx) > 1e-7 || math.Abs(q.Y-p.Y-dy) > 1e-7 || math.Abs(q.SX-p.SX) > 1e-7 {
				t.Fatalf("point %s: %+v and %+v, shifted by %v, %v", p.ID, p, q, dx, dy)
			}
		}
	})
}

// A free datum moves the network as a whole as little as it can: no shift of the middle, no turn about it
// (inner constraints), and the free residuals are those of any other datum.
func TestFreeDatumIsInner(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := drawNetwork(t)
		held := Network{Points: append([]Point(nil), n.Points...), Observations: n.Observations}
		for i := range n.Points {
			n.Points[i].FixedX, n.Points[i].FixedY = false, false
			held.Points[i].FixedX, held.Points[i].FixedY = i == 0, i < 2
		}
		a, err1 := Adjust(n)
		b, err2 := Adjust(held)
		if err1 != nil || err2 != nil {
			t.Fatal(err1, err2)
		}
		var sx, sy, turn float64
		for i, p := range a.Points {
			start := n.Points[i]
			sx, sy = sx+p.X-start.X, sy+p.Y-start.Y
			turn += start.X*(p.Y-start.Y) - start.Y*(p.X-start.X)
		}
		if math.Abs(sx) > 1e-9 || math.Abs(sy) > 1e-9 || math.Abs(turn) > 1e-7 {
			t.Fatalf("the network shifted by %v, %v and turned by %v", sx, sy, turn)
		}
		for i, c := range a.Observations {
			if math.Abs(c.Residual-b.Observations[i].Residual) > 1e-7 {
				t.Fatalf("%s: residual %v free, %v held", c.Key, c.Residual, b.Observations[i].Residual)
			}
		}
	})
}
