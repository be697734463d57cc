package place_test

import (
	"context"
	"math"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/place"
	"bunkwright/room"
	"bunkwright/room/length"
)

// search tries a job at a step and complains of an error.
func search(t *testing.T, j *job.Job, o place.Options) place.Result {
	t.Helper()
	r, err := place.Search(context.Background(), j, o)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// letters of a rectangle seen in a mirror that swaps left and right: corner A is where B was.
var swapped = map[string]string{"A": "B", "B": "A", "C": "D", "D": "C", "AB": "AB", "BC": "DA", "CD": "CD", "DA": "BC", "": ""}

// mirrored makes the mirror image of a random room, with its bed built the other way round.
func mirrored(j *job.Job) *job.Job {
	m := *j
	r := &m.Room
	r.Walls = nil
	for _, k := range []string{"AB", "BC", "CD", "DA"} {
		w, _ := j.Room.Wall(swapped[k])
		w.Key = k
		r.Walls = append(r.Walls, w)
	}
	r.Diagonals = []room.Diagonal{{Key: "BD", Length: j.Room.Diagonals[0].Length}}
	onWall := func(o *room.OnWall) { o.Wall, o.From = swapped[o.Wall], swapped[o.From] }
	spot := func(o *room.Spot) { o.Wall, o.From = swapped[o.Wall], swapped[o.From] }
	r.Doors = append([]room.Door(nil), r.Doors...)
	for i := range r.Doors {
		onWall(&r.Doors[i].OnWall)
		r.Doors[i].Hinge = swapped[r.Doors[i].Hinge]
	}
	r.Windows = append([]room.Window(nil), r.Windows...)
	for i := range r.Windows {
		onWall(&r.Windows[i].OnWall)
	}
	r.Outlets = append([]room.Outlet(nil), r.Outlets...)
	for i := range r.Outlets {
		r.Outlets[i].Wall, r.Outlets[i].From = swapped[r.Outlets[i].Wall], swapped[r.Outlets[i].From]
	}
	r.Pieces = append([]room.Piece(nil), r.Pieces...)
	for i := range r.Pieces {
		spot(&r.Pieces[i].Spot)
	}
	r.Heaters = append([]room.Heater(nil), r.Heaters...)
	for i := range r.Heaters {
		spot(&r.Heaters[i].Spot)
	}
	r.Fans = append([]room.Fan(nil), r.Fans...)
	for i := range r.Fans {
		spot(&r.Fans[i].Spot)
	}
	return &m
}

var otherEnd = map[job.Turn]job.Turn{
	job.AgainstSide: job.AgainstSide, job.AgainstLeft: job.AgainstRight, job.AgainstRight: job.AgainstLeft, job.AgainstFront: job.AgainstFront,
}

// TestMirroredRoomGivesMirroredSpots: seen in a mirror, a room has the same spots on the walls that stand for its own, the bed built the other
// way round, with the same verdicts.
func TestMirroredRoomGivesMirroredSpots(t *testing.T) {
	for n := range uint64(25) {
		j := randomRoom(1000 + n)
		o := place.Options{Step: 150 * length.Millimetre, PerWall: 50, Nominal: true}
		a, b := search(t, j, o), search(t, mirrored(j), o)
		if len(a.Walls) != len(b.Walls) {
			t.Errorf("room %d: %v without a spot, in the mirror %v", n, a.Walls, b.Walls)
		}
		for i := range a.Spots {
			if a.Spots[i].Slides() == 0 && a.Spots[i].Place.Along > 0 {
				continue // it touches on both sides: rounding decides
			}
			if !hasImage(&a.Spots[i], b.Spots, j) {
				t.Errorf("room %d: %s %s %v %.2f to %.2f has no image", n, a.Spots[i].Wall, a.Spots[i].Turn, a.Spots[i].Mirror, a.Spots[i].From, a.Spots[i].To)
			}
		}
	}
}

func hasImage(a *place.Spot, in []place.Spot, j *job.Job) bool {
	w, _ := j.Room.Wall(a.Wall)
	rest := w.Length[0].Value.MM() - a.Span
	for i := range in {
		b := &in[i]
		if b.Wall != swapped[a.Wall] || b.Turn != otherEnd[a.Turn] || b.Mirror == a.Mirror {
			continue
		}
		near := math.Abs(b.From-(rest-a.To)) < 0.5 && math.Abs(b.To-(rest-a.From)) < 0.5
		same := true
		for k := range a.Asked {
			same = same && a.Asked[k] == b.Asked[k]
		}
		if near && same {
			return true
		}
	}
	return false
}

// TestInchesAndMillimetres: the unit of the job changes no spot where the step is the same.
func TestInchesAndMillimetres(t *testing.T) {
	for n := range uint64(10) {
		j := randomRoom(2000 + n)
		in := *j
		in.Unit = "in"
		o := place.Options{Step: 100 * length.Millimetre, Nominal: true}
		a, b := search(t, j, o), search(t, &in, o)
		if len(a.Spots) != len(b.Spots) {
			t.Fatalf("room %d: %d spots in mm, %d in inches", n, len(a.Spots), len(b.Spots))
		}
		for i := range a.Spots {
			if a.Spots[i].Place != b.Spots[i].Place || a.Spots[i].From != b.Spots[i].From || a.Spots[i].To != b.Spots[i].To {
				t.Errorf("room %d: spot %d is %+v in mm, %+v in inches", n, i+1, a.Spots[i].Place, b.Spots[i].Place)
			}
		}
	}
}

// spare returns the nominal spare of a question, and whether there is one.
func spare(t *testing.T, s *fit.Scene, id string) (float64, bool) {
	t.Helper()
	q, ok := fit.Find(id)
	if !ok {
		t.Fatal(id)
	}
	a := s.Nominal(q)
	return a.Spare, a.HasSpare
}

// TestTakingAThingAwayCostsNothing: a room with a piece of furniture, a heater or a fan less lowers no spare of stands, doors-swing, drawers-open
// and walkway.
func TestTakingAThingAwayCostsNothing(t *testing.T) {
	seen := 0
	for n := range uint64(60) {
		j := randomRoom(3000 + n)
		less := *j
		switch {
		case len(j.Room.Pieces) > 0:
			less.Room.Pieces = j.Room.Pieces[1:]
			if len(less.Room.Pieces) == 0 {
				less.Room.Absent = append([]string{"furniture"}, j.Room.Absent...)
			}
		case len(j.Room.Heaters) > 0:
			less.Room.Heaters, less.Room.Absent = nil, append([]string{"heater"}, j.Room.Absent...)
		case len(j.Room.Fans) > 0:
			less.Room.Fans, less.Room.Absent = nil, append([]string{"fan"}, j.Room.Absent...)
		default:
			continue
		}
		a, b := scene(t, j), scene(t, &less)
		for _, id := range []string{"stands", "doors-swing", "drawers-open", "walkway"} {
			was, had := spare(t, a, id)
			is, has := spare(t, b, id)
			if had && has {
				seen++
				if is < was-1e-6 {
					t.Errorf("room %d: %s has %.3f mm with a thing less, %.3f before", n, id, is, was)
				}
			}
		}
	}
	if seen < 50 {
		t.Errorf("only %d spares were compared", seen)
	}
}

// TestHigherCeilingCostsNoHeadroom: nowhere in any room does a ceiling 100 mm higher lower the air over a head.
func TestHigherCeilingCostsNoHeadroom(t *testing.T) {
	for n := range uint64(20) {
		j := randomRoom(4000 + n)
		high := *j
		high.Room.Ceilings = []room.Ceiling{{Key: "main", Heights: []room.Height{{Corner: "A", Height: read(2540)}}}}
		a, b := scene(t, j), scene(t, &high)
		for _, id := range []string{"sit-up-top", "sit-up-bottom", "lie-and-turn"} {
			was, had := spare(t, a, id)
			if is, has := spare(t, b, id); had && (!has || is < was-1e-9) {
				t.Errorf("room %d: %s has %.3f mm under the higher ceiling, %.3f before", n, id, is, was)
			}
		}
	}
}

func scene(t *testing.T, j *job.Job) *fit.Scene {
	t.Helper()
	s, err := fit.NewScene(j)
	if err != nil {
		t.Fatal(err)
	}
	return s
}
