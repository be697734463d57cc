package view

import (
	"fmt"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/length"
)

// entry is a row of the title block.
type entry struct {
	name, words string
	strong      bool
}

// entries are the rows of a sheet's title block.
func (f *frame) entries(p *page) []entry {
	if f.foot != nil {
		return f.foot(f, p)
	}
	list := []entry{
		{"Job", f.s.Job.Name, true},
		{"Sheet", fmt.Sprintf("%d of %d: %s", f.n, len(f.pages), lowered(p.title)), true},
	}
	if f.scaled {
		list = append(list, entry{"Scale", f.scale.name, true})
	}
	return append(list,
		entry{"Units", f.units(), false},
		entry{"Read by", f.readBy(), false},
		entry{"How sure", f.howSure(), false},
		entry{"Date", f.o.Date, false},
	)
}

// units says how measures are written on the sheet.
func (f *frame) units() string {
	if f.unitSaid != "" {
		return f.unitSaid
	}
	return unitWords(f.o.Unit)
}

func unitWords(u length.Unit) string {
	if u == length.Millimetres {
		return "mm; spare rounded toward zero, shortage away"
	}
	return "feet and inches to 1/16 in; spare rounded toward zero, shortage away"
}

// shortBar is the line to measure in the title block.
func (f *frame) shortBar() render.CheckBar {
	if f.o.Paper == A4 {
		return render.CheckFiftyMM
	}
	return render.CheckTwoInches
}

// block draws the title block at the foot of the column beside a drawing.
func (f *frame) block(p *page) {
	x, wide := f.column.Min.X, f.column.W()
	marks := f.blockRows(p, x, wide)
	y := render.Bounds(marks).Max.Y + f.st.Gap*2
	marks = append(marks, f.st.CheckBar("check", render.Point{X: x, Y: y}, f.shortBar())...)
	y = render.Bounds(marks).Max.Y + f.st.Gap*2
	marks = append(marks, f.rule(x, y, wide, f.st.Thin))
	marks = append(marks, f.st.Small.Paragraph("caution", render.Point{X: x, Y: y + f.st.Small.Leading()}, fit.Caution, wide, render.InkMain)...)
	y = render.Bounds(marks).Max.Y + f.st.Gap*1.5
	marks = append(marks, f.rule(x, y, wide, f.st.Cut))
	down := f.column.Max.Y - y - f.st.Cut.Width/2
	f.add(render.Shift(marks, render.Point{Y: down})...)
	f.occupied = down
}

// blockRows draws the rows of the block from 0 down.
func (f *frame) blockRows(p *page, x, wide render.Paper) []render.Mark {
	const names render.Paper = 14
	marks := []render.Mark{f.rule(x, 0, wide, f.st.Cut)}
	y := render.Paper(0)
	for i, e := range f.entries(p) {
		if i > 0 {
			marks = append(marks, f.rule(x, y, wide, f.st.Thin))
		}
		in := f.st.Small
		if e.strong {
			in.Face = render.Bold
		}
		y += f.st.Small.Leading() * 1.05
		marks = append(marks, render.Words("", f.st.Small.Text(render.Point{X: x, Y: y}, e.name, render.InkMain, render.Left)))
		lines := render.Wrap(e.words, in.Size, in.Face, wide-names)
		marks = append(marks, in.Lines("", render.Point{X: x + names, Y: y}, lines, render.InkMain, render.Left)...)
		y += render.Paper(max(len(lines)-1, 0))*in.Leading() + f.st.Small.Leading()*0.45
	}
	return append(marks, f.rule(x, y, wide, f.st.Thin))
}

func (f *frame) rule(x, y, wide render.Paper, pen render.Pen) render.Mark {
	return render.Stroke("", render.Line(render.Point{X: x, Y: y}, render.Point{X: x + wide, Y: y}), pen)
}

// footer draws the block under an upright sheet, down to the margin.
func (f *frame) footer(p *page) {
	x, wide := f.column.Min.X, f.column.W()
	marks := []render.Mark{f.rule(x, 0, wide, f.st.Cut)}
	marks = append(marks, f.footerColumns(p, x, wide)...)
	y := render.Bounds(marks).Max.Y + f.st.Gap*1.4
	marks = append(marks, f.rule(x, y, wide, f.st.Thin))
	marks = append(marks, f.footerUnits(x, y, wide)...)
	y = render.Bounds(marks).Max.Y + f.st.Gap*1.4
	marks = append(marks, f.rule(x, y, wide, f.st.Thin))
	marks = append(marks, f.st.Small.Paragraph("caution", render.Point{X: x, Y: y + f.st.Small.Leading()*1.1}, fit.Caution, wide, render.InkMain)...)
	y = render.Bounds(marks).Max.Y + f.st.Gap*1.4
	marks = append(marks, f.rule(x, y, wide, f.st.Cut))
	f.add(render.Shift(marks, render.Point{Y: f.column.Max.Y - y - f.st.Cut.Width/2})...)
}

// footerColumns draws the entries side by side.
func (f *frame) footerColumns(p *page, x, wide render.Paper) []render.Mark {
	shares := []render.Paper{0.21, 0.2, 0.23, 0.24, 0.12}
	var marks []render.Mark
	for i, e := range f.footerEntries(p) {
		w := wide*shares[i] - f.st.Gap*3
		in := f.st.Small
		if e.strong {
			in.Face = render.Bold
		}
		y := f.st.Small.Leading() * 1.2
		marks = append(marks, render.Words("", f.st.Small.Text(render.Point{X: x, Y: y}, e.name, render.InkMain, render.Left)))
		marks = append(marks, in.Paragraph("", render.Point{X: x, Y: y + f.st.Small.Leading()}, e.words, w, render.InkMain)...)
		x += w + f.st.Gap*3
	}
	return marks
}

// footerEntries are the columns of the block under an upright sheet.
func (f *frame) footerEntries(p *page) []entry {
	var list []entry
	for _, e := range f.entries(p) {
		switch e.name {
		case "Scale":
			list[len(list)-1].words += "; " + e.words
		case "Units":
		default:
			list = append(list, e)
		}
	}
	return list
}

// footerUnits draws the row with the units and the line to measure, below y.
func (f *frame) footerUnits(x, y, wide render.Paper) []render.Mark {
	bar := f.shortBar()
	base := y + f.st.Small.Leading()*1.3
	left := x + wide - bar.Length
	words := func(x render.Paper, words string, anchor render.Anchor) render.Mark {
		return render.Words("", f.st.Small.Text(render.Point{X: x, Y: base}, words, render.InkMain, anchor))
	}
	line := f.st.CheckBar("check", render.Point{X: left}, bar)[1:]
	down := base - render.Bounds(line).Max.Y + f.st.Cut.Width/2
	return append(render.Shift(line, render.Point{Y: down}),
		words(x, "Units", render.Left), words(x+12, f.units(), render.Left),
		words(left-f.st.Gap*2, "Measure this line: "+bar.Words, render.Right))
}
