package ui

import (
	"errors"
	"fmt"
	"net/url"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/widget"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/ui/session"
)

// rename is an edit that every job takes.
func rename(w *Window, name string) {
	w.do("Name the job", "", func(j *job.Job) (*job.Job, error) {
		return jobfile.Set(j, jobfile.Change{Key: "name", Text: name})
	})
}

// listed returns the lines of the list that stands over the window.
func listed(t *testing.T, w *Window) (lines []string) {
	t.Helper()
	for _, o := range test.LaidOutObjects(w.win.Canvas().Overlays().Top()) {
		if l, ok := o.(*widget.Label); ok && l.Visible() && l.Text != "" {
			lines = append(lines, l.Text)
		}
	}
	return lines
}

// TestFortyProblems: a file that cannot be read is not opened, the job that was open stays, and every complaint has its line.
func TestFortyProblems(t *testing.T) {
	w, path := opened(t, "attic.toml")
	was := w.session.Job()
	var b strings.Builder
	b.WriteString("format = 1\nunit = \"in\"\n")
	for i := range 40 {
		fmt.Fprintf(&b, "colour%d = \"red\"\n", i)
	}
	bad := filepath.Join(filepath.Dir(path), "bad.toml")
	if err := os.WriteFile(bad, []byte(b.String()), 0o644); err != nil {
		t.Fatal(err)
	}
	if w.Open(bad) == nil || w.session.Job() != was {
		t.Fatal("opened")
	}
	lines := listed(t, w)
	if len(lines) < 10 || !strings.HasPrefix(lines[0], "40 things in "+bad) && !strings.HasPrefix(lines[len(lines)-1], "40 things") {
		t.Errorf("%d lines, the first %q", len(lines), lines[0])
	}
	if all := strings.Join(lines, "\n"); !strings.Contains(all, "3: colour0") {
		t.Errorf("no line number in %.300q", all)
	}
}

// TestProblemsJump: what contradicts itself is listed with its line, and choosing it goes to its field.
func TestProblemsJump(t *testing.T) {
	w, path := opened(t, "attic.toml")
	data, _ := os.ReadFile(path)
	text := string(data) + "\n[[fan]]\nkey = \"huge\"\nsweep = \"9 m\"\n"
	if err := os.WriteFile(path, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
	if err := w.Open(path); err != nil {
		t.Fatal(err)
	}
	w.problems()
	all := strings.Join(listed(t, w), "\n")
	if !strings.Contains(all, "fan.huge") || !strings.Contains(all, "line ") {
		t.Fatalf("listed: %q", all)
	}
	w.jump("fan.huge.sweep")
	if w.stage != roomStage {
		t.Errorf("jumped to stage %d", w.stage)
	}
	w.jump("bed.guard.top")
	if w.stage != bedStage {
		t.Errorf("jumped to stage %d", w.stage)
	}
}

// TestFileVanishes: it is noticed, the job stays, and writing it brings the file back.
func TestFileVanishes(t *testing.T) {
	w, path := opened(t, "attic.toml")
	os.Remove(path)
	w.Tick()
	if said := w.banner.shown("disk"); said != "The file is no longer where it was." {
		t.Errorf("said %q", said)
	}
	rename(w, "Still here")
	w.save()
	if _, err := os.Stat(path); err == nil {
		t.Error("written without a word")
	}
	answered(t, w, "disk", "Write mine over it")
	if f, err := jobfile.Open(path); err != nil || f.Job.Name != "Still here" || w.session.Unsaved() {
		t.Errorf("not brought back: %v", err)
	}
	if w.banner.shown("disk") != "" {
		t.Error("the notice stays")
	}
}

// answered does what a button of a notice does.
func answered(t *testing.T, w *Window, id, word string) {
	t.Helper()
	for _, n := range w.banner.notices {
		for _, c := range n.does {
			if n.id == id && c.word == word {
				c.do()
				return
			}
		}
	}
	t.Fatalf("notice %q has no %q", id, word)
}

// TestTwoWindows: the second says so, does not save over the first unasked, and can read or write.
func TestTwoWindows(t *testing.T) {
	path := filepath.Join(t.TempDir(), "job.toml")
	a, old := opened(t, "attic.toml")
	data, _ := os.ReadFile(old)
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.Fatal(err)
	}
	folder := t.TempDir()
	window := func() *Window {
		w := New(a.app, session.New(session.Options{Post: func(func()) {}, Folder: folder}), folder)
		w.openURL = nil
		if err := w.Open(path); err != nil {
			t.Fatal(err)
		}
		return w
	}
	first, second := window(), window()
	if first.banner.shown("two") != "" || second.banner.shown("two") == "" {
		t.Error("who is second is not said")
	}
	rename(first, "First")
	first.save()
	rename(second, "Second")
	second.save()
	if f, err := jobfile.Open(path); err != nil || f.Job.Name != "First" {
		t.Fatalf("the second wrote over the first: %v", err)
	}
	if second.banner.shown("disk") == "" || second.session.Job().Name != "Second" {
		t.Error("the second is not told, or has lost its job")
	}
	answered(t, second, "disk", "Write mine over it")
	first.Tick()
	answered(t, first, "disk", "Read it again")
	if first.session.Job().Name != "Second" {
		t.Errorf("read again: %q", first.session.Job().Name)
	}
}

// TestCrash: what was done before a crash is offered by the next window, with a file and without.
func TestCrash(t *testing.T) {
	a, path := opened(t, "attic.toml")
	folder := t.TempDir()
	window := func() *Window {
		return New(a.app, session.New(session.Options{Post: func(func()) {}, Folder: folder}), folder)
	}
	rename(a, "Lost")
	a.Tick()
	w := window()
	if err := w.Open(path); err != nil {
		t.Fatal(err)
	}
	answered(t, w, "recovery", "Bring it back")
	if w.session.Job().Name != "Lost" || !w.session.Unsaved() {
		t.Errorf("brought back %q", w.session.Job().Name)
	}
	w.leave()

	w = window()
	w.OpenSample("basement.toml")
	rename(w, "Nameless")
	w.Tick()
	if again := window(); again.banner.shown("recovery") != "" {
		t.Error("a window that still runs is taken for a crash")
	}
	kept, _ := os.ReadFile(w.session.RecoveryPath())
	folder = t.TempDir() // as if nobody held the copy any longer
	if err := os.WriteFile(filepath.Join(folder, filepath.Base(w.session.RecoveryPath())), kept, 0o644); err != nil {
		t.Fatal(err)
	}
	again := window()
	answered(t, again, "recovery", "Bring it back")
	if again.session.Job().Name != "Nameless" {
		t.Errorf("brought back %q", again.session.Job().Name)
	}
}

// TestDrop: a file dropped on the window is opened; what is no job is said to be none.
func TestDrop(t *testing.T) {
	w, _ := opened(t, "attic.toml")
	_, other := opened(t, "basement.toml")
	w.dropped(fyne.NewPos(10, 10), []fyne.URI{storage.NewFileURI(other)})
	if w.session.Path() != other {
		t.Errorf("open is %q", w.session.Path())
	}
	for _, bad := range []string{filepath.Dir(other), filepath.Join(filepath.Dir(other), "none.toml")} {
		w.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI(bad)})
		if w.session.Path() != other || w.banner.shown("trouble") == "" {
			t.Errorf("%s: open is %q, said %q", bad, w.session.Path(), w.banner.shown("trouble"))
		}
	}
	w.dropped(fyne.Position{}, nil)
}

// TestNoViewer: the sheets are written and their place is said, viewer or not.
func TestNoViewer(t *testing.T) {
	for _, open := range []func(*url.URL) error{nil, func(*url.URL) error { return errors.New("no such program") }} {
		w, path, back := openedWith(t, "attic.toml")
		w.openURL = open
		w.print()
		for deadline := time.After(20 * time.Second); w.session.Running("print"); {
			select {
			case f := <-back:
				f()
			case <-deadline:
				t.Fatal("no sheets came")
			}
		}
		sheets := strings.TrimSuffix(path, ".toml") + ".pdf"
		if data, err := os.ReadFile(sheets); err != nil || !strings.HasPrefix(string(data), "%PDF") {
			t.Errorf("sheets: %v", err)
		}
		if said := w.banner.shown("print"); !strings.HasSuffix(said, sheets) || (open != nil) != strings.HasPrefix(said, "No viewer opened") {
			t.Errorf("said %q", said)
		}
	}
}

// TestPrintWhereNothingCanBeWritten says so.
func TestPrintWhereNothingCanBeWritten(t *testing.T) {
	w, path, back := openedWith(t, "attic.toml")
	if err := os.Mkdir(strings.TrimSuffix(path, ".toml")+".pdf", 0o755); err != nil {
		t.Fatal(err)
	}
	w.print()
	for w.session.Running("print") {
		(<-back)()
	}
	if said := w.banner.shown("trouble"); !strings.HasPrefix(said, "Not printed: ") || w.banner.shown("print") != "" {
		t.Errorf("said %q and %q", said, w.banner.shown("print"))
	}
}

// TestOpenDialogComes: the toolkit's own dialog of files is shown, and Escape puts it away.
func TestOpenDialogComes(t *testing.T) {
	w, _ := opened(t, "attic.toml")
	w.openDialog()
	if w.win.Canvas().Overlays().Top() == nil {
		t.Fatal("no dialog")
	}
	w.key(&fyne.KeyEvent{Name: fyne.KeyEscape})
	if w.win.Canvas().Overlays().Top() != nil {
		t.Error("Escape leaves it there")
	}
}

// TestFirstRoomOfAll: a window that was never used before begins a room that can be edited, saved and opened again.
func TestFirstRoomOfAll(t *testing.T) {
	for _, shape := range []job.Shape{job.Rectangle, job.LShape} {
		w := New(test.NewTempApp(t), session.New(session.Options{Post: func(func()) {}}), t.TempDir())
		w.newRoom(shape)
		rename(w, "First")
		if said := w.banner.shown("trouble"); said != "" || w.session.UndoName() == "" {
			t.Fatalf("%v: the first edit says %q", shape, said)
		}
		path := filepath.Join(t.TempDir(), "first.toml")
		w.keepAt(w.jobSaving(), path)
		if f, err := jobfile.Open(path); err != nil || f.Job.Name != "First" {
			t.Errorf("%v: %v", shape, err)
		}
	}
}
