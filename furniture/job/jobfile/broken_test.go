package jobfile

import (
	"errors"
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"
)

// A want is a complaint that the header of a broken file asks for: its line, its key (- for none) and words that it must hold.
type want struct {
	line       int
	key, words string
}

// wants reads the lines "# want: 12 wall.AB.length: words" at the top of a broken file.
func wants(t *testing.T, text string) []want {
	var out []want
	for line := range strings.Lines(strings.TrimPrefix(text, "\ufeff")) {
		rest, ok := strings.CutPrefix(strings.TrimRight(line, "\r\n"), "# want: ")
		if !ok {
			break
		}
		number, rest, _ := strings.Cut(rest, " ")
		n, err := strconv.Atoi(number)
		key, words, ok := strings.Cut(rest, ": ")
		if err != nil || !ok {
			t.Fatalf("header line %q", line)
		}
		out = append(out, want{n, strings.TrimPrefix(key, "-"), words})
	}
	return out
}

// TestBrokenFiles loads every file of testdata/broken: exactly the complaints its header asks for, in the order of the file.
func TestBrokenFiles(t *testing.T) {
	files, err := filepath.Glob("testdata/broken/*.toml")
	if err != nil || len(files) < 200 {
		t.Fatalf("%d broken files, want 200 or more: %v", len(files), err)
	}
	for _, name := range files {
		t.Run(strings.TrimSuffix(filepath.Base(name), ".toml"), func(t *testing.T) {
			text, err := os.ReadFile(name)
			if err != nil {
				t.Fatal(err)
			}
			checkBroken(t, text, wants(t, string(text)))
		})
	}
}

func checkBroken(t *testing.T, text []byte, wants []want) {
	f, err := Load(text, "job.toml")
	var rerr *ReadError
	if !errors.As(err, &rerr) || f != nil || len(wants) == 0 {
		t.Fatalf("loaded, or no complaint is asked for: %v", err)
	}
	for i, c := range rerr.Complaints {
		switch {
		case i >= len(wants):
			t.Errorf("one too many: %s", c.In("job.toml"))
		case c.Line != wants[i].line || c.Key != wants[i].key || !strings.Contains(c.Have+"; "+c.Want, wants[i].words):
			t.Errorf("got  %s\nwant %d %s: %s", c.In("job.toml"), wants[i].line, wants[i].key, wants[i].words)
		}
	}
	for _, w := range wants[min(len(wants), len(rerr.Complaints)):] {
		t.Errorf("not complained of: %d %s: %s", w.line, w.key, w.words)
	}
}
