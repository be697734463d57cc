package survey

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"bunkwright/room/length"
)

// roomLike is a room of four corners with A at the origin and B on the x axis: every wall and diagonal twice, four soft
// right angles, and scalars (heights, positions on a wall) as readings of their own, every other one read twice.
func roomLike(scalars int) Problem {
	plan := RectanglePlan{A: 3500, B: 2990, Sigma: 3, AngleSigma: 0.5, Walls: 4, Diagonals: 2, RightAngles: 4, Times: 2}
	p, _, _ := plan.problem()
	for i := 0; i < scalars; i++ {
		if i%3 != 2 {
			p.Start = append(p.Start, 0)
		}
		u := len(p.Start) - 1
		p.Equations = append(p.Equations, LinearEquation(fmt.Sprint("height ", i), []Term{{u, 1}}, 0, 2400+float64(i%5), 3))
	}
	for i := range p.Start[:5] {
		p.Start[i] += 40 * math.Sin(float64(i))
	}
	return p
}

var kept Solution

func BenchmarkSolveRoom(b *testing.B) {
	for _, scalars := range []int{24, 60} {
		p := roomLike(scalars)
		b.Run(fmt.Sprintf("%d-readings", 12+4+scalars), func(b *testing.B) {
			s, err := Solve(p)
			if err != nil || math.Abs(s.X[0]-3500) > 1e-6 || s.F != 12+4-5+scalars/3 {
				b.Fatalf("the room is not right: %v, f %d, %v", s.X, s.F, err)
			}
			b.ReportAllocs()
			for b.Loop() {
				kept, _ = Solve(p)
			}
		})
	}
}

// One block is the worst case: forty heights, each read, and tied to each other by sixty differences.
func BenchmarkSolveOneBlock100Readings(b *testing.B) {
	p := Problem{Start: make([]float64, 40)}
	for u := range 40 {
		p.Equations = append(p.Equations, LinearEquation("", []Term{{u, 1}}, 0, float64(u), 3))
	}
	for i := range 60 {
		from, to := i%40, (i+1+12*(i/40))%40
		p.Equations = append(p.Equations, LinearEquation("", []Term{{from, -1}, {to, 1}}, 0, float64(to-from), 3))
	}
	s, err := Solve(p)
	if err != nil || len(s.Blocks()) != 1 || math.Abs(s.X[39]-39) > 1e-9 {
		b.Fatalf("%d blocks, %v", len(s.Blocks()), err)
	}
	b.ReportAllocs()
	for b.Loop() {
		kept, _ = Solve(p)
	}
}

var keptAdjusted Adjusted

func BenchmarkAdjust27Distances(b *testing.B) {
	n := readFolder(b, "n6_large_free")
	a, err := Adjust(n)
	if err != nil || math.Abs(a.S0-4.9543928) > 1e-6 {
		b.Fatalf("s0 %v, %v", a.S0, err)
	}
	b.ReportAllocs()
	for b.Loop() {
		keptAdjusted, _ = Adjust(n)
	}
}

var keptFound Found

// BenchmarkSearch60 is a room of sixty readings, one of them a foot off: every wall, diagonal and height twice. Budget: 10 ms.
func BenchmarkSearch60(b *testing.B) {
	for _, slip := range []float64{0, 304.8} {
		p := roomLike(48)
		believed := map[int]bool{12: true, 13: true, 14: true, 15: true}
		p.Equations[3].Observed += slip
		b.Run(fmt.Sprintf("slip-%g", slip), func(b *testing.B) {
			found, err := FindSlips(p, Testing{Believed: believed})
			if err != nil || (len(found.Misfits) == 1) != (slip > 0) || len(found.Checks) != 64 {
				b.Fatalf("%+v, %v", found.Misfits, err)
			}
			b.ReportAllocs()
			for b.Loop() {
				keptFound, _ = FindSlips(p, Testing{Believed: believed})
			}
		})
	}
}

var keptSurvey *Survey

// BenchmarkRoom64 is a whole room of 64 readings, an alcove with all walls and the diagonals seen read twice: clean, a foot off, 50 ft off.
// Budget: 10 ms, but for the last.
func BenchmarkRoom64(b *testing.B) {
	for _, slip := range []float64{0, 12, 600} {
		r := rand.New(rand.NewPCG(1, 1))
		in := drawRoom(r, "alcove").read(r, effort{walls: 2, diagonals: 2, limit: 24})
		in.Walls[1].Length[1].Value += length.FromMM(25.4 * slip)
		b.Run(fmt.Sprintf("slip-%g-in", slip), func(b *testing.B) {
			s, err := OfRoom(in, Options{})
			if err != nil || (len(s.Conflicts) > 0) != (slip > 0) {
				b.Fatalf("%+v, %v", s.Conflicts, err)
			}
			b.ReportMetric(float64(s.found.Readings), "readings")
			for b.Loop() {
				keptSurvey, _ = OfRoom(in, Options{})
			}
		})
	}
}
