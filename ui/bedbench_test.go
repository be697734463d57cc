package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"bunkwright/render"
)

// benchBed is the Bed stage in a window of 1200 x 800.
func benchBed(b *testing.B) (*bedPane, chan func()) {
	w, _, back := openedWith(b, "town-house.toml")
	w.show(bedStage)
	w.bed.sides.Resize(fyne.NewSize(696, 393))
	w.bed.corner.Resize(fyne.NewSize(696, 335))
	w.bed.stick.Resize(fyne.NewSize(216, 728))
	return w.bed, back
}

// BenchmarkTurn is the view from a corner that is turned, names of the parts included.
func BenchmarkTurn(b *testing.B) {
	bed, _ := benchBed(b)
	bed.corner.Grab(pointedAt(fyne.NewPos(100, 100)))
	steps(b, func(i int) {
		bed.dragCorner(render.Point{X: render.Px(float64(i % 400))}, 0)
		bed.corner.Paint(696, 335)
	})
}

// BenchmarkDragALevel is the upper deck that is dragged on the story stick: room solved, bed built, all questions, all drawings of the stage,
// the view from a corner as often as it follows, and the fields of the column.
func BenchmarkDragALevel(b *testing.B) {
	bed, back := benchBed(b)
	dragLevel(b, bed.w, bed.levels, func() {
		bed.sides.Paint(696, 393)
		bed.stick.Paint(216, 728)
		was := bed.turned
		doAll(back)
		if bed.turned != was {
			bed.corner.Paint(696, 335)
		}
	})
}
