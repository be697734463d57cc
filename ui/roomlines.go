package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/widget"

	"bunkwright/render"
	"bunkwright/ui/control"
)

// lineWidget is what stands in a line of a form.
type lineWidget interface {
	fyne.CanvasObject
	focusable
}

// labelled is a label with its field to the right of it, or below it where both find no room.
type labelled struct {
	widget.BaseWidget
	words  string
	what   lineWidget
	indent float32
	label  *control.Sketch
	all    *fyne.Container
}

// Sizes of a line, in pixels.
const (
	lineLeft  = 14
	lineField = 104
	labelHigh = 26
)

func newLabelled(words string, what lineWidget) *labelled {
	l := &labelled{words: words, what: what}
	l.label = control.NewSketch(render.InkWell, func(w, h render.Paper) render.Drawing {
		d := render.Drawing{W: w, H: h}
		st := render.ScreenStyle
		d.Add(render.Words("", st.Body.Text(render.Point{Y: h / 2}, shortened(words, st.Body, w), render.InkSoft, render.Left).Middled()))
		return d
	})
	l.all = container.New(lineLayout{l}, l.label, what)
	l.ExtendBaseWidget(l)
	return l
}

// CreateRenderer is asked for by the toolkit.
func (l *labelled) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(l.all) }

// below tells whether the field stands under its label: there is no room beside it, or something to say about what was typed.
func (l *labelled) below(w float32) bool {
	if f, ok := l.what.(*control.Field); ok && f.Bad() {
		return true
	}
	return control.Screen(render.ScreenStyle.Body.Wide(l.words))+l.indent > w-2*lineLeft-lineField-4
}

func (l *labelled) whatHigh(w float32) float32 {
	if t, ok := l.what.(interface{ HeightFor(float32) float32 }); ok {
		return t.HeightFor(w)
	}
	return l.what.MinSize().Height
}

// HeightFor is the height that a width asks for.
func (l *labelled) HeightFor(w float32) float32 {
	if l.below(w) {
		return labelHigh - 6 + l.whatHigh(w-2*lineLeft-l.indent) + 4
	}
	return max(labelHigh, l.whatHigh(lineField)) + 3
}

// MinSize is asked for by the toolkit.
func (l *labelled) MinSize() fyne.Size {
	return fyne.NewSize(140, l.HeightFor(max(l.Size().Width, 140)))
}

type lineLayout struct{ l *labelled }

func (y lineLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	l := y.l
	left := lineLeft + l.indent
	if l.below(size.Width) {
		l.label.Move(fyne.NewPos(left, 0))
		l.label.Resize(fyne.NewSize(size.Width-left-lineLeft, labelHigh-6))
		l.what.Move(fyne.NewPos(left, labelHigh-6))
		l.what.Resize(fyne.NewSize(size.Width-left-lineLeft, l.whatHigh(size.Width-left-lineLeft)))
		return
	}
	l.label.Move(fyne.NewPos(left, 0))
	l.label.Resize(fyne.NewSize(size.Width-left-lineLeft-lineField-2, labelHigh))
	l.what.Move(fyne.NewPos(size.Width-lineLeft-lineField, 0))
	l.what.Resize(fyne.NewSize(lineField, l.whatHigh(lineField)))
}

func (y lineLayout) MinSize([]fyne.CanvasObject) fyne.Size { return y.l.MinSize() }

// newSection is the title of a group of lines.
func newSection(title string) fyne.CanvasObject {
	s := control.NewSketch(render.InkWell, func(w, h render.Paper) render.Drawing {
		d := render.Drawing{W: w, H: h}
		st := render.ScreenStyle
		medium := render.Lettering{Size: st.Body.Size, Face: render.Medium}
		d.Add(render.Words("", medium.Text(render.Point{X: render.Px(lineLeft), Y: h - render.Px(11)}, shortened(title, medium, w-render.Px(2*lineLeft)), render.InkMain, render.Left)))
		y := h - render.Px(4.5)
		d.Add(render.Stroke("", render.Line(render.Point{X: render.Px(lineLeft), Y: y}, render.Point{X: w - render.Px(lineLeft), Y: y}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
		return d
	})
	s.Least = fyne.NewSize(140, 36)
	return s
}

// buttonLine lays out a button over the width of a form.
type buttonLine struct{}

func (buttonLine) Layout(items []fyne.CanvasObject, size fyne.Size) {
	items[0].Move(fyne.NewPos(lineLeft, 6))
	items[0].Resize(fyne.NewSize(size.Width-2*lineLeft, 26))
}

func (buttonLine) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(140, 38) }

// choiceBox is a list of words to choose from, with one for nothing said.
type choiceBox struct {
	widget.Select
	says  func() string
	quiet bool // the word is set, not chosen
}

// unsaid stands for a key that is not set.
const unsaid = "not said"

func newChoiceBox(words []string, choose func(string)) *choiceBox {
	c := &choiceBox{}
	c.Options = append([]string{unsaid}, words...)
	c.OnChanged = func(word string) {
		if c.quiet {
			return
		}
		if word == unsaid {
			word = ""
		}
		choose(word)
	}
	c.ExtendBaseWidget(c)
	return c
}

// show sets the word as it is now.
func (c *choiceBox) show(word string) {
	if word == "" {
		word = unsaid
	}
	if c.Selected != word {
		c.quiet = true
		c.SetSelected(word)
		c.quiet = false
	}
}

// Focusable is what takes the focus.
func (c *choiceBox) Focusable() fyne.Focusable { return c }

// FocusGained explains the choice.
func (c *choiceBox) FocusGained() {
	c.Select.FocusGained()
	control.Explain(c.says())
}

// FocusLost is asked for by the toolkit.
func (c *choiceBox) FocusLost() {
	c.Select.FocusLost()
	control.Explain("")
}

// MouseIn explains the choice.
func (c *choiceBox) MouseIn(e *desktop.MouseEvent) {
	c.Select.MouseIn(e)
	control.Explain(c.says())
}

// MouseOut is asked for by the toolkit.
func (c *choiceBox) MouseOut() {
	c.Select.MouseOut()
	control.Explain("")
}
