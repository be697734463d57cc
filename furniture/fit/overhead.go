package fit

import (
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

// Overhead is the lowest thing over a patch of plan.
type Overhead struct {
	Z    float64
	What string // key of the ceiling face, beam, fixture or part
	Ask  string // what is missing to tell
}

// lower takes the lower of two.
func (o *Overhead) lower(z float64, what string) {
	if z < o.Z {
		o.Z, o.What = z, what
	}
}

// Patch is a convex patch of plan: an outline, or a disc where R is not 0.
type Patch struct {
	Outline geom.Polygon
	C       geom.V2
	R       float64
	lo, hi  geom.V2
}

// disc makes a round patch.
func disc(c geom.V2, r float64) Patch {
	return Patch{C: c, R: r, lo: geom.V2{X: c.X - r, Y: c.Y - r}, hi: geom.V2{X: c.X + r, Y: c.Y + r}}
}

// patch makes a patch of a convex outline.
func patch(p geom.Polygon) Patch {
	q := Patch{Outline: p}
	q.lo, q.hi = p.Bounds()
	return q
}

// touches tells whether the patch overlaps a convex outline by more than rounding.
func (p Patch) touches(q geom.Polygon) bool {
	if p.R > 0 {
		return near(q, p.C) < p.R-1e-6
	}
	return geom.Gap(p.Outline, q) < -1e-6
}

// touchesBox is the same for a box, without making its outline where it stands upright.
func (p Patch) touchesBox(b *geom.Box) bool {
	if p.R == 0 || !b.Upright() {
		return p.touches(b.Footprint())
	}
	d := geom.V2{X: p.C.X - b.C.X, Y: p.C.Y - b.C.Y}
	x := max(0, math.Abs(d.X*b.Ax[0].X+d.Y*b.Ax[0].Y)-b.Half.X)
	y := max(0, math.Abs(d.X*b.Ax[1].X+d.Y*b.Ax[1].Y)-b.Half.Y)
	return x*x+y*y < (p.R-1e-6)*(p.R-1e-6)
}

// distance returns how far a point is from the patch, 0 inside.
func (p Patch) distance(q geom.V2) float64 {
	if p.R > 0 {
		return max(0, p.C.Dist(q)-p.R)
	}
	return near(p.Outline, q)
}

// over returns the lowest thing that lies over the patch: ceiling, beams, fan, lights and, of some solids, shelves and parts of the bed.
func (s *Scene) over(p Patch, solids []*Solid) Overhead {
	o := s.ceilingOver(p)
	s.beamsOver(p, &o)
	s.fittingsOver(p, &o)
	for _, b := range solids {
		if b.Lo.Z >= o.Z || !b.spans(p.lo, p.hi) {
			continue
		}
		if p.touchesBox(&b.Box) {
			o.lower(b.Lo.Z, b.Part.ID)
			if b.Part.Frame == furniture.OnBed {
				o.Ask = "" // what the bed itself has over the place is lower than any ceiling it stands under
			}
		}
	}
	return o
}

// above returns the solids that reach above the top of a mattress, over it or no farther beside it than a head is wide.
func (s *Scene) above(b bed) []*Solid {
	lo, hi := s.Boxes[b].Bounds()
	beside := geom.V2{X: yardstick.Figure(yardstick.HeadCylinder), Y: yardstick.Figure(yardstick.HeadCylinder)}
	from := s.mattressTop(b) + touch
	out := s.overBed[:0]
	for i := range s.Solids {
		if t := &s.Solids[i]; t.Hi.Z > from && t.spans(lo.XY().Sub(beside), hi.XY().Add(beside)) {
			out = append(out, t)
		}
	}
	s.overBed = out
	return out
}

// spans tells whether the bounds of a solid overlap an upright rectangle in plan.
func (t *Solid) spans(lo, hi geom.V2) bool {
	return t.Lo.X < hi.X && t.Hi.X > lo.X && t.Lo.Y < hi.Y && t.Hi.Y > lo.Y
}

// ceilingOver returns the lowest point of the ceiling over the patch.
func (s *Scene) ceilingOver(p Patch) Overhead {
	o := Overhead{Z: math.Inf(1)}
	o.Ask = s.facesOver(p, func(i int, z float64) { o.lower(z, s.keys.ceilings[i]) })
	return o
}

// faceHeight returns the height of a ceiling face over a point.
func (s *Scene) faceHeight(i int, p geom.V2) float64 {
	f := s.Survey.Layout.Ceilings[i]
	return s.v(f.Z) + s.v(f.SlopeX)*p.X + s.v(f.SlopeY)*p.Y
}

// faceOver returns the lowest point of a face over the patch, and whether the face covers any of it.
func (s *Scene) faceOver(i int, p Patch) (z float64, covers bool) {
	c := &s.Job.Room.Ceilings[i]
	switch {
	case c.Strip == "" && c.Corners == "":
		return s.lowestOn(i, p), true
	case c.Strip != "":
		return s.stripOver(i, c.Strip, p)
	}
	return s.lowestAt(i, s.cornersPolygon(c.Corners).Intersect(p.around()))
}

// stripOver is faceOver for a strip along a wall.
func (s *Scene) stripOver(i int, wall string, p Patch) (z float64, covers bool) {
	w, deep := s.wallNamed(wall), s.v(s.Survey.Layout.Ceilings[i].Deep)
	if w == nil || math.IsNaN(deep) {
		return math.NaN(), true
	}
	if p.R > 0 {
		switch _, out := w.Along(p.C); {
		case out-p.R >= deep:
			return 0, false
		case out+p.R <= deep:
			return s.lowestOn(i, p), true
		}
	}
	return s.lowestAt(i, p.around().Clip(w.Point(0, deep), w.Dir))
}

// lowestOn returns the lowest point of a plane face over the whole patch: exact for a disc.
func (s *Scene) lowestOn(i int, p Patch) float64 {
	if p.R > 0 {
		f := s.Survey.Layout.Ceilings[i]
		return s.faceHeight(i, p.C) - p.R*math.Hypot(s.v(f.SlopeX), s.v(f.SlopeY))
	}
	z, _ := s.lowestAt(i, p.Outline)
	return z
}

// lowestAt returns the lowest of the heights over the points of an outline.
func (s *Scene) lowestAt(i int, outline geom.Polygon) (z float64, covers bool) {
	if math.Abs(outline.Area()) < 1 { // a patch that only touches the face
		return 0, false
	}
	z = math.Inf(1)
	for _, q := range outline {
		z = min(z, s.faceHeight(i, q))
	}
	return z, true
}

// discSides is how many sides stand in for a circle where it must be cut: the outline lies round the circle, so it errs on the side
// of less room, by at most 0.5 % of the radius.
const discSides = 32

// around returns an outline round the patch.
func (p Patch) around() geom.Polygon {
	if p.R == 0 {
		return p.Outline
	}
	out := make(geom.Polygon, discSides)
	outer := p.R / math.Cos(math.Pi/discSides)
	for i := range out {
		a := 2 * math.Pi * float64(i) / discSides
		out[i] = geom.V2{X: p.C.X + outer*math.Cos(a), Y: p.C.Y + outer*math.Sin(a)}
	}
	return out
}

// cornersPolygon returns the outline over corner letters.
func (s *Scene) cornersPolygon(letters string) geom.Polygon {
	var out geom.Polygon
	for _, c := range letters {
		for i, l := range []rune(s.Job.Room.Outline) {
			if l == c && i < len(s.Outline) {
				out = append(out, s.Outline[i])
			}
		}
	}
	return out
}

func (s *Scene) beamsOver(p Patch, o *Overhead) {
	for i := range s.Survey.Layout.Beams {
		box, ok := s.beam(i)
		switch {
		case !ok:
			o.Ask = "where does beam " + s.Job.Room.Beams[i].Key + " hang, and how low?"
		case p.touchesBox(&box):
			o.lower(box.Bottom(), s.keys.beams[i])
		}
	}
}

// beamHigh is how high a beam is taken to be: up to whatever ceiling there is.
const beamHigh = 2000

// beam returns a beam as a box along its wall, from end to end.
func (s *Scene) beam(i int) (geom.Box, bool) {
	refs, rec := s.Survey.Layout.Beams[i], s.Job.Room.Beams[i]
	w := s.wallNamed(rec.Along)
	out, wide, under := s.v(refs.Out), s.v(refs.Wide), s.v(refs.Under)
	if w == nil || math.IsNaN(out+wide+under) {
		return geom.Box{}, false
	}
	t := geom.NewPlace(math.Atan2(w.Dir.Y, w.Dir.X), w.Point(0, 0).At(0))
	return t.Box(geom.NewBox(geom.V3{X: 0, Y: -out - wide, Z: under}, geom.V3{X: w.Len, Y: -out, Z: under + beamHigh})), true
}

// fittingsOver adds fans and lights whose sweep or body lies over the patch, or asks for what nobody read of one that may.
func (s *Scene) fittingsOver(p Patch, o *Overhead) {
	s.fansOver(p, o)
	for i := range s.Survey.Layout.Lights {
		s.lightOver(i, p, o)
	}
}

func (s *Scene) fansOver(p Patch, o *Overhead) {
	for i := range s.Survey.Layout.Fans {
		refs := &s.Survey.Layout.Fans[i]
		c, ok := s.spot(refs.SpotRefs)
		switch low, sweep := s.v(refs.Blades), s.v(refs.Sweep); {
		case ok && p.distance(c) >= sweep/2: // never where the sweep is unread
		case !ok || math.IsNaN(low+sweep):
			o.Ask = s.fan(i).ask
		default:
			o.lower(low, s.keys.fans[i])
		}
	}
}

func (s *Scene) lightOver(i int, p Patch, o *Overhead) {
	refs := &s.Survey.Layout.Lights[i]
	if s.Job.Room.Lights[i].Kind == "recessed" {
		return
	}
	c, ok := s.spot(refs.SpotRefs)
	switch low, wide := s.v(refs.Lowest), s.v(refs.Wide); {
	case ok && p.distance(c) >= wide/2:
	case !ok || math.IsNaN(low+wide):
		o.Ask = s.light(i).ask
	default:
		o.lower(low, s.keys.lights[i])
	}
}

// near returns how far a point is from a patch of plan, 0 inside.
func near(p geom.Polygon, q geom.V2) float64 {
	if p.Contains(q) {
		return 0
	}
	return p.Distance(q)
}
