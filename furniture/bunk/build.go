package bunk

import (
	"bunkwright/furniture"
	"bunkwright/furniture/timber"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// Build returns the bed of the chosen sizes, the same for the same sizes. Sizes that were not chosen take the default of
// Defaults and are listed in Assumed. Sizes of which no bed can be built give a SizesError that names all of them; the bed
// returned with it holds the filled-in sizes only.
func Build(s Sizes) (Bed, error) {
	f := complete(s)
	if found := checkBasic(&f.s); len(found) > 0 {
		return Bed{Sizes: f.s, Assumed: f.assumed}, found
	}
	d := newDims(&f.s)
	f.rest(d)
	d.planRuns(&f.s)
	if found := checkFit(&f.s, d); len(found) > 0 {
		return Bed{Sizes: f.s, Assumed: f.assumed}, found
	}
	b := newBuilder(&f.s, d)
	b.bed.Sizes, b.bed.Assumed = f.s, f.assumed
	b.build()
	return b.bed, nil
}

// The two decks, as indexes.
const (
	lower = iota
	upper
)

var deckNames = [2]string{"lower", "upper"}

// refs hold the parts that others are joined to, by their place in the list; first index end or deck, second side.
type refs struct {
	post, foot, middle    [2][2]int // by end, side
	rail, ledge           [2][2]int // by deck, side
	member                [2][2]int // by deck, end
	slats                 [2][]int
	boards                [2][]int // end boards, by end
	uprights, guards      [2][]int // by side
	wayUpright            [2]int   // beside a way in at an end: at the free end of its boards, at the front post
	climb, treads, stiles []int
}

// A builder adds parts and joints. It keeps the exact solid of every part beside the rounded one.
type builder struct {
	s       *Sizes
	d       *dims
	bed     Bed
	solids  []cuboid
	lies    []lie
	ref     refs
	drilled []drilled
	screws  []*timber.Fastener // those looked up so far
}

func newBuilder(s *Sizes, d *dims) *builder {
	const parts, joints, holes = 112, 224, 560 // about what a bed with every add-on has
	b := &builder{s: s, d: d}
	b.bed.Parts = make([]furniture.Part, 0, parts)
	b.bed.Joints = make([]furniture.Joint, 0, joints)
	b.solids = make([]cuboid, 0, parts)
	b.lies = make([]lie, 0, parts)
	b.drilled = make([]drilled, 0, holes)
	return b
}

func (b *builder) build() {
	b.posts()
	b.frames()
	b.slatsOf(lower)
	b.slatsOf(upper)
	b.bearings()
	for _, e := range ends {
		b.endAbove(e)
	}
	b.guards()
	b.climb()
	b.ladder()
	b.books()
	b.drawers()
	b.shelves()
	b.giveHoles()
	b.features()
}

// A cuboid is a solid along the axes, exact.
type cuboid [3]span

func (c cuboid) and(o cuboid) cuboid {
	return cuboid{c[0].and(o[0]), c[1].and(o[1]), c[2].and(o[2])}
}

// A lie tells along which axis (0 x, 1 y, 2 z) a board's length, width and thickness run.
type lie [3]int

var (
	upright  = lie{2, 0, 1} // on end, wide face along the bed
	uprightY = lie{2, 1, 0} // on end, wide face across the bed
	edgeX    = lie{0, 2, 1} // on edge along the bed
	edgeY    = lie{1, 2, 0} // on edge across the bed
	flatX    = lie{0, 1, 2} // flat along the bed
	flatY    = lie{1, 0, 2} // flat across the bed
)

// odd tells whether the three axes are left-handed as listed, so that one of them must be turned round.
func (l lie) odd() bool { return (l[1]-l[0]+3)%3 != 1 }

var (
	unit    = [3]geom.V3{{X: 1}, {Y: 1}, {Z: 1}}
	against = [3]geom.V3{{X: -1}, {Y: -1}, {Z: -1}}
)

// box returns the solid with a board's axes. The width axis is the one turned round, so that lengths are counted from the left,
// the front or the floor and a flat board's thickness points up.
func (c cuboid) box(l lie) geom.Box {
	b := geom.Box{
		C:    geom.V3{X: middle(c[0]), Y: middle(c[1]), Z: middle(c[2])},
		Half: geom.V3{X: half(c[l[0]]), Y: half(c[l[1]]), Z: half(c[l[2]])},
	}
	for k := range b.Ax {
		b.Ax[k] = unit[l[k]]
	}
	if l.odd() {
		b.Ax[1] = against[l[1]]
	}
	return b
}

func middle(s span) float64 { return (s.lo + s.hi).MM() / 2 }
func half(s span) float64   { return s.size().MM() / 2 }

var squareEnds = []furniture.Cut{{Kind: furniture.Square}, {Kind: furniture.Square, End: 1}}

// add adds a part that lies along the axes and returns its number.
func (b *builder) add(p furniture.Part, c cuboid, l lie) int {
	p.Length = c[l[0]].size()
	if p.Stock.Sheet {
		p.Rip = c[l[1]].size()
	}
	p.Box = c.box(l)
	p.Cuts = append(squareEnds[:2:2], p.Cuts...)
	return b.keep(p, c, l)
}

func (b *builder) keep(p furniture.Part, c cuboid, l lie) int {
	b.bed.Parts = append(b.bed.Parts, p)
	b.solids = append(b.solids, c)
	b.lies = append(b.lies, l)
	return len(b.bed.Parts) - 1
}

func (b *builder) id(part int) string { return b.bed.Parts[part].ID }

// pair names two parts as each other's mirror image.
func (b *builder) pair(i, j int) {
	b.bed.Parts[i].Mirror, b.bed.Parts[j].Mirror = b.id(j), b.id(i)
}

// fastener looks a screw up; checkBasic has refused those that the tables do not hold.
func (b *builder) fastener(id string) *timber.Fastener {
	for _, f := range b.screws {
		if f.ID == id {
			return f
		}
	}
	f, err := timber.FindFastener(id)
	if err != nil {
		f.ID = id
	}
	b.screws = append(b.screws, &f)
	return &f
}

// Widths up to which two and three screws hold a joint: 3-1/2 in and 5-1/2 in boards, with what metric boards of the same class
// have over them (fastening rules from memory of common practice).
const (
	twoScrews   = 7*length.Inch/2 + length.Inch/8
	threeScrews = 11*length.Inch/2 + length.Inch/8
)
