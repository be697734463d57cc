package view

import "bunkwright/render"

// notIn stands for the value of a dimension that was not read, as wide as the sign that takes its place.
const notIn = "00"

// askFor dashes the dimensions that were not read, and puts the sign of what is not in into the place of their values.
func (p *planner) askFor(marks []render.Mark) []render.Mark {
	out := marks[:0:0]
	for _, m := range marks {
		switch {
		case m.Kind == render.KindText && m.Text.Words == notIn && m.Text.Ink == render.InkCannotTell:
			out = append(out, render.SignCannotTell.At(m.Ref, m.Bounds().Centre(), p.st.Sign)...)
		case m.Kind == render.KindStroke && m.Pen.Ink == render.InkCannotTell && isLine(m.Path):
			m.Pen = m.Pen.Dashed(p.st.Behind)
			out = append(out, m)
		default:
			out = append(out, m)
		}
	}
	return out
}

// isLine tells whether a path is long straight lines, not a tick.
func isLine(path render.Path) bool {
	b := path.Bounds()
	return max(b.W(), b.H()) > render.Px(12)
}
