package render

import "math"

// Run is a subpath made of straight lines.
type Run struct {
	Points []Point
	Closed bool // the last point is joined to the first
}

// Flatten returns the subpaths with every curve replaced by straight lines that stray from it
// by at most tolerance.
func (p Path) Flatten(tolerance Paper) []Run {
	var run Run
	runs, points := make([]Run, 0, 1), make([]Point, len(p)) // straight paths need no more
	end := func() {
		if len(run.Points) > 0 {
			runs = append(runs, run)
		}
		points = points[min(len(run.Points), len(points)):]
		run = Run{}
	}
	for _, s := range p {
		switch s.Op {
		case OpMove:
			end()
			run.Points = append(points[:0], s.To)
		case OpLine:
			run.Points = append(run.Points, s.To)
		case OpCubic:
			run.Points = flattenCubic(run.Points, s, tolerance)
		case OpClose:
			run.Closed = true
			end()
		}
	}
	end()
	return runs
}

// maxChords bounds the straight lines that stand for one curve.
const maxChords = 4096

// flattenCubic goes on from the last point along the curve. A chord over 1/n of a curve strays
// from it by at most max|B”| / 8n^2, and |B”| of a cubic is at most six times its largest
// second difference of control points (interpolation error bound of any numerics text). The
// tolerance gives way once a curve would take more than maxChords.
func flattenCubic(points []Point, s Step, tolerance Paper) []Point {
	if len(points) == 0 {
		return append(points, s.To)
	}
	a := points[len(points)-1]
	bend := max(secondDifference(a, s.C1, s.C2), secondDifference(s.C1, s.C2, s.To))
	n := int(min(maxChords, math.Ceil(math.Sqrt(float64(6*bend/(8*max(tolerance, 1e-6)))))))
	for i := 1; i < n; i++ {
		points = append(points, cubicAt(a, s, float64(i)/float64(n)))
	}
	return append(points, s.To)
}

func secondDifference(a, b, c Point) Paper {
	return Point{a.X - 2*b.X + c.X, a.Y - 2*b.Y + c.Y}.Length()
}

func cubicAt(a Point, s Step, t float64) Point {
	ab, bc, cd := a.Between(s.C1, t), s.C1.Between(s.C2, t), s.C2.Between(s.To, t)
	return ab.Between(bc, t).Between(bc.Between(cd, t), t)
}

// segments calls do for every straight piece of the runs. The missing last side of an open run
// counts if asked for, as it does when the path is filled.
func segments(runs []Run, closeAll bool, do func(a, b Point)) {
	for _, r := range runs {
		for i := 1; i < len(r.Points); i++ {
			do(r.Points[i-1], r.Points[i])
		}
		if n := len(r.Points); n > 1 && (r.Closed || closeAll) {
			do(r.Points[n-1], r.Points[0])
		}
	}
}
