package raster

import (
	"image"
	"image/color"

	"github.com/fogleman/gg"

	"bunkwright/render"
)

// Painter draws drawings into pictures of the caller's and remembers letters between them. The
// zero value is ready; it is not for use by two goroutines at once.
type Painter struct {
	letters letters
	area    area
	joint   joint
}

// Draw draws onto img with the drawing's top left at the top left of img, without clearing it.
// Marks that cannot be drawn are left out: Drawing.Check tells of them.
func (p *Painter) Draw(img *image.RGBA, d render.Drawing, scale float64, palette render.Palette) {
	if img.Rect.Empty() || !(scale > 0) {
		return
	}
	s := p.newSheet(img, scale*pxPerMM)
	for _, m := range d.Marks {
		if m.Fault() != "" {
			continue
		}
		m.Pen.Width = min(m.Pen.Width, 2*(s.page.Max.X+s.page.Max.Y)) // such a line covers the picture
		if s.page.Holds(m.Bounds()) {
			p.mark(s, m, palette)
			continue
		}
		for _, part := range m.Clip(s.page) {
			p.mark(s, part, palette)
		}
	}
}

func (p *Painter) mark(s *sheet, m render.Mark, palette render.Palette) {
	switch m.Kind {
	case render.KindStroke:
		s.stroke(m.Path, m.Pen, palette.Color(m.Pen.Ink))
	case render.KindFill:
		s.fill(m.Path, palette.Color(m.Ink))
	case render.KindText:
		p.letters.draw(s, m.Text, palette.Color(m.Text.Ink))
	}
}

// sheet is one picture being drawn.
type sheet struct {
	img  *image.RGBA // starts at 0, 0
	dc   *gg.Context
	k    float64 // pixels to the millimetre
	page render.Rect

	area    *area
	joint   *joint
	snapped render.Path // the path being drawn
}

// newSheet moves the picture's origin to 0, 0, sharing its pixels, because gg knows no other.
func (p *Painter) newSheet(img *image.RGBA, k float64) *sheet {
	w, h := img.Rect.Dx(), img.Rect.Dy()
	at := img.PixOffset(img.Rect.Min.X, img.Rect.Min.Y)
	view := &image.RGBA{Pix: img.Pix[at:], Stride: img.Stride, Rect: image.Rect(0, 0, w, h)}
	s := &sheet{img: view, dc: gg.NewContextForRGBA(view), k: k, area: &p.area, joint: &p.joint}
	s.page.Max = render.Point{X: render.Paper(float64(w) / k), Y: render.Paper(float64(h) / k)}
	s.dc.SetLineJoinRound()
	return s
}

func (s *sheet) stroke(path render.Path, pen render.Pen, c color.RGBA) {
	width := float64(pen.Width) * s.k
	runs := s.runs(path, strokeGrid(width))
	if pen.Dash.Solid() {
		if !s.strokeUpright(runs, width, c) {
			s.strokeSlanted(runs, width, c)
		}
		return
	}
	s.dc.SetColor(c)
	s.dc.SetLineWidth(width)
	s.dash(pen.Dash)
	s.trace(runs)
	s.dc.Stroke()
}

func (s *sheet) dash(d render.Dash) {
	var lengths []float64
	for _, l := range d.Lengths() {
		lengths = append(lengths, float64(l)*s.k)
	}
	s.dc.SetDash(lengths...)
	s.dc.SetDashOffset(float64(d.Phase) * s.k)
	s.dc.SetLineCapButt()
}

func (s *sheet) fill(path render.Path, c color.RGBA) {
	runs := s.runs(path, fillGrid)
	if !s.fillUpright(runs, c) {
		s.fillSlanted(runs, c)
	}
}

// curveTolerance is how far a curve may stray from itself, in pixels. gg would take a point for
// every pixel of its length, and dash and join them all.
const curveTolerance = 0.1

// runs returns the path as straight lines, those that are level or upright square on the pixels.
func (s *sheet) runs(path render.Path, grid func(float64) float64) []render.Run {
	return s.snap(path, grid).Flatten(render.Paper(curveTolerance / s.k))
}

// trace hands the lines to gg, in pixels.
func (s *sheet) trace(runs []render.Run) {
	for _, run := range runs {
		for i, p := range run.Points {
			if i == 0 {
				s.dc.MoveTo(s.pixel(p.X), s.pixel(p.Y))
			} else {
				s.dc.LineTo(s.pixel(p.X), s.pixel(p.Y))
			}
		}
		if run.Closed {
			s.dc.ClosePath()
		}
	}
}

func (s *sheet) pixel(v render.Paper) float64 { return float64(v) * s.k }
