package view

import (
	"strings"

	"bunkwright/render"
)

// closeUp draws a cut through what stands out of a wall, or lies on the floor: what is measured is much larger than it is.
func (p *cardPainter) closeUp() {
	inner := p.page.Grow(-p.words.Size * 0.7)
	if strings.HasPrefix(p.c.Key, "floor.") {
		p.layers(inner)
		return
	}
	wall := render.Rect{Min: inner.Min, Max: render.Point{X: inner.Max.X, Y: inner.Min.Y + inner.H()*0.3}}
	p.add(render.Fill("", render.Box(wall), render.InkWallCut))
	p.add(render.Stroke("", render.Hatch(render.Box(wall), p.st.Hatch*1.4, 45), p.st.Thin))
	front := wall.Max.Y + inner.H()*0.34
	if strings.HasSuffix(p.c.Key, "build_up") {
		p.board(wall, front)
		return
	}
	p.add(render.Stroke("", render.Line(render.Point{X: wall.Min.X, Y: wall.Max.Y}, wall.Max), p.st.Cut))
	block := render.Rect{Min: render.Point{X: inner.Min.X, Y: wall.Max.Y}, Max: render.Point{X: inner.Min.X + inner.W()*0.42, Y: front}}
	p.outlined(render.Box(block), render.InkBoard, p.st.Seen)
	x := inner.Min.X + inner.W()*0.5
	p.add(render.Stroke("", render.Line(render.Point{X: block.Max.X, Y: front}, render.Point{X: inner.Min.X + inner.W()*0.62, Y: front}), p.st.Behind))
	p.across(render.Point{X: x, Y: wall.Max.Y}, render.Point{X: x, Y: front})
	p.caption("wall, from above", render.Point{X: inner.Max.X, Y: inner.Max.Y})
}

// across draws the arrows of a short measure that runs up and down, both from the right.
func (p *cardPainter) across(a, b render.Point) {
	p.add(render.Stroke("tape", render.Line(a, b), p.st.Cut))
	for _, q := range []render.Point{a, b} {
		h := p.words.Size * 0.5
		p.add(render.Stroke("tape", render.Line(render.Point{X: q.X - h, Y: q.Y}, render.Point{X: q.X + h, Y: q.Y}), p.st.Cut))
	}
	tip := p.words.Size * 0.6
	right := render.Point{X: 1}
	p.end(render.Point{X: a.X + tip, Y: a.Y}, right, "from")
	p.end(render.Point{X: b.X + tip, Y: b.Y}, right, "to")
}

// board draws the board on a stud.
func (p *cardPainter) board(wall render.Rect, front render.Paper) {
	stud := render.Rect{Min: render.Point{X: wall.Min.X + wall.W()*0.1, Y: wall.Min.Y}, Max: render.Point{X: wall.Min.X + wall.W()*0.35, Y: wall.Max.Y}}
	p.outlined(render.Box(stud), render.InkEndGrain, p.st.Seen)
	sheet := render.Rect{Min: render.Point{X: wall.Min.X, Y: wall.Max.Y}, Max: render.Point{X: wall.Min.X + wall.W()*0.42, Y: front}}
	p.outlined(render.Box(sheet), render.InkWhite, p.st.Seen)
	x := wall.Min.X + wall.W()*0.5
	p.across(render.Point{X: x, Y: front}, render.Point{X: x, Y: wall.Max.Y})
	p.caption("wall, from above", render.Point{X: wall.Max.X, Y: p.page.Max.Y - p.words.Size*0.7})
}

// layers draws carpet and pad on the floor.
func (p *cardPainter) layers(in render.Rect) {
	top, under := in.Min.Y+in.H()*0.28, in.Min.Y+in.H()*0.66
	wide := in.Min.X + in.W()*0.42
	floor := render.Rect{Min: render.Point{X: in.Min.X, Y: under}, Max: render.Point{X: in.Max.X, Y: in.Max.Y - p.words.Size*1.4}}
	p.add(render.Fill("", render.Box(floor), render.InkWallCut))
	p.add(render.Stroke("", render.Hatch(render.Box(floor), p.st.Hatch*1.4, 45), p.st.Thin))
	p.add(render.Stroke("", render.Line(floor.Min, render.Point{X: floor.Max.X, Y: under}), p.st.Cut))
	p.outlined(render.Box(render.Rect{Min: render.Point{X: in.Min.X, Y: top}, Max: render.Point{X: wide, Y: under}}), render.InkBoard, p.st.Seen)
	p.add(render.Stroke("", render.Line(render.Point{X: wide, Y: top}, render.Point{X: in.Min.X + in.W()*0.6, Y: top}), p.st.Behind))
	x := in.Min.X + in.W()*0.5
	p.across(render.Point{X: x, Y: under}, render.Point{X: x, Y: top})
	p.caption("floor, cut through", in.Max)
}

// caption says at the lower right what is looked at.
func (p *cardPainter) caption(words string, at render.Point) {
	in := render.Lettering{Size: p.words.Size, Face: render.Regular}
	p.add(render.Words("", in.Text(at, words, render.InkSoft, render.Right)))
}
