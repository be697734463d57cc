package ui

import (
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/length"
)

// card is one question with its answer as it stands in the column: a line each, or all that is known of it where it is open.
type card struct {
	marks []render.Mark
	high  render.Paper
	wide  render.Paper
	x     render.Paper
	st    render.Style
	unit  length.Unit
	scene *fit.Scene
}

// Where things stand in a card, in pixels.
const (
	cardSign  = 28
	cardText  = 44
	cardRight = 34
)

func newCard(a fit.Answer, open bool, l *live, w render.Paper) *card {
	c := &card{wide: w, x: render.Px(cardText), st: render.ScreenStyle, unit: l.unit(), scene: l.scene, high: render.Px(6)}
	c.head(a, open)
	if open {
		c.high += render.Px(4)
		c.body(a)
		c.high += render.Px(6)
		box := render.RoundBox(render.Rect{Min: render.Point{X: render.Px(8)}, Max: render.Point{X: w - render.Px(8), Y: c.high}}.Grow(-render.Px(1)), render.Px(3))
		c.marks = append(render.Outlined("", box, render.InkField, render.Pen{Width: render.Px(1)}), c.marks...)
		return c
	}
	c.high += render.Px(6)
	c.rule(c.high - render.Px(0.5))
	return c
}

// head is the question and its answer in one line.
func (c *card) head(a fit.Answer, open bool) {
	room := c.wide - c.x - render.Px(cardRight)
	top := c.high
	for _, line := range render.Wrap(a.Sentence, c.st.Body.Size, render.Regular, room) {
		c.line(line, render.InkMain)
	}
	c.verdict(a, room)
	c.marks = append(c.marks, signAt(a.Verdict, render.Point{X: render.Px(cardSign), Y: (top + c.high) / 2}, render.Px(16))...)
	c.chevron(render.Point{X: c.wide - render.Px(22), Y: (top + c.high) / 2}, open)
}

// verdict is the answer: the verdict in its ink, then what stands after it.
func (c *card) verdict(a fit.Answer, room render.Paper) {
	words := a.Verdict.Words()
	if a.Accepted != "" {
		words += ", accepted"
	}
	rest := c.scene.Called(a.Tell(c.unit))
	if rest != "" {
		words += ":"
	}
	lead := c.st.Body.Wide(words + " ")
	lines := render.Wrap(rest, c.st.Body.Size, render.Regular, room-lead)
	c.marks = append(c.marks, render.Words("", c.st.Body.Text(render.Point{X: c.x, Y: c.base()}, words, inkOf(a.Verdict), render.Left)))
	if len(lines) == 0 {
		c.high += c.leading()
		return
	}
	c.marks = append(c.marks, render.Words("", c.st.Body.Text(render.Point{X: c.x + lead, Y: c.base()}, lines[0], render.InkMain, render.Left)))
	c.high += c.leading()
	if rest = strings.TrimSpace(strings.TrimPrefix(rest, lines[0])); rest != "" {
		for _, line := range render.Wrap(rest, c.st.Body.Size, render.Regular, room) {
			c.line(line, render.InkMain)
		}
	}
}

func (c *card) leading() render.Paper { return render.Px(18) }

func (c *card) base() render.Paper { return c.high + render.Px(14) }

func (c *card) line(words string, ink render.Ink) {
	c.marks = append(c.marks, render.Words("", c.st.Body.Text(render.Point{X: c.x, Y: c.base()}, words, ink, render.Left)))
	c.high += c.leading()
}

func (c *card) rule(y render.Paper) {
	c.marks = append(c.marks, render.Stroke("", render.Line(render.Point{X: render.Px(16), Y: y}, render.Point{X: c.wide - render.Px(16), Y: y}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
}

func (c *card) chevron(at render.Point, open bool) {
	d := render.Px(4)
	p := render.Polyline(render.Point{X: at.X - d/2, Y: at.Y - d}, render.Point{X: at.X + d/2, Y: at.Y}, render.Point{X: at.X - d/2, Y: at.Y + d})
	if open {
		p = render.Polyline(render.Point{X: at.X - d, Y: at.Y - d/2}, render.Point{X: at.X, Y: at.Y + d/2}, render.Point{X: at.X + d, Y: at.Y - d/2})
	}
	c.marks = append(c.marks, render.Stroke("", p, render.Pen{Width: render.Px(1.25)}))
}

// body is what is known of an answer: what went in, what it is measured against, what else it tells, the caution.
func (c *card) body(a fit.Answer) {
	c.x = render.Px(20)
	q, _ := fit.Find(a.ID)
	c.section("Why it is asked")
	c.paragraph(q.Why, render.InkSoft)
	if len(a.Inputs) > 0 {
		c.section("What went in")
		for _, in := range a.Inputs {
			c.pair(inputWords(in.Key), fit.Amount(in.Value, yardstick.Unit(in.Unit), c.unit, length.Nearest), known(in))
		}
	}
	c.section("Measured against")
	said := map[string]bool{}
	for i, l := range a.Lines {
		if text := c.against(l); !said[text] && (i == a.Decides || l.Force.Judged() || l.Verdict.Open()) {
			said[text] = true
			c.pair(text, lineValue(l, c.unit), l.Force.String()+"; "+l.Row.Source+": "+string(l.Row.Basis))
		}
	}
	for _, f := range a.Figures {
		c.paragraph(f.Words(c.unit), render.InkMain)
	}
	for _, n := range a.Notes {
		c.paragraph(c.scene.Called(fit.Spoken(n)), render.InkMain)
	}
	if a.Caution != "" {
		c.section("Caution")
		c.paragraph(a.Caution, render.InkSoft)
	}
}

// inputWords names what went in by the words of its key: "bed upper mattress thick".
func inputWords(key string) string {
	return strings.NewReplacer(".", " ", "_", " ").Replace(fit.Spoken(key))
}

func known(in fit.Input) string {
	words := in.How
	if in.By != "" {
		words = in.By + ", " + words
	}
	return words
}

func (c *card) against(l fit.Line) string {
	text := l.Against(c.unit)
	if text != l.Row.Quantity {
		text += ", " + l.Row.Quantity
	}
	return text
}

func lineValue(l fit.Line, u length.Unit) string {
	if !l.Has || l.Row.Relation.Answer() {
		return strings.ToLower(l.Verdict.Words())
	}
	return fit.Amount(l.Value, l.Row.Unit, u, length.Nearest)
}

func (c *card) section(title string) {
	c.high += render.Px(4)
	c.rule(c.high)
	c.high += render.Px(4)
	c.marks = append(c.marks, render.Words("", render.Lettering{Size: c.st.Body.Size, Face: render.Medium}.Text(render.Point{X: c.x, Y: c.base()}, title, render.InkSoft, render.Left)))
	c.high += c.leading()
}

func (c *card) paragraph(words string, ink render.Ink) {
	for _, line := range render.Wrap(words, c.st.Body.Size, render.Regular, c.wide-c.x-render.Px(20)) {
		c.line(line, ink)
	}
}

// pair is a thing and its value at the right edge, and under it in soft ink how it is known.
func (c *card) pair(what, value, how string) {
	right := c.wide - render.Px(20)
	room := right - c.x - c.st.Body.Wide(value) - render.Px(12)
	c.marks = append(c.marks, render.Words("", render.Lettering{Size: c.st.Body.Size, Face: render.Medium}.Text(render.Point{X: right, Y: c.base()}, value, render.InkMain, render.Right)))
	for _, line := range render.Wrap(what, c.st.Body.Size, render.Regular, room) {
		c.line(line, render.InkMain)
	}
	for _, line := range render.Wrap(how, c.st.Body.Size, render.Regular, right-c.x) {
		c.line(line, render.InkSoft)
	}
}
