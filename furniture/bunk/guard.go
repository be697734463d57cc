package bunk

import (
	"strconv"

	"bunkwright/furniture"
	"bunkwright/room/length"
)

// mostBare is the longest stretch of guardrail between posts and uprights, 48 in (1220 mm). Common practice, no source.
const mostBare = 1220 * length.Millimetre

// guardRows returns the heights of the boards, lowest first: the top edge at the guard's top, equal gaps under each.
func guardRows(s *Sizes) []span {
	g := &s.Guard
	base := levelOf(s, s.Upper.Height).top
	air := g.Top - base - nm(g.Rows)*g.Stock.Wide
	rows := make([]span, g.Rows)
	for i := range rows {
		rows[i] = from(base+share(air, i+1, g.Rows)+nm(i)*g.Stock.Wide, g.Stock.Wide)
	}
	return rows
}

// A wayPlan tells where the rail is cut for the way in: over the ladder; without one, on the front beside the climbing end.
type wayPlan struct {
	cut   bool
	atEnd bool // in the end boards, else in the front rail
	at    End
	gap   nm
}

func planWay(s *Sizes) wayPlan {
	switch {
	case s.Ladder != nil:
		return wayPlan{true, s.Ladder.OnEnd, s.Ladder.At, s.Guard.Gap}
	case s.Climb != nil:
		return wayPlan{true, false, s.Climb.At, s.Guard.Gap}
	}
	return wayPlan{}
}

// onFront tells whether the front rail is cut.
func (w wayPlan) onFront() bool { return w.cut && !w.atEnd }

// A run is the guardrail of a long side.
type run struct {
	open     bool   // no rail on this side
	boards   span   // x of the boards
	way      span   // clear way in; empty where the boards reach from end to end
	free     span   // the upright beside the way in
	uprights []span // x of all uprights, from the left
	stuck    bool   // the book ledge leaves no place for an upright
}

// planRuns places the uprights. It is called once the place of the book ledge is known.
func (d *dims) planRuns(s *Sizes) {
	d.runs[wall] = run{open: s.Guard.OpenWall, boards: d.between()}
	d.runs[front] = run{open: s.Guard.OpenFront, boards: d.between()}
	f := &d.runs[front]
	if d.way.onFront() {
		e, gap := d.way.at, d.way.gap
		f.way, f.free, f.boards = d.x(e, d.w, d.w+gap), d.x(e, d.w+gap, 2*d.w+gap), d.x(e, d.w+gap, d.li)
	}
	for i := range d.runs {
		d.runs[i].place(d, side(i), s)
	}
}

// place sets the uprights: one beside the way in, and as many as keep every bare stretch short enough.
func (r *run) place(d *dims, at side, s *Sizes) {
	var keep span
	if at == front && s.Books != nil {
		keep = from(s.Books.From, s.Books.Long)
	}
	if !r.open {
		var ok bool
		r.uprights, ok = fillUprights(d.bare(at), keep, d.w)
		r.stuck = !ok
	}
	if at == wall || !d.way.onFront() || r.open && s.Ladder == nil {
		return
	}
	if d.way.at == Left {
		r.uprights = append([]span{r.free}, r.uprights...)
		return
	}
	r.uprights = append(r.uprights, r.free)
}

// bare is the stretch of a side's guardrail that uprights may stand in: between the posts, short of the upright beside the way in.
func (d *dims) bare(at side) span {
	bare := d.between().shrink(d.w)
	if at == wall || !d.way.onFront() {
		return bare
	}
	taken := d.x(d.way.at, 0, 2*d.w+d.way.gap)
	if d.way.at == Left {
		bare.lo = taken.hi
	} else {
		bare.hi = taken.lo
	}
	return bare
}

// fillUprights halves a stretch until none is longer than mostBare, going round what must be kept free.
func fillUprights(clear, keep span, wide nm) ([]span, bool) {
	if clear.size() <= mostBare {
		return nil, true
	}
	at, ok := nearMiddle(clear, keep, wide)
	if !ok {
		return nil, false
	}
	left, ok1 := fillUprights(span{clear.lo, at.lo}, keep, wide)
	right, ok2 := fillUprights(span{at.hi, clear.hi}, keep, wide)
	return append(append(left, at), right...), ok1 && ok2
}

func nearMiddle(clear, keep span, wide nm) (span, bool) {
	at := centred(clear, wide)
	if keep.size() <= 0 || !at.overlaps(keep) {
		return at, true
	}
	before, after := from(keep.lo-wide, wide), from(keep.hi, wide)
	fits := func(s span) bool { return s.lo >= clear.lo && s.hi <= clear.hi }
	switch near := before.hi-at.lo < at.hi-after.lo; {
	case fits(before) && (near || !fits(after)):
		return before, true
	case fits(after):
		return after, true
	}
	return span{}, false
}

func (c *checks) basicGuard(s *Sizes) {
	c.board("bed.guard.board", s.Guard.Stock)
	c.count("bed.guard.rows", s.Guard.Rows, 1, mostRows)
	c.within("bed.guard.top", s.Guard.Top, 1, 2*highest)
	if s.Ladder != nil || s.Climb != nil {
		c.within("bed.guard.gap", s.Guard.Gap, 1, mostMattress)
	}
}

func (c *checks) guard(s *Sizes, d *dims) {
	least := d.up.top + nm(s.Guard.Rows)*s.Guard.Stock.Wide
	c.atLeast("bed.guard.top", s.Guard.Top, least, "the boards would reach down past the top of the side rail")
	if !d.way.cut {
		return
	}
	most, least := d.li-3*d.w, nm(1)
	if d.way.atEnd {
		most = d.wide - 2*d.w - d.t
	}
	if s.Ladder != nil {
		least = 2*s.Ladder.Block.Thick + length.Inch
	}
	c.between("bed.guard.gap", s.Guard.Gap, least, most,
		"no room is left between the tread blocks", "no room is left for the rail and its upright")
}

// guards builds the guardrails of the long sides with their uprights.
func (b *builder) guards() {
	for i := range b.d.runs {
		b.uprights(side(i))
		if !b.d.runs[i].open {
			b.guardSide(side(i))
		}
	}
}

func (b *builder) uprights(at side) {
	rail := b.ref.rail[upper][at]
	for i, x := range b.d.runs[at].uprights {
		n := strconv.Itoa(i + 1)
		u := b.add(furniture.Part{
			ID: "guard." + at.String() + ".upright." + n, Role: RoleUpright, Name: "upright " + n + ", guardrail, " + at.String(),
			Assembly: "guardrail, " + at.String(), Stock: b.s.Post, FaceUp: "outside",
		}, cuboid{x, b.d.layer(at), {b.d.up.low, b.s.Guard.Top}}, upright)
		b.ref.uprights[at] = append(b.ref.uprights[at], u)
		b.screw(u, rail)
	}
}

func (b *builder) guardSide(at side) {
	run := &b.d.runs[at]
	y := b.d.y(at, b.d.t, b.d.t+b.s.Guard.Stock.Thick)
	for i, z := range b.d.rows {
		n := strconv.Itoa(i + 1)
		g := b.add(furniture.Part{
			ID: "guard." + at.String() + "." + n, Role: RoleGuard, Name: "guardrail " + n + ", " + at.String(),
			Assembly: "guardrail, " + at.String(), Stock: b.s.Guard.Stock, FaceUp: "inside",
			Class: furniture.CutAfter, After: "bed.upper.mattress_thick",
		}, cuboid{run.boards, y, z}, edgeX)
		b.ref.guards[at] = append(b.ref.guards[at], g)
		for _, e := range ends {
			if run.boards.overlaps(b.d.post(e)) {
				b.screw(g, b.ref.post[e.index()][at])
			}
		}
		for _, u := range b.ref.uprights[at] {
			b.screw(g, u)
		}
	}
}
