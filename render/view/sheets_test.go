package view

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/length"
)

// TestSheetsAreClean: every sheet of every sample in both papers, both ways up and both units.
func TestSheetsAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, answers := asked(t, &j)
		for _, paper := range []PaperSize{Letter, A4} {
			for _, portrait := range []bool{false, true} {
				for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
					o := SheetOptions{Paper: paper, Portrait: portrait, Unit: unit, Date: "June 9, 2027"}
					sheetsAreClean(t, fmt.Sprintf("%s, paper %d, upright %v, %v", name, paper, portrait, unit), Sheets(s, answers, o), o)
				}
			}
		}
	}
}

func sheetsAreClean(t *testing.T, name string, sheets []render.Drawing, o SheetOptions) {
	t.Helper()
	short, long := o.Paper.Size()
	for i, sh := range sheets {
		at := fmt.Sprintf("%s, sheet %d: %s", name, i+1, sh.Title)
		clean(t, at, sh, OnPaper)
		if w, h := sh.W, sh.H; min(w, h) != short || max(w, h) != long {
			t.Errorf("%s: %v x %v", at, w, h)
		}
		if inner := sh.Page().Grow(-6.35); !inner.Holds(sh.Bounds()) { // what common printers leave free, 1/4 in, from memory
			t.Errorf("%s: reaches to %v", at, sh.Bounds())
		}
		number := fmt.Sprintf("%d of %d", i+1, len(sheets))
		all := strings.Join(texts(sh.Marks), " ")
		for _, words := range []string{number, "June 9, 2027", "A planning help, not an approval"} {
			if !strings.Contains(all, words) {
				t.Errorf("%s: no %q", at, words)
			}
		}
	}
}

// TestLinesToMeasure: the outer edges of the lines to measure are as far apart as they say: 2 in and 4 in on Letter (50.8 and 101.6 mm), 50
// and 100 mm on A4.
func TestLinesToMeasure(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	for paper, want := range map[PaperSize][2]float64{Letter: {101.6, 50.8}, A4: {100, 50}} {
		sheets := Sheets(s, answers, SheetOptions{Paper: paper, Unit: length.Millimetres})
		var got []float64
		for _, m := range under(sheets[0], "check") {
			if m.Kind == render.KindStroke && m.Pen == render.SheetStyle.Cut {
				got = append(got, float64(m.Bounds().W()))
			}
		}
		if len(got) != 2 || math.Abs(got[0]-want[0]) > 1e-6 || math.Abs(got[1]-want[1]) > 1e-6 {
			t.Errorf("paper %d: lines of %v mm, want %v", paper, got, want)
		}
	}
}

// TestLargestUsualScale: a wall of 4000 mm fits the 207 mm beside the column of A4 at 1:25 (160 mm and what stands round it), not at 1:20.
func TestLargestUsualScale(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	sheets := Sheets(s, answers, SheetOptions{Paper: A4, Unit: length.Millimetres})
	if d := sheets[0]; !has(d, "1:25") {
		t.Errorf("scale among %q", texts(d.Marks))
	}
	floor := render.Bounds(under(sheets[0], "floor"))
	if math.Abs(float64(floor.W())-160) > 0.02 || math.Abs(float64(floor.H())-120) > 0.02 {
		t.Errorf("the floor of 4000 x 3000 mm is %v x %v on paper, want 160 x 120", floor.W(), floor.H())
	}
}

// TestEveryAnswerIsPrinted: each question stands once on the sheets with its verdict, an accepted one with the reason, cautions in full on
// the last sheet.
func TestEveryAnswerIsPrinted(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, answers := asked(t, &j)
		sheets := Sheets(s, answers, SheetOptions{Unit: length.Inches})
		var all []string
		for _, sh := range sheets {
			if sh.Title == "Answers" {
				all = append(all, texts(sh.Marks)...)
			}
		}
		text := strings.Join(all, " ")
		for _, a := range answers {
			if n := strings.Count(text, a.Sentence); n != 1 {
				t.Errorf("%s: %q stands %d times on the sheets", name, a.Sentence, n)
			}
			if a.Accepted != "" && !strings.Contains(text, "Accepted by the maker") {
				t.Errorf("%s: no word of accepting %s", name, a.ID)
			}
		}
		last := strings.Join(texts(sheets[len(sheets)-1].Marks), " ")
		for _, c := range fit.Cautions {
			if !strings.Contains(last, c[:30]) {
				t.Errorf("%s: %q is not on the last sheet", name, c)
			}
		}
	}
}

// TestEveryPartIsListed: the counts of the parts list add up to the parts of the bed, and every id stands on it.
func TestEveryPartIsListed(t *testing.T) {
	j := sample(t, "town-house.toml")
	s, answers := asked(t, &j)
	var text string
	for _, sh := range Sheets(s, answers, SheetOptions{Unit: length.Inches}) {
		if sh.Title == "Parts" {
			text += " " + strings.Join(texts(sh.Marks), " ") + " "
		}
	}
	for _, p := range s.Bed.Parts {
		if !strings.Contains(text, " "+p.ID+" ") {
			t.Errorf("%s is not on the list", p.ID)
		}
	}
}

// TestQuantityWords: keys of quantities as a person reads them.
func TestQuantityWords(t *testing.T) {
	for key, want := range map[string]string{
		"wall.AB.length":                "wall A to B",
		"wall.DA.baseboard_deep":        "wall D to A, baseboard depth",
		"diagonal.BD.length":            "B to D, corners",
		"ceiling.main.height.C.height":  "ceiling at C",
		"ceiling.slope.height.knee.out": "ceiling slope at knee, how far out",
		"fan.ceiling.blades":            "fan ceiling, blades",
		"bed.upper.mattress_thick":      "upper mattress thick",
		"wall.CD":                       "wall C to D",
		"wall.shelf":                    "wall shelf",
		"wall.":                         "wall ",
		"ceiling.main":                  "ceiling",
		"":                              "",
	} {
		if got := quantityWords(key); got != want {
			t.Errorf("%s: %q, want %q", key, got, want)
		}
	}
}

// TestReadAgain: what nobody read comes first, then what was read once; what the maker read himself is not asked again.
func TestReadAgain(t *testing.T) {
	j := plainRoom()
	j.Room.Walls[2].Length, j.Room.Walls[1].Length[0].How, j.Room.Windows[0].At = nil, room.Once, nil
	s, answers := asked(t, &j)
	b := &binder{s: s, answers: answers, known: knownOf(s)}
	if got, want := b.readAgain(), []string{"wall C to D", "window garden, place", "wall B to C"}; !slices.Equal(got, want) {
		t.Errorf("read again: %q, want %q", got, want)
	}
}
