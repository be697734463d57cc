package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/room/geom"
)

// inset is how far bodies are taken smaller than they are, mm, so that parts that touch do not eat each other's edges.
const inset = 1e-3

// shortestLine is the shortest piece of an edge that is drawn, mm.
const shortestLine = 0.05

// line3 is a piece of an edge.
type line3 struct{ a, b geom.V3 }

// portion is a stretch of an edge: 0 is where that begins, 1 where it ends.
type portion struct{ from, to float64 }

// seenEdges returns what is seen of the edges of a block. An edge is seen where one of the two faces that meet in it is turned to who
// looks and no other block stands before it.
func (v *cornerView) seenEdges(i int) []line3 {
	var out []line3
	b := &v.blocks[i]
	for k := range 3 {
		x, y := (k+1)%3, (k+2)%3
		for c := range 8 {
			if c>>k&1 == 1 {
				continue
			}
			one, other := &b.faces[2*x+c>>x&1], &b.faces[2*y+c>>y&1]
			if one.toward <= leastTurned && other.toward <= leastTurned {
				continue
			}
			p, q := b.at[c], b.at[c|1<<k]
			for _, s := range unhidden(v.hiding(i, p, q)) {
				if along := q.Sub(p); along.Len()*(s.to-s.from) > shortestLine {
					out = append(out, line3{p.Add(along.Mul(s.from)), p.Add(along.Mul(s.to))})
				}
			}
		}
	}
	return out
}

// hiding returns the stretches of the edge of a block from p to q that other blocks hide.
func (v *cornerView) hiding(own int, p, q geom.V3) []portion {
	a, b := v.flat(p), v.flat(q)
	lo, hi := geom.V2{X: min(a.X, b.X), Y: min(a.Y, b.Y)}, geom.V2{X: max(a.X, b.X), Y: max(a.Y, b.Y)}
	far := min(p.Dot(v.toward), q.Dot(v.toward))
	var out []portion
	for i := range v.blocks {
		o := &v.blocks[i]
		if i == own || o.near <= far || o.hi.X <= lo.X || o.lo.X >= hi.X || o.hi.Y <= lo.Y || o.lo.Y >= hi.Y {
			continue
		}
		if s, ok := o.hides(p, q.Sub(p)); ok {
			out = append(out, s)
		}
	}
	return out
}

// hides returns the portion of the line from p along e that the block hides. The point at t of the line is hidden where, for some s of 0 or
// more, p + t e + s toward lies within all six faces. Each face bounds s from below or from above by a line in t, or t itself; t is hidden
// where every lower bound lies under every upper one.
func (b *block3) hides(p, e geom.V3) (portion, bool) {
	var below, above [7]bound
	lows, highs := 1, 0 // the first lower bound is s = 0
	t := portion{0, 1}
	for k := range b.faces {
		f := &b.faces[k]
		room, along := f.c-inset-f.n.Dot(p), f.n.Dot(e)
		switch {
		case f.toward > leastTurned:
			above[highs] = bound{room / f.toward, -along / f.toward}
			highs++
		case f.toward < -leastTurned:
			below[lows] = bound{room / f.toward, -along / f.toward}
			lows++
		default:
			t.keep(room, -along)
		}
	}
	for _, u := range above[:highs] {
		for _, l := range below[:lows] {
			t.keep(u.at-l.at, u.by-l.by)
		}
	}
	return t, t.to > t.from
}

// bound is a line in t: at + by t.
type bound struct{ at, by float64 }

// keep keeps of a portion where at + by t is more than 0.
func (s *portion) keep(at, by float64) {
	switch {
	case math.Abs(by) < 1e-12:
		if at <= 0 {
			s.to = s.from
		}
	case by > 0:
		s.from = max(s.from, -at/by)
	default:
		s.to = min(s.to, -at/by)
	}
}

// unhidden returns what hidden stretches leave of 0 to 1.
func unhidden(hidden []portion) []portion {
	slices.SortFunc(hidden, func(a, b portion) int { return cmp.Compare(a.from, b.from) })
	var out []portion
	at := 0.0
	for _, h := range hidden {
		if h.from > at {
			out = append(out, portion{at, h.from})
		}
		at = max(at, h.to)
	}
	if at < 1 {
		out = append(out, portion{at, 1})
	}
	return out
}
