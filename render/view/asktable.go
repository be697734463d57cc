package view

import (
	"strconv"
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/render"
)

// Columns of the table, in mm from the left edge of a column of the page.
const (
	tableTitle render.Paper = 7
	tableBlank render.Paper = 18 // width of one blank
)

// tableLead is the short word at its top.
func (b *asker) tableLead(wide render.Paper) block {
	w := &writer{st: b.st, ref: "lead", w: wide}
	w.small(b.sheet.Start + " " + howToRead)
	for _, text := range b.sheet.Cautions {
		w.strong(text)
	}
	return block{w.marks, w.y + 2}
}

// tableHead is the heading of a group, with the names of the blanks.
func (b *asker) tableHead(g ask.Group, wide render.Paper) block {
	in := render.Lettering{Size: b.st.Body.Size, Face: render.Medium}
	y := in.Leading() * 1.3
	marks := []render.Mark{render.Words("", in.Text(render.Point{Y: y}, g.Title, render.InkMain, render.Left))}
	for i, name := range []string{"other end", "tape says"} {
		at := render.Point{X: wide - tableBlank*render.Paper(i), Y: y}
		marks = append(marks, render.Words("", b.st.Small.Text(at, name, render.InkMain, render.Right)))
	}
	y += b.st.Gap
	return block{append(marks, render.Stroke("", render.Line(render.Point{Y: y}, render.Point{X: wide, Y: y}), b.st.Seen)), y}
}

// tableRow is one card: its number, what is asked, and its blanks; what is chosen from is written under it.
func (b *asker) tableRow(c ask.Card, wide render.Paper) block {
	blanks := render.Paper(1)
	if c.Kind == ask.Length && c.Other != "" {
		blanks = 2
	}
	words := c.Title
	if c.Kind == ask.Word {
		words += ": " + strings.Join(labelsOf(c), " / ")
	}
	if c.Kind != ask.Length && c.Kind != ask.Word {
		words = c.Ask
	}
	step := b.st.Small.Leading() * 1.02
	lines := render.Wrap(kept(words), b.st.Small.Size, b.st.Small.Face, wide-tableTitle-2*tableBlank-b.st.Gap)
	bold := render.Lettering{Size: b.st.Small.Size, Face: render.Bold}
	marks := []render.Mark{render.Words(c.Key, bold.Text(render.Point{Y: step}, strconv.Itoa(c.Number), render.InkMain, render.Left))}
	for i, l := range lines {
		at := render.Point{X: tableTitle, Y: step * render.Paper(i+1)}
		marks = append(marks, render.Words(c.Key, b.st.Small.Text(at, l, render.InkMain, render.Left)))
	}
	high := step*render.Paper(len(lines)) + b.st.Gap*1.5
	for i := render.Paper(0); i < 2; i++ {
		if i == 1 && blanks == 1 {
			continue
		}
		from := wide - tableBlank*(2-i) + b.st.Gap
		marks = append(marks, b.line(from, from+tableBlank-b.st.Gap, high-b.st.Gap*0.4))
	}
	return block{marks, high}
}
