package view

import (
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/render"
)

// faceOn draws a wall seen from inside the room.
func (p *cardPainter) faceOn() {
	f := p.face()
	f.room()
	for _, ref := range f.others() {
		f.draw(ref, p.thing(ref, f.long, f.high))
	}
	ref := p.c.Shown.Thing
	t := p.thing(ref, f.long, f.high)
	f.draw(ref, t)
	if p.c.Shown.From.At == ask.Nowhere {
		f.pointAt(t)
		return
	}
	a, b := f.ends(t)
	p.tape(a, b, f.box.Centre())
	f.magnify(t, a, b)
}

// cardFace is a wall face in a rectangle of the page. Both ways have a scale of their own: it shows where, not how far.
type cardFace struct {
	*cardPainter
	box        render.Rect
	long, high float64
	left       string
	right      string
}

func (p *cardPainter) face() *cardFace {
	wall := p.c.Shown.Wall
	f := &cardFace{cardPainter: p, high: 2440, long: p.mm("wall."+wall+".length", 3500)}
	if len(wall) == 2 {
		f.left, f.right = wall[:1], wall[1:]
	}
	side := p.words.Size * 2.1
	f.box = render.Rect{Min: render.Point{X: side, Y: p.words.Size * 0.7}, Max: render.Point{X: p.page.Max.X - side, Y: p.page.Max.Y - p.words.Size*0.9}}
	return f
}

// pt is a point of the wall on paper.
func (f *cardFace) pt(x, z float64) render.Point {
	return render.Point{
		X: f.box.Min.X + render.Paper(x/f.long)*f.box.W(),
		Y: f.box.Max.Y - render.Paper(z/f.high)*f.box.H(),
	}
}

func (f *cardFace) rect(x0, z0, x1, z1 float64) render.Rect {
	return render.Around(f.pt(x0, z0), f.pt(x1, z1))
}

// baseboard is how high a baseboard is drawn, as a share of the wall.
const baseboard = 0.055

// room draws the wall: ceiling, floor, both corners, and the baseboard.
func (f *cardFace) room() {
	over := f.words.Size * 0.7
	f.add(render.Fill("", render.Box(f.box), render.InkField))
	high := f.box.H() * baseboard
	if strings.Contains(f.c.Key, "baseboard") {
		high = f.box.H() * 0.3
	}
	board := render.Rect{Min: render.Point{X: f.box.Min.X, Y: f.box.Max.Y - high}, Max: f.box.Max}
	f.add(render.Outlined("", render.Box(board), render.InkBoard, f.st.Thin)...)
	for _, y := range []render.Paper{f.box.Min.Y, f.box.Max.Y} {
		f.add(render.Stroke("", render.Line(render.Point{X: f.box.Min.X - over, Y: y}, render.Point{X: f.box.Max.X + over, Y: y}), f.st.Cut))
	}
	for _, x := range []render.Paper{f.box.Min.X, f.box.Max.X} {
		f.add(render.Stroke("", render.Line(render.Point{X: x, Y: f.box.Min.Y}, render.Point{X: x, Y: f.box.Max.Y}), f.st.Cut))
	}
	if f.left != "" {
		y := f.box.Min.Y + f.words.Size*1.3
		f.letter(f.left, render.Point{X: f.box.Min.X - f.words.Size*1.1, Y: y})
		f.letter(f.right, render.Point{X: f.box.Max.X + f.words.Size*1.1, Y: y})
	}
}
