package svg

import (
	"bytes"
	"encoding/base64"
	"encoding/binary"
	"encoding/xml"
	"errors"
	"io"
	"slices"
	"strings"
	"testing"

	"golang.org/x/image/font/sfnt"
	"golang.org/x/image/math/fixed"
	"pgregory.net/rapid"

	"bunkwright/render"
)

// element is what a reader of XML, which shares no code with the writer, finds.
type element struct {
	name  string
	attrs map[string]string
	text  string
}

func read(t interface{ Fatal(...any) }, data []byte) []element {
	var list []element
	dec := xml.NewDecoder(bytes.NewReader(data))
	for {
		token, err := dec.Token()
		if errors.Is(err, io.EOF) {
			return list
		}
		if err != nil {
			t.Fatal(err)
		}
		switch token := token.(type) {
		case xml.StartElement:
			e := element{name: token.Name.Local, attrs: map[string]string{}}
			for _, a := range token.Attr {
				e.attrs[a.Name.Local] = a.Value
			}
			list = append(list, e)
		case xml.CharData:
			if len(list) > 0 && list[len(list)-1].text == "" {
				list[len(list)-1].text = string(token)
			}
		}
	}
}

func sample() render.Drawing {
	d := render.Drawing{Title: "Plan & wall", W: render.In(11), H: render.In(8.5)}
	s := render.SheetStyle
	shape := append(render.Box(render.Rect{Max: render.Point{X: 10, Y: 5}}), render.Circle(render.Point{X: 5, Y: 2.5}, 1)...)
	d.Add(render.Outlined(`wall "A" <B>`, shape, render.InkWallCut, s.Cut)...)
	d.Add(render.Stroke("", render.Line(render.Point{X: 1.23456, Y: -0.0001}, render.Point{X: 20}), s.Behind.In(render.InkNotFit)))
	d.Add(render.Words("dim", s.Measure.Text(render.Point{X: 50, Y: 40}, `(9' 10-1/8") < ½`, render.InkMain, render.Centre)))
	d.Add(render.Words("", s.Title.Text(render.Point{X: 90, Y: 40}, "Äpfel", render.InkSoft, render.Right)))
	return d
}

func TestWrite(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, sample(), render.Light); err != nil {
		t.Fatal(err)
	}
	list := read(t, b.Bytes())
	root := list[0].attrs
	if root["width"] != "279.4mm" || root["height"] != "215.9mm" || root["viewBox"] != "0 0 279.4 215.9" {
		t.Errorf("page %v", root)
	}
	if list[1].name != "title" || list[1].text != "Plan & wall" {
		t.Errorf("title %v", list[1])
	}
	var names []string
	for _, e := range list {
		names = append(names, e.name)
	}
	if want := []string{"svg", "title", "style", "rect", "path", "path", "path", "text", "text"}; !slices.Equal(names, want) {
		t.Fatalf("elements %v", names)
	}
	fill, line, dashes, words, title := list[4], list[5], list[6], list[7], list[8]
	if fill.attrs["data-shows"] != `wall "A" <B>` || fill.attrs["fill-rule"] != "evenodd" || fill.attrs["fill"] != "#cdbb96" {
		t.Errorf("fill %v", fill.attrs)
	}
	if !strings.HasPrefix(line.attrs["d"], "M0 0L10 0L10 5L0 5ZM6 2.5C") || line.attrs["stroke-width"] != "0.5" {
		t.Errorf("line %v", line.attrs)
	}
	if dashes.attrs["d"] != "M1.235 0L20 0" || dashes.attrs["stroke-dasharray"] != "2 1.2" || dashes.attrs["stroke"] != "#9c2b1c" {
		t.Errorf("dashes %v", dashes.attrs)
	}
	if words.text != `(9' 10-1/8") < ½` || words.attrs["text-anchor"] != "middle" || words.attrs["font-weight"] != "500" {
		t.Errorf("words %v %q", words.attrs, words.text)
	}
	if title.attrs["text-anchor"] != "end" || title.attrs["font-weight"] != "700" {
		t.Errorf("title %v", title.attrs)
	}
}

func TestSameDrawingSameBytes(t *testing.T) {
	var a, b bytes.Buffer
	if Write(&a, sample(), render.Print) != nil || Write(&b, sample(), render.Print) != nil || !bytes.Equal(a.Bytes(), b.Bytes()) {
		t.Error("two files of one drawing differ")
	}
}

func TestRefusesMissingLetters(t *testing.T) {
	d := sample()
	d.Add(render.Words("", render.SheetStyle.Body.Text(render.Point{}, "⌀", render.InkMain, render.Left)))
	var missing *render.MissingError
	if err := Write(io.Discard, d, render.Print); !errors.As(err, &missing) {
		t.Errorf("got %v", err)
	}
}

// TestAnyWordsReadBack: names and notes are anything people type.
func TestAnyWordsReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := render.Substituted(rapid.String().Draw(t, "words"))
		ref := strings.ToValidUTF8(rapid.StringMatching(`[ -~äß→]*`).Draw(t, "ref"), "")
		d := render.Drawing{W: 10, H: 10}
		d.Add(render.Words(ref, render.SheetStyle.Body.Text(render.Point{}, words, render.InkMain, render.Left)))
		var b bytes.Buffer
		if err := Write(&b, d, render.Print); err != nil {
			t.Fatal(err)
		}
		list := read(t, b.Bytes())
		last := list[len(list)-1]
		if words != "" && words != "\n" && last.text != words || last.attrs["data-shows"] != ref {
			t.Fatalf("wrote %q of %q, read %q of %q", words, ref, last.text, last.attrs["data-shows"])
		}
	})
}

// fontOf returns the nth font embedded in the file.
func fontOf(t *testing.T, data []byte, n int) []byte {
	t.Helper()
	parts := strings.Split(string(data), "base64,")
	ttf, err := base64.StdEncoding.DecodeString(strings.SplitN(parts[n+1], ")", 2)[0])
	if err != nil {
		t.Fatal(err)
	}
	return ttf
}

// TestSubsetKeepsItsLetters compares outlines with those of the whole font, as x/image reads
// both; what was not asked for has no outline. Ä is composed of two letters.
func TestSubsetKeepsItsLetters(t *testing.T) {
	const keep = `0123456789'"-/½Äß g`
	for f := render.Regular; f <= render.Bold; f++ {
		cut, err := sfnt.Parse(subset(f, keep))
		if err != nil {
			t.Fatal(err)
		}
		for _, r := range keep + "BCxyzéÖ¾" {
			got, want := outline(t, cut, r), outline(t, f.Font(), r)
			if !strings.ContainsRune(keep, r) {
				want = nil
			}
			if !slices.Equal(got, want) {
				t.Errorf("%v %c: outline of %d segments, want %d", f, r, len(got), len(want))
			}
		}
		if small, whole := len(subset(f, keep)), len(f.TTF()); small > whole/4 {
			t.Errorf("%v: %d of %d bytes are left", f, small, whole)
		}
	}
}

func outline(t *testing.T, f *sfnt.Font, r rune) sfnt.Segments {
	t.Helper()
	var buf sfnt.Buffer
	i, err := f.GlyphIndex(&buf, r)
	if err != nil || i == 0 {
		t.Fatalf("%c: glyph %d, %v", r, i, err)
	}
	segments, err := f.LoadGlyph(&buf, i, fixed.I(2048), nil)
	if err != nil {
		t.Fatal(err)
	}
	return slices.Clone(segments)
}

// TestSubsetChecksums: every table's sum stands in the directory, and the sum over the file is
// 0xB1B0AFBA (OpenType specification, "Calculating checksums").
func TestSubsetChecksums(t *testing.T) {
	var b bytes.Buffer
	if err := Write(&b, sample(), render.Print); err != nil {
		t.Fatal(err)
	}
	ttf := fontOf(t, b.Bytes(), 0)
	if len(ttf)%4 != 0 || sumOf(ttf) != 0xB1B0AFBA {
		t.Errorf("%d bytes with the sum %#x", len(ttf), sumOf(ttf))
	}
	n := int(binary.BigEndian.Uint16(ttf[4:]))
	for i := range n {
		record := ttf[12+16*i:]
		tag, at, size := string(record[:4]), binary.BigEndian.Uint32(record[8:]), binary.BigEndian.Uint32(record[12:])
		data := slices.Clone(ttf[at : at+(size+3)&^3])
		if tag == "head" {
			clear(data[8:12])
		}
		if got, want := sumOf(data), binary.BigEndian.Uint32(record[4:]); got != want {
			t.Errorf("table %s: sum %#x, directory says %#x", tag, got, want)
		}
	}
}

func sumOf(data []byte) (sum uint32) {
	for i := 0; i+4 <= len(data); i += 4 {
		sum += binary.BigEndian.Uint32(data[i:])
	}
	return sum
}

func BenchmarkWrite380Marks(b *testing.B) {
	d := render.Drawing{W: 300, H: 200}
	for i := range 125 {
		p := render.Point{X: render.Paper(i), Y: render.Paper(i % 40)}
		shape := render.Box(render.Rect{Min: p, Max: p.Plus(render.Point{X: 20, Y: 9})})
		d.Add(render.Outlined("board", shape, render.InkBoard, render.SheetStyle.Seen)...)
		d.Add(render.Words("board", render.SheetStyle.Body.Text(p, `3' 5-3/4"`, render.InkMain, render.Left)))
	}
	for b.Loop() {
		if err := Write(io.Discard, d, render.Print); err != nil {
			b.Fatal(err)
		}
	}
}
