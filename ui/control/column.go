package control

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"
)

// tall is a widget whose height hangs on its width.
type tall interface{ HeightFor(w float32) float32 }

// column is the layout of things one below the other, each as high as its width asks for.
type column struct {
	wide float32
	gap  float32
}

// NewColumn returns a column in a scroller.
func NewColumn(gap float32, items ...fyne.CanvasObject) (*container.Scroll, *fyne.Container) {
	inner := container.New(&column{gap: gap}, items...)
	return container.NewVScroll(inner), inner
}

// Reveal scrolls to one of the things in a column, where it is not all seen.
func Reveal(s *container.Scroll, o fyne.CanvasObject) {
	top, high := o.Position().Y, o.Size().Height
	switch at, room := s.Offset.Y, s.Size().Height; {
	case top < at:
		s.ScrollToOffset(fyne.NewPos(0, top))
	case top+high > at+room:
		s.ScrollToOffset(fyne.NewPos(0, min(top, top+high-room)))
	}
}

func (c *column) height(o fyne.CanvasObject, w float32) float32 {
	if t, ok := o.(tall); ok {
		return t.HeightFor(w)
	}
	return o.MinSize().Height
}

// Layout is asked for by the toolkit.
func (c *column) Layout(items []fyne.CanvasObject, size fyne.Size) {
	c.wide = size.Width
	y := float32(0)
	for _, o := range items {
		if !o.Visible() {
			continue
		}
		h := c.height(o, size.Width)
		o.Move(fyne.NewPos(0, y))
		o.Resize(fyne.NewSize(size.Width, h))
		y += h + c.gap
	}
}

// MinSize is asked for by the toolkit.
func (c *column) MinSize(items []fyne.CanvasObject) fyne.Size {
	var out fyne.Size
	for _, o := range items {
		if !o.Visible() {
			continue
		}
		out.Width = max(out.Width, o.MinSize().Width)
		out.Height += c.height(o, max(c.wide, out.Width)) + c.gap
	}
	return out
}

// Stacked is the layout of strips one below the other without any air.
type Stacked struct{}

// Layout is asked for by the toolkit.
func (Stacked) Layout(items []fyne.CanvasObject, size fyne.Size) {
	(&column{}).Layout(items, size)
}

// MinSize is asked for by the toolkit.
func (Stacked) MinSize(items []fyne.CanvasObject) fyne.Size { return (&column{}).MinSize(items) }

// Wheel returns a scroller whose wheel turns wherever the pointer is over it: boxes to type in would else keep it to themselves.
func Wheel(s *container.Scroll) fyne.CanvasObject {
	w := &wheel{scroll: s}
	w.ExtendBaseWidget(w)
	return container.NewStack(s, w)
}

// wheel lies over a scroller and takes nothing but the wheel.
type wheel struct {
	widget.BaseWidget
	scroll *container.Scroll
}

func (w *wheel) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(container.NewWithoutLayout())
}
func (w *wheel) Scrolled(e *fyne.ScrollEvent) { w.scroll.Scrolled(e) }
