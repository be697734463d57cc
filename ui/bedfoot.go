package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/ui/control"
)

// bedFoot stands under the sizes: how many boards, the most open question, the caution.
type bedFoot struct {
	w      *Window
	bed    *bedPane
	object *fyne.Container
	parts  *control.Press
	open   *control.Press
	line   *control.Press
}

func newBedFoot(w *Window, b *bedPane) *bedFoot {
	f := &bedFoot{w: w, bed: b}
	f.parts = control.NewPress(render.InkPanel, f.drawParts, w.partsList)
	f.parts.Least = fyne.NewSize(200, 32)
	f.parts.Says = func() string { return "every board with its size: to read, copy, or save" }
	f.open = control.NewPress(render.InkPanel, f.drawOpen, f.goOpen)
	f.open.Least = fyne.NewSize(200, 62)
	f.open.Says = func() string { return "open this question in Place" }
	f.line = cautionLine(w)
	f.object = container.New(control.Stacked{}, f.parts, f.open, f.line)
	return f
}

func (f *bedFoot) follow() {
	f.parts.Redraw()
	f.open.Redraw()
}

func rule(d *render.Drawing, y render.Paper) {
	d.Add(render.Stroke("", render.Line(render.Point{X: render.Px(16), Y: y}, render.Point{X: d.W - render.Px(16), Y: y}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
}

func (f *bedFoot) drawParts(w, h render.Paper, s control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st := render.ScreenStyle
	d.Add(render.Stroke("", render.Line(render.Point{X: render.Px(16), Y: render.Px(0.5)}, render.Point{X: w - render.Px(16), Y: render.Px(0.5)}), render.Pen{Width: render.Px(1)}))
	if bed := f.bed.bed(); bed != nil {
		in := render.Lettering{Size: st.Body.Size, Face: render.Medium}
		d.Add(render.Words("", in.Text(render.Point{X: render.Px(16), Y: h / 2}, plural(len(bed.Parts), "board"), render.InkMain, render.Left).Middled()))
	}
	d.Add(render.Words("", st.Body.Text(render.Point{X: w - render.Px(16), Y: h / 2}, "Parts list", render.InkCannotTell, render.Right).Middled()))
	d.Add(control.FocusRing(w, h, s)...)
	return d
}

// worst is the question that is most open.
func (f *bedFoot) worst() (fit.Answer, bool) {
	for _, a := range fit.ForPeople(f.w.live.answers) {
		if a.Verdict.Open() && a.Accepted == "" {
			return a, true
		}
	}
	return fit.Answer{}, false
}

func (f *bedFoot) goOpen() {
	if a, ok := f.worst(); ok {
		f.w.show(placingStage)
		if f.w.place.questions.id != a.ID {
			f.w.place.questions.open(a.ID)
		}
	}
}

func (f *bedFoot) drawOpen(w, h render.Paper, s control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st := render.ScreenStyle
	if s.Hover {
		d.Add(render.Fill("", render.Box(render.Rect{Max: render.Point{X: w, Y: h}}.Grow(-render.Px(1))), render.InkChosenRow))
	}
	rule(&d, render.Px(0.5))
	a, ok := f.worst()
	put := func(x, y float64, words string, ink render.Ink) {
		d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(x), Y: render.Px(y)}, shortened(words, st.Body, w-render.Px(x+16)), ink, render.Left).Middled()))
	}
	if !ok {
		put(16, 14, "No question is open", render.InkSoft)
		d.Add(control.FocusRing(w, h, s)...)
		return d
	}
	put(16, 13, "Most open question", render.InkSoft)
	put(44, 31, a.Sentence, render.InkMain)
	verdict := a.Verdict.Words()
	if told := f.w.live.scene.Called(a.Tell(f.w.live.unit())); told != "" {
		verdict += ":"
		put(44+float64(st.Body.Wide(verdict+" ")/render.Px(1)), 48, told, render.InkMain)
	}
	put(44, 48, verdict, inkOf(a.Verdict))
	d.Add(signAt(a.Verdict, render.Point{X: render.Px(28), Y: render.Px(40)}, render.Px(16))...)
	d.Add(control.FocusRing(w, h, s)...)
	return d
}

// cautionLine is the one line of caution under a column, with the way to all of it.
func cautionLine(w *Window) *control.Press {
	p := control.NewPress(render.InkPanel, drawCaution, w.caution)
	p.Least = fyne.NewSize(200, 30)
	p.Says = func() string { return "read the whole caution" }
	return p
}

func drawCaution(w, h render.Paper, s control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	rule(&d, render.Px(1))
	st := render.ScreenStyle
	words, link := "Measured against, not approved.", "The whole caution"
	if st.Body.Wide(words)+st.Body.Wide(link) > w-render.Px(40) {
		link = "Caution"
	}
	d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(16), Y: h / 2}, shortened(words, st.Body, w-render.Px(40)-st.Body.Wide(link)), render.InkSoft, render.Left).Middled()))
	d.Add(render.Words("", st.Body.Text(render.Point{X: w - render.Px(16), Y: h / 2}, link, render.InkCannotTell, render.Right).Middled()))
	d.Add(control.FocusRing(w, h, s)...)
	return d
}
