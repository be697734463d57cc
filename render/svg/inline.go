package svg

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"bunkwright/render"
)

// WriteInline writes the drawing as a part of a page: as wide as its place there, named by its label, in the page's own
// letters, each text fitted to its measured length. Inks are classes, "fill-board" and "stroke-main", which the page gives
// colours by day and by night. The ground is the page's own.
func WriteInline(w io.Writer, d render.Drawing, label string) error {
	if err := d.Check(); err != nil {
		return err
	}
	out := bufio.NewWriter(w)
	fmt.Fprintf(out, `<svg viewBox="0 0 %s %s" role="img" aria-label="%s" fill="none" stroke-linejoin="round" stroke-linecap="round">`,
		number(d.W), number(d.H), escaped(label))
	for _, m := range d.Marks {
		out.WriteString(inline(m))
	}
	out.WriteString("</svg>")
	return out.Flush()
}

func inline(m render.Mark) string {
	switch m.Kind {
	case render.KindStroke:
		return fmt.Sprintf(`<path class="stroke-%s" stroke-width="%s"%s d="%s"/>`, m.Pen.Ink, number(m.Pen.Width), dashes(m.Pen.Dash), data(m.Path))
	case render.KindFill:
		return fmt.Sprintf(`<path class="fill-%s" fill-rule="evenodd" d="%s"/>`, m.Ink, data(m.Path))
	}
	t := m.Text
	width, _, _ := render.Measure(t.Words, t.Size, t.Face)
	return fmt.Sprintf(`<text class="fill-%s" x="%s" y="%s" font-size="%s" font-weight="%s"%s textLength="%s" lengthAdjust="spacingAndGlyphs">%s</text>`,
		t.Ink, number(t.At.X), number(t.At.Y), number(t.Size), weight(t.Face), anchor(t.Anchor), number(width), escaped(t.Words))
}

func dashes(d render.Dash) string {
	if d.Solid() {
		return ""
	}
	var lengths []string
	for _, l := range d.Lengths() {
		lengths = append(lengths, number(l))
	}
	out := ` stroke-linecap="butt" stroke-dasharray="` + strings.Join(lengths, " ") + `"`
	if d.Phase != 0 {
		out += ` stroke-dashoffset="` + number(d.Phase) + `"`
	}
	return out
}
