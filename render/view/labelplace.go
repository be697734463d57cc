package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/render"
)

// place puts every label that was asked for where it is in nobody's way, signs first.
func (c *canvas) place() {
	if len(c.notes) == 0 || c.rough {
		return
	}
	b := render.Bounds(c.marks)
	if b.Empty() {
		b = render.Around(c.notes[0].home).Grow(50)
	}
	g := newCrowd(b)
	if c.apart {
		g.thin = apartInk
	}
	for i := range c.marks {
		g.mark(c.marks[i])
	}
	slices.SortStableFunc(c.notes, func(a, b label) int { return cmp.Compare(a.rank(), b.rank()) })
	for _, l := range c.notes {
		c.placeOne(g, l)
	}
	c.notes = nil
}

func (c *canvas) placeOne(g *crowd, l label) {
	w, h := l.size(c)
	mid, ok := c.free(g, l, w+c.st.Gap, h+c.st.Gap*0.5)
	if c.apart && !ok && l.rank() > 0 {
		if !l.signs {
			return
		}
		l.lines, l.signs, l.on = nil, false, lineGround // the sign alone
		w, h = l.size(c)
		mid, ok = c.free(g, l, w, h)
	}
	if !ok && !l.needed && l.only != (render.Rect{}) {
		return
	}
	if !ok && l.on == patchGround && l.only != (render.Rect{}) { // rather on a board behind than in the wrong place
		on := l
		on.on = thingGround
		mid, ok = c.free(g, on, w+c.st.Gap, h+c.st.Gap*0.5)
	}
	if !ok {
		l.only = render.Rect{}
		mid, _ = c.free(g, l, w+c.st.Gap, h+c.st.Gap*0.5)
	}
	if c.o.Beside && len(l.lines) > 0 && !(c.apart && l.carries(c)) && (!ok || mid.Minus(l.home).Length() > c.o.besideFar()) {
		return
	}
	marks := l.marks(c, mid)
	box := render.Around(render.Point{X: mid.X - w/2, Y: mid.Y - h/2}, render.Point{X: mid.X + w/2, Y: mid.Y + h/2})
	if l.strays(mid, box, c.st.Gap) {
		c.leader(g, l.ref, l.dot, box)
	}
	if l.on == patchGround || l.on == thingGround {
		ink := l.patch
		if ink == 0 {
			ink = c.ground()
		}
		c.fill("", render.Box(box.Grow(c.st.Gap/4)), ink)
	}
	c.add(marks...)
	g.box(box.Grow(c.st.Gap/2), wordInk)
}

// besideFar is how far a name may stand from its thing, mm on paper, where it need not be there: the pointer names it too.
func (o Options) besideFar() render.Paper {
	if o.Sparse {
		return 10
	}
	return 16
}

// strays tells whether a label stands so far from home that it needs a leader.
func (l label) strays(mid render.Point, box render.Rect, air render.Paper) bool {
	return mid.Minus(l.home).Length() > l.near && !box.Grow(air).Contains(l.dot)
}

// foot is where a leader from a dot meets a box: the middle of a side, or a corner.
func foot(dot render.Point, box render.Rect) render.Point {
	end := render.Point{X: min(max(dot.X, box.Min.X), box.Max.X), Y: min(max(dot.Y, box.Min.Y), box.Max.Y)}
	if end.Y > box.Min.Y && end.Y < box.Max.Y {
		end.Y = box.Centre().Y
	}
	return end
}

// leader draws the line from the dot to the side of the box that faces it.
func (c *canvas) leader(g *crowd, ref string, dot render.Point, box render.Rect) {
	end := foot(dot, box.Grow(c.st.Gap/2))
	c.stroke(ref, render.Line(dot, end), c.st.Extension)
	c.fill(ref, render.Circle(dot, c.st.Tick/6), render.InkMain)
	g.line(dot, end, symbolInk) // words that came later would be struck by it
}

func (l label) marks(c *canvas, mid render.Point) []render.Mark {
	w, h := l.size(c)
	if l.block != nil {
		return render.Shift(l.block.marks, mid.Minus(l.block.box.Centre()))
	}
	if len(l.lines) == 0 {
		return l.sign.At(l.ref, mid, c.st.Sign)
	}
	x := mid.X
	if l.signs {
		x -= (c.st.Sign + c.st.Gap) / 2
	}
	y := mid.Y - h/2
	var marks []render.Mark
	for _, n := range l.lines {
		t := n.in.Text(render.Point{X: x, Y: y + n.in.Leading()/2}, n.words, n.ink, render.Centre).Middled()
		marks = append(marks, render.Words(l.ref, t))
		y += n.in.Leading()
	}
	if l.signs {
		marks = append(marks, l.sign.At(l.ref, render.Point{X: mid.X + w/2 - c.st.Sign/2, Y: mid.Y}, c.st.Sign)...)
	}
	return marks
}

// The search for free ground goes outwards in rings.
const (
	ringStep  = 2.5 // mm on paper
	rings     = 22
	ringParts = 16
	awayCost  = 0.9 // what a millimetre away from home weighs against a millimetre of line crossed
)

// free returns the middle nearest to home at which a box of that size has free ground; ok is false where words stand everywhere it may.
func (c *canvas) free(g *crowd, l label, w, h render.Paper) (best render.Point, ok bool) {
	best = l.home
	least, bare := math.Inf(1), math.Inf(1) // bare: without its leader
	half := render.Point{X: w / 2, Y: h / 2}
	for ring := range rings {
		r := float64(ring) * ringStep * (1 + float64(ring)/rings)
		if r*awayCost >= least || c.apart && r > l.farthest(c) {
			break
		}
		for i := range min(ringParts, 1+ring*ringParts) {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / ringParts)
			mid := l.home.Plus(render.Point{X: render.Paper(r * cos), Y: render.Paper(r * sin)})
			box := render.Rect{Min: mid.Minus(half), Max: mid.Plus(half)}
			if l.only != (render.Rect{}) && !l.only.Holds(box) {
				continue
			}
			cost := r*awayCost + float64(g.cost(box, l.on))
			stands := cost
			if cost < least && l.strays(mid, box, c.st.Gap) {
				cost += g.way(l.dot, foot(l.dot, box))
				if l.inside && c.goesOut(l.dot, foot(l.dot, box)) {
					cost += wordCross
				}
			}
			if cost < least-1e-9 && !(l.inside && c.leaves(box)) {
				best, least, bare = mid, cost, stands
			}
		}
	}
	if c.apart && l.carries(c) {
		return best, bare < l.farthest(c)*awayCost+apartInk
	}
	if c.apart {
		return best, least < l.farthest(c)*awayCost+2*apartInk
	}
	return best, least < wordInk
}

// carries tells whether a measure stands among the words: such a label goes farther for its room.
func (l label) carries(c *canvas) bool {
	return slices.ContainsFunc(l.lines, func(n line) bool { return n.in == c.st.Measure })
}

// farthest is how far from its thing a name may stand that keeps off lines, mm on paper; a height, which is read where it is, farther.
func (l label) farthest(c *canvas) float64 {
	if l.block != nil || l.carries(c) {
		return 55
	}
	return 34
}

// wrapped breaks words to a width.
func (c *canvas) wrapped(wide render.Paper, words string, ink render.Ink) []line {
	var lines []line
	for _, w := range render.Wrap(words, c.st.Body.Size, c.st.Body.Face, wide) {
		lines = append(lines, line{w, c.st.Body, ink})
	}
	return lines
}

// goesOut tells whether a leader from a dot in the room, or in its walls, leaves the room on its way.
func (c *canvas) goesOut(dot, end render.Point) bool {
	const steps = 8
	for i := steps / 4; i < steps && len(c.room) > 0; i++ {
		if !c.room.Inside(dot.Between(end, float64(i)/steps)) {
			return true
		}
	}
	return false
}

// leaves tells whether a box reaches out of the room.
func (c *canvas) leaves(box render.Rect) bool {
	if len(c.room) == 0 {
		return false
	}
	for _, q := range []render.Point{box.Min, {X: box.Max.X, Y: box.Min.Y}, box.Max, {X: box.Min.X, Y: box.Max.Y}} {
		if !c.room.Inside(q) {
			return true
		}
	}
	return false
}
