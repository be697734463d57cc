package ui

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
)

// openedBed is the window on a sample with the Bed stage shown.
func openedBed(t *testing.T, name string) *Window {
	t.Helper()
	w, _ := opened(t, name)
	w.show(bedStage)
	return w
}

// choose types into the field of a key and leaves it.
func choose(t *testing.T, w *Window, key, text string) {
	t.Helper()
	w.bed.sizes.jump(key)
	f := w.bed.sizes.fields[key]
	if f == nil || w.win.Canvas().Focused() != f.Focusable() {
		t.Fatalf("%s has no field, or it does not get the focus", key)
	}
	e := f.Focusable().(interface{ SetText(string) })
	e.SetText("")
	test.Type(f.Focusable(), text)
	w.win.Canvas().Unfocus()
}

// dump is what is drawn of the bed alone.
func (b *bedPane) dump() string {
	return b.sides.Drawing().Dump() + b.corner.Drawing().Dump()
}

// TestChooseASize: a typed size is one edit, named after what it is, changes all drawings, and undo takes it back.
func TestChooseASize(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	before, drawn, stick := w.session.Job(), w.bed.dump(), w.bed.stick.Drawing().Dump()
	choose(t, w, "bed.upper.height", "58 in")
	if got := w.session.Job().Bed.Upper.Height; got != 58*length.Inch || w.session.UndoName() != "Set decks: upper" {
		t.Fatalf("the deck is at %v, undo %q", got, w.session.UndoName())
	}
	if w.bed.dump() == drawn || w.bed.stick.Drawing().Dump() == stick {
		t.Error("no drawing differs")
	}
	w.undo()
	if w.session.Job() != before || w.bed.dump() != drawn || w.bed.sizes.fields["bed.upper.height"].Text() != `4' 7"` {
		t.Error("undo does not bring it all back")
	}
}

// TestBadSizesAreKept: what is no length stays in its field with what is wrong, and the job stays as it is.
func TestBadSizesAreKept(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	before := w.session.Job()
	for _, text := range []string{"12x", "-3", "1/0", "five feet"} {
		choose(t, w, "bed.guard.top", text)
		f := w.bed.sizes.fields["bed.guard.top"]
		if f.Text() != text || !f.Bad() || w.session.Job() != before {
			t.Errorf("%q: the field holds %q", text, f.Text())
		}
	}
	choose(t, w, "bed.post", "wood")
	if f := w.bed.sizes.fields["bed.post"]; f.Text() != "wood" || !f.Bad() {
		t.Error("a board that is none is taken")
	}
}

// TestWhatCannotBeBuilt: the side rails of the upper bed end 55 - 3/4 - 1-1/2 + 5-1/2 = 58-1/4 in up, so a guardrail of a 1x6, 5-1/2 wide,
// cannot end lower than 63-3/4 in. The text stays, the drawings keep the last bed that could be built, and the nearest is taken with a click.
func TestWhatCannotBeBuilt(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	const key = "bed.guard.top"
	bed, g := w.bed.bed(), w.bed.sizes.groupOf(key)
	choose(t, w, key, "60 in")
	f := w.bed.sizes.fields[key]
	if f.Text() != "5' 0\"" || f.Bad() || !f.Wrong() || w.live.scene.Bed != nil || w.session.Job().Bed.Guard.Top != 60*length.Inch {
		t.Fatalf("the field holds %q, the job %v", f.Text(), w.session.Job().Bed.Guard.Top)
	}
	if w.bed.bed() != bed || len(g.refused) != 1 || g.of.title != "Rails" {
		t.Fatalf("%d refusals at %s, the last bed is kept: %v", len(g.refused), g.of.title, w.bed.bed() == bed)
	}
	if !strings.Contains(w.bed.sides.Drawing().Dump(), "not-fit") {
		t.Error("no part is dashed red")
	}
	calloutIsClear(t, w)
	test.Tap(g.refused[0].(fyne.Tappable))
	if w.live.scene.Bed == nil || len(g.refused) != 0 || f.Wrong() || w.session.Job().Bed.Guard.Top != 255*length.Inch/4 {
		t.Errorf("%v is taken: %v", w.session.Job().Bed.Guard.Top, w.live.scene.BedErr)
	}
	w.undo()
	if f.Text() != "5' 0\"" || len(g.refused) != 1 {
		t.Error("undo does not bring the refused size back")
	}
}

// calloutIsClear: what is said over the view from the front covers no dimension and no other words, and neither does its leader.
func calloutIsClear(t *testing.T, w *Window) {
	t.Helper()
	for _, wide := range []float32{660, 835, 1000} {
		w.bed.sides.Resize(fyne.NewSize(wide, 420))
		d := w.bed.sides.Drawing()
		n := len(w.bed.callout(nil, render.Px(float64(wide))))
		if n == 0 || n > len(d.Marks) {
			t.Fatalf("%g wide: nothing is said", wide)
		}
		said := false
		for i, m := range d.Marks {
			if m.Kind != render.KindText || !strings.Contains(m.Text.Words, "Top at 5' 0\"") {
				continue
			}
			said = true
			for k, o := range d.Marks {
				if k != i && o.Kind == render.KindText && o.Bounds().Overlaps(m.Bounds().Grow(render.Px(4))) {
					t.Errorf("%g wide: %q is on %q", wide, m.Text.Words, o.Text.Words)
				}
			}
		}
		if !said {
			t.Errorf("%g wide: it is not said which size", wide)
		}
	}
}

// TestAddOns: each is taken away and given back by its box; a bed without it still stands.
func TestAddOns(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	n := 0
	for _, g := range w.bed.sizes.groups {
		if g.check == nil || g.of.table == "bed.shelf" {
			continue
		}
		n++
		before := w.session.Job()
		test.Tap(g.check)
		if g.there() || w.session.UndoName() != "Take away: "+strings.ToLower(g.of.title) || w.live.scene.Bed == nil {
			t.Errorf("%s is not taken away: undo %q, %v", g.of.title, w.session.UndoName(), w.live.scene.BedErr)
		}
		test.Tap(g.check)
		if !g.there() || !g.open || w.live.scene.Bed == nil {
			t.Errorf("%s does not come back: %v", g.of.title, w.live.scene.BedErr)
		}
		w.undo()
		w.undo()
		if w.session.Job() != before {
			t.Errorf("%s: undo does not bring the job back", g.of.title)
		}
	}
	if n != 4 {
		t.Errorf("%d add-ons, want ladder, climbing end, book ledge and drawers", n)
	}
}

// TestShelves: one is added without a guess at its height, which is then typed; all go in one step.
func TestShelves(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	g := w.bed.sizes.groupOf("bed.shelf.1.height")
	g.addShelf()
	f := w.bed.sizes.fields["bed.shelf.3.height"]
	if len(w.session.Job().Bed.Shelves) != 3 || f == nil || w.win.Canvas().Focused() != f.Focusable() || len(g.refused) != 1 {
		t.Fatalf("%d shelves, %d refusals", len(w.session.Job().Bed.Shelves), len(g.refused))
	}
	choose(t, w, "bed.shelf.3.height", "7 ft")
	if w.live.scene.Bed == nil || w.session.Job().Bed.Shelves[2].Height != 84*length.Inch {
		t.Errorf("the third shelf: %v", w.live.scene.BedErr)
	}
	test.Tap(g.check)
	if len(w.session.Job().Bed.Shelves) != 0 {
		t.Error("the shelves stay")
	}
	w.undo()
	if len(w.session.Job().Bed.Shelves) != 3 {
		t.Error("undo does not bring all back")
	}
}

// TestWhatIsTakenIsShown: where nothing is chosen a field shows in grey what is taken: 5-1/2 in of a 1x6 for a guardrail (PS 20), 24 in for the
// book ledge, and what makes 13 slats of 3-1/2 in fill 75-3/4 in: (75-3/4 - 13 x 3-1/2) / 14 = 2.16, 2-3/16 in.
func TestWhatIsTakenIsShown(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	s := w.bed.sizes
	for _, c := range [][3]string{
		{"bed.guard.board", "", "1x6"}, {"bed.books.long", "", `2' 0"`}, {"bed.upper.slat_gap", "", `2-3/16"`}, {"bed.drawers.casters", "", "none"},
	} {
		choose(t, w, c[0], c[1])
		if f := s.fields[c[0]]; f.Text() != "" || f.Hint() != c[2] {
			t.Errorf("%s: %q, in grey %q, want %q", c[0], f.Text(), f.Hint(), c[2])
		}
	}
	if got := s.fields["bed.guard.board"].Aside(); got != `3/4" x 5-1/2"` {
		t.Errorf("a 1x6 is %q", got)
	}
}

// TestFold: a group opens and folds, all fold at once, and a jump opens the one it goes to.
func TestFold(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	s := w.bed.sizes
	s.foldAll()
	if s.anyOpen() || len(s.inner.Objects) != len(s.groups) {
		t.Fatalf("%d things are shown of %d groups", len(s.inner.Objects), len(s.groups))
	}
	w.jump("bed.books.long")
	if f := s.fields["bed.books.long"]; w.win.Canvas().Focused() != f.Focusable() || !s.groupOf("bed.books.long").open {
		t.Error("the jump goes nowhere")
	}
	test.Tap(s.groupOf("bed.books.long").head)
	if s.anyOpen() {
		t.Error("the group does not fold")
	}
}

// TestWordsAndTicks: a word is chosen by click and by key, a tick by Space.
func TestWordsAndTicks(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	var heads []*bedCell
	for _, g := range bedGroups {
		for _, row := range g.rows {
			for i := range row {
				if row[i].kind == chosenWord {
					heads = append(heads, &row[i])
				}
			}
		}
	}
	if len(heads) < 4 {
		t.Fatalf("%d choices", len(heads))
	}
	c := w.bed.sizes.cell("bed.upper.head", "Decks", *heads[0]).(fyne.Focusable)
	c.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	if w.session.Job().Bed.Upper.Head != bunk.Right {
		t.Errorf("the pillow is at the %s end", w.session.Job().Bed.Upper.Head)
	}
	tick := w.bed.sizes.cell("bed.guard.open_wall", "Rails", yesNo("open_wall", "Open at wall")).(fyne.Focusable)
	tick.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	if !w.session.Job().Bed.Guard.OpenWall {
		t.Error("Space does not tick")
	}
}

// TestTurnTheBed: dragging and keys turn the view from a corner, and nothing else.
func TestTurnTheBed(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	b := w.bed
	sides, start, job := b.sides.Drawing().Dump(), b.corner.Drawing().Dump(), w.session.Job()
	b.corner.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: fyne.NewPos(200, 200)}, Dragged: fyne.NewDelta(-100, 50)})
	b.corner.DragEnd()
	if got := b.turning; got.turn != fromCorner.turn+40 || got.tilt != fromCorner.tilt+20 {
		t.Errorf("turned to %g, tilted to %g", got.turn, got.tilt)
	}
	if b.corner.Drawing().Dump() == start || b.sides.Drawing().Dump() != sides || w.session.Job() != job {
		t.Error("dragging does not turn, or does more")
	}
	for range 200 {
		b.key(&fyne.KeyEvent{Name: fyne.KeyDown})
		b.key(&fyne.KeyEvent{Name: fyne.KeyLeft})
	}
	if b.turning.tilt != mostTilt || b.turning.turn <= -180 || b.turning.turn > 180 {
		t.Errorf("turned to %g, tilted to %g", b.turning.turn, b.turning.tilt)
	}
	b.key(&fyne.KeyEvent{Name: fyne.KeyHome})
	if b.corner.Drawing().Dump() != start {
		t.Error("Home does not bring it back")
	}
}

// TestDragALevel: the upper deck is dragged on the story stick of either stage. While the hand moves the bed and its answers follow and the
// job stays; letting go is one edit, Escape none.
func TestDragALevel(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	for _, l := range []*stickLevels{w.bed.levels, w.place.levels} {
		before := w.session.Job()
		at := middleOf(t, l.stick.Drawing(), "upper.slat")
		k := l.stick.Drawing().Scale
		pull := func(end bool) {
			l.stick.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: at}, Button: desktop.MouseButtonPrimary})
			for range 8 {
				l.stick.Dragged(&fyne.DragEvent{PointEvent: fyne.PointEvent{Position: at}, Dragged: fyne.NewDelta(0, -1)})
			}
			if end {
				l.stick.DragEnd()
			}
		}
		pull(false)
		want := (before.Bed.Upper.Height + length.FromMM(float64(render.Px(8))/k)).Round(length.Inch/8, length.Nearest)
		if got := w.live.scene.Job.Bed.Upper.Height; w.session.Job() != before || got != want || w.live.scene.Bed.Upper.Top != want.MM() {
			t.Errorf("while the hand moves the deck is at %v, want %v", got, want)
		}
		l.giveUp()
		l.stick.DragEnd()
		if w.session.Job() != before || w.live.scene.Job != before {
			t.Error("giving up leaves the deck where it was dragged")
		}
		pull(true)
		if w.session.Job().Bed.Upper.Height != want || w.session.UndoName() != "Move the upper deck" {
			t.Errorf("the deck is at %v, undo %q", w.session.Job().Bed.Upper.Height, w.session.UndoName())
		}
		w.undo()
		if w.session.Job() != before {
			t.Error("one undo does not bring it back")
		}
	}
}

// TestPartsAreLit: a field lights its parts, and so does a click on one.
func TestPartsAreLit(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	dark := w.bed.corner.Drawing().Dump()
	w.bed.sizes.jump("bed.guard.top")
	if d := w.bed.corner.Drawing().Dump(); d == dark || !strings.Contains(d, `"guard.front.1" lit`) {
		t.Error("the guardrail is not lit")
	}
	w.win.Canvas().Unfocus()
	if w.bed.corner.Drawing().Dump() != dark {
		t.Error("it stays lit")
	}
	at := middleOf(t, w.bed.corner.Drawing(), "drawer.1.front.1")
	w.bed.corner.Tapped(&fyne.PointEvent{Position: at})
	if w.bed.lit == "" || w.bed.corner.Drawing().Dump() == dark || w.status.place == "" {
		t.Error("a click lights nothing")
	}
}

// TestPartsList: the list that is copied and the one that is saved hold every board.
func TestPartsList(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	w.partsList()
	if w.win.Canvas().Overlays().Top() == nil {
		t.Error("no list is shown")
	}
	w.copyParts()
	if text := w.app.Clipboard().Content(); !strings.Contains(text, "side rail") || !strings.HasPrefix(text, "count") {
		t.Errorf("copied: %.80q", text)
	}
	path := filepath.Join(t.TempDir(), "parts.csv")
	w.keepAt(w.partsSaving(), path)
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	for _, p := range w.bed.bed().Parts {
		if !strings.Contains(string(data), p.ID) {
			t.Errorf("%s is not in the list", p.ID)
		}
	}
	w.keepAt(w.partsSaving(), filepath.Join(t.TempDir(), "no", "such", "folder.csv"))
	if w.banner.shown("save") == "" {
		t.Error("nothing says that it was not saved")
	}
}

// TestEveryKeyOfTheBedHasAField: whatever a file may say of the bed can be chosen here, but names of mattresses and places of single screws.
func TestEveryKeyOfTheBedHasAField(t *testing.T) {
	w := openedBed(t, "town-house.toml")
	left := map[string]bool{"bed.upper.mattress": true, "bed.lower.mattress": true, "bed.shelf.screw_at": true, "bed.shelf.cleat_long": true,
		"bed.shelf.fastener": true, "bed.shelf.fastener_long": true, "bed.note": true}
	shown := map[string]bool{}
	for _, g := range w.bed.sizes.groups {
		for _, key := range g.keys {
			shown[strings.Replace(key, "bed.shelf.1.", "bed.shelf.", 1)] = true
		}
	}
	for _, row := range jobfile.Keys() {
		if strings.HasPrefix(row.Key, "bed.") && row.Unit != jobfile.Table && row.Unit != "list" && !shown[row.Key] && !left[row.Key] {
			t.Errorf("%s cannot be chosen", row.Key)
		}
	}
}

// TestEverySampleHasItsBed: the stage draws every sample, in both units, large and small.
func TestEverySampleHasItsBed(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml", "half-measured.toml"} {
		w := openedBed(t, name)
		for _, size := range []fyne.Size{usual, least} {
			for range 2 {
				w.win.Resize(size)
				test.Tap(w.tape.units[0])
				if d := w.bed.dump(); !strings.Contains(d, "post") {
					t.Errorf("%s: no post is drawn", name)
				}
				test.Tap(w.tape.units[1])
			}
		}
	}
}
