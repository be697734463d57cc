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
	"bunkwright/samples"
)

func sampleJob(t *testing.T, name string) *job.Job {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	f, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	return &f.Job
}

func row(t *testing.T, j *job.Job, key string) Taken {
	t.Helper()
	s, err := j.Survey()
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range Readings(j, s) {
		if r.Key == key {
			return r
		}
	}
	t.Fatalf("no row of %s", key)
	return Taken{}
}

// TestReadingsOfTheTownHouse: values and states as they stand in the sample's file.
func TestReadingsOfTheTownHouse(t *testing.T) {
	j := sampleJob(t, "town-house.toml")
	for _, want := range []Taken{
		{Key: "wall.AB.length", Wall: "AB", From: "A", To: "B, middle", First: `11' 6"`, Second: `11' 6"`, How: "once", State: Agree},
		{Key: "wall.AB.low", Wall: "AB", From: "A", To: "B, low", First: `(11' 5-7/8")`, How: "once", State: Once},
		{Key: "window.garden.at", Wall: "AB", From: "A", To: "garden window", First: `7' 8"`, Second: `7' 8-1/8"`, How: "once", State: Agree},
		{Key: "window.garden.sill", Wall: "AB", From: "floor", To: "garden sill", First: `2' 3"`, Second: `2' 3"`, How: "once", State: Agree},
		{Key: "outlet.bed side.at", Wall: "DA", From: "D", To: "bed side outlet", State: NotIn},
		{Key: "diagonal.BD.length", From: "B", To: "D, corners", First: `(15' 1-5/8")`, How: "once", State: Once},
		{Key: "fan.ceiling.out", From: "wall A-B", To: "ceiling fan", First: `(6' 2")`, How: "once", State: Once},
		{Key: "wall.AB.stud.1.at", Wall: "AB", From: "A", To: "stud 1", First: `1' 3-1/4"`, How: "once", State: Agree}, // found twice
	} {
		if got := row(t, j, want.Key); got != want {
			t.Errorf("got  %+v\nwant %+v", got, want)
		}
	}
}

// TestReadingsOfASampleAreAllOfThem: every measure that a sample's file says is a row, once.
func TestReadingsOfASampleAreAllOfThem(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml", "half-measured.toml"} {
		j := sampleJob(t, name)
		s, err := j.Survey()
		if err != nil {
			t.Fatal(err)
		}
		seen := map[string]int{}
		for _, r := range Readings(j, s) {
			seen[r.Key]++
		}
		for _, src := range s.Sources {
			if src.Index == 0 && !strings.HasPrefix(src.Key, "sleeper.") && seen[src.Key] != 1 {
				t.Errorf("%s: %s is listed %d times", name, src.Key, seen[src.Key])
			}
		}
	}
}

// TestReadingsThatDiffer: two readings of one wall 100 mm apart do not agree.
func TestReadingsThatDiffer(t *testing.T) {
	j := sampleJob(t, "attic.toml")
	j, err := SetRoom(j, "wall.CD.length.2", "4308 mm")
	if err != nil {
		t.Fatal(err)
	}
	if got := row(t, j, "wall.CD.length"); got.State != Differ {
		t.Errorf("%+v", got)
	}
}

// plain is a new room of 4 m by 3 m that nobody measured, with its scene.
func plain(t *testing.T, shape job.Shape) *fit.Scene {
	t.Helper()
	j := job.New(job.Start{Name: "new", Unit: length.Millimetres, Places: []string{"EU"}, Shape: shape, AB: 4000 * length.Millimetre, BC: 3000 * length.Millimetre, Assumed: true})
	return sceneOf(t, &j)
}

func sceneOf(t *testing.T, j *job.Job) *fit.Scene {
	t.Helper()
	s, err := fit.NewScene(j)
	if err != nil || len(s.Walls) == 0 {
		t.Fatalf("no scene: %v", err)
	}
	return s
}

// TestTypingMakesAReading: a length that was only assumed is read once it is typed; walls without a table get one.
func TestTypingMakesAReading(t *testing.T) {
	s := plain(t, job.Rectangle)
	j, err := SetRoom(s.Job, "wall.AB.length", "4012 mm")
	if err != nil {
		t.Fatal(err)
	}
	if how := jobfile.Shown(j, "wall.AB.length.1.how"); how != "once" {
		t.Errorf("it is known as %q", how)
	}
	if j, err = SetRoom(j, "diagonal.AC.length", "5000 mm"); err != nil || len(j.Room.Diagonals) != 1 {
		t.Errorf("a diagonal: %v, %d", err, len(j.Room.Diagonals))
	}
	if j, err = SetRoom(j, "corner.B.square", "no"); err != nil || len(j.Room.Corners) != 1 {
		t.Errorf("a corner: %v", err)
	}
	if j, err = Forget(j, "diagonal.AC.length"); err != nil || len(j.Room.Diagonals[0].Length) != 0 {
		t.Errorf("forgotten: %v", err)
	}
}

// TestPullAWall: pulled 200 mm outwards, wall B to C makes A to B 200 mm longer, and nothing else; the corner opposite B pulled by (100, 50)
// changes both. Seen from above y goes up and the room lies below A to B.
func TestPullAWall(t *testing.T) {
	s := plain(t, job.Rectangle)
	r, err := PullWall(s, 1, geom.V2{X: 200, Y: 70}, Pulling{Step: length.Millimetre})
	if err != nil || len(r.Lengths) != 1 || r.Lengths[0].First != "4200 mm" || r.Lengths[0].Key != "wall.AB.length" {
		t.Fatalf("%+v, %v", r.Lengths, err)
	}
	if how := jobfile.Shown(r.Job, "wall.AB.length.1.how"); how != "assumed" {
		t.Errorf("a hand is no tape: known as %q", how)
	}
	if jobfile.Shown(s.Job, "wall.AB.length") != "4000 mm" {
		t.Error("the job itself changed")
	}
	r, err = PullCorner(s, 2, geom.V2{X: 100, Y: -50}, Pulling{Step: length.Millimetre})
	if err != nil || jobfile.Shown(r.Job, "wall.AB.length") != "4100 mm" || jobfile.Shown(r.Job, "wall.BC.length") != "3050 mm" {
		t.Errorf("%+v, %v", r.Lengths, err)
	}
	if after := sceneOf(t, r.Job); math.Abs(after.Walls[2].Len-4100) > 0.1 {
		t.Errorf("C to D is %.1f long", after.Walls[2].Len)
	}
	if _, err = PullWall(s, 1, geom.V2{X: -3950}, Pulling{}); !errors.Is(err, ErrTooShort) {
		t.Errorf("pulled through the room: %v", err)
	}
}

// TestPullAnL: the wall E to F of an L moves, its two neighbours take it up: D to E grows by what F to A loses.
func TestPullAnL(t *testing.T) {
	s := plain(t, job.LShape)
	de, fa := s.Walls[3].Len, s.Walls[5].Len
	r, err := PullWall(s, 4, geom.V2{Y: 300}, Pulling{Step: length.Millimetre})
	if err != nil || len(r.Lengths) != 2 {
		t.Fatalf("%+v, %v", r.Lengths, err)
	}
	after := sceneOf(t, r.Job)
	if math.Abs(after.Walls[3].Len-de-300) > 0.1 || math.Abs(after.Walls[5].Len-fa+300) > 0.1 {
		t.Errorf("D to E %.1f, F to A %.1f; were %.1f and %.1f", after.Walls[3].Len, after.Walls[5].Len, de, fa)
	}
}

// TestPullKeepsReadings: a wall that was measured stays, unless its readings are put aside in so many words; then so are the diagonals
// that end at a corner that moved.
func TestPullKeepsReadings(t *testing.T) {
	s := sceneOf(t, sampleJob(t, "town-house.toml"))
	var read *WasReadError
	if _, err := PullWall(s, 1, geom.V2{X: 100}, Pulling{}); !errors.As(err, &read) || !strings.HasPrefix(read.Key, "wall.") {
		t.Errorf("pulled a wall that was read: %v", err)
	}
	r, err := PullWall(s, 1, geom.V2{X: 100}, Pulling{Override: true})
	if err != nil {
		t.Fatal(err)
	}
	if got := row(t, r.Job, "wall.AB.length"); got.How != "assumed" || got.Second != "" || jobfile.Shown(r.Job, "wall.AB.low") != "" {
		t.Errorf("%+v", got)
	}
	for _, d := range r.Job.Room.Diagonals {
		if len(d.Length) > 0 {
			t.Errorf("diagonal %s is still read as %v", d.Key, d.Length)
		}
	}
}

// TestAddWhereItIs: whatever can be added is drawn where it was pointed at, assumed, and the job can be saved.
func TestAddWhereItIs(t *testing.T) {
	s := plain(t, job.Rectangle)
	at := s.Walls[1].Point(1000, 600) // 1 m from B along B to C, 600 mm into the room
	for _, what := range Addables {
		j, key, err := AddAt(s, what, at)
		if err != nil {
			t.Errorf("%s: %v", what.Word, err)
			continue
		}
		subject := Subject(key)
		if !Exists(j, subject) {
			t.Errorf("%s: no %s", what.Word, subject)
		}
		if what.Table != "ceiling.height" && jobfile.Shown(j, key+".1.how") != "assumed" {
			t.Errorf("%s: %s is known as %q", what.Word, key, jobfile.Shown(j, key+".1.how"))
		}
		if what.Word == "light" && (jobfile.Shown(j, key) != "1000 mm" || jobfile.Shown(j, subject+".out") != "600 mm" || jobfile.Shown(j, subject+".wall") != "BC") {
			t.Errorf("the light is %s along and %s out", jobfile.Shown(j, key), jobfile.Shown(j, subject+".out"))
		}
		if what.Table == "ceiling.height" {
			continue
		}
		if j, err = RemoveThing(j, subject); err != nil || Exists(j, subject) {
			t.Errorf("%s: not removed: %v", what.Word, err)
		}
	}
}

// TestAddTakesBackAbsent: a thing that the room was said not to have is there once it is added; a second one gets another name.
func TestAddTakesBackAbsent(t *testing.T) {
	s := plain(t, job.Rectangle)
	j, err := SetAbsent(s.Job, "window", true)
	if err != nil || !j.Room.Lacks("window") {
		t.Fatal(err)
	}
	i := slices.IndexFunc(Addables, func(a Addable) bool { return a.Word == "window" })
	j, first, err := AddAt(sceneOf(t, j), Addables[i], geom.V2{X: 2000, Y: -100})
	if err != nil || j.Room.Lacks("window") {
		t.Fatalf("still absent: %v", err)
	}
	_, second, err := AddAt(sceneOf(t, j), Addables[i], geom.V2{X: 1000, Y: -100})
	if err != nil || first == second {
		t.Errorf("both are called %s: %v", second, err)
	}
}

func TestRename(t *testing.T) {
	j := sampleJob(t, "town-house.toml")
	if next, err := Rename(j, "window.garden", "yard"); err != nil || !Exists(next, "window.yard") {
		t.Error(err)
	}
	for name, want := range map[string]error{"": ErrName, "a.b": ErrName, "closet": ErrNameTaken} {
		if _, err := Rename(j, "door.hall", name); !errors.Is(err, want) {
			t.Errorf("%q: %v, want %v", name, err, want)
		}
	}
}
