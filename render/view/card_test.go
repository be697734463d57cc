package view

import (
	"fmt"
	"strings"
	"testing"
	"unicode"

	"bunkwright/furniture/ask"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/room/length"
)

// cardsOf returns every card of a job.
func cardsOf(t testing.TB, j *job.Job) ask.Sheet {
	t.Helper()
	sheet, err := ask.New(j, ask.Options{All: true})
	if err != nil {
		t.Fatal(err)
	}
	return sheet
}

// TestCardsAreClean: every card of every sample, on a narrow phone and on paper, with a shape and without.
func TestCardsAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, _ := asked(t, &j)
		for _, c := range cardsOf(t, &j).Cards() {
			for _, o := range []Options{{}, {W: render.Px(360)}, {On: OnPaper, W: cardPicture}, {On: OnPaper, W: cardPointer}} {
				for _, scene := range []*fit.Scene{s, {Job: &j}} {
					cardIsClean(t, fmt.Sprintf("%s, %s, %v wide, paper %v", name, c.Key, o.W, o.On), CardDrawing(scene, c, o), c, o.On)
				}
			}
		}
	}
}

// cardIsClean: what every drawing keeps; no figure, so that no value; the words from and to where something is measured; letters large enough
// to be read on a phone 300 px wide.
func cardIsClean(t *testing.T, at string, d render.Drawing, c ask.Card, on Medium) {
	t.Helper()
	if (c.Shown.View == ask.NoView) != (len(d.Marks) == 0) {
		t.Errorf("%s: %d marks", at, len(d.Marks))
	}
	if err := d.Check(); err != nil {
		t.Errorf("%s: %v", at, err)
	}
	least := render.Px(16)
	if on == OnPaper {
		least = render.Pt(7)
	}
	for _, m := range d.Marks {
		if b := m.Bounds(); m.Kind == render.KindText && !d.Page().Holds(b) {
			t.Errorf("%s: %q reaches out of the drawing", at, m.Text.Words)
		}
		if m.Kind == render.KindText && (m.Text.Size < least-1e-9 || strings.ContainsFunc(m.Text.Words, unicode.IsDigit)) {
			t.Errorf("%s: %q in %v", at, m.Text.Words, m.Text.Size)
		}
	}
	if measured := c.Shown.From.At != ask.Nowhere; measured && (!has(d, "from (hook)") || !has(d, "to")) {
		t.Errorf("%s: %q", at, texts(d.Marks))
	}
}

// tapeOf is what the tape of a drawing covers.
func tapeOf(d render.Drawing) render.Rect {
	var marks []render.Mark
	for _, m := range d.Marks {
		if m.Ref == "tape" {
			marks = append(marks, m)
		}
	}
	return render.Bounds(marks)
}

// TestTapeGoesFromWallToWall: by hand for a drawing of 300 by 186 px with letters of 16 px: the wall stands 2.1 letters from the left and the
// right edge, so the tape goes from 33.6 to 266.4 px, but for half a pen.
func TestTapeGoesFromWallToWall(t *testing.T) {
	j := sample(t, "half-measured.toml")
	s, _ := asked(t, &j)
	sheet := cardsOf(t, &j)
	c, _ := sheet.Card("wall.AB.length")
	d := CardDrawing(s, c, Options{W: render.Px(300), H: render.Px(186)})
	r := tapeOf(d)
	for _, got := range [][2]render.Paper{{r.Min.X, render.Px(33.6)}, {r.Max.X, render.Px(266.4)}} {
		if off := got[0] - got[1]; off > render.Px(2) || off < -render.Px(2) {
			t.Errorf("tape ends at %v, want %v", got[0], got[1])
		}
	}
	high, _ := sheet.Card("wall.AB.high")
	low, _ := sheet.Card("wall.AB.low")
	if a, b := tapeOf(CardDrawing(s, high, Options{})), tapeOf(CardDrawing(s, low, Options{})); a.Max.Y >= r.Min.Y || b.Min.Y <= r.Max.Y {
		t.Errorf("high %v over middle %v over low %v", a, r, b)
	}
}

// TestDrawingsShowNoReading: another first value of what is asked draws the same where the wall alone is shown.
func TestDrawingsShowNoReading(t *testing.T) {
	j := sample(t, "attic.toml")
	s, _ := asked(t, &j)
	c, _ := cardsOf(t, &j).Card("wall.AB.baseboard_deep")
	before := CardDrawing(s, c, Options{}).Dump()
	for i := range j.Room.Walls {
		j.Room.Walls[i].BaseDeep = nil
	}
	if CardDrawing(s, c, Options{}).Dump() != before {
		t.Error("a baseboard is drawn by what was read")
	}
}

// TestAskingSheetsAreClean: cards and tables of every sample, all that can be asked, on both papers.
func TestAskingSheetsAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		for _, paper := range []PaperSize{Letter, A4} {
			o := SheetOptions{Paper: paper, Unit: unitOf(&j), Date: "June 9, 2027"}
			bare := &fit.Scene{Job: &j}
			for kind, sheets := range map[string][]render.Drawing{"cards": AskCards(bare, cardsOf(t, &j), o), "table": AskTable(bare, cardsOf(t, &j), o)} {
				at := fmt.Sprintf("%s, %s, paper %d", name, kind, paper)
				pagesAreWhole(t, at, sheets, o)
				everyCardIsThere(t, at, sheets, cardsOf(t, &j))
			}
		}
	}
}

// pagesAreWhole: within what printers print, no text under 7 points, the caution on every page.
func pagesAreWhole(t *testing.T, at string, sheets []render.Drawing, o SheetOptions) {
	t.Helper()
	short, long := o.Paper.Size()
	for i, sh := range sheets {
		if err := sh.Check(); err != nil {
			t.Errorf("%s, page %d: %v", at, i+1, err)
		}
		if sh.W != short || sh.H != long || !sh.Page().Grow(-6.35).Holds(sh.Bounds()) { // what common printers leave free, 1/4 in, from memory
			t.Errorf("%s, page %d: %v on %v x %v", at, i+1, sh.Bounds(), sh.W, sh.H)
		}
		for _, m := range sh.Marks {
			if m.Kind == render.KindText && m.Text.Size < render.Pt(7)-1e-9 {
				t.Errorf("%s, page %d: %q in %v", at, i+1, m.Text.Words, m.Text.Size)
			}
		}
		all := strings.Join(texts(sh.Marks), " ")
		for _, words := range []string{fmt.Sprintf("%d of %d", i+1, len(sheets)), o.Date, "A planning help, not an approval", "reply to sheet"} {
			if !strings.Contains(all, words) {
				t.Errorf("%s, page %d: no %q", at, i+1, words)
			}
		}
	}
}

// everyCardIsThere: each card has words of its own on some page.
func everyCardIsThere(t *testing.T, at string, sheets []render.Drawing, sheet ask.Sheet) {
	t.Helper()
	refs := map[string]bool{}
	for _, sh := range sheets {
		for _, m := range sh.Marks {
			if m.Kind == render.KindText {
				refs[m.Ref] = true
			}
		}
	}
	for _, c := range sheet.Cards() {
		if !refs[c.Key] {
			t.Errorf("%s: %s is not there", at, c.Key)
		}
	}
}

// TestTableIsOnePage: everything that the job of three days ago still wants stands on one page, as it does for a room read once.
func TestTableIsOnePage(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		sheet, err := ask.New(&j, ask.Options{})
		if err != nil {
			t.Fatal(err)
		}
		if pages := AskTable(&fit.Scene{Job: &j}, sheet, SheetOptions{Unit: length.Inches}); len(pages) > 1 {
			t.Errorf("%s: %d pages for %d cards", name, len(pages), len(sheet.Cards()))
		}
	}
}

// TestGoldenCards: cards that somebody has looked at, one of each kind of drawing.
func TestGoldenCards(t *testing.T) {
	j := sample(t, "town-house.toml")
	s, _ := asked(t, &j)
	sheet := cardsOf(t, &j)
	for _, key := range []string{"wall.AB.length", "window.garden.far", "fan.ceiling.out", "diagonal.AC.length", "floor.thick"} {
		c, ok := sheet.Card(key)
		if !ok {
			t.Fatalf("no card %s", key)
		}
		compare(t, "testdata/card-"+strings.ReplaceAll(key, ".", "-")+".golden", CardDrawing(s, c, Options{}))
	}
}
