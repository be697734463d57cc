package main

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// full is a disk without room.
type full struct{}

var errFull = errors.New("no room")

func (full) Write([]byte) (int, error) { return 0, errFull }

// TestLostOutput runs every kind of printing into a full disk: the exit status is that of a failure, and it is said.
func TestLostOutput(t *testing.T) {
	for _, line := range []string{
		"help", "check --help", "check ../../samples/attic.toml", "check --json ../../samples/attic.toml", "parts ../../samples/attic.toml",
		"parts --csv ../../samples/attic.toml", "explain sit-up-top", "explain us-rail-over-mattress", "explain format", "length 5-1/2",
		"new 9ft 9ft", "measure --list", "measure section quantity=area_in2 nominal=2x4", "solve ../../room/survey/testdata/networks/n1_braced_square",
	} {
		var told strings.Builder
		code := run(strings.Fields(line), strings.NewReader(""), full{}, &told)
		if code != exitUsage || !strings.Contains(told.String(), "no room") {
			t.Errorf("%s: exit %d, %q", line, code, told.String())
		}
	}
}

// TestWrittenWholeOrNot lets the making of a file end in an error and in a panic: what was there stays as it was, and nothing is left
// beside it.
func TestWrittenWholeOrNot(t *testing.T) {
	dir := t.TempDir()
	name := filepath.Join(dir, "plan.png")
	if err := os.WriteFile(name, []byte("good"), 0o644); err != nil {
		t.Fatal(err)
	}
	s := &session{out: &printed{w: io.Discard}}
	for what, write := range map[string]func(io.Writer) error{
		"error": func(w io.Writer) error { fmt.Fprint(w, "half"); return errFull },
		"panic": func(w io.Writer) error { fmt.Fprint(w, "half"); panic("out of range") },
	} {
		func() {
			defer func() { _ = recover() }()
			if err := written(s, name, write); !errors.Is(err, errFull) {
				t.Errorf("%s: %v", what, err)
			}
		}()
		got, _ := os.ReadFile(name)
		if entries, _ := os.ReadDir(dir); string(got) != "good" || len(entries) != 1 {
			t.Errorf("%s: %q, %d files", what, got, len(entries))
		}
	}
}

// TestUnwritten puts what the system says of a file into words with a hint.
func TestUnwritten(t *testing.T) {
	dir := t.TempDir()
	for _, c := range []struct {
		name string
		err  error
		want string
	}{
		{filepath.Join(dir, "plan.png"), &fs.PathError{Op: "open", Err: fs.ErrPermission}, "no permission to write it\nhint: "},
		{filepath.Join(dir, "no", "plan.png"), &fs.PathError{Op: "open", Err: fs.ErrNotExist}, "there is no folder " + filepath.Join(dir, "no")},
		{dir, &os.LinkError{Op: "rename", Err: fs.ErrExist}, "is a folder"},
		{filepath.Join(dir, "plan.png"), &fs.PathError{Op: "write", Err: errFull}, "cannot be written: no room"},
	} {
		if got := unwritten(c.name, c.err).Error(); !strings.HasPrefix(got, c.name+": ") || !strings.Contains(got, c.want) {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

// TestNearest finds slips of a finger and says nothing where no word is near.
func TestNearest(t *testing.T) {
	for word, want := range map[string]string{
		"chekc": "check", "sit-up-to": "sit-up-top", "mattres_in": "mattress_in", "us-rail-over-matress": "us-rail-over-mattress",
		"nope": "", "foo": "", "x": "", "": "",
	} {
		list := []string{"power", "mpe", "to", "check", "sit-up-top", "mattress_in", "us-rail-over-mattress"}
		if got := nearest(word, list); got != want {
			t.Errorf("%q: got %q, want %q", word, got, want)
		}
	}
}
