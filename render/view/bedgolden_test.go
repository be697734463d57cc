package view

import (
	"path/filepath"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
)

// bedGoldens are the section, the stick and the views of the bed that somebody has looked at as pictures before their dumps were kept.
var bedGoldens = []struct {
	name, sample string
	o            Options
	draw         func(*fit.Scene, []fit.Answer, Options) render.Drawing
}{
	{"town-house-section", "town-house.toml", Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}, Section},
	{"attic-section-paper", "attic.toml", Options{On: OnPaper, Unit: length.Millimetres, Scale: 1.0 / 20}, Section},
	{"basement-section", "basement.toml", Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}, Section},
	{"town-house-stick", "town-house.toml", Options{Unit: length.Inches, W: render.Px(208), H: render.Px(800)}, Stick},
	{"l-shaped-stick-paper", "l-shaped.toml", Options{On: OnPaper, Unit: length.Millimetres, Scale: 1.0 / 20}, Stick},
	{"town-house-front", "town-house.toml", Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}, ofBed(BedFront)},
	{"town-house-right-end", "town-house.toml", Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}, ofBed(rightEnd)},
	{"l-shaped-above-paper", "l-shaped.toml", Options{On: OnPaper, Unit: length.Millimetres, Scale: 1.0 / 15}, ofBed(BedAbove)},
	{"basement-views", "basement.toml", Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}, ofBed(fromRight)},
}

func fromRight(b *bunk.Bed, o Options) render.Drawing { return BedViews(b, bunk.Right, o) }

func TestBedGoldenDumps(t *testing.T) {
	for _, g := range bedGoldens {
		j := sample(t, g.sample)
		s, answers := asked(t, &j)
		compare(t, filepath.Join("testdata", g.name+".golden"), g.draw(s, answers, g.o))
	}
}
