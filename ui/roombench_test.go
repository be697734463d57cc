package ui

import (
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/ui/session"

	"fyne.io/fyne/v2/test"
)

// BenchmarkPullAWall is one step of a drag of a wall: the new lengths, the room solved and drawn; the toolkit's painting comes on top.
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
		p.sketch.Drawing()
	}
	if p.shown == nil {
		b.Fatal("nothing is pulled")
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
