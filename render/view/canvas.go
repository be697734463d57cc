package view

import (
	"strings"

	"bunkwright/render"
)

// canvas collects the marks of a view. Coordinates of a view are mm, x to the right and y up.
type canvas struct {
	o     Options
	st    render.Style
	k     float64      // mm on paper for each mm
	at    render.Point // of the view's origin
	marks []render.Mark
	notes []label                 // labels still to be placed
	spots map[string]render.Point // where the sign of a ref may stand
	room  render.Path             // what floor labels keep inside; empty: anywhere
	rings map[string]bool         // refs that carry the ring of what is not in
	stood []render.Rect           // words that rows of dimensions keep off
	apart bool                    // names keep off lines: one that finds no free ground near its thing is left out
	rough bool                    // only the size counts: labels, and what lies within the rest, may be left out
}

func newCanvas(o Options, k float64) *canvas {
	c := &canvas{o: o, st: o.Style(), k: k, spots: map[string]render.Point{}, rings: map[string]bool{}, marks: make([]render.Mark, 0, 512)}
	if o.Origin != nil {
		c.at = *o.Origin
	}
	return c
}

// pt returns the place on paper of a point of the view.
func (c *canvas) pt(x, y float64) render.Point {
	return render.Point{X: c.at.X + render.Paper(c.k*x), Y: c.at.Y - render.Paper(c.k*y)}
}

// mm returns a length on paper.
func (c *canvas) mm(d float64) render.Paper { return render.Paper(c.k * d) }

// rect returns the rectangle between two opposite points of the view.
func (c *canvas) rect(x0, y0, x1, y1 float64) render.Rect {
	return render.Around(c.pt(x0, y0), c.pt(x1, y1))
}

func (c *canvas) add(marks ...render.Mark) { c.marks = append(c.marks, marks...) }

func (c *canvas) stroke(ref string, p render.Path, pen render.Pen) { c.add(render.Stroke(ref, p, pen)) }

func (c *canvas) fill(ref string, p render.Path, ink render.Ink) { c.add(render.Fill(ref, p, ink)) }

func (c *canvas) outlined(ref string, p render.Path, ink render.Ink, pen render.Pen) {
	c.add(render.Outlined(ref, p, ink, pen)...)
}

// paper tells whether the view is for a printed sheet.
func (c *canvas) paper() bool { return c.o.On == OnPaper }

// ground is the ink of the bare floor or wall: on paper nothing is tinted.
func (c *canvas) ground() render.Ink {
	if c.paper() {
		return render.InkPaper
	}
	return render.InkPanel
}

// read prints a length, in parentheses where it rests on a single reading.
func (c *canvas) read(mm float64, firm bool) string { return inParens(c.o.Length(mm), firm) }

// dim prints a length on a line of dimensions: in millimetres the figure alone, as is usual on drawings.
func (c *canvas) dim(mm float64, firm bool) string {
	return inParens(strings.TrimSuffix(c.o.Length(mm), " mm"), firm)
}

func inParens(words string, firm bool) string {
	if firm {
		return words
	}
	return "(" + words + ")"
}
