package place_test

import (
	"math"
	"math/rand/v2"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/room"
	"bunkwright/room/length"
)

// mm makes an exact length for tests.
func mm(x float64) length.Length { return length.FromMM(x) }

// read makes a measure of one reading of the maker's own.
func read(x float64) room.Measure { return room.Exact(mm(x)) }

// bedroom makes a job of an exact rectangular room, A to B along x and B to C deep, with a level ceiling at 2440 mm, a hard level floor,
// plumb walls with thin baseboards, no things in it but a door in wall AB that opens in, and a plain bed. The edits come after.
func bedroom(wide, deep float64, edits ...func(*job.Job)) *job.Job {
	j := &job.Job{Format: 1, Unit: "mm", Places: []string{"US"}}
	j.Room = room.Room{
		Outline: "ABCD", Absent: append([]string(nil), room.AbsentWords...),
		Floor: room.Floor{Cover: "hard", Rise: read(0)},
	}
	for _, k := range []string{"AB", "BC", "CD", "DA"} {
		long := wide
		if k == "BC" || k == "DA" {
			long = deep
		}
		j.Room.Walls = append(j.Room.Walls, room.Wall{Key: k, Kind: "wood studs", Length: read(long), BaseHigh: read(80), BaseDeep: read(12)})
	}
	j.Room.Diagonals = []room.Diagonal{{Key: "AC", Length: read(math.Hypot(wide, deep))}}
	j.Room.Ceilings = []room.Ceiling{{Key: "main", Heights: []room.Height{{Corner: "A", Height: read(2440)}}}}
	j.Room.Doors = []room.Door{{
		Key: "hall", OnWall: room.OnWall{Wall: "AB", From: "B", At: read(100)}, Wide: read(760), High: read(2030), Kind: "swings",
		Hinge: "B", Swing: "in", LeafThick: read(35), Handle: read(60), HandleIn: read(70), LeadsTo: "hall", Casing: read(0),
	}}
	deck := bunk.Deck{MattressLong: mm(1900), MattressWide: mm(800), MattressThick: mm(120), MattressKnown: true, Head: bunk.Left}
	j.Bed.Upper, j.Bed.Lower = deck, deck
	j.Bed.Upper.Height, j.Bed.Lower.Height = mm(1400), mm(350)
	j.Bed.Ladder = &bunk.Ladder{At: bunk.Right, Angle: 90}
	j.Place = job.Placement{Wall: "CD", From: "C", Turn: job.AgainstSide}
	j.Confirmed = map[string]string{"irc-escape-key": "yes"}
	j.Sleepers = []job.Sleeper{{Name: "Up", Age: 8, Bed: "upper"}, {Name: "Down", Age: 6, Bed: "lower"}}
	for _, edit := range edits {
		edit(j)
	}
	return j
}

// present takes something out of the list of what the room does not have.
func present(j *job.Job, thing string) {
	var out []string
	for _, a := range j.Room.Absent {
		if a != thing {
			out = append(out, a)
		}
	}
	j.Room.Absent = out
}

// randomRoom makes a bedroom of a random size with random things in it: the same for the same number.
func randomRoom(n uint64) *job.Job {
	r := rand.New(rand.NewPCG(n, 5))
	between := func(lo, hi float64) float64 { return math.Round(lo + r.Float64()*(hi-lo)) }
	wide, deep := between(2300, 4300), between(2100, 3900)
	j := bedroom(wide, deep)
	long := map[string]float64{"AB": wide, "BC": deep, "CD": wide, "DA": deep}
	walls := []string{"AB", "BC", "CD", "DA"}
	onWall := func(size float64) room.OnWall {
		w := walls[r.IntN(4)]
		return room.OnWall{Wall: w, From: w[r.IntN(2):][:1], At: read(between(0, long[w]-size))}
	}
	spot := func() room.Spot {
		w := walls[r.IntN(4)]
		return room.Spot{Wall: w, From: w[r.IntN(2):][:1], At: read(between(0, long[w]-500)), Out: read(0)}
	}
	j.Room.Doors[0].At, j.Room.Doors[0].Hinge = read(between(0, wide-800)), "AB"[r.IntN(2):][:1]
	for range r.IntN(3) {
		present(j, "window")
		j.Room.Windows = append(j.Room.Windows, room.Window{
			OnWall: onWall(900), Wide: read(900), Sill: read(between(500, 1000)), Head: read(2000), Kind: "slides up", Guard: "no", Drop: read(3000),
			ClearWide: read(860), ClearHigh: read(620), Opens: read(620), Casing: read(60), CasingDeep: read(15), SillDeep: read(0),
		})
	}
	for range r.IntN(3) {
		present(j, "furniture")
		p := room.Piece{Spot: spot(), Wide: read(between(300, 500)), Deep: read(between(300, 500)), High: read(between(600, 1800)), Climb: "no"}
		j.Room.Pieces = append(j.Room.Pieces, p)
	}
	if r.IntN(2) == 0 {
		present(j, "heater")
		j.Room.Heaters = []room.Heater{{Kind: "radiator", Spot: spot(), Wide: read(450), Deep: read(90), High: read(600)}}
	}
	if r.IntN(2) == 0 {
		present(j, "fan")
		s := room.Spot{Wall: "AB", From: "A", At: read(wide / 2), Out: read(deep / 2)}
		j.Room.Fans = []room.Fan{{Spot: s, Sweep: read(1070), Blades: read(2150)}}
	}
	for range r.IntN(3) {
		present(j, "outlet")
		o := onWall(0)
		j.Room.Outlets = append(j.Room.Outlets, room.Outlet{Kind: "outlet", Wall: o.Wall, From: o.From, At: o.At, Height: read(350), InUse: "yes"})
	}
	if r.IntN(2) == 0 {
		j.Bed.Drawers = &bunk.Drawers{Count: 2, Travel: mm(500)}
	}
	if r.IntN(3) == 0 {
		j.Bed.Climb = &bunk.Climb{At: bunk.Left}
	}
	j.Place.Mirror = r.IntN(2) == 0
	return j
}
