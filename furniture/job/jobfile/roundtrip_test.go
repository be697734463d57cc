package jobfile

import (
	"bytes"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"pgregory.net/rapid"
)

// TestSavedJobLoads saves random jobs and loads them again: the same job, and of that the same bytes.
func TestSavedJobLoads(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := randomJob(t)
		text := Encode(j)
		f, err := Load(text, "job.toml")
		if err != nil {
			t.Fatalf("%v\n%s", err, text)
		}
		if diff := cmp.Diff(j, &f.Job, cmpopts.EquateNaNs()); diff != "" {
			t.Fatalf("made (-) and loaded (+):\n%s\n%s", diff, text)
		}
		if again := Encode(&f.Job); !bytes.Equal(text, again) {
			t.Fatalf("not the same bytes:\n%s\n%s", text, again)
		}
	})
}
