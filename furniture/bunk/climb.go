package bunk

import (
	"strconv"

	"bunkwright/furniture"
	"bunkwright/room/length"
)

// A zone is a stretch of height at the climbing end that slats fill; the one at the top is closed by a slat.
type zone struct {
	at     span
	closed bool
}

// climbZones lists what the end members leave free, from the floor to the end's top.
func climbZones(s *Sizes, d *dims) [3]zone {
	return [3]zone{
		{at: span{0, d.low.low}}, {at: span{d.low.top, d.up.low}}, {at: span{d.up.top, s.Guard.Top}, closed: true},
	}
}

// fill returns the slats of a zone, lowest first, in equal gaps no larger than most where so many slats go in, else as many as do.
func (z zone) fill(wide, most nm) []span {
	high := z.at.size()
	last := 1 // gaps over the number of slats
	if z.closed {
		last = 0
	}
	n := 0
	for nm(n+1)*wide <= high && (n+last == 0 || high-nm(n)*wide > most*nm(n+last)) {
		n++
	}
	out := make([]span, n)
	for i := range out {
		out[i] = from(z.at.lo+share(high-nm(n)*wide, i+1, n+last)+nm(i)*wide, wide)
	}
	return out
}

func (c *checks) basicClimb(k *Climb) {
	if k == nil {
		return
	}
	c.end("bed.climb.at", k.At)
	if !k.Holds {
		c.board("bed.climb.slat", k.Slat)
		c.within("bed.climb.gap", k.Gap, 1, highest)
		return
	}
	if !k.Panel.Sheet {
		c.refuse("bed.climb.panel", "wants a sheet, not a board")
	}
	c.stock("bed.climb.panel", k.Panel)
	c.within("bed.climb.pitch", k.Pitch, 50*length.Millimetre, highest)
	c.within("bed.climb.top", k.Top, 1, 2*highest)
	c.within("bed.climb.hold_deep", k.HoldDeep, 1, widest)
}

func (c *checks) climb(s *Sizes, d *dims) {
	k := s.Climb
	if k == nil {
		return
	}
	if l := s.Ladder; l != nil && l.OnEnd && l.At == k.At {
		c.refuse("bed.climb.at", "the ladder stands before that end")
	}
	if k.Holds {
		c.atMost("bed.climb.top", k.Top, panelMost(s, d), "the panel would have nothing behind it that high")
	}
}

// panelMost is the top of the highest panel: the guard's top where the panel lies over the end boards too, else the end member's.
func panelMost(s *Sizes, d *dims) nm {
	if s.Guard.Stock.Thick > d.r {
		return d.up.top
	}
	return s.Guard.Top
}

func (b *builder) climb() {
	switch {
	case b.s.Climb == nil:
	case b.s.Climb.Holds:
		b.climbPanel()
	default:
		b.climbSlats()
	}
}

// climbSlats lays slats over the post edges from the floor to the end's top. A notched post carries the ones beside the baseboard
// from the bottom of the notch.
func (b *builder) climbSlats() {
	k, d := b.s.Climb, b.d
	i, n := k.At.index(), 0
	for _, z := range climbZones(b.s, d) {
		for _, at := range z.fill(k.Slat.Wide, k.Gap) {
			n++
			y, num := d.across(), strconv.Itoa(n)
			if b.s.Notched && at.lo < b.s.NotchHigh {
				y.hi = -b.s.NotchDeep
			}
			slat := b.add(furniture.Part{
				ID: "climb.slat." + num, Role: RoleClimbSlat, Name: "climbing slat " + num,
				Assembly: string(k.At) + " end", Stock: k.Slat, FaceUp: "outside",
			}, cuboid{d.x(k.At, -k.Slat.Thick, 0), y, at}, edgeY)
			b.ref.climb = append(b.ref.climb, slat)
			b.glue(slat, b.ref.post[i][wall])
			b.glue(slat, b.ref.post[i][front])
		}
	}
}

// panelFoot is the air under the climbing panel, so that it does not stand on the floor covering; holdEdge what it reaches past the
// highest row. Common practice, no source.
const (
	panelFoot = length.Inch / 2
	holdEdge  = 4 * length.Inch
)

// climbPanel hangs a sheet on the outer faces of both end members, so that no member breaks the rows of holds.
func (b *builder) climbPanel() {
	k, d := b.s.Climb, b.d
	top := max(d.up.top, min(k.Top+holdEdge, panelMost(b.s, d)))
	p := furniture.Part{
		ID: "climb.panel", Role: RoleClimbPanel, Name: "climbing panel", Assembly: "climbing panel", Stock: k.Panel, FaceUp: "outside",
	}
	if b.s.Notched {
		p.Cuts = []furniture.Cut{{Kind: furniture.Notch, Along: b.s.NotchHigh - panelFoot, Deep: b.s.NotchDeep}}
	}
	panel := b.add(p, cuboid{d.x(k.At, -d.r-k.Panel.Thick, -d.r), d.across(), {panelFoot, top}}, uprightY)
	b.ref.climb = append(b.ref.climb, panel)
	for _, deck := range [2]int{lower, upper} {
		member := b.ref.member[deck][k.At.index()]
		b.join(link{a: panel, b: member, from: panel, fastener: b.s.Fastener, count: seam(b.bed.Parts[member].Length, seamStep) + 1})
	}
}

// holdRows returns the heights of the rows of holds, lowest first, in equal steps from the floor to the highest.
func holdRows(k *Climb) []nm {
	n := int((k.Top + k.Pitch - 1) / k.Pitch)
	out := make([]nm, n)
	for i := range out {
		out[i] = share(k.Top, i+1, n)
	}
	return out
}
