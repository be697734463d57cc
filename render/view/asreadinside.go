package view

import (
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/survey"
)

// insideRules draws the readings across the room: diagonals, and how far along their walls and out from them things are. Each stands where
// it is in nobody's way.
func (p *planner) insideRules() {
	if p.rough {
		return
	}
	g := newCrowd(render.Bounds(p.marks))
	for i := range p.marks {
		g.mark(p.marks[i])
	}
	p.spotsRead(g)
	p.outletsRead(g)
	p.diagonals(g)
}

func (p *planner) diagonals(g *crowd) {
	letters := []rune(p.s.Job.Room.Outline)
	for _, d := range p.s.Job.Room.Diagonals {
		ends := []rune(d.Key)
		if _, run := p.straightRun(d.Key); len(ends) != 2 || len(d.Length) == 0 || run > 0 {
			continue
		}
		i, k := slices.Index(letters, ends[0]), slices.Index(letters, ends[1])
		if i < 0 || k < 0 {
			continue
		}
		key := "diagonal." + d.Key + ".length"
		p.valued(g, render.Dimension{Ref: key, From: p.on(p.s.Outline[i]), To: p.on(p.s.Outline[k]), Words: p.taken(key, d.Length), Bare: true},
			[]float64{0.3, 0.7, 0.25, 0.75, 0.2, 0.8}, []render.Point{{}})
	}
}

// valued draws a dimension at the share of its line, and with the shift, where it meets the least.
func (p *planner) valued(g *crowd, d render.Dimension, shares []float64, shifts []render.Point) (shift render.Point) {
	var best []render.Mark
	least := math.Inf(1)
	for n, by := range shifts {
		for i, share := range shares {
			try := d
			try.From, try.To, try.Share = d.From.Plus(by), d.To.Plus(by), share
			marks := p.st.Dimension(try)
			cost := float64(i) + 8*float64(n)
			if len(shifts) > 1 {
				cost += 2 * g.way(try.From, try.To)
			}
			for _, m := range marks {
				if m.Kind == render.KindText {
					cost += float64(g.cost(m.Bounds().Grow(p.st.Gap/2), floorGround))
				}
			}
			if cost < least {
				best, least, shift = marks, cost, by
			}
		}
	}
	p.add(best...)
	for _, m := range best {
		g.mark(m)
	}
	return shift
}

// sharesInside are where on its line a value may stand, the best first.
var sharesInside = []float64{0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78}

// spotsRead draws how far along and out the things are that hang or stand in the room.
func (p *planner) spotsRead(g *crowd) {
	r, l := &p.s.Job.Room, &p.s.Survey.Layout
	var seen []render.Point
	add := func(table, key string, i int, spot room.Spot, refs survey.SpotRefs) {
		p.spotRead(g, table+"."+keyOr(key, i), spot, refs, &seen)
	}
	for i := range r.Fans {
		add("fan", r.Fans[i].Key, i, r.Fans[i].Spot, l.Fans[i].SpotRefs)
	}
	for i := range r.Lights {
		add("light", r.Lights[i].Key, i, r.Lights[i].Spot, l.Lights[i].SpotRefs)
	}
	for i := range r.Alarms {
		add("alarm", r.Alarms[i].Key, i, r.Alarms[i].Spot, l.Alarms[i].SpotRefs)
	}
	for i := range r.Hatches {
		add("hatch", r.Hatches[i].Key, i, r.Hatches[i].Spot, l.Hatches[i].SpotRefs)
	}
	for i := range r.Registers {
		add("register", r.Registers[i].Key, i, r.Registers[i].Spot, l.Registers[i].SpotRefs)
	}
	for i := range r.Heaters {
		add("heater", r.Heaters[i].Key, i, r.Heaters[i].Spot, l.Heaters[i].SpotRefs)
	}
	for i := range r.Pieces {
		add("furniture", r.Pieces[i].Key, i, r.Pieces[i].Spot, l.Pieces[i].SpotRefs)
	}
}

// oneSpot is how near on paper two things are whose lines would run into each other.
var oneSpot = render.Px(14)

// spotRead draws the two readings of a spot: along its wall, and out from it. Two things in one spot, such as a light under a fan, share them.
func (p *planner) spotRead(g *crowd, key string, spot room.Spot, refs survey.SpotRefs, seen *[]render.Point) {
	w := wallAt(p.s, refs.Wall)
	along, out := p.s.Survey.Value(refs.At), zeroIfUnread(p.s.Survey.Value(refs.Out))
	if w == nil || math.IsNaN(along) {
		return
	}
	end := 0.0
	if refs.FromEnd {
		along, end = w.Len-along, w.Len
	}
	at := w.Point(along, out)
	if slices.ContainsFunc(*seen, func(q render.Point) bool { return q.Minus(p.on(at)).Length() < oneSpot }) {
		return
	}
	*seen = append(*seen, p.on(at))
	if len(spot.Out) > 0 && out > shut {
		p.valued(g, render.Dimension{Ref: key + ".out", From: p.on(w.Point(along, 0)), To: p.on(at), Words: p.taken(key+".out", spot.Out)}, sharesInside, []render.Point{{}})
	}
	if len(spot.At) > 0 && math.Abs(along-end) > shut {
		d := render.Dimension{Ref: key + ".at", From: p.on(w.Point(end, out)), To: p.on(at), Words: p.taken(key+".at", spot.At)}
		if out < float64(firstOff)/p.k {
			p.alongInside(g, d, w)
			return
		}
		p.valued(g, d, sharesInside, []render.Point{{}})
	}
}

// How far from its wall a reading along it stands inside the room, and in what steps it moves on.
var firstOff, nextOff = render.Px(24), render.Px(13)

// alongInside draws a reading along a wall at the first distance from it that is free.
func (p *planner) alongInside(g *crowd, d render.Dimension, w *fit.Wall) {
	in := p.on(w.A.Add(w.In.Mul(1000))).Minus(p.on(w.A))
	in = in.Times(1 / float64(in.Length()))
	var shifts []render.Point
	for i := range 8 {
		shifts = append(shifts, in.Times(float64(firstOff+nextOff*render.Paper(i))))
	}
	by := p.valued(g, d, sharesInside, shifts)
	m := p.st.ExtensionLine(d.Ref, d.To, d.To.Plus(by))
	p.add(m)
	g.mark(m)
}

// outletsRead draws how far along their walls outlets, switches and thermostats are.
func (p *planner) outletsRead(g *crowd) {
	for i, o := range p.s.Job.Room.Outlets {
		refs := &p.s.Survey.Layout.Outlets[i]
		w, at := wallAt(p.s, refs.Wall), p.s.Survey.Value(refs.At)
		if w == nil || len(o.At) == 0 || math.IsNaN(at) || at < shut {
			continue
		}
		end := 0.0
		if refs.FromEnd {
			at, end = w.Len-at, w.Len
		}
		key := "outlet." + keyOr(o.Key, i) + ".at"
		p.alongInside(g, render.Dimension{Ref: key, From: p.on(w.Point(end, 0)), To: p.on(w.Point(at, 0)), Words: p.taken(key, o.At)}, w)
	}
}
