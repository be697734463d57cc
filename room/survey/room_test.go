package survey

import (
	"math"
	"strings"
	"testing"

	"bunkwright/room"
	"bunkwright/room/length"
)

// in makes a measure of readings in inches, each read once.
func in(values ...float64) room.Measure {
	var m room.Measure
	for _, v := range values {
		m = append(m, room.Reading{Value: length.FromMM(v * 25.4), How: room.Once})
	}
	return m
}

// sixReadings is the constructed room of room_cases.csv (case six_readings): 144 by 120 in, four walls and two diagonals.
func sixReadings() *room.Room {
	return &room.Room{
		Outline: "ABCD",
		Walls: []room.Wall{
			{Key: "AB", Length: in(144.125)}, {Key: "BC", Length: in(119.875)}, {Key: "CD", Length: in(143.875)}, {Key: "DA", Length: in(120.125)},
		},
		Diagonals: []room.Diagonal{{Key: "AC", Length: in(187.5)}, {Key: "BD", Length: in(187.375)}},
	}
}

func surveyed(t *testing.T, r *room.Room, o Options) *Survey {
	t.Helper()
	s, err := OfRoom(r, o)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func wantNear(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s = %.6f, want %.6f within %g", what, got, want, tolerance)
	}
}

// TestRoomAgainstReference solves the room through its record: source room_cases.csv roo-003 to roo-007 (computed for a constructed
// room; its y runs into the room, ours out of it).
func TestRoomAgainstReference(t *testing.T) {
	s := surveyed(t, sixReadings(), Options{NoSoftAngles: true})
	for _, c := range []struct {
		key  string
		want float64
	}{{"corner.B.x", 144.12178}, {"corner.C.x", 144.18203}, {"corner.C.y", -119.87229}, {"corner.D.x", 0.31048}, {"corner.D.y", -120.12191}} {
		wantNear(t, c.key, s.Value(s.Find(c.key))/25.4, c.want, 0.00002)
	}
}

// TestSoftAnglesDesign checks the covariance with soft right angles: room_cases.csv roo-066 and roo-067 (144 x 120 in, four walls read,
// four soft right angles of 0.5 degree): 0.536 and 0.124 in.
func TestSoftAnglesDesign(t *testing.T) {
	r := &room.Room{Outline: "ABCD", Walls: []room.Wall{
		{Key: "AB", Length: in(144)}, {Key: "BC", Length: in(120)}, {Key: "CD", Length: in(144)}, {Key: "DA", Length: in(120)},
	}}
	s := surveyed(t, r, Options{})
	wantNear(t, "sd C x", s.Sigma(s.Find("corner.C.x"))/25.4, 0.536, 0.0006)
	wantNear(t, "sd C y", s.Sigma(s.Find("corner.C.y"))/25.4, 0.124, 0.0006)
	if len(s.Gaps) == 0 || !strings.Contains(s.Gaps[0].Text, "diagonal A to C not read: corners taken as square") {
		t.Errorf("gaps = %v, want the diagonal named", s.Gaps)
	}
}

// TestUnreadWallIsNamed leaves one wall out: it follows from the others, and is named.
func TestUnreadWallIsNamed(t *testing.T) {
	r := sixReadings()
	r.Walls = r.Walls[:3]
	s := surveyed(t, r, Options{})
	if !s.Outline {
		t.Fatal("the outline should be determined by three walls and two diagonals")
	}
	if s.Gaps[0].Key != "wall.DA.length" {
		t.Errorf("first gap = %v, want wall.DA.length", s.Gaps[0])
	}
}

// TestShapeNotDetermined gives two walls of four and no angle: nothing is invented.
func TestShapeNotDetermined(t *testing.T) {
	r := sixReadings()
	r.Walls, r.Diagonals = r.Walls[:2], nil
	s := surveyed(t, r, Options{NoSoftAngles: true})
	if s.Outline {
		t.Error("two lengths cannot determine a room")
	}
}

// TestLeanFromLengths reads AB 1/2 in longer high up than low down: the walls at its ends, DA and BC, share the lean, and the prior
// splits it evenly. Hand calculation: both lean outwards by 0.25 in over (high - low) = 1950 mm, but each is pulled towards its prior
// of 0 +- 0.2165/812.8: with u(reading) = 3.175 mm the sum S of both slopes has prior variance 2 L^2 (L = 5.5118/812.8 mm/mm) and
// is read with variance (2 x 3.175^2)/1950^2 as 12.7/1950.
func TestLeanFromLengths(t *testing.T) {
	r := sixReadings()
	r.Walls[0].LowLength, r.Walls[0].HighLength = in(144.125-0.25), in(144.125+0.25)
	s := surveyed(t, r, Options{})
	l := 0.217 * 25.4 / 812.8
	prior, reading := 2*l*l, 2*3.175*3.175/(1950*1950)
	want := 12.7 / 1950 * prior / (prior + reading) / 2
	wantNear(t, "lean of BC", s.Value(s.Find("wall.BC.lean")), want, 2e-5)
	wantNear(t, "lean of DA", s.Value(s.Find("wall.DA.lean")), want, 2e-5)
}

// TestPlumbTellsOneWall puts a plumb line before BC: 10 mm further from it high up than low down, over 1950 mm.
func TestPlumbTellsOneWall(t *testing.T) {
	r := sixReadings()
	mine := func(mm float64) room.Measure { return room.Measure{{Value: length.FromMM(mm), How: room.Mine, U: 1}} }
	r.Walls[1].Plumbs = []room.Plumb{{Low: mine(50), High: mine(60)}}
	s := surveyed(t, r, Options{})
	wantNear(t, "lean of BC", s.Value(s.Find("wall.BC.lean")), 10.0/1950, 1e-6)
	wantNear(t, "lean of DA", s.Value(s.Find("wall.DA.lean")), 0, 1e-9)
}

// TestCountedStuds counts off from a stud found twice (u = 1/8 in): two bays on, u = sqrt(0.125^2 + 0.25^2 x 2) in (how_known.csv).
func TestCountedStuds(t *testing.T) {
	r := sixReadings()
	r.Walls[0].Studs = []room.Stud{{Key: "1", At: in(15.25), Found: "twice"}}
	r.Walls[0].Spacing = in(16)
	s := surveyed(t, r, Options{})
	ref := s.Find("wall.AB.stud.1+2.at")
	wantNear(t, "stud", s.Value(ref)/25.4, 47.25, 1e-9)
	wantNear(t, "u", s.Sigma(ref)/25.4, math.Sqrt(0.125*0.125+2*0.25*0.25), 1e-9)
}

// TestUnreadSink: half the cover's thickness, u = thickness / sqrt(12) (questions.md).
func TestUnreadSink(t *testing.T) {
	r := sixReadings()
	r.Floor = room.Floor{Cover: "carpet", Thick: room.Measure{{Value: 12 * length.Millimetre, How: room.Mine, U: 1}}}
	s := surveyed(t, r, Options{})
	wantNear(t, "sink", s.Value(s.Find("floor.sink")), 6, 1e-9)
	wantNear(t, "u", s.Sigma(s.Find("floor.sink")), 12/math.Sqrt(12), 1e-6)
}

// TestSlopedCeiling reads a slope that is level along BC: 1200 mm at the knee wall, 2200 mm where it is 1000 mm out: it rises 1:1.
func TestSlopedCeiling(t *testing.T) {
	r := sixReadings()
	mine := func(mm float64) room.Measure { return room.Measure{{Value: length.FromMM(mm), How: room.Mine}} }
	spot := func(at, out float64) room.Spot { return room.Spot{Wall: "BC", From: "B", At: mine(at), Out: mine(out)} }
	r.Ceilings = []room.Ceiling{{Key: "slope", Sloped: true, Along: "BC", Heights: []room.Height{
		{Spot: spot(500, 0), Height: mine(1200)}, {Spot: spot(500, 1000), Height: mine(2200)},
	}}}
	s := surveyed(t, r, Options{})
	c := s.Layout.Ceilings[0]
	wantNear(t, "slope across", s.Value(c.SlopeX), -1, 1e-3)
	wantNear(t, "slope along", s.Value(c.SlopeY), 0, 2e-3)
}

// TestFarAndRest reads an opening's far edge and the rest of the wall beside its near edge: three ways to one position.
func TestFarAndRest(t *testing.T) {
	r := sixReadings()
	r.Windows = []room.Window{{Key: "w", OnWall: room.OnWall{Wall: "AB", From: "A", Far: in(126)}, Wide: in(34)}}
	s := surveyed(t, r, Options{})
	wantNear(t, "at", s.Value(s.Layout.Windows[0].At)/25.4, 92, 1e-9)
	r.Windows[0].At, r.Windows[0].Rest = in(92.25), in(18)
	s = surveyed(t, r, Options{})
	if at := s.Value(s.Layout.Windows[0].At) / 25.4; at < 92 || at > 92.25 {
		t.Errorf("at = %g, want between the readings", at)
	}
}

// TestConflicts: two readings of one wall an inch apart do not agree (2.58 x sqrt(2) x 1/8 in = 0.456 in).
func TestConflicts(t *testing.T) {
	r := sixReadings()
	r.Walls[0].Length = in(144, 145)
	s := surveyed(t, r, Options{Agree: 2.58})
	if len(s.Conflicts) != 1 || s.Conflicts[0].Key != "wall.AB.length" {
		t.Fatalf("conflicts = %v, want one on wall.AB.length", s.Conflicts)
	}
	r.Walls[0].Length = in(144, 144.25)
	if s := surveyed(t, r, Options{Agree: 2.58}); len(s.Conflicts) != 0 {
		t.Errorf("a quarter inch should agree: %v", s.Conflicts)
	}
}

// TestUnits looks at what is taken for granted in a room: a right angle is 90 degrees, a wall that leans and a ceiling that is not level
// are slopes, all else is a length.
func TestUnits(t *testing.T) {
	r := sixReadings()
	r.Ceilings = []room.Ceiling{{Key: "main", Heights: []room.Height{{Key: "A", Corner: "A", Height: in(96)}}}}
	want := map[string]string{
		"corner.A.square": "deg", "wall.AB.lean": "mm per mm", "ceiling.main.level_x": "mm per mm", "ceiling.main.level_y": "mm per mm",
		"wall.AB.length": "mm", "diagonal.AC.length": "mm",
	}
	for _, src := range surveyed(t, r, Options{}).Sources {
		if unit, ok := want[src.Key]; ok {
			delete(want, src.Key)
			if src.Unit() != unit {
				t.Errorf("%s: %q, want %q", src.Key, src.Unit(), unit)
			}
		}
		if src.Key == "corner.A.square" && src.Value != 90 {
			t.Errorf("a right angle of %g", src.Value)
		}
	}
	if len(want) > 0 {
		t.Errorf("not there: %v", want)
	}
}
