package bunk

import (
	"fmt"
	"strconv"

	"bunkwright/furniture"
	"bunkwright/furniture/timber"
	"bunkwright/room/length"
)

// slatPlay is what a slat is shorter than the clear width between the side rails, both ends together.
const slatPlay = length.Inch / 8

func (s *Sizes) deck(deck int) *Deck {
	if deck == upper {
		return &s.Upper
	}
	return &s.Lower
}

// slatCount returns how many slats a deck gets: as many as chosen, else the fewest that keep the gap, at least two.
func slatCount(k *Deck, wide, clear nm) (int, error) {
	if k.Slats > 0 {
		return k.Slats, nil
	}
	n, err := timber.SlatCount(float64(clear), float64(wide), float64(k.SlatGap)) // in whole nm, where the count is exact
	return max(n, 2), err
}

// slatsOf lays the slats of a deck on its ledges with equal gaps. The last one is fitted in place.
func (b *builder) slatsOf(deck int) {
	d, k, name := b.d, b.d.level(deck), deckNames[deck]
	n, _ := slatCount(b.s.deck(deck), b.s.Slat.Wide, d.li)
	air := d.li - nm(n)*b.s.Slat.Wide
	y := d.across().shrink(d.t + d.r + slatPlay/2)
	assembly := name + " slats"
	if deck == lower {
		assembly = "lower frame"
	}
	for i := range n {
		num := strconv.Itoa(i + 1)
		p := furniture.Part{
			ID: name + ".slat." + num, Role: RoleSlat, Name: "slat " + num + ", " + name + " bed",
			Assembly: assembly, Stock: b.s.Slat, FaceUp: "up",
		}
		if i == n-1 {
			p.Class = furniture.FitToPlace
		}
		x := from(d.x0+share(air, i+1, n+1)+nm(i)*b.s.Slat.Wide, b.s.Slat.Wide)
		slat := b.add(p, cuboid{x, y, {k.under, k.deck}}, flatY)
		b.ref.slats[deck] = append(b.ref.slats[deck], slat)
		for _, at := range [2]side{wall, front} {
			b.lay(slat, b.ref.ledge[deck][at])
		}
	}
}

func (c *checks) slats(name string, k *Deck, s *Sizes, d *dims) {
	n, err := slatCount(k, s.Slat.Wide, d.li)
	most := int(d.li / s.Slat.Wide)
	switch {
	case err != nil:
		gap := (d.li-nm(most)*s.Slat.Wide)/nm(most+1) + 1
		c.near(name+".slat_gap", "no number of slats keeps the gap that small", gap)
	case n > most:
		c.refuse(name+".slats", fmt.Sprintf("%d slats are wider together than the bed is long: at most %d", n, most))
	}
}
