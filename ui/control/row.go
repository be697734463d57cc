package control

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// A Row is a few things side by side in a column, equally wide, or below each other where there is little room.
type Row struct {
	widget.BaseWidget
	Least float32 // width under which a thing gets a line of its own
	cells []fyne.CanvasObject
}

// What stands round a row and between its things.
const (
	rowEdge = 16
	rowAir  = 20
	rowLine = 4
)

// NewRow puts things into a row.
func NewRow(cells ...fyne.CanvasObject) *Row {
	r := &Row{Least: 160, cells: cells}
	r.ExtendBaseWidget(r)
	return r
}

// CreateRenderer is asked for by the toolkit.
func (r *Row) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.New(rowLayout{r}, r.cells...))
}

// columns returns how many things stand side by side, and how wide each is.
func (r *Row) columns(w float32) (n int, wide float32) {
	n = len(r.cells)
	for ; n > 1; n-- {
		if wide = (w - 2*rowEdge - float32(n-1)*rowAir) / float32(n); wide >= r.Least {
			return n, wide
		}
	}
	return 1, w - 2*rowEdge
}

// place calls f with every thing, where it stands and how large it is, and returns the height of all.
func (r *Row) place(w float32, f func(o fyne.CanvasObject, at fyne.Position, size fyne.Size)) float32 {
	n, wide := r.columns(w)
	y, line := float32(rowLine), float32(0)
	for i, o := range r.cells {
		if i > 0 && i%n == 0 {
			y, line = y+line+rowLine, 0
		}
		h := (&column{}).height(o, wide)
		f(o, fyne.NewPos(rowEdge+float32(i%n)*(wide+rowAir), y), fyne.NewSize(wide, h))
		line = max(line, h)
	}
	return y + line + rowLine
}

// HeightFor is the height that a width asks for.
func (r *Row) HeightFor(w float32) float32 {
	return r.place(w, func(fyne.CanvasObject, fyne.Position, fyne.Size) {})
}

// MinSize is asked for by the toolkit.
func (r *Row) MinSize() fyne.Size { return fyne.NewSize(200, r.HeightFor(max(200, r.Size().Width))) }

type rowLayout struct{ r *Row }

func (l rowLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	l.r.place(size.Width, func(o fyne.CanvasObject, at fyne.Position, size fyne.Size) {
		o.Move(at)
		o.Resize(size)
	})
}

func (l rowLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(200, 30) }
