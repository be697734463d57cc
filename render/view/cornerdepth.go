package view

import (
	"math"
	"slices"

	"bunkwright/room/geom"
)

// leastOver is the least area on paper, mm², over which one block has to lie before another for their order to count.
const leastOver = 0.5

// cutRounds is how often blocks that lie over each other in a ring are cut in two before they are drawn as they come.
const cutRounds = 4

// inDepth returns the blocks in an order in which each comes after everything it hides. Bodies that lie before each other in a ring, as
// three sticks can, are cut in two until they do not.
func inDepth(v *cornerView, blocks []block3) []block3 {
	list := slices.Clone(blocks)
	for round := 0; ; round++ {
		first, ring, last := sorted(behind(v, list))
		if len(ring) == 0 || round == cutRounds {
			return picked(list, slices.Concat(first, ring, last))
		}
		for _, i := range ring {
			other := list[i].halve(v)
			list = append(list, other)
		}
	}
}

func picked(list []block3, order []int) []block3 {
	out := make([]block3, len(order))
	for i, k := range order {
		out[i] = list[k]
	}
	return out
}

// behind returns for every block which ones it hides some of.
func behind(v *cornerView, list []block3) [][]int {
	hides := make([][]int, len(list))
	for i := range list {
		for j := range i {
			a, b := &list[i], &list[j]
			if a.solid == b.solid || a.hi.X <= b.lo.X || b.hi.X <= a.lo.X || a.hi.Y <= b.lo.Y || b.hi.Y <= a.lo.Y {
				continue
			}
			at, ok := v.overlapOf(a.outline, b.outline)
			if !ok {
				continue
			}
			if a.depthAt(v, at) > b.depthAt(v, at) {
				hides[i] = append(hides[i], j)
			} else {
				hides[j] = append(hides[j], i)
			}
		}
	}
	return hides
}

// overlapOf returns a point well within two convex outlines. Where bodies do not enter each other, which is nearer there is nearer everywhere.
func (v *cornerView) overlapOf(p, q geom.Polygon) (geom.V2, bool) {
	for i := range q { // most outlines are parted by a side of one of them
		if a, b := q.Edge(i); toTheRight(p, a, b.Sub(a)) {
			return geom.V2{}, false
		}
	}
	v.kept = append(v.kept[:0], p...)
	for i := range q {
		a, b := q.Edge(i)
		v.clip(a, b.Sub(a))
	}
	if len(v.kept) < 3 || v.kept.Area() < leastOver {
		return geom.V2{}, false
	}
	var mid geom.V2
	for _, c := range v.kept {
		mid = mid.Add(c)
	}
	return mid.Mul(1 / float64(len(v.kept))), true
}

// clip keeps what lies on the left of the line through a along u, as geom.Polygon.Clip does, without asking for memory each time.
func (v *cornerView) clip(a, u geom.V2) {
	out := v.spare[:0]
	for i := range v.kept {
		q, r := v.kept.Edge(i)
		s, t := u.Cross(q.Sub(a)), u.Cross(r.Sub(a))
		if s >= 0 {
			out = append(out, q)
		}
		if s > 0 && t < 0 || s < 0 && t > 0 {
			out = append(out, q.Lerp(r, s/(s-t)))
		}
	}
	v.kept, v.spare = out, v.kept
}

// toTheRight tells whether an outline lies wholly to the right of the line through a along u.
func toTheRight(p geom.Polygon, a, u geom.V2) bool {
	for _, c := range p {
		if u.Cross(c.Sub(a)) > 0 {
			return false
		}
	}
	return true
}

// depthAt returns how near the middle of the block is to who looks, at a place on paper.
func (b *block3) depthAt(v *cornerView, at geom.V2) float64 {
	p := v.mid.Add(v.right.Mul(at.X)).Add(v.up.Mul(at.Y))
	lo, hi := math.Inf(-1), math.Inf(1)
	for k := range b.faces {
		f := &b.faces[k]
		switch room := f.c - f.n.Dot(p); {
		case f.toward > leastTurned:
			hi = min(hi, room/f.toward)
		case f.toward < -leastTurned:
			lo = max(lo, room/f.toward)
		}
	}
	return (lo + hi) / 2
}

// sorted returns an order in which everything comes after what it hides: what can be drawn first, what lies in rings or between them, and
// what comes after those.
func sorted(hides [][]int) (first, ring, last []int) {
	hidden := make([][]int, len(hides))
	for i, list := range hides {
		for _, j := range list {
			hidden[j] = append(hidden[j], i)
		}
	}
	done := make([]bool, len(hides))
	first = peeled(hides, hidden, done)
	last = peeled(hidden, hides, done)
	slices.Reverse(last)
	for i, d := range done {
		if !d {
			ring = append(ring, i)
		}
	}
	return first, ring, last
}

// peeled takes away, one after the other, what waits for nothing that is left (Kahn 1962). Waits and waiting are each other's reverse.
func peeled(waits, waiting [][]int, done []bool) (order []int) {
	left := make([]int, len(waits))
	for i, list := range waits {
		for _, j := range list {
			if !done[j] {
				left[i]++
			}
		}
		if left[i] == 0 && !done[i] {
			order = append(order, i)
		}
	}
	for k := 0; k < len(order); k++ {
		done[order[k]] = true
		for _, i := range waiting[order[k]] {
			if left[i]--; left[i] == 0 && !done[i] {
				order = append(order, i)
			}
		}
	}
	return order
}

// lap is how far the halves of a block that is cut in two lap over each other, mm, so that no light shows between them.
const lap = 1.0

// halve cuts the block in two across its longest side; it becomes the first half, the other is returned.
func (b *block3) halve(v *cornerView) block3 {
	axis, long := 0, 0.0
	for k := range 3 {
		if l := b.at[0].Dist(b.at[1<<k]); l > long {
			axis, long = k, l
		}
	}
	other := *b
	share := 0.5 + min(lap/long, 0.25)
	for c := range b.at {
		if c>>axis&1 == 1 {
			continue
		}
		p, q := b.at[c], b.at[c|1<<axis]
		way := q.Sub(p)
		b.at[c|1<<axis], other.at[c] = p.Add(way.Mul(share)), q.Sub(way.Mul(share))
	}
	b.faces[2*axis+1].cut, other.faces[2*axis].cut = true, true
	b.look(v)
	other.look(v)
	return other
}
