package jobfile

import (
	"errors"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"

	"bunkwright/furniture/job"
	"bunkwright/samples"
)

// TestAnyJobIsAWayOfAnother keeps one random job as another way of a second one, saves, loads and makes it again: the same job, whatever the two are.
func TestAnyJobIsAWayOfAnother(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := randomJob(t), randomJob(t)
		a.Another, b.Another = nil, nil
		b.Name, b.Note, b.Comments = a.Name, a.Note, nil // a way has a name and a note of its own
		kept, err := KeepWay(a, "other", b)
		if err != nil {
			t.Fatal(err)
		}
		file, err := Load(Encode(kept), "")
		if err != nil {
			t.Fatal(err)
		}
		ways, err := Ways(&file.Job)
		if err != nil || len(ways) != 1 || ways[0].Name != "other" {
			t.Fatalf("%v, %v\n%s", ways, err, Encode(kept))
		}
		if diff := cmp.Diff(b, ways[0].Job, cmpopts.EquateNaNs(), cmpopts.IgnoreFields(job.Job{}, "Comments")); diff != "" {
			t.Fatalf("kept (-) and made (+):\n%s\n%s", diff, Encode(kept))
		}
	})
}

func townHouse(t *testing.T) *job.Job {
	t.Helper()
	text, err := samples.Files.ReadFile("town-house.toml")
	if err != nil {
		t.Fatal(err)
	}
	file, err := Load(text, "town-house.toml")
	if err != nil {
		t.Fatal(err)
	}
	return &file.Job
}

// TestWayKeepsWhatDiffers: a way holds nothing but its differences, and follows the job in all else.
func TestWayKeepsWhatDiffers(t *testing.T) {
	j := townHouse(t)
	other, err := Set(j, Change{"place.wall", "CD"}, Change{"place.from", "D"}, Change{"bed.upper.mattress_thick", "8 in"}, Change{"floor.sink", ""})
	if err != nil {
		t.Fatal(err)
	}
	kept, err := KeepWay(j, "closet wall", other)
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]any{
		"name": "closet wall", "without": []any{"floor.sink"},
		"place": map[string]any{"wall": "CD", "from": "D"}, "bed": map[string]any{"upper": map[string]any{"mattress_thick": "8 in"}},
	}
	if diff := cmp.Diff(want, kept.Another[0]); diff != "" {
		t.Error(diff)
	}
	moved, err := Set(kept, Change{"bed.upper.height", "57 in"})
	if err != nil {
		t.Fatal(err)
	}
	ways, err := Ways(moved)
	if err != nil || Shown(ways[0].Job, "bed.upper.height") != `4' 9"` || ways[0].Job.Place.Wall != "CD" || len(ways[0].Job.Room.Floor.Sink) > 0 {
		t.Errorf("%v, %v", ways, err)
	}
	if again, _ := KeepWay(moved, "closet wall", j); len(again.Another) != 1 {
		t.Error("a way of the same name was added, not replaced")
	}
	if len(DropWay(moved, "closet wall").Another) != 0 {
		t.Error("the way was not taken away")
	}
}

// TestWaysThatCannotBe: a fifth way is refused, and one that gives no job says which it is and why.
func TestWaysThatCannotBe(t *testing.T) {
	j := townHouse(t)
	for _, name := range []string{"a", "b", "c", "d"} {
		var err error
		if j, err = KeepWay(j, name, j); err != nil {
			t.Fatal(err)
		}
	}
	if _, err := KeepWay(j, "e", j); !errors.Is(err, ErrTooManyWays) {
		t.Errorf("got %v", err)
	}
	j.Another = []map[string]any{{"name": "odd", "place": map[string]any{"wall": "XY"}}}
	_, err := Ways(j)
	var read *ReadError
	if !errors.As(err, &read) || read.Complaints[0].Key != "place.wall" {
		t.Errorf("got %v", err)
	}
}
