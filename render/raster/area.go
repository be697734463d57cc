package raster

import (
	"encoding/binary"
	"image"
	"image/color"
	"math"

	"bunkwright/render"
)

// Slanted fills are drawn by the share of each pixel that they cover, exactly but for rounding: every side adds, row by row, what it
// changes of the cover to its right; the sum along a row is the cover. It is several times as fast as gg, which does the same for cells
// that it sorts.

// area collects how the cover changes from one pixel to the next within a box of pixels. It is kept from one fill to the next.
type area struct {
	image.Rectangle
	wide     int       // of a row of change
	change   []float32 // all 0 between two fills
	from, to []int     // columns of each row that hold a change
}

// open sets the box to what lies between two corners, in pixels.
func (a *area) open(r image.Rectangle) {
	a.Rectangle, a.wide = r, r.Dx()+2
	if n := a.wide * r.Dy(); n > len(a.change) {
		a.change = make([]float32, n)
	}
	if r.Dy() > len(a.from) {
		a.from, a.to = make([]int, r.Dy()), make([]int, r.Dy())
	}
	for y := range r.Dy() {
		a.from[y], a.to[y] = a.wide, -1
	}
}

// add adds a side.
func (a *area) add(x0, y0, x1, y1 float64) {
	sign := 1.0
	if y0 > y1 {
		x0, y0, x1, y1, sign = x1, y1, x0, y0, -1
	}
	left, first := float64(a.Min.X), max(0, int(y0)-a.Min.Y)
	slope := (x1 - x0) / (y1 - y0)
	for y := first; y < a.Dy(); y++ {
		above := float64(a.Min.Y + y)
		top, bottom := max(above, y0), min(above+1, y1)
		if top >= bottom {
			return
		}
		a.addRow(y, x0+(top-y0)*slope-left, x0+(bottom-y0)*slope-left, sign*(bottom-top))
	}
}

// addRow adds what of a side lies in a row: it goes from p to q, and deep is how much of the row's height that takes.
func (a *area) addRow(y int, p, q, deep float64) {
	if p > q {
		p, q = q, p
	}
	p, q = max(p, 0), min(q, float64(a.Dx()))
	first, last := int(p), int(math.Ceil(q))
	row := a.change[y*a.wide : (y+1)*a.wide]
	a.from[y], a.to[y] = min(a.from[y], first), max(a.to[y], last, first+1)
	if last <= first+1 {
		right := deep * ((p+q)/2 - float64(first))
		row[first] += float32(deep - right)
		row[first+1] += float32(right)
		return
	}
	each := deep / (q - p)
	sum, before := 0.0, 0.0 // of the cover of all pixels so far, and of the last
	for x := first; x < last; x++ {
		end := float64(x + 1)
		in := min(end, q) - p
		next := each*in*in/2 + deep*max(0, end-q)
		row[x] += float32(next - sum - before)
		sum, before = next, next-sum
	}
	row[last] += float32(deep - before)
}

// pour fills what was added, by odd and even, and empties the area.
func (a *area) pour(img *image.RGBA, c color.RGBA) {
	solid := binary.LittleEndian.Uint32([]byte{c.R, c.G, c.B, 255})
	for y := range a.Dy() {
		if a.to[y] < 0 {
			continue
		}
		row := a.change[y*a.wide+a.from[y] : y*a.wide+min(a.to[y]+1, a.wide)]
		at := img.PixOffset(a.Min.X+a.from[y], a.Min.Y+y)
		end := img.PixOffset(a.Max.X, a.Min.Y+y)
		cover := float32(0)
		for i := 0; i < len(row); {
			first := i
			cover += row[i]
			row[i] = 0
			for i++; i < len(row) && row[i] == 0; i++ {
			}
			alpha := uint32(evenOdd(cover)*256 + 0.5)
			for p := at + 4*first; alpha > 0 && p < min(at+4*i, end); p += 4 {
				if alpha >= 256 {
					binary.LittleEndian.PutUint32(img.Pix[p:], solid)
				} else {
					blend(img.Pix[p:p+4:p+4], c, alpha)
				}
			}
		}
	}
}

// evenOdd turns how often something is covered into how much of it is: once is all, twice is nothing.
func evenOdd(cover float32) float32 {
	if cover < 0 {
		cover = -cover
	}
	if cover <= 1 {
		return cover
	}
	cover -= 2 * float32(math.Floor(float64(cover)/2))
	return min(cover, 2-cover)
}

// fillSlanted fills what the lines bound.
func (s *sheet) fillSlanted(runs []render.Run, c color.RGBA) {
	box := render.Rect{Min: render.Point{X: math.MaxFloat32, Y: math.MaxFloat32}, Max: render.Point{X: -math.MaxFloat32, Y: -math.MaxFloat32}}
	for _, r := range runs {
		for _, p := range r.Points {
			box = render.Around(render.Point{X: min(box.Min.X, p.X), Y: min(box.Min.Y, p.Y)}, render.Point{X: max(box.Max.X, p.X), Y: max(box.Max.Y, p.Y)})
		}
	}
	r := s.pixels(box, 0)
	if r.Empty() {
		return
	}
	s.area.open(r)
	for _, run := range runs {
		for i, q := range run.Points {
			p := run.Points[(i+len(run.Points)-1)%len(run.Points)]
			s.area.add(s.pixel(p.X), s.pixel(p.Y), s.pixel(q.X), s.pixel(q.Y))
		}
	}
	s.area.pour(s.img, c)
}

// pixels returns the pixels that a box and what lies within a distance of it, in pixels, touches.
func (s *sheet) pixels(r render.Rect, within float64) image.Rectangle {
	return image.Rect(
		int(math.Floor(s.pixel(r.Min.X)-within)), int(math.Floor(s.pixel(r.Min.Y)-within)),
		int(math.Ceil(s.pixel(r.Max.X)+within)), int(math.Ceil(s.pixel(r.Max.Y)+within)),
	).Intersect(s.img.Rect)
}
