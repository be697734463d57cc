package place

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// cell is the side of the squares that the floor is divided into, mm.
const cell = 50

// freeSquare returns the side of the largest free square of floor whose sides run along and across the bed's wall, in whole cells: it may be up
// to two cells less than an exact one, never more than half a cell over it.
func freeSquare(s *fit.Scene) float64 {
	lo, hi := geom.V2{X: math.Inf(1), Y: math.Inf(1)}, geom.V2{X: math.Inf(-1), Y: math.Inf(-1)}
	seen := func(p geom.V2) geom.V2 {
		along, out := s.At.Along(p)
		return geom.V2{X: along, Y: out}
	}
	for _, p := range s.Outline {
		q := seen(p)
		lo, hi = geom.V2{X: min(lo.X, q.X), Y: min(lo.Y, q.Y)}, geom.V2{X: max(hi.X, q.X), Y: max(hi.Y, q.Y)}
	}
	nx, ny := int((hi.X-lo.X)/cell), int((hi.Y-lo.Y)/cell)
	taken := make([]bool, nx*ny)
	room := make(geom.Polygon, len(s.Outline))
	for i, p := range s.Outline {
		room[i] = seen(p).Sub(lo)
	}
	mark(taken, nx, ny, room, false)
	for _, t := range s.FloorThings() {
		p := make(geom.Polygon, len(t.Outline))
		for i, q := range t.Outline {
			p[i] = seen(q).Sub(lo)
		}
		mark(taken, nx, ny, p, true)
	}
	return cell * float64(largestSquare(taken, nx, ny))
}

// mark takes the cells whose middle lies inside an outline, or outside it.
func mark(taken []bool, nx, ny int, p geom.Polygon, inside bool) {
	var cuts []float64
	for y := range ny {
		cuts = crossings(p, (float64(y)+0.5)*cell, cuts[:0])
		for x := range nx {
			at, odd := (float64(x)+0.5)*cell, false
			for _, c := range cuts {
				odd = odd != (c <= at)
			}
			if odd == inside {
				taken[y*nx+x] = true
			}
		}
	}
}

// crossings returns where the edges of an outline cross a level line.
func crossings(p geom.Polygon, y float64, out []float64) []float64 {
	for i := range p {
		a, b := p.Edge(i)
		if (a.Y <= y) != (b.Y <= y) {
			out = append(out, a.X+(b.X-a.X)*(y-a.Y)/(b.Y-a.Y))
		}
	}
	return out
}

// largestSquare returns the side, in cells, of the largest square without a taken cell: that which ends at a cell is one larger than the
// least of those that end beside, below and across from it.
func largestSquare(taken []bool, nx, ny int) int {
	ends := make([]int, nx*ny)
	best := 0
	for y := range ny {
		for x := range nx {
			i := y*nx + x
			switch {
			case taken[i]:
				continue
			case x == 0 || y == 0:
				ends[i] = 1
			default:
				ends[i] = 1 + min(ends[i-1], ends[i-nx], ends[i-nx-1])
			}
			best = max(best, ends[i])
		}
	}
	return best
}
