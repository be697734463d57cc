package ui

import (
	"fyne.io/fyne/v2"

	"bunkwright/render"
	"bunkwright/ui/control"
)

// status is the line at the bottom: what is under the pointer or has the focus, the step, the job, when it was saved.
type status struct {
	w      *Window
	object *control.Sketch
	says   string // by whoever explains itself
	place  string // where the pointer or the bed is
	hint   string // what can be done there, said where there is room for it
	saved  string
}

func newStatus(w *Window) *status {
	s := &status{w: w}
	s.object = control.NewSketch(render.InkWell, s.draw)
	s.object.Least = fyne.NewSize(400, statusHigh)
	control.Explain = func(words string) {
		s.says = words
		s.redraw()
	}
	w.live.watch(s.redraw)
	return s
}

func (s *status) redraw() { s.object.Redraw() }

// at says where something is, until something else explains itself.
func (s *status) at(words string) { s.rest(words, "") }

// rest also says what can be done there, where there is room for it.
func (s *status) rest(words, hint string) {
	if s.place != words || s.hint != hint {
		s.place, s.hint = words, hint
		s.redraw()
	}
}

func (s *status) draw(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st := render.ScreenStyle
	d.Add(render.Stroke("", render.Line(render.Point{Y: render.Px(0.5)}, render.Point{X: w, Y: render.Px(0.5)}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
	put := func(x render.Paper, words string, ink render.Ink, anchor render.Anchor) {
		d.Add(render.Words("", st.Body.Text(render.Point{X: x, Y: h/2 + render.Px(0.5)}, words, ink, anchor).Middled()))
	}
	words := s.place
	if full := s.place + s.hint; st.Body.Wide(full) <= w*0.62 {
		words = full
	}
	if s.says != "" {
		words = s.says
	}
	right := w - render.Px(16)
	put(right, s.saved, render.InkSoft, render.Right)
	if j := s.w.session.Job(); j != nil {
		name := shortened(j.Name, st.Body, w*0.25)
		put(w*0.73, name, render.InkMain, render.Left)
		put(w*0.73-render.Px(24), "step "+s.w.place.stepWords(), render.InkSoft, render.Right)
	}
	put(render.Px(16), shortened(words, st.Body, w*0.62), render.InkMain, render.Left)
	return d
}

// shortened cuts words off where there is no room, and shows that it did.
func shortened(words string, in render.Lettering, wide render.Paper) string {
	if in.Wide(words) <= wide {
		return words
	}
	r := []rune(words)
	for len(r) > 0 && in.Wide(string(r)+"...") > wide {
		r = r[:len(r)-1]
	}
	return string(r) + "..."
}
