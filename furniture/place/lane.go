package place

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// A lane is one way for the bed to stand at one wall: it can only be slid along.
type lane struct {
	index  int
	wall   int // place in the outline
	turn   job.Turn
	mirror bool
	span   float64 // how much of the wall the bed takes
	starts []start
}

// A start is one placement of a lane.
type start struct {
	at    float64 // near side of the bed, mm from the wall's first corner
	place job.Placement
}

// lanes lists all ways to stand at every wall, walls in order round the room.
func lanes(s *fit.Scene, o Options) []lane {
	var out []lane
	for i := range s.Walls {
		for _, turn := range o.Turns {
			for _, mirror := range []bool{false, true} {
				if climbedAt(s, turn, mirror) {
					continue
				}
				l := lane{index: len(out), wall: i, turn: turn, mirror: mirror, span: spanOf(s, turn)}
				l.starts = l.along(s, o.Step)
				out = append(out, l)
			}
		}
	}
	return out
}

// spanOf returns how much of a wall the bed takes with a part of it at the wall.
func spanOf(s *fit.Scene, turn job.Turn) float64 {
	if turn == job.AgainstLeft || turn == job.AgainstRight {
		return s.Bed.Wide
	}
	return s.Bed.Long
}

// placement is the bed in this lane, some way from an end of the wall; 0 is pushed against the wall there. A gap that the job sets is for
// its own wall; elsewhere the bed stands as near as the baseboard lets it, and only where nobody read that the set gap holds.
func (l *lane) placement(s *fit.Scene, fromEnd bool, along length.Length) job.Placement {
	w, own := &s.Walls[l.wall], s.Job.Place
	letters := []rune(w.Key)
	p := job.Placement{Wall: w.Key, From: string(letters[0]), Along: along, Turn: l.turn, Mirror: l.mirror}
	if fromEnd {
		p.From = string(letters[1])
	}
	if own.Gap.Set && (own.Wall == w.Key && turnOf(own) == l.turn || math.IsNaN(w.BaseDeep)) {
		p.Gap = own.Gap
	}
	return p
}

func turnOf(p job.Placement) job.Turn {
	if p.Turn == "" {
		return job.AgainstSide
	}
	return p.Turn
}

// startAt makes the placement with its near side some way from the wall's first corner. It is counted from the nearer end, so that a maker
// measures little; and never exactly 0, which would push the bed against the wall there.
func (l *lane) startAt(s *fit.Scene, at float64) start {
	rest := s.Walls[l.wall].Len - l.span - at
	if at <= rest {
		return start{at, l.placement(s, false, max(length.FromMM(at), 1))}
	}
	return start{at, l.placement(s, true, max(length.FromMM(rest), 1))}
}

// along lists the placements of a lane in order along the wall: pushed against the wall at either end, every step from the nearer corner,
// and where something along the wall makes a difference.
func (l *lane) along(s *fit.Scene, step length.Length) []start {
	room := s.Walls[l.wall].Len - l.span
	if room < 0 || l.span <= 0 {
		return nil
	}
	out := []start{{0, l.placement(s, false, 0)}, {room, l.placement(s, true, 0)}}
	for k := length.Length(1); ; k++ {
		at := (k * step).MM()
		if at > room/2 {
			break
		}
		out = append(out, start{at, l.placement(s, false, k*step)}, start{room - at, l.placement(s, true, k*step)})
	}
	for _, at := range l.events(s) {
		if at > 0 && at < room {
			out = append(out, l.startAt(s, at))
		}
	}
	slices.SortStableFunc(out, func(a, b start) int { return cmp.Compare(a.at, b.at) })
	return slices.CompactFunc(out, func(a, b start) bool { return math.Abs(b.at-a.at) < same && a.place.Along > 0 && b.place.Along > 0 })
}

// same is how near two placements are that count as one, mm.
const same = 0.01
