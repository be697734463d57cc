package view

import (
	"path/filepath"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/length"
)

// bedAloneGoldens are views of the bed alone that somebody has looked at as pictures before their dumps were kept.
var bedAloneGoldens = []struct {
	name, sample string
	o            Options
	draw         func(*bunk.Bed, Options) render.Drawing
}{
	{"attic-front", "attic.toml", Options{Unit: length.Millimetres, W: render.Px(1200), H: render.Px(800)}, BedFront},
	{"attic-right-end-paper", "attic.toml", Options{On: OnPaper, Unit: length.Millimetres, Scale: 1.0 / 15}, rightEnd},
	{"attic-above", "attic.toml", Options{Unit: length.Millimetres, W: render.Px(1200), H: render.Px(800)}, BedAbove},
	{"town-house-left-end-paper", "town-house.toml", Options{On: OnPaper, Unit: length.Inches, Scale: 1.0 / 15}, leftEnd},
	{"town-house-corner", "town-house.toml", Options{Unit: length.Inches, W: render.Px(780), H: render.Px(400), Names: true}, fromCorner},
	{"town-house-above", "town-house.toml", Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}, BedAbove},
}

func fromCorner(b *bunk.Bed, o Options) render.Drawing { return BedCorner(b, 35, 25, o) }

func TestBedAloneGoldenDumps(t *testing.T) {
	for _, g := range bedAloneGoldens {
		compare(t, filepath.Join("testdata", g.name+".golden"), g.draw(builtSample(t, g.sample), g.o))
	}
}

// TestNoLineThroughFigures: on every sample bed no extension line runs through the words of a dimension, whichever row they stand in.
func TestNoLineThroughFigures(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml", "half-measured.toml"} {
		b := builtSample(t, name)
		for _, o := range []Options{{W: render.Px(1200), H: render.Px(800)}, {W: render.Px(620), H: render.Px(420), Mirror: true}, {On: OnPaper, Scale: 1.0 / 15, Unit: length.Inches}} {
			for _, d := range []render.Drawing{BedFront(b, o), leftEnd(b, o), rightEnd(b, o), BedAbove(b, o)} {
				struckThrough(t, name, d, o.Style().Extension)
			}
		}
	}
}

// struckThrough reports every line of a pen that runs level or upright through words. Leaders end at words and slant.
func struckThrough(t *testing.T, name string, d render.Drawing, pen render.Pen) {
	t.Helper()
	words := boxesOf(d.Marks).words
	for _, m := range d.Marks {
		if m.Kind != render.KindStroke || m.Pen != pen || len(m.Path)%2 != 0 {
			continue
		}
		for i := 0; i < len(m.Path); i += 2 {
			a, b := m.Path[i].To, m.Path[i+1].To
			for _, w := range words {
				if (a.X == b.X || a.Y == b.Y) && m.Ref == "" && w.Grow(-0.1).Overlaps(render.Around(a, b).Grow(0.01)) {
					t.Errorf("%s, %s: a line from %v to %v runs through the words at %v", name, d.Title, a, b, w)
				}
			}
		}
	}
}
