package svg

import (
	"fmt"
	"strings"

	"bunkwright/render"
)

// Inlined are drawings as parts of one HTML page. Colours are variables named like the inks, "var(--board)", which the page
// sets by day and by night; letters, ground and words for who cannot see are the page's own.
type Inlined struct {
	Style string   // rules for the page's style
	Defs  string   // an element without size for the top of the page: what several drawings show alike
	Parts []string // an element for each drawing, "" for one without marks
}

// Inline writes drawings as small as can be: what is drawn with one pen is one path, places are quarters of a pixel, and
// what stands in several drawings is written once. Texts are fitted to their measured length.
func Inline(drawings []render.Drawing) (Inlined, error) {
	in := inliner{classes: map[string]string{}}
	sheets := make([][]drawn, len(drawings))
	for i, d := range drawings {
		if len(d.Marks) == 0 {
			continue
		}
		if err := d.Check(); err != nil {
			return Inlined{}, err
		}
		sheets[i] = in.elements(d.Marks)
	}
	defs, bodies := share(sheets)
	out := Inlined{Style: in.style(), Defs: defs, Parts: make([]string, len(drawings))}
	for i, d := range drawings {
		if len(sheets[i]) > 0 {
			out.Parts[i] = fmt.Sprintf(`<svg class=ink viewBox="0 0 %d %d">%s</svg>`, quarters(d.W), quarters(d.H), bodies[i])
		}
	}
	return out, nil
}

// drawn is an element of a page. The same path or text may stand elsewhere in another drawing.
type drawn struct {
	class string
	x, y  int
	shape string // letters of a path after its first place
	words string // of a text
	width int    // of a text
	ref   string // name of a group that it stands for
}

func (e drawn) String() string {
	switch {
	case e.ref != "":
		return `<use href="#` + e.ref + `"/>`
	case e.words != "":
		return fmt.Sprintf("<text class=%s x=%d y=%d textLength=%d>%s</text>", e.class, e.x, e.y, e.width, escaped(e.words))
	}
	var c compactor
	c.write('m', e.x, e.y)
	return "<path class=" + e.class + ` d="` + c.String() + e.shape + `"/>`
}

// inliner names the pens, fills and letterings it meets.
type inliner struct {
	classes map[string]string // what is declared -> class
	order   []string
}

// class returns the class for a declaration, made on first use.
func (in *inliner) class(declared string) string {
	if name, ok := in.classes[declared]; ok {
		return name
	}
	name := fmt.Sprintf("k%d", len(in.order))
	in.classes[declared] = name
	in.order = append(in.order, declared)
	return name
}

func (in *inliner) style() string {
	var all strings.Builder
	all.WriteString(".ink{fill:none;fill-rule:evenodd;stroke-linejoin:round;stroke-linecap:round}\n")
	for _, declared := range in.order {
		fmt.Fprintf(&all, ".%s{%s}\n", in.classes[declared], declared)
	}
	return all.String()
}

// elements writes marks: a fill and the stroke around it as one, and strokes that follow each other with one pen as one.
func (in *inliner) elements(marks []render.Mark) []drawn {
	var out []drawn
	for i := 0; i < len(marks); i++ {
		m := marks[i]
		switch m.Kind {
		case render.KindText:
			out = append(out, in.text(m.Text))
		case render.KindFill:
			e := in.shape(in.class("fill:var(--"+m.Ink.String()+")"), m.Path)
			if next := marks[i+1:]; len(next) > 0 && next[0].Kind == render.KindStroke && in.shape(e.class, next[0].Path) == e {
				i++
				e.class = `"` + e.class + " " + in.class(pen(next[0].Pen)) + `"`
			}
			out = append(out, e)
		case render.KindStroke:
			path := m.Path
			for i+1 < len(marks) && marks[i+1].Kind == render.KindStroke && marks[i+1].Pen == m.Pen && m.Pen.Dash.Solid() {
				i++
				path = append(path[:len(path):len(path)], marks[i].Path...)
			}
			out = append(out, in.shape(in.class(pen(m.Pen)), path))
		}
	}
	return out
}

func (in *inliner) shape(class string, p render.Path) drawn {
	x, y, shape := compact(p)
	return drawn{class: class, x: x, y: y, shape: shape}
}

func pen(p render.Pen) string {
	declared := fmt.Sprintf("stroke:var(--%s);stroke-width:%d", p.Ink, quarters(p.Width))
	if p.Dash.Solid() {
		return declared
	}
	var lengths []string
	for _, l := range p.Dash.Lengths() {
		lengths = append(lengths, fmt.Sprint(quarters(l)))
	}
	declared += ";stroke-linecap:butt;stroke-dasharray:" + strings.Join(lengths, " ")
	if p.Dash.Phase != 0 {
		declared += fmt.Sprintf(";stroke-dashoffset:%d", quarters(p.Dash.Phase))
	}
	return declared
}

func (in *inliner) text(t render.Text) drawn {
	declared := fmt.Sprintf("fill:var(--%s);font-size:%dpx;font-weight:%s", t.Ink, quarters(t.Size), weight(t.Face))
	if t.Anchor != render.Left {
		declared += ";text-anchor:" + [...]string{render.Centre: "middle", render.Right: "end"}[t.Anchor]
	}
	width, _, _ := render.Measure(t.Words, t.Size, t.Face)
	return drawn{class: in.class(declared), x: quarters(t.At.X), y: quarters(t.At.Y), words: t.Words, width: quarters(width)}
}
