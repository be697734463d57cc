package session

import (
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// Turn returns where the bed would stand a quarter turn on, about its middle, at the same wall.
func Turn(s *fit.Scene, snap Snapping) Pose {
	st, ok := stanceAt(s, s.At, geom.V2{})
	if !ok {
		return Pose{Place: s.Job.Place}
	}
	i := slices.Index(job.Turns, st.turn)
	st.turn = job.Turns[(i+1)%len(job.Turns)]
	mid, was := (st.lo+st.hi)/2, st.hi-st.lo
	span := s.Bed.Long + s.Bed.Wide - was
	st.lo, st.hi = mid-span/2, mid+span/2
	if s.Job.Place.Gap.Set { // its middle stays as far from the wall
		st.out = max(st.near, st.out+(span-was)/2)
		return st.settle(s, snap)
	}
	p := st.settle(s, snap)
	p.Place.Gap = length.Maybe{}
	return p
}

// Mirror returns the place of the bed built as its mirror image.
func Mirror(s *fit.Scene) Pose {
	p := s.Job.Place
	p.Mirror = !p.Mirror
	return Pose{Place: p}
}

// Press returns the bed pressed to the wall that it is nearest to.
func Press(s *fit.Scene) Pose {
	least, best := math.Inf(1), stance{}
	for i := range s.Walls {
		if st, ok := stanceAt(s, &s.Walls[i], geom.V2{}); ok && st.over() && st.out < least {
			best, least = st, st.out
		}
	}
	if best.wall == nil {
		return Pose{Place: s.Job.Place}
	}
	p := best.settle(s, Snapping{})
	p.Place.Gap, p.On = length.Maybe{}, "against wall "+best.wall.Key
	return p
}
