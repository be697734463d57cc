package ui

import (
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"

	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
)

// asked is the dialog for a saving with its name and its button, as they are on the screen.
func asked(t *testing.T, w *Window) (name *widget.Entry, save *widget.Button) {
	t.Helper()
	for _, o := range test.LaidOutObjects(w.win.Canvas().Overlays().Top()) {
		switch o := o.(type) {
		case *widget.Entry:
			name = o
		case *widget.Button:
			if o.Text == "Save" {
				save = o
			}
		}
	}
	if name == nil || save == nil {
		t.Fatal("nobody asks for a name")
	}
	return name, save
}

// TestSaveAsAsksForAPlace: the job goes where the name says, with its ending; what is typed may be a whole path.
func TestSaveAsAsksForAPlace(t *testing.T) {
	w, path := opened(t, "town-house.toml")
	w.saveAs()
	name, save := asked(t, w)
	if name.Text != "bunk-for-maren-and-ida.toml" || w.win.Canvas().Focused() != name {
		t.Errorf("the name is %q", name.Text)
	}
	name.SetText("again")
	test.Tap(save)
	want := filepath.Join(filepath.Dir(path), "again.toml")
	if w.session.Path() != want || !exists(want) {
		t.Errorf("the job is at %s, want %s: %s", w.session.Path(), want, w.banner.shown("save"))
	}
	other := filepath.Join(t.TempDir(), "elsewhere.toml")
	w.saveAs()
	name, save = asked(t, w)
	name.SetText(other)
	test.Tap(save)
	if w.session.Path() != other || w.lastFolder() != filepath.Dir(other) {
		t.Errorf("the job is at %s, the folder is %s", w.session.Path(), w.lastFolder())
	}
}

// TestWhatIsThereStays: asking opens nothing for writing, a file is named as written over before it is, and a disk that fills up leaves the
// old one whole and is told of.
func TestWhatIsThereStays(t *testing.T) {
	w, path := opened(t, "town-house.toml")
	old := filepath.Join(filepath.Dir(path), "parts.csv")
	if err := os.WriteFile(old, []byte("mine"), 0o644); err != nil {
		t.Fatal(err)
	}
	w.writeWhole = func(path string, _ []byte) error {
		return &fs.PathError{Op: "write", Path: path, Err: syscall.ENOSPC}
	}
	w.show(bedStage)
	w.saveParts()
	name, save := asked(t, w)
	name.SetText("parts")
	told := false
	for _, o := range test.LaidOutObjects(w.win.Canvas().Overlays().Top()) {
		l, ok := o.(*widget.Label)
		told = told || ok && l.Text == "parts.csv is there already and will be written over"
	}
	if !told {
		t.Error("it is not said that a file is written over")
	}
	test.Tap(save)
	if got, err := os.ReadFile(old); err != nil || string(got) != "mine" {
		t.Errorf("the old file holds %q, %v", got, err)
	}
	if got := w.banner.shown("save"); got != "The parts list was not saved: the disk is full; what is there is as it was" {
		t.Errorf("said: %q", got)
	}
}

// TestWhyNotSaved: a folder that is not there and a name that is a folder are said in words, and nothing is left behind.
func TestWhyNotSaved(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	dir := t.TempDir()
	for path, want := range map[string]string{
		filepath.Join(dir, "no", "such.csv"): "there is no such folder; nothing was written",
		dir:                                  "is a directory; what is there is as it was",
	} {
		w.keepAt(w.partsSaving(), path)
		if got := w.banner.shown("save"); !strings.HasSuffix(got, want) {
			t.Errorf("%s: said %q, want %q", path, got, want)
		}
	}
	if left, _ := os.ReadDir(dir); len(left) != 0 {
		t.Errorf("left behind: %v", left)
	}
}
