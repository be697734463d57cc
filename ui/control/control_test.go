package control

import (
	"errors"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"bunkwright/render"
)

// square draws one box in the middle with a ref.
func square(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	box := render.Around(render.Point{X: w / 4, Y: h / 4}, render.Point{X: w * 3 / 4, Y: h * 3 / 4})
	d.Add(render.Fill("box", render.Box(box), render.InkBoard))
	return d
}

func shown(t *testing.T, o fyne.CanvasObject, w, h float32) fyne.Window {
	t.Helper()
	test.NewTempApp(t)
	win := test.NewTempWindow(t, o)
	win.SetPadded(false)
	win.Resize(fyne.NewSize(w, h))
	return win
}

func TestSketchTellsWhatIsPointedAt(t *testing.T) {
	s := NewSketch(render.InkPaper, square)
	var tapped, hovered []string
	s.Tap = func(p Pointed) { tapped = p.Refs }
	s.Hover = func(p Pointed) { hovered = p.Refs }
	shown(t, s, 200, 100)
	s.Tapped(&fyne.PointEvent{Position: fyne.NewPos(100, 50)})
	if len(tapped) != 1 || tapped[0] != "box" {
		t.Errorf("tapped %v", tapped)
	}
	s.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(5, 5)}})
	if len(hovered) != 0 {
		t.Errorf("over %v", hovered)
	}
	s.MouseMoved(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(60, 30)}})
	if len(hovered) != 1 {
		t.Errorf("over %v", hovered)
	}
	s.MouseOut()
	if len(hovered) != 0 {
		t.Error("the pointer left and is still over something")
	}
}

// TestDragHasAThreshold: a hand that shakes does not drag; one that means it is followed from where it pressed.
func TestDragHasAThreshold(t *testing.T) {
	s := NewSketch(render.InkPaper, square)
	var grabbed, dropped int
	var by render.Point
	s.Grab = func(p Pointed) bool { grabbed++; return len(p.Refs) > 0 }
	s.Drag = func(d render.Point, _ fyne.KeyModifier) { by = d }
	s.Drop = func() { dropped++ }
	shown(t, s, 200, 100)
	pull := func(from fyne.Position, steps int) {
		s.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: from}})
		for range steps {
			from = from.AddXY(1, 0)
			s.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: from}, Dragged: fyne.NewDelta(1, 0)})
		}
		s.DragEnd()
		s.MouseUp(&desktop.MouseEvent{})
	}
	pull(fyne.NewPos(100, 50), 2)
	if grabbed != 0 || dropped != 0 {
		t.Error("two pixels are a drag")
	}
	pull(fyne.NewPos(100, 50), 10)
	if grabbed != 1 || dropped != 1 || by.X != Paper(10) {
		t.Errorf("grabbed %d, dropped %d, by %v", grabbed, dropped, by)
	}
	pull(fyne.NewPos(5, 5), 10)
	if grabbed != 2 || dropped != 1 {
		t.Error("what refused to be grabbed was dropped")
	}
}

func TestPressByKeyAndPointer(t *testing.T) {
	done := 0
	p := NewButton(render.InkPaper, func() string { return "Do it" }, false, func() { done++ })
	said := ""
	p.Says = func() string { return "does it" }
	old := Explain
	Explain = func(words string) { said = words }
	defer func() { Explain = old }()
	shown(t, p, 80, 30)
	test.Tap(p)
	p.FocusGained()
	if said != "does it" {
		t.Errorf("the focus explains %q", said)
	}
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	p.TypedKey(&fyne.KeyEvent{Name: fyne.KeyReturn})
	p.FocusLost()
	if done != 3 || said != "" {
		t.Errorf("done %d times, said %q", done, said)
	}
	p.Off(true)
	test.Tap(p)
	if done != 3 {
		t.Error("a press that is off does something")
	}
}

// value is what a field under test edits.
type value struct {
	text  string
	taken int
}

func newValueField(v *value) *Field {
	f := NewField(func() string { return v.text }, func(text string) error {
		if text == "bad" {
			return errors.New("bad is no size")
		}
		v.text = text
		v.taken++
		return nil
	})
	f.Echo = func(text string) (string, bool) { return "= " + text, text != "bad" }
	return f
}

func typeText(f *Field, win fyne.Window, text string) {
	win.Canvas().Focus(f.Focusable())
	f.entry.SetText("")
	test.Type(f.Focusable(), text)
}

func TestFieldKeepsWhatItCannotTake(t *testing.T) {
	v := &value{text: "1 in"}
	f := newValueField(v)
	win := shown(t, f, 120, 80)
	low := f.HeightFor(120)
	typeText(f, win, "bad")
	if f.HeightFor(120) <= low {
		t.Error("no word while something wrong is typed")
	}
	win.Canvas().Unfocus()
	if v.text != "1 in" || f.Text() != "bad" || !f.Bad() {
		t.Errorf("value %q, text %q", v.text, f.Text())
	}
	f.Follow()
	if f.Text() != "bad" {
		t.Error("another edit takes bad text away")
	}
	f.entry.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if f.Text() != "1 in" || f.Bad() {
		t.Errorf("Escape leaves %q", f.Text())
	}
}

func TestFieldCommitsOnce(t *testing.T) {
	v := &value{text: "1 in"}
	f := newValueField(v)
	win := shown(t, f, 120, 80)
	typeText(f, win, "2 in")
	if v.taken != 0 {
		t.Error("taken while typing")
	}
	f.entry.OnSubmitted(f.entry.Text)
	win.Canvas().Unfocus()
	if v.taken != 1 || v.text != "2 in" {
		t.Errorf("taken %d times, value %q", v.taken, v.text)
	}
	typeText(f, win, "3 in")
	f.Settle()
	if v.text != "3 in" {
		t.Error("what is typed is not handed on before saving")
	}
	v.text = "4 in"
	f.Follow()
	if f.Text() != "4 in" {
		t.Errorf("does not follow: %q", f.Text())
	}
}

func TestPanesKeepTheirSmallestWidths(t *testing.T) {
	pane := func(w float32) *Sketch {
		s := NewSketch(render.InkPaper, square)
		s.Least = fyne.NewSize(w, 50)
		return s
	}
	a, b, c := pane(100), pane(50), pane(80)
	p := NewPanes(a, b, c, [2]float32{0.5, 0.75})
	shown(t, p, 400, 100)
	p.drag(0, 1000)
	p.drag(1, -1000)
	if a.Size().Width < 100 || b.Size().Width < 50 || c.Size().Width < 80 {
		t.Errorf("widths %v, %v, %v", a.Size().Width, b.Size().Width, c.Size().Width)
	}
	if sum := a.Size().Width + b.Size().Width + c.Size().Width; sum < 399 || sum > 401 {
		t.Errorf("together %v wide", sum)
	}
}
