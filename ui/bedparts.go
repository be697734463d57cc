package ui

import (
	"bytes"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/ui/control"
)

// partsList shows the boards of the last bed that could be built, those cut alike in one line, to copy or to save.
func (w *Window) partsList() {
	bed := w.bed.bed()
	if bed == nil {
		w.status.at("there is no bed to list yet")
		return
	}
	sheet := control.NewSketch(render.InkPanel, func(wide, high render.Paper) render.Drawing { return w.drawPartsList(bed, wide, high) })
	lines := len(furniture.List(bed.Parts, w.live.unit())) + 1
	sheet.Least = fyne.NewSize(560, float32(lines*partLine+8))
	buttons := container.NewHBox(
		control.NewButton(render.InkPanel, func() string { return "Copy" }, false, w.copyParts),
		control.NewButton(render.InkPanel, func() string { return "Save as CSV..." }, false, w.saveParts))
	d := dialog.NewCustom(plural(len(bed.Parts), "board"), "Close", container.NewBorder(nil, buttons, nil, nil, container.NewVScroll(sheet)), w.win)
	size := w.win.Canvas().Size()
	d.Resize(fyne.NewSize(min(760, size.Width*0.9), size.Height*0.85))
	d.Show()
}

// partLine is how high a line of the list is, in pixels.
const partLine = 22

// partColumns says where the columns begin, as shares of the width; a count ends there.
var partColumns = [6]float64{0.07, 0.10, 0.33, 0.48, 0.68, 0.82}

func (w *Window) drawPartsList(bed *bunk.Bed, wide, high render.Paper) render.Drawing {
	d := render.Drawing{W: wide, H: high}
	st := render.ScreenStyle
	put := func(i int, l furniture.Listed, ink render.Ink) {
		y := render.Px(float64(i*partLine) + partLine/2)
		for k, words := range l.Columns() {
			anchor := render.Left
			if k == 0 {
				anchor = render.Right
			}
			d.Add(render.Words(l.Of.Part.ID, st.Body.Text(render.Point{X: wide * render.Paper(partColumns[k]), Y: y}, words, ink, anchor).Middled()))
		}
		line := y + render.Px(partLine/2-0.5)
		d.Add(render.Stroke("", render.Line(render.Point{Y: line}, render.Point{X: wide, Y: line}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
	}
	put(0, furniture.ListHead, render.InkSoft)
	for i, l := range furniture.List(bed.Parts, w.live.unit()) {
		put(i+1, l, render.InkMain)
	}
	return d
}

// copyParts puts the list on the clipboard, as text in columns.
func (w *Window) copyParts() {
	if bed := w.bed.bed(); bed != nil {
		w.app.Clipboard().SetContent(furniture.ListText(bed.Parts, w.live.unit()))
		w.status.at("the parts list is on the clipboard")
	}
}

// saveParts asks for a file and writes the list to it as comma-separated values.
func (w *Window) saveParts() {
	if w.bed.bed() != nil {
		w.keep(w.partsSaving())
	}
}

func (w *Window) partsSaving() saving {
	return saving{
		what: "The parts list", name: fileName(w.session.Job().Name) + "-parts", exts: []string{".csv"},
		write: func(path string) error {
			var b bytes.Buffer
			if err := furniture.ListCSV(&b, w.bed.bed().Parts, w.live.unit()); err != nil {
				return err
			}
			return w.writeWhole(path, b.Bytes())
		},
	}
}
