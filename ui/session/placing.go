package session

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// Snapping says what a bed that is moved may settle on.
type Snapping struct {
	Step   length.Length // places are whole multiples of it; 0: exact to a nanometre
	Within float64       // how near something must be to settle on it, mm; 0: nothing but the step
}

// A Pose is a place of the bed, and in words what it settled on: "against wall AB, in corner A".
type Pose struct {
	Place job.Placement
	On    string
}

// stance is the bed at one wall: where its sides are along the wall and out from it, in mm.
type stance struct {
	wall   *fit.Wall
	turn   job.Turn
	lo, hi float64 // along the wall, from its first corner
	out    float64 // from the wall to the near side
	near   float64 // where the wall's nearest point is
	by     geom.V2 // how far the bed was moved
	back   string  // the wall that its other side came up to, "" for none
}

// stanceAt looks at the bed, moved by a way in the room, from a wall. ok is false where no side of the bed faces that wall.
func stanceAt(s *fit.Scene, w *fit.Wall, by geom.V2) (st stance, ok bool) {
	st = stance{wall: w, by: by, lo: math.Inf(1), hi: math.Inf(-1), out: math.Inf(1)}
	for _, p := range s.Bed.Foot {
		q := s.ToRoom.Point(p.At(0)).XY().Add(by).Sub(w.A)
		along, out := q.Dot(w.Dir), q.Dot(w.In)
		st.lo, st.hi, st.out = min(st.lo, along), max(st.hi, along), min(st.out, out)
	}
	st.near = s.Nearest(w, s.Feet, s.Feet+tallest(s))
	st.turn, ok = facing(s, w)
	return st, ok
}

func tallest(s *fit.Scene) float64 { return s.All.Hi.Z - s.Feet }

// skewed is the sine of the angle up to which a side of the bed faces a wall, about 11 degrees.
const skewed = 0.2

// facing tells which part of the bed faces a wall.
func facing(s *fit.Scene, w *fit.Wall) (job.Turn, bool) {
	x, y := s.ToRoom.Dir(geom.V3{X: 1}).XY(), s.ToRoom.Dir(geom.V3{Y: 1}).XY()
	if s.ToRoom.Mirrored {
		x = x.Mul(-1)
	}
	out := w.In.Mul(-1)
	switch {
	case y.Dot(out) > 0 && math.Abs(x.Dot(out)) < skewed:
		return job.AgainstSide, true
	case y.Dot(out) < 0 && math.Abs(x.Dot(out)) < skewed:
		return job.AgainstFront, true
	case x.Dot(out) > 0 && math.Abs(y.Dot(out)) < skewed:
		return job.AgainstRight, true
	case x.Dot(out) < 0 && math.Abs(y.Dot(out)) < skewed:
		return job.AgainstLeft, true
	}
	return "", false
}

// Move returns where the bed would stand if it were moved by a way in the room, in mm: at the nearest wall that the same part of it faces,
// settled on what is near. The scene must have a bed that stands.
func Move(s *fit.Scene, by geom.V2, snap Snapping) Pose {
	best, ok := stanceAt(s, s.At, by)
	if !ok {
		return Pose{Place: s.Job.Place}
	}
	least := best.out
	if !best.over() {
		least = math.Inf(1)
	}
	for i := range s.Walls {
		if st, ok := stanceAt(s, &s.Walls[i], by); ok && st.turn == best.turn && st.out < least && st.over() {
			best, least = st, st.out
		}
	}
	best.stopAtBack(s, by, snap.Within)
	return best.settle(s, snap)
}

// stopAtBack keeps the bed from going through the wall behind its other side, and settles it there where it comes near.
func (st *stance) stopAtBack(s *fit.Scene, by geom.V2, within float64) {
	for i := range s.Walls {
		w := &s.Walls[i]
		other, ok := stanceAt(s, w, by)
		if !ok || w.In.Dot(st.wall.In) > 0 || math.Abs(w.In.Cross(st.wall.In)) > skewed || !other.beside() {
			continue
		}
		if gap := other.out - other.near; gap <= within {
			st.out, st.back = st.out+gap, w.Key
			if w.BaseDeep > 0 {
				st.out -= w.BaseDeep
			}
		}
	}
}

// over tells whether the bed stands before a wall, not beyond its ends.
func (st stance) over() bool {
	mid := (st.lo + st.hi) / 2
	return mid > 0 && mid < st.wall.Len && st.out > -(st.hi-st.lo)
}

// beside tells whether some of the bed stands before a wall, however little.
func (st stance) beside() bool {
	return st.hi > 1 && st.lo < st.wall.Len-1 && st.out > -(st.hi-st.lo)
}

// settle turns a stance into a place.
func (st stance) settle(s *fit.Scene, snap Snapping) Pose {
	was := s.Job.Place
	p := job.Placement{Wall: st.wall.Key, Turn: st.turn, Mirror: was.Mirror, Note: was.Note, From: st.wall.Key[:1]}
	if was.Wall == p.Wall && was.From != "" {
		p.From = was.From
	}
	pose := Pose{Place: p}
	same := was.Wall == p.Wall && turnOf(was) == p.Turn
	if same && math.Abs(st.by.Dot(st.wall.In)) < still {
		pose.Place.Gap = was.Gap
	} else {
		pose.out(st, snap)
	}
	if same && math.Abs(st.by.Dot(st.wall.Dir)) < still {
		pose.Place.From, pose.Place.Along = was.From, was.Along
	} else {
		pose.along(s, st, snap)
	}
	return pose
}

// still is a way in mm that is none.
const still = 1e-6

func turnOf(p job.Placement) job.Turn {
	if p.Turn == "" {
		return job.AgainstSide
	}
	return p.Turn
}

// out settles the gap: pressed to the wall where that is near.
func (p *Pose) out(st stance, snap Snapping) {
	gap := st.out - st.near
	if gap <= snap.Within {
		p.on("against wall " + st.wall.Key)
		return
	}
	if st.back != "" {
		p.on("up to wall " + st.back)
		snap.Step = 0
	}
	p.Place.Gap = length.Some(max(0, onStep(gap, snap.Step)))
}

// along settles the distance along the wall: in a corner, on something near, or on the step.
func (p *Pose) along(s *fit.Scene, st stance, snap Snapping) {
	first, last := st.wall.Key[:1], st.wall.Key[1:]
	switch {
	case st.lo <= snap.Within:
		p.Place.From, p.Place.Along = first, 0
		p.on("in corner " + first)
		return
	case st.wall.Len-st.hi <= snap.Within:
		p.Place.From, p.Place.Along = last, 0
		p.on("in corner " + last)
		return
	}
	lo := st.lo
	if by, what := nearestEdge(s, st, snap.Within); what != "" {
		lo += by
		p.on(what)
		snap.Step = 0
	}
	if p.Place.From == last {
		lo = st.wall.Len - (lo + st.hi - st.lo)
	}
	p.Place.Along = max(onStep(lo, snap.Step), snap.Step, length.Millimetre)
}

func (p *Pose) on(what string) {
	if p.On != "" {
		p.On += ", "
	}
	p.On += what
}

func onStep(mm float64, step length.Length) length.Length {
	l := length.FromMM(mm)
	if step > 0 {
		l = l.Round(step, length.Nearest)
	}
	return l
}

// nearestEdge returns how far the bed must go along its wall for one of its ends to meet a stud's middle or the edge of what is on that
// wall, and what that is; nothing where none is near.
func nearestEdge(s *fit.Scene, st stance, within float64) (by float64, what string) {
	least := within
	for _, e := range edgesOn(s, st.wall) {
		for _, side := range [2]float64{st.lo, st.hi} {
			if d := e.at - side; math.Abs(d) < least {
				least, by, what = math.Abs(d), d, e.what
			}
		}
	}
	return by, what
}
