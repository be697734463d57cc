package geom

import "slices"

// A Narrow is the place that decides how wide a disc can go along.
type Narrow struct {
	Width float64 // of the disc, mm; 0 where not even a point gets through
	I, J  int     // the two obstacles that it goes between; -1 where a gate itself is too tight
	P, Q  V2      // the nearest points of those two
}

// How exact the width is, mm: where a gate decides it is bisected; between two obstacles it is exact but for rounding, which touch allows
// for.
const (
	bisected = 1e-7
	touch    = 1e-8
)

// WidestDisc returns the widest disc that can go along from one gate to the other between obstacles: convex outlines, where two points
// are a straight wall. At either end the disc touches the gate from its side, at any place between the gate's ends.
//
// A disc gets no further where obstacles stand nearer together than it is wide, one after the other, in a chain that parts the gates:
// that closes in a ring round one of them, or runs from wall to wall between them. Obstacles are therefore joined pair by pair, nearest
// first, keeping for each whether the way to it crosses the straight line between the two places of the disc; the first pair that
// closes a ring with an odd number of crossings is the narrow. Convex outlines that overlap, made fatter by the disc, overlap in
// one piece, so no other ring can part the gates.
func WidestDisc(obstacles []Polygon, from, to Gate) Narrow {
	c := course{obstacles: obstacles, from: from.approach(obstacles), to: to.approach(obstacles)}
	c.measure()
	return c.widest()
}

// course is the search for a narrow.
type course struct {
	obstacles []Polygon
	from, to  approach
	pairs     []pair // in the order of the obstacles
	order     []rank // nearest first
	parent    []int
	odd       []bool // whether the way to the parent crosses the line between the gates an odd number of times
}

type pair struct {
	gap  float64
	i, j int
	p, q V2
}

// rank is a pair's place in the order: small, since it is moved about while sorting.
type rank struct {
	gap float64
	k   int
}

func (c *course) measure() {
	n := len(c.obstacles)
	extents := make([]extent, n)
	for i, p := range c.obstacles {
		extents[i] = extentOf(p)
	}
	c.pairs, c.order = make([]pair, 0, n*(n-1)/2), make([]rank, 0, n*(n-1)/2)
	for i, p := range c.obstacles {
		for j := i + 1; j < n; j++ {
			d, on, to := extents[i].closest(p, c.obstacles[j], extents[j])
			c.order = append(c.order, rank{d, len(c.pairs)})
			c.pairs = append(c.pairs, pair{d, i, j, on, to})
		}
	}
	slices.SortFunc(c.order, func(a, b rank) int {
		switch {
		case a.gap < b.gap:
			return -1
		case a.gap > b.gap:
			return 1
		}
		return a.k - b.k
	})
	c.parent, c.odd = make([]int, n), make([]bool, n)
}

// widest looks for the last pair through which a disc as wide as its gap still gets: what is possible for a disc is possible for every
// narrower one.
func (c *course) widest() Narrow {
	n := len(c.pairs)
	lo, hi := -1, n // order[lo] lets a disc of its gap through, order[hi] does not
	for hi-lo > 1 {
		if mid := (lo + hi) / 2; c.passes(c.order[mid].gap/2 - touch) {
			lo = mid
		} else {
			hi = mid
		}
	}
	width := 0.0
	if lo >= 0 {
		width = c.order[lo].gap
		if !c.passes(width/2 + bisected) {
			k := c.pairs[c.order[lo].k]
			return Narrow{width, k.i, k.j, k.p, k.q}
		}
	}
	return Narrow{Width: c.tightGate(width, hi), I: -1, J: -1}
}

// widestOf is more than any room is wide, mm.
const widestOf = 1e6

// tightGate bisects between the width that passes and the gap of the next pair.
func (c *course) tightGate(width float64, next int) float64 {
	lo, hi := width/2, 0.0
	if next < len(c.pairs) {
		hi = c.order[next].gap / 2
	} else {
		hi = lo + widestOf
	}
	for hi-lo > bisected/2 {
		if mid := (lo + hi) / 2; c.passes(mid) {
			lo = mid
		} else {
			hi = mid
		}
	}
	if lo < bisected {
		return 0
	}
	return 2 * lo
}

// passes tells whether a disc of radius r gets from gate to gate.
func (c *course) passes(r float64) bool {
	var room [2][8]V2
	starts := c.from.places(r, room[0][:0])
	ends := c.to.places(r, room[1][:0])
	for _, s := range starts {
		for _, t := range ends {
			if !c.parted(s, t, r) {
				return true
			}
		}
	}
	return false
}

// parted tells whether obstacles nearer together than 2 r stand in a ring that parts s from t.
func (c *course) parted(s, t V2, r float64) bool {
	for i := range c.parent {
		c.parent[i], c.odd[i] = i, false
	}
	for _, o := range c.order {
		if o.gap >= 2*r {
			return false
		}
		k := &c.pairs[o.k]
		a, oddA := c.root(k.i)
		b, oddB := c.root(k.j)
		odd := oddA != oddB != c.crosses(k, s, t)
		if a != b {
			c.parent[a], c.odd[a] = b, odd
		} else if odd {
			return true
		}
	}
	return false
}

func (c *course) root(i int) (root int, odd bool) {
	for c.parent[i] != i {
		odd = odd != c.odd[i]
		i = c.parent[i]
	}
	return i, odd
}

// crosses tells whether the way from the first corner of one obstacle over the nearest points to the first corner of the other crosses
// the line s to t an odd number of times.
func (c *course) crosses(k *pair, s, t V2) bool {
	way := [4]V2{c.obstacles[k.i][0], k.p, k.q, c.obstacles[k.j][0]}
	u := t.Sub(s)
	odd, left := false, u.Cross(way[0].Sub(s)) > 0
	for i := 1; i < len(way); i++ {
		was := left
		left = u.Cross(way[i].Sub(s)) > 0
		if was == left {
			continue
		}
		step := way[i].Sub(way[i-1])
		if at := way[i-1].Sub(s).Cross(step) / u.Cross(step); 0 < at && at < 1 {
			odd = !odd
		}
	}
	return odd
}
