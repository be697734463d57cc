package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// ruled is something that takes a stretch of a row of dimensions: an opening, the bed, a drawer pulled out.
type ruled struct {
	lo, hi   float64
	ref      string // of its width: "reading.door.hall.wide"
	refAt    string // of the reading that says where it begins, "" where none does
	once     bool   // its width rests on one reading
	onceAt   bool   // so does where it begins
	fromLeft bool   // where it begins was read from the row's low end
	ink      render.Ink
}

// row is a line of dimensions: where its ticks stand, in mm along it, and what stands between.
type row struct {
	stops []float64
	spans []render.Span
}

// shut is the least stretch that gets a dimension of its own, mm.
const shut = 0.8

// rowsOf sorts things into as few rows from 0 to whole as keep them from overlapping, and dimensions what lies between them too.
func (c *canvas) rowsOf(things []ruled, from, whole float64) []row {
	things = slices.DeleteFunc(things, func(t ruled) bool { return t.hi-t.lo < shut })
	slices.SortStableFunc(things, func(a, b ruled) int { return cmp.Compare(a.lo, b.lo) })
	var sorted [][]ruled
	for _, t := range things {
		k := slices.IndexFunc(sorted, func(r []ruled) bool { return r[len(r)-1].hi <= t.lo+shut })
		if k < 0 {
			sorted, k = append(sorted, nil), len(sorted)
		}
		sorted[k] = append(sorted[k], t)
	}
	rows := make([]row, len(sorted))
	for i, things := range sorted {
		rows[i] = c.rowOf(things, from, whole)
	}
	return rows
}

// rowOf dimensions things that do not overlap, and the stretches between them.
func (c *canvas) rowOf(things []ruled, from, whole float64) row {
	r := row{stops: []float64{from}}
	add := func(to float64, s render.Span) {
		if to-r.stops[len(r.stops)-1] < shut {
			return
		}
		r.stops, r.spans = append(r.stops, to), append(r.spans, s)
	}
	between := func(to float64, ref string, once bool) {
		add(to, render.Span{Ref: ref, Words: c.dim(to-r.stops[len(r.stops)-1], !once)})
	}
	past := false // where the thing before ends rests on one reading
	for i, t := range things {
		ref := ""
		if i == 0 && t.fromLeft {
			ref = t.refAt
		}
		between(t.lo, ref, t.onceAt || past)
		add(t.hi, render.Span{Ref: t.ref, Words: c.dim(t.hi-max(t.lo, r.stops[len(r.stops)-1]), !t.once), Ink: t.ink})
		past = t.once || t.onceAt
	}
	between(whole, "", past)
	return r
}

// ruledOpenings lists the doors and windows of a wall that were read.
func ruledOpenings(s *fit.Scene, k known, w *fit.Wall) []ruled {
	var list []ruled
	r, l := &s.Job.Room, &s.Survey.Layout
	add := func(key string, on survey.OnWallRefs, wide survey.Ref) {
		at, ok := onWall(s, on, wide, 0)
		if !ok || at.guessed || at.w != w {
			return
		}
		list = append(list, ruled{
			lo: at.lo, hi: at.hi, ref: "reading." + key + ".wide", refAt: "reading." + key + ".at",
			once: !k.firm(key + ".wide"), onceAt: !k.firm(key+".at") && !k.firm(key+".far"), fromLeft: !on.FromEnd,
		})
	}
	for i := range r.Doors {
		add("door."+keyOr(r.Doors[i].Key, i), l.Doors[i].OnWallRefs, l.Doors[i].Wide)
	}
	for i := range r.Windows {
		add("window."+keyOr(r.Windows[i].Key, i), l.Windows[i].OnWallRefs, l.Windows[i].Wide)
	}
	return list
}

// footAlong returns the stretch of a wall beside which the bed stands. Corners are never quite square, so what the bed covers of a wall
// across its end is a little more than the bed is wide; there the stretch is the bed's own size, as far from the corner as the bed stands
// out from its wall.
func footAlong(s *fit.Scene, w *fit.Wall) (lo, hi float64) {
	lo, hi = footSpan(s, func(q geom.V2) float64 { along, _ := w.Along(q); return along })
	if s.At == nil || w == s.At || math.Abs(s.At.Dir.Dot(w.Dir)) > squareTo {
		return lo, hi
	}
	near, far := footSpan(s, func(q geom.V2) float64 { _, out := s.At.Along(q); return out })
	switch n := len(s.Walls); w.Index {
	case (s.At.Index + 1) % n:
		return near, far
	case (s.At.Index + n - 1) % n:
		return w.Len - far, w.Len - near
	}
	mid := (lo + hi) / 2
	return mid - (far-near)/2, mid + (far-near)/2
}

// squareTo is how far two walls may be from square and still count as such, as a cosine: about 5 degrees.
const squareTo = 0.09

// footSpan returns the least and the most of a measure over the corners of the bed.
func footSpan(s *fit.Scene, measure func(geom.V2) float64) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, q := range s.Bed.Foot {
		v := measure(s.ToRoom.Point(q.At(0)).XY())
		lo, hi = min(lo, v), max(hi, v)
	}
	return lo, hi
}
