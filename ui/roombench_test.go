package ui

import (
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/ui/control"
	"bunkwright/ui/session"

	"fyne.io/fyne/v2/test"
)

// BenchmarkPullAWall is one step of a drag of a wall: the new lengths, the room solved, drawn and painted; the toolkit's own painting comes on top.
func BenchmarkPullAWall(b *testing.B) {
	w := New(test.NewTempApp(b), session.New(session.Options{Post: func(func()) {}}), b.TempDir())
	w.newRoom(job.LShape)
	w.win.Resize(usual)
	p := w.room.plan
	p.sketch.Drawing()
	p.pulled = "wall.BC"
	i := 0
	for b.Loop() {
		i++
		p.drag(render.Point{X: render.Px(float64(i % 80))}, 0)
		p.sketch.Paint(int(p.sketch.Size().Width), int(p.sketch.Size().Height))
	}
	if p.shown == nil {
		b.Fatal("nothing is pulled: " + w.status.place)
	}
}

// BenchmarkMoveAThing is one step of a drag of a window in a room with everything in it: its new place, the room solved, drawn and painted, and the
// wall face on.
func BenchmarkMoveAThing(b *testing.B) {
	w := New(test.NewTempApp(b), session.New(session.Options{Post: func(func()) {}}), b.TempDir())
	w.OpenSample("town-house.toml")
	w.show(roomStage)
	w.win.Resize(usual)
	p := w.room.plan
	p.sketch.Drawing()
	p.pulled = "window.garden"
	i := 0
	for b.Loop() {
		i++
		p.drag(render.Point{X: render.Px(float64(-60 + i%40))}, 0)
		for _, s := range []*control.Sketch{p.sketch, w.room.form.wall} {
			s.Paint(int(s.Size().Width), int(s.Size().Height))
		}
	}
	if p.shown == nil {
		b.Fatal("nothing is moved")
	}
}

// BenchmarkTypeALength is an edit of a room with everything in it, until plan, form and table show it.
func BenchmarkTypeALength(b *testing.B) {
	w := New(test.NewTempApp(b), session.New(session.Options{Post: func(func()) {}}), b.TempDir())
	w.OpenSample("town-house.toml")
	w.show(roomStage)
	w.win.Resize(usual)
	texts := []string{"11 ft 5-7/8 in", "11 ft 6 in"}
	i := 0
	for b.Loop() {
		i++
		if err := w.room.set("wall.AB.low", "Low", texts[i%2]); err != nil {
			b.Fatal(err)
		}
		w.room.plan.sketch.Drawing()
		w.room.table.rows.Drawing()
	}
}
