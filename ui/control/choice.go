package control

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"bunkwright/render"
)

// A Choice is one of a few words side by side: a click on a word takes it, the arrow keys go to the next.
type Choice struct {
	Press
	Label string
	Words []string
	Shows func() string
	Taken func(word string)
}

// NewChoice returns a choice with a label before it.
func NewChoice(ground render.Ink, label string, words []string, shows func() string, taken func(string)) *Choice {
	c := &Choice{Label: label, Words: words, Shows: shows, Taken: taken}
	c.Ground, c.Least = ground, fyne.NewSize(120, 30)
	c.Paint = c.draw
	c.Key = c.step
	c.raster = canvas.NewRaster(nil)
	c.raster.Generator = c.pixels
	c.ExtendBaseWidget(c)
	return c
}

// Follow shows the word as it is now.
func (c *Choice) Follow() { c.Redraw() }

const (
	segmentAir  = 10 // on both sides of a word
	segmentHigh = 24
)

// segments returns where the words begin, and where the last ends.
func (c *Choice) segments(w render.Paper) []render.Paper {
	x := w - render.Px(0.5)
	out := []render.Paper{x}
	for _, word := range slices.Backward(c.Words) {
		x -= render.ScreenStyle.Body.Wide(word) + render.Px(2*segmentAir)
		out = append(out, x)
	}
	slices.Reverse(out)
	return out
}

func (c *Choice) draw(w, h render.Paper, s State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st, at, now := render.ScreenStyle, c.segments(w), c.Shows()
	d.Add(render.Words("", st.Body.Text(render.Point{Y: h / 2}, c.Label, render.InkSoft, render.Left).Middled()))
	top := (h - render.Px(segmentHigh)) / 2
	for i, word := range c.Words {
		box := render.Rect{Min: render.Point{X: at[i], Y: top}, Max: render.Point{X: at[i+1], Y: top + render.Px(segmentHigh)}}
		fill, ink := render.InkField, render.InkMain
		if word == now {
			fill, ink = render.InkMain, render.InkField
		}
		d.Add(render.Outlined("", render.Box(box), fill, render.Pen{Width: render.Px(1)})...)
		d.Add(render.Words("", st.Body.Text(box.Centre(), word, ink, render.Centre).Middled()))
	}
	if s.Focus {
		box := render.Rect{Min: render.Point{X: at[0], Y: top}, Max: render.Point{X: w, Y: top + render.Px(segmentHigh)}}
		d.Add(render.Stroke("", render.RoundBox(box.Grow(-render.Px(1)), render.Px(3)), render.Pen{Width: render.Px(2.5), Ink: render.InkMain}))
	}
	return d
}

// Tapped takes the word that was clicked.
func (c *Choice) Tapped(e *fyne.PointEvent) {
	if e == nil {
		return
	}
	at := c.segments(Paper(c.Size().Width))
	for i, word := range c.Words {
		if x := Paper(e.Position.X); x >= at[i] && x < at[i+1] {
			c.take(word)
		}
	}
}

// TypedKey goes to the next word on Space and Enter too.
func (c *Choice) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		c.move(1)
	default:
		c.step(e)
	}
}

func (c *Choice) step(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyLeft, fyne.KeyUp:
		c.move(-1)
	case fyne.KeyRight, fyne.KeyDown:
		c.move(1)
	}
}

func (c *Choice) move(by int) {
	n := len(c.Words)
	c.take(c.Words[((slices.Index(c.Words, c.Shows())+by)%n+n)%n])
}

func (c *Choice) take(word string) {
	if word != c.Shows() {
		c.Taken(word)
		c.Redraw()
	}
}

// NewCheck returns a box that is ticked or not, with a label before it; without one the box alone.
func NewCheck(ground render.Ink, label string, on func() bool, toggle func()) *Press {
	p := NewPress(ground, nil, toggle)
	p.Least = fyne.NewSize(30, 30)
	p.Paint = func(w, h render.Paper, s State) render.Drawing {
		d := render.Drawing{W: w, H: h}
		if label != "" {
			d.Add(render.Words("", render.ScreenStyle.Body.Text(render.Point{Y: h / 2}, label, render.InkSoft, render.Left).Middled()))
		}
		d.Add(checkBox(render.Point{X: w - render.Px(9), Y: h / 2}, on(), s)...)
		return d
	}
	return p
}

// checkBox is 16 wide.
func checkBox(mid render.Point, on bool, s State) []render.Mark {
	half := render.Px(8)
	box := render.Rect{Min: mid.Minus(render.Point{X: half, Y: half}), Max: mid.Plus(render.Point{X: half, Y: half})}
	fill := render.InkField
	if on {
		fill = render.InkMain
	} else if s.Hover {
		fill = render.InkChosenRow
	}
	marks := render.Outlined("", render.RoundBox(box.Grow(-render.Px(0.5)), render.Px(2)), fill, render.Pen{Width: render.Px(1)})
	if on {
		at := func(x, y float64) render.Point { return mid.Plus(render.Point{X: render.Px(x), Y: render.Px(y)}) }
		marks = append(marks, render.Stroke("", render.Polyline(at(-4, 0), at(-1, 3), at(4, -3)), render.Pen{Width: render.Px(2), Ink: render.InkField}))
	}
	if s.Focus {
		marks = append(marks, render.Stroke("", render.RoundBox(box.Grow(render.Px(1.5)), render.Px(3)), render.Pen{Width: render.Px(2.5)}))
	}
	return marks
}
