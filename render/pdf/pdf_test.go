package pdf

import (
	"bytes"
	"compress/zlib"
	"errors"
	"fmt"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
	"time"
	"unicode/utf16"

	"codeberg.org/go-pdf/fpdf"

	"bunkwright/render"
)

var date = time.Date(2027, 6, 9, 0, 0, 0, 0, time.UTC)

func sheet(w, h render.Paper, title string) render.Drawing {
	d := render.Drawing{Title: title, W: w, H: h}
	s := render.SheetStyle
	d.Add(s.CheckBar("check", render.Point{X: 20, Y: 30}, render.CheckTwoInches)...)
	d.Add(render.Outlined("fan", render.Circle(render.Point{X: 80, Y: 80}, 20), render.InkWallCut, s.Behind)...)
	d.Add(render.Words("t", s.Title.Text(render.Point{X: 20, Y: 20}, title+" → ½ Łódź", render.InkMain, render.Left)))
	return d
}

func write(t testing.TB, pages ...Page) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Write(&b, pages, Info{Title: "Bunk for Ä", Date: date}); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// streams returns the content streams, inflated.
func streams(t *testing.T, data []byte) []string {
	t.Helper()
	var list []string
	for _, part := range bytes.Split(data, []byte("stream\n"))[1:] {
		z, err := zlib.NewReader(bytes.NewReader(part))
		if err != nil {
			continue // the end of one
		}
		text, err := io.ReadAll(z)
		if err == nil {
			list = append(list, string(text))
		}
	}
	return list
}

// TestPaperIsTrue: boxes in points, 72 to the inch (ISO 32000-1, 7.7.3.3; paper sizes from ISO
// 216 and ANSI/ASME Y14.1).
func TestPaperIsTrue(t *testing.T) {
	data := write(t,
		Page{Drawing: sheet(200, 180, "a"), Size: Letter},
		Page{Drawing: sheet(render.In(11), render.In(8.5), "b"), Size: Letter, Landscape: true},
		Page{Drawing: sheet(210, 297, "c"), Size: A4},
		Page{Drawing: sheet(297, 210, "d"), Size: A4, Landscape: true},
		Page{Drawing: sheet(127, 254, "e")},
	)
	want := []string{"612.00 792.00", "792.00 612.00", "595.28 841.89", "841.89 595.28", "360.00 720.00"}
	// The first page's size is that of the document, which stands on the page tree.
	root := regexp.MustCompile(`/Type /Pages[^>]*/MediaBox \[0 0 ([0-9. ]+)\]`).FindSubmatch(data)
	pages := regexp.MustCompile(`/Type /Page\n(?:[^>]*?)/MediaBox \[0 0 ([0-9. ]+)\]`).FindAllSubmatch(data, -1)
	if root == nil || string(root[1]) != want[0] {
		t.Errorf("first page %q", root)
	}
	if len(pages) != len(want)-1 {
		t.Fatalf("%d pages with boxes of their own", len(pages))
	}
	for i, p := range pages {
		if string(p[1]) != want[i+1] {
			t.Errorf("page %d: %s, want %s", i+2, p[1], want[i+1])
		}
	}
	if n := strings.Count(string(data), "/Count 5"); n != 1 {
		t.Errorf("page tree counts five pages %d times", n)
	}
}

// TestLinesAreTrue: the check bar's line, 2 in less its own width between the middles of its
// ends, measured in the page's content, and the drawing in the middle of its paper.
func TestLinesAreTrue(t *testing.T) {
	data := write(t, Page{Drawing: sheet(190, 250, "a"), Size: A4})
	line := regexp.MustCompile(`([0-9.]+) ([0-9.]+) m\n([0-9.]+) ([0-9.]+) l\n([0-9.]+) ([0-9.]+) l\n([0-9.]+) ([0-9.]+) l\nS`)
	for _, s := range streams(t, data) {
		m := line.FindStringSubmatch(s)
		if m == nil {
			continue
		}
		left, right := number(t, m[3]), number(t, m[5])
		if got, want := right-left, 144-0.5*72/25.4; math.Abs(got-want) > 0.011 {
			t.Errorf("bar of %.3f pt, want %.3f", got, want)
		}
		if want := (20 + 0.25 + (210-190)/2) * 72 / 25.4; math.Abs(left-want) > 0.006 {
			t.Errorf("bar starts at %.3f pt, want %.3f", left, want)
		}
		return
	}
	t.Error("no bar found")
}

func number(t *testing.T, s string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s, 64)
	if err != nil {
		t.Fatal(err)
	}
	return v
}

// TestWordsStandInTheFile: as UTF-16, which the embedded table maps back for search and copy.
func TestWordsStandInTheFile(t *testing.T) {
	all := strings.Join(streams(t, write(t, Page{Drawing: sheet(190, 250, "plan"), Size: A4})), "\n")
	var want strings.Builder
	for _, u := range utf16.Encode([]rune("plan → ½ Ł")) {
		want.WriteByte(byte(u >> 8))
		want.WriteByte(byte(u))
	}
	if !strings.Contains(all, want.String()) {
		t.Error("the title is not in the page's text")
	}
}

func TestOutlineNamesPages(t *testing.T) {
	data := write(t, Page{Drawing: sheet(190, 250, "one")}, Page{Drawing: sheet(190, 250, "two")})
	for _, title := range []string{"one", "two"} {
		wide := "\xfe\xff"
		for _, r := range title {
			wide += "\x00" + string(r)
		}
		if !bytes.Contains(data, []byte("/Title ("+wide+")")) {
			t.Errorf("no bookmark %q", title)
		}
	}
}

func TestSamePagesSameBytes(t *testing.T) {
	pages := []Page{{Drawing: sheet(190, 250, "a"), Size: A4}, {Drawing: sheet(190, 250, "b"), Size: Letter}}
	a, b := write(t, pages...), write(t, pages...)
	if !bytes.Equal(a, b) {
		t.Error("two documents of one job differ")
	}
	if !bytes.Contains(a, []byte("D:20270609000000")) {
		t.Error("the date is not that of the document")
	}
}

func TestRefusals(t *testing.T) {
	good := Page{Drawing: sheet(190, 250, "a"), Size: A4}
	missing := good
	missing.Drawing = sheet(190, 250, "⌀")
	wide := good
	wide.Landscape = true
	var fit *FitError
	var letters *render.MissingError
	for name, c := range map[string]struct {
		pages []Page
		date  time.Time
		is    func(error) bool
	}{
		"no date":         {[]Page{good}, time.Time{}, func(err error) bool { return errors.Is(err, ErrNoDate) }},
		"no pages":        {nil, date, func(err error) bool { return errors.Is(err, ErrNoPages) }},
		"too large":       {[]Page{good, wide}, date, func(err error) bool { return errors.As(err, &fit) && fit.Page == 2 }},
		"missing letters": {[]Page{missing}, date, func(err error) bool { return errors.As(err, &letters) }},
	} {
		var b bytes.Buffer
		if err := Write(&b, c.pages, Info{Date: c.date}); !c.is(err) || b.Len() > 0 {
			t.Errorf("%s: got %v and %d bytes", name, err, b.Len())
		}
	}
}

// TestWidthsAgree: the library that writes the document measures words as the drawing did. It
// rounds each width to a thousandth of the em.
func TestWidthsAgree(t *testing.T) {
	doc := fpdf.New("P", "mm", "A4", "")
	for f := render.Regular; f <= render.Bold; f++ {
		doc.AddUTF8FontFromBytes(f.String(), "", f.TTF())
		doc.SetFont(f.String(), "", 72)
		for _, words := range []string{`11' 5-3/4"`, "A planning help, not an approval", "½ → Łß ±(2438)"} {
			got := doc.GetStringWidth(words)
			want, _, _ := render.Measure(words, render.Pt(72), f)
			allowed := 25.4 * 0.0006 * float64(len([]rune(words)))
			if math.Abs(got-float64(want)) > allowed {
				t.Errorf("%v %q: %.3f mm in the document, %.3f in the drawing", f, words, got, want)
			}
		}
	}
}

func BenchmarkWrite10Pages(b *testing.B) {
	var pages []Page
	for i := range 10 {
		d := sheet(render.In(11), render.In(8.5), fmt.Sprintf("sheet %d", i+1))
		for j := range 125 {
			p := render.Point{X: render.Paper(20 + j), Y: render.Paper(40 + j%100)}
			shape := render.Box(render.Rect{Min: p, Max: p.Plus(render.Point{X: 20, Y: 9})})
			d.Add(render.Outlined("board", shape, render.InkBoard, render.SheetStyle.Seen)...)
			d.Add(render.Stroke("board", render.Hatch(shape, 1.4, 45), render.SheetStyle.Thin))
			d.Add(render.Words("board", render.SheetStyle.Body.Text(p, `3' 5-3/4"`, render.InkMain, render.Left)))
		}
		pages = append(pages, Page{Drawing: d, Size: Letter, Landscape: true})
	}
	if n := bytes.Count(write(b, pages...), []byte("/Type /Page\n")); n != 10 {
		b.Fatalf("%d pages", n)
	}
	for b.Loop() {
		if err := Write(io.Discard, pages, Info{Title: "bench", Date: date}); err != nil {
			b.Fatal(err)
		}
	}
}
