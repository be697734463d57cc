package view

import (
	"errors"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
)

// NoBed stands in the place of a view of the bed that cannot be built, and says which sizes are at fault.
func NoBed(s *fit.Scene, title string, o Options) render.Drawing {
	return o.draw(title, 0, 0, func(c *canvas) { c.unbuilt(s, title) })
}

// unbuilt says in words why a drawing is not there.
func (c *canvas) unbuilt(s *fit.Scene, title string) {
	wide := c.o.W - 10*edge
	if c.o.W <= 0 {
		wide = unbuiltWide
	}
	c.add(c.st.Heading.Paragraph("bed", c.pt(0, 0), title+": not drawn, because the bed cannot be built", wide, render.InkMain)...)
	for _, words := range unbuiltWords(s, c.o.Unit) {
		y := render.Bounds(c.marks).Max.Y + c.st.Body.Leading()*1.4
		c.add(c.st.Body.Paragraph("bed", render.Point{X: c.pt(0, 0).X, Y: y}, kept(words), wide, render.InkMain)...)
	}
}

// unbuiltWide is how wide the words are where there is no box to fill, mm on paper.
const unbuiltWide render.Paper = 120

// unbuiltWords says of each size at fault which it is, why, and which is the nearest that can be built.
func unbuiltWords(s *fit.Scene, unit length.Unit) []string {
	var list bunk.SizesError
	if !errors.As(s.BedErr, &list) {
		if s.BedErr != nil {
			return []string{s.BedErr.Error()}
		}
		return []string{"its sizes are not chosen yet"}
	}
	words := make([]string, len(list))
	for i, e := range list {
		words[i] = e.Key + ": " + e.Reason
		if e.Has {
			words[i] += "; the nearest that can be built is " + length.Exact(e.Nearest, unit)
		}
	}
	return words
}

// unbuiltPage is the one sheet in the place of those of the bed.
func (b *binder) unbuiltPage() {
	b.pages = append(b.pages, page{title: "Bed", sub: "section, story stick, views and parts are left out: the bed cannot be built", list: b.unbuiltList})
}

func (b *binder) unbuiltList(area render.Rect) []render.Mark {
	w := &writer{st: b.st, ref: "bed", w: area.W()}
	w.lead("The bed cannot be built", "another size is needed for each of these, and then all answers can be given")
	for _, words := range unbuiltWords(b.s, b.o.Unit) {
		w.y += b.st.Body.Leading() * 0.4
		w.all(b.st.Body, words)
	}
	return render.Shift(w.marks, area.Min)
}
