package view

import (
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/length"
)

// TestEveryReadingIsOnTheRoom: whatever was read along a wall, from corner to corner, or of a place in the room is a dimension whose ref is
// its key, plainly where it was read twice or by the maker, in parentheses else.
func TestEveryReadingIsOnTheRoom(t *testing.T) {
	j := plainRoom()
	j.Room.Walls[1].Length[0].How = room.Once
	j.Room.Windows[0].Far = room.Exact(3600 * length.Millimetre)
	j.Room.Doors[0].Rest = room.Exact(1700 * length.Millimetre)
	j.Room.Outlets = []room.Outlet{{Key: "bed", Wall: "CD", From: "C", At: room.Exact(700 * length.Millimetre)}}
	j.Room.Fans = []room.Fan{{Key: "fan", Spot: room.Spot{Wall: "AB", From: "A", At: room.Exact(2000 * length.Millimetre),
		Out: room.Exact(1500 * length.Millimetre)}, Sweep: room.Exact(1000 * length.Millimetre)}}
	s, _ := asked(t, &j)
	d := RoomAsRead(s, screenIn(length.Millimetres))
	for ref, words := range map[string]string{
		"wall.AB.length": "4000", "wall.BC.length": "(3000)", "diagonal.AC.length": "5000",
		"window.garden.at": "2600", "window.garden.wide": "1000", "window.garden.far": "3600", "door.hall.at": "500", "door.hall.rest": "1700",
		"outlet.bed.at": "700", "fan.fan.at": "2000", "fan.fan.out": "1500", "ceiling.main.height.A.height": "2600",
	} {
		if got := texts(under(d, ref)); !slices.Contains(got, words) {
			t.Errorf("%s: %q, want %q", ref, got, words)
		}
	}
	if len(under(d, "mattress.upper")) > 0 {
		t.Error("the bed is drawn")
	}
}

// TestRoomAsReadIsTrueToScale: at 1:20 from (60, 50) the corners' handles stand where the corners are, and the window's width is its length.
func TestRoomAsReadIsTrueToScale(t *testing.T) {
	j := plainRoom()
	s, _ := asked(t, &j)
	o := atScale
	o.On = OnScreen
	d := RoomAsRead(s, o)
	for ref, want := range map[string]render.Point{"corner.A": on20(0, 0), "corner.C": on20(4000, 3000)} {
		handles := slices.DeleteFunc(under(d, ref), func(m render.Mark) bool { return m.Kind != render.KindFill || m.Ink != render.InkMain })
		if len(handles) != 1 || !near(handles[0].Bounds().Centre(), want) {
			t.Errorf("%s: %v, want %v", ref, handles, want)
		}
	}
	for ref, want := range map[string]render.Paper{"window.garden.wide": 1000.0 / 20, "wall.AB.length": 4000.0 / 20} {
		if got := render.Bounds(under(d, ref)).W(); got < want || got > want+5 { // ticks reach beyond
			t.Errorf("%s is %v wide, want %v", ref, got, want)
		}
	}
}

// TestChosenIsSeen: the chosen wall has its ink, also where one of its readings is chosen; what was not read says so.
func TestChosenIsSeen(t *testing.T) {
	j := plainRoom()
	j.Room.Walls[2].Length = nil
	s, _ := asked(t, &j)
	inks := func(chosen string) (n int) {
		o := screen
		o.Chosen = chosen
		for _, m := range under(RoomAsRead(s, o), "wall.BC") {
			if m.Ink == render.InkChosenWall {
				n++
			}
		}
		return n
	}
	if inks("") > 0 || inks("wall.AB") > 0 || inks("wall.BC") == 0 || inks("wall.BC.length") == 0 {
		t.Errorf("ink of the chosen wall: %d, %d, %d, %d times", inks(""), inks("wall.AB"), inks("wall.BC"), inks("wall.BC.length"))
	}
	if got := texts(under(RoomAsRead(s, screen), "wall.CD.length")); !slices.Equal(got, []string{"?"}) {
		t.Errorf("a length that was not read: %q", got)
	}
}

// TestRoomsAsReadAreClean: every sample, and jobs with everything amiss.
func TestRoomsAsReadAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, _ := asked(t, &j)
		for _, box := range []Options{screen, {W: render.Px(640), H: render.Px(560)}} {
			for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
				o := box
				o.Unit = unit
				d := RoomAsRead(s, o)
				if err := d.Check(); err != nil {
					t.Errorf("%s: %v", name, err)
				}
			}
		}
		clean(t, name+" as read", RoomAsRead(s, screen), OnScreen)
	}
}

func screenIn(u length.Unit) Options {
	o := screen
	o.Unit = u
	return o
}

// TestRoomAsReadGolden holds three rooms against the dumps of drawings that somebody has looked at.
func TestRoomAsReadGolden(t *testing.T) {
	for name, chosen := range map[string]string{"town-house": "wall.AB", "attic": "wall.CD.length", "l-shaped": "window.garden"} {
		j := sample(t, name+".toml")
		s, _ := asked(t, &j)
		o := screenIn(unitOf(&j))
		o.Chosen = chosen
		compare(t, filepath.Join("testdata", name+"-as-read.golden"), RoomAsRead(s, o))
	}
}

// TestRoomAsReadWithoutShape lists the walls that were read.
func TestRoomAsReadWithoutShape(t *testing.T) {
	j := plainRoom()
	s, _ := asked(t, &j)
	s.Walls, s.Outline = nil, nil
	if words := strings.Join(texts(RoomAsRead(s, screen).Marks), " "); !strings.Contains(words, "not determined") || !strings.Contains(words, "wall A to B: ") {
		t.Errorf("it says %q", words)
	}
}

// paneOfLeast is about the pane of the plan in the smallest window.
var paneOfLeast = Options{W: render.Px(574), H: render.Px(478)}

// TestNamesKeepOffDimensions: however little room there is, no line of a dimension runs through the words of anything else.
func TestNamesKeepOffDimensions(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, _ := asked(t, &j)
		for _, o := range []Options{paneOfLeast, {W: render.Px(760), H: render.Px(690)}} {
			for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
				o.Unit = unit
				d := RoomAsRead(s, o)
				for _, m := range d.Marks {
					if m.Kind != render.KindText || m.Ref == "" || strings.HasPrefix(m.Ref, "corner.") || m.Ref == "scale" {
						continue
					}
					if l, ok := lineThrough(d, m); ok {
						t.Errorf("%s in %v by %v: a line of %s runs through %q of %s", name, unit, o.W, l.Ref, m.Text.Words, m.Ref)
					}
				}
			}
		}
	}
}

// lineThrough returns a stroke of a reading that runs through words of something else.
func lineThrough(d render.Drawing, words render.Mark) (render.Mark, bool) {
	box := words.Bounds().Grow(-render.Px(1.5))
	for _, m := range d.Marks {
		if m.Kind != render.KindStroke || m.Ref == words.Ref || !isDimension(m.Ref) {
			continue
		}
		for _, run := range m.Path.Flatten(0.1) {
			if len(render.ClipPolyline(run.Points, box)) > 0 {
				return m, true
			}
		}
	}
	return render.Mark{}, false
}

// isDimension tells whether a ref is of a reading that is drawn as a line.
func isDimension(ref string) bool {
	for _, end := range []string{".length", ".at", ".out", ".wide", ".far", ".rest"} {
		if strings.HasSuffix(ref, end) {
			return true
		}
	}
	return false
}
