package session

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// spots are the places in the room of everything in it that was read, by key.
func spots(s *fit.Scene) map[string]geom.V2 {
	out := map[string]geom.V2{}
	for _, t := range Things(&s.Job.Room) {
		m := mover{s: s, key: t.Key, free: freedomOf(s.Job, t.Key)}
		if Movable(s.Job, t.Key) && m.find() && !math.IsNaN(m.value("at")) {
			lo := m.at
			if m.fromEnd() {
				lo = m.wall.Len - m.at - m.wide
			}
			out[t.Key] = m.wall.Point(lo+m.wide/2, m.out).Sub(s.Outline[0])
		}
	}
	return out
}

// keptPlaces tells what of a room is somewhere else in another one, within a sixteenth of an inch for each reading that was turned round.
func keptPlaces(t *testing.T, was, is *fit.Scene) {
	t.Helper()
	now := spots(is)
	for key, at := range spots(was) {
		if q, ok := now[key]; !ok || q.Dist(at) > 4 {
			t.Errorf("%s was at %v, is at %v", key, at, q)
		}
	}
}

// TestSplitEveryWall: of every sample, whatever is on the wall keeps its place, the shape of the room is the same, what was read of the whole
// wall is a reading from corner to corner; and the corner taken away again, everything is where it was and the wall's readings are back.
func TestSplitEveryWall(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml", "half-measured.toml"} {
		j := sampleJob(t, name)
		s := sceneOf(t, j)
		for _, wall := range WallKeys(&j.Room) {
			split, letter, err := SplitWall(s, wall)
			var in *InTheWayError
			if errors.As(err, &in) {
				t.Logf("%s, wall %s: %v", name, wall, err)
				continue
			}
			if err != nil {
				t.Errorf("%s, wall %s: %v", name, wall, err)
				continue
			}
			next := sceneOf(t, split)
			if len(next.Walls) != len(s.Walls)+1 || math.Abs(next.Outline.Area()-s.Outline.Area()) > 0.001*math.Abs(s.Outline.Area()) {
				t.Errorf("%s, wall %s: %d walls, area %.0f of %.0f", name, wall, len(next.Walls), next.Outline.Area(), s.Outline.Area())
			}
			keptPlaces(t, s, next)
			if WasRead(j, "wall."+wall+".length") && jobfile.Shown(split, "diagonal."+wall+".length") != jobfile.Shown(j, "wall."+wall+".length") {
				t.Errorf("%s, wall %s: its reading is gone", name, wall)
			}
			back, err := RemoveCorner(next, letter)
			if err != nil {
				t.Errorf("%s, corner %s of wall %s: %v", name, letter, wall, err)
				continue
			}
			keptPlaces(t, s, sceneOf(t, back))
			key := "wall." + wall + ".length"
			if back.Room.Outline != j.Room.Outline || WasRead(j, key) && jobfile.Shown(back, key) != jobfile.Shown(j, key) {
				t.Errorf("%s, wall %s joined again: outline %s, length %s", name, wall, back.Room.Outline, jobfile.Shown(back, key))
			}
		}
	}
}

// TestSplitKeepsToFreeWall: the closet of the town house takes 2' 6" to 6' 6" from D, with 2-1/4" of trim, of a wall of 11' 5-3/4": the middle,
// 5' 8-7/8" from D, is in it; the nearest free inch counted from C is 11' 5-3/4" less 6' 8-1/4", so at most 4' 9".
func TestSplitKeepsToFreeWall(t *testing.T) {
	s := sceneOf(t, sampleJob(t, "town-house.toml"))
	j, letter, err := SplitWall(s, "CD")
	if err != nil || letter != "E" || j.Room.Outline != "ABCED" {
		t.Fatalf("%v, corner %s", err, letter)
	}
	if got := jobfile.Shown(j, "wall.CE.length"); got != `4' 9"` {
		t.Errorf("C to E is %s", got)
	}
	if d := j.Room.Doors[1]; d.Wall != "ED" || d.From != "D" || len(d.At) != 2 {
		t.Errorf("the closet is on %s from %s, read %d times", d.Wall, d.From, len(d.At))
	}
	wide, err := jobfile.Set(s.Job, jobfile.Change{Key: "door.closet.at", Text: "2 in"}, jobfile.Change{Key: "door.closet.at.2"}, jobfile.Change{Key: "door.closet.wide", Text: "11 ft 1 in"},
		jobfile.Change{Key: "door.closet.wide.2"})
	if err != nil {
		t.Fatal(err)
	}
	var in *InTheWayError
	if _, _, err = SplitWall(sceneOf(t, wide), "CD"); !errors.As(err, &in) || in.Name != "closet door" {
		t.Errorf("a closet as wide as its wall: %v", err)
	}
}

// TestRemoveACorner: of an L with walls of 4 m, 3 m and parts of two fifths, taking away the inner corner E leaves a five-sided room: its
// area, by hand, is 4 x 3 less the triangle of 1.6 x 1.8 m; a corner with something on its walls is not taken away.
func TestRemoveACorner(t *testing.T) {
	s := plain(t, job.LShape)
	j, err := RemoveCorner(s, "E")
	if err != nil {
		t.Fatal(err)
	}
	next := sceneOf(t, j)
	a, b := s.Walls[3].Len, s.Walls[4].Len
	want := math.Abs(s.Outline.Area()) + a*b/2
	if got := math.Abs(next.Outline.Area()); len(next.Walls) != 5 || math.Abs(got-want) > 0.005*want {
		t.Errorf("%d walls, area %.2f m2, want %.2f", len(next.Walls), got/1e6, want/1e6)
	}
	town := sceneOf(t, sampleJob(t, "town-house.toml"))
	var in *InTheWayError
	if _, err := RemoveCorner(town, "B"); !errors.As(err, &in) {
		t.Errorf("a corner between two walls with things on them: %v", err)
	}
	rect := plain(t, job.Rectangle)
	if j, err = RemoveCorner(rect, "C"); err != nil {
		t.Fatal(err)
	}
	if _, err := RemoveCorner(sceneOf(t, j), "A"); !errors.Is(err, ErrThreeCorners) {
		t.Errorf("of three corners: %v", err)
	}
}

// TestStepInAWall: a wall of 4 m split in its middle, its second half pulled in by 600 mm: six corners, area 12 m2 less 2 m x 0.6 m, and right
// angles; a door on the half that moves goes with it.
func TestStepInAWall(t *testing.T) {
	s := plain(t, job.Rectangle)
	j, err := jobfile.Add(s.Job, "door", "hall", jobfile.Change{Key: "wall", Text: "AB"}, jobfile.Change{Key: "from", Text: "B"},
		jobfile.Change{Key: "at", Text: "300 mm"}, jobfile.Change{Key: "wide", Text: "800 mm"}, jobfile.Change{Key: "hinge", Text: "A"})
	if err != nil {
		t.Fatal(err)
	}
	j, letter, err := SplitWall(sceneOf(t, j), "AB")
	if err != nil {
		t.Fatal(err)
	}
	s = sceneOf(t, j)
	i := slices.Index(WallKeys(&j.Room), letter+"B")
	got, err := PullWall(s, i, s.Walls[i].In.Mul(600), Pulling{Step: 10 * length.Millimetre})
	if err != nil {
		t.Fatal(err)
	}
	next := sceneOf(t, got.Job)
	if area := math.Abs(next.Outline.Area()); len(next.Walls) != 6 || math.Abs(area-10.8e6) > 0.02e6 {
		t.Errorf("%s: %d walls, area %.3f m2, want 10.8", got.Job.Room.Outline, len(next.Walls), area/1e6)
	}
	if d := got.Job.Room.Doors[0]; d.Wall != got.Job.Room.Outline[2:4] || d.From != "B" || !strings.Contains(d.Wall, d.Hinge) {
		t.Errorf("the door is on %s from %s, hinge %s, of %s", d.Wall, d.From, d.Hinge, got.Job.Room.Outline)
	}
	if _, err := jobfile.Load(jobfile.Encode(got.Job), ""); err != nil {
		t.Error(err)
	}
	bay, err := PullCorner(s, strings.Index(j.Room.Outline, letter), s.Walls[i].In.Mul(-500), Pulling{Step: 10 * length.Millimetre})
	if err != nil {
		t.Fatal(err)
	}
	next = sceneOf(t, bay.Job)
	if area := math.Abs(next.Outline.Area()); math.Abs(area-13e6) > 0.05e6 { // and a triangle of 4 m by 0.5 m halved
		t.Errorf("a bay: area %.3f m2, want 13", area/1e6)
	}
}
