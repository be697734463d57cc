package place

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// A floor is the floor of a room with what stands on it, to find the shortest way between two points: straight from corner to corner of what
// is in the way. How wide the way is, is asked elsewhere.
type floor struct {
	room   geom.Polygon
	things []geom.Polygon
	turns  []geom.V2 // where a way may turn
}

// touching is how deep a way may cut into an outline by rounding, mm.
const touching = 0.01

func newFloor(s *fit.Scene) *floor {
	f := &floor{room: s.Outline}
	for _, t := range s.FloorThings() {
		f.things = append(f.things, t.Outline)
		f.turns = append(f.turns, t.Outline...)
	}
	n := len(f.room)
	for i, p := range f.room {
		before, after := f.room[(i+n-1)%n], f.room[(i+1)%n]
		if p.Sub(before).Cross(after.Sub(p)) > 0 { // the room lies on the right of its walls: a left turn is a corner that stands into it
			f.turns = append(f.turns, p)
		}
	}
	return f
}

// way returns the length of the shortest way, NaN where there is none.
func (f *floor) way(from, to geom.V2) float64 {
	points := append([]geom.V2{from, to}, f.turns...)
	far := make([]float64, len(points))
	done := make([]bool, len(points))
	for i := range far {
		far[i] = math.Inf(1)
	}
	far[0] = 0
	for {
		at, least := -1, math.Inf(1)
		for i := range points {
			if left := far[i] + points[i].Dist(to); !done[i] && left < least {
				at, least = i, left
			}
		}
		switch at {
		case -1:
			return math.NaN()
		case 1:
			return far[1]
		}
		done[at] = true
		for i := range points {
			if d := far[at] + points[at].Dist(points[i]); !done[i] && d < far[i] && f.open(points[at], points[i]) {
				far[i] = d
			}
		}
	}
}

// open tells whether one can go straight from one point to another.
func (f *floor) open(a, b geom.V2) bool {
	for i := range f.room {
		if p, q := f.room.Edge(i); parts(a, b, p, q) {
			return false
		}
	}
	for _, t := range f.things {
		if cuts(a, b, t) {
			return false
		}
	}
	d := b.Sub(a)
	return d.Len() < touching || f.room.Contains(a.Add(d.Mul(0.5))) || f.room.Distance(a.Add(d.Mul(0.5))) < touching
}

// parts tells whether a wall truly crosses a way, its ends apart.
func parts(a, b, p, q geom.V2) bool {
	side := func(u, v, w geom.V2) float64 { return v.Sub(u).Unit().Cross(w.Sub(u)) }
	p1, q1, a1, b1 := side(a, b, p), side(a, b, q), side(p, q, a), side(p, q, b)
	return (p1 > touching && q1 < -touching || p1 < -touching && q1 > touching) && (a1 > touching && b1 < -touching || a1 < -touching && b1 > touching)
}

// cuts tells whether a way goes through a convex outline.
func cuts(a, b geom.V2, p geom.Polygon) bool {
	t0, t1 := 0.0, 1.0
	turn := 1.0
	if p.Area() < 0 {
		turn = -1
	}
	for i := range p {
		u, v := p.Edge(i)
		n := v.Sub(u).Left().Unit().Mul(turn) // into the outline
		from, to := a.Sub(u).Dot(n)-touching, b.Sub(u).Dot(n)-touching
		switch {
		case from <= 0 && to <= 0:
			return false
		case from < 0:
			t0 = max(t0, from/(from-to))
		case to < 0:
			t1 = min(t1, from/(from-to))
		}
	}
	return t0 < t1
}
