package ui

import (
	"errors"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/ui/session"
)

func (w *Window) show(s stage) {
	w.stage = s
	w.tape.redraw()
}

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
	if j := w.session.Job(); j != nil && j.Unit != unit {
		w.do("Show "+map[string]string{"in": "feet and inches", "mm": "millimetres"}[unit], "", func(j *job.Job) (*job.Job, error) {
			return jobfile.Set(j, jobfile.Change{Key: "unit", Text: unit})
		})
	}
}

// do makes an edit and shows what kept it from being made.
func (w *Window) do(name, key string, edit func(*job.Job) (*job.Job, error)) {
	if err := w.session.Do(name, key, edit); err != nil {
		w.sayTrouble(name, err)
	}
}

func (w *Window) sayTrouble(what string, err error) {
	d := dialog.NewInformation(what, err.Error(), w.win)
	d.Show()
}

// save writes the job to its file, or asks for one.
func (w *Window) save() {
	switch err := w.session.Save(); {
	case errors.Is(err, session.ErrNoFile):
		w.saveAs()
	case err != nil:
		w.sayTrouble("Not saved", err)
	default:
		w.status.saved = "saved " + time.Now().Format("15:04")
		w.status.redraw()
	}
}

func (w *Window) saveAs() {
	d := dialog.NewFileSave(func(to fyne.URIWriteCloser, err error) {
		if err != nil || to == nil {
			return
		}
		path := to.URI().Path()
		to.Close()
		if err := w.session.SaveAs(path); err != nil {
			w.sayTrouble("Not saved", err)
		}
	}, w.win)
	d.SetFileName("bunk.toml")
	d.Resize(w.win.Canvas().Size())
	d.Show()
}

func (w *Window) open() {
	d := dialog.NewFileOpen(func(from fyne.URIReadCloser, err error) {
		if err != nil || from == nil {
			return
		}
		from.Close()
		if err := w.session.Open(from.URI().Path()); err != nil {
			w.sayTrouble("Not opened", err)
		}
	}, w.win)
	d.Resize(w.win.Canvas().Size())
	d.Show()
}
