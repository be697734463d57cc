package bunk

import (
	"bunkwright/furniture"
	"bunkwright/room/length"
)

// shortest is the shortest block that two screws can hold without splitting it, 2 in. Common practice, no source.
const shortest = 2 * length.Inch

// posts builds the four posts: an outer layer over the full height, behind it the foot block that the lower frame stands on and
// the middle piece that closes its joint and carries the upper side rail.
func (b *builder) posts() {
	for _, e := range ends {
		for _, at := range [2]side{wall, front} {
			b.post(e, at)
		}
	}
	for at := range 2 {
		for _, of := range []*[2][2]int{&b.ref.post, &b.ref.foot, &b.ref.middle} {
			b.pair(of[0][at], of[1][at])
		}
	}
}

func (b *builder) post(e End, at side) {
	d, i := b.d, e.index()
	outer := b.postPart(e, at, "post", RolePost, d.layer(at), span{0, b.s.Guard.Top}, "outside")
	second := d.y(at, d.t, 2*d.t)
	foot := b.postPart(e, at, "foot", RoleFoot, second, span{0, d.low.low}, "inside")
	middle := b.postPart(e, at, "middle", RoleMiddle, second, span{d.low.top, d.up.low}, "inside")
	if at == wall && b.s.Notched {
		p := &b.bed.Parts[outer]
		p.Cuts = append(p.Cuts, furniture.Cut{Kind: furniture.Notch, Along: b.s.NotchHigh, Deep: b.s.NotchDeep, Across: true, Far: true})
	}
	for _, piece := range [2]int{foot, middle} {
		b.glueWith(piece, outer, seam(b.bed.Parts[piece].Length, layerStep))
	}
	b.ref.post[i][at], b.ref.foot[i][at], b.ref.middle[i][at] = outer, foot, middle
}

func (b *builder) postPart(e End, at side, name, role string, y, z span, face string) int {
	return b.add(furniture.Part{
		ID: string(e) + "." + name + "." + at.String(), Role: role, Name: role + ", " + at.String() + ", " + string(e) + " end",
		Assembly: string(e) + " end", Stock: b.s.Post, FaceUp: face,
	}, cuboid{b.d.post(e), y, z}, upright)
}

// bearings joins the frames to the posts, which happens in the room: wood on wood, with screws through the outer layer and no glue.
func (b *builder) bearings() {
	for _, e := range ends {
		for _, at := range [2]side{wall, front} {
			i := e.index()
			low, up := b.ref.rail[lower][at], b.ref.rail[upper][at]
			b.rest(low, b.ref.foot[i][at])
			b.rest(b.ref.middle[i][at], low)
			b.rest(up, b.ref.middle[i][at])
			b.screw(b.ref.post[i][at], low)
			b.screw(b.ref.post[i][at], up)
			b.screw(b.ref.member[upper][i], up)
		}
	}
}
