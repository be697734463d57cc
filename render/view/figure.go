package view

import (
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
)

// A person sits on a mattress with the legs stretched out, seen from the side. Measured are the seated height and, from the yardstick,
// the size of a head; the other proportions are those of a drawing, not of a table.
type person struct {
	ref     string
	x, seat float64 // where the middle of the head and the mattress are, mm
	tall    float64 // seated height, mm
	dir     float64 // 1 where the legs stretch to the right, -1 to the left
	ground  render.Ink
}

// headShare bounds the head of somebody small, as a share of the seated height.
const headShare = 0.135

// headRadius returns half the height of the head: that of the free cylinder round it, which is half the head length of a tall youth, or less
// for somebody small.
func (p person) headRadius() float64 {
	return min(yardstick.Figure(yardstick.HeadCylinder), headShare*p.tall)
}

// marks returns the figure: body, arm, head, in that order from back to front.
func (p person) marks(c *canvas) []render.Mark {
	at := p.at(c)
	marks := render.Outlined(p.ref, p.body(at), p.ground, c.st.Seen)
	marks = append(marks, render.Stroke(p.ref, p.arm(at), c.st.Thin))
	return append(marks, render.Outlined(p.ref, p.head(c), p.ground, c.st.Seen)...)
}

// hidden returns the outline of the figure as it is drawn over what it runs into: dashed.
func (p person) hidden(c *canvas) []render.Mark {
	return []render.Mark{render.Stroke(p.ref, p.body(p.at(c)), c.st.Behind), render.Stroke(p.ref, p.head(c), c.st.Behind)}
}

// at turns shares of the seated height, towards the feet and up, into points on paper.
func (p person) at(c *canvas) func(u, v float64) render.Point {
	return func(u, v float64) render.Point { return c.pt(p.x+p.dir*u*p.tall, p.seat+v*p.tall) }
}

// chin is the height of the chin over the mattress, as a share of the seated height.
func (p person) chin() float64 { return 1 - 2*p.headRadius()/p.tall }

// body goes up the back, down the front, along the legs to the toes, and back along the mattress.
func (p person) body(at func(u, v float64) render.Point) render.Path {
	n := p.chin()
	return render.Path{}.Move(at(-0.085, 0)).
		Cubic(at(-0.155, 0.005), at(-0.17, 0.09), at(-0.15, 0.19)).
		Cubic(at(-0.132, 0.27), at(-0.165, 0.40), at(-0.16, n-0.19)).
		Cubic(at(-0.155, n-0.055), at(-0.07, n-0.055), at(-0.062, n+0.06)).
		Line(at(0.04, n+0.03)).
		Cubic(at(0.035, n-0.045), at(0.075, n-0.075), at(0.085, n-0.16)).
		Cubic(at(0.10, 0.43), at(0.055, 0.32), at(0.08, 0.195)).
		Cubic(at(0.22, 0.21), at(0.40, 0.225), at(0.54, 0.185)).
		Cubic(at(0.68, 0.17), at(0.81, 0.115), at(0.955, 0.10)).
		Cubic(at(0.975, 0.15), at(0.975, 0.215), at(1.01, 0.235)).
		Cubic(at(1.045, 0.245), at(1.065, 0.20), at(1.065, 0.13)).
		Cubic(at(1.065, 0.08), at(1.06, 0.02), at(1.02, 0)).Close()
}

// arm hangs from the shoulder, with the hand on the thigh.
func (p person) arm(at func(u, v float64) render.Point) render.Path {
	n := p.chin()
	outer := render.Path{}.Move(at(-0.078, n-0.17)).
		Cubic(at(-0.085, n-0.27), at(-0.065, 0.39), at(-0.02, 0.335)).
		Cubic(at(0.025, 0.29), at(0.16, 0.245), at(0.26, 0.213))
	return append(outer, render.Path{}.Move(at(0.008, n-0.20)).
		Cubic(at(0.005, n-0.28), at(0.01, 0.42), at(0.042, 0.385)).
		Cubic(at(0.095, 0.345), at(0.21, 0.285), at(0.31, 0.225))...)
}

// head is seen in profile: round, with a nose.
func (p person) head(c *canvas) render.Path {
	r := p.headRadius()
	at := func(u, v float64) render.Point { return c.pt(p.x+p.dir*u*r, p.seat+p.tall-r+v*r) }
	return render.Path{}.Move(at(0, 1)).
		Cubic(at(0.50, 1), at(0.80, 0.66), at(0.84, 0.24)).
		Cubic(at(0.86, 0.10), at(0.98, -0.08), at(1.06, -0.20)).
		Cubic(at(1.02, -0.28), at(0.92, -0.28), at(0.85, -0.28)).
		Cubic(at(0.90, -0.50), at(0.80, -0.98), at(0.42, -1)).
		Cubic(at(0.22, -1), at(0.02, -0.90), at(-0.16, -0.84)).
		Cubic(at(-0.66, -0.72), at(-0.90, -0.36), at(-0.90, 0.10)).
		Cubic(at(-0.90, 0.62), at(-0.50, 1), at(0, 1)).Close()
}
