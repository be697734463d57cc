package place

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/survey"
)

// events lists where the near side of the bed may be for one of its ends to meet the edge of a window, a door or their casings, or for a post
// at the wall to stand before a stud. Where a verdict changes between two steps, such as just clear of a door's arc, is found by halving.
func (l *lane) events(s *fit.Scene) []float64 {
	var out []float64
	for _, e := range edgesOn(s, l.wall) {
		out = append(out, e, e-l.span)
	}
	posts := l.posts(s)
	for _, stud := range s.Walls[l.wall].Refs.Studs {
		at := along(s, l.wall, stud.FromEnd, s.Survey.Value(stud.At))
		for _, p := range posts {
			out = append(out, at-p)
		}
	}
	keep := out[:0]
	for _, at := range out {
		if !math.IsNaN(at) {
			keep = append(keep, at)
		}
	}
	return keep
}

// along turns a distance counted from an end of a wall into one from its first corner.
func along(s *fit.Scene, wall int, fromEnd bool, at float64) float64 {
	if fromEnd {
		return s.Walls[wall].Len - at
	}
	return at
}

// stretchOf returns the edges of something on a wall, from the wall's first corner; NaN where they are not known.
func stretchOf(s *fit.Scene, on survey.OnWallRefs, wide survey.Ref) (lo, hi float64) {
	at, w := s.Survey.Value(on.At), s.Survey.Value(wide)
	lo, hi = along(s, on.Wall, on.FromEnd, at), along(s, on.Wall, on.FromEnd, at+w)
	return min(lo, hi), max(lo, hi)
}

// edgesOn lists the edges of the doors and windows of a wall, and of their casings.
func edgesOn(s *fit.Scene, wall int) []float64 {
	var out []float64
	add := func(on survey.OnWallRefs, wide, casing survey.Ref) {
		if on.Wall != wall {
			return
		}
		at, w, c := s.Survey.Value(on.At), s.Survey.Value(wide), s.Survey.Value(casing)
		for _, e := range []float64{at, at + w, at - c, at + w + c} {
			out = append(out, along(s, wall, on.FromEnd, e))
		}
	}
	for _, d := range s.Survey.Layout.Doors {
		add(d.OnWallRefs, d.Wide, d.Casing)
	}
	for _, w := range s.Survey.Layout.Windows {
		add(w.OnWallRefs, w.Wide, w.Casing)
	}
	return out
}

// posts lists how far the middles of the posts at the wall are from the near side of the bed.
func (l *lane) posts(s *fit.Scene) []float64 {
	var out []float64
	for i := range s.Bed.Posts {
		for k := range s.Bed.Parts {
			p := &s.Bed.Parts[k]
			if p.ID != s.Bed.Posts[i].Part {
				continue
			}
			x, y := p.Box.C.X, p.Box.C.Y
			if l.mirror {
				x = s.Bed.Long - x
			}
			at, out1, deep := x, -y, s.Bed.Wide
			switch l.turn {
			case job.AgainstLeft:
				at, out1, deep = s.Bed.Wide+y, x, s.Bed.Long
			case job.AgainstRight:
				at, out1, deep = -y, s.Bed.Long-x, s.Bed.Long
			case job.AgainstFront:
				at, out1 = s.Bed.Long-x, s.Bed.Wide+y
			}
			if out1 < deep/2 {
				out = append(out, at)
			}
		}
	}
	return out
}
