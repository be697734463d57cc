package session

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// Turn returns where the bed would stand a quarter turn on, clockwise seen from above, about its middle: at the nearest wall that the same
// part of it faces then.
func Turn(s *fit.Scene, snap Snapping) Pose {
	now, ok := stanceAt(s, s.At, geom.V2{})
	if !ok {
		return Pose{Place: s.Job.Place}
	}
	lo, hi := s.Bed.Foot.Bounds()
	mid := s.ToRoom.Point(lo.Lerp(hi, 0.5).At(0)).XY()
	facing := now.wall.In.Mul(-1)
	facing = geom.V2{X: facing.Y, Y: -facing.X}
	best := stance{out: math.Inf(1)}
	for i := range s.Walls {
		w := &s.Walls[i]
		if facing.Dot(w.In) > -math.Sqrt(1-skewed*skewed) {
			continue
		}
		if st := now.about(s, w, mid); st.over() && st.out < best.out {
			best = st
		}
	}
	if best.wall == nil {
		return Pose{Place: s.Job.Place}
	}
	return best.settle(s, snap)
}

// about is the bed with its middle at a point and the same part towards a wall.
func (st stance) about(s *fit.Scene, w *fit.Wall, mid geom.V2) stance {
	long := (st.hi - st.lo) / 2
	deep := (s.Bed.Long+s.Bed.Wide)/2 - long
	q := mid.Sub(w.A)
	return stance{
		wall: w, turn: st.turn, lo: q.Dot(w.Dir) - long, hi: q.Dot(w.Dir) + long, out: q.Dot(w.In) - deep,
		near: s.Nearest(w, s.Feet, s.Feet+tallest(s)), by: geom.V2{X: 1, Y: 1}, // whichever way: it was moved
	}
}

// Mirror returns the place of the bed built as its mirror image.
func Mirror(s *fit.Scene) Pose {
	p := s.Job.Place
	p.Mirror = !p.Mirror
	return Pose{Place: p}
}

// Press returns the bed pressed to the wall that it is nearest to: with the part that faces its own wall, with an end to the wall at a
// corner of that, or with the part behind it to the wall opposite.
func Press(s *fit.Scene) Pose {
	now, ok := stanceAt(s, s.At, geom.V2{})
	least, best := math.Inf(1), stance{}
	for i := range s.Walls {
		if st, ok := stanceAt(s, &s.Walls[i], geom.V2{}); ok && st.over() && st.out < least {
			best, least = st, st.out
		}
	}
	p := Pose{Place: s.Job.Place}
	n := len(s.Walls)
	switch {
	case !ok || best.wall == nil:
	case best.wall == now.wall:
		p.Place.Gap = length.Maybe{}
		p.on("against wall " + best.wall.Key)
	case best.wall.Index == (now.wall.Index+n-1)%n:
		p.Place.From, p.Place.Along = now.wall.Key[:1], 0
		p.on("in corner " + p.Place.From)
	case best.wall.Index == (now.wall.Index+1)%n:
		p.Place.From, p.Place.Along = now.wall.Key[1:], 0
		p.on("in corner " + p.Place.From)
	default:
		p = best.settle(s, Snapping{})
		p.Place.Gap, p.On = length.Maybe{}, "against wall "+best.wall.Key
	}
	return p
}
