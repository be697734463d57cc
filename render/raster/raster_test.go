package raster

import (
	"bytes"
	"errors"
	"image"
	"image/color"
	"image/png"
	"testing"

	"github.com/fogleman/gg"
	"pgregory.net/rapid"

	"bunkwright/render"
)

// pixels returns a drawing whose unit is the pixel at scale 1.
func pixels(w, h float64, marks ...render.Mark) render.Drawing {
	return render.Drawing{W: render.Px(w), H: render.Px(h), Marks: marks}
}

func px(x, y float64) render.Point { return render.Point{X: render.Px(x), Y: render.Px(y)} }

// column returns the red values of a column of pixels; in the print palette they are the grey.
func column(img *image.RGBA, x int) []uint8 {
	var list []uint8
	for y := img.Rect.Min.Y; y < img.Rect.Max.Y; y++ {
		list = append(list, img.RGBAAt(x, y).R)
	}
	return list
}

func TestSize(t *testing.T) {
	w, h, err := Size(pixels(1200, 800), 1)
	if w != 1200 || h != 800 || err != nil {
		t.Errorf("got %d x %d, %v", w, h, err)
	}
	// 11 in at 150 pixels to the inch.
	if w, _, _ := Size(render.Drawing{W: render.In(11), H: 10}, 150.0/96); w != 1650 {
		t.Errorf("Letter at 150 to the inch: %d", w)
	}
	for _, scale := range []float64{0, -1, 1e9} {
		var size *SizeError
		if _, _, err := Size(pixels(10, 10), scale); !errors.As(err, &size) {
			t.Errorf("scale %g: got %v", scale, err)
		}
		if img := Draw(pixels(10, 10), scale, render.Light); img.Rect.Dx() != 1 {
			t.Errorf("scale %g: drawn as %v", scale, img.Rect)
		}
	}
}

// TestLevelLinesAreSharp: a line of a whole number of pixels covers just these, wherever it is.
func TestLevelLinesAreSharp(t *testing.T) {
	for _, y := range []float64{5, 5.2, 5.49, 5.5, 5.99} {
		for width, want := range map[float64][]uint8{
			1: {255, 255, 255, 255, 255, 0, 255, 255, 255, 255},
			3: {255, 255, 255, 255, 0, 0, 0, 255, 255, 255},
		} {
			line := render.Stroke("", render.Line(px(2, y), px(18, y)), render.Pen{Width: render.Px(width)})
			got := column(Draw(pixels(20, 10, line), 1, render.Print), 10)
			if !bytes.Equal(got, want) {
				t.Errorf("width %g at %g: got %v, want %v", width, y, got, want)
			}
		}
	}
	// 1.5 wide about the middle of a pixel: that one, and a quarter of both beside it.
	line := render.Stroke("", render.Line(px(2, 5.5), px(18, 5.5)), render.Pen{Width: render.Px(1.5)})
	got := column(Draw(pixels(20, 10, line), 1, render.Print), 10)
	if got[5] != 0 || got[4] != 191 || got[6] != 191 {
		t.Errorf("width 1.5: got %v", got)
	}
}

// TestUprightFillsAgreeWithGG: the fast way gives what the general one gives.
func TestUprightFillsAgreeWithGG(t *testing.T) {
	whole := rapid.IntRange(-5, 45)
	rapid.Check(t, func(t *rapid.T) {
		var shape render.Path
		dc := gg.NewContext(40, 40)
		dc.SetColor(color.White)
		dc.Clear()
		dc.SetColor(color.Black)
		dc.SetFillRuleEvenOdd()
		for range rapid.IntRange(1, 4).Draw(t, "boxes") {
			x, y := float64(whole.Draw(t, "x")), float64(whole.Draw(t, "y"))
			w, h := float64(whole.Draw(t, "w")), float64(whole.Draw(t, "h"))
			shape = append(shape, render.Polygon(px(x, y), px(x+w, y), px(x+w, y+h), px(x+w/2, y+h), px(x+w/2, y+h+3), px(x, y+h+3))...)
			for i, p := range [][2]float64{{x, y}, {x + w, y}, {x + w, y + h}, {x + w/2, y + h}, {x + w/2, y + h + 3}, {x, y + h + 3}} {
				p[0] = fillGrid(p[0])
				if i == 0 {
					dc.MoveTo(p[0], p[1])
				} else {
					dc.LineTo(p[0], p[1])
				}
			}
			dc.ClosePath()
		}
		dc.Fill()
		img := Draw(pixels(40, 40, render.Fill("", shape, render.InkMain)), 1, render.Print)
		for i, want := range dc.Image().(*image.RGBA).Pix {
			if img.Pix[i] != want {
				t.Fatalf("pixel %d, %d: got %d, want %d", i/4%40, i/160, img.Pix[i], want)
			}
		}
	})
}

// TestDrawsIntoPartOfPicture: nothing outside the part is touched, and the part looks the same.
func TestDrawsIntoPartOfPicture(t *testing.T) {
	d := busyPage()
	whole := image.NewRGBA(image.Rect(0, 0, 400, 300))
	part := whole.SubImage(image.Rect(50, 40, 250, 240)).(*image.RGBA)
	var p Painter
	p.Draw(part, d, 1, render.Light)
	alone := image.NewRGBA(image.Rect(0, 0, 200, 200))
	p.Draw(alone, d, 1, render.Light)
	for y := range 300 {
		for x := range 400 {
			want := color.RGBA{}
			if (image.Point{X: x, Y: y}).In(part.Rect) {
				want = alone.RGBAAt(x-50, y-40)
			}
			if got := whole.RGBAAt(x, y); got != want {
				t.Fatalf("pixel %d, %d: got %v, want %v", x, y, got, want)
			}
		}
	}
}

func TestSameDrawingSamePixels(t *testing.T) {
	a, b := Draw(busyPage(), 1, render.Dark), Draw(busyPage(), 1, render.Dark)
	if !bytes.Equal(a.Pix, b.Pix) {
		t.Error("two pictures of one drawing differ")
	}
	opaque := true
	for i := 3; i < len(a.Pix); i += 4 {
		opaque = opaque && a.Pix[i] == 255
	}
	if !opaque {
		t.Error("the picture can be seen through")
	}
}

// TestWordsKeepTheirMeasure: the ink of a word lies in its measured box, a pixel allowed.
func TestWordsKeepTheirMeasure(t *testing.T) {
	for _, size := range []float64{13, 14, 18, 40} {
		words := render.Lettering{Size: render.Px(size), Face: render.Medium}.Text(px(20.3, 60.4), `(9' 10-1/8") Ägypten`, render.InkMain, render.Left)
		img := Draw(pixels(700, 100, render.Words("", words)), 1, render.Print)
		ink := image.Rectangle{}
		for y := range 100 {
			for x := range 700 {
				if img.RGBAAt(x, y).R < 200 {
					ink = ink.Union(image.Rect(x, y, x+1, y+1))
				}
			}
		}
		b := words.Bounds()
		outer := image.Rect(int(b.Min.X/render.Px(1))-1, int(b.Min.Y/render.Px(1))-1, int(b.Max.X/render.Px(1))+2, int(b.Max.Y/render.Px(1))+2)
		if !ink.In(outer) {
			t.Errorf("size %g: ink in %v, measured %v", size, ink, outer)
		}
		if ink.Dx() < outer.Dx()-8 || ink.Dy() < outer.Dy()-5 {
			t.Errorf("size %g: ink in %v is less than measured %v", size, ink, outer)
		}
	}
}

func TestPNGRefusesWhatItCannotDraw(t *testing.T) {
	var missing *render.MissingError
	d := pixels(50, 20, render.Words("", render.ScreenStyle.Body.Text(px(2, 12), "⌀", render.InkMain, render.Left)))
	if err := PNG(&bytes.Buffer{}, d, 1, render.Light); !errors.As(err, &missing) {
		t.Errorf("got %v", err)
	}
	d = pixels(50, 20, render.Words("", render.ScreenStyle.Body.Text(px(2, 12), "?", render.InkMain, render.Left)))
	asked := Draw(d, 1, render.Light)
	d.Marks[0].Text.Words = "⌀"
	if !bytes.Equal(Draw(d, 1, render.Light).Pix, asked.Pix) {
		t.Error("a missing letter is not drawn as a question mark")
	}
	broken := pixels(10, 10, render.Stroke("", render.Path{}.Line(px(1, 1)), render.Pen{Width: 1}))
	Draw(broken, 1, render.Light) // does not panic
	var b bytes.Buffer
	if err := PNG(&b, pixels(30, 20), 1, render.Light); err != nil {
		t.Fatal(err)
	}
	if img, err := png.Decode(&b); err != nil || img.Bounds() != image.Rect(0, 0, 30, 20) {
		t.Errorf("reads back as %v, %v", img, err)
	}
}

// TestFarAwayIsDrawn: a zoom leaves most of a line far outside the picture, beyond what gg counts.
func TestFarAwayIsDrawn(t *testing.T) {
	far := render.Stroke("", render.Line(px(-1e9, 5.5), px(1e9, 5.5)), render.ScreenStyle.Behind)
	img := Draw(pixels(20, 10, far), 1, render.Print)
	if got := column(img, 2); got[5] == 255 && img.RGBAAt(9, 5).R == 255 {
		t.Error("the line is not there")
	}
}

// TestNothingPanics: a window draws whatever it is given.
func TestNothingPanics(t *testing.T) {
	value := rapid.OneOf(rapid.Float64Range(-50, 100), rapid.Float64())
	rapid.Check(t, func(t *rapid.T) {
		point := func() render.Point {
			return render.Point{X: render.Paper(value.Draw(t, "x")), Y: render.Paper(value.Draw(t, "y"))}
		}
		var path render.Path
		for range rapid.IntRange(0, 6).Draw(t, "steps") {
			op := render.Op(rapid.IntRange(0, 4).Draw(t, "op"))
			path = append(path, render.Step{Op: op, C1: point(), C2: point(), To: point()})
		}
		pen := render.Pen{Width: render.Paper(value.Draw(t, "width"))}
		pen.Dash.Pattern = [4]render.Paper{render.Paper(value.Draw(t, "on")), render.Paper(value.Draw(t, "off"))}
		d := pixels(60, 40, render.Stroke("", path, pen), render.Fill("", path, render.InkFits),
			render.Words("", render.Lettering{Size: render.Paper(value.Draw(t, "size"))}.Text(point(), "x½", 0, render.Centre)))
		img := Draw(d, 1, render.Light)
		if img.RGBAAt(0, 0).A != 255 {
			t.Fatal("no picture")
		}
	})
}
