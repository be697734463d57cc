package render_test

import (
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	r "bunkwright/render"
)

var update = flag.Bool("update", false, "write the golden files anew; look at the drawings before")

// helperPage is a page with every helper once, for looking at and for the golden dumps.
func helperPage(s r.Style) r.Drawing {
	d := r.Drawing{Title: "Helpers", W: 200, H: 160}
	signs(&d, s)
	lines(&d, s)
	dimensions(&d, s)
	pointers(&d, s)
	bars(&d, s)
	return d
}

func at(x, y r.Paper) r.Point { return r.Point{X: x, Y: y} }

func signs(d *r.Drawing, s r.Style) {
	for i, word := range []string{"does not fit", "too close to call", "cannot tell yet", "fits",
		"found twice", "assumed", "not in"} {
		y := 10 + 7*r.Paper(i)
		d.Add(r.Sign(i).At("sign", at(10, y), s.Sign)...)
		d.Add(r.Words("sign", s.Body.Text(at(16, y), word, r.InkMain, r.Left).Middled()))
	}
}

func lines(d *r.Drawing, s r.Style) {
	for i, pen := range []r.Pen{s.Cut, s.Section, s.Post, s.Seen, s.Thin, s.Extension, s.Behind,
		s.KeepClear, s.Refused, s.Axis, s.Lit, s.Thin.Dashed(s.Behind).In(r.InkCannotTell)} {
		y := 10 + 4*r.Paper(i)
		d.Add(r.Stroke("line", r.Line(at(60, y), at(80, y)), pen))
	}
	wall := append(r.Box(r.Rect{Min: at(90, 8), Max: at(130, 40)}), r.Box(r.Rect{Min: at(96, 14), Max: at(124, 34)})...)
	d.Add(r.Fill("wall", wall, r.InkWallCut), r.Stroke("wall", r.Hatch(wall, s.Hatch, 45), s.Thin))
	d.Add(r.Stroke("wall", wall, s.Cut))
	d.Add(s.EndGrain("post", r.Rect{Min: at(98, 16), Max: at(104, 22)}, s.Post)...)
	d.Add(r.Outlined("pillow", r.RoundBox(r.Rect{Min: at(106, 16), Max: at(122, 32)}, 2), r.InkWhite, s.Thin)...)
	d.Add(r.Stroke("door", r.Arc(at(96, 34), 12, 0, 90), s.Thin))
}

func dimensions(d *r.Drawing, s r.Style) {
	words := []string{`1"`, `1-1/8"`, `2' 0"`, `3-1/2"`, `3-5/8"`, `1' 10"`, `1/8"`, `1/4"`, `3/8"`, `2' 0"`, `2"`}
	spans := make([]r.Span, len(words))
	for i, w := range words {
		spans[i] = r.Span{Ref: "reading", Words: w}
	}
	stops := func(from r.Paper) (list []r.Paper) {
		for _, v := range []r.Paper{0, 3, 6, 28, 32, 36, 58, 59, 60, 61, 84, 86} {
			list = append(list, from+v)
		}
		return list
	}
	d.Add(s.Chain(r.Chain{At: 72, Less: true, Stops: stops(20), Spans: spans})...)
	d.Add(s.Chain(r.Chain{Along: r.Upright, At: 160, Stops: stops(8), Spans: spans})...)
	for _, dim := range []r.Dimension{
		{From: at(20, 85), To: at(60, 100), Words: `3' 5-1/4"`},
		{From: at(70, 85), To: at(72, 96), Words: `1' 0"`, Ink: r.InkNotFit, Beside: true},
		{From: at(90, 90), To: at(93, 90), Words: `2-1/2" post`},
		{From: at(132, 85), To: at(132, 88), Words: `4-1/4"`, Before: true},
		{From: at(140, 88), To: at(144, 85), Words: `1"`},
	} {
		d.Add(s.Dimension(dim)...)
	}
	d.Add(s.ExtensionLine("reading", at(20, 76), at(20, 72)))
}

func pointers(d *r.Drawing, s r.Style) {
	d.Add(s.Corner("corner.A", "A", at(12, 110))...)
	d.Add(s.LevelMark("ceiling", at(30, 112), `8' 0-1/4"`, "ceiling")...)
	d.Add(s.SectionMark("section", at(60, 112), at(100, 112), false)...)
	d.Add(s.SectionMark("section", at(106, 116), at(106, 104), true)...)
	d.Add(s.BreakLine("break", at(120, 100), at(120, 125)))
	d.Add(s.Ground("floor", at(10, 120), at(50, 120))...)
	d.Add(s.Leader("rail", at(130, 108), s.Body.Text(at(138, 104), "guardrail", r.InkMain, r.Left))...)
	d.Add(r.Stroke("stud", r.Line(at(130, 118), at(175, 118)), s.Behind))
	d.Add(r.Label("spare", s.Measure.Text(at(152, 119), `6" spare`, r.InkFits, r.Centre), r.InkPaper, s.Gap)...)
}

func bars(d *r.Drawing, s r.Style) {
	d.Add(s.ScaleBar("scale", at(10, 128), 12, 3, "ft")...)
	d.Add(s.CheckBar("check", at(60, 128), r.CheckTwoInches)...)
	d.Add(s.CheckBar("check", at(10, 145), r.CheckHundredMM)...)
	d.Add(s.Body.Paragraph("caution", at(120, 134),
		"A planning help, not an approval: measured against named texts used as a yardstick.", 60, r.InkSoft)...)
}

// TestGoldenDumps compares with dumps of drawings that were looked at when they were written.
func TestGoldenDumps(t *testing.T) {
	for name, style := range map[string]r.Style{"screen": r.ScreenStyle, "sheet": r.SheetStyle} {
		d := helperPage(style)
		if err := d.Check(); err != nil {
			t.Error(err)
		}
		golden(t, filepath.Join("testdata", "helpers-"+name+".golden"), d.Dump())
	}
}

// golden names the first line that differs.
func golden(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	have, want := strings.Split(got, "\n"), strings.Split(string(data), "\n")
	for i := range max(len(have), len(want)) {
		h, w := lineAt(have, i), lineAt(want, i)
		if h != w {
			t.Fatalf("%s:%d:\ngot  %s\nwant %s", file, i+1, h, w)
		}
	}
}

func lineAt(lines []string, i int) string {
	if i < len(lines) {
		return lines[i]
	}
	return "(nothing)"
}
