package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/length"
)

// mm makes an exact length for tests.
func mm(x float64) length.Length { return length.FromMM(x) }

// read makes a measure of one reading of the maker's own.
func read(x float64) room.Measure { return room.Exact(mm(x)) }

// bedroom makes a job of an exact rectangular room, A to B along x and B to C deep, with a level ceiling at 2440 mm, a hard level
// floor, plumb walls without baseboards, no things in it but a door, and a plain bed 2000 x 900 with the wall side at wall CD. The
// edits come after.
//
//	A -------- door -------- B
//	|                        |
//	D == bed, head at C end= C
func bedroom(wide, deep float64, edits ...func(*job.Job)) *job.Job {
	j := &job.Job{Format: 1, Unit: "mm", Places: []string{"US"}}
	j.Room = room.Room{
		Outline: "ABCD",
		Absent:  []string{"window", "fan", "light", "heater", "register", "outlet", "switch", "alarm", "thermostat", "hatch", "cord", "furniture", "beam", "closet"},
		Floor:   room.Floor{Cover: "hard", Rise: read(0)},
	}
	long := map[string]float64{"AB": wide, "BC": deep, "CD": wide, "DA": deep}
	for _, k := range []string{"AB", "BC", "CD", "DA"} {
		j.Room.Walls = append(j.Room.Walls, room.Wall{
			Key: k, Kind: "wood studs", Length: read(long[k]), BaseHigh: read(0), BaseDeep: read(0),
			Plumbs: []room.Plumb{{Low: read(100), Middle: read(100), High: read(100)}},
		})
	}
	diagonal := mm(math.Hypot(wide, deep))
	j.Room.Diagonals = []room.Diagonal{{Key: "AC", Length: room.Exact(diagonal)}}
	j.Room.Ceilings = []room.Ceiling{{Key: "main", Heights: []room.Height{
		{Corner: "A", Height: read(2440)}, {Corner: "B", Height: read(2440)}, {Corner: "C", Height: read(2440)}, {Corner: "D", Height: read(2440)},
	}}}
	j.Room.Doors = []room.Door{{
		Key: "hall", OnWall: room.OnWall{Wall: "AB", From: "B", At: read(100)}, Wide: read(760), High: read(2030), Kind: "swings",
		Hinge: "B", Swing: "in", LeafThick: read(35), Handle: read(60), HandleIn: read(70), LeadsTo: "hall",
	}}
	deck := bunk.Deck{MattressLong: mm(2000), MattressWide: mm(900), MattressThick: mm(150), MattressKnown: true}
	j.Bed.Upper, j.Bed.Lower = deck, deck
	j.Bed.Upper.Height, j.Bed.Lower.Height = mm(1500), mm(350)
	j.Place = job.Placement{Wall: "CD", From: "C", Gap: job.Maybe{Set: true}, Turn: job.AgainstSide}
	for _, edit := range edits {
		edit(j)
	}
	return j
}

// stage puts a job into a scene and complains where the bed does not stand in it.
func stage(t testing.TB, j *job.Job) *Scene {
	t.Helper()
	s, err := NewScene(j)
	if err != nil {
		t.Fatal(err)
	}
	if !s.Stands {
		t.Fatalf("the bed does not stand: %s, %v", s.Wants, s.BedErr)
	}
	return s
}
