package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// ceilings gives the height of the ceiling over points of the plan: that of the lowest face there.
type ceilings struct {
	s     *fit.Scene
	faces []face
}

// face is one plane of the ceiling.
type face struct {
	ref            string
	z, slopeX      float64
	slopeY         float64
	over           geom.Polygon // what it covers; nil: all of the room, or a strip
	strip          *fit.Wall
	deep           float64
	level, missing bool
}

func ceilingsOf(s *fit.Scene) ceilings {
	c := ceilings{s: s}
	for i, f := range s.Job.Room.Ceilings {
		refs := &s.Survey.Layout.Ceilings[i]
		n := face{ref: "ceiling." + keyOr(f.Key, i), strip: wallNamed(s, f.Strip), deep: s.Survey.Value(refs.Deep)}
		n.z, n.slopeX, n.slopeY = s.Survey.Value(refs.Z), s.Survey.Value(refs.SlopeX), s.Survey.Value(refs.SlopeY)
		n.over = cornersOf(s, f.Corners)
		n.level = n.slopeX == 0 && n.slopeY == 0
		n.missing = math.IsNaN(n.z+n.slopeX+n.slopeY) || n.strip != nil && math.IsNaN(n.deep)
		c.faces = append(c.faces, n)
	}
	return c
}

// cornersOf returns the outline over corner letters.
func cornersOf(s *fit.Scene, letters string) geom.Polygon {
	var out geom.Polygon
	for _, l := range letters {
		if i := slices.Index([]rune(s.Job.Room.Outline), l); i >= 0 && i < len(s.Outline) {
			out = append(out, s.Outline[i])
		}
	}
	return out
}

func (f *face) height(q geom.V2) float64 { return f.z + f.slopeX*q.X + f.slopeY*q.Y }

// covers tells whether the face lies over a point.
func (f *face) covers(q geom.V2) bool {
	switch {
	case f.missing:
		return false
	case f.strip != nil:
		along, out := f.strip.Along(q)
		return out <= f.deep && along >= -1 && along <= f.strip.Len+1
	}
	return len(f.over) < 3 || f.over.Contains(q)
}

// at returns the height of the ceiling over a point and the face it belongs to; ok is false where no face is known.
func (c ceilings) at(q geom.V2) (z float64, which int, ok bool) {
	z = math.Inf(1)
	for i := range c.faces {
		if f := &c.faces[i]; f.covers(q) && f.height(q) < z {
			z, which, ok = f.height(q), i, true
		}
	}
	return z, which, ok
}

// crossing returns the pieces of the line through a along dir that lie inside an outline.
func crossing(p geom.Polygon, a, dir geom.V2) [][2]geom.V2 {
	var ts []float64
	for i := range p {
		b, c := p.Edge(i)
		sb, sc := dir.Cross(b.Sub(a)), dir.Cross(c.Sub(a))
		if (sb < 0) != (sc < 0) {
			ts = append(ts, b.Lerp(c, sb/(sb-sc)).Sub(a).Dot(dir))
		}
	}
	slices.SortFunc(ts, cmp.Compare[float64])
	var out [][2]geom.V2
	for i := 1; i < len(ts); i += 2 {
		out = append(out, [2]geom.V2{a.Add(dir.Mul(ts[i-1])), a.Add(dir.Mul(ts[i]))})
	}
	return out
}

// ceilingEdges draws where one face of the ceiling meets the next.
func (p *planner) ceilingEdges() {
	c := ceilingsOf(p.s)
	for i := range c.faces {
		f := &c.faces[i]
		switch {
		case f.missing:
		case f.strip != nil:
			words := "slope starts"
			if f.level {
				words = "lower ceiling"
			}
			for _, seg := range p.across(f.strip.Point(0, f.deep), f.strip.Dir) {
				p.stroke(f.ref, p.line(seg[0], seg[1]), p.st.Behind)
				p.nameEdge(f.ref, seg, words)
			}
		case len(f.over) > 2:
			p.stroke(f.ref, p.shape(f.over), p.st.Behind)
		default:
			for j := i + 1; j < len(c.faces); j++ {
				p.fold(c, i, j)
			}
		}
	}
}

// leastFold is the difference of slope from which two faces are drawn apart: level ceilings are never quite level.
const leastFold = 0.03

// fold draws the line along which two faces over the whole room are equally high, where no other face hangs lower.
func (p *planner) fold(c ceilings, i, j int) {
	f, g := &c.faces[i], &c.faces[j]
	n := geom.V2{X: f.slopeX - g.slopeX, Y: f.slopeY - g.slopeY}
	if g.missing || g.strip != nil || len(g.over) > 2 || n.Len() < leastFold {
		return
	}
	a := n.Mul(-(f.z - g.z) / n.Dot(n))
	for _, seg := range p.across(a, n.Left().Unit()) {
		mid := seg[0].Lerp(seg[1], 0.5)
		if z, _, ok := c.at(mid); ok && z > f.height(mid)-1 {
			p.stroke(f.ref, p.line(seg[0], seg[1]), p.st.Behind)
			p.nameEdge(f.ref, seg, "slope starts")
		}
	}
}

// nameEdge names an edge of the ceiling near the end that is farther from the bed.
func (p *planner) nameEdge(ref string, seg [2]geom.V2, words string) {
	at := seg[0].Lerp(seg[1], 0.5)
	if p.s.Stands {
		bed := p.s.Boxes[0].C.XY()
		if seg[0].Dist(bed) > seg[1].Dist(bed) {
			seg[0], seg[1] = seg[1], seg[0]
		}
		at = seg[0].Lerp(seg[1], 0.88)
	}
	p.name(ref, p.on(at), 20, p.soft(words))
}
