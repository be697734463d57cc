package ui

import (
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"
)

// tapped taps the button of a word in what stands over the window.
func tapped(t *testing.T, w *Window, word string) {
	t.Helper()
	for _, o := range test.LaidOutObjects(w.win.Canvas().Overlays().Top()) {
		if b, ok := o.(*widget.Button); ok && b.Text == word {
			test.Tap(b)
			return
		}
	}
	t.Fatalf("no button %q", word)
}

// nameIt types a name into the dialog that stands over the window.
func nameIt(t *testing.T, w *Window, name string) {
	t.Helper()
	for _, o := range test.LaidOutObjects(w.win.Canvas().Overlays().Top()) {
		if e, ok := o.(*widget.Entry); ok {
			e.SetText(name)
			return
		}
	}
	t.Fatal("no field for a name")
}

// TestSaveAsByDialog: the name that is chosen is the one that is written, the ending is added, and a file that is written over is whole at
// every moment.
func TestSaveAsByDialog(t *testing.T) {
	w, path := opened(t, "attic.toml")
	dir := filepath.Dir(path)
	w.saveAs()
	nameIt(t, w, "copy")
	tapped(t, w, "Save")
	copied := filepath.Join(dir, "copy.toml")
	if data, err := os.ReadFile(copied); err != nil || len(data) == 0 || w.session.Path() != copied {
		t.Fatalf("saved as %q: %v", w.session.Path(), err)
	}
	w.bed.redraw()
	w.saveParts()
	nameIt(t, w, "boards.csv")
	tapped(t, w, "Save")
	if data, err := os.ReadFile(filepath.Join(dir, "boards.csv")); err != nil || len(data) == 0 {
		t.Errorf("boards: %v", err)
	}
}

// TestNamingAFileLeavesItWhole: the toolkit opens what was chosen before it hands it on; that must not empty it.
func TestNamingAFileLeavesItWhole(t *testing.T) {
	test.NewTempApp(t)
	path := filepath.Join(t.TempDir(), "old.toml")
	if err := os.WriteFile(path, []byte("old"), 0o644); err != nil {
		t.Fatal(err)
	}
	sparing()
	to, err := storage.Writer(storage.NewFileURI(path))
	if err != nil {
		t.Fatal(err)
	}
	to.Close()
	if data, _ := os.ReadFile(path); string(data) != "old" {
		t.Errorf("naming it left %q", data)
	}
	to, _ = storage.Writer(storage.NewFileURI(path))
	to.Write([]byte("new"))
	to.Close()
	if data, _ := os.ReadFile(path); string(data) != "new" {
		t.Errorf("writing left %q", data)
	}
}

// TestOpenDialogComes, and Escape puts it away.
func TestOpenDialogComes(t *testing.T) {
	w, _ := opened(t, "attic.toml")
	w.openDialog()
	if w.win.Canvas().Overlays().Top() == nil {
		t.Fatal("no dialog")
	}
}
