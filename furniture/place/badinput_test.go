package place_test

import (
	"context"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"bunkwright/furniture/job"
	"bunkwright/furniture/place"
	"bunkwright/room"
	"bunkwright/room/length"
)

// outlineJob makes a bedroom of any outline of right angles: a letter and the way to the next corner for each, clockwise seen from above,
// starting along x.
func outlineJob(sides []float64, insides []float64) *job.Job {
	j := bedroom(3000, 3000)
	j.Room.Outline, j.Room.Walls, j.Room.Corners, j.Room.Diagonals = "", nil, nil, nil
	letters := []rune("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz")[:len(sides)]
	j.Room.Outline = string(letters)
	for i, long := range sides {
		key := string(letters[i]) + string(letters[(i+1)%len(letters)])
		j.Room.Walls = append(j.Room.Walls, room.Wall{Key: key, Kind: "wood studs", Length: read(long), BaseHigh: read(0), BaseDeep: read(0)})
		if insides[i] != 90 {
			j.Room.Corners = append(j.Room.Corners, room.Corner{Key: string(letters[i]), Inside: insides[i]})
		}
	}
	j.Room.Doors[0].Wall, j.Room.Doors[0].From, j.Room.Doors[0].Hinge, j.Room.Doors[0].At = "AB", "A", "A", read(20)
	return j
}

// TestRoomTooSmall: no bed of 2 m stands in a room of 1.5 m; the room is 500 mm and more too short.
func TestRoomTooSmall(t *testing.T) {
	r := search(t, bedroom(1500, 1400), place.Options{})
	if len(r.Spots) > 0 || len(r.Walls) != 4 {
		t.Fatalf("got %d spots, %d walls without", len(r.Spots), len(r.Walls))
	}
	for _, w := range r.Walls {
		if len(w.Reasons) == 0 || len(w.Reasons) > 2 {
			t.Errorf("wall %s: reasons %q", w.Wall, w.Reasons)
		}
	}
}

// TestLongerThanEveryWall: with shelves the bed stands with its wall side only, and no wall is as long: by hand the frame is 1900 + 19.05 play
// (3/4 in) and the ends outside of it.
func TestLongerThanEveryWall(t *testing.T) {
	j := bedroom(1900, 1850)
	r := search(t, j, place.Options{Turns: []job.Turn{job.AgainstSide}})
	if len(r.Spots) > 0 || len(r.Walls) != 4 {
		t.Fatalf("got %d spots, %d walls without", len(r.Spots), len(r.Walls))
	}
	for _, w := range r.Walls {
		if len(w.Reasons) != 1 || !strings.HasSuffix(w.Reasons[0], "short") || !strings.Contains(w.Reasons[0], "the bed needs") {
			t.Errorf("wall %s: %q", w.Wall, w.Reasons)
		}
	}
}

// TestThreeReadings: a room of three readings is searched as far as it goes, and says what is missing.
func TestThreeReadings(t *testing.T) {
	j := bedroom(3500, 3000)
	j.Room = room.Room{Outline: "ABCD", Ceilings: j.Room.Ceilings, Walls: []room.Wall{{Key: "AB", Length: read(3500)}, {Key: "BC", Length: read(3000)}}}
	r := search(t, j, place.Options{})
	if len(r.Spots) > 0 {
		t.Fatalf("got %d spots", len(r.Spots))
	}
	for _, w := range r.Walls {
		if len(w.Reasons) == 0 || !strings.HasSuffix(w.Reasons[0], "?") {
			t.Errorf("wall %s: %q, want a question", w.Wall, w.Reasons)
		}
	}
	j.Room.Walls = j.Room.Walls[:1]
	if r := search(t, j, place.Options{}); r.Missing == "" {
		t.Error("one wall alone gives the room no shape, and that is not said")
	}
}

// TestNeckOf300: in an L whose arm is 300 mm wide nothing stands in the arm.
func TestNeckOf300(t *testing.T) {
	// A 3300 B 3000 C 300 D 2500 E 3000 F 500: the arm runs down between B and D.
	j := outlineJob([]float64{3300, 3000, 300, 2500, 3000, 500}, []float64{90, 90, 90, 90, 270, 90})
	r := search(t, j, place.Options{})
	for _, s := range r.Spots {
		if s.Wall == "CD" || s.Wall == "DE" {
			t.Errorf("a spot at wall %s in the arm", s.Wall)
		}
	}
	if len(r.Walls) == 0 {
		t.Error("every wall has a spot")
	}
}

// comb makes an outline of n teeth: 4 n + 4 corners.
func comb(n int) *job.Job {
	sides, insides := []float64{float64(n)*1200 + 400}, []float64{90}
	add := func(side, inside float64) { sides, insides = append(sides, side), append(insides, inside) }
	add(3500, 90)
	for range n {
		add(400, 90)
		add(600, 90)
		add(800, 270)
		add(600, 270)
	}
	add(400, 90)
	add(3500, 90)
	return outlineJob(sides, insides)
}

// TestFortyCorners: 40 corners are searched; the long wall AB has a spot or says why not.
func TestFortyCorners(t *testing.T) {
	j := comb(9)
	if len(j.Room.Outline) != 40 {
		t.Fatalf("%d corners", len(j.Room.Outline))
	}
	r := search(t, j, place.Options{Step: 50 * length.Millimetre})
	if r.Missing != "" || len(r.Spots) == 0 {
		t.Fatalf("missing %q, %d spots, %q", r.Missing, len(r.Spots), r.Walls)
	}
}

// crowded makes a room with n pieces of furniture along its walls.
func crowded(n int) *job.Job {
	j := bedroom(6000, 5000)
	present(j, "furniture")
	for i := range n {
		w := []string{"AB", "BC", "CD", "DA"}[i%4]
		at := 50 + math.Mod(float64(i/4)*290, 4500)
		j.Room.Pieces = append(j.Room.Pieces, room.Piece{
			Key: fmt.Sprintf("p%d", i), Spot: room.Spot{Wall: w, From: w[:1], At: read(at), Out: read(0)},
			Wide: read(250), Deep: read(250), High: read(700), Climb: "no",
		})
	}
	return j
}

// TestSixtyPieces: with 60 pieces of furniture along the walls the answer is clear: no wall has room, and each names what is in the way.
func TestSixtyPieces(t *testing.T) {
	r := search(t, crowded(60), place.Options{Step: 50 * length.Millimetre, Turns: []job.Turn{job.AgainstSide}, Sure: 1})
	for _, w := range r.Walls {
		if len(w.Reasons) == 0 {
			t.Errorf("wall %s without a reason", w.Wall)
		}
	}
	if len(r.Spots)+len(r.Walls) == 0 {
		t.Error("nothing is said")
	}
}

// TestCancel: a search ends within 0.1 s of being cancelled, with the error of its context.
func TestCancel(t *testing.T) {
	for _, sure := range []int{0, 1} { // while placements are tried, and while it is worked out how sure the best are
		ctx, cancel := context.WithCancel(context.Background())
		var at time.Time
		o := place.Options{Step: 50 * length.Millimetre, Tell: func(p place.Progress) {
			if at.IsZero() && p.Sure >= sure {
				at = time.Now()
				cancel()
			}
		}}
		_, err := place.Search(ctx, comb(9), o)
		if took := time.Since(at); !errors.Is(err, context.Canceled) || took > 100*time.Millisecond {
			t.Errorf("got %v after %v", err, took)
		}
	}
}
