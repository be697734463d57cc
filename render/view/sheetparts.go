package view

import (
	"fmt"
	"strconv"

	"bunkwright/furniture"
	"bunkwright/render"
	"bunkwright/room/length"
)

// partColumn is a column of the parts list: its head, where it begins as a share of the width, and its words.
type partColumn struct {
	head  string
	at    render.Paper
	words func(b *binder, a furniture.Alike) string
}

var partColumns = []partColumn{
	{"Count", 0, func(_ *binder, a furniture.Alike) string { return strconv.Itoa(a.Count) }},
	{"Part", 0.07, func(_ *binder, a furniture.Alike) string { return a.Part.Role }},
	{"Cut from", 0.3, func(_ *binder, a furniture.Alike) string { return a.Part.Stock.Name }},
	{"Section", 0.45, func(b *binder, a furniture.Alike) string { return b.section(a.Part) }},
	{"Length", 0.62, func(b *binder, a furniture.Alike) string { return b.size(a.Part.Length) }},
	{"When", 0.75, func(_ *binder, a furniture.Alike) string { return classWords(a.Part) }},
}

// partPages lists the boards, those cut alike together.
func (b *binder) partPages() {
	if b.s.Bed == nil || len(b.s.Bed.Parts) == 0 {
		return
	}
	area := b.listArea()
	const head render.Paper = 7
	var blocks []block
	for _, a := range furniture.CountAlike(b.s.Bed.Parts) {
		blocks = append(blocks, b.partBlock(a, area.W()))
	}
	pages := paged(blocks, area.H()-head)
	for i, list := range pages {
		sub := fmt.Sprintf("%d parts; finished sizes, each section as it really is", len(b.s.Bed.Parts))
		if len(pages) > 1 {
			sub += fmt.Sprintf("; page %d of %d", i+1, len(pages))
		}
		b.pages = append(b.pages, page{title: "Parts", sub: sub, list: func(area render.Rect) []render.Mark {
			return append(b.partHead(area, area.Min.Y+head-1), stack(list, area.Min.X, area.Min.Y+head)...)
		}})
	}
}

func (b *binder) partHead(area render.Rect, y render.Paper) []render.Mark {
	var marks []render.Mark
	for _, c := range partColumns {
		at := render.Point{X: area.Min.X + area.W()*c.at, Y: y - 1.6}
		marks = append(marks, render.Words("", b.st.Small.Text(at, c.head, render.InkMain, render.Left)))
	}
	return append(marks, render.Stroke("", render.Line(render.Point{X: area.Min.X, Y: y}, render.Point{X: area.Max.X, Y: y}), b.st.Cut))
}

// partBlock is one row of the list: the parts that are cut alike, with their ids under it.
func (b *binder) partBlock(a furniture.Alike, wide render.Paper) block {
	w := &writer{st: b.st, ref: a.Part.ID}
	w.y = b.st.Body.Leading()
	for i, c := range partColumns {
		in := b.st.Body
		switch {
		case i == 0 || c.head == "Length":
			in = b.st.Measure
		case c.head == "When":
			in = b.st.Small
		}
		w.marks = append(w.marks, render.Words(a.Part.ID, in.Text(render.Point{X: wide * c.at, Y: w.y}, c.words(b, a), render.InkMain, render.Left)))
	}
	w.x = wide * partColumns[1].at
	w.w = wide - w.x
	w.small(a.IDs())
	y := w.y + 1.5
	w.marks = append(w.marks, render.Stroke("", render.Line(render.Point{Y: y}, render.Point{X: wide, Y: y}), b.st.Thin))
	return block{w.marks, y + 0.4}
}

func (b *binder) size(l length.Length) string { return length.Format(l, length.Style{Unit: b.o.Unit}) }

// section writes thickness by width, or the thickness of a sheet and the width cut from it.
func (b *binder) section(p furniture.Part) string {
	return b.size(p.Stock.Thick) + " x " + b.size(p.Width())
}

func classWords(p furniture.Part) string {
	if p.Class == furniture.CutAfter && p.After != "" {
		return "cut after: " + quantityWords(p.After)
	}
	return p.Class.String()
}
