package raster

import (
	"math"

	"bunkwright/render"
)

// snap returns the path with its level and upright lines moved, by half a pixel at most, to lie
// square on the pixels; between two of them a line would be grey and twice as wide. Slanted
// lines and curves keep their place, but for ends that they share with such lines.
func (s *sheet) snap(path render.Path, grid func(float64) float64) render.Path {
	s.snapped = append(s.snapped[:0], path...)
	start := 0
	for i, step := range path {
		switch step.Op {
		case render.OpMove:
			start = i
		case render.OpLine:
			s.snapSide(path, i-1, i, grid)
		case render.OpClose:
			s.snapSide(path, i-1, start, grid)
		}
	}
	for i, step := range path { // the control points of a curve go with its ends
		if step.Op == render.OpCubic {
			s.snapped[i].C1 = step.C1.Plus(s.snapped[i-1].To.Minus(path[i-1].To))
			s.snapped[i].C2 = step.C2.Plus(s.snapped[i].To.Minus(step.To))
		}
	}
	return s.snapped
}

// snapSide moves both ends of a side that is level or upright.
func (s *sheet) snapSide(path render.Path, from, to int, grid func(float64) float64) {
	a, b := path[from].To, path[to].To
	if a == b {
		return
	}
	if render.Aligned(a.Y, b.Y) {
		y := render.Paper(grid(s.pixel(a.Y)) / s.k)
		s.snapped[from].To.Y, s.snapped[to].To.Y = y, y
	}
	if render.Aligned(a.X, b.X) {
		x := render.Paper(grid(s.pixel(a.X)) / s.k)
		s.snapped[from].To.X, s.snapped[to].To.X = x, x
	}
}

// nudge keeps coordinates that are equal but for rounding on the same pixel.
const nudge = 1e-6

// strokeGrid returns where the middle of a line of a width may lie: on the middle of a pixel if
// it is an odd number of pixels wide, and between two if it is even.
func strokeGrid(width float64) func(float64) float64 {
	if int(math.Round(width))%2 == 0 && width >= 1.5 {
		return func(v float64) float64 { return math.Floor(v + 0.5 + nudge) }
	}
	return func(v float64) float64 { return math.Floor(v+nudge) + 0.5 }
}

// fillGrid lets a fill end between two pixels.
func fillGrid(v float64) float64 { return math.Floor(v + 0.5 + nudge) }
