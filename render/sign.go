package render

import "math"

// Sign is a small picture whose shape, not only its colour, says what it means.
type Sign uint8

// The signs. The first four stand for the verdicts, always beside their word; the dots say how
// a reading or a stud is known.
const (
	SignDoesNotFit Sign = iota // filled square with a cross
	SignTooClose               // triangle with a stroke
	SignCannotTell             // dashed ring with a question mark
	SignFits                   // filled disc with a tick
	DotFilled                  // found or read twice
	DotOpen                    // read once, or assumed
	DotDashed                  // not read yet
)

// At returns the sign, of the given width, with its middle at c.
func (s Sign) At(ref string, c Point, width Paper) []Mark {
	g := signGrid{ref, c, width / 16}
	switch s {
	case SignDoesNotFit:
		return g.doesNotFit()
	case SignTooClose:
		return g.tooClose()
	case SignCannotTell:
		return g.cannotTell()
	case SignFits:
		return g.fits()
	case DotFilled:
		return []Mark{Fill(ref, Circle(c, width/2), InkMain)}
	case DotOpen:
		return g.ring(g.pen(2, InkMain), InkPaper)
	}
	return g.ring(g.dotted(2, 7, InkMain), InkPaper)
}

// ringRadius is the radius of rings, in units of the grid.
const ringRadius = 7

// signGrid draws on 16 by 16 units about the middle.
type signGrid struct {
	ref  string
	c    Point
	unit Paper
}

func (g signGrid) at(x, y float64) Point {
	return g.c.Plus(Point{Paper(x), Paper(y)}.Times(float64(g.unit)))
}

func (g signGrid) pen(width float64, ink Ink) Pen { return Pen{Width: Paper(width) * g.unit, Ink: ink} }

// dotted returns a pen that goes round the ring in a whole number of dashes.
func (g signGrid) dotted(width float64, dashes int, ink Ink) Pen {
	each := 2 * math.Pi * ringRadius / Paper(dashes) * g.unit
	return dashed(Paper(width)*g.unit, ink, each*0.6, each*0.4)
}

func (g signGrid) doesNotFit() []Mark {
	box := RoundBox(Rect{g.at(-7.5, -7.5), g.at(7.5, 7.5)}, 1.5*g.unit)
	cross := append(Line(g.at(-3.2, -3.2), g.at(3.2, 3.2)), Line(g.at(-3.2, 3.2), g.at(3.2, -3.2))...)
	return []Mark{
		Fill(g.ref, box, InkNotFit),
		Stroke(g.ref, cross, g.pen(2.4, InkOnSign)),
	}
}

func (g signGrid) tooClose() []Mark {
	triangle := Polygon(g.at(0, -7), g.at(7.1, 6.3), g.at(-7.1, 6.3))
	wedge := Polygon(g.at(-1.1, -2.6), g.at(1.1, -2.6), g.at(0.7, 4), g.at(-0.7, 4))
	return []Mark{
		Fill(g.ref, triangle, InkTooCloseTint),
		Stroke(g.ref, triangle, g.pen(1.7, InkTooClose)),
		Fill(g.ref, wedge, InkTooClose),
	}
}

func (g signGrid) cannotTell() []Mark {
	mark := Lettering{11.5 * g.unit, Bold}.Text(g.c, "?", InkCannotTell, Centre).Middled()
	return append(g.ring(g.dotted(1.6, 11, InkCannotTell), InkPanel), Words(g.ref, mark))
}

func (g signGrid) fits() []Mark {
	tick := Polyline(g.at(-3.6, 0.3), g.at(-1, 3), g.at(3.7, -2.9))
	return []Mark{
		Fill(g.ref, Circle(g.c, 8*g.unit), InkFits),
		Stroke(g.ref, tick, g.pen(2.4, InkOnSign)),
	}
}

func (g signGrid) ring(pen Pen, ground Ink) []Mark {
	return Outlined(g.ref, Circle(g.c, ringRadius*g.unit), ground, pen)
}
