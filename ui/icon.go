package ui

import (
	"bytes"

	"fyne.io/fyne/v2"

	"bunkwright/render"
	"bunkwright/render/raster"
)

// IconPNG draws the picture of the program, a bunk in front of a tape, px pixels a side.
func IconPNG(px float64) ([]byte, error) {
	var b bytes.Buffer
	err := raster.PNG(&b, icon(), px/64, render.Light)
	return b.Bytes(), err
}

// Icon is the picture of the program for the window.
func Icon() fyne.Resource {
	png, err := IconPNG(256)
	if err != nil {
		return nil
	}
	return fyne.NewStaticResource("bunkwright.png", png)
}

// icon draws on 64 by 64 pixels.
func icon() render.Drawing {
	d := render.Drawing{W: render.Px(64), H: render.Px(64)}
	box := func(x0, y0, x1, y1 float64) render.Rect {
		return render.Rect{Min: render.Point{X: render.Px(x0), Y: render.Px(y0)}, Max: render.Point{X: render.Px(x1), Y: render.Px(y1)}}
	}
	part := func(ink render.Ink, x0, y0, x1, y1 float64) {
		d.Add(render.Outlined("", render.Box(box(x0, y0, x1, y1)), ink, render.Pen{Width: render.Px(1.25)})...)
	}
	d.Add(render.Fill("", render.Box(box(0, 0, 64, 64)), render.InkTape))
	for i := range 9 {
		high := 5.0
		if i%4 == 0 {
			high = 9
		}
		x := render.Px(8 * float64(i))
		d.Add(render.Stroke("", render.Line(render.Point{X: x}, render.Point{X: x, Y: render.Px(high)}), render.Pen{Width: render.Px(1.5)}))
	}
	for _, y := range []float64{25, 46} { // mattress and side rail of each bed
		part(render.InkWhite, 12, y-5, 52, y)
		part(render.InkBoard, 10, y, 54, y+6)
	}
	part(render.InkBoard, 10, 14, 36, 18)         // guardrail
	for _, y := range []float64{24, 32, 40, 48} { // ladder: treads, then sides
		part(render.InkBoard, 40, y, 50, y+2.5)
	}
	for _, x := range []float64{37, 49} {
		part(render.InkEndGrain, x, 14, x+3, 59)
	}
	part(render.InkEndGrain, 6, 12, 11, 60)
	part(render.InkEndGrain, 53, 12, 58, 60)
	return d
}
