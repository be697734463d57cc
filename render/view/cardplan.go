package view

import (
	"math"
	"slices"
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// cardPlan is the room from above in a rectangle of the page.
type cardPlan struct {
	*cardPainter
	letters []string
	corners geom.Polygon // in mm, clockwise seen from above
	k       float64
	middle  geom.V2
	centre  render.Point
}

// fromAbove draws the whole room from above.
func (p *cardPainter) fromAbove() {
	q := p.plan()
	if len(q.corners) < 3 {
		return
	}
	q.outline()
	w, ok := q.wall()
	if !ok {
		if p.c.Shown.From.At == ask.AtCorner && p.c.Shown.To.At == ask.AtCorner {
			p.tape(q.corner(p.c.Shown.From.Name), q.corner(p.c.Shown.To.Name), q.centre)
		}
		return
	}
	t := p.thing(p.c.Shown.Thing, w.long, 2440)
	q.draw(w, t)
	if p.c.Shown.From.At == ask.Nowhere {
		if t.found {
			m := q.at(w, (t.x0+t.x1)/2, (t.out0+t.out1)/2)
			p.arrow(m, unitTo(m, q.centre), p.words.Size*2.2)
		}
		return
	}
	p.tape(q.place(w, p.c.Shown.From, t), q.place(w, p.c.Shown.To, t), q.centre)
}

func unitTo(a, b render.Point) render.Point {
	d := b.Minus(a)
	if d.Length() < 1e-6 {
		return render.Point{Y: 1}
	}
	return d.Times(1 / float64(d.Length()))
}

// plan fits the room into the page.
func (p *cardPainter) plan() *cardPlan {
	q := &cardPlan{cardPainter: p, letters: strings.Split(p.s.Job.Room.Outline, ""), corners: p.s.Outline}
	if len(q.corners) != len(q.letters) {
		q.corners = plainShape(len(q.letters))
	}
	if len(q.corners) < 3 {
		return q
	}
	lo, hi := q.corners.Bounds()
	air := p.words.Size * 1.8
	wide, high := float64(p.page.W()-2*air), float64(p.page.H()-2*air)
	q.k = min(wide/(hi.X-lo.X), high/(hi.Y-lo.Y))
	q.middle = lo.Add(hi).Mul(0.5)
	q.centre = p.page.Centre()
	return q
}

// plainShape is a shape for a room whose readings do not give it one: a rectangle, or corners round a circle, clockwise from the left of
// the top.
func plainShape(n int) geom.Polygon {
	if n == 4 {
		return geom.Polygon{{X: 0, Y: 0}, {X: 3500, Y: 0}, {X: 3500, Y: -2800}, {X: 0, Y: -2800}}
	}
	var out geom.Polygon
	for i := range n {
		a := math.Pi*3/4 - 2*math.Pi*float64(i)/float64(n)
		out = append(out, geom.V2{X: 1800 * math.Cos(a), Y: 1500 * math.Sin(a)})
	}
	return out
}

func (q *cardPlan) pt(v geom.V2) render.Point {
	d := v.Sub(q.middle).Mul(q.k)
	return render.Point{X: q.centre.X + render.Paper(d.X), Y: q.centre.Y - render.Paper(d.Y)}
}

func (q *cardPlan) corner(letter string) render.Point {
	return q.pt(q.corners[max(0, slices.Index(q.letters, letter))])
}

// outline draws the walls, the letters and the door.
func (q *cardPlan) outline() {
	var points []render.Point
	for _, c := range q.corners {
		points = append(points, q.pt(c))
	}
	q.add(render.Outlined("", render.Polygon(points...), render.InkField, render.Pen{Width: q.st.Cut.Width * 1.6})...)
	for i, d := range q.s.Job.Room.Doors {
		q.doorGap("door."+keyOr(d.Key, i), d.Wall)
	}
	for i := range q.corners {
		q.letter(q.letters[i], points[i].Plus(q.outwards(i).Times(float64(q.words.Size*1.2))))
	}
}

// outwards is the direction in which a corner points out of the room, on paper.
func (q *cardPlan) outwards(i int) render.Point {
	n := len(q.corners)
	a, b := q.corners.Edge((i + n - 1) % n)
	c, d := q.corners.Edge(i)
	out := b.Sub(a).Unit().Right().Add(d.Sub(c).Unit().Right()).Mul(-1).Unit()
	return render.Point{X: render.Paper(out.X), Y: -render.Paper(out.Y)}
}

// doorGap opens the wall where a door is.
func (q *cardPlan) doorGap(ref, key string) {
	if key == "" || len(key) != 2 {
		return
	}
	w, ok := q.wallOf(key)
	if !ok {
		return
	}
	shown := q.c.Shown.Wall
	q.c.Shown.Wall = key
	t := q.thing(ref, w.long, 2440)
	q.c.Shown.Wall = shown
	a, b := q.at(w, t.x0, 0), q.at(w, t.x1, 0)
	q.add(render.Stroke(ref, render.Line(a, b), render.Pen{Width: q.st.Cut.Width * 2.4, Ink: render.InkField}))
	q.add(render.Stroke(ref, render.Line(a, b), q.st.Thin))
}

// cardWall is a wall on the plan.
type cardWall struct {
	a, dir, in geom.V2
	long       float64
}

func (q *cardPlan) wall() (cardWall, bool) { return q.wallOf(q.c.Shown.Wall) }

func (q *cardPlan) wallOf(key string) (cardWall, bool) {
	if len(key) != 2 {
		return cardWall{}, false
	}
	i := slices.Index(q.letters, key[:1])
	if i < 0 {
		return cardWall{}, false
	}
	a, b := q.corners.Edge(i)
	dir := b.Sub(a).Unit()
	return cardWall{a: a, dir: dir, in: dir.Right(), long: b.Sub(a).Len()}, true
}

// at is a point along a wall from its left end and out from it.
func (q *cardPlan) at(w cardWall, along, out float64) render.Point {
	return q.pt(w.a.Add(w.dir.Mul(along)).Add(w.in.Mul(out)))
}

// draw draws the thing on the floor or under the ceiling.
func (q *cardPlan) draw(w cardWall, t cardThing) {
	switch {
	case !t.found:
	case t.table == "ceiling":
		m := q.at(w, (t.x0+t.x1)/2, t.out0)
		q.stroke(render.Circle(m, q.words.Size*0.35), q.st.Seen)
	case t.round:
		m := q.at(w, (t.x0+t.x1)/2, t.out0)
		r := render.Paper(q.k * (t.x1 - t.x0) / 2)
		q.outlined(render.Circle(m, r), render.InkWell, q.st.Behind)
		q.stroke(render.Circle(m, q.words.Size*0.15), q.st.Seen)
	default:
		out1 := max(t.out1, t.out0+0.12*w.long)
		if t.table == "beam" {
			t.x0, t.x1 = 0, w.long
		}
		if t.table == "door" || t.table == "window" || t.table == "outlet" {
			t.out0, out1 = 0, 0.05*w.long
		}
		q.outlined(render.Polygon(q.at(w, t.x0, t.out0), q.at(w, t.x1, t.out0), q.at(w, t.x1, out1), q.at(w, t.x0, out1)), render.InkWell, q.st.Seen)
	}
}

// place is an end of the tape.
func (q *cardPlan) place(w cardWall, m ask.Mark, t cardThing) render.Point {
	mid := (t.x0 + t.x1) / 2
	out1 := max(t.out1, t.out0+0.12*w.long)
	lo, hi := t.x0, t.x1
	if t.fromRight {
		lo, hi = hi, lo
	}
	across := (t.out0 + out1) / 2
	if t.round {
		across = t.out0
	}
	switch m.At {
	case ask.AtCorner: // along the wall, as far out as what it goes to
		if m.Name == q.c.Shown.Wall[1:] {
			return q.at(w, w.long, across)
		}
		return q.at(w, 0, across)
	case ask.AtWall:
		return q.at(w, mid, 0)
	case ask.AtNear:
		return q.at(w, lo, across)
	case ask.AtFar, ask.AtOther:
		return q.at(w, hi, across)
	case ask.AtBack:
		return q.at(w, mid, t.out0)
	case ask.AtFront:
		return q.at(w, mid, out1)
	}
	return q.at(w, mid, across)
}
