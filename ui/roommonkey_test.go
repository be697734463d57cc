package ui

import (
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// TestRoomMonkey works on the room at random: nothing panics, at any time the job can be saved and opened, and undoing everything gives back
// the first job.
func TestRoomMonkey(t *testing.T) {
	const strokes = 90
	for _, name := range []string{"attic.toml", "new"} {
		w := inRoomStage(t, "l-shaped.toml")
		if name == "new" {
			w.newRoom(job.Alcove)
		} else {
			w.OpenSample(name)
		}
		first := w.session.Job()
		m := monkey{w, rand.New(rand.NewPCG(11, uint64(len(name))))}
		until := time.Now().Add(*monkeyFor)
		for i := 0; i < strokes || time.Now().Before(until); i++ {
			m.roomStroke()
			if _, err := jobfile.Load(jobfile.Encode(w.session.Job()), ""); err != nil {
				t.Fatalf("%s, stroke %d: the job cannot be opened again: %v", name, i, err)
			}
		}
		for w.session.UndoName() != "" {
			w.session.Undo()
		}
		if w.session.Job() != first {
			t.Errorf("%s: undoing everything does not give back the first job", name)
		}
	}
}

var roomKeys = []fyne.KeyName{fyne.KeyLeft, fyne.KeyRight, fyne.KeyUp, fyne.KeyDown, fyne.KeyDelete, fyne.KeyEscape, fyne.KeyReturn, fyne.KeyF,
	fyne.KeyPageDown, fyne.KeyPageUp, fyne.KeyC, fyne.KeyTab}

func (m monkey) roomStroke() {
	r := m.w.room
	s := r.plan.sketch
	switch m.r.IntN(9) {
	case 0, 1:
		dragOn(s, m.at(s), m.r.Float32()*200-100, m.r.Float32()*200-100)
	case 2:
		clickOn(s, m.at(s))
	case 3:
		clickOn(r.table.rows, m.at(r.table.rows))
	case 4:
		r.key(&fyne.KeyEvent{Name: roomKeys[m.r.IntN(len(roomKeys))]})
	case 5:
		r.plan.begin(session.Addables[m.r.IntN(len(session.Addables))].Word)
		clickOn(s, m.at(s))
	case 6:
		m.w.undo()
	case 7:
		m.typeSomewhere()
	case 8:
		m.pressSomething()
	}
	if m.r.IntN(10) == 0 {
		s.Paint(300, 200)
		r.table.rows.Paint(100, 300)
	}
}

// typeSomewhere types into a field of the form, or chooses a word.
func (m monkey) typeSomewhere() {
	var keys []string
	for k := range m.w.room.form.fields {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	if len(keys) == 0 {
		return
	}
	switch f := m.w.room.form.fields[keys[m.r.IntN(len(keys))]].(type) {
	case *control.Field:
		m.w.win.Canvas().Focus(f.Focusable())
		test.Type(f.Focusable(), monkeyTexts[m.r.IntN(len(monkeyTexts))])
		m.w.win.Canvas().Unfocus()
	case *choiceBox:
		f.SetSelected(f.Options[m.r.IntN(len(f.Options))])
	}
}

// pressSomething presses a button of the form.
func (m monkey) pressSomething() {
	f := m.w.room.form
	presses := slices.Clone(f.foot)
	for _, o := range f.inner.Objects {
		if c, ok := o.(*fyne.Container); ok {
			if p, ok := c.Objects[0].(*control.Press); ok {
				presses = append(presses, p)
			}
		}
	}
	test.Tap(presses[m.r.IntN(len(presses))])
}
