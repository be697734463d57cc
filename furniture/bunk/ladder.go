package bunk

import (
	"fmt"
	"math"
	"strconv"

	"bunkwright/furniture"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// Slopes of a ladder from the floor, in degrees. Common practice, no source.
const (
	flattest = 50
	steepest = 90
)

// A lean is where the ladder stands: the axis along its treads, the plane its stiles stand against and which way is out from there.
type lean struct {
	across, out int  // axes along the treads and out from the bed
	plane       nm   // of the uprights' outer faces
	toHigh      bool // out runs towards higher coordinates
	clear       span // between the stiles
	supports    [2]int
	wide        nm      // of a stile
	top         nm      // of the stiles
	angle       float64 // radians from the floor
	sloping     bool
}

// place turns a stretch across, out and up into a solid.
func (l *lean) place(across, out, z span) cuboid {
	var c cuboid
	c[l.across], c[2] = across, z
	c[l.out] = span{l.plane - out.hi, l.plane - out.lo}
	if l.toHigh {
		c[l.out] = out.shift(l.plane)
	}
	return c
}

// point is place for a single point in mm.
func (l *lean) point(across, out, z float64) geom.V3 {
	sign := -1.0
	if l.toHigh {
		sign = 1
	}
	var v [3]float64
	v[l.across], v[l.out], v[2] = across, l.plane.MM()+sign*out, z
	return geom.V3{X: v[0], Y: v[1], Z: v[2]}
}

// lies returns the lie of boards on end beside the treads, of the treads and of the blocks under them.
func (l *lean) lies() (stile, tread, block lie) {
	return lie{2, l.out, l.across}, lie{l.across, l.out, 2}, lie{l.out, 2, l.across}
}

// centre returns how far out a stile's middle line is at a height, in mm. A sloping stile's back meets the plane at its top.
func (l *lean) centre(z float64) float64 {
	if !l.sloping {
		return l.wide.MM() / 2
	}
	return l.wide.MM()/2/math.Sin(l.angle) + (l.top.MM()-z)/math.Tan(l.angle)
}

func (b *builder) lean() *lean {
	k, d := b.s.Ladder, b.d
	l := &lean{out: 1, plane: -d.wide, wide: k.Stock.Wide, top: b.s.Guard.Top,
		angle: k.Angle * math.Pi / 180, sloping: k.Angle < steepest}
	if !k.OnEnd {
		l.clear = d.runs[front].way
		l.supports = [2]int{b.ref.post[0][front], b.ref.uprights[front][0]}
		if k.At == Right {
			us := b.ref.uprights[front]
			l.supports = [2]int{us[len(us)-1], b.ref.post[1][front]}
		}
		return l
	}
	l.across, l.out = 1, 0
	l.clear = d.end(k.At).way
	l.supports = [2]int{b.ref.wayUpright[1], b.ref.wayUpright[0]}
	face := d.x(k.At, -d.r-d.t, -d.r)
	l.plane, l.toHigh = face.lo, k.At == Right
	if l.toHigh {
		l.plane = face.hi
	}
	return l
}

func (c *checks) basicLadder(k *Ladder) {
	if k == nil {
		return
	}
	c.end("bed.ladder.at", k.At)
	c.count("bed.ladder.treads", k.Treads, 1, mostTreads)
	if !(k.Angle >= flattest && k.Angle <= steepest) {
		c.refuse("bed.ladder.angle", fmt.Sprintf("%g degrees is out of range: want %d to %d", k.Angle, flattest, steepest))
	}
	c.board("bed.ladder.stile", k.Stock)
	c.board("bed.ladder.tread", k.Tread)
	c.board("bed.ladder.block", k.Block)
}

func (c *checks) ladder(s *Sizes, d *dims) {
	k := s.Ladder
	if k == nil {
		return
	}
	most := d.w
	if k.Angle < steepest {
		most = d.w * 2 / 3 // stile and hanger stand side by side; half the hanger must find the post
	}
	c.atMost("bed.ladder.stile.thick", k.Stock.Thick, most, "the post behind it would be too narrow")
	if high := k.Tread.Thick + k.Block.Wide; s.Upper.Height/nm(k.Treads) <= high {
		c.refuse("bed.ladder.treads", fmt.Sprintf("treads and their blocks would meet: at most %d", (s.Upper.Height-1)/high))
	}
}

// ladder builds stiles before the way in's upright and post, and level treads on blocks between them. The ladder is glued up whole
// and screwed to the bed without glue.
func (b *builder) ladder() {
	if b.s.Ladder == nil {
		return
	}
	l := b.lean()
	if l.sloping {
		b.slopingStiles(l)
	} else {
		b.uprightStiles(l)
	}
	b.pair(b.ref.stiles[0], b.ref.stiles[1])
	for i := range b.s.Ladder.Treads {
		b.tread(l, i)
	}
}

func (b *builder) ladderPart(name, role, words string, stock furniture.Stock) furniture.Part {
	return furniture.Part{ID: "ladder." + name, Role: role, Name: words + ", ladder", Assembly: "ladder", Stock: stock, FaceUp: "outside"}
}

// beside returns the two stretches of a thickness beside another, outside it.
func beside(s span, thick nm) [2]span {
	return [2]span{{s.lo - thick, s.lo}, {s.hi, s.hi + thick}}
}

// reach is the height over which a screw can be driven from the bed through support i into the ladder: above the frame. The free upright
// at an end has the end boards glued to its back and is open only under the lowest of them.
func (b *builder) reach(l *lean, i int) span {
	open := span{b.d.up.top, b.s.Guard.Top}
	if b.s.Ladder.OnEnd && l.supports[i] == b.ref.wayUpright[0] {
		if under := b.d.end(b.s.Ladder.At).rows[0].lo; under-open.lo >= leastReach {
			open.hi = under
		}
	}
	return open
}

// leastReach is the height that three screws need over one another, 1-1/2 in. Common practice, no source.
const leastReach = 3 * length.Inch / 2

func (b *builder) uprightStiles(l *lean) {
	stile, _, _ := l.lies()
	for i, across := range beside(l.clear, b.s.Ladder.Stock.Thick) {
		n := strconv.Itoa(i + 1)
		p := b.add(b.ladderPart("stile."+n, RoleStile, "stile "+n, b.s.Ladder.Stock), l.place(across, span{0, l.wide}, span{0, l.top}), stile)
		b.ref.stiles = append(b.ref.stiles, p)
		b.join(link{a: l.supports[i], b: p, from: l.supports[i], fastener: b.s.Fastener, count: 3, zone: b.reach(l, i)})
	}
}

// tread sets tread i on its two blocks. The top of the last one is level with the deck.
func (b *builder) tread(l *lean, i int) {
	k, n := b.s.Ladder, strconv.Itoa(i+1)
	_, treadLie, blockLie := l.lies()
	top := share(b.s.Upper.Height, i+1, k.Treads)
	under := top - k.Tread.Thick
	out := l.deep(k.Tread.Wide, top-k.Tread.Thick/2)
	tread := b.add(b.ladderPart("tread."+n, RoleTread, "tread "+n, k.Tread), l.place(l.clear, out, span{under, top}), treadLie)
	b.bed.Parts[tread].FaceUp = "up"
	b.ref.treads = append(b.ref.treads, tread)
	var blocks [2]int
	inner := [2]span{from(l.clear.lo, k.Block.Thick), from(l.clear.hi-k.Block.Thick, k.Block.Thick)}
	for j, across := range inner {
		name := n + "." + strconv.Itoa(j+1)
		blocks[j] = b.add(b.ladderPart("block."+name, RoleBlock, "block "+name, k.Block),
			l.place(across, b.blockDeep(l, out), span{under - k.Block.Wide, under}), blockLie)
		b.fixTread(l, tread, blocks[j], b.ref.stiles[j])
	}
	b.pair(blocks[0], blocks[1])
}

// deep returns how far out a tread lies: in the middle of the stiles, but never behind the plane they stand against.
func (l *lean) deep(wide, z nm) span {
	mid := length.FromMM(l.centre(z.MM()))
	return from(max(0, mid-wide/2), wide)
}

// blockDeep keeps a block within the width of an upright stile; beside a sloping one it is as long as the tread is deep.
func (b *builder) blockDeep(l *lean, tread span) span {
	if l.sloping {
		return tread
	}
	return tread.and(span{0, l.wide})
}

func (b *builder) fixTread(l *lean, tread, block, stile int) {
	b.join(link{a: block, b: tread, from: tread, glued: true, carries: true, fastener: b.s.Fastener})
	if !l.sloping {
		b.glue(block, stile)
		b.glueWith(stile, tread, 2)
		return
	}
	b.pin(link{a: block, b: stile, from: block, glued: true, count: 2}, b.pins(l, block))
	b.pin(link{a: stile, b: tread, from: stile, glued: true, count: 2}, b.pins(l, tread))
}

// steps describes the ladder as feet and heads meet it.
func (b *builder) steps() {
	k := b.s.Ladder
	if k == nil {
		return
	}
	l := b.lean()
	st := &Steps{
		Side: front.String(), Thick: k.Tread.Thick.MM(), Deep: k.Tread.Wide.MM(), Clear: l.clear.size().MM(), Angle: k.Angle,
		Foot: b.bed.Parts[b.ref.treads[0]].Solid().Footprint(),
	}
	edge := b.ref.rail[upper][front]
	if k.OnEnd {
		st.Side, edge = string(k.At), b.ref.member[upper][k.At.index()]
	}
	away := l.point(0, 1, 0).Sub(l.point(0, 0, 0))
	st.Out = away.XY()
	for _, t := range b.ref.treads {
		st.Tops = append(st.Tops, b.solids[t][2].hi.MM())
		st.Parts = append(st.Parts, b.id(t))
	}
	for _, p := range b.ref.stiles {
		st.Parts = append(st.Parts, b.id(p))
	}
	last := b.ref.treads[len(b.ref.treads)-1]
	st.ToBed = geom.BoxGap(b.bed.Parts[last].Solid(), b.bed.Parts[edge].Solid())
	b.bed.Steps = st
}
