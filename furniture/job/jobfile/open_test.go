package jobfile

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// TestOpenWhatIsNoJob opens what is no readable file: a message in plain words, never the system's own and no path twice.
func TestOpenWhatIsNoJob(t *testing.T) {
	dir := t.TempDir()
	large := filepath.Join(dir, "large.toml")
	if err := os.WriteFile(large, nil, 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Truncate(large, 50<<20); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		path string
		is   error
		want string
	}{
		{dir, nil, dir + ": a folder; the name of a job file, such as attic.toml"},
		{filepath.Join(dir, "none.toml"), fs.ErrNotExist, filepath.Join(dir, "none.toml") + ": no such file; check the name and the folder"},
		{large, ErrTooLarge, large + ": 50 MB, and a job file has at most 8; is it another kind of file?"},
	} {
		_, err := Open(c.path)
		if err == nil || err.Error() != c.want || c.is != nil && !errors.Is(err, c.is) {
			t.Errorf("got  %v\nwant %s", err, c.want)
		}
	}
}

// TestNoPermission asks for the message alone: the tests may run as a user who may read everything.
func TestNoPermission(t *testing.T) {
	err := unreadable("attic.toml", &fs.PathError{Op: "open", Path: "attic.toml", Err: fs.ErrPermission})
	const want = "attic.toml: no permission to read it; ask its owner, or copy it to a folder of your own"
	if err.Error() != want || !errors.Is(err, fs.ErrPermission) {
		t.Errorf("got  %v\nwant %s", err, want)
	}
}

func TestTooLargeInMemory(t *testing.T) {
	_, err := Load([]byte(strings.Repeat("#", MaxSize+1)), "x.toml")
	if !errors.Is(err, ErrTooLarge) {
		t.Errorf("got %v", err)
	}
}

func TestNewerFormat(t *testing.T) {
	_, err := Load([]byte("format = 2\n"), "x.toml")
	if !errors.Is(err, ErrNewerFormat) {
		t.Errorf("got %v", err)
	}
}

// TestLine looks up keys whose lines were counted by hand, and keys that the file does not hold.
func TestLine(t *testing.T) {
	f, err := Load([]byte("format = 1\nunit = \"in\"\n[room]\noutline = \"ABCD\"\n[[wall]]\nkey = \"AB\"\n[[wall]]\nkey = \"BC\"\nlength = [\n\"10 ft\",\n]\n"+
		"[[wall.stud]]\nat = \"2 ft\"\n[[door]]\n[[door]]\nkey = \"hall\"\nhigh = \"80 in\"\n[bed.upper]\nheight = \"5 ft\"\n"), "x.toml")
	if err != nil {
		t.Fatal(err)
	}
	for key, want := range map[string]int{
		"format": 1, "room.outline": 4, "wall.AB": 5, "wall.AB.length": 5, "wall.BC.length": 9, "wall.BC.stud.1.at": 13, "wall.BC.stud.2": 12,
		"door.1.wide": 14, "door.hall.high": 17, "bed.upper.height": 19, "bed.upper.head": 18, "bed.guard.top": 18, "place.wall": 1, "wall.CD.length": 5,
	} {
		if got := f.Line(key); got != want {
			t.Errorf("%s: line %d, want %d", key, got, want)
		}
	}
}
