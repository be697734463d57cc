package bunk

import "bunkwright/room/length"

// nm is short for the exact lengths that the sums below are made of.
type nm = length.Length

// A span is a stretch along one axis, exact.
type span struct{ lo, hi nm }

func (s span) size() nm               { return s.hi - s.lo }
func (s span) mid() nm                { return s.lo + (s.hi-s.lo)/2 }
func (s span) overlaps(o span) bool   { return s.lo < o.hi && o.lo < s.hi }
func (s span) shift(by nm) span       { return span{s.lo + by, s.hi + by} }
func (s span) shrink(by nm) span      { return span{s.lo + by, s.hi - by} }
func (s span) and(o span) span        { return span{max(s.lo, o.lo), min(s.hi, o.hi)} }
func from(lo, size nm) span           { return span{lo, lo + size} }
func centred(in span, size nm) span   { return from(in.lo+(in.size()-size)/2, size) }
func share(whole nm, part, of int) nm { return whole * nm(part) / nm(of) }

// A side is one of the two long sides.
type side int

const (
	wall side = iota
	front
)

var sideNames = [2]string{"wall", "front"}

func (s side) String() string { return sideNames[s] }

var ends = [2]End{Left, Right}

// index is 0 for the left end, 1 for the right.
func (e End) index() int {
	if e == Right {
		return 1
	}
	return 0
}

// A level is one bed's frame: heights over the post feet.
type level struct {
	deck  nm // top of the slats
	under nm // underside of the slats, top of the ledges
	low   nm // underside of ledges, side rails and end members
	top   nm // top of side rails and end members
}

func levelOf(s *Sizes, deck nm) level {
	l := level{deck: deck, under: deck - s.Slat.Thick}
	l.low = l.under - s.Ledge.Wide
	l.top = l.low + s.Rail.Wide
	return l
}

// dims are the sizes that follow from the chosen ones.
type dims struct {
	t, w    nm // post stock: thickness of a layer, width
	r, rw   nm // rail stock: thickness, width
	plane   nm // kept for the plane of the side rails: the thickest of what stands in it
	li, wi  nm // inside of the frame
	wide    nm // overall, wall side to front
	x0, x1  nm // inner planes of the ends, the outer edges of the posts
	long    nm // overall, end to end
	low, up level
	rows    []span // heights of the guardrail boards, lowest first
	way     wayPlan
	ends    [2]endPlan
	runs    [2]run
}

// newDims works out the frame from sizes that checkBasic has passed.
func newDims(s *Sizes) *dims {
	d := &dims{t: s.Post.Thick, w: s.Post.Wide, r: s.Rail.Thick, rw: s.Rail.Wide}
	d.plane = max(d.t, d.r, s.Guard.Stock.Thick)
	d.li = max(s.Upper.MattressLong, s.Lower.MattressLong) + s.Play
	d.wi = max(s.Upper.MattressWide, s.Lower.MattressWide) + s.Play
	d.wide = d.wi + 2*(d.t+d.plane)
	d.low, d.up = levelOf(s, s.Lower.Height), levelOf(s, s.Upper.Height)
	d.rows = guardRows(s)
	d.way = planWay(s)
	for i, e := range ends {
		d.ends[i] = planEnd(s, d, e)
	}
	d.x0 = d.ends[0].outer
	d.x1 = d.x0 + d.li
	d.long = d.x1 + d.ends[1].outer
	return d
}

// x returns a stretch measured inward from the inner plane of an end.
func (d *dims) x(e End, a, b nm) span {
	if e == Left {
		return span{d.x0 + a, d.x0 + b}
	}
	return span{d.x1 - b, d.x1 - a}
}

// y returns a stretch measured inward from the outermost face of a side.
func (d *dims) y(s side, a, b nm) span {
	if s == wall {
		return span{-b, -a}
	}
	return span{a - d.wide, b - d.wide}
}

func (d *dims) across() span       { return span{-d.wide, 0} }
func (d *dims) between() span      { return span{d.x0, d.x1} }
func (d *dims) layer(s side) span  { return d.y(s, 0, d.t) }
func (d *dims) rail(s side) span   { return d.y(s, d.t, d.t+d.r) }
func (d *dims) post(e End) span    { return d.x(e, 0, d.w) }
func (d *dims) end(e End) *endPlan { return &d.ends[e.index()] }
