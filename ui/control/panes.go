package control

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"bunkwright/render"
)

// Panes are three things side by side with dividers that can be dragged.
type Panes struct {
	widget.BaseWidget
	Shares  [2]float32 // where the dividers stand, as parts of the width
	Changed func()

	panes    [3]fyne.CanvasObject
	dividers [2]*divider
}

// NewPanes puts three things side by side.
func NewPanes(a, b, c fyne.CanvasObject, shares [2]float32) *Panes {
	p := &Panes{panes: [3]fyne.CanvasObject{a, b, c}, Shares: shares}
	for i := range p.dividers {
		p.dividers[i] = newDivider(func(dx float32) { p.drag(i, dx) })
	}
	p.ExtendBaseWidget(p)
	return p
}

// CreateRenderer is asked for by the toolkit.
func (p *Panes) CreateRenderer() fyne.WidgetRenderer {
	all := container.New(panesLayout{p}, p.panes[0], p.panes[1], p.panes[2], p.dividers[0], p.dividers[1])
	return widget.NewSimpleRenderer(all)
}

func (p *Panes) drag(i int, dx float32) {
	w := p.Size().Width
	p.Shares[i] += dx / w
	p.keep()
	p.Refresh()
	if p.Changed != nil {
		p.Changed()
	}
}

// keep holds the dividers where every pane has its smallest width.
func (p *Panes) keep() {
	w := p.Size().Width
	if w <= 0 {
		return
	}
	least := func(i int) float32 { return p.panes[i].MinSize().Width / w }
	p.Shares[1] = min(p.Shares[1], 1-least(2))
	p.Shares[0] = min(p.Shares[0], p.Shares[1]-least(1))
	p.Shares[0] = max(p.Shares[0], least(0))
	p.Shares[1] = max(p.Shares[1], p.Shares[0]+least(1))
}

type panesLayout struct{ p *Panes }

func (l panesLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	l.p.keep()
	at := [4]float32{0, l.p.Shares[0] * size.Width, l.p.Shares[1] * size.Width, size.Width}
	for i, pane := range l.p.panes {
		pane.Move(fyne.NewPos(at[i], 0))
		pane.Resize(fyne.NewSize(at[i+1]-at[i], size.Height))
	}
	for i, d := range l.p.dividers {
		d.Move(fyne.NewPos(at[i+1]-dividerWide/2, 0))
		d.Resize(fyne.NewSize(dividerWide, size.Height))
	}
}

func (l panesLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	var out fyne.Size
	for _, pane := range l.p.panes {
		out.Width += pane.MinSize().Width
		out.Height = max(out.Height, pane.MinSize().Height)
	}
	return out
}

const dividerWide = 8

// divider is a line between two panes. It is dragged, or moved by the arrow keys while it has the focus.
type divider struct {
	widget.BaseWidget
	line *canvas.Rectangle
	drag func(dx float32)
	has  bool // the focus
}

// dividerKey is how far an arrow key moves a divider.
const dividerKey = 16

func newDivider(drag func(dx float32)) *divider {
	d := &divider{line: canvas.NewRectangle(color.Transparent), drag: drag}
	d.ExtendBaseWidget(d)
	return d
}

func (d *divider) CreateRenderer() fyne.WidgetRenderer {
	d.line.FillColor = d.color()
	return widget.NewSimpleRenderer(container.New(dividerLine{d}, d.line))
}

func (d *divider) color() color.Color {
	if d.has {
		return Palette().Color(render.InkMain)
	}
	return Palette().Color(render.InkHairline)
}

func (d *divider) Refresh() {
	d.line.FillColor = d.color()
	d.BaseWidget.Refresh()
}

const dividerWords = "drag to make a column wider or narrower, or use the arrow keys"

func (d *divider) MinSize() fyne.Size             { return fyne.NewSize(dividerWide, 1) }
func (d *divider) Dragged(e *fyne.DragEvent)      { d.drag(e.Dragged.DX) }
func (d *divider) DragEnd()                       {}
func (d *divider) Cursor() desktop.Cursor         { return desktop.HResizeCursor }
func (d *divider) MouseIn(*desktop.MouseEvent)    { Explain(dividerWords) }
func (d *divider) MouseMoved(*desktop.MouseEvent) {}
func (d *divider) MouseOut()                      { Explain("") }
func (d *divider) FocusGained()                   { d.focus(true, dividerWords) }
func (d *divider) FocusLost()                     { d.focus(false, "") }
func (d *divider) TypedRune(rune)                 {}

func (d *divider) focus(on bool, words string) {
	d.has = on
	d.Refresh()
	Explain(words)
}

// TypedKey moves the divider.
func (d *divider) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyLeft:
		d.drag(-dividerKey)
	case fyne.KeyRight:
		d.drag(dividerKey)
	}
}

// dividerLine centres a line one unit wide, three with the focus.
type dividerLine struct{ d *divider }

func (l dividerLine) Layout(items []fyne.CanvasObject, size fyne.Size) {
	wide := float32(1)
	if l.d.has {
		wide = 3
	}
	items[0].Move(fyne.NewPos((size.Width-wide)/2, 0))
	items[0].Resize(fyne.NewSize(wide, size.Height))
}
func (dividerLine) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1, 1) }
