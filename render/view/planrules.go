package view

import (
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// squareWithin is how far a wall may turn from the paper's edges and still be dimensioned level or upright: sine of about 2 degrees.
const squareWithin = 0.035

// sideOf returns the side of the paper that a wall faces outwards.
func (p *planner) sideOf(w *fit.Wall) side {
	out := p.dir(w.In).Mul(-1)
	switch {
	case math.Abs(out.X) < squareWithin && out.Y > 0:
		return above
	case math.Abs(out.X) < squareWithin:
		return below
	case math.Abs(out.Y) < squareWithin && out.X > 0:
		return right
	case math.Abs(out.Y) < squareWithin:
		return left
	}
	return aslant
}

// rules draws the dimensions outside every wall: openings and bed on the inner rows, the whole length on the outer one.
func (p *planner) rules() {
	p.rulesOf(func(w *fit.Wall) [][]row {
		var levels [][]row
		for _, r := range append(p.rowsOf(p.alongWall(w), 0, w.Len), p.wholeRow(w)) {
			levels = append(levels, []row{r})
		}
		return levels
	})
}

// rulesOf draws the rows of every wall outside it, the innermost first; the rows of one level share a line.
func (p *planner) rulesOf(rowsOf func(*fit.Wall) [][]row) {
	var levels [aslant][][]rule // by side, the outermost first
	for i := range p.walls {
		w := &p.walls[i]
		k := p.sideOf(w.w)
		rows := rowsOf(w.w)
		if k == aslant {
			p.ruleAslant(w, rows)
			continue
		}
		for n, level := range backwards(rows) {
			if n == len(levels[k]) {
				levels[k] = append(levels[k], nil)
			}
			for _, r := range level {
				levels[k][n] = append(levels[k][n], p.ruleOf(k, w, r))
			}
		}
	}
	for k, list := range levels {
		slices.Reverse(list)
		for i := range list {
			list[i] = joinedRules(list[i])
		}
		p.ruleSide(side(k), p.outer(), list, p.letterReach())
	}
}

// backwards returns a list in the opposite order.
func backwards[T any](list []T) []T {
	out := slices.Clone(list)
	slices.Reverse(out)
	return out
}

// ruleOf puts a row of a wall on paper. Its extension lines start at the wall's outer face.
func (p *planner) ruleOf(k side, w *planWall, r row) rule {
	out := rule{spans: r.spans}
	for _, s := range r.stops {
		inner, outer := p.on(w.w.Point(s, 0)), p.on(w.point(s, w.deep))
		if k.level() {
			out.stops, out.from = append(out.stops, inner.X), append(out.from, outer.Y)
		} else {
			out.stops, out.from = append(out.stops, inner.Y), append(out.from, outer.X)
		}
	}
	return out
}

// wholeRow is the length of a wall.
func (p *planner) wholeRow(w *fit.Wall) row {
	key := "wall." + w.Key + ".length"
	span := render.Span{Ref: "reading." + key, Words: p.dim(w.Len, p.known.firm(key))}
	if !p.known.read(key) {
		span.Words, span.Ink = "("+p.dim(w.Len, true)+"?)", render.InkCannotTell
	}
	return row{stops: []float64{0, w.Len}, spans: []render.Span{span}}
}

// alongWall lists what takes a stretch of a wall.
func (p *planner) alongWall(w *fit.Wall) []ruled {
	if p.o.Sparse {
		return p.bedAlong(w)
	}
	return append(ruledOpenings(p.s, p.known, w), p.bedAlong(w)...)
}

// bedAlong returns the stretch of a wall that the bed takes: of the wall it stands at its length, of the wall at its nearer end its depth
// with the drawers pulled out and the floor before them.
func (p *planner) bedAlong(w *fit.Wall) []ruled {
	if !p.s.Stands {
		return nil
	}
	if w != p.s.At && w != p.endWall() {
		return nil
	}
	lo, hi := footAlong(p.s, w)
	list := []ruled{{lo: lo, hi: hi, ref: "bed"}}
	out := p.s.ToRoom.Dir(geom.V3{Y: -1}).XY()
	if len(p.s.Bed.Drawers) == 0 || math.Abs(out.Dot(w.Dir)) < 0.9 {
		return list
	}
	d := p.s.Bed.Drawers[0]
	travel, kneel := d.Travel, d.Travel+kneelDepth()
	if out.Dot(w.Dir) > 0 {
		return append(list, p.within(w, hi, hi+travel, d.ID), p.within(w, hi+travel, hi+kneel, "drawers.floor"))
	}
	return append(list, p.within(w, lo-travel, lo, d.ID), p.within(w, lo-kneel, lo-travel, "drawers.floor"))
}

// within keeps a stretch on the wall.
func (p *planner) within(w *fit.Wall, lo, hi float64, ref string) ruled {
	return ruled{lo: min(max(lo, 0), w.Len), hi: min(max(hi, 0), w.Len), ref: ref}
}

// endWall returns the wall at the nearer end of the bed, nil where neither neighbour stands across.
func (p *planner) endWall() *fit.Wall {
	n := len(p.s.Walls)
	var best *fit.Wall
	near := math.Inf(1)
	for _, i := range []int{p.s.At.Index + n - 1, p.s.At.Index + 1} {
		w := &p.s.Walls[i%n]
		if math.Abs(w.Dir.Dot(p.s.At.Dir)) > 0.3 {
			continue
		}
		if d := p.footOut(w); d >= -1 && d < near {
			best, near = w, d
		}
	}
	return best
}

// footOut returns how far the nearest corner of the bed stands out from a wall.
func (p *planner) footOut(w *fit.Wall) float64 {
	least := math.Inf(1)
	for _, q := range p.s.Bed.Foot {
		_, out := w.Along(p.s.ToRoom.Point(q.At(0)).XY())
		least = min(least, out)
	}
	return least
}

// outer returns the rectangle round the outer faces of the walls.
func (p *planner) outer() render.Rect {
	r := render.Around()
	for i := range p.walls {
		r = r.Union(render.Around(p.on(p.walls[i].outerB)))
	}
	return r
}

// ruleAslant draws the dimensions of a wall that is square to nothing along it, row by row.
func (p *planner) ruleAslant(w *planWall, levels [][]row) {
	out := p.dir(w.w.In).Mul(-1)
	step := render.Point{X: render.Paper(out.X), Y: render.Paper(-out.Y)}.Times(float64(p.st.Measure.Size * 2))
	base := step.Times(0.6)
	for _, level := range levels {
		base = base.Plus(step)
		for _, row := range level {
			for i, span := range row.spans {
				a := p.on(w.point(row.stops[i], w.deep)).Plus(base)
				b := p.on(w.point(row.stops[i+1], w.deep)).Plus(base)
				p.add(p.st.Dimension(render.Dimension{Ref: span.Ref, From: a, To: b, Words: span.Words, Ink: span.Ink})...)
			}
		}
	}
}
