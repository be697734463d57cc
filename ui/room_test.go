package ui

import (
	"testing"

	"fyne.io/fyne/v2"

	"bunkwright/render"
	"bunkwright/render/view"
)

// inRoomStage is the window on a sample with the Room stage shown.
func inRoomStage(t *testing.T, name string) *Window {
	t.Helper()
	w, _ := opened(t, name)
	w.show(roomStage)
	return w
}

// TestPlanFitsItsPane: at the usual and at the least size nothing of the plan is cut off.
func TestPlanFitsItsPane(t *testing.T) {
	for _, name := range []string{"town-house.toml", "l-shaped.toml", "half-measured.toml"} {
		for _, size := range []fyne.Size{usual, least} {
			w := inRoomStage(t, name)
			w.win.Resize(size)
			d := w.room.plan.sketch.Drawing()
			box := render.Rect{Min: render.Point{Y: planHead}, Max: render.Point{X: d.W, Y: d.H - planFoot}}
			o := w.room.plan.options(d.W, d.H)
			o.Scale, o.Origin = w.room.plan.cam.scale, &w.room.plan.cam.at
			if got := drawnRoom(w, o); !box.Holds(got) {
				t.Errorf("%s at %v: the plan covers %v of %v", name, size, got, box)
			}
		}
	}
}

func drawnRoom(w *Window, o view.Options) render.Rect {
	return render.Bounds(view.RoomAsRead(w.live.scene, o).Marks)
}
