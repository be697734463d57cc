package view

import (
	"context"
	"strconv"
	"strings"

	"bunkwright/furniture/fit"
	placing "bunkwright/furniture/place"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/length"
)

const sitsUpTitle = "Who can sit up, and for how long"

// whoSitsUp works the table of a scene out and draws it.
func whoSitsUp(s *fit.Scene, o Options) render.Drawing {
	t, err := placing.WhoSitsUp(context.Background(), s, placing.SitOptions{})
	if err != nil {
		t.Wants = err.Error()
	}
	return WhoSitsUp(&t, o)
}

// WhoSitsUp draws who can sit up for which height of the upper deck: a piece of the story stick with those heights, and beside each of them the
// air over the head of either sleeper now, in five years and as adults. The row of the deck as it is lies on a chosen ground; rows are as far
// apart as words need, not to scale. It is as large as it comes out; a box puts it in its middle.
func WhoSitsUp(t *placing.SitTable, o Options) render.Drawing {
	v := &sitsUp{t: t, o: o, st: o.Style()}
	v.measure()
	if t.Wants != "" {
		v.words(render.Point{Y: v.row}, v.st.Body, "Cannot tell yet: "+t.Wants, render.InkMain, render.Left)
	} else {
		v.heads()
		for i := range t.Rows {
			v.rowAt(i)
		}
		v.stick()
	}
	c := newCanvas(o, plainScale)
	c.marks = v.marks
	return o.mount(sitsUpTitle, c)
}

// sitsUp is the picture in the making; the origin is the top of the stick's right edge.
type sitsUp struct {
	t     *placing.SitTable
	o     Options
	st    render.Style
	row   render.Paper // height of a row
	cell  render.Paper // width of one answer
	strip render.Paper // width of the stick
	left  render.Paper // width of the heights before it
	marks []render.Mark
}

// sitTimes are the times of the columns, for each bed.
var sitTimes = []placing.When{placing.Now, placing.InFiveYears, placing.AsAdults}

// sitBeds names the two groups of columns.
var sitBeds = []string{"upper", "lower"}

func (v *sitsUp) measure() {
	v.row = v.st.Sign * 1.7
	v.strip = v.st.Tick * 3
	v.left = v.st.Measure.Wide(v.o.Length(1500)+"  ") + v.st.Gap
	v.cell = v.st.Body.Wide("in five years") + v.st.Gap*2
	for i := range v.t.Rows {
		for _, w := range sitTimes {
			for _, a := range []*fit.Answer{&v.t.Rows[i].Upper[w], &v.t.Rows[i].Lower[w]} {
				v.cell = max(v.cell, v.st.Sign+v.st.Gap*3+v.st.Body.Wide(v.cellWords(a)))
			}
		}
	}
}

func (v *sitsUp) words(at render.Point, in render.Lettering, words string, ink render.Ink, anchor render.Anchor) {
	v.marks = append(v.marks, render.Words("sit", in.Text(at, words, ink, anchor)))
}

// columnAt returns the left edge of a column.
func (v *sitsUp) columnAt(bed, time int) render.Paper {
	return v.st.Gap*2 + v.cell*render.Paper(bed*len(sitTimes)+time) + v.st.Gap*2*render.Paper(bed)
}

// wide is how far the rows reach.
func (v *sitsUp) wide() render.Paper { return v.columnAt(1, len(sitTimes)) }

// heads writes over the columns who sleeps there, and when.
func (v *sitsUp) heads() {
	medium := render.Lettering{Size: v.st.Body.Size, Face: render.Medium}
	lead := v.st.Body.Leading()
	v.words(render.Point{X: -v.strip - v.st.Gap, Y: -lead * 0.6}, v.st.Small, "upper deck", render.InkSoft, render.Right)
	for b, bed := range sitBeds {
		name := strings.ToUpper(bed[:1]) + bed[1:] + " bed"
		if who := v.sleepers(bed); who != "" {
			name += ": " + who
		}
		lines := render.Wrap(name, medium.Size, medium.Face, v.cell*render.Paper(len(sitTimes))-v.st.Gap)
		for i, l := range lines {
			v.words(render.Point{X: v.columnAt(b, 0), Y: -lead * (1.9 + render.Paper(len(lines)-1-i))}, medium, l, render.InkMain, render.Left)
		}
		for k, w := range sitTimes {
			v.words(render.Point{X: v.columnAt(b, k), Y: -lead * 0.6}, v.st.Body, w.Words(), render.InkSoft, render.Left)
		}
	}
}

func (v *sitsUp) sleepers(bed string) string {
	var names []string
	for _, p := range v.t.Sleepers {
		if p.Bed == bed && p.Name != "" {
			names = append(names, p.Name)
		}
	}
	return strings.Join(names, ", ")
}

// rowAt draws the answers at one height.
func (v *sitsUp) rowAt(i int) {
	r := &v.t.Rows[i]
	top := v.row * render.Paper(i)
	if i == v.t.Chosen {
		v.marks = append(v.marks, render.Fill("chosen", v.box(-v.strip-v.left, top, v.wide(), top+v.row), render.InkChosenRow))
	}
	mid := top + v.row/2
	in := v.st.Measure
	height := in.Text(render.Point{X: -v.strip - v.st.Gap, Y: mid}, v.o.Length(r.Deck.MM()), render.InkMain, render.Right).Middled()
	v.marks = append(v.marks, render.Words("deck", height))
	for k, w := range sitTimes {
		v.answer(&r.Upper[w], render.Point{X: v.columnAt(0, k), Y: mid})
		v.answer(&r.Lower[w], render.Point{X: v.columnAt(1, k), Y: mid})
	}
	if n := len(r.Spoils); n > 0 {
		words := strconv.Itoa(n) + " other answers worse"
		if n == 1 {
			words = "another answer worse"
		}
		text := v.st.Small.Text(render.Point{X: v.wide() + v.st.Gap, Y: mid}, words, render.InkSoft, render.Left).Middled()
		v.marks = append(v.marks, render.Words("spoils", text))
	}
	rule := render.Line(render.Point{Y: top + v.row}, render.Point{X: v.wide(), Y: top + v.row})
	v.marks = append(v.marks, render.Stroke("rule", rule, v.st.Thin.In(render.InkHairline)))
}

func (v *sitsUp) box(x0, y0, x1, y1 render.Paper) render.Path {
	return render.Box(render.Rect{Min: render.Point{X: x0, Y: y0}, Max: render.Point{X: x1, Y: y1}})
}

// answer draws the sign of an answer and what is to spare over the head.
func (v *sitsUp) answer(a *fit.Answer, at render.Point) {
	if sign, ok := signOf(a.Verdict); ok {
		v.marks = append(v.marks, sign.At("sit."+a.ID, render.Point{X: at.X + v.st.Sign/2, Y: at.Y}, v.st.Sign)...)
	}
	text := v.st.Body.Text(render.Point{X: at.X + v.st.Sign + v.st.Gap, Y: at.Y}, v.cellWords(a), render.InkMain, render.Left).Middled()
	v.marks = append(v.marks, render.Words("sit."+a.ID, text))
}

// cellWords is the air over the head, or that nobody knows.
func (v *sitsUp) cellWords(a *fit.Answer) string {
	if !a.HasSpare {
		return "not known"
	}
	if a.Spare < 0 {
		return fit.Amount(-a.Spare, yardstick.MM, v.o.Unit, length.AwayFromZero) + " short"
	}
	return fit.Amount(a.Spare, yardstick.MM, v.o.Unit, length.TowardZero)
}

// stick draws the piece of stick with a tick at every height, broken off at both ends.
func (v *sitsUp) stick() {
	high := v.row * render.Paper(len(v.t.Rows))
	v.marks = append(v.marks, render.Outlined("stick", v.box(-v.strip, 0, 0, high), render.InkTape, v.st.Seen)...)
	for i := range v.t.Rows {
		y := v.row * (render.Paper(i) + 0.5)
		pen := v.st.Thin
		if i == v.t.Chosen {
			pen = v.st.Cut
		}
		v.marks = append(v.marks, render.Stroke("stick", render.Line(render.Point{X: -v.st.Tick * 1.6, Y: y}, render.Point{Y: y}), pen))
	}
}
