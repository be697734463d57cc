package raster

import (
	"image"
	"image/color"
	"image/draw"
	"math"

	"golang.org/x/image/font"
	"golang.org/x/image/font/opentype"
	"golang.org/x/image/math/fixed"

	"bunkwright/render"
)

// letters draws level text and keeps the letters it has rasterized, each at up to four places
// between two pixels, so that words keep their measured width. Their baseline lies on a row.
type letters struct {
	faces map[faceKey]font.Face
	masks map[letterKey]letter
}

type faceKey struct {
	face render.Face
	size fixed.Int26_6 // of the em, in pixels
}

type letterKey struct {
	faceKey
	r       rune
	quarter uint8
}

// letter is the shape of a letter and where it lies from the pixel that its origin is in.
type letter struct {
	mask *image.Alpha
	at   image.Point
}

// Sizes of the em, in pixels: what is smaller or larger is left out, for nobody could read it,
// and what is larger than maxKept is not kept.
const (
	minSize = 1
	maxSize = 1024
	maxKept = 64
)

// maxLetters bounds the memory of the letters kept, at 300 bytes for one of a usual size.
const maxLetters = 8192

func (l *letters) draw(s *sheet, t render.Text, c color.RGBA) {
	size := float64(t.Size) * s.k
	if size < minSize || size > maxSize {
		return
	}
	key := faceKey{t.Face, fixed.Int26_6(math.Round(size * 64))}
	start := t.Start()
	x := float64(start.X) * s.k
	y := int(math.Round(float64(start.Y) * s.k))
	ink := image.NewUniform(c)
	for _, r := range render.Substituted(t.Words) {
		quarters := int(math.Round(x * 4))
		g := l.letter(letterKey{key, r, uint8(quarters & 3)})
		at := g.at.Add(image.Pt(quarters>>2, y))
		draw.DrawMask(s.img, g.mask.Rect.Add(at), ink, image.Point{}, g.mask, image.Point{}, draw.Over)
		x += float64(render.Advance(r, t.Size, t.Face)) * s.k
	}
}

func (l *letters) letter(key letterKey) letter {
	if g, ok := l.masks[key]; ok {
		return g
	}
	if l.masks == nil || len(l.masks) >= maxLetters {
		l.masks = map[letterKey]letter{}
	}
	g := l.rasterize(key)
	if key.size <= maxKept*64 {
		l.masks[key] = g
	}
	return g
}

// rasterize copies the letter's mask, which the face reuses for the next one.
func (l *letters) rasterize(key letterKey) letter {
	dot := fixed.Point26_6{X: fixed.Int26_6(key.quarter) * 16}
	box, mask, from, _, _ := l.face(key.faceKey).Glyph(dot, key.r)
	own := image.NewAlpha(image.Rect(0, 0, box.Dx(), box.Dy()))
	if mask != nil {
		draw.Draw(own, own.Rect, mask, from, draw.Src)
	}
	return letter{own, box.Min}
}

func (l *letters) face(key faceKey) font.Face {
	if f, ok := l.faces[key]; ok {
		return f
	}
	options := opentype.FaceOptions{Size: float64(key.size) / 64, DPI: 72, Hinting: font.HintingNone}
	f, err := opentype.NewFace(key.face.Font(), &options)
	if err != nil {
		panic(err) // NewFace of a parsed font and options as above returns none
	}
	if l.faces == nil || len(l.faces) >= 64 { // a wheel that zooms asks for ever new sizes
		l.faces = map[faceKey]font.Face{}
	}
	l.faces[key] = f
	return f
}
