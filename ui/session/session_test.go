package session

import (
	"context"
	"errors"
	"math/rand/v2"
	"os"
	"path/filepath"
	"slices"
	"testing"
	"time"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
	"bunkwright/samples"
)

// clock is a time that only moves when it is told to.
type clock struct{ at time.Time }

func (c *clock) now() time.Time       { return c.at }
func (c *clock) wait(d time.Duration) { c.at = c.at.Add(d) }

// opened is a session on a copy of a sample in a folder of its own.
func opened(t *testing.T, name string) (*Session, string, *clock) {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	path := filepath.Join(t.TempDir(), name)
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.Fatal(err)
	}
	c := &clock{time.Date(2027, 6, 9, 10, 0, 0, 0, time.UTC)}
	s := New(Options{Now: c.now})
	if err := s.Open(path); err != nil {
		t.Fatal(err)
	}
	return s, path, c
}

func set(key, text string) func(*job.Job) (*job.Job, error) {
	return func(j *job.Job) (*job.Job, error) { return jobfile.Set(j, jobfile.Change{Key: key, Text: text}) }
}

func must(t *testing.T, err error) {
	t.Helper()
	if err != nil {
		t.Fatal(err)
	}
}

// TestThousandEditsUndone: whatever was edited, undoing all of it gives back the first job, and making it again the last one.
func TestThousandEditsUndone(t *testing.T) {
	s, _, _ := opened(t, "town-house.toml")
	first := string(jobfile.Encode(s.Job()))
	keys := []string{"place.along", "place.gap", "bed.upper.height", "bed.guard.top", "wall.AB.length", "window.garden.sill", "name", "fan.fan.blades", "bed.shelf.1.height"}
	texts := []string{"1 ft", "2 ft 3-1/2 in", "30 in", "55 in", "0 in", "", "11 ft", "nonsense"}
	r := rand.New(rand.NewPCG(1, 2))
	made := 0
	for range 1000 {
		key, text := keys[r.IntN(len(keys))], texts[r.IntN(len(texts))]
		if s.Do("Set "+key, "", set(key, text)) == nil {
			made++
		}
	}
	last := string(jobfile.Encode(s.Job()))
	if made < 300 {
		t.Fatalf("only %d of the edits were made", made)
	}
	for s.UndoName() != "" {
		s.Undo()
	}
	if got := string(jobfile.Encode(s.Job())); got != first || s.Unsaved() {
		t.Errorf("undoing everything does not give the first job back (unsaved %t)", s.Unsaved())
	}
	for s.RedoName() != "" {
		s.Redo()
	}
	if got := string(jobfile.Encode(s.Job())); got != last {
		t.Error("making everything again does not give the last job back")
	}
}

func TestDragIsOneStep(t *testing.T) {
	s, _, c := opened(t, "town-house.toml")
	first := s.Job()
	for _, text := range []string{"1 in", "2 in", "3 in"} {
		must(t, s.Do("Move the bed", "drag", set("place.along", text)))
		c.wait(100 * time.Millisecond)
	}
	if s.UndoName() != "Move the bed" {
		t.Errorf("undo is called %q", s.UndoName())
	}
	s.Undo()
	if s.Job() != first || s.UndoName() != "" {
		t.Error("a drag is more than one step")
	}
	s.Redo()
	if got := jobfile.Shown(s.Job(), "place.along"); got != `3"` {
		t.Errorf("made again: %s", got)
	}
	for _, pause := range []func(){func() { c.wait(2 * time.Second) }, s.Settle, func() { s.Undo(); s.Redo() }} {
		must(t, s.Do("Move the bed", "drag", set("place.along", "5 in")))
		before := s.Job()
		pause()
		must(t, s.Do("Move the bed", "drag", set("place.along", "6 in")))
		s.Undo()
		if s.Job() != before {
			t.Error("two drags became one step")
		}
		s.Undo()
	}
}

func TestAnEditAfterUndoForgetsWhatWasUndone(t *testing.T) {
	s, _, _ := opened(t, "town-house.toml")
	must(t, s.Do("Name", "", set("name", "one")))
	s.Undo()
	must(t, s.Do("Name", "", set("name", "two")))
	if s.RedoName() != "" {
		t.Error("what was undone can be made again over a later edit")
	}
	if err := s.Do("Name", "", set("unit", "yards")); err == nil || s.UndoName() != "Name" {
		t.Error("a refused edit was made")
	}
}

func TestWatchersHear(t *testing.T) {
	s, path, _ := opened(t, "attic.toml")
	heard := 0
	s.Watch(func() { heard++ })
	must(t, s.Do("Name", "", set("name", "one")))
	must(t, s.Do("Name", "", set("name", "one")))
	s.Undo()
	s.Redo()
	must(t, s.Save())
	must(t, s.Open(path))
	if heard < 5 {
		t.Errorf("heard %d changes", heard)
	}
}

func TestSaveKeepsTheFileWhole(t *testing.T) {
	s, path, _ := opened(t, "attic.toml")
	must(t, s.Do("Name", "", set("name", "Saved")))
	if !s.Unsaved() {
		t.Error("an edit needs no saving")
	}
	must(t, s.Save())
	if f, err := jobfile.Open(path); err != nil || f.Job.Name != "Saved" || s.Unsaved() {
		t.Errorf("saved: %v", err)
	}
	old, _ := os.ReadFile(path)
	must(t, s.Do("Name", "", set("name", "Again")))
	if err := s.SaveAs(filepath.Join(path, "no folder", "job.toml")); err == nil {
		t.Error("saved under a file")
	}
	if now, _ := os.ReadFile(path); !slices.Equal(now, old) || !s.Unsaved() || s.Path() != path {
		t.Error("a save that failed changed something")
	}
	if err := New(Options{}).Save(); !errors.Is(err, ErrNoFile) {
		t.Errorf("save without a file: %v", err)
	}
}

func TestChangedOnDisk(t *testing.T) {
	s, path, _ := opened(t, "attic.toml")
	if s.ChangedOnDisk() || s.Gone() {
		t.Error("an untouched file counts as changed")
	}
	data, _ := os.ReadFile(path)
	must(t, os.WriteFile(path, append(data, "# another hand\n"...), 0o644))
	if !s.ChangedOnDisk() {
		t.Error("another hand was not noticed")
	}
	must(t, s.Do("Name", "", set("name", "Mine")))
	if err := s.Save(); !errors.Is(err, ErrChangedOnDisk) {
		t.Errorf("save over another hand: %v", err)
	}
	must(t, s.SaveAs(path))
	if s.ChangedOnDisk() {
		t.Error("its own save counts as another hand")
	}
	must(t, os.Remove(path))
	if !s.ChangedOnDisk() || !s.Gone() {
		t.Error("a file that is gone was not noticed")
	}
	must(t, s.SaveAs(path))
}

func TestRecovery(t *testing.T) {
	s, path, c := opened(t, "attic.toml")
	must(t, s.Tick())
	if _, ok := Lost(path, ""); ok {
		t.Error("a copy of what is saved")
	}
	must(t, s.Do("Name", "", set("name", "Lost")))
	must(t, s.Tick())
	must(t, s.Do("Name", "", set("name", "Later")))
	must(t, s.Tick()) // too soon for another copy
	if at, ok := Lost(path, ""); !ok || at != s.RecoveryPath() {
		t.Fatalf("no copy: %s", at)
	}
	c.wait(RecoverEvery)
	must(t, s.Tick())

	crashed := New(Options{Now: c.now})
	must(t, crashed.Recover(path))
	if crashed.Job().Name != "Later" || !crashed.Unsaved() || crashed.Path() != path {
		t.Errorf("recovered %q, unsaved %t", crashed.Job().Name, crashed.Unsaved())
	}
	must(t, crashed.Save())
	if _, ok := Lost(path, ""); ok {
		t.Error("the copy outlives the save")
	}
	if f, err := jobfile.Open(path); err != nil || f.Job.Name != "Later" {
		t.Errorf("saved after recovery: %v", err)
	}
}

func TestRecoveryOfAJobWithoutAFile(t *testing.T) {
	folder := t.TempDir()
	s := New(Options{Folder: folder})
	j := job.New(job.Start{Name: "New", Unit: length.Millimetres, Places: []string{"EU"}, AB: 3_000_000_000, BC: 2_500_000_000})
	s.Start(&j)
	must(t, s.Tick())
	if _, ok := Lost("", folder); ok {
		t.Error("a copy of a job that nothing was done to")
	}
	must(t, s.Do("Name", "", set("name", "New")))
	must(t, s.Do("Gap", "", set("place.gap", "10 mm")))
	must(t, s.Tick())
	if _, ok := Lost("", folder); !ok {
		t.Fatal("no copy of a new job")
	}
	again := New(Options{Folder: folder})
	must(t, again.Recover(""))
	if again.Job().Name != "New" || again.Path() != "" || !again.Unsaved() {
		t.Error("not recovered")
	}
	again.Close()
	if _, ok := Lost("", folder); ok {
		t.Error("what was given up comes back")
	}
}

// posts collects what background runs bring back.
type posts chan func()

func (p posts) post(f func()) { p <- f }

func TestRunsComeBackOnce(t *testing.T) {
	back := make(posts, 10)
	s := New(Options{Post: back.post})
	j := job.New(job.Start{Name: "Run", Unit: length.Inches})
	s.Start(&j)
	var got []string
	hold := make(chan bool)
	s.Run("answers", func(ctx context.Context, j *job.Job) func() {
		<-ctx.Done() // until the next run of its kind takes over
		close(hold)
		return func() { got = append(got, "old") }
	})
	s.Run("answers", func(_ context.Context, j *job.Job) func() {
		<-hold
		return func() { got = append(got, j.Name) }
	})
	s.Run("sheets", func(ctx context.Context, _ *job.Job) func() { return func() { got = append(got, "sheets") } })
	for range 3 {
		(<-back)()
	}
	slices.Sort(got)
	if !slices.Equal(got, []string{"Run", "sheets"}) {
		t.Errorf("came back: %v", got)
	}
	s.Run("answers", func(ctx context.Context, _ *job.Job) func() {
		<-ctx.Done()
		return func() { t.Error("cancelled and came back") }
	})
	if !s.Running("answers") {
		t.Error("not running")
	}
	s.Cancel("answers")
	(<-back)()
	if s.Running("answers") {
		t.Error("still running")
	}
}

// TestTwoSessionsOnOneFile: the second is told, keeps its copy elsewhere, cannot save over the first unasked, and is alone once that ends.
func TestTwoSessionsOnOneFile(t *testing.T) {
	folder, path := t.TempDir(), filepath.Join(t.TempDir(), "job.toml")
	data, _ := samples.Files.ReadFile("attic.toml")
	must(t, os.WriteFile(path, data, 0o644))
	c := &clock{time.Date(2027, 6, 9, 10, 0, 0, 0, time.UTC)}
	a, b := New(Options{Folder: folder, Now: c.now}), New(Options{Folder: folder, Now: c.now})
	must(t, a.Open(path))
	must(t, b.Open(path))
	if !a.Alone() || b.Alone() {
		t.Fatalf("alone: first %t, second %t", a.Alone(), b.Alone())
	}
	must(t, a.Do("Name", "", set("name", "First")))
	must(t, b.Do("Name", "", set("name", "Second")))
	must(t, a.Tick())
	must(t, b.Tick())
	if a.RecoveryPath() == b.RecoveryPath() {
		t.Error("one recovery copy for two windows")
	}
	must(t, a.Save())
	if err := b.Save(); !errors.Is(err, ErrChangedOnDisk) {
		t.Errorf("the second saves over the first: %v", err)
	}
	if _, err := os.Stat(b.RecoveryPath()); err != nil {
		t.Errorf("the copy of the second is gone: %v", err)
	}
	a.Close()
	again := New(Options{Folder: folder, Now: c.now})
	must(t, again.Open(path))
	if !again.Alone() {
		t.Error("a closed window still holds the file")
	}
}
