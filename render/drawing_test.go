package render

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"
)

// bench returns a small drawing with one thing upon another.
func bench() Drawing {
	d := Drawing{Title: "bench", W: 100, H: 50}
	d.Add(Fill("floor", Box(Rect{Max: Point{100, 50}}), InkPanel))
	d.Add(Outlined("bed.post.head", Box(Rect{Point{10, 10}, Point{20, 40}}), InkBoard, Pen{Width: 0.5})...)
	d.Add(Stroke("fan", Circle(Point{60, 25}, 10), Pen{Width: 0.2}))
	d.Add(Stroke("bed.rail", Line(Point{10, 12}, Point{50, 12}), Pen{Width: 0.2, Ink: InkNotFit}))
	d.Add(Words("bed.post.head", Lettering{3, Regular}.Text(Point{12, 25}, "post", InkMain, Left)))
	d.Add(SignDoesNotFit.At("bed.rail", Point{40, 20}, 4)...)
	d.Add(Fill("", Box(Rect{Point{80, 0}, Point{90, 10}}), InkWhite))
	return d
}

func TestPick(t *testing.T) {
	for _, c := range []struct {
		at        Point
		tolerance Paper
		want      string
	}{
		{Point{15, 24.5}, 0, "bed.post.head floor"},            // the words, then the board under them
		{Point{15, 12.5}, 0.5, "bed.rail bed.post.head floor"}, // the line near, drawn last
		{Point{15, 13}, 0.5, "bed.post.head floor"},            // 1.0 away less half the pen is too far
		{Point{60, 25}, 1, "floor"},                            // within the circle, not on it
		{Point{70.3, 25}, 0.3, "fan floor"},
		{Point{67.07, 17.93}, 0.01, "fan floor"}, // 10 mm from its middle at 45 degrees
		{Point{40, 20}, 0, "bed.rail floor"},
		{Point{85, 5}, 0, "floor"}, // what shows nothing hides nothing
		{Point{100.5, 25}, 1, "floor"},
		{Point{120, 25}, 1, ""},
	} {
		if got := strings.Join(bench().Pick(c.at, c.tolerance), " "); got != c.want {
			t.Errorf("at %v within %v: got %q, want %q", c.at, c.tolerance, got, c.want)
		}
	}
}

func TestLight(t *testing.T) {
	d := bench()
	before := d.Dump()
	lit := d.Light(Pen{Width: 0.7}, "bed.post", "fan", "bed.ra")
	if d.Dump() != before {
		t.Error("the drawing itself changed")
	}
	var changed []string
	for i, m := range lit.Marks {
		if m.String() != d.Marks[i].String() {
			changed = append(changed, m.String())
		}
	}
	want := []string{
		`fill "bed.post.head" lit M 10 10 L 20 10 L 20 40 L 10 40 Z`,
		`stroke "bed.post.head" 0.7 main M 10 10 L 20 10 L 20 40 L 10 40 Z`,
		strings.Replace(d.Marks[3].String(), " 0.2 ", " 0.7 ", 1),
	}
	if !slices.Equal(changed, want) {
		t.Errorf("got\n%s", strings.Join(changed, "\n"))
	}
	rail := d.Light(Pen{Width: 0.7}, "bed.rail")
	if got := rail.Marks[4].Pen; got.Width != 0.4 || got.Ink != InkNotFit {
		t.Errorf("an open line is lit as %v", got)
	}
	if got := rail.Marks[6].Ink; got != InkNotFit {
		t.Errorf("a sign is lit in %v", got)
	}
}

func TestUnder(t *testing.T) {
	for _, c := range []struct {
		ref, of string
		want    bool
	}{
		{"bed.post", "bed.post", true}, {"bed.post.head", "bed.post", true}, {"bed.post", "bed", true},
		{"bed.post", "bed.po", false}, {"bed", "bed.post", false}, {"", "", false}, {"bed", "", false},
	} {
		if Under(c.ref, c.of) != c.want {
			t.Errorf("%q under %q: want %v", c.ref, c.of, c.want)
		}
	}
}

func TestCheck(t *testing.T) {
	if err := bench().Check(); err != nil {
		t.Fatal(err)
	}
	nan := Paper(math.NaN())
	for name, m := range map[string]Mark{
		"no kind":      {},
		"no pen":       Stroke("", Line(Point{}, Point{1, 1}), Pen{}),
		"fine dashes":  Stroke("", Line(Point{}, Point{1, 1}), dashed(1, InkMain, 1e-9, 1e-9)),
		"no number":    Fill("", Box(Rect{Max: Point{nan, 1}}), InkMain),
		"no move":      Fill("", Path{}.Line(Point{}), InkMain),
		"after close":  Fill("", Box(Rect{}).Line(Point{}), InkMain),
		"unknown ink":  Fill("", Box(Rect{}), inks),
		"no size":      Words("", Text{Words: "x"}),
		"unknown face": Words("", Text{Words: "x", Size: 3, Face: faces}),
		"text nowhere": Words("", Lettering{3, Bold}.Text(Point{nan, 0}, "x", InkMain, Left)),
	} {
		d := bench()
		d.Add(m)
		var fault *MarkError
		if err := d.Check(); !errors.As(err, &fault) || fault.Index != len(d.Marks)-1 {
			t.Errorf("%s: got %v", name, err)
		}
	}
	if err := (Drawing{W: 1}).Check(); !errors.Is(err, ErrEmptyPage) {
		t.Errorf("no height: got %v", err)
	}
}

func TestCheckNamesMissingLetters(t *testing.T) {
	d := bench()
	d.Add(Words("", Lettering{3, Regular}.Text(Point{}, "⌀ 3", InkMain, Left)))
	var missing *MissingError
	if err := d.Check(); !errors.As(err, &missing) || string(missing.Runes) != "⌀" {
		t.Fatalf("got %v", err)
	}
	if err := d.Substituted().Check(); err != nil {
		t.Error(err)
	}
	if d.Marks[len(d.Marks)-1].Text.Words != "⌀ 3" {
		t.Error("the drawing itself changed")
	}
}

func TestShiftAndBounds(t *testing.T) {
	d := bench()
	moved := Bounds(Shift(d.Marks, Point{7, -3}))
	b := d.Bounds()
	near(t, "left", moved.Min.X, b.Min.X+7, 1e-9)
	near(t, "bottom", moved.Max.Y, b.Max.Y-3, 1e-9)
	if !Bounds(nil).Empty() {
		t.Error("nothing has bounds")
	}
	if got := d.Faces(); !slices.Equal(got, []Face{Regular}) {
		t.Errorf("faces %v", got)
	}
}
