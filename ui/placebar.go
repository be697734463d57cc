package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/render"
	"bunkwright/ui/control"
)

// placeBar is where the place of the bed is typed: what can be dragged can be typed.
type placeBar struct {
	w      *Window
	object fyne.CanvasObject
	along  *control.Field
	gap    *control.Field
	words  *control.Sketch
}

func newPlaceBar(w *Window) *placeBar {
	b := &placeBar{w: w}
	b.along = w.lengthField("place.along", "distance along the wall")
	b.gap = w.lengthField("place.gap", "gap to the wall")
	b.words = control.NewSketch(render.InkPaper, b.draw)
	b.object = container.New(placeBarLayout{b}, b.words, b.along, b.gap)
	w.live.watch(b.words.Redraw)
	return b
}

// Where the two fields stand in the bar, in pixels.
const (
	barHigh  = 40
	alongAt  = 150
	barField = 96
)

// gapAt is where the field of the gap stands in a bar of a width.
func (b *placeBar) gapAt(w float32) float64 { return float64(max(340, min(430, w-barField-110))) }

func (b *placeBar) draw(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	j := b.w.session.Job()
	if j == nil {
		return d
	}
	st := render.ScreenStyle
	y := render.Px(4 + 13)
	put := func(x float64, words string, anchor render.Anchor) {
		d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(x), Y: y}, words, render.InkSoft, anchor).Middled()))
	}
	wall := "no wall"
	if j.Place.Wall != "" {
		wall = "wall " + j.Place.Wall[:1] + " to " + j.Place.Wall[1:]
	}
	from := j.Place.From
	if from == "" && wall != "no wall" {
		from = j.Place.Wall[:1]
	}
	gapAt := b.gapAt(float32(w / render.Px(1)))
	put(16, "Bed at "+wall, render.Left)
	put(alongAt+barField+8, "from "+from, render.Left)
	put(gapAt-10, "gap", render.Right)
	gap := "off it"
	if !j.Place.Gap.Set {
		gap = "pressed to it"
	}
	put(gapAt+barField+8, gap, render.Left)
	return d
}

type placeBarLayout struct{ b *placeBar }

func (l placeBarLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	l.b.words.Resize(size)
	for f, x := range map[*control.Field]float32{l.b.along: alongAt, l.b.gap: float32(l.b.gapAt(size.Width))} {
		f.Move(fyne.NewPos(x, 3))
		f.Resize(fyne.NewSize(barField, f.HeightFor(barField)))
	}
}

func (l placeBarLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(380, max(barHigh, l.b.along.HeightFor(barField)+8, l.b.gap.HeightFor(barField)+8))
}
