package ui

import (
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// Each benchmark is one step of the hand, at 1200 x 800, whole: the model, its nominal answers, every drawing that the step changes made and
// painted, and what follows a frame later. The toolkit's own painting comes on top. Cpu-ms is what the processors worked for a step, which other programs on the machine do not change: at most 16.

// steps runs one step after the other and reports what each cost.
func steps(b *testing.B, step func(i int)) {
	b.Helper()
	b.ReportAllocs()
	i, began := 0, time.Duration(0)
	for b.Loop() {
		if i == 0 {
			began = cpuTime()
		}
		i++
		step(i)
	}
	b.ReportMetric(float64(cpuTime()-began)/float64(time.Millisecond)/float64(i), "cpu-ms/op")
}

// BenchmarkDragStep is the bed that is dragged across the plan.
func BenchmarkDragStep(b *testing.B) {
	w, _, back := openedWith(b, "town-house.toml")
	p := w.place
	p.drawings.Resize(fyne.NewSize(1200, 800))
	p.grab(pointedAt(middleOf(b, p.drawings.Drawing(), "mattress.upper")))
	places := map[job.Placement]bool{}
	steps(b, func(i int) {
		p.drag(render.Point{X: render.Px(float64(i % 60)), Y: render.Px(float64(i % 40))}, fyne.KeyModifierAlt)
		p.drawings.Paint(1200, 800)
		p.stick.Paint(220, 800)
		doAll(back)
		places[w.live.scene.Job.Place] = true
	})
	if len(places) < 2 {
		b.Error("the bed does not move")
	}
}

// BenchmarkPan is the plan and the wall below it, dragged to another place.
func BenchmarkPan(b *testing.B) {
	w, _ := opened(b, "town-house.toml")
	p := w.place
	p.drawings.Resize(fyne.NewSize(1200, 800))
	p.drawings.Paint(1200, 800)
	p.grab(control.Pointed{Button: desktop.MouseButtonTertiary})
	steps(b, func(i int) {
		p.drag(render.Point{X: render.Px(float64(i % 60)), Y: render.Px(float64(i % 40))}, 0)
		p.drawings.Paint(1200, 800)
	})
}

// BenchmarkDragALevelInPlace is the upper deck that is dragged on the story stick beside the plan.
func BenchmarkDragALevelInPlace(b *testing.B) {
	w, _, back := openedWith(b, "town-house.toml")
	p := w.place
	p.drawings.Resize(fyne.NewSize(1200, 800))
	dragLevel(b, w, p.levels, func() {
		p.drawings.Paint(1200, 800)
		p.stick.Paint(220, 800)
		doAll(back)
	})
}

// dragLevel drags the upper deck up and down.
func dragLevel(b *testing.B, w *Window, l *stickLevels, paint func()) {
	if !l.grab(control.Pointed{Refs: []string{"upper.slat"}}) {
		b.Fatal("nothing to take hold of")
	}
	seen := map[length.Length]bool{}
	steps(b, func(i int) {
		l.drag(render.Point{Y: render.Px(float64(i%20) - 10)}, 0)
		paint()
		seen[w.live.scene.Job.Bed.Upper.Height] = true
	})
	if len(seen) < 2 {
		b.Error("the deck does not move")
	}
}

// BenchmarkOpenToFirstDrawing is a sample opened and drawn.
func BenchmarkOpenToFirstDrawing(b *testing.B) {
	w, path := opened(b, "town-house.toml")
	steps(b, func(int) {
		if err := w.session.Open(path); err != nil {
			b.Fatal(err)
		}
		w.place.camera.fitted = false
		w.place.drawings.Paint(1200, 800)
		w.place.stick.Paint(220, 800)
	})
}
