package job

import (
	"bunkwright/room"
	"bunkwright/room/length"
)

// Shape is what a room looks like from above, or under its roof, to begin with.
type Shape string

// The shapes that a room can start from.
const (
	Rectangle Shape = "rectangle"
	LShape    Shape = "L"
	Alcove    Shape = "alcove" // a rectangle with a recess in the wall across from A to B
	Slope     Shape = "slope"  // a rectangle with a sloped ceiling over that wall
)

// Shapes lists them in the order of a menu.
var Shapes = []Shape{Rectangle, LShape, Alcove, Slope}

// shape gives a room its outline: corners clockwise from A, A to B along the top. Of a rectangle two walls are given; the others follow.
func (s Start) shape(r *room.Room) {
	switch s.Shape {
	case LShape:
		w, h := s.part(s.AB), s.part(s.BC)
		s.outline(r, "ABCDEF", "E", s.AB, s.BC, s.AB-w, h, w, s.BC-h)
	case Alcove:
		side, deep := s.part(s.AB)/2, s.part(s.BC)/2
		s.outline(r, "ABCDEFGH", "DG", s.AB, s.BC, side, deep, s.AB-2*side, deep, side, s.BC)
	case Slope:
		s.outline(r, "ABCD", "", s.AB, s.BC)
		s.slope(r)
	default:
		s.outline(r, "ABCD", "", s.AB, s.BC)
	}
}

// part is two fifths of a length, in whole inches or centimetres so that its half is one of half an inch or 5 mm.
func (s Start) part(l length.Length) length.Length {
	step := length.Inch
	if s.Unit == length.Millimetres {
		step = 10 * length.Millimetre
	}
	return l * 2 / 5 / step * step
}

// outline names corners and walls; reflex are the corners where the room turns outwards.
func (s Start) outline(r *room.Room, letters, reflex string, lengths ...length.Length) {
	r.Outline = letters
	for i := range letters {
		w := room.Wall{Key: letters[i:i+1] + letters[(i+1)%len(letters):(i+1)%len(letters)+1]}
		if i < len(lengths) {
			w.Length = s.given(lengths[i])
		}
		r.Walls = append(r.Walls, w)
	}
	for _, c := range reflex {
		r.Corners = append(r.Corners, room.Corner{Key: string(c), Inside: 270})
	}
}

// slope adds a sloped face over the wall across from A to B: 1200 mm or 4 ft high at the wall, from there up at 45 degrees to a level one
// twice as high (an attic as any other; the numbers are assumed whatever else was read).
func (s Start) slope(r *room.Room) {
	knee := 48 * length.Inch
	if s.Unit == length.Millimetres {
		knee = 1200 * length.Millimetre
	}
	assumed := func(l length.Length) room.Measure { return room.Measure{{Value: l, How: room.Assumed}} }
	spot := func(key string, out, high length.Length) room.Height {
		return room.Height{Key: key, Spot: room.Spot{Wall: "CD", From: "C", At: assumed(s.AB / 2), Out: assumed(out)}, Height: assumed(high)}
	}
	if s.Ceiling == 0 { // else the slope would go on rising to the other side
		r.Ceilings = append(r.Ceilings, room.Ceiling{Key: "main", Heights: []room.Height{{Key: "A", Corner: "A", Height: assumed(2 * knee)}}})
	}
	r.Ceilings = append(r.Ceilings, room.Ceiling{Key: "slope", Sloped: true, Along: "CD", Heights: []room.Height{
		spot("knee", 0, knee), spot("half way", knee/2, knee+knee/2),
	}})
}
