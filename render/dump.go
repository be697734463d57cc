package render

import (
	"fmt"
	"math"
	"strconv"
	"strings"
)

// Dump returns the drawing as text, a line for the paper and one for each mark, lengths to
// 0.01 mm. It is stable, so that drawings are compared line by line.
func (d Drawing) Dump() string {
	var b strings.Builder
	fmt.Fprintf(&b, "drawing %s x %s %q\n", number(d.W), number(d.H), d.Title)
	for _, m := range d.Marks {
		b.WriteString(m.String())
		b.WriteByte('\n')
	}
	return b.String()
}

// String returns the mark as a line of Dump.
func (m Mark) String() string {
	switch m.Kind {
	case KindStroke:
		return fmt.Sprintf("stroke %q %s %s", m.Ref, m.Pen, m.Path)
	case KindFill:
		return fmt.Sprintf("fill %q %s %s", m.Ref, m.Ink, m.Path)
	case KindText:
		return fmt.Sprintf("text %q %s", m.Ref, m.Text)
	}
	return fmt.Sprintf("nothing %q", m.Ref)
}

// String returns width, ink and dashes.
func (p Pen) String() string {
	s := number(p.Width) + " " + p.Ink.String()
	if p.Dash.Solid() {
		return s
	}
	var lengths []string
	for _, l := range p.Dash.Lengths() {
		lengths = append(lengths, number(l))
	}
	s += " dash " + strings.Join(lengths, ",")
	if p.Dash.Phase != 0 {
		s += " from " + number(p.Dash.Phase)
	}
	return s
}

// String returns the steps in the letters of SVG path data.
func (p Path) String() string {
	parts := make([]string, len(p))
	for i, s := range p {
		switch s.Op {
		case OpMove:
			parts[i] = "M " + s.To.String()
		case OpLine:
			parts[i] = "L " + s.To.String()
		case OpCubic:
			parts[i] = "C " + s.C1.String() + " " + s.C2.String() + " " + s.To.String()
		case OpClose:
			parts[i] = "Z"
		}
	}
	return strings.Join(parts, " ")
}

// String returns place, anchor, lettering, ink and words.
func (t Text) String() string {
	return fmt.Sprintf("%s %s %s %s %s %q", t.At, t.Anchor, number(t.Size), t.Face, t.Ink, t.Words)
}

// String returns both coordinates.
func (p Point) String() string { return number(p.X) + " " + number(p.Y) }

// number prints to 0.01 mm without trailing zeros and without a negative zero.
func number(v Paper) string {
	r := math.Round(float64(v)*100) / 100
	if r == 0 {
		r = 0
	}
	return strconv.FormatFloat(r, 'f', -1, 64)
}
