package view

import (
	"bunkwright/render"
)

// Measures of a sheet, in mm on paper.
const (
	margin      render.Paper = 7.5
	columnWide  render.Paper = 51 // of the column beside a drawing
	columnGap   render.Paper = 3
	titleHigh   render.Paper = 14
	checkHigh   render.Paper = 13 // of the strip with the line to measure and the scale bar
	footerHigh  render.Paper = 32 // of the block under an upright sheet
	legendsHigh render.Paper = 26 // of the legend under an upright drawing
	wordsHigh   render.Paper = 48 // of the legend with further words beside it
)

// frame is a sheet in the making.
type frame struct {
	*binder
	d        render.Drawing
	n        int // of the sheet
	upright  bool
	area     render.Rect // for the drawing or the list
	column   render.Rect // beside it, or the block under it
	scale    scale
	scaled   bool
	occupied render.Paper // how far down the column is full
}

// frame lays out sheet i.
func (b *binder) frame(i int, upright bool) *frame {
	short, long := b.o.Paper.Size()
	f := &frame{binder: b, n: i + 1, upright: upright}
	f.d = render.Drawing{Title: b.pages[i].title, W: long, H: short}
	if f.upright {
		f.d.W, f.d.H = short, long
	}
	inner := f.d.Page().Grow(-margin)
	f.area = inner
	f.area.Min.Y += titleHigh
	if f.upright {
		f.area.Max.Y -= footerHigh + 4
		f.column = render.Rect{Min: render.Point{X: inner.Min.X, Y: inner.Max.Y - footerHigh}, Max: inner.Max}
	} else {
		f.area.Max.X -= columnWide + columnGap
		f.column = render.Rect{Min: render.Point{X: inner.Max.X - columnWide, Y: inner.Min.Y}, Max: inner.Max}
	}
	if b.pages[i].list == nil {
		f.area.Max.Y -= checkHigh
		if f.upright {
			f.area.Max.Y -= b.pages[i].stripHigh()
		}
	}
	return f
}

// stripHigh is the height of the legend and further words under an upright drawing.
func (p *page) stripHigh() render.Paper {
	switch {
	case p.beside != nil:
		return wordsHigh
	case p.legend:
		return legendsHigh
	}
	return 0
}

func (f *frame) add(marks ...render.Mark) { f.d.Add(marks...) }

// text puts words at a baseline.
func (f *frame) text(at render.Point, in render.Lettering, words string, anchor render.Anchor) {
	f.add(render.Words("", in.Text(at, words, render.InkMain, anchor)))
}

// place draws the view at the largest usual scale that fits the area, in its middle; it tells whether any fits.
func (f *frame) place(p *page) bool {
	o := Options{On: OnPaper, Unit: f.o.Unit}
	var d render.Drawing
	fits := false
	for _, f.scale = range usualScales(f.o.Unit) {
		o.Scale = f.scale.k
		d = p.view(o)
		if fits = d.W <= f.area.W()+2*edge && d.H <= f.area.H()+2*edge; fits {
			break
		}
	}
	f.scaled = true
	at := f.area.Centre().Minus(d.Page().Centre())
	f.add(render.Shift(d.Marks, at)...)
	return fits
}

// finish adds title, block and what stands beside the drawing.
func (f *frame) finish(p *page) {
	at := f.d.Page().Grow(-margin).Min
	f.text(render.Point{X: at.X, Y: at.Y + f.st.Title.Size*0.8}, f.st.Title, p.title, render.Left)
	f.text(render.Point{X: at.X, Y: at.Y + f.st.Title.Size*0.8 + f.st.Body.Leading()*1.5}, f.st.Body, p.sub, render.Left)
	if p.list == nil {
		f.checkStrip()
	}
	if f.upright {
		f.footer(p)
	} else {
		f.block(p)
	}
	if p.list == nil {
		f.besides(p)
	}
}

// checkStrip draws the long line to measure and the scale bar under a drawing.
func (f *frame) checkStrip() {
	y := f.area.Max.Y + 3
	if f.upright {
		y += 1
	}
	bar := render.CheckFourInch
	if f.o.Paper == A4 {
		bar = render.CheckHundredMM
	}
	words := "this line is " + bar.Words + ": measure it before you trust the sheet"
	at := render.Point{X: f.area.Min.X, Y: y}
	marks := f.st.CheckBar("check", at, bar)
	marks[0] = render.Words("check", f.st.Small.Text(render.Point{X: at.X, Y: at.Y + f.st.Small.Size*0.8}, words, render.InkMain, render.Left))
	f.add(marks...)
	unit, n, name := Options{Unit: f.o.Unit}.barOf(f.scale.k)
	scaleMarks := f.st.ScaleBar("scale", render.Point{}, unit, n, name)
	box := render.Bounds(scaleMarks)
	x := f.area.Max.X - box.Max.X
	if x+box.Min.X < at.X+bar.Length+4 { // no room beside the line
		return
	}
	f.add(render.Shift(scaleMarks, render.Point{X: x, Y: render.Bounds(marks).Max.Y - box.Max.Y})...)
}
