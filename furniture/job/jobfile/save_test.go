package jobfile

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"bunkwright/furniture/job"
)

// small returns a small job with a name, to tell versions apart.
func small(name string) *job.Job {
	return &job.Job{Format: 1, Unit: "mm", Name: name}
}

func names(t *testing.T, dir string) string {
	entries, err := os.ReadDir(dir)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return strings.Join(out, " ")
}

// TestSaveKeepsTheVersionBefore saves three times: the file holds the last, the file beside it the one before.
func TestSaveKeepsTheVersionBefore(t *testing.T) {
	path := filepath.Join(t.TempDir(), "attic.toml")
	for _, step := range []struct{ save, now, before, files string }{
		{"one", "one", "", "attic.toml"},
		{"two", "two", "one", "attic.previous.toml attic.toml"},
		{"two", "two", "one", "attic.previous.toml attic.toml"}, // unchanged: the version before stays
		{"three", "three", "two", "attic.previous.toml attic.toml"},
	} {
		if err := Save(path, small(step.save)); err != nil {
			t.Fatal(err)
		}
		if got := nameIn(path); got != step.now {
			t.Errorf("%s: the file holds %q", step.save, got)
		}
		if got := nameIn(Previous(path)); got != step.before {
			t.Errorf("%s: the version before is %q, want %q", step.save, got, step.before)
		}
		if got := names(t, filepath.Dir(path)); got != step.files {
			t.Errorf("%s: files %s", step.save, got)
		}
	}
}

// nameIn returns the name of the job in a file, "" where there is none.
func nameIn(path string) string {
	f, err := Open(path)
	if err != nil {
		return ""
	}
	return f.Job.Name
}

func TestSaveKeepsPermissions(t *testing.T) {
	path := filepath.Join(t.TempDir(), "job.toml")
	if err := os.WriteFile(path, Encode(small("one")), 0o640); err != nil {
		t.Fatal(err)
	}
	if err := Save(path, small("two")); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{path, Previous(path)} {
		info, err := os.Stat(name)
		if err != nil || info.Mode().Perm() != 0o640 {
			t.Errorf("%s: permissions %v %v, want 0640", name, info.Mode().Perm(), err)
		}
	}
}

// TestSaveThroughALink writes the file that a link names and leaves the link one.
func TestSaveThroughALink(t *testing.T) {
	dir := t.TempDir()
	path, link := filepath.Join(dir, "job.toml"), filepath.Join(dir, "link.toml")
	if err := errors.Join(Save(path, small("one")), os.Symlink(path, link), Save(link, small("two"))); err != nil {
		t.Fatal(err)
	}
	info, err := os.Lstat(link)
	if err != nil || info.Mode()&fs.ModeSymlink == 0 || nameIn(path) != "two" {
		t.Errorf("link %v %v, file holds %q", info, err, nameIn(path))
	}
}

// TestSaveThatCannot leaves everything as it was: a folder that is not there, a folder for a file, a job that no file can hold.
func TestSaveThatCannot(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "job.toml")
	if err := Save(path, small("one")); err != nil {
		t.Fatal(err)
	}
	before, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	broken := small("two")
	broken.Unit = "yard"
	if err := Save(path, broken); !errors.Is(err, ErrNotReadBack) {
		t.Errorf("a job in yards: %v", err)
	}
	if err := Save(filepath.Join(dir, "none", "job.toml"), small("two")); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("no folder: %v", err)
	}
	if err := Save(dir, small("two")); err == nil {
		t.Error("a folder was taken for a file")
	}
	after, err := os.ReadFile(path)
	if err != nil || !bytes.Equal(before, after) || names(t, dir) != "job.toml" {
		t.Errorf("changed: %s %v", names(t, dir), err)
	}
}
