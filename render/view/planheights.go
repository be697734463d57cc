package view

import (
	"math"
	"slices"

	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/geom"
)

// heights marks the heights of the ceiling where they were read.
func (p *planner) heights() {
	if !p.paper() && p.s.Stands {
		return // the walls and the story stick show them
	}
	for i, f := range p.s.Job.Room.Ceilings {
		key := "ceiling." + keyOr(f.Key, i)
		for k, h := range f.Heights {
			ref := key + ".height." + keyOr(h.Key, k)
			if q, ok := p.readAt(ref, h); ok && len(h.Height) > 0 {
				words := p.read(h.Height[0].Value.MM(), p.known.firm(ref+".height"))
				p.level("reading."+ref, q, words, p.ceilingWord(i)+cornerWords(h.Corner))
			}
		}
	}
}

// ceilingWord says which ceiling a height is of, where there is more than one.
func (p *planner) ceilingWord(i int) string {
	list := p.s.Job.Room.Ceilings
	if len(list) < 2 {
		return "ceiling"
	}
	if word := keyOr(list[i].Key, i); word != "main" && word != "flat" {
		return "ceiling, " + word
	}
	return "ceiling"
}

// cornerWords says at which corner a height was read.
func cornerWords(corner string) string {
	if corner == "" {
		return ""
	}
	return " at " + corner
}

// readAt returns where in the room a height of the ceiling was read.
func (p *planner) readAt(key string, h room.Height) (geom.V2, bool) {
	if h.Corner != "" {
		i := slices.Index([]rune(p.s.Job.Room.Outline), []rune(h.Corner)[0])
		if i < 0 {
			return geom.V2{}, false
		}
		return p.s.Outline[i], true
	}
	w := wallNamed(p.s, h.Wall)
	along, out := p.s.Survey.Value(p.s.Survey.Find(key+".at")), p.s.Survey.Value(p.s.Survey.Find(key+".out"))
	if w == nil || math.IsNaN(along+out) {
		return geom.V2{}, false
	}
	if h.From == string([]rune(w.Key)[1]) {
		along = w.Len - along
	}
	return w.Point(along, out), true
}

// level asks for the mark of a height near where it was read.
func (p *planner) level(ref string, q geom.V2, value, of string) {
	marks := p.st.LevelMark(ref, render.Point{}, value, of)
	box := render.Bounds(marks)
	home := p.on(q)
	inside := p.on(centroid(p.s.Outline)).Minus(home)
	if d := inside.Length(); d > 0 {
		home = home.Plus(inside.Times(min(1, float64(box.W())*0.9/float64(d))))
	}
	p.notes = append(p.notes, label{ref: ref, home: home, near: farAway, dot: home, block: &markings{marks, box}, on: floorGround, inside: true, loose: true})
}

// centroid is the middle of an outline's corners.
func centroid(p geom.Polygon) geom.V2 {
	var sum geom.V2
	for _, q := range p {
		sum = sum.Add(q)
	}
	return sum.Mul(1 / float64(len(p)))
}
