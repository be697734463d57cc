package fit

import (
	"math"

	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// Wall is one wall of the room as it stands.
type Wall struct {
	Index    int
	Key      string  // "AB"
	Name     string  // "wall.AB"
	A, B     geom.V2 // its corners at middle height
	Dir, In  geom.V2 // along it from A to B, and into the room
	Len      float64
	Lean     float64 // mm per mm of height, outwards
	Bow      float64 // mm outwards at the low and high readings
	BaseHigh float64 // baseboard, NaN where unread
	BaseDeep float64
	Refs     *survey.WallRefs
}

// walls puts the corners and walls where the survey has them.
func (s *Scene) walls() {
	letters := []rune(s.Job.Room.Outline)
	n := len(letters)
	if !s.Survey.Outline || n < 3 {
		s.Outline, s.Walls = nil, nil
		return
	}
	s.Outline, s.Walls = s.Outline[:0], s.Walls[:0]
	for i := range letters {
		s.Outline = append(s.Outline, geom.V2{X: s.zero(s.Survey.Layout.X[i]), Y: s.zero(s.Survey.Layout.Y[i])})
	}
	for i := range letters {
		s.Walls = append(s.Walls, s.wall(i))
	}
}

func (s *Scene) wall(i int) Wall {
	refs := &s.Survey.Layout.Walls[i]
	a, b := s.Outline.Edge(i)
	w := Wall{Index: i, Key: s.keys.walls[i][len("wall."):], Name: s.keys.walls[i], A: a, B: b, Len: a.Dist(b), Refs: refs}
	w.Dir = b.Sub(a).Unit()
	w.In = w.Dir.Right()
	w.Lean, w.Bow = s.zero(refs.Lean), s.zero(refs.Bow)
	w.BaseHigh, w.BaseDeep = s.v(refs.BaseHigh), s.v(refs.BaseDeep)
	return w
}

// zero returns a quantity, or 0 where there is none (corner A, a wall without bow).
func (s *Scene) zero(r survey.Ref) float64 {
	if r == 0 {
		return 0
	}
	return s.Survey.Value(r)
}

// Offset returns how far the wall's face stands outside its middle line at height z.
func (s *Scene) Offset(w *Wall, z float64) float64 {
	_, middle, _ := s.Job.Room.ReadAt()
	out := w.Lean * (z - middle)
	if w.Bow != 0 {
		out += w.Bow * survey.BowShare(&s.Job.Room, z)
	}
	return out
}

// Nearest returns how far the face comes into the room, from its middle line, over heights z0 to z1: the most inward offset.
func (s *Scene) Nearest(w *Wall, z0, z1 float64) float64 {
	most := max(-s.Offset(w, z0), -s.Offset(w, z1))
	_, middle, _ := s.Job.Room.ReadAt()
	if w.Bow != 0 && z0 < middle && middle < z1 {
		most = max(most, -s.Offset(w, middle))
	}
	return most
}

// Furthest is the opposite: how far the face comes into the room where it comes in least.
func (s *Scene) Furthest(w *Wall, z0, z1 float64) float64 {
	least := min(-s.Offset(w, z0), -s.Offset(w, z1))
	_, middle, _ := s.Job.Room.ReadAt()
	if w.Bow != 0 && z0 < middle && middle < z1 {
		least = min(least, -s.Offset(w, middle))
	}
	return least
}

// Along returns a point's distance from A along the wall, and its distance out from the wall's middle line into the room.
func (w *Wall) Along(p geom.V2) (along, out float64) {
	d := p.Sub(w.A)
	return d.Dot(w.Dir), d.Dot(w.In)
}

// Point returns the point a distance along from A and out into the room.
func (w *Wall) Point(along, out float64) geom.V2 {
	return w.A.Add(w.Dir.Mul(along)).Add(w.In.Mul(out))
}

// wallOf returns a wall by its place in the outline, nil where there is none.
func (s *Scene) wallOf(i int) *Wall {
	if i < 0 || i >= len(s.Walls) {
		return nil
	}
	return &s.Walls[i]
}

// wallNamed returns a wall by its key.
func (s *Scene) wallNamed(key string) *Wall {
	for i := range s.Walls {
		if s.Walls[i].Key == key {
			return &s.Walls[i]
		}
	}
	return nil
}

// from turns a distance counted from a named end into one from the wall's first corner.
func (w *Wall) from(fromEnd bool, at float64) float64 {
	if fromEnd {
		return w.Len - at
	}
	return at
}

// interval returns the edges of something on a wall, counted from the wall's first corner.
func (s *Scene) interval(on survey.OnWallRefs, wide survey.Ref) (w *Wall, lo, hi float64, ok bool) {
	w = s.wallOf(on.Wall)
	at, width := s.v(on.At), s.v(wide)
	if w == nil || math.IsNaN(at) || math.IsNaN(width) {
		return w, 0, 0, false
	}
	if on.FromEnd {
		return w, w.Len - at - width, w.Len - at, true
	}
	return w, at, at + width, true
}

// spot returns a place in plan.
func (s *Scene) spot(r survey.SpotRefs) (p geom.V2, ok bool) {
	w := s.wallOf(r.Wall)
	at, out := s.v(r.At), s.v(r.Out)
	if w == nil || math.IsNaN(at) || math.IsNaN(out) {
		return geom.V2{}, false
	}
	return w.Point(w.from(r.FromEnd, at), out), true
}

// rect returns the outline of something whose near corner is a spot: wide along the wall, deep away from it.
func (s *Scene) rect(r survey.SpotRefs, wide, deep survey.Ref) (p geom.Polygon, ok bool) {
	w := s.wallOf(r.Wall)
	at, out, a, d := s.v(r.At), s.v(r.Out), s.v(wide), s.v(deep)
	if math.IsNaN(out) {
		out = 0
	}
	if w == nil || math.IsNaN(at+a+d) {
		return nil, false
	}
	lo := at
	if r.FromEnd {
		lo = w.Len - at - a
	}
	return geom.Polygon{w.Point(lo, out+d), w.Point(lo+a, out+d), w.Point(lo+a, out), w.Point(lo, out)}, true
}
