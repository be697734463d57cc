package view

import (
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/samples"
)

func askedSample(t *testing.T, name string) (*fit.Scene, []fit.Answer) {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	f, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	s, answers, err := fit.Answers(&f.Job)
	if err != nil {
		t.Fatal(err)
	}
	return s, answers
}

// TestHeightsByHand: the town-house bed sinks 1/4 in into the carpet. Upper mattress 55 + 6 - 1/4 = 60-3/4, rail 66-3/4 - 1/4 = 66-1/2,
// lower mattress 13 + 7 - 1/4 = 19-3/4, Ida's head 19-3/4 + 25-1/4 = 45, upper bed's underside 52-3/4 - 1/4 = 52-1/2, rail over the
// mattress 66-3/4 - 61 = 5-3/4; under the slats (55 - 3/4 - 1/4 = 54) Ida has 54 - 45 = 9 over her head.
func TestHeightsByHand(t *testing.T) {
	s, answers := askedSample(t, "town-house.toml")
	o := Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}
	for _, c := range []struct {
		view  render.Drawing
		words []string
	}{
		{Stick(s, answers, o), []string{`5' 0-3/4"`, `5' 6-1/2"`, `1' 7-3/4"`, `3' 9"`, `4' 4-1/2"`, `(7' 0-1/2")`, `9" to spare`, "Maren", "Ida"}},
		{Section(s, answers, o), []string{`5-3/4"`, `9" to spare`, `Ida: mattress 7"`, `Maren: mattress 6"`}},
	} {
		for _, w := range c.words {
			if !has(c.view, w) {
				t.Errorf("%s: no %q among %q", c.view.Title, w, texts(c.view.Marks))
			}
		}
	}
}

// TestEverySampleIsDrawn draws every sample both ways, in both media; what is not known is said in words, and nothing is drawn that the
// outputs would refuse.
func TestEverySampleIsDrawn(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml", "basement.toml", "l-shaped.toml", "half-measured.toml"} {
		s, answers := askedSample(t, name)
		for _, on := range []Medium{OnScreen, OnPaper} {
			o := Options{On: on, Unit: length.Millimetres, W: 250, H: 180}
			for _, d := range []render.Drawing{Section(s, answers, o), Stick(s, answers, o)} {
				if err := d.Check(); err != nil {
					t.Errorf("%s: %s: %v", name, d.Title, err)
				}
				if len(d.Marks) < 20 {
					t.Errorf("%s: %s has only %d marks", name, d.Title, len(d.Marks))
				}
			}
		}
	}
}
