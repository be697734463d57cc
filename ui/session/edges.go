package session

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/room/survey"
)

// edge is something on a wall that the end of a bed may line up with.
type edge struct {
	at   float64 // mm from the wall's first corner
	what string
}

// edgesOn lists the middles of the studs of a wall and the edges of its doors and windows.
func edgesOn(s *fit.Scene, w *fit.Wall) []edge {
	var out []edge
	add := func(at float64, what string) {
		if !math.IsNaN(at) {
			out = append(out, edge{at, what})
		}
	}
	for _, st := range w.Refs.Studs {
		at := s.Survey.Value(st.At)
		if st.FromEnd {
			at = w.Len - at
		}
		add(at, "on a stud")
	}
	opening := func(on survey.OnWallRefs, wide survey.Ref, what string) {
		if on.Wall != w.Index {
			return
		}
		near, far := s.Survey.Value(on.At), s.Survey.Value(on.At)+s.Survey.Value(wide)
		if on.FromEnd {
			near, far = w.Len-near, w.Len-far
		}
		add(near, "at the edge of "+what)
		add(far, "at the edge of "+what)
	}
	for i, d := range s.Survey.Layout.Doors {
		opening(d.OnWallRefs, d.Wide, "the door "+s.Job.Room.Doors[i].Key)
	}
	for i, p := range s.Survey.Layout.Windows {
		opening(p.OnWallRefs, p.Wide, "the window "+s.Job.Room.Windows[i].Key)
	}
	return out
}
