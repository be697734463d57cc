package ui

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/room/geom"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// heldFast is how far a hand must go before a thing moves whose place somebody measured: a slip is no reason to forget that.
var heldFast = render.Px(10)

// thingUnder returns the thing to move of what is under the pointer, "" for none: readings are clicked, not moved.
func (r *roomPanel) thingUnder(refs []string) string {
	j := r.w.session.Job()
	if j == nil || len(refs) == 0 || isReading(refs[0]) {
		return ""
	}
	if key := session.Subject(refs[0]); session.Movable(j, key) {
		return key
	}
	return ""
}

// isShape tells whether what is pulled is a wall or a corner, not a thing.
func isShape(ref string) bool {
	table, _, _ := strings.Cut(ref, ".")
	return table == "wall" || table == "corner"
}

// carry moves the thing in the hand by a way in the room, z up; far is how far the pointer went.
func (p *roomPlan) carry(by geom.V3, far render.Paper) {
	l := p.r.w.live
	if p.shaped == nil && far < heldFast && session.PlaceRead(l.of, p.pulled) {
		p.r.w.status.at("the " + p.r.nameOf(p.pulled) + " was measured: pull farther to put that aside, or type what the tape says")
		return
	}
	moved, err := session.MoveThing(l.scene, p.pulled, by, pullStep(l.unit()))
	if err != nil {
		p.refuse(err)
		return
	}
	p.display(moved, movedWords(moved))
}

// display shows a room that is pulled or has something moved in it, before it is an edit.
func (p *roomPlan) display(r session.Reshaped, words string) {
	p.shaped = &r
	if scene, err := fit.NewScene(r.Job); err == nil {
		p.shown = scene
	}
	p.r.w.status.at(words)
	p.redraw()
	p.r.form.redrawPicture()
}

// movedWords say where a thing is now.
func movedWords(r session.Reshaped) string {
	var parts []string
	for _, t := range r.Lengths {
		switch k := t.Key[strings.LastIndexByte(t.Key, '.')+1:]; k {
		case "at", "far", "rest":
			parts = append(parts, t.First+" from "+t.From)
		case "out":
			parts = append(parts, t.First+" out from "+t.Wall[:1]+" to "+t.Wall[1:])
		default:
			parts = append(parts, strings.ToLower(labelOf(t.Key))+" "+t.First)
		}
	}
	if len(parts) == 0 {
		return "it stays where it is"
	}
	words := strings.Join(parts, ", ") + ": assumed, until the tape says so"
	switch n := len(r.Aside); n {
	case 0:
	case 1:
		words += "; what was read is put aside"
	default:
		words += fmt.Sprintf("; %d measures that were read are put aside", n)
	}
	return words
}

// nudge moves the chosen thing by so many steps as the plan lies, y up.
func (r *roomPanel) nudge(x, y float64) {
	l, key := r.w.live, session.Subject(r.chosen)
	if l.scene == nil {
		return
	}
	step := stepOf(l.unit())
	t := view.Turned(l.scene, "")
	x, y = x*step.MM(), y*step.MM()
	by := geom.V2{X: t.Cos*x + t.Sin*y, Y: -t.Sin*x + t.Cos*y}
	moved, err := session.MoveThing(l.scene, key, by.At(0), step)
	if err != nil {
		r.plan.refuse(err)
		return
	}
	if len(moved.Lengths) == 0 {
		r.w.status.at("the " + r.nameOf(key) + " goes no farther that way")
		return
	}
	r.w.do("Move the "+r.nameOf(key), "nudge "+key, func(*job.Job) (*job.Job, error) { return session.Kept(moved) })
	r.w.status.at(movedWords(moved))
}

// nudgeKey nudges the chosen thing, where it can be moved, by an arrow key: by a step, with Shift by eight.
func (r *roomPanel) nudgeKey(name fyne.KeyName) bool {
	way, ok := map[fyne.KeyName][2]float64{fyne.KeyLeft: {-1, 0}, fyne.KeyRight: {1, 0}, fyne.KeyUp: {0, 1}, fyne.KeyDown: {0, -1}}[name]
	if j := r.w.session.Job(); !ok || j == nil || !session.Movable(j, session.Subject(r.chosen)) {
		return false
	}
	steps := 1.0
	if r.shifted() {
		steps = 8
	}
	r.nudge(way[0]*steps, way[1]*steps)
	return true
}

// shifted tells whether Shift is held.
func (r *roomPanel) shifted() bool {
	d, ok := r.w.app.Driver().(desktop.Driver)
	return ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0
}

// handle lets what is seen on the picture of a wall be moved: along it and up.
func (f *roomForm) handle(s *control.Sketch, wall string) {
	p := f.r.plan
	scale := 0.0
	s.Grab = func(at control.Pointed) bool {
		j := f.r.w.session.Job()
		p.pulled, p.shaped, scale = f.r.thingUnder(at.Refs), nil, s.Drawing().Scale
		if p.pulled == "" || p.scene() == nil || session.OnWall(j, p.pulled) != wall {
			p.pulled = ""
		}
		return p.pulled != ""
	}
	s.Drag = func(by render.Point, _ fyne.KeyModifier) {
		for _, w := range f.r.w.live.scene.Walls {
			if w.Key == wall {
				along := w.Dir.Mul(float64(by.X) / scale)
				p.carry(geom.V3{X: along.X, Y: along.Y, Z: -float64(by.Y) / scale}, by.Length())
			}
		}
	}
	s.Drop = p.drop
	s.Shape = func(at control.Pointed) desktop.Cursor {
		if len(at.Refs) > 0 && pointed(at.Refs) != "wall."+wall {
			return desktop.PointerCursor
		}
		return desktop.DefaultCursor
	}
}

// redrawPicture draws the wall of the form anew while something on it moves.
func (f *roomForm) redrawPicture() {
	if f.wall != nil {
		f.wall.Redraw()
	}
}
