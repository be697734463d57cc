package ui

import (
	"strings"

	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/job"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// roomPanel is where the room is described: the plan with its readings, the form of what is chosen, the table of readings side by side.
type roomPanel struct {
	w      *Window
	object *control.Panes
	plan   *roomPlan
	form   *roomForm
	table  *roomTable
	chosen string // key of a wall, a thing, or a reading
	open   roomMark
	adding string // word of the thing that the next click on the plan adds, "" for none
}

func newRoomPanel(w *Window) *roomPanel {
	r := &roomPanel{w: w, chosen: "wall.AB"}
	r.plan = newRoomPlan(r)
	r.form = newRoomForm(r)
	r.table = newRoomTable(r)
	r.object = control.NewPanes(r.plan.object, r.form.object, r.table.object, [2]float32{0.54, 0.71})
	w.live.watch(r.redraw)
	return r
}

// hook makes it one of the stages of the window.
func (r *roomPanel) hook() {
	r.w.stages[roomStage] = container.NewStack(r.object)
	r.w.jumps[roomStage] = func(key string) { r.choose(key, true) }
}

// redraw follows the job while the stage is shown; a bed that is dragged in another one is none of its business.
func (r *roomPanel) redraw() {
	if r.w.stage != roomStage {
		return
	}
	r.keep()
	r.plan.redraw()
	r.form.follow()
	r.table.redraw()
}

// keep holds the choice on something that is there: after an undo the chosen thing may be gone.
func (r *roomPanel) keep() {
	j := r.w.session.Job()
	if j == nil || session.Exists(j, session.Subject(r.chosen)) {
		return
	}
	r.chosen = "room"
	if keys := session.WallKeys(&j.Room); len(keys) > 0 {
		r.chosen = "wall." + keys[0]
	}
}

// choose shows the form of a wall, thing or reading and lights it on the plan; focus goes to its field.
func (r *roomPanel) choose(key string, focus bool) {
	if j := r.w.session.Job(); j == nil || !session.Exists(j, session.Subject(key)) {
		return
	}
	if r.chosen != key {
		r.chosen = key
		r.plan.redraw()
		r.form.follow()
		r.table.redraw()
		r.table.reveal(key)
	}
	if focus {
		r.form.focus(key)
	}
}

// set makes a typed text an edit of the room.
func (r *roomPanel) set(key, label, text string) error {
	return plain(r.w.session.Do("Set "+label, "", func(j *job.Job) (*job.Job, error) { return session.SetRoom(j, key, text) }))
}

// removeChosen takes the chosen thing out of the room, or forgets the chosen reading.
func (r *roomPanel) removeChosen() {
	j := r.w.session.Job()
	subject := session.Subject(r.chosen)
	table, _, _ := strings.Cut(subject, ".")
	switch {
	case j == nil:
	case session.Element(r.chosen) != "":
		element := session.Element(r.chosen)
		r.w.do("Remove a "+strings.Split(element, ".")[2], "", func(j *job.Job) (*job.Job, error) { return session.RemoveThing(j, element) })
	case r.chosen != subject:
		key := r.chosen
		r.w.do("Forget a reading", "", func(j *job.Job) (*job.Job, error) { return session.Forget(j, key) })
	case table == "corner":
		r.removeCorner()
	case table == "wall" || table == "room" || table == "floor":
		r.w.status.at("walls and floor stay; what is in the room can be removed, and corners can")
	default:
		name := r.nameOf(subject)
		r.w.do("Remove the "+name, "", func(j *job.Job) (*job.Job, error) { return session.RemoveThing(j, subject) })
		r.w.status.at("the " + name + " is removed; Undo brings it back")
	}
}

// toPlan gives the keys back to the plan.
func (r *roomPanel) toPlan() { r.w.win.Canvas().Focus(r.plan.sketch) }

// nameOf says in words what a key is of.
func (r *roomPanel) nameOf(subject string) string {
	j := r.w.session.Job()
	table, name, _ := strings.Cut(subject, ".")
	letters := []rune(name)
	switch {
	case table == "room" || table == "floor":
		return table
	case (table == "wall" || table == "diagonal") && len(letters) == 2:
		return table + " " + string(letters[0]) + " to " + string(letters[1])
	case table == "corner":
		return "corner " + name
	}
	for _, t := range session.Things(&j.Room) {
		if t.Key == subject {
			return t.Name
		}
	}
	return strings.ReplaceAll(subject, ".", " ")
}

// rename sets a text; where it is the name of the chosen thing, the choice goes along.
func (r *roomPanel) rename(key, label, text string) error {
	subject := session.Subject(r.chosen)
	if key != subject+".key" {
		return r.set(key, label, text)
	}
	was := r.chosen
	table, _, _ := strings.Cut(subject, ".")
	r.chosen = table + "." + text
	err := plain(r.w.session.Do("Rename", "", func(j *job.Job) (*job.Job, error) { return session.Rename(j, subject, text) }))
	if err != nil {
		r.chosen = was
	}
	return err
}

// sentenceOf explains a field of a reading.
func (r *roomPanel) sentenceOf(key, label string) string {
	words := label + keyWords(strings.TrimSuffix(key, ".2"))
	for _, t := range session.Readings(r.w.session.Job(), nil) {
		if t.Key == key {
			words += "; " + stateWords(t)
		}
	}
	return words
}
