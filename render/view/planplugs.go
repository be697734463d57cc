package view

import (
	"math"

	"bunkwright/render"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

// wallThings draws outlets, switches and thermostats at the faces of the walls.
func (p *planner) wallThings() {
	for i, o := range p.s.Job.Room.Outlets {
		refs := &p.s.Survey.Layout.Outlets[i]
		at, ok := onWall(p.s, survey.OnWallRefs{Wall: refs.Wall, FromEnd: refs.FromEnd, At: refs.At}, 0, 0)
		if !ok {
			continue
		}
		at.guessed = math.IsNaN(p.s.Survey.Value(refs.At))
		ref := "outlet." + keyOr(o.Key, i)
		p.plug(ref, o.Kind, at)
	}
	for i := range p.s.Job.Room.Lights {
		if p.s.Job.Room.Lights[i].Kind == "wall" {
			p.wallLight(i)
		}
	}
}

// plug draws the sign of an outlet, a switch or a thermostat, pointing into the room.
func (p *planner) plug(ref, kind string, at place) {
	ink := render.InkMain
	foot := p.on(at.w.Point(at.middle(), 0))
	tip := foot.Plus(p.inwards(at, float64(p.st.Tick)*1.15))
	if at.guessed {
		ink = render.InkCannotTell
	}
	if at.guessed && !p.apart { // as read, its dimension asks for it
		p.rings[ref] = true
		ring := tip.Plus(p.inwards(at, float64(p.st.Sign)*1.1))
		p.notes = append(p.notes, label{ref: ref, home: ring, near: farAway, dot: ring, sign: render.SignCannotTell, on: lineGround, inside: true})
	} else {
		p.spots[ref] = tip
	}
	if at.guessed && p.apart {
		p.nameOf(ref, tip, tip.Plus(p.inwards(at, float64(p.st.Body.Leading()))), 9, line{outletWord(kind), p.st.Body, ink})
	}
	p.add(p.plugSign(ref, kind, foot, tip, ink)...)
}

func outletWord(kind string) string {
	if kind == "" {
		return "outlet"
	}
	return kind
}

// plugSign is a ring on two pins for an outlet, a bar with a lever for a switch, and a square for a thermostat.
func (c *canvas) plugSign(ref, kind string, foot, tip render.Point, ink render.Ink) []render.Mark {
	way := tip.Minus(foot)
	side := render.Point{X: -way.Y, Y: way.X}
	pen := c.st.Seen.In(ink)
	r := c.st.Tick * 0.42
	ring := render.Outlined(ref, render.Circle(tip, r), render.InkPaper, pen)
	switch kind {
	case "switch":
		mid := foot.Plus(way.Times(0.5))
		lever := render.Line(mid, mid.Plus(way.Times(0.55)).Plus(side.Times(0.4)))
		return append([]render.Mark{render.Stroke(ref, append(render.Line(foot, mid), lever...), pen)},
			render.Outlined(ref, render.Circle(mid, r*0.6), render.InkPaper, pen)...)
	case "thermostat":
		return render.Outlined(ref, render.Box(render.Around(tip).Grow(r*0.8)), render.InkPaper, pen)
	}
	pins := render.Path{}
	for _, k := range []float64{-0.18, 0.18} {
		off := side.Times(k)
		pins = append(pins, render.Line(foot.Plus(off), tip.Plus(off).Minus(way.Times(0.1)))...)
	}
	return append(ring, render.Stroke(ref, pins, pen))
}

func (p *planner) wallLight(i int) {
	refs := &p.s.Survey.Layout.Lights[i]
	w, along, _, guessed, ok := spot(p.s, refs.SpotRefs)
	if !ok {
		return
	}
	ref := "light." + keyOr(p.s.Job.Room.Lights[i].Key, i)
	at := place{w: w, lo: along, hi: along, guessed: guessed}
	tip := p.on(w.Point(along, 0)).Plus(p.inwards(at, float64(p.st.Tick)*0.6))
	p.spots[ref] = tip
	p.lamp(ref, tip, p.st.Tick*0.5, guessed)
}

// around returns a disc of the room on paper.
func (p *planner) around(q geom.V2, r float64) render.Path { return render.Circle(p.on(q), p.mm(r)) }
