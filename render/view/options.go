// Package view answers how a job looks: its room and its bed from above, face on and cut through, and the sheets to print.
//
// A view is a pure function of a scene and its answers. All views share Options, and a canvas that turns millimetres of the room into
// millimetres on paper and finds free ground for labels.
package view

import (
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
)

// Medium is what a view is drawn for.
type Medium uint8

// The media. Views for paper say by hatching, shape and words what those for the screen also say by colour.
const (
	OnScreen Medium = iota
	OnPaper
)

// Options say how a view is drawn. The zero value draws for the screen in feet and inches, at the plain scale, as large as it comes out.
type Options struct {
	On     Medium
	Unit   length.Unit
	Scale  float64       // mm on paper for each mm of the room; 0: the largest that fits the box, without a box 1:24
	W, H   render.Paper  // the box; 0: as large as what is drawn
	Origin *render.Point // where the view's origin stands (corner A of the plan, the left end of a wall at the floor); nil: centred in the box
	Top    string        // wall that lies level at the top of the plan; "": the first
	Lit    []string      // refs of what is lit, such as the parts of an opened question
	LitAs  fit.Verdict   // the verdict of that question
	Mirror bool          // views of the bed alone: it is built as its mirror image
	Beside bool          // on a screen, beside another view: what that shows is left out, and names that find no room near their things
	Sparse bool          // there is little room: the bed is dimensioned and the walls, openings are not
	Chosen string        // RoomAsRead: key of the wall, thing or reading that is chosen
	CutOn  int           // number of the sheet that shows the section: the plan then marks where it is cut

	Names   bool     // the view from a corner names its parts
	Refused []string // refs of parts whose size cannot be built: the drawing shows the last that could
}

// plainScale is 1/2 in to 1 ft.
const plainScale = 1.0 / 24

// edge is the air between what is drawn and the edge of its box.
const edge render.Paper = 2

// Style returns the pens and letters of the medium.
func (o Options) Style() render.Style {
	if o.On == OnPaper {
		return render.SheetStyle
	}
	return render.ScreenStyle
}

// Length prints a length of the room or the bed, in mm, in the unit of the drawing.
func (o Options) Length(mm float64) string {
	return length.Format(length.FromMM(mm), length.Style{Unit: o.Unit})
}

// draw makes a view: paint puts the marks on a canvas at whatever scale it has. W and h are the size of the thing itself in mm; what
// stands round it keeps its size on paper.
func (o Options) draw(title string, w, h float64, paint func(*canvas)) render.Drawing {
	k := o.Scale
	if k > 0 || !(o.W > 0 && o.H > 0) || !(w > 0 && h > 0) {
		if k <= 0 {
			k = plainScale
		}
		return o.mount(title, o.paint(k, paint))
	}
	return o.mount(title, o.largest(w, h, paint))
}

// tries is how often a view is drawn to find its scale: what stands round it hardly changes with the scale.
const tries = 4

// largest paints at the largest scale that fits the box: roughly until it fits well, then all of it.
func (o Options) largest(w, h float64, paint func(*canvas)) *canvas {
	wide, high := float64(o.W-2*edge), float64(o.H-2*edge)
	k := 0.75 * min(wide/w, high/h)
	for range tries {
		b := render.Bounds(o.rough(k, paint))
		next := max(min((wide-float64(b.W())+k*w)/w, (high-float64(b.H())+k*h)/h), k/4)
		close := next > k*0.995 && next < k*1.005
		if k = next; close {
			break
		}
	}
	c := o.paint(k, paint)
	for range tries { // labels may have found room outside only
		if fitsIn(c.marks, wide, high) {
			break
		}
		b := render.Bounds(c.marks)
		k *= max(0.8, min(0.995, wide/float64(b.W()), high/float64(b.H())))
		c = o.paint(k, paint)
	}
	if most := 0.75 * min(wide/w, high/h); k < collapsed*most || !fitsIn(c.marks, wide, high) {
		return o.downTo(c, most, wide, high, paint)
	}
	return c
}

// collapsed is the share of a rough guess under which a scale is not believed: words that find no room in their lines move out, which
// takes room from what is drawn, which takes more words out.
const collapsed = 0.6

// downTo tries one scale after the other, from the largest down to that of a drawing, and returns the first that fits.
func (o Options) downTo(least *canvas, k, wide, high float64, paint func(*canvas)) *canvas {
	for ; k > least.k; k *= 0.96 {
		if c := o.paint(k, paint); fitsIn(c.marks, wide, high) {
			return c
		}
	}
	return least
}

func fitsIn(marks []render.Mark, wide, high float64) bool {
	b := render.Bounds(marks)
	return float64(b.W()) <= wide+0.01 && float64(b.H()) <= high+0.01
}

// rough paints what decides how large a view is.
func (o Options) rough(k float64, paint func(*canvas)) []render.Mark {
	c := newCanvas(o, k)
	c.rough = true
	paint(c)
	return c.marks
}

func (o Options) paint(k float64, paint func(*canvas)) *canvas {
	c := newCanvas(o, k)
	paint(c)
	return c
}

// mount turns what was painted into a drawing of the size asked for, with what is lit lit.
func (o Options) mount(title string, c *canvas) render.Drawing {
	d := render.Drawing{Title: title, W: o.W, H: o.H, Marks: c.marks, Scale: c.k, Origin: c.at}
	b := render.Bounds(c.marks)
	switch {
	case b.Empty():
		d.W, d.H = max(d.W, 1), max(d.H, 1)
		return d
	case d.W <= 0 || d.H <= 0:
		d.W, d.H = b.W()+2*edge, b.H()+2*edge
		shift(&d, render.Point{X: edge - b.Min.X, Y: edge - b.Min.Y})
	case o.Origin == nil:
		shift(&d, d.Page().Centre().Minus(b.Centre()))
	}
	refuse(d.Marks, c.st, o.Refused)
	if len(o.Lit) > 0 {
		d = d.Light(c.st.Lit, o.Lit...)
	}
	return d
}

// refuse draws the lines of some refs, leaders left out, with the pen of what cannot be built.
func refuse(marks []render.Mark, st render.Style, refs []string) {
	for i := range marks {
		m := &marks[i]
		if m.Kind == render.KindStroke && m.Pen.Width > st.Extension.Width && slices.ContainsFunc(refs, func(of string) bool { return render.Under(m.Ref, of) }) {
			m.Pen = st.Refused
		}
	}
}

// shift moves what is drawn on its page.
func shift(d *render.Drawing, by render.Point) {
	d.Marks, d.Origin = render.Shift(d.Marks, by), d.Origin.Plus(by)
}
