package ui

import (
	"math"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
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

// typeInto types a text over what stands in the field of a key and hands it on.
func typeInto(t *testing.T, w *Window, key, text string) *control.Field {
	t.Helper()
	f, ok := w.room.form.fields[key].(*control.Field)
	if !ok {
		t.Fatalf("no field of %s", key)
	}
	w.room.form.focus(key)
	test.Type(f.Focusable(), text)
	w.win.Canvas().Unfocus()
	return f
}

func clickOn(s *control.Sketch, at fyne.Position) {
	s.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary})
	s.Tapped(&fyne.PointEvent{Position: at})
	s.MouseUp(&desktop.MouseEvent{})
}

// TestTypeALength: what is typed takes the place of what was there, is an edit, and undo takes it back.
func TestTypeALength(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	before := w.session.Job()
	typeInto(t, w, "wall.AB.low", "11' 5")
	if got := jobfile.Shown(w.session.Job(), "wall.AB.low"); got != `11' 5"` || w.session.UndoName() != "Set Low" {
		t.Errorf("A to B low is %s, undo %q", got, w.session.UndoName())
	}
	w.undo()
	if w.session.Job() != before {
		t.Error("undo does not take it back")
	}
	f := typeInto(t, w, "wall.AB.low", "12x")
	if !f.Bad() || f.Text() != "12x" || w.session.Job() != before {
		t.Errorf("a text that is no length: %q, kept %v", f.Text(), f.Bad())
	}
}

// TestParenthesesAreNoNews: a reading that stands in parentheses is left as it is by leaving its field; the same length typed makes an
// assumed one a reading.
func TestParenthesesAreNoNews(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	w.newRoom(job.Rectangle)
	before := w.session.Job()
	f := w.room.form.fields["wall.AB.length"].(*control.Field)
	if f.Text() != `(12' 0")` {
		t.Fatalf("it shows %s", f.Text())
	}
	w.room.form.focus("wall.AB.length")
	w.win.Canvas().Unfocus()
	if w.session.Job() != before {
		t.Error("leaving the field changes the job")
	}
	typeInto(t, w, "wall.AB.length", "12 ft")
	if how := jobfile.Shown(w.session.Job(), "wall.AB.length.1.how"); how != "once" {
		t.Errorf("typed, it is known as %q", how)
	}
}

// TestClickAReading: a click on a dimension chooses its row and goes to its field; a click on a row does the same.
func TestClickAReading(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	clickOn(w.room.plan.sketch, wordsAt(t, w.room.plan.sketch.Drawing(), "door.hall.wide"))
	if w.room.chosen != "door.hall.wide" {
		t.Fatalf("chosen %q", w.room.chosen)
	}
	if w.win.Canvas().Focused() != w.room.form.fields["door.hall.wide"].Focusable() {
		t.Error("its field has not the focus")
	}
	if _, ok := w.room.form.fields["door.hall.wide.2"]; !ok {
		t.Error("no field for its second reading")
	}
	clickOn(w.room.table.rows, middleOf(t, w.room.table.rows.Drawing(), "wall.CD.length"))
	if w.room.chosen != "wall.CD.length" || w.win.Canvas().Focused() != w.room.form.fields["wall.CD.length"].Focusable() {
		t.Errorf("after a click on a row: %q", w.room.chosen)
	}
	typeInto(t, w, "wall.CD.length.2", "11' 5-3/4")
	if got := jobfile.Shown(w.session.Job(), "wall.CD.length.2"); got != `11' 5-3/4"` {
		t.Errorf("second reading %s", got)
	}
}

// wordsAt returns where the words under a ref stand.
func wordsAt(t *testing.T, d render.Drawing, ref string) fyne.Position {
	t.Helper()
	for _, m := range d.Marks {
		if m.Kind == render.KindText && m.Ref == ref {
			c := m.Bounds().Centre()
			return fyne.NewPos(control.Screen(c.X), control.Screen(c.Y))
		}
	}
	t.Fatalf("no words of %s", ref)
	return fyne.Position{}
}

// TestRoomKeys: arrows go through walls and rows, Del takes the chosen thing away and undo brings it back.
func TestRoomKeys(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	press := func(name fyne.KeyName) { w.room.key(&fyne.KeyEvent{Name: name}) }
	press(fyne.KeyRight)
	if w.room.chosen != "wall.BC" {
		t.Errorf("Right: %s", w.room.chosen)
	}
	press(fyne.KeyDown)
	press(fyne.KeyDown)
	if w.room.chosen != "wall.BC.build_up" {
		t.Errorf("Down twice: %s", w.room.chosen)
	}
	w.room.choose("window.garden", false)
	press(fyne.KeyDelete)
	if len(w.session.Job().Room.Windows) != 0 || w.session.UndoName() != "Remove the garden window" {
		t.Errorf("Del: %d windows, undo %q", len(w.session.Job().Room.Windows), w.session.UndoName())
	}
	if w.room.chosen == "window.garden" {
		t.Error("what is gone is still chosen")
	}
	w.undo()
	w.room.choose("diagonal.BD.length", false)
	press(fyne.KeyDelete)
	if jobfile.Shown(w.session.Job(), "diagonal.BD.length") != "" {
		t.Error("the reading is not forgotten")
	}
}

// TestAddByClicking: what was chosen from the list is put where the click is, assumed, and its first measure has the focus.
func TestAddByClicking(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	w.room.plan.begin("light")
	clickOn(w.room.plan.sketch, fyne.NewPos(300, 400))
	lights := w.session.Job().Room.Lights
	if len(lights) != 2 || w.session.UndoName() != "Add a light" {
		t.Fatalf("%d lights, undo %q", len(lights), w.session.UndoName())
	}
	key := "light." + lights[1].Key
	if lights[1].At[0].How != "assumed" || w.win.Canvas().Focused() != w.room.form.fields[key+".at"].Focusable() {
		t.Errorf("it is %s, the focus elsewhere", lights[1].At[0].How)
	}
	for _, m := range w.room.plan.sketch.Drawing().Marks {
		if m.Ref == key && m.Kind == render.KindStroke {
			if c := m.Bounds().Centre(); math.Abs(float64(control.Screen(c.X)-300)) > 4 || math.Abs(float64(control.Screen(c.Y)-400)) > 4 { // whole inches
				t.Errorf("it is drawn at %v, %v", control.Screen(c.X), control.Screen(c.Y))
			}
			break
		}
	}
	typeInto(t, w, key+".at", "40 in")
	if how := jobfile.Shown(w.session.Job(), key+".at.1.how"); how != "once" {
		t.Errorf("typed, it is known as %q", how)
	}
	w.room.plan.begin("door")
	w.room.key(&fyne.KeyEvent{Name: fyne.KeyEscape})
	clickOn(w.room.plan.sketch, fyne.NewPos(300, 400))
	if len(w.session.Job().Room.Doors) != 2 {
		t.Error("Esc does not leave it")
	}
}

// TestPullInTheWindow: a wall of a new room follows the hand as one edit; one that was measured stays, and the status line says why.
func TestPullInTheWindow(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	pull := func(dx float32) {
		s := w.room.plan.sketch
		dragOn(s, wallAt(t, w, "BC"), dx, 0)
	}
	before := w.session.Job()
	pull(40)
	if w.session.Job() != before || !strings.Contains(w.status.place, "was read") {
		t.Errorf("a measured wall is pulled; the status says %q", w.status.place)
	}
	w.newRoom(job.Rectangle)
	before = w.session.Job()
	pull(40)
	got := w.session.Job().Room.Walls[0].Length[0]
	want := 3657.6 + 40/(96/25.4)/w.room.plan.cam.scale
	if got.How != "assumed" || got.Value.MM() < want-13 || got.Value.MM() > want+13 { // whole inches
		t.Errorf("A to B is %v by %s, want %.0f mm", got.Value.MM(), got.How, want)
	}
	if w.session.UndoName() != "Move wall B to C" {
		t.Errorf("undo is called %q", w.session.UndoName())
	}
	w.undo()
	if w.session.Job() != before {
		t.Error("undo does not bring it back")
	}
}

func dragOn(s *control.Sketch, from fyne.Position, dx, dy float32) {
	s.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: from}, Button: desktop.MouseButtonPrimary})
	for range 10 {
		from = from.AddXY(dx/10, dy/10)
		s.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: from}, Dragged: fyne.NewDelta(dx/10, dy/10)})
	}
	s.DragEnd()
	s.MouseUp(&desktop.MouseEvent{})
}

// wallAt returns a place in the thickness of a wall, near its first corner.
func wallAt(t *testing.T, w *Window, key string) fyne.Position {
	t.Helper()
	for _, wall := range w.live.scene.Walls {
		if wall.Key == key {
			at := wall.Point(wall.Len*0.15, -50)
			w.room.plan.sketch.Drawing() // fits the plan
			way := view.Turned(w.live.scene, "").Point(at.At(0)).XY()
			c := w.room.plan.cam
			return fyne.NewPos(control.Screen(c.at.X+render.Paper(way.X*c.scale)), control.Screen(c.at.Y-render.Paper(way.Y*c.scale)))
		}
	}
	t.Fatalf("no wall %s", key)
	return fyne.Position{}
}

// TestStudsAndTicks: a click changes how a stud was found; a tick says what the room has not.
func TestStudsAndTicks(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	press := func(says string) {
		t.Helper()
		for _, o := range w.room.form.inner.Objects {
			c, ok := o.(*fyne.Container)
			if !ok {
				continue
			}
			if p, ok := c.Objects[0].(*control.Press); ok && p.Says != nil && strings.HasPrefix(p.Says(), says) {
				test.Tap(p)
				return
			}
		}
		t.Fatalf("nothing says %q", says)
	}
	press("found twice")
	if got := w.session.Job().Room.Walls[0].Studs[0].Found; got != "assumed" {
		t.Errorf("stud 1 is found %q", got)
	}
	press("one more stud")
	if got := len(w.session.Job().Room.Walls[0].Studs); got != 4 || !strings.HasPrefix(w.room.chosen, "wall.AB.stud.") {
		t.Errorf("%d studs, chosen %s", got, w.room.chosen)
	}
	w.room.choose("room", false)
	press("the room has no heater")
	if w.session.Job().Room.Lacks("heater") {
		t.Error("still absent")
	}
}

// TestEveryFormIsBuilt: each thing of every sample has a form with a field for all that can be typed, and Set takes what each shows.
func TestEveryFormIsBuilt(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml"} {
		w := inRoomStage(t, name)
		j := w.session.Job()
		subjects := []string{"room", "floor", "corner.A"}
		for _, k := range session.WallKeys(&j.Room) {
			subjects = append(subjects, "wall."+k)
		}
		for _, thing := range session.Things(&j.Room) {
			subjects = append(subjects, thing.Key)
		}
		for _, r := range session.Readings(j, nil) {
			subjects = append(subjects, r.Key)
		}
		for _, s := range subjects {
			w.room.choose(s, false)
			if len(w.room.form.fields) == 0 {
				t.Errorf("%s: the form of %s is empty", name, s)
			}
			if isReading(s) && w.room.form.fields[s] == nil {
				t.Errorf("%s: no field for the reading %s", name, s)
			}
		}
		if w.session.Job() != j {
			t.Errorf("%s: looking at the forms changed the job", name)
		}
	}
}

// TestNewRooms: every shape of the menu is a job of its own that can be saved, with a room that has a shape.
func TestNewRooms(t *testing.T) {
	w := inRoomStage(t, "town-house.toml")
	for _, item := range w.newRoomItems() {
		item.Action()
		if w.stage != roomStage || len(w.live.scene.Walls) < 4 || w.session.Path() != "" {
			t.Errorf("%s: %d walls", item.Label, len(w.live.scene.Walls))
		}
		if _, err := jobfile.Load(jobfile.Encode(w.session.Job()), ""); err != nil {
			t.Errorf("%s cannot be saved: %v", item.Label, err)
		}
	}
}
