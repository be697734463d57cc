package render

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func near(t *testing.T, what string, got, want, tolerance Paper) {
	t.Helper()
	if !(math.Abs(float64(got-want)) <= float64(tolerance)) {
		t.Errorf("%s: got %v, want %v", what, got, want)
	}
}

// TestDigitsShareAWidth: columns of figures line up only in such a face (design text, "Ink").
func TestDigitsShareAWidth(t *testing.T) {
	for f := range faces {
		for _, r := range "123456789" {
			if Advance(r, 10, f) != Advance('0', 10, f) {
				t.Errorf("%v: %c is not as wide as 0", f, r)
			}
		}
	}
}

// TestMeasureFromTables: the numbers stand in the hmtx and glyf tables of Go-Regular.ttf, read
// byte by byte by a script that shares no code with this project (2048 units to the em). Widths:
// digit 1139, space 569, quote mark 727, hyphen 1196. Boxes: 0 from -37, quote mark up to 1579,
// H up to 1480.
func TestMeasureFromTables(t *testing.T) {
	w, up, down := Measure(`10 "-`, 2.048, Regular)
	near(t, "width", w, (1139+1139+569+727+1196)/1000.0, 1e-9)
	near(t, "ascent", up, 1.579, 1e-9)
	near(t, "descent", down, 0.037, 1e-9)
	near(t, "capitals", CapHeight(2.048, Regular), 1.480, 1e-9)
}

func TestMeasureScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.String().Draw(t, "a"), rapid.String().Draw(t, "b")
		size := Paper(rapid.Float64Range(0.1, 50).Draw(t, "size"))
		wa, _, _ := Measure(a, size, Medium)
		wb, _, _ := Measure(b, size, Medium)
		both, _, _ := Measure(a+b, 2*size, Medium)
		if strings.ToValidUTF8(a, "")+strings.ToValidUTF8(b, "") != strings.ToValidUTF8(a+b, "") {
			return
		}
		if d := both - 2*(wa+wb); math.Abs(float64(d)) > 1e-9*float64(1+both) {
			t.Fatalf("width of both parts differs by %v", d)
		}
	})
}

func TestMissing(t *testing.T) {
	const has = "AZaz09 '\"-/()±×°½¼¾⅛⅜⅝⅞→←≤≥′″ŁÉüß\u00a0"
	if m := Missing(has); len(m) > 0 {
		t.Errorf("missing %q", m)
	}
	got := Missing("a⌀b△⚠✓✗\n⌀名\ufffd")
	if want := []rune("⌀△⚠✓✗\n名\ufffd"); !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
	if s := Substituted("3 m ⌀名"); s != "3 m ??" {
		t.Errorf("got %q", s)
	}
	w1, _, _ := Measure("名", 4, Regular)
	w2, _, _ := Measure("?", 4, Regular)
	if w1 != w2 {
		t.Errorf("a missing letter is %v wide, its substitute %v", w1, w2)
	}
}

func TestWrapByHand(t *testing.T) {
	// At a size of 2.048 mm a digit is 1.139 mm wide and a space 0.569 mm.
	for _, c := range []struct {
		text  string
		width Paper
		want  []string
	}{
		{"11 22 33", 2*2.278 + 0.569 + 0.001, []string{"11 22", "33"}},
		{"11 22 33", 2*2.278 + 0.569 - 0.001, []string{"11", "22", "33"}},
		{"11 22 33", 100, []string{"11 22 33"}},
		{"  11   22 ", 100, []string{"11 22"}},
		{"11\n\n22", 100, []string{"11", "", "22"}},
		{"12345", 2.3, []string{"12", "34", "5"}},
		{"1 2345", 2.3, []string{"1", "23", "45"}},
		{"12", 0, []string{"1", "2"}},
		{"11\u00a022 33", 2*2.278 + 0.6, []string{"11\u00a022", "33"}},
		{"", 10, []string{""}},
	} {
		if got := Wrap(c.text, 2.048, Regular, c.width); !slices.Equal(got, c.want) {
			t.Errorf("%q in %v: got %q, want %q", c.text, c.width, got, c.want)
		}
	}
}

func FuzzWrap(f *testing.F) {
	f.Add("A planning help, not an approval", 20.0)
	f.Add("x\n\n  y\t1/2 in", 0.0)
	f.Fuzz(func(t *testing.T, text string, width float64) {
		lines := Wrap(text, 3, Regular, Paper(width))
		for _, line := range lines {
			if w, _, _ := Measure(line, 3, Regular); w > Paper(width) && len([]rune(line)) > 1 {
				t.Errorf("line %q is %v wide, not %v", line, w, width)
			}
		}
		bare := func(s string) string {
			s = strings.Join(strings.FieldsFunc(s, isSpace), "")
			return strings.ToValidUTF8(strings.ReplaceAll(s, "\n", ""), "\ufffd")
		}
		if utf := strings.ToValidUTF8(text, ""); utf == text && bare(strings.Join(lines, "")) != bare(text) {
			t.Errorf("letters lost: %q from %q", lines, text)
		}
	})
}

func TestTextBounds(t *testing.T) {
	for _, a := range []Anchor{Left, Centre, Right} {
		text := Lettering{4, Regular}.Text(Point{50, 20}, "10", InkMain, a)
		b := text.Bounds()
		want := [...]Paper{50, 50 - b.W()/2, 50 - b.W()}[a]
		near(t, a.String(), b.Min.X, want, 1e-9)
		if text.Start() != (Point{b.Min.X, 20}) {
			t.Errorf("%v: starts at %v", a, text.Start())
		}
	}
	middled := Lettering{4, Bold}.Text(Point{50, 20}, "H", InkMain, Left).Middled().Bounds()
	near(t, "middle of a capital", middled.Centre().Y, 20, 0.01)
}
