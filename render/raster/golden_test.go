package raster

import (
	"bytes"
	"flag"
	"image"
	"image/png"
	"os"
	"path/filepath"
	"testing"

	"bunkwright/render"
)

var update = flag.Bool("update", false, "write the golden pictures anew; look at them after")

// smallPage holds a few of everything that is drawn in a way of its own: sharp and slanted
// lines, curves, dashes, upright and slanted fills, holes, letters in all faces.
func smallPage(s render.Style) render.Drawing {
	d := render.Drawing{W: 80, H: 50}
	at := func(x, y render.Paper) render.Point { return render.Point{X: x, Y: y} }
	wall := append(render.Box(render.Rect{Min: at(4, 4), Max: at(40, 30)}), render.Box(render.Rect{Min: at(8, 8), Max: at(36, 26)})...)
	d.Add(render.Fill("wall", wall, render.InkWallCut), render.Stroke("wall", render.Hatch(wall, s.Hatch, 45), s.Thin))
	d.Add(render.Stroke("wall", wall, s.Cut))
	d.Add(render.Outlined("pillow", render.RoundBox(render.Rect{Min: at(10, 10), Max: at(18, 24)}, 2), render.InkWhite, s.Seen)...)
	d.Add(render.Stroke("fan", render.Circle(at(28, 17), 6), s.Behind))
	d.Add(render.Outlined("roof", render.Polygon(at(44, 20), at(60, 6), at(76, 20)), render.InkBoard, s.Seen)...)
	for i, sign := range []render.Sign{render.SignDoesNotFit, render.SignTooClose, render.SignCannotTell, render.SignFits} {
		d.Add(sign.At("sign", at(48+8*render.Paper(i), 26), s.Sign)...)
	}
	d.Add(s.Dimension(render.Dimension{From: at(4, 36), To: at(40, 36), Words: `3' 5-3/4"`})...)
	d.Add(render.Words("", s.Title.Text(at(4, 46), "Title", render.InkMain, render.Left)))
	d.Add(render.Words("", s.Body.Text(at(40, 46), "kept clear", render.InkSoft, render.Centre)))
	d.Add(render.Words("", s.Measure.Text(at(76, 46), "±1/4", render.InkFits, render.Right)))
	return d
}

func TestGoldenPictures(t *testing.T) {
	for _, c := range []struct {
		name    string
		style   render.Style
		scale   float64
		palette render.Palette
	}{
		{"screen-light", render.ScreenStyle, 1, render.Light},
		{"screen-dark-2x", render.ScreenStyle, 2, render.Dark},
		{"sheet-150", render.SheetStyle, 150.0 / 96, render.Print},
	} {
		got := Draw(smallPage(c.style), c.scale, c.palette)
		file := filepath.Join("testdata", c.name+".png")
		if *update {
			writePNG(t, file, got)
		}
		if off := differing(got, readPNG(t, file)); off > 0.001 {
			t.Errorf("%s: %.2f %% of the pixels differ", file, 100*off)
		}
	}
}

// differing returns the share of pixels that differ by more than 16 of 255 in a channel, which
// allows for other rounding on another processor; 1 if the sizes do.
func differing(a, b *image.RGBA) float64 {
	if a.Rect != b.Rect {
		return 1
	}
	n := 0
	for i := 0; i < len(a.Pix); i += 4 {
		for j := range 3 {
			if d := int(a.Pix[i+j]) - int(b.Pix[i+j]); d > 16 || d < -16 {
				n++
				break
			}
		}
	}
	return float64(n) / float64(len(a.Pix)/4)
}

func writePNG(t *testing.T, file string, img *image.RGBA) {
	t.Helper()
	var b bytes.Buffer
	if err := png.Encode(&b, img); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(file, b.Bytes(), 0o644); err != nil {
		t.Fatal(err)
	}
}

func readPNG(t *testing.T, file string) *image.RGBA {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	img, err := png.Decode(bytes.NewReader(data))
	if err != nil {
		t.Fatal(err)
	}
	rgba := image.NewRGBA(img.Bounds())
	for y := range rgba.Rect.Dy() {
		for x := range rgba.Rect.Dx() {
			rgba.Set(x, y, img.At(x, y))
		}
	}
	return rgba
}
