package view

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/geom"
)

// leaves draws the leaves of a door, open, with what they sweep.
func (p *planner) leaves(ref string, d *room.Door, at place, thick float64) {
	switch d.Kind {
	case "slides":
		p.slidingLeaves(ref, at, max(thick, 20))
	case "folds":
		p.foldingLeaves(ref, d, at, max(thick, 20))
	case "open":
	default:
		for _, l := range leavesOf(d, at) {
			p.leaf(ref, l, max(thick, 20), d)
		}
	}
}

// leaf is one leaf of a door: its pin, the way it lies shut, and its width.
type leaf struct {
	w         *fit.Wall
	pin, shut geom.V2
	wide      float64
}

// leavesOf returns the leaves of a hinged or folding door. Where nobody said at which side the pins are there is none.
func leavesOf(d *room.Door, at place) []leaf {
	near := leaf{at.w, at.w.Point(at.lo, 0), at.w.Dir, at.hi - at.lo}
	far := leaf{at.w, at.w.Point(at.hi, 0), at.w.Dir.Mul(-1), at.hi - at.lo}
	switch {
	case d.Leaves > 1:
		near.wide, far.wide = near.wide/2, far.wide/2
		return []leaf{near, far}
	case d.Hinge == "":
		return nil
	case d.Hinge == string([]rune(at.w.Key)[0]):
		return []leaf{near}
	}
	return []leaf{far}
}

// leaf draws a hinged leaf open as far as it goes.
func (p *planner) leaf(ref string, l leaf, thick float64, d *room.Door) {
	into := l.w.In
	if d.Swing == "out" {
		into = into.Mul(-1)
		l.pin = l.pin.Add(into.Mul(p.walls[l.w.Index].deep))
	}
	angle := math.Pi / 2
	if d.Opens > 0 {
		angle = min(d.Opens, 180) * math.Pi / 180
	}
	sin, cos := math.Sincos(angle)
	open := l.shut.Mul(cos).Add(into.Mul(sin))
	side := l.shut.Mul(sin).Sub(into.Mul(cos)) // towards the opening
	tip := l.pin.Add(open.Mul(l.wide))
	p.stroke(ref, p.sweep(l, into, angle), p.st.Thin)
	p.outlined(ref, p.shape(geom.Polygon{l.pin, tip, tip.Add(side.Mul(thick)), l.pin.Add(side.Mul(thick))}), render.InkBoard, p.st.Seen)
}

// sweep is the arc of a leaf's free edge from shut to open.
func (p *planner) sweep(l leaf, into geom.V2, angle float64) render.Path {
	pin, shut, in := p.view(l.pin), p.dir(l.shut), p.dir(into)
	from := math.Atan2(shut.Y, shut.X) * 180 / math.Pi
	turn := angle * 180 / math.Pi
	if shut.Cross(in) < 0 {
		turn = -turn
	}
	return render.Arc(p.pt(pin.X, pin.Y), p.mm(l.wide), from, from+turn)
}

// slidingLeaves draws two leaves that pass each other in the thickness of the wall.
func (p *planner) slidingLeaves(ref string, at place, thick float64) {
	w := &p.walls[at.w.Index]
	half := (at.hi-at.lo)/2 + thick
	for i, lo := range []float64{at.lo, at.hi - half} {
		out := w.deep/2 - float64(i)*thick
		quad := geom.Polygon{w.point(lo, out), w.point(lo+half, out), w.point(lo+half, out+thick), w.point(lo, out+thick)}
		p.outlined(ref, p.shape(quad), render.InkBoard, p.st.Thin)
	}
}

// foldingLeaves draws each leaf folded in two, open at half a right angle.
func (p *planner) foldingLeaves(ref string, d *room.Door, at place, thick float64) {
	dd := *d
	if dd.Hinge == "" && dd.Leaves < 2 {
		dd.Hinge = string([]rune(at.w.Key)[0])
	}
	for _, l := range leavesOf(&dd, at) {
		half := l.wide / 2
		knee := l.pin.Add(l.shut.Mul(half * 0.5)).Add(at.w.In.Mul(half * 0.866))
		end := l.pin.Add(l.shut.Mul(half))
		p.board(ref, l.pin, knee, thick)
		p.board(ref, knee, end, thick)
	}
}

// board draws a thin board between two points, its thickness to the right.
func (p *planner) board(ref string, a, b geom.V2, thick float64) {
	side := b.Sub(a).Unit().Right().Mul(thick)
	p.outlined(ref, p.shape(geom.Polygon{a, b, b.Add(side), a.Add(side)}), render.InkBoard, p.st.Thin)
}

func (p *planner) windows() {
	for i := range p.s.Job.Room.Windows {
		win, refs := &p.s.Job.Room.Windows[i], &p.s.Survey.Layout.Windows[i]
		at, ok := onWall(p.s, refs.OnWallRefs, refs.Wide, usualWindow)
		ref := "window." + keyOr(win.Key, i)
		switch {
		case !ok:
			continue
		case at.guessed:
			p.unplaced(ref, "window", at, 0)
			continue
		}
		p.window(ref, at)
		p.casing(ref, at, p.s.Survey.Value(refs.Casing), p.s.Survey.Value(refs.CasingDeep))
		p.windowLabel(ref, i, at)
	}
}

// window draws the glass in the opening, as two lines between the faces of the wall.
func (p *planner) window(ref string, at place) {
	w := &p.walls[at.w.Index]
	quad := func(out0, out1 float64) render.Path {
		return p.shape(geom.Polygon{w.point(at.lo, out0), w.point(at.hi, out0), w.point(at.hi, out1), w.point(at.lo, out1)})
	}
	p.outlined(ref, quad(0, w.deep), p.ground(), p.st.Seen)
	p.outlined(ref, quad(w.deep*0.38, w.deep*0.62), render.InkGlass, p.st.Thin)
}

func (p *planner) windowLabel(ref string, i int, at place) {
	refs := &p.s.Survey.Layout.Windows[i]
	lines := []line{p.soft("window")}
	if sill := p.s.Survey.Value(refs.Sill); !math.IsNaN(sill) {
		lines = append(lines, p.value("sill "+p.read(sill, p.known.firm(p.s.Survey.Key(refs.Sill)))))
	}
	p.spots[ref] = p.on(at.w.Point(at.middle(), -p.walls[at.w.Index].deep/2))
	home := p.on(at.w.Point(at.middle(), 0)).Plus(p.inwards(at, float64(p.st.Body.Leading())*1.4))
	p.notes = append(p.notes, label{ref: ref, lines: lines, home: home, near: 14, dot: p.on(at.w.Point(at.middle(), 0)), inside: true})
}

// inwards returns a way of d on paper from a wall into the room.
func (p *planner) inwards(at place, d float64) render.Point {
	in := p.dir(at.w.In)
	return render.Point{X: render.Paper(in.X), Y: render.Paper(-in.Y)}.Times(d)
}
