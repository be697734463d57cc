package jobfile

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"

	"bunkwright/furniture"
	"bunkwright/room"
	"bunkwright/room/length"
)

func goodFiles(t testing.TB) []string {
	names, err := filepath.Glob("testdata/good/*.toml")
	if err != nil || len(names) == 0 {
		t.Fatal("no good files", err)
	}
	return names
}

// TestGoodFilesComeBack loads every good file and loads it again from what is saved.
func TestGoodFilesComeBack(t *testing.T) {
	for _, name := range goodFiles(t) {
		f, err := Open(name)
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		again, err := Load(Encode(&f.Job), name)
		if err != nil || !cmp.Equal(f.Job, again.Job) {
			t.Errorf("%s: %v\n%s", name, err, cmp.Diff(f.Job, again.Job))
		}
	}
}

// TestTownhouse reads values off the file by hand: 11 ft 6-1/8 in is 138-1/8 in, a light reading keeps its mark, what a reading does
// not say it takes from [readings], a dressed 2x6 measures 1-1/2 x 5-1/2 in (American Softwood Lumber Standard PS 20).
func TestTownhouse(t *testing.T) {
	f, err := Open("testdata/good/townhouse.toml")
	if err != nil {
		t.Fatal(err)
	}
	j, in := f.Job, length.Inch
	wall, _ := j.Room.Wall("AB")
	want := room.Measure{
		{Value: 138*in + in/8, How: room.Once, By: "Rosa", When: "2027-06-02"},
		{Value: 138*in + in/4, How: room.Twice, By: "Tom", When: "2027-06-09", Light: -2},
	}
	if diff := cmp.Diff(want, wall.Length); diff != "" {
		t.Errorf("wall AB, want (-), got (+):\n%s", diff)
	}
	boards := []furniture.Stock{
		{Name: "2x4", Thick: in + 7*in/16, Wide: 3*in + 7*in/16}, {Name: "2x6", Thick: in + in/2, Wide: 5*in + in/2},
		{Name: "plywood 1/2 in", Thick: in / 2, Sheet: true},
	}
	if diff := cmp.Diff(boards, []furniture.Stock{j.Bed.Post, j.Bed.Rail, j.Bed.Drawers.Bottom}); diff != "" {
		t.Errorf("boards, want (-), got (+):\n%s", diff)
	}
	if !j.Place.Gap.Set || j.Place.Gap.Value != in || j.Bed.Ladder == nil || j.Bed.Climb != nil || j.Bed.Shelves[0].ScrewAt[1] != 20*in {
		t.Errorf("place %+v, bed %+v", j.Place, j.Bed)
	}
}

func BenchmarkLoadTownhouse(b *testing.B) {
	text, err := os.ReadFile("testdata/good/townhouse.toml")
	if err != nil {
		b.Fatal(err)
	}
	if _, err := Load(text, "townhouse.toml"); err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		loaded, _ = Load(text, "townhouse.toml")
	}
}

func BenchmarkEncodeTownhouse(b *testing.B) {
	f, err := Open("testdata/good/townhouse.toml")
	if err != nil {
		b.Fatal(err)
	}
	for b.Loop() {
		saved = Encode(&f.Job)
	}
}

var (
	loaded *File
	saved  []byte
)
