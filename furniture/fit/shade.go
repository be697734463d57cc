package fit

import (
	"math"

	"bunkwright/room/geom"
)

// touch is how little counts as nothing, mm: far below any reading, far above rounding.
const touch = 1e-6

// shadePieces is how many pieces a sloping board is cut into for the stretch of wall that it hides; each hides its upright bounds, so
// that rather a little too much is hidden.
const shadePieces = 16

// shade is the upright rectangle of a wall's face that one thing hides: x along the wall from its first corner, y height.
type shade struct {
	geom.Rectangle
	name string
}

// shades returns what the bed, its mattresses and what hangs on the wall hide of a rectangle of a wall, looked at square to the wall:
// all that comes within deep of the wall's face.
func (s *Scene) shades(w *Wall, in geom.Rectangle, deep float64) []shade {
	band := [2]float64{s.Furthest(w, in.Lo.Y, in.Hi.Y) - touch, s.Nearest(w, in.Lo.Y, in.Hi.Y) + deep}
	var out []shade
	where := w.regionOf([2]float64{in.Lo.X, in.Hi.X}, band, [2]float64{in.Lo.Y, in.Hi.Y})
	s.things(where, func(t *Solid) {
		if lo, hi, from, to := w.level(&t.Box); lo < in.Hi.X && hi > in.Lo.X && from < band[1] && to > band[0] {
			out = w.shade(out, t, in, band)
		}
	})
	return out
}

// shade adds what one thing hides.
func (w *Wall) shade(out []shade, t *Solid, in geom.Rectangle, band [2]float64) []shade {
	if sloping(&t.Box) {
		for _, p := range piecesOf(t.Box) {
			lo, hi, from, to := w.level(&p)
			r := geom.Rectangle{Lo: geom.V2{X: lo, Y: p.Bottom()}, Hi: geom.V2{X: hi, Y: p.Top()}}
			if from < band[1] && to > band[0] && r.Overlaps(in) {
				out = append(out, shade{r, t.Part.ID})
			}
		}
		return out
	}
	lo, hi, ok := w.stretch(t.Box.Footprint(), band)
	r := geom.Rectangle{Lo: geom.V2{X: lo, Y: t.Lo.Z}, Hi: geom.V2{X: hi, Y: t.Hi.Z}}
	if ok && r.Overlaps(in) {
		out = append(out, shade{r, t.Part.ID})
	}
	return out
}

// sloping tells whether no axis of the box is upright.
func sloping(b *geom.Box) bool {
	for _, a := range b.Ax {
		if math.Abs(a.Z) > 1-1e-9 {
			return false
		}
	}
	return true
}

// piecesOf cuts a box across its longest side.
func piecesOf(b geom.Box) [shadePieces]geom.Box {
	k := 0
	for i := range 3 {
		if b.Half.Axis(i) > b.Half.Axis(k) {
			k = i
		}
	}
	half := b.Half.Axis(k) / shadePieces
	size := b.Half
	switch k {
	case 0:
		size.X = half
	case 1:
		size.Y = half
	default:
		size.Z = half
	}
	var out [shadePieces]geom.Box
	for i := range out {
		at := float64(2*i+1-shadePieces) * half
		out[i] = geom.Box{C: b.C.Add(b.Ax[k].Mul(at)), Ax: b.Ax, Half: size}
	}
	return out
}

// stretch returns how far along the wall the part of a convex outline reaches that lies between two distances out from the wall.
func (w *Wall) stretch(p geom.Polygon, band [2]float64) (lo, hi float64, ok bool) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for i := range p {
		a, b := p.Edge(i)
		a0, o0 := w.Along(a)
		a1, o1 := w.Along(b)
		t0, t1 := shareWithin(o0, o1, band)
		if t0 > t1 {
			continue
		}
		for _, t := range [2]float64{t0, t1} {
			x := a0 + t*(a1-a0)
			lo, hi = min(lo, x), max(hi, x)
		}
	}
	return lo, hi, hi-lo > touch
}

// shareWithin returns the part of a straight run from o0 to o1 that lies in the band, as shares of the run; t0 > t1 where none does.
func shareWithin(o0, o1 float64, band [2]float64) (t0, t1 float64) {
	d := o1 - o0
	if math.Abs(d) < 1e-12 {
		if o0 >= band[0] && o0 < band[1] {
			return 0, 1
		}
		return 1, 0
	}
	a, b := (band[0]-o0)/d, (band[1]-o0)/d
	return max(0, min(a, b)), min(1, max(a, b))
}
