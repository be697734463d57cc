package ui

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// refusedAt tells whether a size that cannot be built is the one of a key, or in it.
func (s *bedSizes) refusedAt(key string) bool {
	return slices.ContainsFunc(s.bed.refused, func(e bunk.SizeError) bool { return render.Under(e.Key, key) && !e.Unset })
}

// refusal says why a size cannot be built, and offers the nearest that can: a click or Enter takes it.
func (s *bedSizes) refusal(e bunk.SizeError) *control.Press {
	r := &refusal{s: s, e: e}
	p := control.NewPress(render.InkPanel, r.draw, r.take)
	p.High = func(w render.Paper) render.Paper { return r.layout(w).high }
	p.Least = fyne.NewSize(200, 60)
	p.Says, p.Enters = r.says, func() { control.Reveal(s.scroll, p) }
	return p
}

type refusal struct {
	s *bedSizes
	e bunk.SizeError
}

// nearest is the size that can be built, as it is typed; "" where there is none, or no key of its own for it.
func (r *refusal) nearest() string {
	if _, ok := jobfile.Find(r.e.Key); !ok || !r.e.Has || r.e.Nearest == 0 {
		return ""
	}
	return jobfile.ShownLength(r.even(), r.s.w.live.unit())
}

// even is the nearest size on the step of the unit that can still be built, where what was chosen tells on which side that is.
func (r *refusal) even() length.Length {
	near, step := r.e.Nearest, stepOf(r.s.w.live.unit())
	f, ok := r.s.fields[r.e.Key]
	if !ok || near%step == 0 {
		return near
	}
	got := length.Read(f.Text(), length.Context{Unit: r.s.w.live.unit()})
	switch {
	case got.Outcome != length.Value:
		return near
	case got.Value > near:
		return near - near%step
	}
	return near - near%step + step
}

// name is what the size is called in the column.
func (r *refusal) name() string {
	for key := r.e.Key; key != "bed" && key != ""; key = above(key) {
		if f, ok := r.s.fields[key]; ok {
			return f.Label
		}
	}
	return r.e.Key
}

// groupName is the name with that of its group before it.
func (r *refusal) groupName() string {
	return r.s.groupOf(r.e.Key).of.title + ", " + strings.ToLower(r.name())
}

func (r *refusal) says() string {
	if near := r.nearest(); near != "" {
		return "take " + near + " for: " + strings.ToLower(r.name())
	}
	return "go to: " + strings.ToLower(r.name())
}

// take takes the nearest size that can be built, or goes to the field.
func (r *refusal) take() {
	near := r.nearest()
	if near == "" {
		r.s.jump(r.e.Key)
		return
	}
	if f, ok := r.s.fields[r.e.Key]; ok {
		f.GiveUp()
	}
	if err := r.s.w.setKey(r.e.Key, strings.ToLower(r.name()), near); err != nil {
		r.s.w.trouble(r.name(), err)
	}
}

// refusalLines is a refusal laid out in a width.
type refusalLines struct {
	text []string
	near string
	word string
	high render.Paper
}

func (r *refusal) layout(w render.Paper) (l refusalLines) {
	st := render.ScreenStyle
	words := r.name()
	if shown := r.s.w.shown(r.e.Key); shown != "" {
		words += " " + shown
	}
	l.text = render.Wrap(words+": "+r.e.Reason, st.Body.Size, render.Regular, w-render.Px(48+24))
	near := r.nearest()
	switch {
	case near != "":
		l.near, l.word = "Nearest that can: "+near, "Take "+near
	case r.e.Has:
		l.near = "Nearest that can: " + r.s.w.live.shows(r.e.Nearest)
	}
	l.high = render.Px(12 + 18*float64(len(l.text)) + 8)
	if l.near != "" {
		l.high += render.Px(32)
	}
	return l
}

func (r *refusal) draw(w, h render.Paper, state control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	l, st := r.layout(w), render.ScreenStyle
	box := render.Rect{Min: render.Point{X: render.Px(8), Y: render.Px(2)}, Max: render.Point{X: w - render.Px(8), Y: h - render.Px(4)}}
	d.Add(render.Outlined("", render.RoundBox(box, render.Px(3)), render.InkNotFitTint, render.Pen{Width: render.Px(1), Ink: render.InkNotFit})...)
	d.Add(render.SignDoesNotFit.At("", render.Point{X: render.Px(28), Y: render.Px(20)}, render.Px(16))...)
	y := render.Px(20)
	for _, line := range l.text {
		d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(48), Y: y}, line, render.InkNotFit, render.Left).Middled()))
		y += render.Px(18)
	}
	if l.near != "" {
		y += render.Px(8)
		wide := st.Body.Wide(l.word) + render.Px(20)
		button := render.Rect{Min: render.Point{X: box.Max.X - render.Px(10) - wide, Y: y - render.Px(13)}, Max: render.Point{X: box.Max.X - render.Px(10), Y: y + render.Px(13)}}
		room := button.Min.X - render.Px(28)
		if l.word == "" {
			room = w - render.Px(40)
		}
		d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(20), Y: y}, shortened(l.near, st.Body, room), render.InkMain, render.Left).Middled()))
		if l.word != "" {
			fill := render.InkField
			if state.Hover {
				fill = render.InkChosenRow
			}
			d.Add(render.Outlined("", render.RoundBox(button, render.Px(3)), fill, render.Pen{Width: render.Px(1)})...)
			d.Add(render.Words("", st.Body.Text(button.Centre(), l.word, render.InkMain, render.Centre).Middled()))
		}
	}
	d.Add(control.FocusRing(w, h, state)...)
	return d
}
