package geom

import (
	"cmp"
	"math"
	"slices"
)

// A Gate is a straight line that a disc touches from one side: its ends, and the unit direction, square to it, in which the disc lies.
type Gate struct {
	A, B V2
	Side V2
}

// approach is a gate with the obstacles before it, seen from it: x along from A, y towards the disc.
type approach struct {
	Gate
	long   float64
	along  V2
	edges  []edge  // of one obstacle after the other
	groups []group // which of them are one obstacle's
}

// group is the edges of one obstacle: where they end, and what they lie between.
type group struct {
	end            int
	lo, hi, height float64 // least and greatest x, least y
}

// clear tells whether an obstacle lies beside every disc of radius r that touches a gate of a length.
func (g *group) clear(r, long float64) bool { return g.height >= 2*r || g.hi <= -r || g.lo >= long+r }

// edge is one side of an obstacle, with the unit normal that points along the gate.
type edge struct{ a, b, n V2 }

// behind is how far an obstacle may stand out before a gate and still count as behind it, mm: rounding of what stands in line with it.
const behind = 1e-6

func (g Gate) approach(obstacles []Polygon) approach {
	p := approach{Gate: g, long: g.A.Dist(g.B), along: g.B.Sub(g.A).Unit()}
	if p.long == 0 {
		p.along = g.Side.Right()
	}
	p.edges, p.groups = make([]edge, 0, 4*len(obstacles)), make([]group, 0, len(obstacles))
	for _, o := range obstacles {
		all := group{lo: math.Inf(1), hi: math.Inf(-1), height: math.Inf(1)}
		for i := range o {
			e := edge{a: p.seen(o[i]), b: p.seen(o[(i+1)%len(o)])}
			if e.a.Y <= behind && e.b.Y <= behind {
				continue
			}
			if e.n = e.b.Sub(e.a).Left().Unit(); e.n.X < 0 {
				e.n = e.n.Mul(-1)
			}
			all.lo, all.hi = min(all.lo, e.a.X, e.b.X), max(all.hi, e.a.X, e.b.X)
			all.height = min(all.height, e.a.Y, e.b.Y)
			p.edges = append(p.edges, e)
		}
		all.end = len(p.edges)
		p.groups = append(p.groups, all)
	}
	return p
}

func (p *approach) seen(q V2) V2 {
	d := q.Sub(p.A)
	return V2{d.Dot(p.along), d.Dot(p.Side)}
}

// places returns one place of the disc's centre for every stretch of the gate along which a disc of radius r can touch it.
func (p *approach) places(r float64, into []V2) []V2 {
	var room [16][2]float64
	taken := p.taken(r, room[:0])
	at := 0.0
	free := func(to float64) {
		if to >= at {
			into = append(into, p.A.Add(p.along.Mul((at+to)/2)).Add(p.Side.Mul(r)))
		}
	}
	for _, x := range taken {
		free(min(x[0], p.long))
		if at = max(at, x[1]); at > p.long {
			return into
		}
	}
	free(p.long)
	return into
}

// taken returns the stretches of the gate where a disc of radius r that touches it would meet an obstacle, in the order in which they
// begin.
func (p *approach) taken(r float64, into [][2]float64) [][2]float64 {
	from := 0
	for i := range p.groups {
		g := &p.groups[i]
		edges := p.edges[from:g.end]
		from = g.end
		if g.clear(r, p.long) {
			continue
		}
		if lo, hi := stretch(edges, r); lo < hi && hi > 0 && lo < p.long {
			into = append(into, [2]float64{lo, hi})
		}
	}
	slices.SortFunc(into, func(a, b [2]float64) int { return cmp.Compare(a[0], b[0]) })
	return into
}

// stretch returns the stretch that one obstacle takes. The disc's reach at a height y over the gate is the root of y (2 r - y), so
// the two ends are at a corner of the obstacle or where an edge touches the disc.
func stretch(edges []edge, r float64) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for i := range edges {
		e := &edges[i]
		for _, c := range [2]V2{e.a, e.b} {
			if h := c.Y * (2*r - c.Y); c.Y > behind && h > 0 {
				h = math.Sqrt(h)
				lo, hi = min(lo, c.X-h), max(hi, c.X+h)
			}
		}
		if at, ok := e.at(r * (1 - e.n.Y)); ok {
			hi = max(hi, at+r*e.n.X)
		}
		if at, ok := e.at(r * (1 + e.n.Y)); ok {
			lo = min(lo, at-r*e.n.X)
		}
	}
	return lo, hi
}

// at returns x where the edge passes a height that lies over the gate.
func (e *edge) at(y float64) (x float64, ok bool) {
	if y <= behind || (y < e.a.Y) == (y < e.b.Y) {
		return 0, false
	}
	return e.a.X + (e.b.X-e.a.X)*(y-e.a.Y)/(e.b.Y-e.a.Y), true
}
