//go:build unix

package ui

import (
	"os"
	"os/signal"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// full lets no file grow past a few bytes while f runs, as a full disk does.
func full(t *testing.T, f func()) {
	t.Helper()
	var was syscall.Rlimit
	if err := syscall.Getrlimit(syscall.RLIMIT_FSIZE, &was); err != nil {
		t.Fatal(err)
	}
	signal.Ignore(syscall.SIGXFSZ)
	defer signal.Reset(syscall.SIGXFSZ)
	if err := syscall.Setrlimit(syscall.RLIMIT_FSIZE, &syscall.Rlimit{Cur: 64, Max: was.Max}); err != nil {
		t.Fatal(err)
	}
	defer syscall.Setrlimit(syscall.RLIMIT_FSIZE, &was)
	f()
}

// TestFullDisk: the file stays as it was, the job stays unsaved, the window says what happened, and a save once there is room succeeds.
func TestFullDisk(t *testing.T) {
	w, path := opened(t, "attic.toml")
	before, _ := os.ReadFile(path)
	rename(w, "No room for this")
	full(t, w.save)
	if now, _ := os.ReadFile(path); string(now) != string(before) {
		t.Error("the old file is not whole")
	}
	if said := w.banner.shown("trouble"); !strings.HasPrefix(said, "Not saved: the file is as it was") || !w.session.Unsaved() {
		t.Errorf("said %q, unsaved %t", said, w.session.Unsaved())
	}
	if left, _ := filepath.Glob(filepath.Join(filepath.Dir(path), ".*.new")); left != nil {
		t.Errorf("left behind: %v", left)
	}
	full(t, w.close)
	if w.banner.shown("close") == "" {
		t.Error("a window with an unsaved job closes")
	}
	w.save()
	if w.session.Unsaved() {
		t.Error("not saved where there is room again")
	}
}
