package view

import (
	"math"

	"bunkwright/render"
	"bunkwright/room/geom"
)

// overhead draws what hangs over the room, dashed: fan, lights, alarm, hatch, beams, and where the ceiling changes.
func (p *planner) overhead() {
	p.ceilingEdges()
	p.beams()
	p.fans()
	p.lights()
	p.alarms()
	p.hatches()
	p.ceilingGrilles()
}

func (p *planner) fans() {
	for i, f := range p.s.Job.Room.Fans {
		refs := &p.s.Survey.Layout.Fans[i]
		ref := "fan." + keyOr(f.Key, i)
		w, along, out, guessed, ok := spot(p.s, refs.SpotRefs)
		if !ok {
			continue
		}
		c := p.on(w.Point(along, out))
		p.spots[ref] = c
		cross := p.st.Tick * 0.5
		p.stroke(ref, append(render.Line(render.Point{X: c.X - cross, Y: c.Y}, render.Point{X: c.X + cross, Y: c.Y}),
			render.Line(render.Point{X: c.X, Y: c.Y - cross}, render.Point{X: c.X, Y: c.Y + cross})...), p.st.Thin)
		sweep := p.s.Survey.Value(refs.Sweep)
		if guessed || math.IsNaN(sweep) {
			p.notIn(ref, "ceiling fan", c)
			continue
		}
		p.stroke(ref, p.around(w.Point(along, out), sweep/2), p.st.Behind)
		lines := []line{p.soft("ceiling fan")}
		if blades := p.s.Survey.Value(refs.Blades); !math.IsNaN(blades) {
			lines = append(lines, p.value("blades "+p.read(blades, p.known.firm(p.s.Survey.Key(refs.Blades)))))
		}
		if k := p.lightUnder(w.Point(along, out)); k >= 0 && p.paper() {
			lines = append(lines, p.lightWords(k))
		}
		p.nameOf(ref, c, c.Plus(render.Point{Y: p.st.Body.Leading() * 2.2}), 16, lines...)
	}
}

// sameSpot is how near a light is to the middle of a fan that carries it, mm.
const sameSpot = 150

// lightUnder returns the light that hangs from a fan at a place, -1 where there is none.
func (p *planner) lightUnder(fan geom.V2) int {
	for i := range p.s.Job.Room.Lights {
		w, along, out, guessed, ok := spot(p.s, p.s.Survey.Layout.Lights[i].SpotRefs)
		if ok && !guessed && w.Point(along, out).Dist(fan) < sameSpot {
			return i
		}
	}
	return -1
}

// fanOver tells whether a light hangs from a fan.
func (p *planner) fanOver(light geom.V2) bool {
	for i := range p.s.Job.Room.Fans {
		w, along, out, guessed, ok := spot(p.s, p.s.Survey.Layout.Fans[i].SpotRefs)
		if ok && !guessed && w.Point(along, out).Dist(light) < sameSpot {
			return true
		}
	}
	return false
}

// lightWords names a light with its lowest point.
func (p *planner) lightWords(i int) line {
	refs := &p.s.Survey.Layout.Lights[i]
	if low := p.s.Survey.Value(refs.Lowest); !math.IsNaN(low) {
		return p.value("light " + p.read(low, p.known.firm(p.s.Survey.Key(refs.Lowest))))
	}
	return p.soft("light")
}

func (p *planner) lights() {
	for i, f := range p.s.Job.Room.Lights {
		if f.Kind == "wall" {
			continue
		}
		refs := &p.s.Survey.Layout.Lights[i]
		ref := "light." + keyOr(f.Key, i)
		w, along, out, guessed, ok := spot(p.s, refs.SpotRefs)
		if !ok {
			continue
		}
		c := p.on(w.Point(along, out))
		r := p.st.Tick * 0.5
		if wide := p.s.Survey.Value(refs.Wide); wide > 0 {
			r = max(p.mm(wide/2), p.st.Tick*0.35)
		}
		p.spots[ref] = c
		p.lamp(ref, c, r, guessed)
		if guessed {
			p.notIn(ref, "light", c.Plus(render.Point{Y: r + p.st.Body.Leading()}))
			continue
		}
		if !p.fanOver(w.Point(along, out)) {
			p.nameOf(ref, c, c.Plus(render.Point{Y: r + p.st.Body.Leading()*0.8}), 10, p.lightWords(i))
		}
	}
}

// lamp is a dashed ring with a cross.
func (p *planner) lamp(ref string, c render.Point, r render.Paper, guessed bool) {
	pen := p.st.Thin
	if guessed {
		pen = pen.In(render.InkCannotTell)
	}
	d := r * 0.7071
	cross := append(render.Line(render.Point{X: c.X - d, Y: c.Y - d}, render.Point{X: c.X + d, Y: c.Y + d}),
		render.Line(render.Point{X: c.X - d, Y: c.Y + d}, render.Point{X: c.X + d, Y: c.Y - d})...)
	p.stroke(ref, cross, pen)
	p.stroke(ref, render.Circle(c, r), pen.Dashed(p.st.Behind))
}

func (p *planner) alarms() {
	for i, f := range p.s.Job.Room.Alarms {
		refs := &p.s.Survey.Layout.Alarms[i]
		ref := "alarm." + keyOr(f.Key, i)
		w, along, out, guessed, ok := spot(p.s, refs.SpotRefs)
		if !ok {
			continue
		}
		at := place{w: w, lo: along, hi: along}
		c := p.on(w.Point(along, out))
		if f.In == "wall" {
			c = c.Plus(p.inwards(at, float64(p.st.Tick)*0.5))
		}
		p.spots[ref] = c
		if guessed {
			p.notIn(ref, "smoke alarm", c)
			continue
		}
		p.outlined(ref, render.Circle(c, p.st.Tick*0.5), render.InkPaper, p.st.Thin)
		p.stroke(ref, render.Circle(c, p.st.Tick*0.25), p.st.Thin)
		p.nameOf(ref, c, c.Plus(render.Point{Y: p.st.Body.Leading()}), 10, p.soft("smoke alarm"))
	}
}

func (p *planner) hatches() {
	for i, f := range p.s.Job.Room.Hatches {
		refs := &p.s.Survey.Layout.Hatches[i]
		ref := "hatch." + keyOr(f.Key, i)
		at, out, deep, ok := area(p.s, refs.SpotRefs, refs.Wide, refs.Deep, usualPiece)
		switch {
		case !ok:
			continue
		case at.guessed:
			p.unplaced(ref, "hatch", at, out)
			continue
		}
		quad := at.quad(out, out+deep)
		p.stroke(ref, p.shape(quad), p.st.Behind)
		p.spots[ref] = p.on(at.w.Point(at.middle(), out+deep/2))
		p.name(ref, p.spots[ref], 10, p.soft("hatch above"))
	}
}

func (p *planner) ceilingGrilles() {
	for i, r := range p.s.Job.Room.Registers {
		refs := &p.s.Survey.Layout.Registers[i]
		at, out, deep, ok := area(p.s, refs.SpotRefs, refs.Wide, refs.Deep, usualGrille)
		if r.In != "ceiling" || !ok {
			continue
		}
		ref := "register." + keyOr(r.Key, i)
		pen := p.st.Behind
		if at.guessed {
			pen = pen.In(render.InkCannotTell)
			p.notIn(ref, registerWord(r.Kind), p.on(at.w.Point(at.middle(), out+deep+100)))
		} else {
			p.name(ref, p.on(at.w.Point(at.middle(), out+deep/2)), 10, p.soft(registerWord(r.Kind)+" above"))
		}
		p.spots[ref] = p.on(at.w.Point(at.middle(), out+deep/2))
		p.stroke(ref, p.shape(at.quad(out, out+deep)), pen)
	}
}

func (p *planner) beams() {
	for i, b := range p.s.Job.Room.Beams {
		refs := &p.s.Survey.Layout.Beams[i]
		out, wide := p.s.Survey.Value(refs.Out), p.s.Survey.Value(refs.Wide)
		w := wallNamed(p.s, b.Along)
		if w == nil || math.IsNaN(out+wide) {
			continue
		}
		ref := "beam." + keyOr(b.Key, i)
		for _, o := range []float64{out, out + wide} {
			for _, seg := range p.across(w.Point(0, o), w.Dir) {
				p.stroke(ref, p.line(seg[0], seg[1]), p.st.Behind)
			}
		}
		words := "beam"
		if under := p.s.Survey.Value(refs.Under); !math.IsNaN(under) {
			words += ", underside " + p.read(under, p.known.firm(p.s.Survey.Key(refs.Under)))
		}
		p.spots[ref] = p.on(w.Point(w.Len/2, out+wide/2))
		p.name(ref, p.spots[ref], 25, p.soft(words))
	}
}

// across returns the pieces of a line through a point that lie in the room.
func (p *planner) across(a, dir geom.V2) [][2]geom.V2 { return crossing(p.s.Outline, a, dir) }
