package ui

import (
	"fyne.io/fyne/v2"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// shapeWords name the shapes that a room can start from.
var shapeWords = map[job.Shape]string{
	job.Rectangle: "a rectangle", job.LShape: "an L", job.Alcove: "with an alcove", job.Slope: "under a slope",
}

// newRoom starts a job with a room of a shape. Its lengths are assumed until they are typed; a drag changes them.
func (w *Window) newRoom(shape job.Shape) {
	start := job.Start{Name: "New room", Unit: w.live.unit(), Places: []string{"US"}, Shape: shape, AB: 144 * length.Inch, BC: 120 * length.Inch, Assumed: true}
	if start.Unit == length.Millimetres {
		start.Places, start.AB, start.BC = []string{"EU"}, 3600*length.Millimetre, 3000*length.Millimetre
	}
	j := job.New(start)
	w.session.Start(&j)
	w.room.chosen = "wall.AB"
	w.room.plan.cam.fitted = false
	w.show(roomStage)
	w.room.redraw()
	w.status.at("a room to begin with: every length is assumed; drag its walls and corners, or type what the tape says")
}

// newRoomItems are the shapes for a menu.
func (w *Window) newRoomItems() (items []*fyne.MenuItem) {
	for _, s := range job.Shapes {
		items = append(items, fyne.NewMenuItem(shapeWords[s], func() { w.newRoom(s) }))
	}
	return items
}
