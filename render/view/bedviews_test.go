package view

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/samples"
)

func builtSample(t testing.TB, name string) *bunk.Bed {
	t.Helper()
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	f, err := jobfile.Load(data, name)
	if err != nil {
		t.Fatal(err)
	}
	b, err := bunk.Build(f.Job.Bed)
	if err != nil {
		t.Fatal(err)
	}
	return &b
}

// TestBedDimensionsByHand: the town-house bed. Inside 75 + 3/4 long and 38 + 3/4 wide; end members 1-1/2 at each end: 78-3/4 over all;
// post layer and side rail 1-1/2 each on both sides: 44-3/4 wide. Lower rail from 13 - 3/4 - 1-1/2 = 10-3/4 up 5-1/2; upper rail from
// 52-3/4: 36-1/2 between; guard 5-1/2 under 66-3/4: gap 3; way in 14-1/2; treads 55 / 5 = 11 apart.
func TestBedDimensionsByHand(t *testing.T) {
	b := builtSample(t, "town-house.toml")
	o := Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}
	for _, c := range []struct {
		view  render.Drawing
		words []string
	}{
		{BedFront(b, o), []string{`6' 6-3/4"`, `6' 3-3/4"`, `5' 6-3/4"`, `10-3/4"`, `3' 0-1/2"`, `3"`, `1' 2-1/2"`, `11"`}},
		{BedEnd(b, bunk.Right, o), []string{`3' 8-3/4"`, `3' 2-3/4"`, `5' 6-3/4"`}},
		{BedEnd(b, bunk.Left, o), []string{`3' 8-3/4"`, `10-3/4"`}},
		{BedAbove(b, o), []string{`6' 3-3/4"`, `3' 2-3/4"`, `2-3/16"`}}, // (75-3/4 - 13 x 3-1/2) / 14 = 2.161
	} {
		for _, w := range c.words {
			if !has(c.view, w) {
				t.Errorf("%s: no %s among %q", c.view.Title, w, texts(c.view.Marks))
			}
		}
	}
}

// TestUnevenEndsByHand: the bed of the L-shaped room has its ladder at the right end. Inside 1875 + 16 = 1891; left end member 42, right end
// member and the uprights of the way in 42 + 42 = 84: 2017 over all; way in 390; treads 1400 / 5 = 280 apart. 13 slats of 90 leave
// (1891 - 13 x 90) / 14 = 51.5 to each gap.
func TestUnevenEndsByHand(t *testing.T) {
	b := builtSample(t, "l-shaped.toml")
	o := Options{Unit: length.Millimetres, W: render.Px(1200), H: render.Px(800)}
	for _, c := range []struct {
		view  render.Drawing
		words []string
	}{
		{BedAbove(b, o), []string{"42", "1891", "84", "2017", "52"}},
		{BedEnd(b, bunk.Right, o), []string{"390", "280", "way in"}},
		{BedFront(b, o), []string{"2017", "90"}},
	} {
		for _, w := range c.words {
			if !has(c.view, w) {
				t.Errorf("%s: no %s among %q", c.view.Title, w, texts(c.view.Marks))
			}
		}
	}
}

// TestOneScale: the three views drawn together show the bed's length equally long from the front and from above.
func TestOneScale(t *testing.T) {
	b := builtSample(t, "town-house.toml")
	d := BedViews(b, bunk.Right, Options{On: OnPaper, Scale: 1.0 / 16, Unit: length.Inches})
	want := b.Long / 16
	n := 0
	for i, m := range d.Marks {
		if m.Kind != render.KindText || m.Text.Words != `6' 6-3/4"` {
			continue
		}
		n++
		line := render.Rect{}
		for _, o := range d.Marks[:i] { // the line of this dimension stands at the height of its words
			if b := o.Path.Bounds(); o.Kind == render.KindStroke && b.H() == 0 && b.W() > line.W() && m.Text.Bounds().Grow(1).Contains(render.Point{X: m.Text.At.X, Y: b.Min.Y}) {
				line = b
			}
		}
		over := 2 * render.SheetStyle.Over // the line goes on a little beyond its ticks
		if got := float64(line.W() - over); math.Abs(got-want) > 0.01 {
			t.Errorf("6 ft 6-3/4 in is %.2f mm long on paper, want %.2f", got, want)
		}
	}
	if n != 2 {
		t.Errorf("the length stands %d times, want 2", n)
	}
}

// TestEveryPartIsDrawn: each board of the bed has its ref in one of the views, so that it can be pointed at.
func TestEveryPartIsDrawn(t *testing.T) {
	b := builtSample(t, "l-shaped.toml")
	refs := map[string]bool{}
	for _, d := range []render.Drawing{BedFront(b, Options{}), BedEnd(b, bunk.Left, Options{}), BedEnd(b, bunk.Right, Options{}), BedAbove(b, Options{})} {
		for _, m := range d.Marks {
			refs[m.Ref] = true
		}
	}
	for _, p := range b.Parts {
		if p.Role == bunk.RoleSlat || p.Role == bunk.RolePost || p.Role == bunk.RoleTread {
			if !refs[p.ID] {
				t.Errorf("%s is in no view", p.ID)
			}
		}
	}
}

// TestMirroredBedIsItsMirrorImage: mirrored, the same dimensions stand in the other order, and what is seen from the left end is seen from
// the right.
func TestMirroredBedIsItsMirrorImage(t *testing.T) {
	b := builtSample(t, "town-house.toml")
	o := Options{Unit: length.Inches, W: render.Px(1200), H: render.Px(800)}
	m := o
	m.Mirror = true
	if !has(BedFront(b, m), `1' 2-1/2"`) || !has(BedAbove(b, m), `2-3/16"`) {
		t.Error("a mirrored bed lost a dimension")
	}
	climbing := func(d render.Drawing) int {
		n := 0
		for _, mark := range d.Marks {
			if mark.Kind == render.KindFill && strings.HasPrefix(mark.Ref, "climb") {
				n++
			}
		}
		return n
	}
	plain, mirrored := climbing(BedEnd(b, bunk.Right, o)), climbing(BedEnd(b, bunk.Left, m))
	if plain == 0 || plain != mirrored {
		t.Errorf("%d climbing slats from the right end, %d from the left of the mirrored bed", plain, mirrored)
	}
}

// TestEveryTreadIsSeenFromAbove: a leaning ladder shows all its treads from above, as on the plan: the chamber's has five.
func TestEveryTreadIsSeenFromAbove(t *testing.T) {
	j := odd(t, "chamber")
	s, _ := asked(t, &j)
	treads := map[string]bool{}
	for _, m := range BedAbove(s.Bed, Options{}).Marks {
		for _, p := range s.Bed.Parts {
			if p.ID == m.Ref && p.Role == bunk.RoleTread && m.Kind == render.KindFill {
				treads[m.Ref] = true
			}
		}
	}
	if len(treads) != 5 {
		t.Errorf("%d treads from above, want 5", len(treads))
	}
}
