package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// Plan draws the room from above: walls cut through, openings, what hangs and stands, and the bed seen from over it. Its origin is the
// first corner of the wall at the top.
func Plan(s *fit.Scene, answers []fit.Answer, o Options) render.Drawing {
	const title = "Room from above"
	if len(s.Walls) == 0 {
		return o.draw(title, 0, 0, func(c *canvas) { noShape(c, s) })
	}
	p := newPlanner(s, o)
	lo, hi := p.outline.Bounds()
	return o.draw(title, hi.X-lo.X, hi.Y-lo.Y, func(c *canvas) {
		q := *p
		q.canvas = c
		q.paint(answers)
	})
}

// planner draws the room from above on a canvas: the room is turned so that one wall lies level at the top.
type planner struct {
	*canvas
	s       *fit.Scene
	known   known
	top     *fit.Wall
	turn    geom.Place   // from the room to the view
	outline geom.Polygon // corners in the view
	walls   []planWall
	bodies  []body // of the bed, from the lowest up
	inside  []laid // dimensions across the room still to be drawn
}

func newPlanner(s *fit.Scene, o Options) *planner {
	p := &planner{s: s, known: knownOf(s), top: wallNamed(s, o.Top)}
	if p.top == nil {
		p.top = &s.Walls[0]
	}
	// The inverse of the turn that lays the view's x along the top wall.
	p.turn = geom.Place{Cos: p.top.Dir.X, Sin: -p.top.Dir.Y}
	p.turn.At = p.turn.Point(p.top.A.At(0)).Mul(-1)
	for _, q := range s.Outline {
		p.outline = append(p.outline, p.view(q))
	}
	p.planWalls()
	p.openings()
	p.bodies = fromAbove(s)
	return p
}

// view turns a point of the room into the view.
func (p *planner) view(q geom.V2) geom.V2 { return p.turn.Point(q.At(0)).XY() }

// dir turns a direction of the room into the view.
func (p *planner) dir(v geom.V2) geom.V2 { return p.turn.Dir(v.At(0)).XY() }

// on returns the place on paper of a point of the room.
func (p *planner) on(q geom.V2) render.Point {
	v := p.view(q)
	return p.pt(v.X, v.Y)
}

// shape returns an outline of the room on paper.
func (p *planner) shape(q geom.Polygon) render.Path {
	points := make([]render.Point, len(q))
	for i := range q {
		points[i] = p.on(q[i])
	}
	return render.Polygon(points...)
}

// line returns a straight line on paper between two points of the room.
func (p *planner) line(a, b geom.V2) render.Path { return render.Line(p.on(a), p.on(b)) }

// paint draws everything, from the floor up.
func (p *planner) paint(answers []fit.Answer) {
	p.room = p.shape(p.s.Outline)
	p.letters()
	p.rules()
	p.drawWalls()
	p.drawers() // under everything: what they run into stays to be seen
	p.doors()
	p.windows()
	p.studs()
	p.floorThings()
	p.bed()
	p.wallThings()
	p.overhead()
	p.heights()
	p.cutMark()
	p.verdicts(p.s, answers)
	p.place()
	p.foot()
}

// noShape says why there is no plan, and what was read all the same.
func noShape(c *canvas, s *fit.Scene) {
	text := "The shape of the room is not determined: read the missing walls, or a diagonal."
	for _, g := range s.Survey.Gaps {
		if g.Key == "outline" {
			text = capital(g.Text) + "."
		}
	}
	width := 90 * render.Paper(1)
	if c.o.W > 0 {
		width = max(c.o.W-4*edge, 20)
	}
	marks := c.st.Heading.Paragraph("room", render.Point{}, text, width, render.InkCannotTell)
	y := render.Bounds(marks).Max.Y + c.st.Body.Leading()*1.5
	for _, w := range s.Job.Room.Walls {
		if len(w.Length) > 0 {
			words := "wall " + between(w.Key) + ": " + c.read(w.Length[0].Value.MM(), len(w.Length) > 1)
			marks = append(marks, render.Words("wall."+w.Key, c.st.Body.Text(render.Point{Y: y}, words, render.InkMain, render.Left)))
			y += c.st.Body.Leading()
		}
	}
	c.add(marks...)
}
