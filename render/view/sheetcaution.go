package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// cautionPage prints the whole caution.
func (b *binder) cautionPage() {
	b.pages = append(b.pages, page{title: "Caution", sub: "to be read with every sheet of this set", list: func(area render.Rect) []render.Mark {
		w := &writer{st: b.st, ref: "caution", w: area.W() * 0.86}
		w.bold(fit.Caution)
		for _, text := range fit.Cautions {
			w.y += b.st.Body.Leading() * 0.8
			w.all(b.st.Body, text)
		}
		return render.Shift(w.marks, area.Min)
	}})
}
