package control

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"bunkwright/render"
)

// Explain is called with what is under the pointer or has the focus, in words; "" when it is left. The window shows it in its status line.
var Explain = func(words string) {}

// State is what a press looks different for.
type State struct{ Hover, Down, Focus, Off bool }

// A Press is drawn by its maker and does something when it is clicked, or when Space or Enter is pressed while it has the focus.
type Press struct {
	widget.BaseWidget
	Ground render.Ink
	Paint  func(w, h render.Paper, s State) render.Drawing
	High   func(w render.Paper) render.Paper // height that a width asks for; nil: Least
	Least  fyne.Size
	Do     func()
	Says   func() string // for the status line
	Key    func(*fyne.KeyEvent)
	Enters func() // it gets the focus by a key; nil: nobody needs to know

	state  State
	raster *canvas.Raster
	paint  painting
}

// NewPress returns a press on a ground.
func NewPress(ground render.Ink, paint func(w, h render.Paper, s State) render.Drawing, do func()) *Press {
	p := &Press{Ground: ground, Paint: paint, Do: do}
	p.raster = canvas.NewRaster(nil)
	p.raster.Generator = p.pixels
	p.ExtendBaseWidget(p)
	return p
}

// Off greys a press out, or brings it back.
func (p *Press) Off(off bool) {
	if p.state.Off != off {
		p.state.Off = off
		p.Refresh()
	}
}

// Disabled tells the toolkit that the focus passes by a press that is off.
func (p *Press) Disabled() bool { return p.state.Off }

// Enable brings a press back.
func (p *Press) Enable() { p.Off(false) }

// Disable greys a press out.
func (p *Press) Disable() { p.Off(true) }

// Redraw paints it anew.
func (p *Press) Redraw() { p.raster.Refresh() }

// Refresh paints it anew.
func (p *Press) Refresh() { p.raster.Refresh() }

// MinSize is the smallest size, as high as the width asks for.
func (p *Press) MinSize() fyne.Size {
	return fyne.NewSize(p.Least.Width, p.HeightFor(max(p.Size().Width, p.Least.Width)))
}

// HeightFor is the height that a width asks for.
func (p *Press) HeightFor(w float32) float32 {
	if p.High == nil {
		return p.Least.Height
	}
	return Screen(p.High(Paper(w)))
}

// CreateRenderer is asked for by the toolkit.
func (p *Press) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(p.raster) }

func (p *Press) set(change func(*State)) {
	was := p.state
	if change(&p.state); p.state != was {
		p.raster.Refresh()
	}
	switch {
	case p.Says == nil:
	case p.state.Hover || p.state.Focus:
		Explain(p.Says())
	case was.Hover || was.Focus:
		Explain("")
	}
}

// MouseIn is asked for by the toolkit.
func (p *Press) MouseIn(*desktop.MouseEvent) { p.set(func(s *State) { s.Hover = true }) }

// MouseMoved is asked for by the toolkit.
func (p *Press) MouseMoved(*desktop.MouseEvent) {}

// MouseOut is asked for by the toolkit.
func (p *Press) MouseOut() { p.set(func(s *State) { s.Hover, s.Down = false, false }) }

// MouseDown is asked for by the toolkit.
func (p *Press) MouseDown(*desktop.MouseEvent) { p.set(func(s *State) { s.Down = true }) }

// MouseUp is asked for by the toolkit.
func (p *Press) MouseUp(*desktop.MouseEvent) { p.set(func(s *State) { s.Down = false }) }

// FocusGained is asked for by the toolkit.
func (p *Press) FocusGained() {
	p.set(func(s *State) { s.Focus = true })
	if p.Enters != nil && !p.state.Hover { // under the pointer it is in sight, and must not slip away from a click
		p.Enters()
	}
}

// FocusLost is asked for by the toolkit.
func (p *Press) FocusLost() { p.set(func(s *State) { s.Focus = false }) }

// Tapped does what it is for.
func (p *Press) Tapped(*fyne.PointEvent) {
	if !p.state.Off && p.Do != nil {
		p.Do()
	}
}

// TypedRune is asked for by the toolkit.
func (p *Press) TypedRune(rune) {}

// TypedKey does what it is for on Space and Enter, and hands on the rest.
func (p *Press) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		p.Tapped(nil)
	default:
		if p.Key != nil {
			p.Key(e)
		}
	}
}
