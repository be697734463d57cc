package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/render"
	"bunkwright/ui/control"
)

// A notice is a strip over the stage: something to know, and what can be done about it. It never blocks the work.
type notice struct {
	id    string
	words string
	does  []choice
}

// choice is one thing to do about a notice.
type choice struct {
	word string
	do   func()
}

// banner shows the notices, the newest on top.
type banner struct {
	object  *fyne.Container
	notices []notice
}

func newBanner() *banner { return &banner{object: container.New(control.Stacked{})} }

// say shows a notice in the place of an older one of its id; one without words takes that away.
func (b *banner) say(n notice) {
	kept := b.notices[:0]
	for _, old := range b.notices {
		if old.id != n.id {
			kept = append(kept, old)
		}
	}
	b.notices = kept
	if n.words != "" {
		b.notices = append(b.notices, n)
	}
	b.object.Objects = nil
	for i := len(b.notices) - 1; i >= 0; i-- {
		b.object.Objects = append(b.object.Objects, b.strip(b.notices[i]))
	}
	b.object.Refresh()
}

// shown returns the words of a notice, "" where it is not shown.
func (b *banner) shown(id string) string {
	for _, n := range b.notices {
		if n.id == id {
			return n.words
		}
	}
	return ""
}

func (b *banner) strip(n notice) fyne.CanvasObject {
	ground := control.NewSketch(render.InkTooCloseTint, func(w, h render.Paper) render.Drawing {
		d := render.Drawing{W: w, H: h}
		st := render.ScreenStyle
		d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(16), Y: h / 2}, shortened(n.words, st.Body, w-render.Px(40+110*float64(len(n.does)+1))), render.InkMain, render.Left).Middled()))
		d.Add(render.Stroke("", render.Line(render.Point{Y: h - render.Px(0.5)}, render.Point{X: w, Y: h - render.Px(0.5)}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
		return d
	})
	ground.Least = fyne.NewSize(200, 36)
	buttons := container.NewHBox()
	for _, c := range append(n.does, choice{"Close", func() {}}) {
		buttons.Add(control.NewButton(render.InkTooCloseTint, func() string { return c.word }, false, func() {
			b.say(notice{id: n.id})
			c.do()
		}))
	}
	return container.NewStack(ground, container.New(atRight{}, buttons))
}

// atRight lays something out at the right edge, in the middle of the height.
type atRight struct{}

func (atRight) Layout(items []fyne.CanvasObject, size fyne.Size) {
	min := items[0].MinSize()
	items[0].Resize(min)
	items[0].Move(fyne.NewPos(size.Width-min.Width-16, (size.Height-min.Height)/2))
}

func (atRight) MinSize(items []fyne.CanvasObject) fyne.Size { return items[0].MinSize() }
