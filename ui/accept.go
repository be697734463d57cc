package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/ui/control"
)

// acceptBar stands under an opened question that is not settled: an answer may be lived with, with a reason. The acceptance is tied to
// what the answer was judged by, and comes back when that changes.
type acceptBar struct {
	w      *Window
	id     string
	object *fyne.Container
	reason *widget.Entry
	accept *control.Press
	back   *control.Press
}

func newAcceptBar(w *Window) *acceptBar {
	b := &acceptBar{w: w, reason: widget.NewEntry()}
	b.reason.SetPlaceHolder("why it is lived with")
	b.reason.OnSubmitted = func(string) { b.take() }
	b.accept = control.NewButton(render.InkPanel, func() string { return "Accept" }, false, b.take)
	b.accept.Says = func() string { return "live with this answer; it comes back when what it is judged by changes" }
	b.back = control.NewButton(render.InkPanel, func() string { return "Take the acceptance back" }, false, func() { b.set("") })
	b.object = container.New(acceptLayout{b}, b.reason, b.accept, b.back)
	return b
}

// follow shows the bar for an answer: to accept it where it is open, to take that back where it was.
func (b *acceptBar) follow(a fit.Answer) {
	if b.id != a.ID {
		b.id = a.ID
		b.reason.SetText("")
	}
	open := a.Verdict.Open()
	show(b.reason, open && a.Accepted == "")
	show(b.accept, open && a.Accepted == "")
	show(b.back, a.Accepted != "")
	show(b.object, open)
}

func show(o fyne.CanvasObject, on bool) {
	if on {
		o.Show()
	} else {
		o.Hide()
	}
}

func (b *acceptBar) take() {
	if b.reason.Text == "" {
		b.w.win.Canvas().Focus(b.reason)
		b.w.status.at("an acceptance wants its reason, in a few words")
		return
	}
	b.set(b.reason.Text)
}

// set accepts the answer with a reason, or takes the acceptance back.
func (b *acceptBar) set(reason string) {
	a, ok := b.w.place.questions.answer(b.id)
	if !ok {
		return
	}
	name := "Accept an answer"
	if reason == "" {
		name = "Take an acceptance back"
	}
	b.w.do(name, "", func(j *job.Job) (*job.Job, error) {
		next := *j
		next.Accepted = nil
		for _, x := range j.Accepted {
			if x.Question != a.ID {
				next.Accepted = append(next.Accepted, x)
			}
		}
		if reason != "" {
			next.Accepted = append(next.Accepted, job.Accept{Question: a.ID, Reason: reason, Inputs: a.Print()})
		}
		return &next, nil
	})
}

type acceptLayout struct{ b *acceptBar }

func (l acceptLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	b := l.b
	wide := b.accept.MinSize().Width
	b.reason.Move(fyne.NewPos(16, 4))
	b.reason.Resize(fyne.NewSize(size.Width-wide-40, 28))
	b.accept.Move(fyne.NewPos(size.Width-wide-16, 5))
	b.accept.Resize(fyne.NewSize(wide, 26))
	b.back.Move(fyne.NewPos(16, 5))
	b.back.Resize(fyne.NewSize(b.back.MinSize().Width, 26))
}

func (acceptLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(260, 38) }
