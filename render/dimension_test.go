package render

import (
	"testing"

	"pgregory.net/rapid"
)

// crossed returns a text of the marks that a line or another text runs into, or "".
func crossed(marks []Mark) string {
	for i, m := range marks {
		if m.Kind != KindText {
			continue
		}
		box := m.Bounds()
		for j, other := range marks {
			if i == j {
				continue
			}
			if other.Kind == KindText && other.Bounds().Overlaps(box) {
				return m.Text.Words + " and " + other.Text.Words
			}
			if other.Kind == KindStroke && len(other.Clip(box)) > 0 && strokeWithin(other, box) {
				return m.Text.Words + " and " + other.Path.String()
			}
		}
	}
	return ""
}

func strokeWithin(m Mark, box Rect) bool {
	for _, run := range m.Path.Flatten(0.01) {
		if len(ClipPolyline(run.Points, box)) > 0 {
			return true
		}
	}
	return false
}

func spans(words ...string) []Span {
	list := make([]Span, len(words))
	for i, w := range words {
		list[i] = Span{Words: w}
	}
	return list
}

// TestChainNeverCollides: no value of a chain is touched by another or by any of its lines,
// however short and many its spans are.
func TestChainNeverCollides(t *testing.T) {
	words := rapid.SampledFrom([]string{`1"`, `3-1/2"`, `11' 5-3/4"`, `(9' 10-1/8")`, "2438", `2-1/2" post`, ""})
	span := rapid.OneOf(rapid.Float64Range(0, 4), rapid.Float64Range(0, 60))
	rapid.Check(t, func(t *rapid.T) {
		style := rapid.SampledFrom([]Style{ScreenStyle, SheetStyle}).Draw(t, "style")
		c := Chain{
			Along: rapid.SampledFrom([]Axis{Level, Upright}).Draw(t, "along"),
			Less:  rapid.Bool().Draw(t, "less"),
			At:    100,
			Stops: []Paper{10},
		}
		for i := range rapid.IntRange(1, 12).Draw(t, "spans") {
			c.Stops = append(c.Stops, c.Stops[i]+Paper(span.Draw(t, "length")))
			c.Spans = append(c.Spans, Span{Words: words.Draw(t, "words")})
		}
		marks := style.Chain(c)
		if bad := crossed(marks); bad != "" {
			t.Fatal(bad)
		}
		if n := len(textsOf(marks)); n+countEmpty(c.Spans) != len(c.Spans) {
			t.Fatalf("%d of %d values are drawn", n, len(c.Spans))
		}
	})
}

func countEmpty(spans []Span) (n int) {
	for _, s := range spans {
		if s.Words == "" {
			n++
		}
	}
	return n
}

func textsOf(marks []Mark) []Text {
	var list []Text
	for _, m := range marks {
		if m.Kind == KindText {
			list = append(list, m.Text)
		}
	}
	return list
}

// TestDimensionNeverCollides: nor does a single dimension, in any direction.
func TestDimensionNeverCollides(t *testing.T) {
	coordinate := rapid.OneOf(rapid.Float64Range(-60, 60), rapid.Float64Range(-3, 3), rapid.Just(0.0))
	rapid.Check(t, func(t *rapid.T) {
		d := Dimension{
			From:   Point{Paper(coordinate.Draw(t, "x")), Paper(coordinate.Draw(t, "y"))},
			To:     Point{Paper(coordinate.Draw(t, "x")), Paper(coordinate.Draw(t, "y"))},
			Words:  rapid.SampledFrom([]string{`1"`, `11' 5-3/4"`}).Draw(t, "words"),
			Beside: rapid.Bool().Draw(t, "beside"),
			Before: rapid.Bool().Draw(t, "before"),
		}
		marks := ScreenStyle.Dimension(d)
		if bad := crossed(marks); bad != "" {
			t.Fatal(bad)
		}
		drawing := Drawing{W: 1, H: 1, Marks: marks}
		if err := drawing.Check(); err != nil {
			t.Fatal(err)
		}
	})
}

// TestDimensionByHand: on a sheet the words 10 at 8 pt (2.8222 mm) are 2 * 1139/2048 of that
// wide, 3.139 mm; with 0.9 mm of air on either side the line stops 2.470 mm from its middle.
func TestDimensionByHand(t *testing.T) {
	marks := SheetStyle.Dimension(Dimension{Ref: "r", From: Point{0, 50}, To: Point{100, 50}, Words: "10"})
	want := "M -1.2 50 L 47.53 50 M 52.47 50 L 101.2 50"
	if got := marks[0].Path.String(); got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	text := textsOf(marks)[0]
	near(t, "baseline half a capital below the line", text.At.Y, 50+2.8222*1480/2048/2, 0.01)
	for _, tick := range marks[1:3] { // 2.2 mm long at 45 degrees: 0.778 to either side
		b := tick.Path.Bounds()
		near(t, "tick", b.W(), 1.556, 0.001)
		near(t, "tick", b.H(), 1.556, 0.001)
		if p := tick.Path; (p[1].To.X > p[0].To.X) == (p[1].To.Y > p[0].To.Y) {
			t.Error("tick falls to the right")
		}
	}
}

func TestShortDimensionGoesBeyondItsEnd(t *testing.T) {
	for _, c := range []struct {
		from, to Point
		before   bool
		beyond   func(b Rect) bool
	}{
		{Point{0, 0}, Point{2, 0}, false, func(b Rect) bool { return b.Min.X > 2 }},
		{Point{0, 0}, Point{2, 0}, true, func(b Rect) bool { return b.Max.X < 0 }},
		{Point{2, 0}, Point{0, 0}, false, func(b Rect) bool { return b.Max.X < 0 }},
		{Point{2, 0}, Point{0, 0}, true, func(b Rect) bool { return b.Min.X > 2 }},
		{Point{0, 0}, Point{0, 2}, false, func(b Rect) bool { return b.Min.X > 0 }},
		{Point{0, 2}, Point{0, 0}, false, func(b Rect) bool { return b.Min.X > 0 }},
		{Point{0, 0}, Point{0, 2}, true, func(b Rect) bool { return b.Max.X < 0 }},
		{Point{0, 0}, Point{2, 2}, false, func(b Rect) bool { return b.Centre().X > 2 && b.Min.Y > 2 }},
		{Point{0, 0}, Point{2, 2}, true, func(b Rect) bool { return b.Centre().X < 0 && b.Max.Y < 0 }},
	} {
		marks := SheetStyle.Dimension(Dimension{From: c.from, To: c.to, Words: `4-1/4"`, Before: c.before})
		if b := textsOf(marks)[0].Bounds(); !c.beyond(b) {
			t.Errorf("%v to %v, before %v: words in %v", c.from, c.to, c.before, b)
		}
	}
}

// TestChainKeepsWordsAtTheirSpans: with room, every value stands in the middle of its span.
func TestChainKeepsWordsAtTheirSpans(t *testing.T) {
	marks := SheetStyle.Chain(Chain{Stops: []Paper{0, 30, 70, 90}, At: 5, Spans: spans("1", "2", "3")})
	for i, want := range []Paper{15, 50, 80} {
		near(t, "middle", textsOf(marks)[i].At.X, want, 1e-9)
	}
	crowded := SheetStyle.Chain(Chain{Stops: []Paper{0, 1, 2, 3, 30}, Less: true, Spans: spans(`1"`, `2"`, `3"`, `4"`)})
	texts := textsOf(crowded)
	if !(texts[0].Bounds().Max.X < 0) {
		t.Error("the first short value is not before the chain")
	}
	for _, text := range texts[1:3] {
		if text.Bounds().Max.Y >= 0 {
			t.Errorf("%s is not in the row above", text.Words)
		}
	}
	if near := texts[3].Bounds(); !(near.Min.X > 3 && near.Max.X < 30) {
		t.Error("the last value left its span")
	}
}

func TestChainNeedsStops(t *testing.T) {
	for _, c := range []Chain{{}, {Stops: []Paper{1}}, {Stops: []Paper{1, 2}}, {Spans: spans("x")}} {
		if marks := SheetStyle.Chain(c); marks != nil {
			t.Errorf("%v: got %d marks", c, len(marks))
		}
	}
}

func TestExtensionLineLeavesGap(t *testing.T) {
	m := SheetStyle.ExtensionLine("", Point{5, 20}, Point{5, 8})
	if got, want := m.Path.String(), "M 5 19.1 L 5 6.8"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
}

// TestInkOfSpan: a reading that does not agree is red from tick to tick, its neighbours are not.
func TestInkOfSpan(t *testing.T) {
	c := Chain{Stops: []Paper{0, 30, 60, 90}, Spans: spans("1", "2", "3")}
	c.Spans[1].Ink = InkNotFit
	red := map[Kind]int{}
	for _, m := range SheetStyle.Chain(c) {
		if m.Pen.Ink == InkNotFit || m.Text.Ink == InkNotFit {
			red[m.Kind]++
		}
	}
	if red[KindStroke] != 3 || red[KindText] != 1 {
		t.Errorf("%d lines and %d texts are red, want a line, two ticks and a text", red[KindStroke], red[KindText])
	}
}
