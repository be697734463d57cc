package bunk

import (
	"math"
	"strconv"

	"bunkwright/furniture"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// slopingStiles builds stiles that tilt out at the foot. Their ends are cut level. A hanger stands flat before each support and outside
// the stile, which laps it: screws through a slope's end grain would hold nothing.
func (b *builder) slopingStiles(l *lean) {
	k := b.s.Ladder
	standing, _, _ := l.lies()
	outside := beside(l.clear, k.Stock.Thick)
	for i, across := range beside(span{outside[0].lo, outside[1].hi}, k.Stock.Thick) {
		n := strconv.Itoa(i + 1)
		h := b.ladderPart("hanger."+n, RoleHanger, "hanger "+n, k.Stock)
		hanger := b.add(h, l.place(across, span{0, l.wide}, span{b.d.up.low, l.top}), standing)
		b.join(link{a: l.supports[i], b: hanger, from: l.supports[i], fastener: b.s.Fastener, count: 3, zone: b.reach(l, i)})
		stile := b.slopingStile(l, i, outside[i])
		b.ref.stiles = append(b.ref.stiles, stile)
		b.pin(link{a: hanger, b: stile, from: hanger, count: 3}, b.lapPoints(l, across))
		if i == 1 {
			b.pair(hanger-2, hanger)
		}
	}
}

// slopingStile adds a stile as the blank that its two level cuts leave: it reaches from the toe of the lower cut to the heel of the
// upper one, so that the corners that the cuts take off lie under the floor and over the top.
func (b *builder) slopingStile(l *lean, i int, across span) int {
	n := strconv.Itoa(i + 1)
	sin, cos := math.Sincos(l.angle)
	wide := l.wide.MM()
	p := b.ladderPart("stile."+n, RoleStile, "stile "+n, b.s.Ladder.Stock)
	p.Length = length.FromMM((l.top.MM() + wide*cos) / sin)
	p.Cuts = []furniture.Cut{
		{Kind: furniture.Bevel, End: 0, Angle: 90 - b.s.Ladder.Angle}, {Kind: furniture.Bevel, End: 1, Angle: b.s.Ladder.Angle - 90},
	}
	origin := l.point(0, 0, 0)
	along, out := l.point(0, -cos, sin).Sub(origin), l.point(0, sin, cos).Sub(origin)
	half := geom.V3{X: p.Length.MM() / 2, Y: wide / 2, Z: across.size().MM() / 2}
	mid := l.top.MM() / 2
	p.Box = geom.Box{C: l.point(middle(across), l.centre(mid), mid), Ax: [3]geom.V3{along, out, along.Cross(out)}, Half: half}
	lo, hi := p.Box.Bounds()
	hull := cuboid{outward(lo.X, hi.X), outward(lo.Y, hi.Y), outward(lo.Z, hi.Z)}
	hull[l.across] = across
	standing, _, _ := l.lies()
	return b.keep(p, hull, standing)
}

func outward(lo, hi float64) span { return span{length.FromMM(lo), length.FromMM(hi)} }

// pin joins parts of which one tilts: they meet across the ladder, and the screw places are given.
func (b *builder) pin(l link, at []geom.V3) {
	l.fastener = b.s.Fastener
	j := b.newJoint(l)
	j.FaceA, j.FaceB = "face", "face"
	if b.bed.Parts[l.b].Role == RoleTread {
		j.FaceA, j.FaceB = "inside face", "end"
	}
	b.bed.Joints = append(b.bed.Joints, j)
	for _, p := range at {
		b.holeAt(l.from, j.ID, b.fastener(l.fastener).D, p)
	}
}

// pins returns two screw places at the middle height of a block or tread, a sixth of its depth from its middle.
func (b *builder) pins(l *lean, part int) []geom.V3 {
	box := b.bed.Parts[part].Box
	_, tread, _ := l.lies()
	c := b.solids[part]
	sixth := unit[tread[1]].Mul(c[tread[1]].size().MM() / 6)
	return []geom.V3{box.C.Sub(sixth), box.C.Add(sixth)}
}

// lapPoints returns three screw places where a hanger and its stile lap, on the middle line of the lap.
func (b *builder) lapPoints(l *lean, across span) []geom.V3 {
	edge := max(b.fastener(b.s.Fastener).EdgeDistance, l.wide/8).MM()
	wide, top := l.wide.MM(), l.top.MM()
	down := min((wide-2*edge)*math.Tan(l.angle), (l.top - b.d.up.low).MM()) // the lap narrows to twice the edge distance there
	var out []geom.V3
	for _, part := range [3]float64{0.15, 0.5, 0.85} {
		z := top - down*part
		back := (top - z) / math.Tan(l.angle)
		out = append(out, l.point(middle(across), (back+min(wide, back+wide/math.Sin(l.angle)))/2, z))
	}
	return out
}
