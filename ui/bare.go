package ui

import (
	"image"
	"image/draw"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"bunkwright/ui/control"
)

// barePicture is a still picture of the drawings of the Place stage with a piece of it that goes where the pointer drags it, without any model: what
// moving costs the toolkit alone. It is what the trace of the program is held against.
type barePicture struct {
	widget.BaseWidget
	ground, piece *canvas.Image
}

// pieceWide is about how large a bed is on the drawings, in pixels.
const pieceWide, pieceHigh = 190, 110

// Bare lays the still picture over the drawings of the Place stage.
func (w *Window) Bare() {
	d := w.place.drawings
	size := d.Size()
	picture := d.Paint(max(1, int(size.Width)), max(1, int(size.Height)))
	piece := image.NewRGBA(image.Rect(0, 0, pieceWide, pieceHigh))
	draw.Draw(piece, piece.Rect, picture, image.Pt(int(size.Width)/3, int(size.Height)/6), draw.Src)
	b := &barePicture{ground: still(picture), piece: still(piece)}
	at := w.app.Driver().AbsolutePositionForObject(d)
	b.ground.Move(at)
	b.ground.Resize(size)
	b.piece.Move(at.AddXY(size.Width/3, size.Height/6))
	b.piece.Resize(fyne.NewSize(pieceWide, pieceHigh))
	b.ExtendBaseWidget(b)
	w.win.Canvas().Overlays().Add(b)
}

func still(img image.Image) *canvas.Image {
	out := canvas.NewImageFromImage(img)
	out.FillMode, out.ScaleMode = canvas.ImageFillStretch, canvas.ImageScaleFastest
	return out
}

// CreateRenderer is asked for by the toolkit.
func (b *barePicture) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewWithoutLayout(b.ground, b.piece))
}

// Dragged moves the piece.
func (b *barePicture) Dragged(e *fyne.DragEvent) {
	done := control.Traced.Step()
	b.piece.Move(b.piece.Position().AddXY(e.Dragged.DX, e.Dragged.DY))
	done()
	control.Traced.Draw()()
}

// DragEnd is asked for by the toolkit.
func (b *barePicture) DragEnd() {}
