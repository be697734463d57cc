package ui

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// tape is the strip at the top: the stages of the job as marks on a tape, and what concerns all of them.
type tape struct {
	w      *Window
	object fyne.CanvasObject
	ground *control.Sketch
	stages []*control.Press
	undo   *control.Press
	redo   *control.Press
	told   string // what it says now
	units  [2]*control.Press
}

// Where things stand on the tape.
const (
	stageFirst = 16
	stageWide  = 138
	stageInset = 8
)

func newTape(w *Window) *tape {
	t := &tape{w: w}
	t.ground = control.NewSketch(render.InkTape, t.marks)
	objects := []fyne.CanvasObject{t.ground}
	for s := roomStage; s <= placingStage; s++ {
		p := control.NewPress(render.InkTape, nil, func() { w.show(s) })
		p.Paint = func(wd, h render.Paper, st control.State) render.Drawing { return t.stage(s, wd, h, st) }
		p.Says = func() string { return "go to " + stageNames[s] + t.open(s) }
		t.stages = append(t.stages, p)
		objects = append(objects, p)
	}
	t.undo = t.button("Undo", w.undo, func() string { return named("Undo", w.session.UndoName()) })
	t.redo = t.button("Redo", w.redo, func() string { return named("Redo", w.session.RedoName()) })
	for i, unit := range []string{"in", "mm"} {
		p := control.NewPress(render.InkTape, nil, func() { w.showIn(unit) })
		p.Paint = func(wd, h render.Paper, st control.State) render.Drawing { return t.unit(i, unit, wd, h, st) }
		p.Says = func() string {
			return "show and read lengths in " + map[string]string{"in": "feet and inches", "mm": "millimetres"}[unit]
		}
		t.units[i] = p
	}
	objects = append(objects, t.undo, t.redo, t.units[0], t.units[1])
	t.object = container.New(tapeLayout{t}, objects...)
	t.undo.Off(true)
	t.redo.Off(true)
	w.live.watch(t.follow)
	return t
}

func (t *tape) button(word string, do func(), says func() string) *control.Press {
	b := control.NewButton(render.InkTape, func() string { return word }, false, do)
	b.Says = says
	return b
}

func named(what, step string) string {
	if step == "" {
		return "nothing to " + map[string]string{"Undo": "undo", "Redo": "make again"}[what]
	}
	return what + ": " + step
}

// follow draws the tape where it says something else than before.
func (t *tape) follow() {
	if t.says() != t.told {
		t.redraw()
	}
}

// says is all that the tape shows and that may change.
func (t *tape) says() string {
	words := []string{t.saved(), t.w.session.UndoName(), t.w.session.RedoName(), fmt.Sprint(t.w.live.unit())}
	for i := range t.stages {
		v, open := t.w.live.worst(func(a fit.Answer) bool { return ofStage(stage(i), a) })
		words = append(words, v.Words(), fmt.Sprint(open))
	}
	return strings.Join(words, "\n")
}

// saved says whether the job is.
func (t *tape) saved() string {
	switch {
	case t.w.session.Job() == nil:
		return ""
	case t.w.session.Unsaved():
		return "Not saved yet"
	}
	return "All saved"
}

func (t *tape) redraw() {
	t.told = t.says()
	t.undo.Off(t.w.session.UndoName() == "")
	t.redo.Off(t.w.session.RedoName() == "")
	t.ground.Redraw()
	for _, p := range append(t.stages, t.undo, t.redo, t.units[0], t.units[1]) {
		p.Redraw()
	}
}

// marks draws the tape itself.
func (t *tape) marks(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st := render.ScreenStyle
	for i := 0; render.Px(float64(stageFirst+i*10)) < w-render.Px(380); i++ {
		x := render.Px(float64(stageFirst + i*10))
		high := render.Px(5)
		switch {
		case i%16 == 0:
			high = render.Px(13)
		case i%4 == 0:
			high = render.Px(9)
		}
		d.Add(render.Stroke("", render.Line(render.Point{X: x}, render.Point{X: x, Y: high}), st.Thin))
	}
	d.Add(render.Stroke("", render.Line(render.Point{Y: h - render.Px(0.5)}, render.Point{X: w, Y: h - render.Px(0.5)}), render.Pen{Width: render.Px(1)}))
	d.Add(render.Words("saved", st.Body.Text(render.Point{X: w - render.Px(208), Y: h / 2}, t.saved(), render.InkMain, render.Left).Middled()))
	return d
}

// stage draws one stage: its name, a thick bar under the one that is open, the worst mark of what is open in it.
func (t *tape) stage(s stage, w, h render.Paper, st control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	face := render.Lettering{Size: render.Px(15), Face: render.Regular}
	x, y := render.Px(stageInset), h/2+render.Px(4)
	end := x + face.Wide(stageNames[s])
	if t.w.stage == s {
		face.Face = render.Medium
		end = x + face.Wide(stageNames[s])
		d.Add(render.Fill("", render.Box(render.Rect{Min: render.Point{X: x, Y: h - render.Px(5)}, Max: render.Point{X: end, Y: h - render.Px(1)}}), render.InkMain))
	}
	if st.Hover && t.w.stage != s {
		d.Add(render.Stroke("", render.Line(render.Point{X: x, Y: h - render.Px(6)}, render.Point{X: end, Y: h - render.Px(6)}), render.ScreenStyle.Seen))
	}
	d.Add(render.Words("", face.Text(render.Point{X: x, Y: y}, stageNames[s], render.InkMain, render.Left).Middled()))
	if v, open := t.worst(s); open {
		d.Add(signAt(v, render.Point{X: end + render.Px(16), Y: y}, render.Px(14))...)
	}
	if st.Focus {
		d.Add(control.FocusRing(w, h, st)...)
	}
	return d
}

// worst is the worst mark of what is open in a stage.
func (t *tape) worst(s stage) (fit.Verdict, bool) {
	if s == roomStage {
		return t.w.room.mark().verdict()
	}
	return t.w.live.worst(func(a fit.Answer) bool { return ofStage(s, a) })
}

// open says what is open in a stage whose questions do not say it.
func (t *tape) open(s stage) string {
	if s == roomStage {
		return t.w.room.mark().words()
	}
	return ""
}

// ofStage tells in which stage an answer is worked on: what is asked of the bed alone in Bed, the rest in Place.
func ofStage(s stage, a fit.Answer) bool {
	q, _ := fit.Find(a.ID)
	switch s {
	case bedStage:
		return q.OfBed
	case placingStage:
		return !q.OfBed
	}
	return false
}

func (t *tape) unit(i int, word string, w, h render.Paper, st control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	fill, ink := render.InkField, render.InkMain
	if (t.w.live.unit() == length.Millimetres) == (word == "mm") {
		fill, ink = render.InkMain, render.InkField
	}
	box := render.Rect{Max: render.Point{X: w, Y: h}}.Grow(-render.Px(0.5))
	d.Add(render.Outlined("", render.Box(box), fill, render.Pen{Width: render.Px(1)})...)
	d.Add(render.Words("", render.Lettering{Size: render.Px(13), Face: render.Medium}.Text(box.Centre(), word, ink, render.Centre).Middled()))
	d.Add(control.FocusRing(w, h, st)...)
	return d
}

type tapeLayout struct{ t *tape }

func (l tapeLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	t := l.t
	t.ground.Resize(size)
	for i, p := range t.stages {
		p.Move(fyne.NewPos(stageFirst+10-stageInset+float32(i)*160, 10))
		p.Resize(fyne.NewSize(stageWide, tapeHigh-11))
	}
	at := func(p *control.Press, right, wide, high float32) {
		p.Move(fyne.NewPos(size.Width-right, (size.Height-high)/2))
		p.Resize(fyne.NewSize(wide, high))
	}
	at(t.undo, 356, 62, 26)
	at(t.redo, 286, 62, 26)
	at(t.units[0], 100, 42, 26)
	at(t.units[1], 58, 42, 26)
}

func (tapeLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(700, tapeHigh) }
