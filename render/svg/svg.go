// Package svg answers how a drawing is written as a scalable picture for a browser: one file,
// true to scale, with the letters it needs inside it.
package svg

import (
	"bufio"
	"encoding/base64"
	"encoding/xml"
	"fmt"
	"image/color"
	"io"
	"math"
	"strconv"
	"strings"

	"bunkwright/render"
)

// Write writes the drawing, its size in millimetres, or returns the reasons why it cannot be
// drawn as it stands. What a mark shows is in its data-shows attribute. The fonts are embedded
// with only the letters used, and every text carries its measured length, so that a program
// that passes over embedded fonts still sets it to its width.
func Write(w io.Writer, d render.Drawing, p render.Palette) error {
	if err := d.Check(); err != nil {
		return err
	}
	out := &writer{bufio.NewWriter(w), p}
	out.head(d)
	for _, m := range d.Marks {
		out.mark(m)
	}
	out.WriteString("</svg>\n")
	return out.Flush()
}

type writer struct {
	*bufio.Writer
	palette render.Palette
}

func (w *writer) head(d render.Drawing) {
	width, height := number(d.W), number(d.H)
	fmt.Fprintf(w, `<svg xmlns="http://www.w3.org/2000/svg" width="%smm" height="%smm" viewBox="0 0 %s %s">`+"\n",
		width, height, width, height)
	if d.Title != "" {
		fmt.Fprintf(w, "<title>%s</title>\n", escaped(d.Title))
	}
	w.fonts(d)
	fmt.Fprintf(w, `<rect width="%s" height="%s" fill="%s"/>`+"\n",
		width, height, hex(w.palette.Color(render.InkPaper)))
}

// fonts embeds the faces the drawing uses.
func (w *writer) fonts(d render.Drawing) {
	faces := d.Faces()
	if len(faces) == 0 {
		return
	}
	w.WriteString("<style>\n")
	for _, f := range faces {
		data := base64.StdEncoding.EncodeToString(subset(f, lettersOf(d, f)))
		fmt.Fprintf(w, "@font-face{font-family:drawing;font-weight:%s;src:url(data:font/ttf;base64,%s)}\n",
			weight(f), data)
	}
	w.WriteString("text{font-family:drawing,sans-serif;white-space:pre}\n</style>\n")
}

func lettersOf(d render.Drawing, f render.Face) string {
	var all strings.Builder
	for _, m := range d.Marks {
		if m.Kind == render.KindText && m.Text.Face == f {
			all.WriteString(m.Text.Words)
		}
	}
	return all.String()
}

func weight(f render.Face) string {
	switch f {
	case render.Medium:
		return "500"
	case render.Bold:
		return "700"
	}
	return "400"
}

func (w *writer) mark(m render.Mark) {
	switch m.Kind {
	case render.KindStroke:
		fmt.Fprintf(w, `<path%s d="%s" fill="none"%s/>`+"\n", shows(m.Ref), data(m.Path), w.pen(m.Pen))
	case render.KindFill:
		fmt.Fprintf(w, `<path%s d="%s" fill="%s" fill-rule="evenodd"/>`+"\n",
			shows(m.Ref), data(m.Path), hex(w.palette.Color(m.Ink)))
	case render.KindText:
		w.text(m)
	}
}

func (w *writer) text(m render.Mark) {
	t := m.Text
	width, _, _ := render.Measure(t.Words, t.Size, t.Face)
	fmt.Fprintf(w, `<text%s x="%s" y="%s" font-size="%s" font-weight="%s" fill="%s"%s textLength="%s">%s</text>`+"\n",
		shows(m.Ref), number(t.At.X), number(t.At.Y), number(t.Size), weight(t.Face),
		hex(w.palette.Color(t.Ink)), anchor(t.Anchor), number(width), escaped(t.Words))
}

func anchor(a render.Anchor) string {
	switch a {
	case render.Centre:
		return ` text-anchor="middle"`
	case render.Right:
		return ` text-anchor="end"`
	}
	return ""
}

// pen returns the attributes of a stroke: round joins and ends, square-cut ends for dashes.
func (w *writer) pen(p render.Pen) string {
	s := fmt.Sprintf(` stroke="%s" stroke-width="%s" stroke-linejoin="round"`,
		hex(w.palette.Color(p.Ink)), number(p.Width))
	if p.Dash.Solid() {
		return s + ` stroke-linecap="round"`
	}
	var lengths []string
	for _, l := range p.Dash.Lengths() {
		lengths = append(lengths, number(l))
	}
	s += ` stroke-dasharray="` + strings.Join(lengths, " ") + `"`
	if p.Dash.Phase != 0 {
		s += ` stroke-dashoffset="` + number(p.Dash.Phase) + `"`
	}
	return s
}

func shows(ref string) string {
	if ref == "" {
		return ""
	}
	return ` data-shows="` + escaped(ref) + `"`
}

// data returns the path in the letters of the SVG path grammar.
func data(p render.Path) string {
	var b strings.Builder
	for _, s := range p {
		switch s.Op {
		case render.OpMove:
			b.WriteString("M" + point(s.To))
		case render.OpLine:
			b.WriteString("L" + point(s.To))
		case render.OpCubic:
			b.WriteString("C" + point(s.C1) + " " + point(s.C2) + " " + point(s.To))
		case render.OpClose:
			b.WriteString("Z")
		}
	}
	return b.String()
}

func point(p render.Point) string { return number(p.X) + " " + number(p.Y) }

// number prints to a thousandth of a millimetre.
func number(v render.Paper) string {
	r := math.Round(float64(v)*1000) / 1000
	if r == 0 {
		return "0"
	}
	return strconv.FormatFloat(r, 'f', -1, 64)
}

func hex(c color.RGBA) string { return fmt.Sprintf("#%02x%02x%02x", c.R, c.G, c.B) }

func escaped(s string) string {
	var b strings.Builder
	_ = xml.EscapeText(&b, []byte(s)) // a Builder does not fail
	return b.String()
}
