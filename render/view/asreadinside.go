package view

import (
	"math"
	"slices"

	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// insideRules draws the readings across the room: diagonals, one to be read where there is none, and how far along their walls and out from them things are.
func (p *planner) insideRules() {
	if p.rough {
		return
	}
	g := newCrowd(render.Bounds(p.marks))
	for i := range p.marks {
		g.mark(p.marks[i])
	}
	p.spotsRead()
	p.outletsRead()
	p.diagonals()
	p.layInside(g)
}

func (p *planner) diagonals() {
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
		p.diagonal(render.Dimension{Ref: key, Words: p.taken(key, d.Length)}, i, k)
	}
	for i := 0; len(p.s.Job.Room.Diagonals) == 0 && len(letters) > 3 && i+2 < len(letters); i++ {
		key := string(letters[i]) + string(letters[i+2])
		if _, run := p.straightRun(key); run == 0 {
			p.diagonal(render.Dimension{Ref: "diagonal." + key + ".length", Words: notIn, Ink: render.InkCannotTell}, i, i+2)
			return
		}
	}
}

func (p *planner) diagonal(d render.Dimension, i, k int) {
	d.From, d.To, d.Bare = p.on(p.s.Outline[i]), p.on(p.s.Outline[k]), true
	p.lay(d, []float64{0.3, 0.7, 0.25, 0.75, 0.2, 0.8, 0.35, 0.65, 0.15, 0.85})
}

// spotsRead lists how far along and out the things are that hang or stand in the room.
func (p *planner) spotsRead() {
	r, l := &p.s.Job.Room, &p.s.Survey.Layout
	var seen []render.Point
	add := func(table, key string, i int, spot room.Spot, refs survey.SpotRefs) {
		p.spotRead(table+"."+keyOr(key, i), spot, refs, &seen)
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

// spotRead lists the two readings of a spot: along its wall, and out from it. Of a second thing in one spot, such as a light under a fan, they
// stand beside those of the first.
func (p *planner) spotRead(key string, spot room.Spot, refs survey.SpotRefs, seen *[]render.Point) {
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
	again := slices.ContainsFunc(*seen, func(q render.Point) bool { return q.Minus(p.on(at)).Length() < oneSpot })
	*seen = append(*seen, p.on(at))
	add := func(of string, m room.Measure, from geom.V2) {
		d := render.Dimension{Ref: key + of, From: p.on(from), To: p.on(at), Words: p.taken(key+of, m)}
		if again {
			p.layBeside(d)
			return
		}
		p.lay(d, sharesInside)
	}
	if len(spot.Out) > 0 && out > shut {
		add(".out", spot.Out, w.Point(along, 0))
	}
	if len(spot.At) > 0 && math.Abs(along-end) > shut {
		if out < float64(firstOff)/p.k {
			p.layAlong(render.Dimension{Ref: key + ".at", From: p.on(w.Point(end, out)), To: p.on(at), Words: p.taken(key+".at", spot.At)}, w)
			return
		}
		add(".at", spot.At, w.Point(end, out))
	}
}

// outletsRead lists how far along their walls outlets, switches and thermostats are; what was not read is asked for in its place.
func (p *planner) outletsRead() {
	for i, o := range p.s.Job.Room.Outlets {
		refs := &p.s.Survey.Layout.Outlets[i]
		w, at := wallAt(p.s, refs.Wall), p.s.Survey.Value(refs.At)
		if w == nil || at < shut {
			continue
		}
		key := "outlet." + keyOr(o.Key, i) + ".at"
		d := render.Dimension{Ref: key, Words: notIn, Ink: render.InkCannotTell}
		if len(o.At) > 0 {
			d.Words, d.Ink = p.taken(key, o.At), render.InkMain
		}
		if math.IsNaN(at) {
			at = w.Len / 2
		} else if refs.FromEnd {
			at = w.Len - at
		}
		end := 0.0
		if refs.FromEnd {
			end = w.Len
		}
		d.From, d.To = p.on(w.Point(end, 0)), p.on(w.Point(at, 0))
		p.layAlong(d, w)
	}
}
