package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"bunkwright/ui/session"
)

// stops are what the keys go through: corners and walls round the room, then what is in it.
func (r *roomPanel) stops() (keys []string) {
	j := r.w.session.Job()
	if j == nil {
		return nil
	}
	for _, k := range session.WallKeys(&j.Room) {
		keys = append(keys, "corner."+k[:1], "wall."+k)
	}
	for _, t := range session.Things(&j.Room) {
		keys = append(keys, t.Key)
	}
	return keys
}

// alike tells whether two keys are both of walls, both of corners, or both of things.
func alike(a, b string) bool {
	kind := func(key string) string {
		table, _, _ := strings.Cut(key, ".")
		switch table {
		case "wall", "corner":
			return table
		case "room", "floor", "diagonal":
			return "wall"
		}
		return ""
	}
	return kind(a) == kind(b)
}

// next goes to the wall, corner or thing after the chosen one, or by -1 before it.
func (r *roomPanel) next(by int) {
	subject := session.Subject(r.chosen)
	r.through(by, slices.DeleteFunc(r.stops(), func(k string) bool { return !alike(k, subject) }))
}

// through goes to the key after the chosen one, or by -1 before it; from elsewhere to the first.
func (r *roomPanel) through(by int, keys []string) {
	if len(keys) == 0 {
		return
	}
	to := 0
	if i := slices.Index(keys, session.Subject(r.chosen)); i >= 0 {
		to = (i + by + len(keys)) % len(keys)
	}
	r.choose(keys[to], false)
	r.w.status.at(r.keySentence())
}

// keySentence says what the keys do with what is chosen.
func (r *roomPanel) keySentence() string {
	subject := session.Subject(r.chosen)
	words := r.nameOf(subject)
	switch table, _, _ := strings.Cut(subject, "."); {
	case table == "wall":
		return words + ": Tab to its numbers, C adds a corner, Left and Right go round the walls"
	case table == "corner":
		return words + ": Del removes it, Left and Right go round the corners"
	case session.Movable(r.w.session.Job(), subject):
		return words + ": arrows move it by the step, Shift by eight; Tab to its numbers, Del removes it"
	}
	return words + ": Tab to its numbers"
}

// focused explains the keys of the plan.
func (p *roomPlan) focused(on bool) {
	if on && p.r.adding == "" {
		p.r.w.status.at("the room: Page Up and Page Down go through corners, walls and things; chosen is " + p.r.nameOf(session.Subject(p.r.chosen)))
	}
}

// key does what the keys do while the plan has the focus: Tab goes to the numbers of what is chosen.
func (p *roomPlan) key(e *fyne.KeyEvent) bool {
	switch {
	case e.Name != fyne.KeyTab:
		return p.r.key(e)
	case p.r.shifted():
		p.r.w.win.Canvas().FocusPrevious()
	default:
		p.r.form.focus(p.r.chosen)
	}
	return true
}

// key does what the keys do while no field has the focus.
func (r *roomPanel) key(e *fyne.KeyEvent) bool {
	if r.nudgeKey(e.Name) {
		return true
	}
	switch e.Name {
	case fyne.KeyDelete, fyne.KeyBackspace:
		r.removeChosen()
	case fyne.KeyEscape:
		r.plan.giveUp()
	case fyne.KeyLeft:
		r.next(-1)
	case fyne.KeyRight:
		r.next(1)
	case fyne.KeyPageUp:
		r.through(-1, r.stops())
	case fyne.KeyPageDown:
		r.through(1, r.stops())
	case fyne.KeyUp:
		r.table.step(-1)
	case fyne.KeyDown:
		r.table.step(1)
	case fyne.KeyReturn, fyne.KeyEnter:
		if r.adding != "" {
			r.plan.addAtWall()
			return true
		}
		r.form.focus(r.chosen)
	case fyne.KeyInsert, fyne.KeyA:
		r.plan.offer()
	case fyne.KeyC:
		r.addCorner()
	case fyne.KeyF:
		r.plan.fitAll()
	default:
		return false
	}
	return true
}
