package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room/geom"
)

// feet finds how deep the post feet go into the floor covering.
func (s *Scene) feet() {
	s.Feet = 0
	if s.Job.Room.Floor.Cover != "hard" {
		s.Feet = -s.v(s.Survey.Layout.Floor.Sink)
	}
}

// stand puts the bed at its wall: the gap is counted from the wall's nearest point over the bed's height and length, and a distance of
// 0 from the named end is set against that end's wall in the same way.
func (s *Scene) stand() {
	s.Stands, s.Wants, s.At = false, "", nil
	switch {
	case s.Bed == nil:
		s.Wants = noBed
		return
	case s.Walls == nil:
		s.Wants = "the shape of the room: read the missing walls, or a diagonal"
		return
	}
	p := s.Job.Place
	w := s.wallNamed(p.Wall)
	if w == nil {
		s.Wants = "which wall does the bed stand at?"
		return
	}
	gap, want := s.gap(w)
	if want != "" {
		s.Wants = want
		return
	}
	if math.IsNaN(s.Feet) {
		s.Wants = "how thick is the carpet, and how far does a post sink into it?"
		return
	}
	s.Stands, s.At = true, w
	s.settleAt(w, gap)
}

// gap returns how far the bed's side stands off the wall's nearest point: what the job sets, else what the baseboard asks for.
func (s *Scene) gap(w *Wall) (gap float64, want string) {
	if s.Job.Place.Gap.Set {
		return s.Job.Place.Gap.Value.MM(), ""
	}
	if s.Bed.Sizes.Notched && s.Job.Place.Turn != job.AgainstFront {
		return 0, ""
	}
	if math.IsNaN(w.BaseDeep) {
		return 0, fmt.Sprintf("how thick is the baseboard on wall %s (or set the gap)?", w.Key)
	}
	return w.BaseDeep, ""
}

// settleAt moves the bed and what hangs on the wall into the room.
func (s *Scene) settleAt(w *Wall, gap float64) {
	p, b := s.Job.Place, s.Bed
	long, wide := b.Long, b.Wide
	z0, z1 := s.Feet, s.Feet+s.tallest
	out := s.Nearest(w, z0, z1) + gap
	along := p.Along.MM()
	span := long
	if p.Turn == job.AgainstLeft || p.Turn == job.AgainstRight {
		span = wide
	}
	fromEnd := p.From != "" && p.From == string([]rune(w.Key)[1])
	start := along
	if along == 0 {
		start = s.endClear(w, fromEnd, [2]float64{out, out + long + wide - span}, z0, z1)
	}
	if fromEnd {
		start = w.Len - start - span
	}
	toRoom := placeAt(w, start, out, long, wide, p.Turn, s.Feet)
	toRoom.Mirrored, toRoom.Mirror = p.Mirror, long
	toWall := s.onWall(w, start, p)
	if len(s.Solids) > 0 && toRoom == s.ToRoom && toWall == s.ToWall && !s.hangs {
		return // another wall moved
	}
	s.ToRoom, s.ToWall = toRoom, toWall
	s.solids()
}

// endClear returns how far from the end of the wall the bed stands when it is pushed right against the wall there: where that wall
// comes nearest, over the bed's height and over how far the bed reaches out, since the corner may be out of square.
func (s *Scene) endClear(w *Wall, fromEnd bool, out [2]float64, z0, z1 float64) float64 {
	n := len(s.Walls)
	other := &s.Walls[(w.Index+n-1)%n]
	if fromEnd {
		other = &s.Walls[(w.Index+1)%n]
	}
	cross := math.Abs(other.In.Dot(w.Dir))
	if cross < 0.5 || !s.convexAt(w, fromEnd) {
		return 0
	}
	corner := w.from(fromEnd, 0)
	clear := math.Inf(-1)
	for _, o := range out {
		inside := w.Point(corner, o).Sub(other.A).Dot(other.In)
		clear = max(clear, (s.Nearest(other, z0, z1)-inside)/cross)
	}
	return clear
}

// convexAt tells whether the corner at that end of the wall is an inside corner of the room.
func (s *Scene) convexAt(w *Wall, fromEnd bool) bool {
	n := len(s.Walls)
	a, b := &s.Walls[(w.Index+n-1)%n], w
	if fromEnd {
		a, b = w, &s.Walls[(w.Index+1)%n]
	}
	return a.Dir.Cross(b.Dir) < 0
}

// tallestOf returns the height of the bed over its feet.
func tallestOf(b *bunk.Bed) float64 {
	top := 0.0
	for _, p := range b.Parts {
		if p.Frame == furniture.OnBed {
			top = max(top, p.Box.Top())
		}
	}
	return top
}

// placeAt turns the bed so that the named part faces the wall, its lower corner start along the wall and out from it. In the bed's own
// axes x runs along, y = 0 is the wall side and the front lies at y = -wide.
func placeAt(w *Wall, start, out, long, wide float64, turn job.Turn, feet float64) geom.Place {
	base := math.Atan2(w.Dir.Y, w.Dir.X)
	var angle float64
	var local geom.V2 // where the bed's own origin lies: along the wall and out from it
	switch turn {
	case job.AgainstLeft: // left end at the wall: the bed's x runs into the room
		angle, local = -math.Pi/2, geom.V2{X: start + wide, Y: out}
	case job.AgainstFront:
		angle, local = math.Pi, geom.V2{X: start + long, Y: out + wide}
	case job.AgainstRight:
		angle, local = math.Pi/2, geom.V2{X: start, Y: out + long}
	default:
		angle, local = 0, geom.V2{X: start, Y: out}
	}
	p := w.Point(local.X, local.Y)
	return geom.NewPlace(base+angle, p.At(feet))
}

// onWall places what hangs on the wall: along the bed's length where its side stands at the wall, heights from the floor covering.
func (s *Scene) onWall(w *Wall, start float64, p job.Placement) geom.Place {
	at := geom.NewPlace(math.Atan2(w.Dir.Y, w.Dir.X), w.Point(start, 0).At(0))
	at.Mirrored, at.Mirror = p.Mirror, s.Bed.Long
	return at
}

// turnedParts are the parts turned as the bed is, wherever it stands: while it slides along a wall they only shift.
type turnedParts struct {
	of     *bunk.Bed
	by, on way // of the bed, and of what hangs on the wall
	boxes  []geom.Box
	reach  []geom.V3 // from the middle of each to its bounds
}

// way is how a place turns things, apart from where it puts them.
type way struct {
	cos, sin float64
	mirrored bool
}

func wayOf(t geom.Place) way { return way{t.Cos, t.Sin, t.Mirrored} }

// turnParts turns the parts where the bed or its wall is turned otherwise than the last time.
func (s *Scene) turnParts() {
	t := &s.turned
	if t.of == s.Bed && t.by == wayOf(s.ToRoom) && t.on == wayOf(s.ToWall) {
		return
	}
	*t = turnedParts{s.Bed, wayOf(s.ToRoom), wayOf(s.ToWall), t.boxes[:0], t.reach[:0]}
	for i := range s.Bed.Parts {
		by := s.ToRoom
		if s.Bed.Parts[i].Frame == furniture.OnWall {
			by = s.ToWall
		}
		b := by.Box(s.blanks[i])
		t.boxes = append(t.boxes, b)
		t.reach = append(t.reach, geom.V3{X: b.Reach(geom.V3{X: 1}), Y: b.Reach(geom.V3{Y: 1}), Z: b.Reach(geom.V3{Z: 1})})
	}
}

// solids moves every part of the bed into the room.
func (s *Scene) solids() {
	s.Solids, s.hangs = s.Solids[:0], false
	s.All = Solid{Lo: geom.V3{X: math.Inf(1), Y: math.Inf(1), Z: math.Inf(1)}, Hi: geom.V3{X: math.Inf(-1), Y: math.Inf(-1), Z: math.Inf(-1)}}
	s.turnParts()
	for i := range s.Bed.Parts {
		p, b, reach := &s.Bed.Parts[i], s.turned.boxes[i], s.turned.reach[i]
		if p.Frame == furniture.OnWall { // against the face of the wall where it hangs
			s.hangs = true
			b.C = s.ToWall.Point(s.blanks[i].C)
			b.C = b.C.Add(s.At.In.Mul(s.Nearest(s.At, b.C.Z, b.C.Z)).At(0))
		} else {
			b.C = s.ToRoom.Point(s.blanks[i].C)
		}
		lo, hi := b.C.Sub(reach), b.C.Add(reach)
		s.Solids = append(s.Solids, Solid{Part: p, Box: b, Lo: lo, Hi: hi})
		s.All.hold(lo, hi)
	}
	s.Boxes = [2]geom.Box{s.ToRoom.Box(s.Bed.Lower.Mattress), s.ToRoom.Box(s.Bed.Upper.Mattress)}
}

// hold stretches the bounds of a solid so that they hold those of another.
func (t *Solid) hold(lo, hi geom.V3) {
	t.Lo = geom.V3{X: min(t.Lo.X, lo.X), Y: min(t.Lo.Y, lo.Y), Z: min(t.Lo.Z, lo.Z)}
	t.Hi = geom.V3{X: max(t.Hi.X, hi.X), Y: max(t.Hi.Y, hi.Y), Z: max(t.Hi.Z, hi.Z)}
}

// foot returns the bed's outline in the room, ladder and drawers left out.
func (s *Scene) foot() geom.Polygon {
	out := make(geom.Polygon, 0, len(s.Bed.Foot))
	for _, p := range s.Bed.Foot {
		out = append(out, s.ToRoom.Point(p.At(0)).XY())
	}
	return out
}
