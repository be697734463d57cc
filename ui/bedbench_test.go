package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// benchBed is the Bed stage at about the usual size.
func benchBed(b *testing.B) *bedPane {
	w, _ := opened(b, "town-house.toml")
	w.show(bedStage)
	w.bed.sides.Resize(fyne.NewSize(830, 430))
	w.bed.corner.Resize(fyne.NewSize(830, 370))
	w.bed.stick.Resize(fyne.NewSize(216, 800))
	return w.bed
}

// BenchmarkTurn is one step of the hand that turns the view from a corner: drawn and painted, names of the parts included.
func BenchmarkTurn(b *testing.B) {
	bed := benchBed(b)
	bed.corner.Grab(pointedAt(fyne.NewPos(100, 100)))
	i := 0
	for b.Loop() {
		i++
		bed.dragCorner(render.Point{X: render.Px(float64(i % 400))}, 0)
		bed.corner.Paint(830, 370)
	}
}

// BenchmarkDragALevel is one step of the hand that drags the upper deck on the story stick: room solved, bed built, all questions, all
// drawings of the stage made and painted, all fields.
func BenchmarkDragALevel(b *testing.B) {
	bed := benchBed(b)
	bed.levels.grab(control.Pointed{Refs: []string{"upper.slat"}})
	seen := map[length.Length]bool{}
	i := 0
	for b.Loop() {
		i++
		bed.levels.drag(render.Point{Y: render.Px(float64(i%20) - 10)}, 0)
		bed.sides.Paint(830, 430)
		bed.corner.Paint(830, 370)
		bed.stick.Paint(216, 800)
		seen[bed.w.live.scene.Job.Bed.Upper.Height] = true
	}
	if len(seen) < 2 {
		b.Error("the deck does not move")
	}
}
