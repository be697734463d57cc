package control

import (
	"image"

	"fyne.io/fyne/v2"

	"bunkwright/render"
)

func (p *Press) pixels(w, h int) image.Image {
	defer Traced.Draw()()
	size := p.Size()
	return p.paint.draw(p.Paint(Paper(size.Width), Paper(size.Height), p.state), p.Ground, Paper(size.Width), w, h)
}

// NewButton returns a button with a word on it. A strong one is dark: the one thing to do next.
func NewButton(ground render.Ink, word func() string, strong bool, do func()) *Press {
	p := NewPress(ground, nil, do)
	p.Paint = func(w, h render.Paper, s State) render.Drawing { return button(word(), strong, w, h, s) }
	p.Least = fyne.NewSize(Screen(render.ScreenStyle.Body.Wide(word()))+28, 26)
	return p
}

func button(word string, strong bool, w, h render.Paper, s State) render.Drawing {
	st := render.ScreenStyle
	fill, text, edge := render.InkField, render.InkMain, render.InkMain
	switch {
	case s.Off:
		fill, text, edge = render.InkPanel, render.InkSoft, render.InkHairline
	case strong && (s.Hover || s.Down):
		fill, text = render.InkSoft, render.InkField
	case strong:
		fill, text = render.InkMain, render.InkField
	case s.Down:
		fill = render.InkLit
	case s.Hover:
		fill = render.InkChosenRow
	}
	d := render.Drawing{W: w, H: h}
	box := render.RoundBox(render.Rect{Max: render.Point{X: w, Y: h}}.Grow(-render.Px(1.5)), render.Px(3))
	d.Add(render.Outlined("", box, fill, render.Pen{Width: render.Px(1), Ink: edge})...)
	d.Add(render.Words("", st.Body.Text(render.Point{X: w / 2, Y: h / 2}, word, text, render.Centre).Middled()))
	d.Add(FocusRing(w, h, s)...)
	return d
}

// FocusRing is drawn round whatever has the focus.
func FocusRing(w, h render.Paper, s State) []render.Mark {
	if !s.Focus {
		return nil
	}
	box := render.RoundBox(render.Rect{Max: render.Point{X: w, Y: h}}.Grow(-render.Px(1.25)), render.Px(3))
	return []render.Mark{render.Stroke("", box, render.Pen{Width: render.Px(2.5), Ink: render.InkMain})}
}
