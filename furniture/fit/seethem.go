package fit

import (
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var seeThem = Question{
	ID:       "see-them",
	Sentence: "Can a parent at the door see the lower pillow?",
	Group:    Comfort,
	Why:      "Whoever looks in at night wants to see a face without walking round the bed.",
	How: "Share of the top of the lower pillow (own-pillow) that straight lines reach from the eyes of a short and of a tall parent (own-parent-stand) " +
		"in the middle of the doorway, past slats, ladder, rails, shelves, furniture and walls: four by three points. " +
		roomDoorWords + " of several the one that shows most counts. It is advice and carries no plus-or-minus.",
	Propose: []Driver{LadderEnd, Mirrored},
	Measure: func(s *Scene) Finding { return s.seeThem() },
}

var seeRows = []string{"own-see"}

// How many points of the pillow are looked at, along and across.
const (
	pillowLong = 4
	pillowWide = 3
)

func (s *Scene) seeThem() Finding {
	if !s.Stands {
		return Finding{Readings: []Reading{ask("pillow", s.Wants, seeRows...)}}
	}
	doorways, want := s.doorways()
	if len(doorways) > 0 {
		want = s.askThick(lowerBed)
	}
	if want != "" {
		return Finding{Readings: []Reading{ask("pillow", want, seeRows...)}}
	}
	eyes := yardstick.Figures(yardstick.ParentStand)
	points := s.pillow()
	var f Finding
	for i, who := range []string{"short-parent", "tall-parent"} {
		seen := 0.0
		for _, eye := range doorways {
			seen = max(seen, s.seen(eye.At(eyes[i]), points))
		}
		f.Figures = append(f.Figures, Figure{"seen." + who, seen, string(yardstick.Share)})
		f.Readings = append(f.Readings, Reading{At: who, Rows: seeRows, Have: seen, Parts: []string{"mattress.lower"}})
	}
	return s.traced(s.stillUnread(s.askBoxes(), f))
}

// doorways returns the middle of the doorway of each door that may be the door of the room; want is set where none is known.
func (s *Scene) doorways() (out []geom.V2, want string) {
	for _, i := range s.roomDoors() {
		refs := &s.Survey.Layout.Doors[i]
		if w, lo, hi, ok := s.interval(refs.OnWallRefs, refs.Wide); ok {
			out = append(out, w.Point((lo+hi)/2, 1))
		} else {
			want = or(want, s.askDoor(i))
		}
	}
	return out, or(want, askRoomDoor)
}

// pillow returns points on the top of a pillow at the head end of the lower mattress.
func (s *Scene) pillow() []geom.V3 {
	size := yardstick.Figures(yardstick.Pillow) // across the bed, along it, thick
	m := s.Bed.Lower.Mattress
	out := make([]geom.V3, 0, pillowLong*pillowWide)
	for i := 0; i < pillowLong; i++ {
		for k := 0; k < pillowWide; k++ {
			y := m.C.Y + size[0]*((float64(i)+0.5)/pillowLong-0.5)
			x := s.headX(&s.Bed.Lower, size[1]*(float64(k)+0.5)/pillowWide)
			out = append(out, s.ToRoom.Point(geom.V3{X: x, Y: y, Z: s.Bed.Lower.MattressTop + size[2]}))
		}
	}
	return out
}

// seen returns the share of the points that a straight line reaches from the eye.
func (s *Scene) seen(eye geom.V3, points []geom.V3) float64 {
	blockers := s.between(eye, points)
	n, last := 0, 0 // what stood in the way of one look is likely to stand in the way of the next
	for _, p := range points {
		at := s.blocked(eye, p, blockers, last)
		if at == clearLook {
			n++
		} else if at >= 0 {
			last = at
		}
	}
	return float64(n) / float64(len(points))
}

// between returns the boxes that may stand between the eye and the points.
func (s *Scene) between(eye geom.V3, points []geom.V3) []blocker {
	lo, hi := eye, eye
	for _, p := range points {
		lo = geom.V3{X: min(lo.X, p.X), Y: min(lo.Y, p.Y), Z: min(lo.Z, p.Z)}
		hi = geom.V3{X: max(hi.X, p.X), Y: max(hi.Y, p.Y), Z: max(hi.Z, p.Z)}
	}
	out := s.blockers[:0]
	for i := range s.Solids {
		if b := &s.Solids[i]; boundsGap(lo, hi, b.Lo, b.Hi) == 0 {
			out = append(out, blocker{&b.Box, b.Lo, b.Hi})
		}
	}
	add := func(b geom.Box) {
		lo, hi := b.Bounds()
		out = append(out, blocker{&b, lo, hi})
	}
	add(s.Boxes[upperBed])
	for i := range s.Survey.Layout.Pieces {
		if box, ok := s.pieceBox(i); ok {
			add(box)
		}
	}
	s.blockers = out
	return out
}

// blocker is a box that may stand in the way of a look, with its upright bounds.
type blocker struct {
	box    *geom.Box
	lo, hi geom.V3
}

// misses tells whether a look from eye, with the inverse of its direction, surely passes beside the bounds.
func (b *blocker) misses(eye, inverse geom.V3) bool {
	t0, t1 := 0.0, 1.0
	for _, a := range [3][4]float64{
		{b.lo.X, b.hi.X, eye.X, inverse.X}, {b.lo.Y, b.hi.Y, eye.Y, inverse.Y}, {b.lo.Z, b.hi.Z, eye.Z, inverse.Z},
	} {
		near, far := (a[0]-a[2])*a[3], (a[1]-a[2])*a[3]
		if near > far {
			near, far = far, near
		}
		if near > t0 {
			t0 = near
		}
		if far < t1 {
			t1 = far
		}
		if t0 > t1 {
			return true
		}
	}
	return false
}

// What a look meets beside a box.
const (
	aWall     = -1
	clearLook = -2
)

// blocked returns which box stands in the way of a look from eye to p, aWall or clearLook. It looks at one of the boxes first.
func (s *Scene) blocked(eye, p geom.V3, blockers []blocker, first int) int {
	d := p.Sub(eye)
	inverse := geom.V3{X: 1 / d.X, Y: 1 / d.Y, Z: 1 / d.Z}
	if first < len(blockers) && blockers[first].meets(eye, d, inverse) {
		return first
	}
	for i := range blockers {
		if blockers[i].meets(eye, d, inverse) {
			return i
		}
	}
	for i := range s.Walls {
		if w := &s.Walls[i]; geom.SegmentsCross(eye.XY(), p.XY(), w.A, w.B) {
			return aWall
		}
	}
	return clearLook
}

// meets tells whether a look from eye along d, as far as d reaches, meets the box; inverse is that of d.
func (b *blocker) meets(eye, d, inverse geom.V3) bool {
	if b.misses(eye, inverse) {
		return false
	}
	t0, t1, ok := b.box.Ray(eye, d)
	return ok && t0 < 1-1e-9 && t1 > 1e-9
}
