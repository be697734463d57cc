package view

import (
	"math"
	"strconv"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// keyOr returns the key of a thing, or its running number where it has none, as the survey counts it.
func keyOr(key string, i int) string {
	if key != "" {
		return key
	}
	return strconv.Itoa(i + 1)
}

// wallAt returns a wall by its place in the outline, nil where there is none.
func wallAt(s *fit.Scene, i int) *fit.Wall {
	if i < 0 || i >= len(s.Walls) {
		return nil
	}
	return &s.Walls[i]
}

// wallNamed returns a wall by its key, nil where there is none.
func wallNamed(s *fit.Scene, key string) *fit.Wall {
	for i := range s.Walls {
		if s.Walls[i].Key == key {
			return &s.Walls[i]
		}
	}
	return nil
}

// place is a stretch of a wall, counted from the wall's first corner. Guessed: nobody read where it is; it is drawn in the middle.
type place struct {
	w       *fit.Wall
	lo, hi  float64
	guessed bool
}

func (p place) middle() float64 { return (p.lo + p.hi) / 2 }

// onWall returns where something stands on its wall. Without its position it is taken in the middle of the wall, without its width as
// wide as usual; ok is false where its wall is not known.
func onWall(s *fit.Scene, on survey.OnWallRefs, wide survey.Ref, usual float64) (p place, ok bool) {
	if p.w = wallAt(s, on.Wall); p.w == nil {
		return p, false
	}
	width, at := s.Survey.Value(wide), s.Survey.Value(on.At)
	if math.IsNaN(width) {
		width, p.guessed = usual, true
	}
	switch {
	case math.IsNaN(at):
		at, p.guessed = (p.w.Len-width)/2, true
	case on.FromEnd:
		at = p.w.Len - at - width
	}
	p.lo, p.hi = at, at+width
	return p, true
}

// spot returns a place in plan, counted along its wall and out from it; guessed as in onWall.
func spot(s *fit.Scene, r survey.SpotRefs) (w *fit.Wall, along, out float64, guessed, ok bool) {
	if w = wallAt(s, r.Wall); w == nil {
		return nil, 0, 0, false, false
	}
	along, out = s.Survey.Value(r.At), s.Survey.Value(r.Out)
	switch {
	case math.IsNaN(along):
		along, guessed = w.Len/2, true
	case r.FromEnd:
		along = w.Len - along
	}
	if math.IsNaN(out) {
		out = 0
	}
	return w, along, out, guessed, true
}

// area returns the stretch along the wall and the depth of a thing whose near corner is a spot.
func area(s *fit.Scene, r survey.SpotRefs, wide, deep survey.Ref, usual float64) (p place, out, depth float64, ok bool) {
	p, ok = onWall(s, survey.OnWallRefs{Wall: r.Wall, FromEnd: r.FromEnd, At: r.At}, wide, usual)
	out, depth = s.Survey.Value(r.Out), s.Survey.Value(deep)
	if math.IsNaN(out) {
		out = 0
	}
	if math.IsNaN(depth) {
		depth, p.guessed = usual/3, true
	}
	return p, out, depth, ok
}

// quad returns the outline of a stretch of a wall from one distance out to another.
func (p place) quad(out0, out1 float64) geom.Polygon {
	return geom.Polygon{p.w.Point(p.lo, out0), p.w.Point(p.hi, out0), p.w.Point(p.hi, out1), p.w.Point(p.lo, out1)}
}
