package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// Stick draws the story stick: one upright stick with every height from the floor covering to the ceiling, and beside it who sits up in
// each bed, at real size, with the air over the head. A box makes it as high as the box and cuts the figures off at its edge.
func Stick(s *fit.Scene, answers []fit.Answer, o Options) render.Drawing {
	const title = "Story stick"
	if s.Bed == nil {
		return NoBed(s, title, o)
	}
	v := &stick{s: s, known: knownOf(s), sit: sittings(s, answers)}
	v.marks = stickMarks(s, v.known, v.sit)
	v.over = ceilingMark(s, nil, &v.sit[1])
	v.top = stickTop(v.marks, v.over)
	v.open = len(v.over) == 0 || v.top > v.over[0].z+shut
	paint := func(c *canvas) {
		g := *v
		g.canvas = c
		g.paint()
	}
	if o.Scale > 0 || !(o.W > 0 && o.H > 0) {
		return o.draw(title, stickFigure, v.top, paint)
	}
	return v.inBox(title, o, paint)
}

// stick is the story stick in the making.
type stick struct {
	*canvas
	s     *fit.Scene
	known known
	sit   [2]sitting
	marks []mark
	over  []mark // the ceiling over the upper head, none: not known
	top   float64
	open  bool // the stick goes on beyond what is marked
	brief bool // there is little room
	right render.Paper
}

// overTop is how far the stick goes on where something is marked over the ceiling or the ceiling is not known, mm.
const overTop = 150.0

// stickTop returns how high a stick reaches: to the ceiling, or beyond what is marked over it, as under a slope what hangs beside it.
func stickTop(marks, over []mark) float64 {
	top := marks[len(marks)-1].z
	switch {
	case len(over) == 0:
		return rounded(top + overTop)
	case top < over[0].z+shut:
		return over[0].z
	}
	return top + overTop/2
}

// stickFigure is how far to the right of the stick the figures reach where nothing cuts them off, mm.
const stickFigure = 1350.0

// Air round a stick in a box: at its sides and top, and below the floor line.
const (
	stickEdge  render.Paper = 1.2
	stickUnder render.Paper = 3
)

// inBox makes the stick as high as the box, with its labels at the left edge and whatever of the figures has room.
func (v *stick) inBox(title string, o Options, paint func(*canvas)) render.Drawing {
	high := o.H - stickEdge - stickUnder
	if v.open {
		high -= o.Style().Tick
	}
	k := float64(high) / v.top
	try := o
	try.W, try.H, try.Origin = 0, 0, &render.Point{}
	v.brief = true
	reach := render.Bounds(try.paint(k, func(c *canvas) { v.on(c).paint() }).marks).Min.X
	o.Scale = k
	if o.Origin == nil {
		o.Origin = &render.Point{X: stickEdge - reach, Y: o.H - stickUnder}
	}
	v.right = o.W - stickEdge
	return o.draw(title, 0, 0, paint)
}

// on puts the stick on a canvas, its foot at the origin.
func (v *stick) on(c *canvas) *stickBody {
	b := c.stickBody(c.pt(0, 0).X, v.top, v.marks)
	b.inner, b.brief = true, v.brief
	return b
}

// paint draws everything from the stick outwards; the origin is the foot of the stick's right edge.
func (v *stick) paint() {
	foot := v.pt(0, 0)
	if v.right == 0 {
		v.right = foot.X + v.mm(stickFigure)
	}
	left := v.on(v.canvas).paint()
	clip := render.Rect{Min: render.Point{X: foot.X, Y: v.pt(0, v.top).Y - v.st.Gap}, Max: render.Point{X: v.right, Y: foot.Y + v.st.Gap}}
	var seats [2]stickSeat
	for i := range seats {
		seats[i] = stickSeat{v, &v.sit[i], decksOf(v.s.Bed)[i], clip, foot.X + v.st.Tick*0.6, v.top}
	}
	seats[0].under = heightOver(v.s, v.s.Bed.Upper.Frame)
	v.beds(seats)
	v.add(v.st.Ground("floor", render.Point{X: left, Y: foot.Y}, render.Point{X: v.right, Y: foot.Y})...)
	v.ceilings(left)
}

// ceilings draws the ceiling at its height, over everything that reaches it, and breaks the stick off where it goes on.
func (v *stick) ceilings(left render.Paper) {
	foot := v.pt(0, 0)
	if v.open {
		y := v.pt(0, v.top).Y
		v.add(v.st.BreakLine("stick", render.Point{X: foot.X - v.st.Tick*2.5, Y: y}, render.Point{X: foot.X + v.st.Tick, Y: y}))
		left = foot.X // labels of what is over it stand there
	}
	for _, m := range v.over {
		y, from := v.pt(0, m.z).Y, left
		if m.z < v.top-shut { // labels of what is over a lower ceiling stand there
			from = foot.X
		}
		v.stroke(m.ref, render.Line(render.Point{X: from, Y: y}, render.Point{X: v.right, Y: y}), v.st.Cut)
	}
}

// beds draws both beds and who sits up in them, the lower first.
func (v *stick) beds(seats [2]stickSeat) {
	for i := range seats {
		seats[i].bed(i)
		seats[i].sitter()
	}
	for i := range seats {
		seats[i].over()
		seats[i].name(i)
	}
	for i := range seats { // what is missing for both is said once
		if !v.sit[i].known && (i == 1 || v.sit[1].known || v.sit[0].wants != v.sit[1].wants) {
			seats[i].missing()
		}
	}
}
