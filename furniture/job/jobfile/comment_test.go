package jobfile

import (
	"os"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const commented = `# about the job

# and more
format = 1
unit = "in" # tape
[room]
outline = "ABCD"
# the wall with the window
[[wall]]
key = "CD"
[[wall]] # the door wall
key = "AB"
# read twice
length = [ # in order
  "11 ft", # first
  { read = "11 ft 1/8 in", how = "told" }, # second
]
[floor]
# none: hard floor
cover = "hard"
[place]
mirrored = false # not mirrored
[confirmed]
# printed
us-warning-label = "yes"
# good night
`

// TestCommentsByKey finds each comment at its key; that of a key with its default goes to the table, a table without a value keeps its
// own.
func TestCommentsByKey(t *testing.T) {
	f, err := Load([]byte(commented), "x.toml")
	if err != nil {
		t.Fatal(err)
	}
	want := map[string]string{
		"format": "about the job\n\nand more", "unit": "tape", "wall.CD": "the wall with the window", "wall.AB": "the door wall",
		"wall.AB.length": "read twice\nin order\nfirst\nsecond", "floor.cover": "none: hard floor", "place": "not mirrored",
		"confirmed.us-warning-label": "printed", "": "good night",
	}
	if diff := cmp.Diff(want, f.Job.Comments); diff != "" {
		t.Errorf("want (-), got (+):\n%s", diff)
	}
}

// TestCommentsFollowTheirKey turns two walls round and takes a value out: comments go with their wall, none is lost.
func TestCommentsFollowTheirKey(t *testing.T) {
	f, err := Load([]byte(commented), "x.toml")
	if err != nil {
		t.Fatal(err)
	}
	walls := slices.Clone(f.Job.Room.Walls)
	slices.Reverse(walls)
	walls[0].Length = nil
	f.Job.Room.Walls = walls
	text := string(Encode(&f.Job))
	const want = "# the door wall\n# read twice\n# in order\n# first\n# second\n[[wall]]\nkey = \"AB\"\n\n# the wall with the window\n[[wall]]\nkey = \"CD\"\n"
	if !strings.Contains(text, want) {
		t.Errorf("got:\n%s", text)
	}
}

// TestNoCommentIsLost saves every good file: all words of its comments are in what is saved.
func TestNoCommentIsLost(t *testing.T) {
	for _, name := range goodFiles(t) {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		f, err := Load(text, name)
		if err != nil {
			t.Fatal(err)
		}
		saved := string(Encode(&f.Job))
		for line := range strings.Lines(string(text)) {
			_, said, ok := strings.Cut(line, "# ")
			if ok && !strings.Contains(saved, "# "+strings.TrimSpace(said)+"\n") {
				t.Errorf("%s: lost: %s", name, line)
			}
		}
	}
}
