package bunk

import (
	"bunkwright/furniture"
	"bunkwright/room/length"
)

// frames builds side rails with their ledges, and end members. The lower frame is a rectangle of its own, carried in whole or in
// pieces; the upper end members belong to the end assemblies, and the upper side rails are fitted between them in the room.
func (b *builder) frames() {
	for deck := range 2 {
		for _, at := range [2]side{wall, front} {
			b.sideRail(deck, at)
		}
		for _, e := range ends {
			b.member(deck, e)
		}
		b.pair(b.ref.rail[deck][wall], b.ref.rail[deck][front])
		b.pair(b.ref.ledge[deck][wall], b.ref.ledge[deck][front])
		b.pair(b.ref.member[deck][0], b.ref.member[deck][1])
	}
}

func (d *dims) level(deck int) level {
	if deck == upper {
		return d.up
	}
	return d.low
}

func (b *builder) sideRail(deck int, at side) {
	d, name, k := b.d, deckNames[deck], b.d.level(deck)
	assembly := "lower frame"
	if deck == upper {
		assembly = "upper side rail, " + at.String()
	}
	rail := b.add(furniture.Part{
		ID: name + ".rail." + at.String(), Role: RoleSideRail, Name: "side rail, " + name + " bed, " + at.String(),
		Assembly: assembly, Stock: b.s.Rail, FaceUp: "outside",
	}, cuboid{d.between(), d.rail(at), {k.low, k.top}}, edgeX)
	ledge := b.add(furniture.Part{
		ID: name + ".ledge." + at.String(), Role: RoleLedge, Name: "ledge, " + name + " bed, " + at.String(),
		Assembly: assembly, Stock: b.s.Ledge, FaceUp: "up",
	}, cuboid{d.between(), d.y(at, d.t+d.r, d.t+d.r+b.s.Ledge.Thick), {k.low, k.under}}, edgeX)
	b.glueWith(ledge, rail, seam(d.li, seamStep)+1)
	b.ref.rail[deck][at], b.ref.ledge[deck][at] = rail, ledge
}

// member builds an end member. The lower one caps the side rails between the planes of the posts' outer layers; the upper one
// laps the posts' edges over the full width.
func (b *builder) member(deck int, e End) {
	d, name, k := b.d, deckNames[deck], b.d.level(deck)
	y, assembly := d.across(), string(e)+" end"
	if deck == lower {
		y, assembly = y.shrink(d.t), "lower frame"
	}
	m := b.add(furniture.Part{
		ID: name + ".member." + string(e), Role: RoleMember, Name: "end member, " + name + " bed, " + string(e),
		Assembly: assembly, Stock: b.s.Rail, FaceUp: "outside",
	}, cuboid{d.x(e, -d.r, 0), y, {k.low, k.top}}, edgeY)
	b.ref.member[deck][e.index()] = m
	for _, at := range [2]side{wall, front} {
		if deck == lower {
			b.screw(m, b.ref.rail[deck][at])
		} else {
			b.glue(m, b.ref.post[e.index()][at])
		}
	}
}

// leastProud is how far side rails must stand over the deck at least, so that they hold the mattress at all: the smallest step shown.
const leastProud = length.Inch / 16

// leastLayer is what a notch must leave of a post's layer, 1/2 in. Common practice, no source.
const leastLayer = length.Inch / 2

func (c *checks) frame(s *Sizes, d *dims) {
	below := s.Slat.Thick + s.Ledge.Wide
	c.atLeast("bed.rail.wide", s.Rail.Wide, below+leastProud, "the side rail would not stand over the deck")
	c.atLeast("bed.lower.height", s.Lower.Height, below+shortest, "no room is left for the foot blocks under the lower frame")
	c.atLeast("bed.upper.height", s.Upper.Height, s.Lower.Height+s.Rail.Wide+shortest,
		"no room is left for the middle pieces between the side rails")
	if s.Notched {
		c.between("bed.notch_deep", s.NotchDeep, 1, s.Post.Thick-leastLayer,
			"", "the notch would leave less than 1/2 in of the post's outer layer")
		c.atMost("bed.notch_high", s.NotchHigh, d.low.top, "the notch would reach past the lower side rail")
	}
	if d.li < 2*d.w+length.Inch {
		c.near("bed.post.wide", "the posts would meet", (d.li-length.Inch)/2)
	}
}
