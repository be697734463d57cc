package view

import (
	"slices"
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

// others are the doors and windows of the wall beside what is measured: they tell which wall it is.
func (f *cardFace) others() []string {
	var out []string
	r := &f.s.Job.Room
	add := func(ref, wall string) {
		if wall == f.c.Shown.Wall && ref != f.c.Shown.Thing && f.c.Shown.Thing == "" {
			out = append(out, ref)
		}
	}
	for i, d := range r.Doors {
		add("door."+keyOr(d.Key, i), d.Wall)
	}
	for i, w := range r.Windows {
		add("window."+keyOr(w.Key, i), w.Wall)
	}
	return out
}

// draw draws a thing on the wall.
func (f *cardFace) draw(ref string, t cardThing) {
	if !t.found {
		return
	}
	r := f.rect(t.x0, t.z0, t.x1, t.z1)
	switch t.table {
	case "window":
		f.window(r)
	case "door":
		f.door(r, t)
	case "outlet":
		f.outlet(r)
	case "register":
		f.outlined(render.Box(r), render.InkWell, f.st.Seen)
		for i := 1; i < 4; i++ {
			y := r.Min.Y + r.H()*render.Paper(i)/4
			f.stroke(render.Line(render.Point{X: r.Min.X, Y: y}, render.Point{X: r.Max.X, Y: y}), f.st.Thin)
		}
	case "stud":
		f.stroke(render.Box(r), f.st.Behind)
	case "fan":
		f.fan(r)
	case "light", "alarm":
		f.light(r, t.table)
	case "beam":
		f.outlined(render.Box(render.Rect{Min: render.Point{X: f.box.Min.X, Y: r.Min.Y}, Max: render.Point{X: f.box.Max.X, Y: r.Max.Y}}), render.InkWallCut, f.st.Seen)
	case "ceiling":
	default:
		f.outlined(render.RoundBox(r, f.st.Gap/2), render.InkWell, f.st.Seen)
	}
}

// trim is how wide a casing is drawn, as a share of the wall.
const trim = 0.03

func (f *cardFace) window(r render.Rect) {
	w := f.box.W() * trim
	f.outlined(render.Box(r.Grow(w)), render.InkBoard, f.st.Seen)
	f.outlined(render.Box(r), render.InkGlass, f.st.Seen)
	y := r.Centre().Y
	f.stroke(render.Line(render.Point{X: r.Min.X, Y: y}, render.Point{X: r.Max.X, Y: y}), f.st.Seen)
	sill := render.Rect{Min: render.Point{X: r.Min.X - w*1.5, Y: r.Max.Y}, Max: render.Point{X: r.Max.X + w*1.5, Y: r.Max.Y + w*0.7}}
	f.outlined(render.Box(sill), render.InkBoard, f.st.Seen)
}

func (f *cardFace) door(r render.Rect, t cardThing) {
	w := f.box.W() * trim
	outer := render.Rect{Min: render.Point{X: r.Min.X - w, Y: r.Min.Y - w}, Max: render.Point{X: r.Max.X + w, Y: r.Max.Y}}
	f.outlined(render.Box(outer), render.InkBoard, f.st.Seen)
	f.outlined(render.Box(r), render.InkDrawerFront, f.st.Seen)
	f.add(render.Fill("", render.Circle(render.Point{X: r.Max.X - w*1.2, Y: r.Centre().Y + r.H()*0.06}, w*0.45), render.InkMain))
}

func (f *cardFace) outlet(r render.Rect) {
	f.outlined(render.RoundBox(r, f.st.Gap/3), render.InkWhite, f.st.Seen)
	for _, y := range []render.Paper{0.3, 0.7} {
		for _, x := range []render.Paper{0.38, 0.62} {
			at := render.Point{X: r.Min.X + r.W()*x, Y: r.Min.Y + r.H()*y}
			f.stroke(render.Line(render.Point{X: at.X, Y: at.Y - r.H()*0.08}, render.Point{X: at.X, Y: at.Y + r.H()*0.08}), f.st.Thin)
		}
	}
}

func (f *cardFace) fan(r render.Rect) {
	c := r.Centre()
	f.stroke(render.Line(render.Point{X: c.X, Y: f.box.Min.Y}, c), f.st.Cut)
	blade := render.Rect{Min: render.Point{X: r.Min.X, Y: r.Max.Y - r.H()*0.35}, Max: r.Max}
	f.outlined(render.RoundBox(blade, blade.H()/2), render.InkBoard, f.st.Seen)
	f.outlined(render.RoundBox(render.Around(c).Grow(r.H()*0.5), f.st.Gap/2), render.InkWell, f.st.Seen)
}

func (f *cardFace) light(r render.Rect, table string) {
	c := r.Centre()
	f.stroke(render.Line(render.Point{X: c.X, Y: f.box.Min.Y}, render.Point{X: c.X, Y: r.Min.Y}), f.st.Seen)
	ink := render.InkTape
	if table == "alarm" {
		ink = render.InkWhite
	}
	f.outlined(render.RoundBox(r, min(r.W(), r.H())*0.4), ink, f.st.Seen)
}

// pointAt marks the thing that a question without a tape is about.
func (f *cardFace) pointAt(t cardThing) {
	if !t.found {
		return
	}
	r := f.rect(t.x0, t.z0, t.x1, t.z1)
	tip := render.Point{X: r.Max.X + f.words.Size*0.35, Y: r.Centre().Y}
	back := render.Point{X: 1}
	if f.box.Max.X-r.Max.X < r.Min.X-f.box.Min.X {
		tip.X, back.X = r.Min.X-f.words.Size*0.35, -1
	}
	f.arrow(tip, back, f.words.Size*2.2)
}

// ends are both ends of the tape on paper.
func (f *cardFace) ends(t cardThing) (a, b render.Point) {
	from, to := f.c.Shown.From, f.c.Shown.To
	z := f.level(t)
	if upright(from.At) || upright(to.At) {
		x := f.besideOf(t)
		return f.pt(x, f.height(from.At, t)), f.pt(x, f.height(to.At, t))
	}
	return f.pt(f.along(from, t), z), f.pt(f.along(to, t), z)
}

// upright tells whether a place is one of those that a tape from floor to ceiling goes to.
func upright(at ask.Place) bool {
	return slices.Contains([]ask.Place{ask.AtFloor, ask.AtCeiling, ask.AtBottom, ask.AtTop}, at)
}

// height is how high a place is, in mm.
func (f *cardFace) height(at ask.Place, t cardThing) float64 {
	switch at {
	case ask.AtFloor:
		return 0
	case ask.AtCeiling:
		return f.high
	case ask.AtTop:
		if strings.Contains(f.c.Key, "baseboard") {
			return f.high * 0.3
		}
		return t.z1
	case ask.AtBottom:
		return t.z0
	}
	return (t.z0 + t.z1) / 2
}

// besideOf is where an upright tape stands: in the middle of what it goes to, beside a plate, near its corner for the ceiling.
func (f *cardFace) besideOf(t cardThing) float64 {
	switch {
	case t.table == "outlet":
		return t.x1 + 0.03*f.long
	case t.table == "ceiling" || !t.found:
		if t.found && jobfileCorner(f.cardPainter) == "" {
			return (t.x0 + t.x1) / 2
		}
		return 0.09 * f.long
	case t.table == "window" || t.table == "door":
		return t.x0 + (t.x1-t.x0)*0.3
	case t.table == "fan":
		return t.x0 + (t.x1-t.x0)*0.12
	}
	return (t.x0 + t.x1) / 2
}

// level is the height at which a level tape lies.
func (f *cardFace) level(t cardThing) float64 {
	switch f.c.Shown.Level {
	case ask.Low:
		return f.high * 0.12
	case ask.High:
		return f.high * 0.86
	case ask.Middle:
		return f.high * 0.47
	}
	switch {
	case t.table == "window" && f.c.Shown.From.At == ask.AtCorner:
		return t.z0 + 0.05*f.high
	case t.table == "door" && f.c.Shown.From.At == ask.AtCorner:
		return f.high * 0.42
	case t.table == "stud":
		return f.high * 0.6
	}
	return (t.z0 + t.z1) / 2
}

// along is how far a place is from the left end of the wall, in mm.
func (f *cardFace) along(m ask.Mark, t cardThing) float64 {
	lo, hi := t.x0, t.x1
	if t.fromRight {
		lo, hi = hi, lo
	}
	switch m.At {
	case ask.AtCorner:
		if m.Name == f.right {
			return f.long
		}
		return 0
	case ask.AtNear:
		return lo
	case ask.AtFar:
		return hi
	case ask.AtFront: // the outer edge of a casing
		return lo + map[bool]float64{true: 1, false: -1}[t.fromRight]*trim*f.long
	}
	return (lo + hi) / 2
}

// magnify shows in a circle which edge of an opening is meant.
func (f *cardFace) magnify(t cardThing, a, b render.Point) {
	if t.table != "window" && t.table != "door" || f.c.Shown.From.At != ask.AtCorner || !render.Aligned(a.Y, b.Y) {
		return
	}
	r := f.box.H() * 0.21
	side := render.Paper(1) // of the opening, seen from its edge
	if onLeft := b.X < f.pt((t.x0+t.x1)/2, 0).X; !onLeft {
		side = -1
	}
	c := render.Point{X: f.pt(t.x0, 0).X - r - f.words.Size*1.6, Y: f.box.Min.Y + r + f.words.Size*0.4}
	if c.X-r < f.box.Min.X+f.words.Size*0.4 {
		c.X = f.pt(t.x1, 0).X + r + f.words.Size*1.6
	}
	if c.X-r < f.box.Min.X || c.X+r > f.box.Max.X {
		return
	}
	f.add(render.Stroke("", render.Line(b, c), f.st.Behind))
	glass := render.InkGlass
	if t.table == "door" {
		glass = render.InkDrawerFront
	}
	f.add(render.Fill("", render.Circle(c, r), render.InkField))
	f.lens(c, r, 0, side, glass)
	f.lens(c, r, 0, -side*0.45, render.InkBoard)
	f.add(render.Stroke("", render.Line(render.Point{X: c.X, Y: c.Y - r}, render.Point{X: c.X, Y: c.Y + r}), f.st.Cut))
	f.add(render.Stroke("", render.Circle(c, r), f.st.Post))
	f.arrow(c, render.Point{X: side}, r*0.85)
}

// lens fills the part of a circle between two upright lines, given as shares of its radius from its middle.
func (f *cardFace) lens(c render.Point, r render.Paper, from, to render.Paper, ink render.Ink) {
	lo, hi := min(from, to), max(from, to)
	box := render.Rect{Min: render.Point{X: c.X + r*lo, Y: c.Y - r}, Max: render.Point{X: c.X + r*hi, Y: c.Y + r}}
	for _, m := range render.Fill("", render.Circle(c, r), ink).Clip(box) {
		f.add(m)
	}
	if to != 1 && to != -1 {
		x := c.X + r*to
		half := r * 0.89
		f.add(render.Stroke("", render.Line(render.Point{X: x, Y: c.Y - half}, render.Point{X: x, Y: c.Y + half}), f.st.Seen))
	}
}
