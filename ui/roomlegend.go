package ui

import "bunkwright/render"

// legendEntry is one entry of the legend under the plan: what is drawn, how wide it is, and the two lines that say what it means.
type legendEntry struct {
	marks []render.Mark // with the left end of their middle at the origin
	wide  render.Paper
	words [2]string
}

// legend says how the values are known. What there is no room for is left out from the end.
func (p *roomPlan) legend(w, h render.Paper) []render.Mark {
	px := render.Px
	top := h - planFoot
	marks := []render.Mark{render.Stroke("", render.Line(render.Point{X: px(16), Y: top}, render.Point{X: w - px(16), Y: top}), render.Pen{Width: px(1), Ink: render.InkHairline})}
	list := p.legendEntries()
	room := w - px(32)
	used := render.Paper(0)
	for i, e := range list {
		if used+e.width() > room {
			list = list[:i]
			break
		}
		used += e.width()
	}
	gap := render.Paper(0)
	if n := len(list); n > 1 {
		gap = min((room-used)/render.Paper(n-1), px(64))
	}
	x := px(16)
	for _, e := range list {
		marks = append(marks, e.at(render.Point{X: x, Y: top + planFoot/2})...)
		x += e.width() + gap
	}
	return marks
}

// legendAir is the air between what is drawn and its words.
var legendAir = render.Px(8)

func (e legendEntry) width() render.Paper {
	body := render.ScreenStyle.Body
	return e.wide + legendAir + max(body.Wide(e.words[0]), body.Wide(e.words[1]))
}

func (e legendEntry) at(q render.Point) []render.Mark {
	marks := render.Shift(e.marks, q)
	for k, words := range e.words {
		line := render.Point{X: q.X + e.wide + legendAir, Y: q.Y + render.Px(float64(17*k)-8.5)}
		marks = append(marks, render.Words("", render.ScreenStyle.Body.Text(line, words, render.InkSoft, render.Left).Middled()))
	}
	return marks
}

func (p *roomPlan) legendEntries() []legendEntry {
	st, px := render.ScreenStyle, render.Px
	figure := `9' 10"`
	if p.r.w.live.unit().String() == "mm" {
		figure = "3000"
	}
	value := func(words, a, b string) legendEntry {
		return legendEntry{[]render.Mark{render.Words("", st.Measure.Text(render.Point{}, words, render.InkMain, render.Left).Middled())}, st.Measure.Wide(words), [2]string{a, b}}
	}
	box := render.Rect{Min: render.Point{Y: -px(7)}, Max: render.Point{X: px(24), Y: px(7)}}
	return []legendEntry{
		value(figure, "two readings", "agree"),
		value("("+figure+")", "read once,", "not trusted yet"),
		{render.SignCannotTell.At("", render.Point{X: px(9)}, st.Sign), px(18), [2]string{"not in yet,", "place assumed"}},
		{render.Outlined("", render.Box(box), render.InkChosenWall, st.Post), px(24), [2]string{"chosen in", "the form"}},
	}
}
