package view

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/survey"
)

// Sizes at which things are drawn that nobody measured, in mm.
const (
	usualGrille = 300.0
	usualPiece  = 500.0
	outletWide  = 70.0
)

// unplaced draws something whose place nobody read: dashed, in the middle of its wall, with the sign of what is not in.
func (p *planner) unplaced(ref, name string, at place, out float64) {
	quad := at.quad(out, out+max(60, (at.hi-at.lo)/5))
	p.stroke(ref, p.shape(quad), p.st.Behind.In(render.InkCannotTell))
	p.notIn(ref, name, p.on(at.w.Point(at.middle(), out)).Plus(p.inwards(at, float64(p.st.Body.Leading())*1.6)))
}

// notIn asks for a name with the dashed ring.
func (p *planner) notIn(ref, name string, home render.Point) {
	p.spots[ref], p.rings[ref] = home, true
	p.notes = append(p.notes, label{
		ref: ref, lines: []line{{name, p.st.Body, render.InkCannotTell}}, home: home, near: 14, dot: home, sign: render.SignCannotTell, signs: true, inside: true,
	})
}

// studs puts a dot in the wall for every stud of the bed's wall: filled where it was found twice.
func (p *planner) studs() { p.studsIn(p.bedWall()) }

func (p *planner) studsIn(w *fit.Wall) {
	if w == nil {
		return
	}
	deep := p.walls[w.Index].deep
	gaps := p.walls[w.Index].gaps
	for _, st := range studsOf(p.s, w) {
		if slices.ContainsFunc(gaps, func(g gap) bool { return g.lo < st.at && st.at < g.hi }) {
			continue
		}
		at := p.on(w.Point(st.at, -deep/2))
		sign := render.DotOpen
		if st.found == "twice" {
			sign = render.DotFilled
		}
		p.spots[st.ref] = at
		p.add(sign.At(st.ref, at, p.st.Tick*0.9)...)
	}
}

// bedWall returns the wall the bed stands at, or is to stand at.
func (p *planner) bedWall() *fit.Wall {
	if p.s.At != nil {
		return p.s.At
	}
	return wallNamed(p.s, p.s.Job.Place.Wall)
}

// stud is the centre of a stud along its wall and how it was found.
type stud struct {
	ref, found string
	at         float64
}

func studsOf(s *fit.Scene, w *fit.Wall) []stud {
	var out []stud
	for _, r := range w.Refs.Studs {
		at := s.Survey.Value(r.At)
		if math.IsNaN(at) {
			continue
		}
		if r.FromEnd {
			at = w.Len - at
		}
		out = append(out, stud{"wall." + w.Key + ".stud." + r.Key, r.Found, at})
	}
	slices.SortFunc(out, func(a, b stud) int { return cmp.Compare(a.at, b.at) })
	return out
}

// floorThings draws what stands on the floor or is let into it.
func (p *planner) floorThings() {
	r, l := &p.s.Job.Room, &p.s.Survey.Layout
	for i := range r.Registers {
		if r.Registers[i].In != "ceiling" {
			p.register("register."+keyOr(r.Registers[i].Key, i), r.Registers[i].In, registerWord(r.Registers[i].Kind), &l.Registers[i])
		}
	}
	for i := range r.Heaters {
		h := &l.Heaters[i]
		p.piece("heater."+keyOr(r.Heaters[i].Key, i), heaterWord(r.Heaters[i].Kind), h.SpotRefs, h.Wide, h.Deep, true)
	}
	for i := range r.Pieces {
		f := &l.Pieces[i]
		p.piece("furniture."+keyOr(r.Pieces[i].Key, i), keyOr(r.Pieces[i].Key, i), f.SpotRefs, f.Wide, f.Deep, false)
	}
}

func registerWord(kind string) string {
	if kind == "return" {
		return "return"
	}
	return "register"
}

func heaterWord(kind string) string {
	if kind == "" {
		return "heater"
	}
	return kind
}

// register draws a grille: a box with bars across, in the wall a thin one.
func (p *planner) register(ref, in, name string, r *survey.RegisterRefs) {
	deep := r.Deep
	if in == "wall" {
		deep = 0
	}
	at, out, depth, ok := area(p.s, r.SpotRefs, r.Wide, deep, usualGrille)
	if !ok {
		return
	}
	if in == "wall" {
		out, depth = 0, 25
		at.guessed = math.IsNaN(p.s.Survey.Value(r.At)) || math.IsNaN(p.s.Survey.Value(r.Wide))
	}
	if at.guessed {
		p.stroke(ref, p.shape(at.quad(out, out+depth)), p.st.Behind.In(render.InkCannotTell))
		p.notIn(ref, name, p.on(at.w.Point(at.middle(), out+depth)).Plus(p.inwards(at, float64(p.st.Body.Leading()))))
		return
	}
	quad := at.quad(out, out+depth)
	p.outlined(ref, p.shape(quad), render.InkPaper, p.st.Thin)
	p.stroke(ref, p.bars(at, out, depth), p.st.Thin)
	p.spots[ref] = p.on(at.w.Point(at.middle(), out+depth/2))
	p.nameOf(ref, p.spots[ref], p.on(at.w.Point(at.middle(), out+depth)).Plus(p.inwards(at, float64(p.st.Body.Leading()))), 9, p.soft(name))
}

// bars returns strokes across a grille.
func (p *planner) bars(at place, out, depth float64) render.Path {
	n := max(2, int(float64(p.mm(at.hi-at.lo))/1.6))
	var path render.Path
	for i := 1; i < n; i++ {
		x := at.lo + (at.hi-at.lo)*float64(i)/float64(n)
		path = append(path, p.line(at.w.Point(x, out), at.w.Point(x, out+depth))...)
	}
	return path
}

// piece draws something that stands in the room, with its name in it.
func (p *planner) piece(ref, name string, r survey.SpotRefs, wide, deep survey.Ref, barred bool) {
	at, out, depth, ok := area(p.s, r, wide, deep, usualPiece)
	if !ok {
		return
	}
	if at.guessed {
		p.unplaced(ref, name, at, out)
		return
	}
	quad := at.quad(out, out+depth)
	ink := render.InkWell
	if barred {
		ink = render.InkPaper
	}
	p.outlined(ref, p.shape(quad), ink, p.st.Seen)
	home := p.on(at.w.Point(at.middle(), out+depth/2))
	if barred {
		p.stroke(ref, p.bars(at, out, depth), p.st.Thin)
		home = p.on(at.w.Point(at.middle(), out+depth)).Plus(p.inwards(at, float64(p.st.Body.Leading())))
	}
	p.spots[ref] = p.on(at.w.Point(at.middle(), out+depth/2))
	p.notes = append(p.notes, label{ref: ref, lines: []line{p.soft(name)}, home: home, near: 12, dot: p.spots[ref], inside: true})
}
