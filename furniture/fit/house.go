package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// What is asked of a maker names the thing, the wall and the corner: he stands in the room with a tape, or tells somebody on the phone.

// noShape is what is missing where the walls are not known.
const noShape = "the shape of the room: read the missing walls, or a diagonal"

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

// mattressPart stands for a mattress among the parts of the bed.
var mattressPart = [2]furniture.Part{{ID: "mattress.lower", Role: mattressRole}, {ID: "mattress.upper", Role: mattressRole}}

const mattressRole = "mattress"

func (b *Solid) mattress() bool { return b.Part.Role == mattressRole }
func (b *Solid) hung() bool     { return b.Part.Frame == furniture.OnWall }

// isBoard tells whether it is the board of a wall shelf.
func (b *Solid) isBoard() bool { return b.hung() && b.Part.Role == bunk.RoleShelf }

// upright makes a box of a rectangle in line with a wall, between two heights.
func (s *Scene) upright(w *Wall, plan geom.Polygon, z0, z1 float64) geom.Box {
	a, c := plan[0], plan[2]
	d := c.Sub(a)
	return geom.Box{
		C:    a.Lerp(c, 0.5).At((z0 + z1) / 2),
		Ax:   [3]geom.V3{w.Dir.At(0), w.Dir.Left().At(0), {Z: 1}},
		Half: geom.V3{X: math.Abs(d.Dot(w.Dir)) / 2, Y: math.Abs(d.Dot(w.In)) / 2, Z: (z1 - z0) / 2},
	}
}

// boxAt returns something that stands on the floor as a box up to its top; ok is false where its place or a size of it is unread.
func (s *Scene) boxAt(at survey.SpotRefs, wide, deep, high survey.Ref) (b geom.Box, ok bool) {
	w, top := s.wallOf(at.Wall), s.v(high)
	plan, ok := s.rect(at, wide, deep)
	if !ok || w == nil || math.IsNaN(top) {
		return geom.Box{}, false
	}
	return s.upright(w, plan, 0, top), true
}

// pieceBox returns furniture that stays as a box.
func (s *Scene) pieceBox(i int) (geom.Box, bool) {
	refs := &s.Survey.Layout.Pieces[i]
	return s.boxAt(refs.SpotRefs, refs.Wide, refs.Deep, refs.High)
}

// heaterBox returns a heater as a box.
func (s *Scene) heaterBox(i int) (geom.Box, bool) {
	refs := &s.Survey.Layout.Heaters[i]
	return s.boxAt(refs.SpotRefs, refs.Wide, refs.Deep, refs.High)
}

// askBox asks where something stands on the floor, and for its sizes.
func askBox(what string) string {
	return "where does " + what + " stand, and how wide, deep and high is it?"
}

// askBoxes asks for the first piece of furniture that cannot be made a box, or whether any stays at all.
func (s *Scene) askBoxes() string {
	for i := range s.Job.Room.Pieces {
		if _, ok := s.pieceBox(i); !ok {
			return askBox(s.keys.pieces[i])
		}
	}
	return s.askFurniture()
}

// region is a part of the room between two corners, to look for things in.
type region struct{ lo, hi geom.V3 }

// everywhere is a region without end.
var everywhere = region{geom.V3{X: math.Inf(-1), Y: math.Inf(-1), Z: math.Inf(-1)}, geom.V3{X: math.Inf(1), Y: math.Inf(1), Z: math.Inf(1)}}

func (r *region) meets(lo, hi *geom.V3) bool {
	return lo.X <= r.hi.X && r.lo.X <= hi.X && lo.Y <= r.hi.Y && r.lo.Y <= hi.Y && lo.Z <= r.hi.Z && r.lo.Z <= hi.Z
}

// things calls f with every solid of the bed and of what hangs on the wall, and with the mattresses, whose bounds meet a part of the room.
func (s *Scene) things(in region, f func(*Solid)) {
	for i := range s.Solids {
		if b := &s.Solids[i]; in.meets(&b.Lo, &b.Hi) {
			f(b)
		}
	}
	var beds [2]Solid
	for i := range beds {
		lo, hi := s.Boxes[i].Bounds()
		if in.meets(&lo, &hi) {
			beds[i] = Solid{Part: &mattressPart[i], Box: s.Boxes[i], Lo: lo, Hi: hi}
			f(&beds[i])
		}
	}
}

// boundsGap returns a lower bound of the distance between two boxes, from their upright bounds.
func boundsGap(alo, ahi, blo, bhi geom.V3) float64 {
	x, y, z := apart(alo.X, ahi.X, blo.X, bhi.X), apart(alo.Y, ahi.Y, blo.Y, bhi.Y), apart(alo.Z, ahi.Z, blo.Z, bhi.Z)
	return math.Sqrt(x*x + y*y + z*z)
}

// apart returns how far two stretches are from each other, 0 where they meet. It is called for every board: math.Max would cost.
func apart(alo, ahi, blo, bhi float64) float64 {
	if d := alo - bhi; d > 0 {
		return d
	}
	if d := blo - ahi; d > 0 {
		return d
	}
	return 0
}

// planGap returns the least level distance between two convex outlines, 0 where they share a point; two points are a straight wall.
func planGap(p, q geom.Polygon) float64 {
	d, _, _ := geom.Closest(p, q)
	return d
}

// planFrom returns the level distance of a point from a box, 0 where it is over or under it.
func planFrom(b *geom.Box, p geom.V2) float64 {
	if !b.Upright() {
		return near(b.Footprint(), p)
	}
	d := p.Sub(b.C.XY())
	x, y := d.Dot(b.Ax[0].XY()), d.Dot(b.Ax[1].XY())
	x, y = apart(x, x, -b.Half.X, b.Half.X), apart(y, y, -b.Half.Y, b.Half.Y)
	return math.Sqrt(x*x + y*y)
}

// level returns the stretch along the wall that a box takes, and how far out from the wall's middle line it begins and ends.
func (w *Wall) level(b *geom.Box) (lo, hi, near, far float64) {
	along, out := w.Along(b.C.XY())
	a, o := b.Reach(w.Dir.At(0)), b.Reach(w.In.At(0))
	return along - a, along + a, out - o, out + o
}

// regionOf returns the upright bounds of a stretch of a wall, between two distances out from it and two heights.
func (w *Wall) regionOf(along, out, z [2]float64) region {
	r := region{lo: geom.V3{X: math.Inf(1), Y: math.Inf(1), Z: z[0]}, hi: geom.V3{X: math.Inf(-1), Y: math.Inf(-1), Z: z[1]}}
	for _, a := range along {
		for _, o := range out {
			p := w.Point(a, o)
			r.lo.X, r.lo.Y = min(r.lo.X, p.X), min(r.lo.Y, p.Y)
			r.hi.X, r.hi.Y = max(r.hi.X, p.X), max(r.hi.Y, p.Y)
		}
	}
	return r
}

// along returns the bounds of a line of some length.
func along(from, dir geom.V3, long float64) region {
	to := from.Add(dir.Mul(long))
	return region{
		lo: geom.V3{X: min(from.X, to.X), Y: min(from.Y, to.Y), Z: min(from.Z, to.Z)},
		hi: geom.V3{X: max(from.X, to.X), Y: max(from.Y, to.Y), Z: max(from.Z, to.Z)},
	}
}
