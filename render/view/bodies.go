package view

import (
	"math"
	"slices"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// body is one solid thing of the bed in the room: a part, or a mattress.
type body struct {
	ref    string
	role   string
	part   *furniture.Part // nil for a mattress
	box    geom.Box
	lo, hi geom.V3 // bounds in the room
	in, to geom.V3 // bounds in the bed's own axes
	hung   bool    // it hangs on the wall
}

// Roles of what is no part.
const (
	roleMattress = "mattress"
	rolePillow   = "pillow"
)

// bodiesOf returns every solid of the bed as it stands, and the mattresses.
func bodiesOf(s *fit.Scene) []body {
	out := make([]body, 0, len(s.Solids)+2)
	for i := range s.Solids {
		b := &s.Solids[i]
		in, to := b.Part.Box.Bounds()
		out = append(out, body{b.Part.ID, b.Part.Role, b.Part, b.Box, b.Lo, b.Hi, in, to, b.Part.Frame == furniture.OnWall})
	}
	for i, m := range []geom.Box{s.Bed.Lower.Mattress, s.Bed.Upper.Mattress} {
		lo, hi := s.Boxes[i].Bounds()
		in, to := m.Bounds()
		out = append(out, body{ref: mattressRefs[i], role: roleMattress, box: s.Boxes[i], lo: lo, hi: hi, in: in, to: to})
	}
	return out
}

// mattressRefs name the mattresses: lower, upper.
var mattressRefs = [2]string{"mattress.lower", "mattress.upper"}

// ink is what the thing is filled with.
func (b body) ink() render.Ink {
	switch b.role {
	case roleMattress, rolePillow:
		return render.InkWhite
	case bunk.RolePost, bunk.RoleUpright, bunk.RoleStile, bunk.RoleMiddle, bunk.RoleFoot:
		return render.InkEndGrain
	case bunk.RoleFront:
		return render.InkDrawerFront
	}
	return render.InkBoard
}

// coverAir is how far a thing may stick out from under another and still count as covered, mm.
const coverAir = 0.5

// under tells whether b lies wholly under o, seen from above.
func (b *body) under(o *body) bool {
	return !o.hung && o.in.Z >= b.to.Z-coverAir && o.square() &&
		b.in.X >= o.in.X-coverAir && b.to.X <= o.to.X+coverAir && b.in.Y >= o.in.Y-coverAir && b.to.Y <= o.to.Y+coverAir
}

// square tells whether the thing fills its bounds in the bed's own axes: all but sloping boards do.
func (b *body) square() bool {
	if b.part == nil {
		return true
	}
	for _, a := range b.part.Box.Ax {
		if max(math.Abs(a.X), math.Abs(a.Y), math.Abs(a.Z)) < 1-1e-9 {
			return false
		}
	}
	return true
}

// corners returns the corners of the thing in the room, with the bevels of sloping boards cut.
func (b body) corners(toRoom geom.Place) (out [8]geom.V3) {
	if b.part == nil || b.hung || !slices.ContainsFunc(b.part.Cuts, func(c furniture.Cut) bool { return c.Kind == furniture.Bevel }) {
		for i := range out {
			out[i] = b.box.Corner(i)
		}
		return out
	}
	for i, q := range b.part.Corners() {
		out[i] = toRoom.Point(q)
	}
	return out
}
