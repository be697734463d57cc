package raster

import (
	"image"
	"image/color"
	"math"
)

// joint collects what the sides of one line cover together within a box of pixels. It is kept from one line to the next.
type joint struct {
	image.Rectangle
	share    []float32 // all 0 between two lines
	from, to []int     // columns of each row that hold anything
}

// open sets the box.
func (j *joint) open(r image.Rectangle) {
	j.Rectangle = r
	if n := r.Dx() * r.Dy(); n > len(j.share) {
		j.share = make([]float32, n)
	}
	if r.Dy() > len(j.from) {
		j.from, j.to = make([]int, r.Dy()), make([]int, r.Dy())
	}
	for y := range r.Dy() {
		j.from[y], j.to[y] = r.Dx(), 0
	}
}

// add adds a side.
func (j *joint) add(b band) {
	reach := b.reach()
	last := min(j.Max.Y, int(math.Ceil(max(b.ay, b.by)+reach)))
	for y := max(j.Min.Y, int(min(b.ay, b.by)-reach)); y < last; y++ {
		mid := float64(y) + 0.5
		from, to := b.row(mid)
		first, end := max(j.Min.X, int(from)), min(j.Max.X, int(to)+1)
		if first >= end {
			continue
		}
		line := y - j.Min.Y
		row := j.share[line*j.Dx() : (line+1)*j.Dx()]
		j.from[line], j.to[line] = min(j.from[line], first-j.Min.X), max(j.to[line], end-j.Min.X)
		for x := first; x < end; x++ {
			if share := float32(b.cover(float64(x)+0.5, mid)); share > row[x-j.Min.X] {
				row[x-j.Min.X] = share
			}
		}
	}
}

// pour inks what was added and empties the joint.
func (j *joint) pour(img *image.RGBA, c color.RGBA) {
	for y := range j.Dy() {
		if j.from[y] >= j.to[y] {
			continue
		}
		row := j.share[y*j.Dx()+j.from[y] : y*j.Dx()+j.to[y]]
		at := img.PixOffset(j.Min.X+j.from[y], j.Min.Y+y)
		for i, share := range row {
			if share > 0 {
				blend(img.Pix[at+4*i:at+4*i+4:at+4*i+4], c, uint32(share*256+0.5))
				row[i] = 0
			}
		}
	}
}
