package bunk

import (
	"bunkwright/furniture"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// How far apart screws stand along a glued seam, and along the two layers of a post. Common practice, no source.
const (
	seamStep  = 8 * length.Inch
	layerStep = 12 * length.Inch
)

// A link says how two parts are joined.
type link struct {
	a, b     int // b rests on a, or is what a is fixed to
	from     int // the part the screws pass first
	glued    bool
	carries  bool
	fastener string
	count    int  // 0: by width
	zone     span // heights that the screws keep to; empty: the whole lap
}

// glue joins for good: a to on, screws through a.
func (b *builder) glue(a, on int) { b.glueWith(a, on, 0) }

func (b *builder) glueWith(a, on, count int) {
	b.join(link{a: a, b: on, from: a, glued: true, fastener: b.s.Fastener, count: count})
}

// screw joins so that it comes apart: a to on, screws through a.
func (b *builder) screw(a, on int) {
	b.join(link{a: a, b: on, from: a, fastener: b.s.Fastener})
}

// lay rests top on under and screws it down so that it comes apart.
func (b *builder) lay(top, under int) {
	b.join(link{a: under, b: top, from: top, carries: true, fastener: b.s.Fastener})
}

// rest lets top stand on under with nothing through it.
func (b *builder) rest(top, under int) {
	b.join(link{a: under, b: top, carries: true})
}

func (b *builder) join(l link) {
	area, axis, up := meet(b.solids[l.a], b.solids[l.b])
	j := b.newJoint(l)
	j.FaceA, j.FaceB = b.face(l.a, axis, up), b.face(l.b, axis, !up)
	if j.Fastener == "" || axis < 0 {
		b.bed.Joints = append(b.bed.Joints, j)
		return
	}
	if j.Count == 0 {
		j.Count = b.countByWidth(l.a, l.b)
	}
	if l.zone.size() > 0 {
		area[2] = area[2].and(l.zone)
	}
	if narrow(area, axis) < 2*b.fastener(j.Fastener).EdgeDistance {
		j.Fastener = fineScrew
	}
	b.bed.Joints = append(b.bed.Joints, j)
	b.drill(l.from, &j, area, axis)
}

// fineScrew takes the place of the frame's screw where a lap is narrower than twice that one's edge distance: the edges of 3/4 in
// boards. Common practice, no source.
const fineScrew = "screw-6"

func narrow(area cuboid, axis int) nm {
	return min(area[(axis+1)%3].size(), area[(axis+2)%3].size())
}

func (b *builder) newJoint(l link) furniture.Joint {
	j := furniture.Joint{
		ID: b.id(l.a) + "/" + b.id(l.b), A: b.id(l.a), B: b.id(l.b),
		Glued: l.glued, ComesApart: !l.glued, Carries: l.carries, Fastener: l.fastener, Count: l.count,
	}
	if l.fastener != "" {
		j.From = b.id(l.from)
	}
	return j
}

// countByWidth gives two screws up to 3-1/2 in, three for 5-1/2 in, else four, by the wider board.
func (b *builder) countByWidth(i, k int) int {
	switch wide := max(b.bed.Parts[i].Width(), b.bed.Parts[k].Width()); {
	case wide <= twoScrews:
		return 2
	case wide <= threeScrews:
		return 3
	}
	return 4
}

// seam gives the screws along a seam: one every step, at least two.
func seam(long, step nm) int { return max(2, int((long+step-1)/step)) }

// meet returns the area that two solids share, the axis square to it and whether the second lies on the far side along it. The
// axis is -1 where they do not touch face to face.
func meet(a, b cuboid) (area cuboid, axis int, up bool) {
	axis = -1
	area = a.and(b)
	for k, s := range area {
		switch {
		case s.size() == 0 && axis < 0:
			axis = k
		case s.size() <= 0:
			return area, -1, false
		}
	}
	return area, axis, axis >= 0 && a[axis].hi == b[axis].lo
}

// face names the face of a part that looks along an axis (up: towards its far side).
func (b *builder) face(part, axis int, up bool) string {
	if axis < 0 {
		return ""
	}
	l := b.lies[part]
	switch {
	case axis == l[0]:
		return "end"
	case axis == 2 && up:
		return "top"
	case axis == 2:
		return "underside"
	}
	name := "inside"
	if up == (b.solids[part][axis].mid() > b.heart(axis)) {
		name = "outside"
	}
	if axis == l[1] {
		return name + " edge"
	}
	return name + " face"
}

// heart is the middle of the frame along x or y: left and right, wall and front are mirror images about it.
func (b *builder) heart(axis int) nm {
	switch axis {
	case 0:
		return b.d.x0 + b.d.li/2
	case 1:
		return -b.d.wide / 2
	}
	return 0
}

// drill adds the holes of a joint to the part that its screws pass first: spread along the longer side of the lap, staggered
// where it is wide enough, no nearer an edge of the lap than the screw wants where there is room for that.
func (b *builder) drill(part int, j *furniture.Joint, area cuboid, axis int) {
	l := b.lies[part]
	if axis != l[2] {
		return
	}
	long, short := (axis+1)%3, (axis+2)%3
	if area[long].size() < area[short].size() {
		long, short = short, long
	}
	screw := b.fastener(j.Fastener)
	for i := range j.Count {
		var at [3]nm
		at[long] = b.spot(area[long], long, spread(area[long].size(), screw.EdgeDistance, i, j.Count))
		at[short] = b.spot(area[short], short, stagger(area[short].size(), screw.EdgeDistance, i))
		b.hole(part, j.ID, screw.D, at)
	}
}

// spread returns how far along a lap screw i of n stands.
func spread(long, edge nm, i, n int) nm {
	if n < 2 {
		return long / 2
	}
	in := min(max(edge, long/8), long/2)
	return in + share(long-2*in, i, n-1)
}

// stagger returns how far across a lap screw i stands: in turn a quarter from either edge, or in the middle of a narrow lap.
func stagger(short, edge nm, i int) nm {
	if short < 4*edge {
		return short / 2
	}
	if i%2 == 0 {
		return short / 4
	}
	return short - short/4
}

// spot places a distance in a stretch, counted from its left or front end in that half of the bed and from its other end in the
// other half, so that mirror images are drilled as mirror images.
func (b *builder) spot(s span, axis int, in nm) nm {
	if axis < 2 && s.mid() > b.heart(axis) {
		return s.hi - in
	}
	return s.lo + in
}

func (b *builder) hole(part int, joint string, dia nm, at [3]nm) {
	l, c := b.lies[part], b.solids[part]
	h := furniture.Hole{Joint: joint, Along: at[l[0]] - c[l[0]].lo, Across: at[l[1]] - c[l[1]].lo, Dia: dia}
	if l.odd() {
		h.Across = c[l[1]].hi - at[l[1]]
	}
	b.drilled = append(b.drilled, drilled{part, h})
}

// holeAt adds a hole at a point, for parts that do not lie along the axes.
func (b *builder) holeAt(part int, joint string, dia nm, at geom.V3) {
	p := &b.bed.Parts[part]
	v := at.Sub(p.Box.C)
	b.drilled = append(b.drilled, drilled{part, furniture.Hole{
		Joint: joint, Dia: dia,
		Along:  length.FromMM(v.Dot(p.Box.Ax[0]) + p.Box.Half.X),
		Across: length.FromMM(v.Dot(p.Box.Ax[1]) + p.Box.Half.Y),
	}})
}

// A drilled hole waits for the others of its part, so that all holes of a bed share one piece of memory.
type drilled struct {
	part int
	hole furniture.Hole
}

// giveHoles hands the holes to their parts, in the order they were drilled.
func (b *builder) giveHoles() {
	counts := make([]int, len(b.bed.Parts))
	for _, d := range b.drilled {
		counts[d.part]++
	}
	all := make([]furniture.Hole, 0, len(b.drilled))
	for i, n := range counts {
		if n > 0 {
			b.bed.Parts[i].Holes = all[len(all) : len(all) : len(all)+n]
			all = all[:len(all)+n]
		}
	}
	for _, d := range b.drilled {
		p := &b.bed.Parts[d.part]
		p.Holes = append(p.Holes, d.hole)
	}
}
