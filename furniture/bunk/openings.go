package bunk

import "strconv"

// Zones of openings.
const (
	ZoneRail  = "rail"
	ZoneUpper = "upper end"
	ZoneLower = "lower end"
)

// A bound is a level board that an opening ends at.
type bound struct {
	z    span
	part int
}

func (b *builder) bound(part int) bound { return bound{b.solids[part][2], part} }

// openings lists every hole that a question asks about, front and wall first.
func (b *builder) openings() {
	for i := range b.d.runs {
		b.railOpenings(side(i))
	}
	for _, e := range ends {
		b.upperEnd(e)
		b.lowerEnd(e)
	}
}

// opening adds the opening between two boards, where there is one.
func (b *builder) opening(o Opening, below, above bound) {
	gap := span{below.z.hi, above.z.lo}
	if gap.size() <= 0 {
		return
	}
	o.Bottom, o.Top = gap.lo.MM(), gap.hi.MM()
	o.Grows = b.dries(below) + b.dries(above)
	o.Parts = append([]string{b.id(below.part), b.id(above.part)}, o.Parts...)
	b.bed.Openings = append(b.bed.Openings, o)
}

// dries is half the width of a board, in mm: what its drying can add to the gap beside it. A sheet keeps its size.
func (b *builder) dries(at bound) float64 {
	if b.bed.Parts[at.part].Stock.Sheet {
		return 0
	}
	return half(at.z)
}

// railOpenings lists the gaps under and between the boards of a side, bay by bay between posts and uprights.
func (b *builder) railOpenings(at side) {
	run := &b.d.runs[at]
	if run.open {
		return
	}
	for i := range b.d.rows {
		for j, bay := range b.bays(at) {
			o := Opening{
				ID: at.String() + ".rail." + strconv.Itoa(i+1) + "." + strconv.Itoa(j+1), Side: at.String(), Zone: ZoneRail,
				Wide: bay.x.size().MM(), From: bay.x.lo.MM(), To: bay.x.hi.MM(), Set: true, Parts: []string{b.id(bay.left), b.id(bay.right)},
			}
			b.opening(o, b.under(i, b.ref.rail[upper][at], b.ref.guards[at]), b.bound(b.ref.guards[at][i]))
		}
	}
}

// under returns what bounds the gap below row i of some boards: the row below it or the frame.
func (b *builder) under(i, frame int, rows []int) bound {
	if i > 0 {
		frame = rows[i-1]
	}
	return b.bound(frame)
}

// A bay is a stretch of a side between two posts or uprights.
type bay struct {
	x           span
	left, right int
}

func (b *builder) bays(at side) []bay {
	supports := append([]int{b.ref.post[0][at]}, b.ref.uprights[at]...)
	supports = append(supports, b.ref.post[1][at])
	if at == front && b.d.way.onFront() {
		if b.d.way.at == Left {
			supports = supports[1:]
		} else {
			supports = supports[:len(supports)-1]
		}
	}
	var out []bay
	for i := range supports[1:] {
		x := span{b.solids[supports[i]][0].hi, b.solids[supports[i+1]][0].lo}
		if x.size() > 0 {
			out = append(out, bay{x, supports[i], supports[i+1]})
		}
	}
	return out
}

// upperEnd lists the gaps of an end above the upper end member, up to its top.
func (b *builder) upperEnd(e End) {
	i, p := e.index(), b.d.end(e)
	y, far := b.d.across().shrink(b.d.t), b.ref.post[i][front]
	if p.way.size() > 0 {
		y.lo, far = p.free.hi, b.ref.wayUpright[0]
	}
	rows := b.ref.boards[i]
	if p.slats {
		rows = b.climbWithin(span{b.d.up.top, b.s.Guard.Top})
	}
	for n := range rows {
		below := b.under(n, b.ref.member[upper][i], rows)
		if p.panel && b.solids[b.ref.climb[0]][2].hi > below.z.hi {
			below = b.bound(b.ref.climb[0])
		}
		o := Opening{
			ID: string(e) + ".upper." + strconv.Itoa(n+1), Side: string(e), Zone: ZoneUpper, Set: true,
			Wide: y.size().MM(), From: (-y.hi).MM(), To: (-y.lo).MM(),
			Parts: []string{b.id(b.ref.post[i][wall]), b.id(far)},
		}
		b.opening(o, below, b.bound(rows[n]))
	}
}

// climbWithin returns the climbing slats within a stretch of height.
func (b *builder) climbWithin(z span) []int {
	var out []int
	for _, p := range b.ref.climb {
		if at := b.solids[p][2]; at.lo >= z.lo && at.hi <= z.hi {
			out = append(out, p)
		}
	}
	return out
}

// lowerEnd lists the gaps of an end between the end members of the two beds. A climbing panel closes them all.
func (b *builder) lowerEnd(e End) {
	i, p := e.index(), b.d.end(e)
	if p.panel {
		return
	}
	bounds := []int{b.ref.member[lower][i]}
	if p.slats {
		bounds = append(bounds, b.climbWithin(span{b.d.low.top, b.d.up.low})...)
	}
	bounds = append(bounds, b.ref.member[upper][i])
	y := b.d.across().shrink(2 * b.d.t)
	for n := range bounds[1:] {
		o := Opening{
			ID: string(e) + ".lower." + strconv.Itoa(n+1), Side: string(e), Zone: ZoneLower, Set: p.slats,
			Wide: y.size().MM(), From: (-y.hi).MM(), To: (-y.lo).MM(),
			Parts: []string{b.id(b.ref.middle[i][wall]), b.id(b.ref.middle[i][front])},
		}
		b.opening(o, b.bound(bounds[n]), b.bound(bounds[n+1]))
	}
}
