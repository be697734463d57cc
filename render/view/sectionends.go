package view

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// inRoom returns the point of the room at a place along the section.
func (v *section) inRoom(x float64) geom.V2 {
	return v.s.ToRoom.Point(geom.V3{X: v.along(x), Y: v.plane}).XY()
}

// findEnds looks for the walls at both ends of the section.
func (v *section) findEnds() {
	lo, hi := v.reach()
	v.ends = [2]sectionEnd{{at: lo - beyond}, {at: hi + beyond}}
	if v.s.Stands {
		for i := range v.s.Walls {
			v.meet(&v.s.Walls[i], lo, hi)
		}
	}
	v.lo, v.hi = v.ends[0].at, v.ends[1].at
}

// meet ends the section at a wall if it crosses it near the bed.
func (v *section) meet(w *fit.Wall, lo, hi float64) {
	across := v.dir.Cross(w.Dir)
	if math.Abs(across) < 0.3 {
		return
	}
	d := w.A.Sub(v.from)
	x, along := d.Cross(w.Dir)/across, d.Cross(v.dir)/across
	if along < -1 || along > w.Len+1 {
		return
	}
	switch {
	case across > 0 && x <= lo+1 && x > lo-endWall && (v.ends[0].wall == nil || x > v.ends[0].at):
		v.ends[0] = sectionEnd{x, w}
	case across < 0 && x >= hi-1 && x < hi+endWall && (v.ends[1].wall == nil || x < v.ends[1].at):
		v.ends[1] = sectionEnd{x, w}
	}
}

// reach returns how far the bed reaches along the section, ladder and climbing end included.
func (v *section) reach() (lo, hi float64) {
	a, b := v.spread(v.outlines())
	return a.X, b.X
}

// findCeiling follows the ceiling over the section, a little farther where it is broken off; it stays nil where it is not known all along.
func (v *section) findCeiling() {
	if !v.s.Stands {
		return
	}
	lo, hi := v.lo, v.hi
	if v.ends[0].wall == nil {
		lo -= mostBeyond
	}
	if v.ends[1].wall == nil {
		hi += mostBeyond
	}
	if v.ceiling = v.ceilingFrom(lo, hi); v.ceiling == nil {
		v.ceiling = v.ceilingFrom(v.lo, v.hi)
	}
}

func (v *section) ceilingFrom(lo, hi float64) []geom.V2 {
	over := ceilingsOf(v.s)
	at := func(x float64) (geom.V2, int, bool) {
		z, which, ok := over.at(v.from.Add(v.dir.Mul(min(max(x, lo+1), hi-1))))
		return geom.V2{X: x, Y: z}, which, ok
	}
	a, which, ok := at(lo)
	line := []geom.V2{a}
	for i := 1; i <= profileSteps && ok; i++ {
		b, next, good := at(lo + (hi-lo)*float64(i)/profileSteps)
		line = append(refine(line, a, b, which, next, at), b)
		a, which, ok = b, next, good
	}
	if !ok {
		return nil
	}
	return straightened(line)
}

// within returns the part of an outline between two places.
func within(line []geom.V2, lo, hi float64) []geom.V2 {
	out := []geom.V2{{X: lo, Y: heightOf(line, lo)}}
	for _, q := range line {
		if q.X > lo && q.X < hi {
			out = append(out, q)
		}
	}
	return append(out, geom.V2{X: hi, Y: heightOf(line, hi)})
}

// breakOff sets how far the drawing goes beyond the bed: on the side of the rail's dimension, far enough for it.
func (v *section) breakOff() {
	lo, hi := v.reach()
	room := min(max(beyond, float64(v.railRoom())/v.k), mostBeyond)
	v.railAt = 1
	switch {
	case v.ends[1].wall == nil:
		v.hi = hi + room
	case v.ends[0].wall == nil:
		v.railAt, v.lo = 0, lo-room
	}
	v.ends[0].at, v.ends[1].at = v.lo, v.hi
	if v.ceiling != nil {
		v.ceiling = within(v.ceiling, v.lo, v.hi)
	}
}

// findBehind looks for the wall that the bed's wall side faces.
func (v *section) findBehind() {
	if !v.s.Stands {
		return
	}
	look := v.dir.Left()
	mid := v.from.Add(v.dir.Mul((v.lo + v.hi) / 2))
	nearest := math.Inf(1)
	for i := range v.s.Walls {
		w := &v.s.Walls[i]
		along, out := w.Along(mid)
		if w.In.Dot(look) < -0.99 && along > 0 && along < w.Len && out > 0 && out < nearest {
			nearest, v.behind = out, w
		}
	}
}
