package svg

import (
	"encoding/xml"
	"errors"
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"bunkwright/render"
)

// TestInline: drawings of a page have no size, colours and fonts of their own, keep their words as words, and name their inks.
func TestInline(t *testing.T) {
	in, err := Inline([]render.Drawing{sample(), {}, sample()})
	if err != nil {
		t.Fatal(err)
	}
	if in.Parts[1] != "" {
		t.Errorf("a drawing without marks: %q", in.Parts[1])
	}
	whole := in.Defs + in.Parts[0]
	for _, want := range []string{`viewBox="0 0 4224 3264"`, "(9&#39; 10-1/8&#34;) &lt; ½", "Äpfel"} {
		if !strings.Contains(whole, want) {
			t.Errorf("want %q in %s", want, whole)
		}
	}
	for _, want := range []string{"fill:var(--wall-cut)", "stroke:var(--not-fit)", "stroke-dasharray:30 18", "text-anchor:middle", "font-weight:700"} {
		if !strings.Contains(in.Style, want) {
			t.Errorf("want %q in %s", want, in.Style)
		}
	}
	for _, not := range []string{`="#0`, "font-face", "style=", "data:", "rgb"} {
		if strings.Contains(whole+in.Style, not) {
			t.Errorf("holds %q", not)
		}
	}
	if in.Parts[0] != in.Parts[2] || strings.Count(whole+in.Parts[2], "Äpfel") != 1 {
		t.Errorf("two like drawings are not written once: %s", whole)
	}
}

func TestInlineRefusesWhatCannotBeDrawn(t *testing.T) {
	d := render.Drawing{}
	d.Add(render.Stroke("", render.Line(render.Point{}, render.Point{X: 1}), render.Pen{Width: 1}))
	if _, err := Inline([]render.Drawing{d}); err == nil {
		t.Error("a drawing without a size was written")
	}
}

// TestInlineKeepsPlaces: whatever is shared, every mark ends up where it was drawn, to an eighth of a pixel, in its own order.
func TestInlineKeepsPlaces(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		drawings := rapid.SliceOfN(rapid.Custom(fewShapes), 1, 6).Draw(t, "drawings")
		in, err := Inline(drawings)
		if err != nil {
			t.Fatal(err)
		}
		groups := parse(t, in.Defs)
		for i, d := range drawings {
			if in.Parts[i] == "" {
				continue
			}
			var got []string
			for _, e := range parse(t, in.Parts[i]).children[0].children {
				got = append(got, e.flat(groups, 0, 0)...)
			}
			if want := placed(d); fmt.Sprint(got) != fmt.Sprint(want) {
				t.Fatalf("drawing %d: got %v\nwant %v", i, got, want)
			}
		}
	})
}

// fewShapes draws the same few boxes and words in a few places, each in a pen of its own, so that nothing is joined.
func fewShapes(t *rapid.T) render.Drawing {
	d := render.Drawing{W: 100, H: 100}
	for i := range rapid.IntRange(0, 6).Draw(t, "marks") {
		at := render.Point{X: render.Px(float64(rapid.IntRange(0, 3).Draw(t, "x")) * 20.25), Y: render.Px(float64(rapid.IntRange(0, 2).Draw(t, "y")) * 31)}
		if rapid.Bool().Draw(t, "words") {
			d.Add(render.Words("", render.SheetStyle.Body.Text(at, "from the hook", render.InkMain, render.Left)))
			continue
		}
		box := render.Box(render.Rect{Min: at, Max: at.Plus(render.Point{X: render.Px(300), Y: render.Px(41.5)})})
		d.Add(render.Fill("", box, []render.Ink{render.InkBoard, render.InkGlass}[i%2]))
	}
	return d
}

// placed lists where each mark of fewShapes begins, in quarters of a pixel.
func placed(d render.Drawing) []string {
	var out []string
	for _, m := range d.Marks {
		at := m.Text.At
		if m.Kind == render.KindFill {
			at = m.Path[0].To
		}
		out = append(out, fmt.Sprintf("%v %v", math.Round(float64(at.X)*384/25.4), math.Round(float64(at.Y)*384/25.4)))
	}
	return out
}

// node is an element of a page as a reader finds it that shares no code with the writer.
type node struct {
	name     string
	attrs    map[string]string
	children []*node
}

func parse(t *rapid.T, text string) *node {
	root := &node{}
	stack := []*node{root}
	dec := xml.NewDecoder(strings.NewReader(text))
	dec.Strict = false // values without quotes
	for {
		token, err := dec.Token()
		if errors.Is(err, io.EOF) {
			return root
		}
		if err != nil {
			t.Fatal(err, text)
		}
		switch token := token.(type) {
		case xml.StartElement:
			n := &node{name: token.Name.Local, attrs: map[string]string{}}
			for _, a := range token.Attr {
				n.attrs[a.Name.Local] = a.Value
			}
			top := stack[len(stack)-1]
			top.children = append(top.children, n)
			stack = append(stack, n)
		case xml.EndElement:
			stack = stack[:len(stack)-1]
		}
	}
}

// flat lists where the paths and texts of an element begin, references followed.
func (n *node) flat(groups *node, dx, dy int) []string {
	number := func(key string) int {
		v, _ := strconv.Atoi(n.attrs[key])
		return v
	}
	var out []string
	switch n.name {
	case "use":
		for _, g := range groups.children[0].children[0].children {
			if "#"+g.attrs["id"] == n.attrs["href"] {
				return g.flat(groups, dx+number("x"), dy+number("y"))
			}
		}
		return []string{"nothing named " + n.attrs["href"]}
	case "g":
		for _, c := range n.children {
			out = append(out, c.flat(groups, dx, dy)...)
		}
	case "text":
		out = append(out, fmt.Sprintf("%d %d", dx+number("x"), dy+number("y")))
	case "path":
		var x, y int
		if _, err := fmt.Sscanf(strings.NewReplacer("m", "", "-", " -").Replace(n.attrs["d"]), "%d %d", &x, &y); err != nil {
			return []string{err.Error()}
		}
		out = append(out, fmt.Sprintf("%d %d", dx+x, dy+y))
	}
	return out
}

// TestCompact holds a path against the letters worked out by hand: 1 px is 4 quarters.
func TestCompact(t *testing.T) {
	at := func(x, y float64) render.Point { return render.Point{X: render.Px(x), Y: render.Px(y)} }
	p := render.Path{}.Move(at(10, 20)).Line(at(15, 20)).Line(at(15, 19)).Line(at(14.5, 18)).Cubic(at(14, 18), at(13, 19), at(12, 21)).Close().Move(at(0, 0)).Line(at(0, 3))
	if x, y, shape := compact(p); x != 40 || y != 80 || shape != "h20v-4l-2-4c-2 0-6 4-10 12zm-40-80v12" {
		t.Errorf("%d %d %s", x, y, shape)
	}
}
