package survey

import (
	"fmt"
	"math"

	"bunkwright/room"
)

// walls makes what belongs to each wall beside its length: covering, trim, lean and bow, studs.
func (b *builder) walls() {
	keys := b.s.wallKeys()
	b.s.Layout.Walls = make([]WallRefs, len(keys))
	for i, k := range keys {
		w, _ := b.s.Room.Wall(k)
		refs := &b.s.Layout.Walls[i]
		b.fill("wall."+k, w, refs)
		refs.Lean = b.unknown("wall."+k+".lean", 0)
		b.suppose(LinearEquation("wall."+k+".lean", []Term{{int(refs.Lean - 1), 1}}, 0, 0, b.s.u.Lean))
	}
	for i, k := range keys {
		w, _ := b.s.Room.Wall(k)
		if b.bowed(i) {
			refs := &b.s.Layout.Walls[i]
			refs.Bow = b.unknown("wall."+k+".bow", 0)
			b.suppose(LinearEquation("wall."+k+".bow", []Term{{int(refs.Bow - 1), 1}}, 0, 0, wallBow))
		}
		_ = w
	}
	for i, k := range keys {
		w, _ := b.s.Room.Wall(k)
		b.offLengths(i, w)
		b.plumbs(i, w)
		b.studs(i, w)
	}
}

// bowed tells whether a reading can show a bow of wall i: a neighbour read low and high, or a plumb line read in the middle too.
func (b *builder) bowed(i int) bool {
	keys := b.s.wallKeys()
	n := len(keys)
	for _, j := range []int{(i + 1) % n, (i + n - 1) % n} {
		if w, ok := b.s.Room.Wall(keys[j]); ok && len(w.LowLength) > 0 && len(w.HighLength) > 0 {
			return true
		}
	}
	w, _ := b.s.Room.Wall(keys[i])
	for _, p := range w.Plumbs {
		if len(p.Middle) > 0 {
			return true
		}
	}
	return false
}

// offset returns how far wall i stands outside its middle line at height z, as terms.
func (b *builder) offset(i int, z, times float64) []Term {
	refs := b.s.Layout.Walls[i]
	terms := []Term{{int(refs.Lean - 1), times * (z - b.middle())}}
	if refs.Bow.Known() {
		terms = append(terms, Term{int(refs.Bow - 1), times * BowShare(b.s.Room, z)})
	}
	return terms
}

func (b *builder) middle() float64 {
	_, m, _ := b.s.Room.ReadAt()
	return m
}

// BowShare returns the part of a wall's bow that shows at height z: 0 at middle height, 1 where lengths were read low and high.
func BowShare(r *room.Room, z float64) float64 {
	low, middle, high := r.ReadAt()
	span := high - middle
	if z < middle {
		span = middle - low
	}
	return (z - middle) * (z - middle) / (span * span)
}

// offLengths observes the low and high lengths of wall i: the middle length plus what the walls at its ends, and it itself, stand
// outside there.
func (b *builder) offLengths(i int, w room.Wall) {
	low, _, high := b.s.Room.ReadAt()
	b.offLength(i, "wall."+w.Key+".low", w.LowLength, low)
	b.offLength(i, "wall."+w.Key+".high", w.HighLength, high)
}

// inLine is the sine of the angle up to which two walls run on in one line.
const inLine = 0.02

func (b *builder) offLength(i int, key string, m room.Measure, z float64) {
	if len(m) == 0 || b.roundOff {
		return
	}
	n := len(b.corners)
	prev, next := (i+n-1)%n, (i+1)%n
	d, before, after := b.dir(i), b.dir(prev), b.dir(next)
	if math.Abs(d.dot(before.left())) < inLine || math.Abs(d.dot(after.left())) < inLine {
		return // where a neighbour runs on in line, nothing ends the wall low down
	}
	var terms []Term
	add := func(wall int, factor float64) { terms = append(terms, b.offset(wall, z, factor)...) }
	add(next, 1/d.dot(after.left()))
	add(prev, -1/d.dot(before.left()))
	own := -d.left().dot(after.left())/d.dot(after.left()) + d.left().dot(before.left())/d.dot(before.left())
	if math.Abs(own) > 1e-9 {
		add(i, own)
	}
	b.read(key, m, func(v, u float64) Equation {
		return plusTerms(DistanceEquation(key, b.corners[i], b.corners[next], v, u), terms)
	})
}

// plusTerms adds a linear combination of unknowns to what an equation predicts.
func plusTerms(e Equation, terms []Term) Equation {
	k := len(e.Unknowns)
	inner := e.Predict
	e.Unknowns = append([]int(nil), e.Unknowns...)
	for _, t := range terms {
		e.Unknowns = append(e.Unknowns, t.Unknown)
	}
	e.Predict = func(at, slope []float64) float64 {
		v := inner(at[:k], slope[:k])
		for j, t := range terms {
			v += t.D * at[k+j]
			slope[k+j] = t.D
		}
		return v
	}
	return e
}

// plumbs observes a plumb line before wall i: its distances low, middle and high differ by what the wall leans and bows.
func (b *builder) plumbs(i int, w room.Wall) {
	low, middle, high := b.s.Room.ReadAt()
	for k, p := range w.Plumbs {
		name := fmt.Sprintf("wall.%s.plumb.%s", w.Key, keyOr(p.Key, k))
		if len(p.Low)+len(p.Middle)+len(p.High) < 2 {
			continue
		}
		line := b.unknown(name+".line", 0)
		at := func(key string, m room.Measure, z float64) {
			terms := append([]Term{{int(line - 1), 1}}, b.offset(i, z, 1)...)
			b.read(key, m, func(v, u float64) Equation { return LinearEquation(key, terms, 0, v, u) })
		}
		at(name+".low", p.Low, low)
		at(name+".middle", p.Middle, middle)
		at(name+".high", p.High, high)
	}
}

// keyOr returns a key, or the running number of a thing without one.
func keyOr(key string, i int) string {
	if key != "" {
		return key
	}
	return fmt.Sprint(i + 1)
}

func (b *builder) dir(i int) vec2 {
	n := len(b.plan)
	p, q := b.plan[i], b.plan[(i+1)%n]
	l := math.Hypot(q.x-p.x, q.y-p.y)
	if l == 0 {
		return vec2{1, 0}
	}
	return vec2{(q.x - p.x) / l, (q.y - p.y) / l}
}

func (a vec2) dot(c vec2) float64 { return a.x*c.x + a.y*c.y }
func (a vec2) left() vec2         { return vec2{-a.y, a.x} }
