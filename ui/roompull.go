package ui

import (
	"errors"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/room/geom"
	"bunkwright/room/length"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// inRoom turns a way on the plan into one in the room, in mm.
func (p *roomPlan) inRoom(by render.Point) geom.V2 {
	t := view.Turned(p.r.w.live.scene, "")
	x, y := float64(by.X)/p.cam.scale, -float64(by.Y)/p.cam.scale
	return geom.V2{X: t.Cos*x + t.Sin*y, Y: -t.Sin*x + t.Cos*y}
}

// pointInRoom returns the point of the room at a place of the plan.
func (p *roomPlan) pointInRoom(at render.Point) geom.V2 {
	s := p.r.w.live.scene
	return s.Walls[0].A.Add(p.inRoom(at.Minus(p.cam.at)))
}

// grab takes hold of a corner, a wall or a thing, elsewhere of the drawing.
func (p *roomPlan) grab(at control.Pointed) bool {
	p.cam.held, p.pulled, p.shaped = p.cam.at, "", nil
	if p.scene() == nil {
		return false
	}
	if at.Button != desktop.MouseButtonTertiary && len(p.scene().Walls) > 0 {
		p.pulled = pullable(at.Refs)
		if thing := p.r.thingUnder(at.Refs); thing != "" {
			p.pulled = thing
			p.r.choose(thing, false)
		}
	}
	return true
}

// pullable returns the corner or wall to pull: what is on top decides, readings and what is in a wall are not pulled.
func pullable(refs []string) string {
	if len(refs) == 0 {
		return ""
	}
	table, name, _ := strings.Cut(refs[0], ".")
	if (table == "corner" || table == "wall") && !strings.Contains(name, ".") {
		return refs[0]
	}
	return ""
}

// drag pulls a wall or corner, moves a thing, or moves the drawing.
func (p *roomPlan) drag(by render.Point, mod fyne.KeyModifier) {
	if p.pulled == "" {
		p.cam.at = p.cam.held.Plus(by)
		p.redraw()
		return
	}
	if !isShape(p.pulled) {
		p.carry(p.inRoom(by).At(0), by.Length())
		return
	}
	l := p.r.w.live
	pull := session.Pulling{Step: pullStep(l.unit()), Override: mod&fyne.KeyModifierShift != 0}
	shaped, err := p.pull(p.pulled, p.inRoom(by), pull)
	if err != nil {
		p.refuse(err)
		return
	}
	p.display(shaped, pulledWords(shaped))
}

// pullStep is what lengths are rounded to that a hand draws: it knows no better.
func pullStep(u length.Unit) length.Length {
	if u == length.Millimetres {
		return 10 * length.Millimetre
	}
	return length.Inch
}

func (p *roomPlan) pull(ref string, by geom.V2, how session.Pulling) (session.Reshaped, error) {
	s := p.r.w.live.scene
	table, name, _ := strings.Cut(ref, ".")
	if table == "corner" {
		return session.PullCorner(s, slices.Index([]rune(s.Job.Room.Outline), []rune(name)[0]), by, how)
	}
	return session.PullWall(s, slices.Index(session.WallKeys(&s.Job.Room), name), by, how)
}

// refuse says why the room keeps its shape.
func (p *roomPlan) refuse(err error) {
	p.shaped, p.shown = nil, nil
	var read *session.WasReadError
	words := err.Error()
	if errors.As(err, &read) {
		name := p.r.nameOf(session.Subject(read.Key))
		words = name + " was read: type what the tape says, or hold Shift to put its readings aside and draw it by hand"
	}
	p.r.w.status.at(words)
	p.redraw()
}

// pulledWords say what a pull changes.
func pulledWords(r session.Reshaped) string {
	var parts []string
	for _, t := range r.Lengths {
		parts = append(parts, t.Wall[:1]+" to "+t.Wall[1:]+" "+t.First)
	}
	if len(parts) == 0 {
		return "no length changes"
	}
	return strings.Join(parts, ", ") + ": assumed, until the tape says so"
}

// origin returns where the first corner stands on paper: while a wall is pulled, the corner across from it keeps its place under the hand.
func (p *roomPlan) origin() render.Point {
	s := p.r.w.live.scene
	if p.shown == nil || s == nil || len(s.Walls) == 0 || len(p.shown.Walls) == 0 || !isShape(p.pulled) {
		return p.cam.at
	}
	table, name, _ := strings.Cut(p.pulled, ".")
	i := slices.Index(session.WallKeys(&s.Job.Room), name)
	if table == "corner" {
		i = strings.Index(s.Job.Room.Outline, name)
	}
	k := (i + 2) % len(s.Walls)
	now := strings.Index(p.shown.Job.Room.Outline, s.Job.Room.Outline[k:k+1])
	if now < 0 {
		return p.cam.at
	}
	was, is := fromFirst(s, k), fromFirst(p.shown, now)
	return p.cam.at.Plus(render.Point{X: render.Paper((was.X - is.X) * p.cam.scale), Y: render.Paper((is.Y - was.Y) * p.cam.scale)})
}

// fromFirst returns the way from the first corner to another as the plan lies.
func fromFirst(s *fit.Scene, k int) geom.V2 {
	way := s.Outline[k].Sub(s.Outline[0])
	return view.Turned(s, "").Dir(way.At(0)).XY()
}

// drop makes the pull one edit.
func (p *roomPlan) drop() {
	shaped, ref := p.shaped, p.pulled
	p.cam.at = p.origin()
	p.shaped, p.shown, p.pulled = nil, nil, ""
	if shaped == nil || len(shaped.Lengths) == 0 {
		p.redraw()
		p.r.form.redrawPicture()
		return
	}
	name, words := "Move "+p.r.nameOf(ref), pulledWords
	if !isShape(ref) {
		name, words = "Move the "+p.r.nameOf(ref), movedWords
	}
	p.r.w.do(name, "", func(*job.Job) (*job.Job, error) { return session.Kept(*shaped) })
	p.r.choose(ref, false)
	p.r.w.status.at(words(*shaped))
}

// giveUp ends a pull, or leaves what was to be added.
func (p *roomPlan) giveUp() {
	p.sketch.GiveUp()
	p.shaped, p.shown, p.pulled, p.r.adding = nil, nil, "", ""
	p.r.w.status.at("")
	p.redraw()
	p.r.form.redrawPicture()
}

// offer shows what can be added to the room.
func (p *roomPlan) offer() {
	if p.r.w.session.Job() == nil {
		return
	}
	var items []*fyne.MenuItem
	for _, a := range session.Addables {
		items = append(items, fyne.NewMenuItem(a.Word, func() { p.begin(a.Word) }))
	}
	at := fyne.CurrentApp().Driver().AbsolutePositionForObject(p.add).AddXY(0, p.add.Size().Height)
	widget.ShowPopUpMenuAtPosition(fyne.NewMenu("", items...), p.r.w.win.Canvas(), at)
}

// begin waits for a click that says where something is.
func (p *roomPlan) begin(word string) {
	if s := p.scene(); s == nil || len(s.Walls) == 0 {
		p.r.w.status.at(session.ErrNoShape.Error())
		return
	}
	p.r.adding = word
	p.r.w.win.Canvas().Focus(p.sketch)
	p.r.w.status.at("click where the " + word + " is, on the plan or on the picture of the wall; Enter puts it at the chosen wall, Esc leaves it")
}

// addAt puts what is to be added where the pointer is.
func (p *roomPlan) addAt(at render.Point) { p.addThere(p.pointInRoom(at)) }

// addAtWall puts it at the middle of the chosen wall: for those who use no pointer.
func (p *roomPlan) addAtWall() {
	s := p.r.w.live.scene
	w := &s.Walls[0]
	for i := range s.Walls {
		if session.Subject(p.r.chosen) == "wall."+s.Walls[i].Key {
			w = &s.Walls[i]
		}
	}
	p.addThere(w.Point(w.Len/2, 600))
}

// addOnWall puts it where the picture of a wall was clicked.
func (p *roomPlan) addOnWall(wall string, along, up float64) {
	p.put(func(s *fit.Scene, what session.Addable) (*job.Job, string, error) {
		return session.AddOnWall(s, what, wall, along, up)
	})
}

func (p *roomPlan) addThere(at geom.V2) {
	p.put(func(s *fit.Scene, what session.Addable) (*job.Job, string, error) { return session.AddAt(s, what, at) })
}

// put makes adding one edit, and goes to what is to be read first.
func (p *roomPlan) put(add func(*fit.Scene, session.Addable) (*job.Job, string, error)) {
	i := slices.IndexFunc(session.Addables, func(a session.Addable) bool { return a.Word == p.r.adding })
	p.r.adding = ""
	s := p.r.w.live.scene
	if i < 0 || s == nil {
		return
	}
	what, key := session.Addables[i], ""
	p.r.w.do("Add a "+what.Word, "", func(*job.Job) (next *job.Job, err error) {
		next, key, err = add(s, what)
		return next, err
	})
	if key == "" {
		return
	}
	p.r.choose(key, true)
	p.r.w.status.at("the " + what.Word + " is where you pointed, assumed until its places are typed")
}
