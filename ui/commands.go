package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
)

// show goes to a stage.
func (w *Window) show(s stage) {
	o, ok := w.stages[s]
	if !ok || w.session.Job() == nil {
		return
	}
	w.stage = s
	w.status.at("")
	w.room.redraw()
	w.middle.Objects = []fyne.CanvasObject{o}
	w.middle.Refresh()
	w.tape.redraw()
	w.status.at("")
	switch s {
	case bedStage:
		w.bed.shown()
	case placingStage:
		w.place.shown()
		w.place.rest()
	}
}

// fitAll shows all of what the stage draws.
func (w *Window) fitAll() {
	if w.stage == roomStage {
		w.room.plan.fitAll()
		return
	}
	if w.stage == bedStage {
		w.bed.turnBack()
		return
	}
	w.place.fitAll()
}

// settleFields hands on what is typed and not handed on yet.
func (w *Window) settleFields() { w.win.Canvas().Unfocus() }

// undo takes the last step back, of the field that is typed in or of the job.
func (w *Window) undo() {
	if e, ok := w.win.Canvas().Focused().(*widget.Entry); ok {
		e.TypedShortcut(&fyne.ShortcutUndo{})
		return
	}
	w.session.Undo()
}

func (w *Window) redo() {
	if e, ok := w.win.Canvas().Focused().(*widget.Entry); ok {
		e.TypedShortcut(&fyne.ShortcutRedo{})
		return
	}
	w.session.Redo()
}

// showIn changes the unit that lengths are shown and read in.
func (w *Window) showIn(unit string) {
	if w.session.Job() == nil {
		w.live.usual = map[string]length.Unit{"in": length.Inches, "mm": length.Millimetres}[unit]
		w.live.tell()
		return
	}
	if j := w.session.Job(); j != nil && j.Unit != unit {
		w.do("Show "+map[string]string{"in": "feet and inches", "mm": "millimetres"}[unit], "", func(j *job.Job) (*job.Job, error) {
			return jobfile.Set(j, jobfile.Change{Key: "unit", Text: unit})
		})
	}
}

// do makes an edit and shows what kept it from being made.
func (w *Window) do(name, key string, edit func(*job.Job) (*job.Job, error)) {
	if err := w.session.Do(name, key, edit); err != nil {
		w.trouble(name, plain(err))
	}
}
