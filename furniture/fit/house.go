package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// What is asked of a maker names the thing, the wall and the corner: he stands in the room with a tape, or tells somebody on the phone.

// noShape is what is missing where the walls are not known.
const noShape = "the shape of the room: read the missing walls, or a diagonal"

// keyed returns the key of a thing of the room: by its own key, else by its place in the list.
func keyed(table, key string, i int) string { return table + "." + keyOr(key, i) }

// unread tells whether a quantity is not known.
func (s *Scene) unread(r survey.Ref) bool { return math.IsNaN(s.v(r)) }

// unlisted tells whether nobody was asked about a thing: it is neither listed nor absent.
func (s *Scene) unlisted(listed int, thing string) bool {
	return listed == 0 && !s.Job.Room.Lacks(thing)
}

// cornerOf returns the letter of the wall end that a place is counted from.
func cornerOf(wall, from string) string {
	if from != "" {
		return from
	}
	return room.Wall{Key: wall}.From()
}

// askAlong asks for a place along a wall: part is the point meant, such as "the middle of".
func askAlong(part, key, wall, from string) string {
	return fmt.Sprintf("how far is %s %s from corner %s along wall %s?", part, key, cornerOf(wall, from), wall)
}

// askWall asks for the wall that a thing belongs to.
func askWall(key string) string {
	return "which wall is " + key + " on, and how far is it from a corner?"
}

// askHigh asks for a height over the floor of something on a wall.
func askHigh(part, key, wall string) string {
	return fmt.Sprintf("how high over the floor is %s %s on wall %s?", part, key, wall)
}

// askSize asks for a size of something on a wall: how is "wide", "deep" or "high".
func askSize(how, key, wall string) string {
	return fmt.Sprintf("how %s is %s on wall %s?", how, key, wall)
}

// askSpot returns what to ask for a place in plan, "" where it is known.
func (s *Scene) askSpot(part, key string, rec room.Spot, at survey.SpotRefs) string {
	switch {
	case s.wallOf(at.Wall) == nil:
		return askWall(key)
	case s.unread(at.At):
		return askAlong(part, key, rec.Wall, rec.From)
	case s.unread(at.Out):
		return fmt.Sprintf("how far out from wall %s is %s %s?", rec.Wall, part, key)
	}
	return ""
}

// askBeside returns what to ask for a stretch of a wall, "" where it is known.
func (s *Scene) askBeside(key string, rec room.OnWall, at survey.OnWallRefs, wide survey.Ref) string {
	switch {
	case s.wallOf(at.Wall) == nil:
		return askWall(key)
	case s.unread(wide):
		return askSize("wide", key, rec.Wall)
	case s.unread(at.At):
		return askAlong("the near edge of", key, rec.Wall, rec.From)
	}
	return ""
}

// thing is something of the bed, or hung on the wall with it, as it stands in the room.
type thing struct {
	name   string // id of the part, "mattress.upper"
	box    *geom.Box
	lo, hi geom.V3
	hung   bool // on the wall
	part   *furniture.Part
}

// things calls f with every solid of the bed, with what hangs on the wall, and with the mattresses.
func (s *Scene) things(f func(*thing)) {
	var t thing
	for i := range s.Solids {
		b := &s.Solids[i]
		t = thing{b.Part.ID, &b.Box, b.Lo, b.Hi, b.Part.Frame == furniture.OnWall, b.Part}
		f(&t)
	}
	for i := range s.Boxes {
		lo, hi := s.Boxes[i].Bounds()
		t = thing{name: "mattress." + bed(i).word(), box: &s.Boxes[i], lo: lo, hi: hi}
		f(&t)
	}
}

// boundsGap returns a lower bound of the distance between two boxes, from their upright bounds.
func boundsGap(alo, ahi, blo, bhi geom.V3) float64 {
	x := math.Max(0, math.Max(alo.X-bhi.X, blo.X-ahi.X))
	y := math.Max(0, math.Max(alo.Y-bhi.Y, blo.Y-ahi.Y))
	z := math.Max(0, math.Max(alo.Z-bhi.Z, blo.Z-ahi.Z))
	return math.Sqrt(x*x + y*y + z*z)
}

// planGap returns the least level distance between two convex outlines, 0 where they share a point; two points are a straight wall.
func planGap(p, q geom.Polygon) float64 {
	d, _, _ := geom.Closest(p, q)
	return d
}

// level returns the stretch along the wall that a box takes, and how far out from the wall's middle line it begins and ends.
func (w *Wall) level(b *geom.Box) (lo, hi, near, far float64) {
	along, out := w.Along(b.C.XY())
	a, o := b.Reach(w.Dir.At(0)), b.Reach(w.In.At(0))
	return along - a, along + a, out - o, out + o
}
