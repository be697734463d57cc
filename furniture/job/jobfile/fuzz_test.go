package jobfile

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"bunkwright/furniture/job"
)

// FuzzLoad reads anything: no text makes the loader panic; a job that loads comes back from its own text, byte for byte, and its room
// can be solved and looked through.
func FuzzLoad(f *testing.F) {
	for _, folder := range []string{"good", "broken"} {
		files, err := filepath.Glob(filepath.Join("testdata", folder, "*.toml"))
		if err != nil || len(files) == 0 {
			f.Fatal("no files in testdata/"+folder, err)
		}
		for _, name := range files {
			text, err := os.ReadFile(name)
			if err != nil {
				f.Fatal(err)
			}
			f.Add(text)
		}
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		got, err := Load(text, "fuzz.toml")
		if err != nil {
			_ = err.Error()
			return
		}
		if s, err := got.Job.Survey(); err == nil {
			job.Problems(&got.Job, s)
		}
		saved := Encode(&got.Job)
		again, err := Load(saved, "again.toml")
		if err != nil {
			t.Fatalf("does not load again: %v\n%s", err, saved)
		}
		if diff := cmp.Diff(got.Job, again.Job, cmpopts.EquateNaNs()); diff != "" {
			t.Fatalf("comes back changed:\n%s\n%s", diff, saved)
		}
		if !bytes.Equal(saved, Encode(&again.Job)) {
			t.Fatalf("not the same bytes again:\n%s\n%s", saved, Encode(&again.Job))
		}
	})
}
