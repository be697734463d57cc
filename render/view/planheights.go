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
	if p.o.Beside {
		return
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

// level asks for the mark of a height where it was read: its box with a corner at the spot, on the side of the room's middle. Where there is
// no room it stands near, with a leader to the spot.
func (p *planner) level(ref string, q geom.V2, value, of string) {
	marks := p.st.LevelMark(ref, render.Point{}, value, of)
	box := render.Bounds(marks)
	dot := p.on(q)
	home := p.beside(dot, p.on(centroid(p.s.Outline)).Minus(dot), box)
	p.notes = append(p.notes, label{
		ref: ref, home: home, near: atSpot, dot: dot, block: &markings{marks, box}, inside: true, last: true,
	})
}

// beside returns the middle of a box whose corner stands at a spot: on the side that in points to, if that is in the room.
func (p *planner) beside(dot, in render.Point, box render.Rect) render.Point {
	half := render.Point{X: box.W()/2 + p.st.Gap*1.5, Y: box.H()/2 + p.st.Gap*1.5}
	if in.X < 0 {
		half.X = -half.X
	}
	if in.Y < 0 {
		half.Y = -half.Y
	}
	for _, turn := range []render.Point{{X: 1, Y: 1}, {X: 1, Y: -1}, {X: -1, Y: 1}, {X: -1, Y: -1}} {
		mid := dot.Plus(render.Point{X: half.X * turn.X, Y: half.Y * turn.Y})
		size := render.Point{X: box.W() / 2, Y: box.H() / 2}
		if !p.canvas.leaves(render.Rect{Min: mid.Minus(size), Max: mid.Plus(size)}) {
			return mid
		}
	}
	return dot.Plus(half)
}

// atSpot is how far the mark of a height may stand from its place beside the spot without a leader.
const atSpot render.Paper = 4

// centroid is the middle of an outline's corners.
func centroid(p geom.Polygon) geom.V2 {
	var sum geom.V2
	for _, q := range p {
		sum = sum.Add(q)
	}
	return sum.Mul(1 / float64(len(p)))
}
