package survey

import (
	"bunkwright/room"
)

// ceilings makes each face a plane over the plan: its height at corner A and its slopes along x and y.
func (b *builder) ceilings() {
	b.s.Layout.Ceilings = make([]CeilingRefs, len(b.s.Room.Ceilings))
	for i, c := range b.s.Room.Ceilings {
		key := "ceiling." + keyOr(c.Key, i)
		refs := &b.s.Layout.Ceilings[i]
		refs.Deep = b.quantity(key+".deep", c.Deep, 0)
		b.plane(key, c, refs)
	}
}

// plane makes a face from its height readings. A level face may tilt by what is usual in houses; a sloped one follows its readings
// alone, but keeps its height along the wall that the job names.
func (b *builder) plane(key string, c room.Ceiling, refs *CeilingRefs) {
	start := 0.0
	for _, h := range c.Heights {
		if len(h.Height) > 0 {
			start = h.Height[0].Value.MM()
			break
		}
	}
	if start == 0 {
		return
	}
	refs.Z, refs.SlopeX, refs.SlopeY = b.unknown(key+".z", start), b.unknown(key+".slope_x", 0), b.unknown(key+".slope_y", 0)
	switch {
	case !c.Sloped:
		b.suppose(LinearEquation(key+".level_x", []Term{{int(refs.SlopeX - 1), 1}}, 0, 0, levelSlope))
		b.suppose(LinearEquation(key+".level_y", []Term{{int(refs.SlopeY - 1), 1}}, 0, 0, levelSlope))
	case c.Along != "" && b.s.wallIndex(c.Along) >= 0:
		d := b.dir(b.s.wallIndex(c.Along))
		b.suppose(LinearEquation(key+".level_along", []Term{{int(refs.SlopeX - 1), d.x}, {int(refs.SlopeY - 1), d.y}}, 0, 0, levelSlope))
	}
	for k, h := range c.Heights {
		b.height(key+".height."+keyOr(h.Key, k), h, refs)
	}
}

// height observes one reading of a face at a corner or a spot.
func (b *builder) height(key string, h room.Height, refs *CeilingRefs) {
	at, ok := b.point(key, h)
	if !ok {
		return
	}
	key += ".height"
	b.read(key, h.Height, func(v, u float64) Equation {
		unknowns := append([]int{int(refs.Z - 1), int(refs.SlopeX - 1), int(refs.SlopeY - 1)}, at.unknowns...)
		return Equation{Key: key, Observed: v, Sigma: u, Unknowns: unknowns, Place: len(at.unknowns), Predict: func(x, slope []float64) float64 {
			p, dp := at.where(x[3:])
			slope[0], slope[1], slope[2] = 1, p.x, p.y
			for k := range dp {
				slope[3+k] = x[1]*dp[k].x + x[2]*dp[k].y
			}
			return x[0] + x[1]*p.x + x[2]*p.y
		}}
	})
}

// planPoint is a point in plan that moves with some unknowns.
type planPoint struct {
	unknowns []int
	where    func(x []float64) (p vec2, dp []vec2)
}

// point finds where a height was read: at a corner, or along a wall and out from it.
func (b *builder) point(key string, h room.Height) (planPoint, bool) {
	if i := b.cornerIndex(h.Corner); h.Corner != "" && i >= 0 {
		return b.cornerPoint(i), true
	}
	wall, fromEnd := b.end(h.Wall, h.From)
	at, out := b.quantity(key+".at", h.At, 0), b.quantity(key+".out", h.Out, 0)
	if wall < 0 || at == 0 || out == 0 {
		return planPoint{}, false
	}
	return b.spotPoint(wall, fromEnd, at, out), true
}

func (b *builder) cornerPoint(i int) planPoint {
	x, y := b.s.Layout.X[i], b.s.Layout.Y[i]
	var p planPoint
	for _, r := range []Ref{x, y} {
		if r > 0 {
			p.unknowns = append(p.unknowns, int(r-1))
		}
	}
	p.where = func(v []float64) (vec2, []vec2) {
		var at vec2
		var dp []vec2
		k := 0
		if x > 0 {
			at.x, dp, k = v[k], append(dp, vec2{1, 0}), k+1
		}
		if y > 0 {
			at.y, dp = v[k], append(dp, vec2{0, 1})
		}
		return at, dp
	}
	return p
}

// spotPoint keeps the wall where the sketch has it: what a wall's own uncertainty adds to a height read a little beside is second
// order.
func (b *builder) spotPoint(wall int, fromEnd bool, at, out Ref) planPoint {
	n := len(b.plan)
	d, from := b.dir(wall), b.plan[wall]
	in := vec2{d.y, -d.x}
	if fromEnd {
		from, d = b.plan[(wall+1)%n], vec2{-d.x, -d.y}
	}
	return planPoint{
		unknowns: []int{int(at - 1), int(out - 1)},
		where: func(v []float64) (vec2, []vec2) {
			return vec2{from.x + d.x*v[0] + in.x*v[1], from.y + d.y*v[0] + in.y*v[1]}, []vec2{d, in}
		},
	}
}
