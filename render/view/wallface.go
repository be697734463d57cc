package view

import (
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// Bounds of the search for the corners of the ceiling's outline, mm.
const (
	profileSteps = 16
	profileFine  = 0.5
	profileIn    = 0.05 // how far from the corners of the room it is looked at
)

// profile returns the height of the ceiling along the wall, a distance out from it; nil where it is not known all along.
func (f *facing) profile(out float64) []geom.V2 {
	at := func(x float64) (geom.V2, int, bool) {
		z, which, ok := f.ceiling.at(f.w.Point(min(max(x, profileIn), f.w.Len-profileIn), max(out, profileIn)))
		return geom.V2{X: x, Y: z}, which, ok
	}
	a, which, ok := at(0)
	if !ok {
		return nil
	}
	line := []geom.V2{a}
	for i := 1; i <= profileSteps; i++ {
		b, next, ok := at(f.w.Len * float64(i) / profileSteps)
		if !ok {
			return nil
		}
		line = append(refine(line, a, b, which, next, at), b)
		a, which = b, next
	}
	return straightened(line)
}

// refine adds the corners between two points: where one face of the ceiling meets the next.
func refine(line []geom.V2, a, b geom.V2, which, next int, at func(float64) (geom.V2, int, bool)) []geom.V2 {
	if which == next || b.X-a.X < profileFine {
		if b.X-a.X < profileFine && math.Abs(a.Y-b.Y) > profileFine {
			line = append(line, geom.V2{X: b.X, Y: a.Y}) // a step
		}
		return line
	}
	m, mid, ok := at((a.X + b.X) / 2)
	if !ok {
		return line
	}
	line = append(refine(line, a, m, which, mid, at), m)
	return refine(line, m, b, mid, next, at)
}

// straightened leaves out points that lie on the line of their neighbours.
func straightened(line []geom.V2) []geom.V2 {
	out := line[:1:1]
	for i := 1; i < len(line); i++ {
		if n := len(out); i+1 < len(line) && onLine(out[n-1], line[i], line[i+1:]) {
			continue
		}
		out = append(out, line[i])
	}
	return out
}

// onLine tells whether q lies on the way from a to the first point that is well beyond it.
func onLine(a, q geom.V2, rest []geom.V2) bool {
	for _, b := range rest {
		if b.X-q.X > 2*profileFine || math.Abs(b.Y-q.Y) > 2*profileFine {
			return math.Abs(b.Sub(a).Unit().Cross(q.Sub(a))) < profileFine
		}
	}
	b := rest[len(rest)-1]
	return math.Abs(b.Sub(a).Unit().Cross(q.Sub(a))) < profileFine
}

// higher returns whichever outline is the higher one somewhere: a view is cut where the most of the room is seen.
func higher(a, b []geom.V2) []geom.V2 {
	for _, q := range b {
		if q.Y > heightOf(a, q.X)+5 {
			return b
		}
	}
	return a
}

// heightOf returns the height of an outline at a place, the lower one at a step.
func heightOf(line []geom.V2, x float64) float64 {
	for i := 1; i < len(line); i++ {
		if a, b := line[i-1], line[i]; x <= b.X && b.X > a.X {
			return a.Y + (b.Y-a.Y)*(x-a.X)/(b.X-a.X)
		}
	}
	return line[len(line)-1].Y
}

// under returns the outline of the wall below a ceiling.
func (f *facing) under(line []geom.V2) geom.Polygon {
	out := geom.Polygon{{X: f.w.Len}, {}}
	return append(out, line...)
}

// face draws the wall itself with the line of its baseboard.
func (f *facing) face() {
	ref := "wall." + f.w.Key
	f.room = f.shape(f.under(f.cut))
	f.fill(ref, f.shape(f.under(f.cut)), f.ground())
	if !slices.Equal(f.cut, f.edge) {
		f.stroke(ref, f.open(f.edge), f.st.Seen)
		x := f.w.Len / 2
		f.label("ceiling", x, (heightOf(f.edge, x)+heightOf(f.cut, x))/2, 60, f.soft("sloping or lower ceiling"))
	}
	if f.w.BaseHigh > 0 {
		f.baseboard(ref + ".baseboard")
	}
	f.spots[ref] = f.pt(f.w.Len/2, f.high*0.8)
}

// open returns a line across the wall on paper.
func (f *facing) open(line []geom.V2) render.Path {
	points := make([]render.Point, len(line))
	for i, q := range line {
		points[i] = f.pt(q.X, q.Y)
	}
	return render.Polyline(points...)
}

// baseboard draws its upper edge between the doors.
func (f *facing) baseboard(ref string) {
	at := 0.0
	draw := func(to float64) {
		if to > at {
			f.stroke(ref, render.Line(f.pt(at, f.w.BaseHigh), f.pt(to, f.w.BaseHigh)), f.st.Thin)
		}
	}
	for _, d := range doorways(f.s, f.w) {
		draw(d.lo)
		at = max(at, d.hi)
	}
	draw(f.w.Len)
}

// frame draws the cut: floor, the walls at both ends and the ceiling, over everything that reaches it.
func (f *facing) frame() {
	ref := "wall." + f.w.Key
	first, last := f.cut[0], f.cut[len(f.cut)-1]
	if f.guessed {
		f.stroke(ref, render.Polyline(f.pt(0, first.Y), f.pt(0, 0), f.pt(f.w.Len, 0), f.pt(f.w.Len, last.Y)), f.st.Cut)
		f.add(f.st.BreakLine("ceiling", f.pt(0, first.Y), f.pt(f.w.Len, last.Y)))
		f.notIn("ceiling", "ceiling", f.w.Len/2, usualCeiling-150)
		return
	}
	f.stroke(ref, append(f.open(f.cut), render.Polyline(f.pt(0, first.Y), f.pt(0, 0), f.pt(f.w.Len, 0), f.pt(f.w.Len, last.Y))...), f.st.Cut)
	over := f.st.Tick * 0.6
	for _, q := range []render.Point{f.pt(0, 0), f.pt(0, first.Y)} {
		f.stroke(ref, render.Line(q, render.Point{X: q.X - over, Y: q.Y}), f.st.Cut)
	}
	for _, q := range []render.Point{f.pt(f.w.Len, 0), f.pt(f.w.Len, last.Y)} {
		f.stroke(ref, render.Line(q, render.Point{X: q.X + over, Y: q.Y}), f.st.Cut)
	}
}

// beams draws those that end at the wall or run along it.
func (f *facing) beams() {
	for i, b := range f.s.Job.Room.Beams {
		refs := &f.s.Survey.Layout.Beams[i]
		out, wide, under := f.s.Survey.Value(refs.Out), f.s.Survey.Value(refs.Wide), f.s.Survey.Value(refs.Under)
		w := wallNamed(f.s, b.Along)
		if w == nil || math.IsNaN(out+wide+under) {
			continue
		}
		lo, hi := f.w.Len, 0.0
		switch {
		case w == f.w:
			lo, hi = 0, f.w.Len
		case math.Abs(w.Dir.Dot(f.w.Dir)) < 0.3:
			a, b := f.project(w.Point(0, out).At(0)), f.project(w.Point(0, out+wide).At(0))
			lo, hi = max(min(a.X, b.X), 0), min(max(a.X, b.X), f.w.Len)
		}
		if hi <= lo {
			continue
		}
		ref := "beam." + keyOr(b.Key, i)
		f.outlined(ref, f.box(lo, under, hi, max(heightOf(f.cut, lo), heightOf(f.cut, hi))), f.ground(), f.st.Seen)
		f.spots[ref] = f.pt((lo+hi)/2, under)
		f.label(ref, (lo+hi)/2, under+40, 12, f.soft("beam"))
	}
}

// doorways returns the openings to the floor of a wall, casings counted in.
func doorways(s *fit.Scene, w *fit.Wall) []gap {
	var out []gap
	for i := range s.Survey.Layout.Doors {
		refs := &s.Survey.Layout.Doors[i]
		at, ok := onWall(s, refs.OnWallRefs, refs.Wide, usualDoor)
		if ok && !at.guessed && at.w == w {
			casing := zeroIfUnread(s.Survey.Value(refs.Casing))
			out = append(out, gap{at.lo - casing, at.hi + casing})
		}
	}
	sortGaps(out)
	return out
}
