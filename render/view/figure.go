package view

import (
	"bunkwright/render"
)

// person draws somebody who sits on a mattress with stretched legs, seen from the side: seat is where the back meets the mattress, tall
// the seated height in mm, and dir 1 where the legs stretch to the right, -1 to the left. The proportions are those of a drawing, not
// of a table; only the seated height is measured.
func (c *canvas) person(ref string, x, z, tall, dir float64) {
	at := func(fx, fz float64) render.Point { return c.pt(x+dir*fx*tall, z+fz*tall) }
	body := render.Path{}.Move(at(-0.16, 0)).
		Cubic(at(-0.21, 0.18), at(-0.20, 0.44), at(-0.14, 0.57)).
		Cubic(at(-0.11, 0.65), at(-0.07, 0.68), at(-0.06, 0.76)).
		Line(at(0.05, 0.76)).
		Cubic(at(0.06, 0.69), at(0.14, 0.63), at(0.13, 0.50)).
		Cubic(at(0.13, 0.40), at(0.10, 0.28), at(0.13, 0.21)).
		Cubic(at(0.26, 0.23), at(0.48, 0.21), at(0.62, 0.17)).
		Cubic(at(0.78, 0.16), at(0.90, 0.12), at(1.01, 0.11)).
		Cubic(at(1.02, 0.17), at(1.03, 0.24), at(1.06, 0.25)).
		Cubic(at(1.11, 0.26), at(1.12, 0.20), at(1.12, 0.02)).
		Line(at(1.10, 0)).Close()
	arm := render.Path{}.Move(at(-0.02, 0.62)).Cubic(at(0.02, 0.50), at(0.06, 0.42), at(0.12, 0.38)).Cubic(at(0.22, 0.33), at(0.32, 0.27), at(0.42, 0.22))
	head := render.Circle(at(0.01, 0.87), c.mm(0.13*tall))
	c.outlined(ref, body, render.InkPaper, c.st.Seen)
	c.stroke(ref, arm, c.st.Thin)
	c.outlined(ref, head, render.InkPaper, c.st.Seen)
}
