package ui

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/samples"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// opened is the window on a copy of a sample, answers from the background included.
func opened(t testing.TB, name string) (*Window, string) {
	t.Helper()
	w, path, _ := openedWith(t, name)
	return w, path
}

// openedWith is opened, and what waits to be done on the window's goroutine.
func openedWith(t testing.TB, name string) (*Window, string, chan func()) {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.Fatal(err)
	}
	back := make(chan func(), 100)
	w := New(test.NewTempApp(t), session.New(session.Options{Post: func(f func()) {
		select {
		case back <- f:
		default: // nobody waits for it
		}
	}}), t.TempDir())
	w.openURL = nil
	if err := w.Open(path); err != nil {
		t.Fatal(err)
	}
	w.win.Resize(usual)
	(<-back)() // how sure the answers are
	return w, path, back
}

// doAll does what waits.
func doAll(back chan func()) {
	for {
		select {
		case f := <-back:
			f()
		default:
			return
		}
	}
}

// middleOf returns the place on the drawings of the first mark under a ref.
func middleOf(t testing.TB, d render.Drawing, ref string) fyne.Position {
	t.Helper()
	for _, m := range d.Marks {
		if render.Under(m.Ref, ref) {
			c := m.Bounds().Centre()
			return fyne.NewPos(float32(c.X/render.Px(1)), float32(c.Y/render.Px(1)))
		}
	}
	t.Fatalf("nothing under %s is drawn", ref)
	return fyne.Position{}
}

func pointedAt(p fyne.Position) control.Pointed {
	return control.Pointed{At: control.OnPaper(p), Refs: []string{"mattress.upper"}}
}

func drag(w *Window, from fyne.Position, dx, dy float32) {
	s := w.place.drawings
	s.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: from}, Button: desktop.MouseButtonPrimary})
	for range 10 {
		from = from.AddXY(dx/10, dy/10)
		s.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: from}, Dragged: fyne.NewDelta(dx/10, dy/10)})
	}
	s.DragEnd()
	s.MouseUp(&desktop.MouseEvent{})
}

// TestDragTheBed: the bed follows the hand, letting go is one edit, undo takes it back, save keeps it.
func TestDragTheBed(t *testing.T) {
	w, path := opened(t, "town-house.toml")
	before := w.session.Job()
	at := middleOf(t, w.place.drawings.Drawing(), "mattress.upper")
	drag(w, at, 60, 0)
	if w.session.UndoName() != "Move the bed" || w.session.Job().Place == before.Place {
		t.Fatalf("after a drag undo is called %q, the bed at %+v", w.session.UndoName(), w.session.Job().Place)
	}
	along := w.session.Job().Place.Along.MM()
	want := 60 / (96 / 25.4) / w.place.camera.scale
	if along < want-90 || along > want+90 { // it settles on what is near
		t.Errorf("dragged by %.0f mm, it stands %.0f from the corner", want, along)
	}
	w.undo()
	if w.session.Job() != before {
		t.Error("undo does not bring the bed back")
	}
	w.redo()
	w.save()
	if f, err := jobfile.Open(path); err != nil || f.Job.Place != w.session.Job().Place {
		t.Errorf("saved: %v", err)
	}
}

func TestKeysMoveTheBed(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	start := w.session.Job().Place
	w.place.key(&fyne.KeyEvent{Name: fyne.KeyM})
	if w.session.Job().Place.Mirror == start.Mirror || w.session.UndoName() != "Mirror the bed" {
		t.Error("M does not mirror")
	}
	w.undo()
	w.place.key(&fyne.KeyEvent{Name: fyne.KeyDown})
	if got := w.session.Job().Place; !got.Gap.Set {
		t.Errorf("the arrow does not move it off the wall: %+v", got)
	}
	w.place.key(&fyne.KeyEvent{Name: fyne.KeyW})
	if got := w.session.Job().Place; got.Gap.Set {
		t.Errorf("W does not press it: %+v", got)
	}
}

// TestOpenAQuestion: its row opens and its parts are lit in the drawings.
func TestOpenAQuestion(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	row := w.place.questions.rows["window-fall"]
	closed := row.HeightFor(380)
	dark := w.place.drawings.Drawing().Dump()
	test.Tap(row)
	if w.place.questions.id != "window-fall" || row.HeightFor(380) < closed*2 {
		t.Errorf("open: %q, height %.0f and %.0f", w.place.questions.id, closed, row.HeightFor(380))
	}
	if w.place.drawings.Drawing().Dump() == dark {
		t.Error("nothing is lit")
	}
	test.Tap(row)
	if w.place.questions.id != "" {
		t.Error("it does not close")
	}
}

func TestUnitsAreAnEdit(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	test.Tap(w.tape.units[1])
	if w.session.Job().Unit != "mm" || w.session.UndoName() != "Show millimetres" {
		t.Errorf("unit %s, undo %q", w.session.Job().Unit, w.session.UndoName())
	}
}

// TestAcceptAnAnswer: with a reason it is settled and tied to what it was judged by; the next move of the bed brings it back.
func TestAcceptAnAnswer(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	q := w.place.questions
	q.open("window-fall")
	q.accept.take()
	if len(w.session.Job().Accepted) != 1 {
		t.Error("accepted without a reason")
	}
	q.accept.reason.SetText("a guard is ordered")
	test.Tap(q.accept.accept)
	list := w.session.Job().Accepted
	if len(list) != 2 || list[1].Question != "window-fall" || list[1].Inputs == "" {
		t.Fatalf("accepted: %+v", list)
	}
	if a, _ := q.answer("window-fall"); a.Accepted != "a guard is ordered" {
		t.Errorf("the answer is %+v", a.Accepted)
	}
	w.place.key(&fyne.KeyEvent{Name: fyne.KeyDown})
	w.place.key(&fyne.KeyEvent{Name: fyne.KeyRight})
	w.undo()
	w.undo()
	q.accept.set("")
	if len(w.session.Job().Accepted) != 1 {
		t.Error("it cannot be taken back")
	}
}

// TestTypeThePlace: what can be dragged can be typed; what cannot be taken stays as it was typed, with what is wrong.
func TestTypeThePlace(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	f := w.place.bar.along
	entry := f.Focusable()
	typeInto := func(text string) {
		w.win.Canvas().Focus(entry)
		for range 10 {
			entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyBackspace})
			entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDelete})
		}
		test.Type(entry, text)
		w.win.Canvas().Unfocus()
	}
	typeInto("2 ft 3")
	if got := jobfile.Shown(w.session.Job(), "place.along"); got != `2' 3"` && !f.Bad() {
		t.Errorf("typed 2 ft 3: %s", got)
	}
	before := w.session.Job()
	typeInto("12x")
	if !f.Bad() || w.session.Job() != before {
		t.Errorf("12x was taken")
	}
	if got := f.Text(); got != "12x" {
		t.Errorf("the text became %q", got)
	}
}

// TestAnswersFollowTheHand: while the hand moves the drawings and the nominal answers are there at once, the words of the column when the
// frame is done, and how sure the answers are once the hand rests; not before.
func TestAnswersFollowTheHand(t *testing.T) {
	w, _, back := openedWith(t, "town-house.toml")
	p := w.place
	p.grab(pointedAt(middleOf(t, p.drawings.Drawing(), "mattress.upper")))
	drawn, told := p.drawings.Drawing().Dump(), p.questions.told["window-fall"]
	p.drag(control.OnPaper(fyne.NewPos(40, 60)), fyne.KeyModifierAlt)
	if p.drawings.Drawing().Dump() == drawn || w.live.sure {
		t.Errorf("the drawing does not follow at once, or sure is %v", w.live.sure)
	}
	if p.questions.told["window-fall"] != told {
		t.Error("the words do not wait")
	}
	next := func() func() {
		select {
		case f := <-back:
			return f
		case <-time.After(10 * time.Second):
			t.Fatal("nothing follows")
			return nil
		}
	}
	next()()
	if p.questions.told["window-fall"] == told {
		t.Error("the words do not follow")
	}
	if w.live.sure {
		t.Error("sure before it is worked out")
	}
	next()()
	if !w.live.sure || w.live.scene.Job.Place == w.session.Job().Place {
		t.Errorf("sure is %v, at %+v", w.live.sure, w.live.scene.Job.Place)
	}
	p.drop()
	if w.live.moving || w.session.UndoName() != "Move the bed" {
		t.Errorf("dropped: moving is %v, undo %q", w.live.moving, w.session.UndoName())
	}
}

// TestHiddenStagesWait: a stage that is not shown is not drawn anew, and is current once it is shown.
func TestHiddenStagesWait(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	w.show(bedStage)
	made := 0
	draw := w.place.drawings.Draw
	w.place.drawings.Draw = func(wide, high render.Paper) render.Drawing { made++; return draw(wide, high) }
	w.place.drawings.Redraw()
	before := w.place.drawings.Drawing().Dump()
	choose(t, w, "bed.upper.height", "58 in")
	if w.place.drawings.Drawing().Dump() != before || made != 1 {
		t.Errorf("drawn %d times while hidden", made)
	}
	w.show(placingStage)
	if w.place.drawings.Drawing().Dump() == before {
		t.Error("it shows the old bed")
	}
}
