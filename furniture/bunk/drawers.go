package bunk

import (
	"strconv"

	"bunkwright/furniture"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// A drawer is a box on its own base, or on casters: sides, back and inner front on a sheet bottom, and a front of boards between the posts
// with its outer face level with theirs. The front stops above the bottom, so that it does not plough the carpet.

// Air round a drawer, each side. Common practice, no source.
const (
	frontAir    = length.Inch / 8 // round a front
	boxAir      = length.Inch / 4 // between box and front's end
	leastDrawer = 6 * length.Inch // width of a front
	leastBox    = 2 * length.Inch // height of the sides, depth of the box
)

// drawerDepth is the depth that the frame takes: from the front's face to the outer layer of the wall-side posts.
func drawerDepth(d *dims) nm { return d.wide - d.t }

// drawerRoom is the width for the drawers at the front: between the posts, short of a ladder that stands there.
func drawerRoom(s *Sizes, d *dims) span {
	room := d.between().shrink(d.w)
	l := s.Ladder
	if l == nil || l.OnEnd {
		return room
	}
	thick := l.Stock.Thick
	if l.Angle < steepest {
		thick *= 2
	}
	if l.At == Left {
		room.lo = max(room.lo, d.x(Left, 0, d.w+d.way.gap+thick).hi)
	} else {
		room.hi = min(room.hi, d.x(Right, 0, d.w+d.way.gap+thick).lo)
	}
	return room
}

func (c *checks) basicDrawers(k *Drawers) {
	if k == nil {
		return
	}
	c.count("bed.drawers.count", k.Count, 0, 6)
	c.within("bed.drawers.casters", k.Casters, 0, highest)
	c.within("bed.drawers.box_high", k.BoxHigh, 0, highest)
	c.within("bed.drawers.deep", k.Deep, 0, highest)
	c.within("bed.drawers.travel", k.Travel, 0, highest)
}

func (c *checks) drawers(s *Sizes, d *dims) {
	k := s.Drawers
	if k == nil {
		return
	}
	before := len(c.found)
	c.stock("bed.drawers.side", k.Side)
	c.stock("bed.drawers.bottom", k.Bottom)
	c.stock("bed.drawers.front", k.Front)
	if !k.Bottom.Sheet {
		c.refuse("bed.drawers.bottom", "wants a sheet, not a board")
	}
	if len(c.found) > before {
		return
	}
	c.drawerHeight(k, d)
	c.atMost("bed.drawers.deep", k.Deep, drawerDepth(d), "the box would reach past the posts on the wall side")
	c.atLeast("bed.drawers.deep", k.Deep, k.Front.Thick+2*k.Side.Thick+leastBox, "too shallow for a box")
	c.atMost("bed.drawers.travel", k.Travel, k.Deep, "a drawer pulled out that far has left the bed")
	if front := drawerFront(s, d, 0).size(); front < leastDrawer+2*k.Side.Thick {
		c.refuse("bed.drawers.count", "the drawers would be too narrow beside each other")
	}
}

func (c *checks) drawerHeight(k *Drawers, d *dims) {
	most := d.low.low - k.Casters
	if !k.Side.Sheet {
		most = min(most, k.Side.Wide+k.Bottom.Thick)
	}
	least := leastBox + k.Bottom.Thick
	switch {
	case !k.Side.Sheet && k.Side.Wide < leastBox:
		c.refuse("bed.drawers.side", "the side boards are too narrow for a box")
	case most < least && k.Casters > 0 && d.low.low >= least:
		c.near("bed.drawers.casters", "no height is left for a box under the side rail", d.low.low-least)
	case most < least:
		c.refuse("bed.drawers.box_high", "no height is left for a box under the side rail")
	case k.BoxHigh < least:
		c.near("bed.drawers.box_high", "too low for a box", least)
	case k.BoxHigh > most && most == k.Side.Wide+k.Bottom.Thick:
		c.near("bed.drawers.box_high", "the side boards are not that wide", most)
	case k.BoxHigh > most:
		c.near("bed.drawers.box_high", "the side rail is in the way", most)
	}
}

// drawerFront returns where front i stands along the bed.
func drawerFront(s *Sizes, d *dims, i int) span {
	room, n := drawerRoom(s, d), s.Drawers.Count
	wide := (room.size() - nm(n+1)*frontAir) / nm(n)
	return from(room.lo+nm(i+1)*frontAir+nm(i)*wide, wide)
}

func (b *builder) drawers() {
	if b.s.Drawers == nil {
		return
	}
	for i := range b.s.Drawers.Count {
		b.drawer(i)
	}
}

// A box is a drawer under construction.
type box struct {
	name     string
	front    span // x of the drawer front
	x, y, z  span // outside of sides, back and inner front
	firstOne int  // number of its first part
}

func (b *builder) drawer(i int) {
	k, d := b.s.Drawers, b.d
	x := &box{name: strconv.Itoa(i + 1), front: drawerFront(b.s, d, i), firstOne: len(b.bed.Parts)}
	x.x, x.y = x.front.shrink(boxAir), d.y(front, k.Front.Thick, k.Deep)
	x.z = from(k.Casters+k.Bottom.Thick, k.BoxHigh-k.Bottom.Thick)
	thick := k.Side.Thick
	within := x.x.shrink(thick)
	sides := [2]int{
		b.drawerSide(x, "side.left", RoleSide, cuboid{from(x.x.lo, thick), x.y, x.z}, edgeY),
		b.drawerSide(x, "side.right", RoleSide, cuboid{from(x.x.hi-thick, thick), x.y, x.z}, edgeY),
	}
	b.pair(sides[0], sides[1])
	inner := b.drawerSide(x, "inner", RoleInner, cuboid{within, from(x.y.lo, thick), x.z}, edgeX)
	back := b.drawerSide(x, "back", RoleBack, cuboid{within, from(x.y.hi-thick, thick), x.z}, edgeX)
	bottom := b.add(x.part("bottom", RoleBottom, k.Bottom), cuboid{x.x, x.y, from(k.Casters, k.Bottom.Thick)}, bottomLie(x.x, x.y))
	for _, s := range sides {
		b.glue(s, inner)
		b.glue(s, back)
		b.glueWith(bottom, s, seam(x.y.size(), seamStep))
	}
	b.glueWith(bottom, inner, seam(within.size(), seamStep))
	b.glueWith(bottom, back, seam(within.size(), seamStep))
	b.drawerFronts(x, inner)
	b.describeDrawer(x)
}

func (x *box) part(name, role string, stock furniture.Stock) furniture.Part {
	return furniture.Part{
		ID: "drawer." + x.name + "." + name, Role: role, Name: role + ", drawer " + x.name, Assembly: "drawer " + x.name, Stock: stock,
		FaceUp: "outside",
	}
}

// drawerSide adds a part of the box's wall, ripped to the box's height.
func (b *builder) drawerSide(x *box, name, role string, c cuboid, l lie) int {
	p := x.part(name, role, b.s.Drawers.Side)
	if !p.Stock.Sheet && p.Stock.Wide > x.z.size() {
		p.Rip = x.z.size()
	}
	return b.add(p, c, l)
}

// bottomLie lets the sheet's grain run along its longer side.
func bottomLie(x, y span) lie {
	if x.size() >= y.size() {
		return flatX
	}
	return flatY
}

// drawerFronts covers the inner front with as many boards as its height takes, all ripped to the same width.
func (b *builder) drawerFronts(x *box, inner int) {
	k, high := b.s.Drawers, x.z.size()
	n := 1
	if !k.Front.Sheet {
		n = int((high + k.Front.Wide - 1) / k.Front.Wide)
	}
	for j := range n {
		at := span{x.z.lo + share(high, j, n), x.z.lo + share(high, j+1, n)}
		p := x.part("front."+strconv.Itoa(j+1), RoleFront, k.Front)
		p.Class = furniture.FitToPlace
		if at.size() != k.Front.Wide {
			p.Rip = at.size()
		}
		board := b.add(p, cuboid{x.front, b.d.y(front, 0, k.Front.Thick), at}, edgeX)
		b.join(link{a: inner, b: board, from: inner, fastener: b.s.Fastener, count: seam(x.front.size(), seamStep)})
	}
}

func (b *builder) describeDrawer(x *box) {
	k, y := b.s.Drawers, b.d.y(front, 0, b.s.Drawers.Deep)
	at := DrawerAt{
		ID: "drawer." + x.name, Travel: k.Travel.MM(), BoxHigh: k.BoxHigh.MM(), Caster: k.Casters.MM(), Over: b.d.low.low.MM(),
		Shut: geom.NewBox(corner(x.front.lo, y.lo, k.Casters), corner(x.front.hi, y.hi, k.Casters+k.BoxHigh)),
	}
	for _, p := range b.bed.Parts[x.firstOne:] {
		at.Parts = append(at.Parts, p.ID)
	}
	b.bed.Drawers = append(b.bed.Drawers, at)
}

func corner(x, y, z nm) geom.V3 { return geom.V3{X: x.MM(), Y: y.MM(), Z: z.MM()} }
