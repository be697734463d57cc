// Package render answers what a finished drawing consists of: strokes, fills and texts in
// millimetres on paper, each naming what it shows.
//
// A Drawing is a value. The packages raster, svg and pdf turn it into pictures and know
// nothing of rooms and beds; the packages that draw rooms and beds know nothing of formats.
package render

// Drawing is one finished picture. Nothing in it is relative: every mark has its own pen and
// its own coordinates, so that a mark can be picked, lit, moved or left out alone.
type Drawing struct {
	Title  string // names the page in an outline; outputs do not write it on the paper
	W, H   Paper
	Marks  []Mark  // the last is on top
	Scale  float64 // mm on paper for each mm of what is drawn; 0: not to scale
	Origin Point   // where the origin of what is drawn stands
}

// Add puts marks on top of the drawing.
func (d *Drawing) Add(marks ...Mark) { d.Marks = append(d.Marks, marks...) }

// Page returns the whole paper of the drawing.
func (d Drawing) Page() Rect { return Rect{Max: Point{d.W, d.H}} }

// Bounds returns what the marks cover, which may be more or less than the paper; it is empty
// if there are none.
func (d Drawing) Bounds() Rect { return Bounds(d.Marks) }

// Faces returns the faces the texts are set in, in the order of Face.
func (d Drawing) Faces() []Face {
	var used [faces]bool
	for _, m := range d.Marks {
		if m.Kind == KindText {
			used[m.Text.Face] = true
		}
	}
	var list []Face
	for f := range faces {
		if used[f] {
			list = append(list, f)
		}
	}
	return list
}
