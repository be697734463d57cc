package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// founds are the ways a stud was found, as a click goes through them.
var founds = []string{"once", "twice", "assumed"}

// stud is a line with how a stud was found, which a click changes, and its place.
func (f *roomForm) stud(s spec) fyne.CanvasObject {
	found := func() string {
		if word := f.r.w.shown(s.key + ".found"); word != "" {
			return word
		}
		return "once"
	}
	dot := control.NewPress(render.InkWell, nil, func() {
		next := founds[(slices.Index(founds, found())+1)%len(founds)]
		if err := f.r.set(s.key+".found", "how the stud was found", next); err != nil {
			f.r.w.trouble("Not set", err)
		}
	})
	dot.Paint = func(w, h render.Paper, st control.State) render.Drawing {
		d := foundMarks(found(), s.label, w, h)
		d.Add(control.FocusRing(w, h, st)...)
		return d
	}
	dot.Least = fyne.NewSize(40, 28)
	dot.Says = func() string { return "found " + found() + ": click for found once, twice, or only assumed" }
	place := f.readingField(s.key+".at", "stud")
	place.Shows = func() string { return f.studPlace(s.key, found()) }
	place.Commit = func(text string) error {
		if bare(text) == "" {
			f.r.w.do("Remove a stud", "", func(j *job.Job) (*job.Job, error) { return jobfile.Remove(j, s.key) })
			return nil
		}
		return f.r.set(s.key+".at", "stud", bare(text))
	}
	place.Says = func() string { return "from the corner to the middle of the stud; empty it to take the stud away" }
	place.Follow()
	f.fields[s.key+".at"] = place
	f.follows = append(f.follows, dot.Redraw)
	return container.New(studLine{dot, place}, dot, place)
}

func (f *roomForm) studPlace(key, found string) string {
	text := f.r.w.shown(key + ".at")
	if text == "" || found == "twice" {
		return text
	}
	return "(" + text + ")"
}

// foundMarks are a dot and the word for how a stud was found.
func foundMarks(found, from string, w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st := render.ScreenStyle
	sign, words := render.DotOpen, "found once"
	switch found {
	case "twice":
		sign, words = render.DotFilled, "found twice"
	case "assumed":
		words = "assumed"
	case "counted":
		sign, words = render.DotDashed, "counted"
	}
	if from != "" {
		words = strings.TrimPrefix(words, "found ") + ", " + from
	}
	d.Add(sign.At("", render.Point{X: render.Px(7), Y: h / 2}, render.Px(12))...)
	d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(20), Y: h / 2}, shortened(words, st.Body, w-render.Px(22)), render.InkSoft, render.Left).Middled()))
	return d
}

// counted is a stud that is counted off from a found one: nobody looked for it.
func (f *roomForm) counted(key string) fyne.CanvasObject {
	s := control.NewSketch(render.InkWell, nil)
	s.Draw = func(w, h render.Paper) render.Drawing {
		inner := foundMarks("counted", "", w-render.Px(2*lineLeft), h)
		d := render.Drawing{W: w, H: h, Marks: render.Shift(inner.Marks, render.Point{X: render.Px(lineLeft)})}
		if scene := f.r.w.live.scene; scene != nil {
			if ref := scene.Survey.Find(key + ".at"); ref.Known() {
				st := render.ScreenStyle
				d.Add(render.Words("", st.Body.Text(render.Point{X: w - render.Px(lineLeft+8), Y: h / 2}, "("+f.lengthWords(scene.Survey.Value(ref))+")", render.InkSoft, render.Right).Middled()))
			}
		}
		return d
	}
	s.Least = fyne.NewSize(140, 24)
	s.Hover = func(control.Pointed) {
		f.r.w.status.at("counted off from a stud that was found, by the spacing; nobody looked for it")
	}
	f.follows = append(f.follows, s.Redraw)
	return s
}

// studLine lays out a stud: how it was found at the left, its place at the right.
type studLine struct {
	dot   *control.Press
	place *control.Field
}

func (l studLine) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	l.dot.Move(fyne.NewPos(lineLeft-2, 0))
	l.dot.Resize(fyne.NewSize(size.Width-2*lineLeft-lineField, 28))
	l.place.Move(fyne.NewPos(size.Width-lineLeft-lineField, 0))
	l.place.Resize(fyne.NewSize(lineField, l.place.HeightFor(lineField)))
}

func (l studLine) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(140, max(28, l.place.HeightFor(lineField))+3)
}

// absent is a box to tick for something that the room does not have.
func (f *roomForm) absent(thing string) fyne.CanvasObject {
	lacks := func() bool {
		j := f.r.w.session.Job()
		return j != nil && j.Room.Lacks(thing)
	}
	p := control.NewPress(render.InkWell, nil, func() {
		f.r.w.do("Say there is no "+thing, "", func(j *job.Job) (*job.Job, error) { return session.SetAbsent(j, thing, !j.Room.Lacks(thing)) })
	})
	p.Paint = func(w, h render.Paper, st control.State) render.Drawing {
		d := render.Drawing{W: w, H: h}
		box := render.Rect{Min: render.Point{X: render.Px(4), Y: h/2 - render.Px(7)}, Max: render.Point{X: render.Px(18), Y: h/2 + render.Px(7)}}
		fill := render.InkField
		if st.Hover {
			fill = render.InkChosenRow
		}
		d.Add(render.Outlined("", render.Box(box), fill, render.Pen{Width: render.Px(1)})...)
		if lacks() {
			c := box.Centre()
			px := render.Px
			d.Add(render.Stroke("", render.Polyline(render.Point{X: c.X - px(4), Y: c.Y}, render.Point{X: c.X - px(1), Y: c.Y + px(4)}, render.Point{X: c.X + px(5), Y: c.Y - px(4)}), render.Pen{Width: px(2)}))
		}
		body := render.ScreenStyle.Body
		d.Add(render.Words("", body.Text(render.Point{X: render.Px(26), Y: h / 2}, thing, render.InkMain, render.Left).Middled()))
		d.Add(control.FocusRing(w, h, st)...)
		return d
	}
	p.Least = fyne.NewSize(120, 24)
	p.Says = func() string {
		if lacks() {
			return "the room has no " + thing
		}
		return "not said yet whether the room has a " + thing + ", unless one is described"
	}
	f.follows = append(f.follows, p.Redraw)
	return container.New(tickLine{}, p)
}

// tickLine lays out a box to tick.
type tickLine struct{}

func (tickLine) Layout(items []fyne.CanvasObject, size fyne.Size) {
	items[0].Move(fyne.NewPos(lineLeft-4, 0))
	items[0].Resize(fyne.NewSize(size.Width-2*lineLeft+8, 24))
}

func (tickLine) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(140, 25) }
