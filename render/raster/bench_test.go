package raster

import (
	"image"
	"io"
	"strconv"
	"testing"

	"bunkwright/render"
)

// busyPage returns a page of 1200 x 800 pixels at scale 1 with about 250 strokes, 60 fills and
// 60 texts, as a plan and a wall of a full room have: most fills are upright, a quarter slanted.
func busyPage() render.Drawing {
	s := render.ScreenStyle
	d := render.Drawing{W: render.Px(1200), H: render.Px(800)}
	at := func(x, y int) render.Point { return render.Point{X: render.Px(float64(x)), Y: render.Px(float64(y))} }
	for i := range 60 {
		x, y := 20+i%10*115, 20+i/10*125
		shape := render.Box(render.Rect{Min: at(x, y), Max: at(x+110, y+110)})
		if i%4 == 0 {
			shape = render.Polygon(at(x, y), at(x+110, y+20), at(x+90, y+110), at(x+10, y+90))
		}
		d.Add(render.Fill("board."+strconv.Itoa(i), shape, render.InkBoard))
		d.Add(render.Stroke("", shape, s.Seen))
		d.Add(render.Stroke("", render.Line(at(x, y), at(x+100, y+100)), s.Thin))
		d.Add(render.Stroke("", render.Circle(at(x+50, y+50), render.Px(30)), s.Behind))
		d.Add(render.Stroke("", render.Line(at(x+10, y), at(x+10, y+110)), s.Post))
		d.Add(render.Words("", s.Body.Text(at(x+55, y+60), `3' 5-3/4"`, render.InkMain, render.Centre)))
	}
	for i := range 10 {
		d.Add(render.Stroke("", render.Line(at(0, i*80), at(1200, i*80)), s.Cut))
	}
	return d
}

func BenchmarkDraw1200x800(b *testing.B) { benchmarkOnto(b, 1) }

func BenchmarkDraw2400x1600(b *testing.B) { benchmarkOnto(b, 2) }

func benchmarkOnto(b *testing.B, scale float64) {
	d := busyPage()
	if err := d.Check(); err != nil {
		b.Fatal(err)
	}
	img := Draw(d, scale, render.Light)
	var p Painter
	for b.Loop() {
		p.Draw(img, d, scale, render.Light)
	}
	if img.Rect != image.Rect(0, 0, int(1200*scale), int(800*scale)) {
		b.Fatal(img.Rect)
	}
}

func BenchmarkPNG1200x800(b *testing.B) {
	d := busyPage()
	for b.Loop() {
		if err := PNG(io.Discard, d, 1, render.Light); err != nil {
			b.Fatal(err)
		}
	}
}
