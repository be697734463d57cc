package raster

import (
	"image/color"
	"math"

	"bunkwright/render"
)

// band is one straight side of a line as wide as its pen, with round ends, in pixels.
type band struct {
	ax, ay, bx, by float64
	ux, uy, long   float64 // its direction, and how long it is
	half           float64
	outer, inner   float64 // half of what a pixel is wide across the line: all of it, and where it is as deep as it gets
	steep, round   float64 // 1/p and 1/2pq of evenly spread ink
}

func newBand(ax, ay, bx, by, width float64) band {
	b := band{ax: ax, ay: ay, bx: bx, by: by, long: math.Hypot(bx-ax, by-ay), half: width / 2}
	if b.ux, b.uy = 1, 0; b.long > 0 {
		b.ux, b.uy = (bx-ax)/b.long, (by-ay)/b.long
	}
	p, q := math.Abs(b.ux), math.Abs(b.uy)
	if p < q {
		p, q = q, p
	}
	b.outer, b.inner, b.steep = (p+q)/2, (p-q)/2, 1/p
	if q > 0 {
		b.round = 1 / (2 * p * q)
	}
	return b
}

// beyond returns the share of a pixel that lies on one side of a straight line which runs at distance d from its middle; all of it where d
// is large. The width of a pixel across the line is a trapezoid, the share its sum.
func (b *band) beyond(d float64) float64 {
	switch {
	case d <= -b.outer:
		return 0
	case d >= b.outer:
		return 1
	case d < -b.inner:
		return (d + b.outer) * (d + b.outer) * b.round
	case d > b.inner:
		return 1 - (b.outer-d)*(b.outer-d)*b.round
	}
	return 0.5 + d*b.steep
}

// reach is how far from the middle of the line there is any ink.
func (b *band) reach() float64 { return b.half + b.outer }

// cover returns the share of the pixel with its middle at x, y that the band covers: exact along it, at its round ends within a few hundredths.
func (b *band) cover(x, y float64) float64 {
	x, y = x-b.ax, y-b.ay
	along, off := x*b.ux+y*b.uy, x*b.uy-y*b.ux
	if past := max(-along, along-b.long); past > 0 {
		return max(0, min(1, 2*b.half, b.half+0.5-math.Hypot(past, off)))
	}
	return b.beyond(b.half-off) - b.beyond(-b.half-off)
}

// row returns the columns in which the band may cover pixels of a row.
func (b *band) row(y float64) (from, to float64) {
	reach := b.reach()
	from, to = min(b.ax, b.bx)-reach, max(b.ax, b.bx)+reach
	if deep := math.Abs(b.uy); deep > 1e-6 {
		mid, wide := b.ax+(y-b.ay)*b.ux/b.uy, reach/deep
		from, to = max(from, mid-wide), min(to, mid+wide)
	}
	return from, to
}

// strokeSlanted draws solid lines. A side that stands alone is drawn straight away; where sides meet, what they cover together is found
// first, so that it is not inked twice.
func (s *sheet) strokeSlanted(runs []render.Run, width float64, c color.RGBA) {
	for _, r := range runs {
		n := len(r.Points)
		if n <= 2 {
			s.strokeAlone(s.bandOf(r.Points[0], r.Points[n-1], width), c)
			continue
		}
		box := render.Around(r.Points[0], r.Points[0])
		for _, p := range r.Points {
			box = render.Rect{Min: render.Point{X: min(box.Min.X, p.X), Y: min(box.Min.Y, p.Y)}, Max: render.Point{X: max(box.Max.X, p.X), Y: max(box.Max.Y, p.Y)}}
		}
		s.joint.open(s.pixels(box, width/2+1))
		for i := 1; i < n; i++ {
			s.joint.add(s.bandOf(r.Points[i-1], r.Points[i], width))
		}
		if r.Closed {
			s.joint.add(s.bandOf(r.Points[n-1], r.Points[0], width))
		}
		s.joint.pour(s.img, c)
	}
}

func (s *sheet) bandOf(a, b render.Point, width float64) band {
	return newBand(s.pixel(a.X), s.pixel(a.Y), s.pixel(b.X), s.pixel(b.Y), width)
}

func (s *sheet) strokeAlone(b band, c color.RGBA) {
	reach := b.reach()
	last := min(s.img.Rect.Max.Y, int(math.Ceil(max(b.ay, b.by)+reach)))
	for y := max(0, int(min(b.ay, b.by)-reach)); y < last; y++ {
		mid := float64(y) + 0.5
		from, to := b.row(mid)
		end := min(s.img.Rect.Max.X, int(to)+1)
		for x := max(0, int(from)); x < end; x++ {
			if share := b.cover(float64(x)+0.5, mid); share > 0 {
				at := y*s.img.Stride + 4*x
				blend(s.img.Pix[at:at+4:at+4], c, uint32(share*256+0.5))
			}
		}
	}
}
