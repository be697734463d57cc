package raster

import (
	"image"
	"image/color"
	"image/draw"
	"math"
	"slices"

	"bunkwright/render"
)

// Most lines and fills of a room and a bed are level or upright. This file draws them row by
// row, several times as fast as gg, which blends every pixel of every shape.

// side is a straight side.
type side struct{ a, b render.Point }

// uprightSides returns the sides of the lines, or false if one is slanted. The missing last side
// of an open line counts if asked for, as it does when it is filled.
func uprightSides(runs []render.Run, closeAll bool) ([]side, bool) {
	var sides []side
	for _, r := range runs {
		for i, b := range r.Points {
			if i == 0 && !r.Closed && !closeAll {
				continue
			}
			a := r.Points[(i+len(r.Points)-1)%len(r.Points)]
			if a.X != b.X && a.Y != b.Y {
				return nil, false
			}
			sides = append(sides, side{a, b})
		}
	}
	return sides, true
}

// strokeUpright draws a solid line whose sides are all level or upright, and reports whether it
// is one. Each side reaches half a width beyond its ends, so that corners are square.
func (s *sheet) strokeUpright(runs []render.Run, width float64, c color.RGBA) bool {
	sides, ok := uprightSides(runs, false)
	if !ok {
		return false
	}
	half := width / 2
	for _, l := range sides {
		r := render.Around(l.a, l.b)
		s.box(s.pixel(r.Min.X)-half, s.pixel(r.Min.Y)-half, s.pixel(r.Max.X)+half, s.pixel(r.Max.Y)+half, c)
	}
	return true
}

// box covers an upright rectangle; pixels that it covers in part are blended.
func (s *sheet) box(x0, y0, x1, y1 float64, c color.RGBA) {
	for y := max(0, int(math.Floor(y0))); y < min(s.img.Rect.Max.Y, int(math.Ceil(y1))); y++ {
		s.row(y, x0, x1, cover(y, y0, y1), c)
	}
}

// row covers a stretch of a row of pixels by the given share.
func (s *sheet) row(y int, x0, x1, share float64, c color.RGBA) {
	from, to := max(0, int(math.Floor(x0))), min(s.img.Rect.Max.X, int(math.Ceil(x1)))
	if from >= to {
		return
	}
	pixels := s.img.Pix[y*s.img.Stride+4*from : y*s.img.Stride+4*to]
	alpha := uint32(share*256 + 0.5)
	for i := 4; i < len(pixels)-4; i += 4 {
		blend(pixels[i:i+4:i+4], c, alpha)
	}
	blend(pixels[:4], c, uint32(share*cover(from, x0, x1)*256+0.5))
	if to > from+1 {
		blend(pixels[len(pixels)-4:], c, uint32(share*cover(to-1, x0, x1)*256+0.5))
	}
}

// cover returns the share of the pixel from n to n+1 that lies between a and b.
func cover(n int, a, b float64) float64 {
	return max(0, min(float64(n+1), b)-max(float64(n), a))
}

// blend mixes an opaque colour into a pixel by alpha 256ths.
func blend(pixel []uint8, c color.RGBA, alpha uint32) {
	rest := 256 - alpha
	pixel[0] = uint8((uint32(c.R)*alpha + uint32(pixel[0])*rest) >> 8)
	pixel[1] = uint8((uint32(c.G)*alpha + uint32(pixel[1])*rest) >> 8)
	pixel[2] = uint8((uint32(c.B)*alpha + uint32(pixel[2])*rest) >> 8)
	pixel[3] = uint8((255*alpha + uint32(pixel[3])*rest) >> 8)
}

// fillUpright fills a shape whose sides are all level or upright, and reports whether it is one.
// Snapping has put its corners between pixels, so that whole pixels are copied.
func (s *sheet) fillUpright(runs []render.Run, c color.RGBA) bool {
	sides, ok := uprightSides(runs, true)
	if !ok {
		return false
	}
	var uprights []image.Rectangle
	var ys []int
	for _, l := range sides {
		r := image.Rect(s.whole(l.a.X), s.whole(l.a.Y), s.whole(l.b.X), s.whole(l.b.Y))
		if r.Dy() > 0 {
			uprights = append(uprights, r)
			ys = append(ys, r.Min.Y, r.Max.Y)
		}
	}
	slices.Sort(ys)
	ys = slices.Compact(ys)
	ink := image.NewUniform(c)
	for i := 1; i < len(ys); i++ {
		for _, x := range insideRow(uprights, ys[i-1]) {
			draw.Draw(s.img, image.Rect(x[0], ys[i-1], x[1], ys[i]), ink, image.Point{}, draw.Src)
		}
	}
	return true
}

func (s *sheet) whole(v render.Paper) int { return int(math.Round(s.pixel(v))) }

// insideRow returns the stretches of the row of pixels below y that lie inside, by odd and even.
func insideRow(uprights []image.Rectangle, y int) [][2]int {
	var xs []int
	for _, r := range uprights {
		if r.Min.Y <= y && y < r.Max.Y {
			xs = append(xs, r.Min.X)
		}
	}
	slices.Sort(xs)
	var inside [][2]int
	for i := 1; i < len(xs); i += 2 {
		inside = append(inside, [2]int{xs[i-1], xs[i]})
	}
	return inside
}
