package control

import (
	"image"
	"image/draw"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"bunkwright/render"
	"bunkwright/render/raster"
)

// pickWithin is how near a line the pointer must be to be on it.
var pickWithin = render.Px(4)

// dragFrom is how far the pointer must go before a press becomes a drag.
const dragFrom = 3

// A Sketch shows drawings as large as it is itself, and tells what of them is pointed at. Whoever makes one sets the functions it wants;
// the others may stay nil.
type Sketch struct {
	widget.BaseWidget
	Ground render.Ink                             // behind the drawing
	Draw   func(w, h render.Paper) render.Drawing // makes the drawing for a size
	Least  fyne.Size                              // smallest size
	High   func(w render.Paper) render.Paper      // height that a width asks for; nil: Least

	Tap   func(Pointed)
	Hover func(Pointed)                               // with nothing pointed at when the pointer leaves
	Grab  func(Pointed) bool                          // a drag begins; false leaves it alone
	Drag  func(by render.Point, mod fyne.KeyModifier) // so far, since it was grabbed
	Drop  func()
	Wheel func(at render.Point, dy float32)
	Key   func(*fyne.KeyEvent) bool // pressed while it has the focus
	Tabs  bool                      // Tab is one of its keys; else it goes to what comes next
	Focus func(on bool)
	Ring  bool // a line is drawn round it while it has the focus
	Shape func(Pointed) desktop.Cursor

	drawing render.Drawing
	drawn   bool
	raster  *canvas.Raster
	paint   painting
	hold    hold
	at      Pointed
	focused bool
}

// Pointed is a place on a sketch and what is shown there, the topmost first.
type Pointed struct {
	At     render.Point
	Refs   []string
	Button desktop.MouseButton
	Mod    fyne.KeyModifier
}

// hold is a press that may become a drag.
type hold struct {
	from    Pointed
	by      fyne.Delta
	pressed bool
	grabbed bool
	refused bool
}

// NewSketch returns a sketch of what draw makes.
func NewSketch(ground render.Ink, draw func(w, h render.Paper) render.Drawing) *Sketch {
	s := &Sketch{Ground: ground, Draw: draw}
	s.raster = canvas.NewRaster(s.pixels)
	s.ExtendBaseWidget(s)
	return s
}

// CreateRenderer is asked for by the toolkit.
func (s *Sketch) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(s.raster) }

// MinSize is the smallest size, as high as the width asks for.
func (s *Sketch) MinSize() fyne.Size {
	if s.High == nil {
		return s.Least
	}
	return fyne.NewSize(s.Least.Width, Screen(s.High(Paper(max(s.Size().Width, s.Least.Width)))))
}

// HeightFor is the height that a width asks for.
func (s *Sketch) HeightFor(w float32) float32 {
	if s.High == nil {
		return s.Least.Height
	}
	return Screen(s.High(Paper(w)))
}

// Resize makes the drawing anew where the size differs.
func (s *Sketch) Resize(size fyne.Size) {
	if size != s.Size() {
		s.drawn = false
	}
	s.BaseWidget.Resize(size)
}

// Redraw makes the drawing anew.
func (s *Sketch) Redraw() {
	s.drawn = false
	s.raster.Refresh()
}

// Refresh follows a change of the theme.
func (s *Sketch) Refresh() { s.Redraw() }

// Drawing returns what is shown now.
func (s *Sketch) Drawing() render.Drawing {
	if !s.drawn && s.Draw != nil {
		size := s.Size()
		s.drawing, s.drawn = s.Draw(Paper(size.Width), Paper(size.Height)), true
	}
	return s.drawing
}

// Paint draws into a picture of so many pixels.
func (s *Sketch) Paint(w, h int) image.Image { return s.pixels(w, h) }

// pixels is called by the toolkit when it paints: what several events changed is drawn once.
func (s *Sketch) pixels(w, h int) image.Image {
	defer Traced.Draw()()
	d := s.Drawing()
	if s.focused && s.Ring {
		d.Marks = append(d.Marks[:len(d.Marks):len(d.Marks)], focusLine(Paper(s.Size().Width), Paper(s.Size().Height)))
	}
	return s.paint.draw(d, s.Ground, Paper(s.Size().Width), w, h)
}

// focusLine is drawn round a sketch that has the focus: thinner than round a button, for it stays there while the drawing is worked on.
func focusLine(w, h render.Paper) render.Mark {
	box := render.Rect{Max: render.Point{X: w, Y: h}}.Grow(-render.Px(3))
	return render.Stroke("", render.RoundBox(box, render.Px(3)), render.Pen{Width: render.Px(1.5), Ink: render.InkSoft})
}

// painting keeps the picture and the letters from one painting to the next.
type painting struct {
	painter raster.Painter
	img     *image.RGBA
}

func (p *painting) draw(d render.Drawing, ground render.Ink, wide render.Paper, w, h int) image.Image {
	if p.img == nil || p.img.Rect.Dx() != w || p.img.Rect.Dy() != h {
		p.img = image.NewRGBA(image.Rect(0, 0, w, h))
	}
	palette := Palette()
	draw.Draw(p.img, p.img.Rect, image.NewUniform(palette.Color(ground)), image.Point{}, draw.Src)
	if wide > 0 {
		p.painter.Draw(p.img, d, float64(w)/float64(wide/unit), palette)
	}
	return p.img
}
