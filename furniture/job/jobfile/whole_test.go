package jobfile

import (
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"testing"
)

// TestWriteWhole writes new and over what is there: the permissions stay, a link still leads to the file, nothing else is left behind.
func TestWriteWhole(t *testing.T) {
	dir := t.TempDir()
	path, link := filepath.Join(dir, "plan.png"), filepath.Join(dir, "link.png")
	for _, step := range []struct{ to, data string }{{path, "one"}, {path, "two, longer"}, {link, "three"}} {
		if err := WriteWhole(step.to, []byte(step.data)); err != nil {
			t.Fatal(err)
		}
		if got, err := os.ReadFile(path); err != nil || string(got) != step.data {
			t.Errorf("the file holds %q, %v", got, err)
		}
		if step.data == "one" {
			mustDo(t, os.Chmod(path, 0o640), os.Symlink("plan.png", link))
		}
	}
	info, err := os.Lstat(path)
	if err != nil || info.Mode() != 0o640 {
		t.Errorf("mode %v, %v", info.Mode(), err)
	}
	if got := names(t, dir); got != "link.png plan.png" {
		t.Errorf("files %s", got)
	}
}

// TestWriteWholeRefuses leaves a folder, and a name in no folder, as they are.
func TestWriteWholeRefuses(t *testing.T) {
	dir := t.TempDir()
	if err := WriteWhole(dir, nil); err == nil {
		t.Error("wrote over a folder")
	}
	if err := WriteWhole(filepath.Join(dir, "no", "x.png"), nil); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("no such folder: %v", err)
	}
	if got := names(t, dir); got != "" {
		t.Errorf("files %s", got)
	}
}

func mustDo(t *testing.T, errs ...error) {
	t.Helper()
	if err := errors.Join(errs...); err != nil {
		t.Fatal(err)
	}
}
