package view

import (
	"context"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
	placing "bunkwright/furniture/place"
	"bunkwright/room/length"
)

// compared sets the town house beside itself with the deck lower, on another wall, and without its shelves.
func compared(t *testing.T) (*fit.Scene, []fit.Answer, placing.Comparison) {
	t.Helper()
	j := sample(t, "town-house.toml")
	low, other, bare := j, j, j
	low.Bed.Upper.Height -= 2 * length.Inch
	other.Place.Wall, other.Place.From = "DA", "D"
	bare.Bed.Shelves = nil
	c, err := placing.Compare(context.Background(), []placing.Named{
		{Name: "as it is", Job: &j}, {Name: "deck 2 in lower", Job: &low}, {Name: "at wall D to A", Job: &other}, {Name: "no shelves", Job: &bare},
	})
	if err != nil {
		t.Fatal(err)
	}
	s, answers := asked(t, &j)
	return s, answers, c
}

// TestWaysSheets: the sheets that set ways side by side are as clean as the others on both papers, and name every way.
func TestWaysSheets(t *testing.T) {
	s, answers, c := compared(t)
	for _, paper := range []PaperSize{Letter, A4} {
		o := SheetOptions{Paper: paper, Unit: length.Inches, Date: "June 9, 2027"}
		sheets := WaysSheets(s, answers, &c, o)
		sheetsAreClean(t, "ways", sheets, o)
		all := strings.Join(texts(sheets[0].Marks), " ")
		for _, words := range append(c.Names, "Ways side by side", "Headroom over the upper mattress", "Boards: 1x4", "The same in all: boards of 2x6") {
			if !strings.Contains(all, words) {
				t.Errorf("paper %d: no %q", paper, words)
			}
		}
	}
}

// TestWhoSitsUpPicture: the picture is clean on screen and paper, in both units, lights the deck as it is, and says so where nothing is known.
func TestWhoSitsUpPicture(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		s, _ := asked(t, &j)
		table, err := placing.WhoSitsUp(context.Background(), s, placing.SitOptions{Each: 3})
		if err != nil {
			t.Fatal(err)
		}
		for _, on := range []Medium{OnScreen, OnPaper} {
			for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
				d := WhoSitsUp(&table, Options{On: on, Unit: unit})
				clean(t, name, d, on)
				if table.Wants != "" {
					if !strings.Contains(strings.Join(texts(d.Marks), " "), "Cannot tell yet") {
						t.Errorf("%s: nothing is said", name)
					}
					continue
				}
				if len(under(d, "chosen")) == 0 || len(under(d, "stick")) == 0 {
					t.Errorf("%s: no chosen row or no stick", name)
				}
			}
		}
	}
}

// TestGoldenWays holds both against dumps of drawings that somebody has looked at.
func TestGoldenWays(t *testing.T) {
	s, answers, c := compared(t)
	compare(t, "testdata/town-house-sheet-ways.golden", WaysSheets(s, answers, &c, SheetOptions{Unit: length.Inches, Date: "June 9, 2027"})[0])
	table, err := placing.WhoSitsUp(context.Background(), s, placing.SitOptions{})
	if err != nil {
		t.Fatal(err)
	}
	compare(t, "testdata/town-house-sit-up.golden", WhoSitsUp(&table, Options{}))
}
