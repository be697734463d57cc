package ui

import (
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/ui/control"
)

// questions is the column of all questions with their answers, the worst first; one of them is open.
type questions struct {
	w      *Window
	object fyne.CanvasObject
	head   *control.Sketch
	foot   *control.Sketch
	scroll *container.Scroll
	inner  *fyne.Container
	rows   map[string]*control.Press
	order  []string
	id     string // of the open one
	lit    func()
	accept *acceptBar
	told   map[string]string // by id: what stands in its row
}

func newQuestions(w *Window, lit func()) *questions {
	q := &questions{w: w, rows: map[string]*control.Press{}, lit: lit}
	q.head = control.NewSketch(render.InkPanel, q.drawHead)
	q.head.Least = fyne.NewSize(300, 64)
	q.foot = control.NewSketch(render.InkPanel, q.drawFoot)
	q.foot.Least = fyne.NewSize(300, 30)
	q.scroll, q.inner = control.NewColumn(0)
	q.accept = newAcceptBar(w)
	q.head.Tap = func(at control.Pointed) {
		if len(at.Refs) > 0 && at.Refs[0] == "against" {
			w.chooseAgainst()
		}
	}
	q.foot.Tap = func(at control.Pointed) {
		if len(at.Refs) > 0 && at.Refs[0] == "caution" {
			w.caution()
		}
	}
	q.object = container.New(columnFrame{}, q.head, q.scroll, q.foot)
	return q
}

// afresh draws everything anew.
func (q *questions) afresh() {
	q.told = nil
	q.follow()
}

// follow takes over the answers as they are now: rows that say something else are drawn. Where their order differs, the rows move; while the
// hand moves they stay.
func (q *questions) follow() {
	l := q.w.live
	q.head.Redraw()
	if l.sure && !l.moving || len(q.order) == 0 {
		q.sort()
	}
	anew := q.told == nil
	if anew {
		q.told = map[string]string{}
	}
	moved := q.arrange()
	for _, id := range q.order {
		if says := q.says(id); says != q.told[id] || id == q.id {
			q.told[id] = says
			row := q.rows[id]
			row.Redraw()
			moved = moved || row.HeightFor(row.Size().Width) != row.Size().Height
		}
	}
	if anew || moved {
		q.inner.Refresh()
	}
}

// says is what stands in the row of a question.
func (q *questions) says(id string) string {
	a, ok := q.answer(id)
	if !ok {
		return ""
	}
	return strings.Join([]string{a.Sentence, a.Verdict.Words(), a.Accepted, a.Tell(q.w.live.unit())}, "\n")
}

// arrange puts the rows in their order, and the bar to accept an answer under the open one. It tells whether anything stands elsewhere.
func (q *questions) arrange() (moved bool) {
	var list []fyne.CanvasObject
	seen := q.accept.object.Visible()
	for _, id := range q.order {
		list = append(list, q.row(id))
		if a, ok := q.answer(id); ok && id == q.id {
			q.accept.follow(a)
			list = append(list, q.accept.object)
		}
	}
	moved = !slices.Equal(list, q.inner.Objects) || seen != q.accept.object.Visible()
	q.inner.Objects = list
	return moved
}

func (q *questions) sort() {
	var order []string
	for _, a := range fit.ForPeople(q.w.live.answers) {
		order = append(order, a.ID)
	}
	q.order = order
}

func (q *questions) row(id string) *control.Press {
	if row, ok := q.rows[id]; ok {
		return row
	}
	row := control.NewPress(render.InkPanel, nil, func() { q.open(id) })
	row.Paint = func(w, h render.Paper, s control.State) render.Drawing { return q.drawRow(id, w, h, s) }
	row.High = func(w render.Paper) render.Paper { return q.card(id, w, control.State{}).high }
	row.Least = fyne.NewSize(260, 40)
	row.Says = func() string {
		question, _ := fit.Find(id)
		return question.Why
	}
	row.Key = func(e *fyne.KeyEvent) { q.step(id, e) }
	q.rows[id] = row
	return row
}

// step goes to the row above or below.
func (q *questions) step(id string, e *fyne.KeyEvent) {
	i := slices.Index(q.order, id)
	switch {
	case e.Name == fyne.KeyDown && i+1 < len(q.order):
		i++
	case e.Name == fyne.KeyUp && i > 0:
		i--
	default:
		q.w.place.key(e)
		return
	}
	row := q.rows[q.order[i]]
	q.w.win.Canvas().Focus(row)
	if y := row.Position().Y; y < q.scroll.Offset.Y || y+row.Size().Height > q.scroll.Offset.Y+q.scroll.Size().Height {
		q.scroll.ScrollToOffset(fyne.NewPos(0, y))
	}
}

// open opens a question and lights its parts, or closes it where it is open.
func (q *questions) open(id string) {
	if q.id == id {
		id = ""
	}
	q.id = id
	q.lit()
}

// opened returns the answer of the open question.
func (q *questions) opened() (fit.Answer, bool) { return q.answer(q.id) }

func (q *questions) answer(id string) (fit.Answer, bool) {
	for _, a := range q.w.live.answers {
		if a.ID == id {
			return a, true
		}
	}
	return fit.Answer{}, false
}

func (q *questions) card(id string, w render.Paper, s control.State) *card {
	a, ok := q.answer(id)
	if !ok {
		return &card{}
	}
	return newCard(a, q.id == id, q.w.live, w)
}

func (q *questions) drawRow(id string, w, h render.Paper, s control.State) render.Drawing {
	c := q.card(id, w, s)
	d := render.Drawing{W: w, H: h}
	if s.Hover && q.id != id {
		d.Add(render.Fill("", render.Box(render.Rect{Max: render.Point{X: w, Y: h}}.Grow(-render.Px(1))), render.InkChosenRow))
	}
	d.Add(c.marks...)
	d.Add(control.FocusRing(w, h, s)...)
	return d
}

// drawHead counts the verdicts.
func (q *questions) drawHead(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	d.Add(heading(render.Px(16), render.Px(14), "Questions", "")...)
	count := map[fit.Verdict]int{}
	for _, a := range q.w.live.answers {
		count[a.Verdict]++
	}
	st := render.ScreenStyle
	if j := q.w.session.Job(); j != nil {
		against := "measured against " + strings.Join(j.Places, ", ")
		if len(j.Places) == 0 {
			against = "measured against: choose"
		}
		d.Add(render.Words("against", st.Body.Text(render.Point{X: w - render.Px(16), Y: render.Px(22)}, shortened(against, st.Body, w-render.Px(130)), render.InkCannotTell, render.Right)))
	}
	x, y := render.Px(16), render.Px(48)
	brief := w < render.Px(340)
	for _, v := range []fit.Verdict{fit.DoesNotFit, fit.TooClose, fit.CannotTell, fit.Fits} {
		if count[v] == 0 {
			continue
		}
		words := fmt.Sprintf("%d %s", count[v], countWords[v])
		if brief {
			words = fmt.Sprint(count[v])
		}
		d.Add(signAt(v, render.Point{X: x + render.Px(7), Y: y}, render.Px(14))...)
		d.Add(render.Words("", st.Body.Text(render.Point{X: x + render.Px(19), Y: y}, words, inkOf(v), render.Left).Middled()))
		x += render.Px(19+14) + st.Body.Wide(words)
	}
	return d
}

var countWords = map[fit.Verdict]string{fit.DoesNotFit: "do not fit", fit.TooClose: "too close", fit.CannotTell: "cannot tell", fit.Fits: "fit"}

func (q *questions) drawFoot(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st := render.ScreenStyle
	d.Add(render.Stroke("", render.Line(render.Point{X: render.Px(16), Y: render.Px(1)}, render.Point{X: w - render.Px(16), Y: render.Px(1)}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
	d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(16), Y: h / 2}, shortened("Measured against, not approved.", st.Body, w-render.Px(40)-st.Body.Wide("The whole caution")), render.InkSoft, render.Left).Middled()))
	d.Add(render.Words("caution", st.Body.Text(render.Point{X: w - render.Px(16), Y: h / 2}, "The whole caution", render.InkCannotTell, render.Right).Middled()))
	return d
}

// columnFrame lays out a column: head, what scrolls, foot.
type columnFrame struct{}

func (columnFrame) Layout(items []fyne.CanvasObject, size fyne.Size) {
	head, foot := items[0].MinSize().Height, items[2].MinSize().Height
	at := [4]float32{0, head, size.Height - foot, size.Height}
	for i, o := range items {
		o.Move(fyne.NewPos(0, at[i]))
		o.Resize(fyne.NewSize(size.Width, at[i+1]-at[i]))
	}
}

func (columnFrame) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(300, 200) }
