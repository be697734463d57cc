package ui

import (
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/ui/control"
)

// strokeAt returns a place on a stroke or in a fill of a ref.
func strokeAt(t *testing.T, d render.Drawing, ref string) fyne.Position {
	t.Helper()
	for _, m := range d.Marks {
		if m.Ref != ref || m.Kind == render.KindText {
			continue
		}
		c := m.Bounds().Centre()
		if refs := d.Pick(c, render.Px(4)); len(refs) > 0 && refs[0] == ref {
			return fyne.NewPos(control.Screen(c.X), control.Screen(c.Y))
		}
	}
	t.Fatalf("nothing of %s can be taken hold of", ref)
	return fyne.Position{}
}

func (w *Window) roomPress(names ...fyne.KeyName) {
	for _, name := range names {
		w.room.plan.sketch.TypedKey(&fyne.KeyEvent{Name: name})
	}
}

// TestDragTheWindow: a window that was measured holds fast at first; dragged on, it is one step with its name, assumed from the same corner,
// its second reading gone; undo brings all of it back. Esc drops a drag.
func TestDragTheWindow(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	w.win.Resize(usual)
	s := w.room.plan.sketch
	before := w.session.Job()
	from := strokeAt(t, s.Drawing(), "window.garden")
	dragOn(s, from, -6, 0)
	if w.session.Job() != before || !strings.Contains(w.status.place, "was measured") {
		t.Errorf("a slip moves it; the status says %q", w.status.place)
	}
	dragOn(s, from, -60, 20)
	j := w.session.Job()
	if w.session.UndoName() != "Move the garden window" || w.room.chosen != "window.garden" {
		t.Errorf("undo is called %q, chosen is %s", w.session.UndoName(), w.room.chosen)
	}
	at := j.Room.Windows[0].At
	want := 7*304.8 + 8*25.4 - 60/(96/25.4)/w.room.plan.cam.scale
	if len(at) != 1 || at[0].How != "assumed" || at[0].Value.MM() < want-14 || at[0].Value.MM() > want+14 || j.Room.Windows[0].From != "A" { // whole inches
		t.Errorf("it is at %v, want %.0f mm from A", at, want)
	}
	if !strings.Contains(w.status.place, "from A: assumed") {
		t.Errorf("the status says %q", w.status.place)
	}
	w.undo()
	if w.session.Job() != before {
		t.Error("undo does not bring it back")
	}
	s.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: from}, Button: desktop.MouseButtonPrimary})
	for range 10 {
		from = from.AddXY(-6, 0)
		s.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: from}, Dragged: fyne.NewDelta(-6, 0)})
	}
	w.roomPress(fyne.KeyEscape)
	s.DragEnd()
	if w.session.Job() != before || w.room.plan.shown != nil {
		t.Error("Esc does not drop the drag")
	}
}

// TestDragOnThePicture: face on, the window goes up with sill and head, in one step.
func TestDragOnThePicture(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	w.win.Resize(usual)
	picture := w.room.form.wall
	dragOn(picture, strokeAt(t, picture.Drawing(), "window.garden"), 0, -12)
	win := w.session.Job().Room.Windows[0]
	want := 12 / (96 / 25.4) / picture.Drawing().Scale
	if got := win.Head[0].Value.MM() - 6*304.8 - 7*25.4; got < want-14 || got > want+14 || win.Sill[0].How != "assumed" || len(win.At) != 2 {
		t.Errorf("its head is %.0f mm higher, want %.0f; along the wall it was read %d times", got, want, len(win.At))
	}
	if w.session.UndoName() != "Move the garden window" || w.room.form.wall == nil {
		t.Errorf("undo is called %q; picture %v", w.session.UndoName(), w.room.form.wall)
	}
}

// TestNudgeAThing: arrows move what is chosen by 1/8 in, strokes within a second as one step, out from its wall too where it can.
func TestNudgeAThing(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	before := w.session.Job()
	w.room.choose("fan.ceiling", false)
	w.roomPress(fyne.KeyRight, fyne.KeyRight, fyne.KeyDown)
	if at, out := w.shown("fan.ceiling.at"), w.shown("fan.ceiling.out"); at != `7' 4-1/4"` || out != `6' 2-1/8"` {
		t.Errorf("the fan is %s along and %s out", at, out)
	}
	w.room.nudge(-8, 0)
	if at := w.shown("fan.ceiling.at"); at != `7' 3-1/4"` {
		t.Errorf("eight steps back it is %s along", at)
	}
	w.undo()
	if w.session.Job() != before || w.session.RedoName() != "Move the ceiling fan" {
		t.Errorf("the strokes are not one step: %q", w.session.RedoName())
	}
	w.room.choose("door.hall", false)
	w.roomPress(fyne.KeyLeft)
	if w.session.Job() != before || !strings.Contains(w.status.place, "no farther") {
		t.Errorf("a door leaves its wall; the status says %q", w.status.place)
	}
}

// TestCornersInTheWindow: a key and a button add a corner, Del removes it, undo takes both back; what is in the way is named.
func TestCornersInTheWindow(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	before := w.session.Job()
	w.room.choose("wall.DA", false)
	w.roomPress(fyne.KeyC)
	if w.session.Job().Room.Outline != "ABCDE" || w.room.chosen != "corner.E" || w.session.UndoName() != "Add a corner" {
		t.Fatalf("outline %s, chosen %s, undo %q", w.session.Job().Room.Outline, w.room.chosen, w.session.UndoName())
	}
	if len(w.live.scene.Walls) != 5 {
		t.Errorf("%d walls", len(w.live.scene.Walls))
	}
	w.roomPress(fyne.KeyDelete)
	if w.session.Job().Room.Outline != "ABCD" || jobfile.Shown(w.session.Job(), "wall.DA.length") != jobfile.Shown(before, "wall.DA.length") {
		t.Errorf("outline %s, D to A is %s", w.session.Job().Room.Outline, jobfile.Shown(w.session.Job(), "wall.DA.length"))
	}
	w.undo()
	w.undo()
	if w.session.Job() != before {
		t.Error("undo does not take both back")
	}
	w.room.choose("corner.B", false)
	w.room.form.do("remove")
	if w.session.Job() != before || !strings.Contains(w.banner.shown("trouble"), "the hall door is placed by a wall at this corner") {
		t.Errorf("a corner with things on its walls: %q", w.banner.shown("trouble"))
	}
}

// TestStepByHand: the corner of a new room's wall, and one of its halves pulled: the wall in the hand is the one that moves.
func TestStepByHand(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	w.newRoom(job.Rectangle)
	w.win.Resize(usual)
	w.room.choose("wall.AB", false)
	w.roomPress(fyne.KeyC)
	dragOn(w.room.plan.sketch, wallAt(t, w, "EB"), 0, 40)
	if o := w.session.Job().Room.Outline; o != "AEFBCD" || w.session.UndoName() != "Move wall E to B" {
		t.Errorf("outline %s, undo %q", o, w.session.UndoName())
	}
	if len(w.live.scene.Walls) != 6 {
		t.Errorf("%d walls", len(w.live.scene.Walls))
	}
}

// TestKeysReachEverything: Page Down goes through every corner, wall and thing and comes round; from each, Tab goes to a field of its form,
// and Escape back to the plan.
func TestKeysReachEverything(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	w.win.Canvas().Focus(w.room.plan.sketch)
	first := w.room.chosen
	seen := map[string]bool{}
	for range 100 {
		w.roomPress(fyne.KeyPageDown)
		seen[w.room.chosen] = true
		if !strings.Contains(w.status.place, w.room.nameOf(w.room.chosen)) {
			t.Errorf("at %s the status says %q", w.room.chosen, w.status.place)
		}
		w.roomPress(fyne.KeyTab)
		f := w.win.Canvas().Focused()
		if f == nil || f == w.room.plan.sketch {
			t.Errorf("Tab goes nowhere from %s", w.room.chosen)
			continue
		}
		f.TypedKey(&fyne.KeyEvent{Name: fyne.KeyEscape})
		if w.win.Canvas().Focused() != w.room.plan.sketch {
			t.Errorf("Escape does not come back from %s", w.room.chosen)
		}
		if w.room.chosen == first {
			break
		}
	}
	for _, k := range w.room.stops() {
		if !seen[k] {
			t.Errorf("%s is not reached", k)
		}
	}
}

// TestMarkOfTheRoom: by their files the attic has all readings in; of the town house two are not, of the half-measured box room seven; a reading
// that the others contradict outweighs what is missing; a room that only has a shape misses all of it.
func TestMarkOfTheRoom(t *testing.T) {
	w := inRoomStage(t, "attic.toml")
	if _, open := w.tape.worst(roomStage); open {
		t.Errorf("open in the attic: %+v", w.room.mark())
	}
	for name, want := range map[string]string{"town-house.toml": "2 readings are not in", "half-measured.toml": "7 readings are not in"} {
		w.OpenSample(name)
		if v, open := w.tape.worst(roomStage); !open || v != fit.CannotTell || !strings.Contains(w.tape.stages[roomStage].Says(), want) {
			t.Errorf("%s: %v, %v, %q", name, v, open, w.tape.stages[roomStage].Says())
		}
	}
	w.OpenSample("town-house.toml")
	if err := w.room.set("wall.CD.length", "Middle", "14 ft"); err != nil {
		t.Fatal(err)
	}
	if v, _ := w.tape.worst(roomStage); v != fit.DoesNotFit {
		t.Errorf("a wall 2-1/2 ft too long: %v, %+v", v, w.room.mark())
	}
	w.newRoom(job.Rectangle)
	if v, open := w.tape.worst(roomStage); !open || v != fit.CannotTell {
		t.Errorf("a new room: %v, %v", v, open)
	}
}
