// Package raster answers what a drawing looks like in pixels.
package raster

import (
	"fmt"
	"image"
	"image/draw"
	"image/png"
	"io"
	"math"
	"sync"

	"bunkwright/render"
)

// pxPerMM is the number of screen pixels to a millimetre at scale 1: 96 to the inch.
const pxPerMM = 96 / 25.4

// maxPixels bounds either side of a picture, in pixels: 0.9 m of paper at 450 to the inch.
const maxPixels = 16384

// SizeError says that a picture would have no pixels or too many.
type SizeError struct {
	W, H  render.Paper
	Scale float64
}

// Error names the size and the scale.
func (e *SizeError) Error() string {
	return fmt.Sprintf("picture of %.0f x %.0f mm at scale %g: want 1 to %d pixels a side",
		float64(e.W), float64(e.H), e.Scale, maxPixels)
}

// Size returns the size of the picture in pixels; scale 1 is 96 pixels to the inch.
func Size(d render.Drawing, scale float64) (w, h int, err error) {
	fw := math.Ceil(float64(d.W)*pxPerMM*scale - 1e-6)
	fh := math.Ceil(float64(d.H)*pxPerMM*scale - 1e-6)
	if !(fw >= 1 && fh >= 1 && fw <= maxPixels && fh <= maxPixels) {
		return 0, 0, &SizeError{d.W, d.H, scale}
	}
	return int(fw), int(fh), nil
}

// Draw returns the drawing as a picture on the palette's paper; scale 1 is 96 pixels to the
// inch. Where Size refuses, the picture is a single pixel. Letters that the font lacks become
// question marks: Drawing.Check tells of them.
func Draw(d render.Drawing, scale float64, p render.Palette) *image.RGBA {
	w, h, err := Size(d, scale)
	if err != nil {
		w, h = 1, 1
	}
	img := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(img, img.Rect, image.NewUniform(p.Color(render.InkPaper)), image.Point{}, draw.Src)
	if err == nil {
		painter := painters.Get().(*Painter)
		painter.Draw(img, d, scale, p)
		painters.Put(painter)
	}
	return img
}

// painters keeps the letters that were already rasterized from one drawing to the next.
var painters = sync.Pool{New: func() any { return new(Painter) }}

// PNG writes the picture of a drawing, or the reasons why it cannot be drawn as it stands.
func PNG(w io.Writer, d render.Drawing, scale float64, p render.Palette) error {
	if err := d.Check(); err != nil {
		return err
	}
	if _, _, err := Size(d, scale); err != nil {
		return err
	}
	encoder := png.Encoder{CompressionLevel: png.BestSpeed}
	return encoder.Encode(w, Draw(d, scale, p))
}
