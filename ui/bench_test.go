package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"bunkwright/furniture/job"
	"bunkwright/render"
)

// BenchmarkDragStep is one step of the hand at the usual size: the bed put elsewhere, all questions, the drawings and the story stick made and
// painted. The toolkit's own painting comes on top.
func BenchmarkDragStep(b *testing.B) {
	w, _ := opened(b, "town-house.toml")
	p := w.place
	p.drawings.Resize(fyne.NewSize(1200, 800))
	p.grab(pointedAt(middleOf(b, p.drawings.Drawing(), "mattress.upper")))
	places := map[job.Placement]bool{}
	i := 0
	for b.Loop() {
		i++
		p.drag(render.Point{X: render.Px(float64(i % 60)), Y: render.Px(float64(i % 40))}, fyne.KeyModifierAlt)
		p.drawings.Paint(1200, 800)
		p.stick.Paint(220, 800)
		places[w.live.scene.Job.Place] = true
	}
	if len(places) < 2 {
		b.Error("the bed does not move")
	}
}

// BenchmarkOpenToFirstDrawing is a sample opened and drawn.
func BenchmarkOpenToFirstDrawing(b *testing.B) {
	w, path := opened(b, "town-house.toml")
	for b.Loop() {
		if err := w.session.Open(path); err != nil {
			b.Fatal(err)
		}
		w.place.camera.fitted = false
		w.place.drawings.Paint(1200, 800)
		w.place.stick.Paint(220, 800)
	}
}
