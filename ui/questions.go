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
	w       *Window
	object  fyne.CanvasObject
	head    *control.Sketch
	against *control.Press
	foot    *control.Press
	scroll  *container.Scroll
	inner   *fyne.Container
	rows    map[string]*control.Press
	order   []string
	id      string // of the open one
	lit     func()
	accept  *acceptBar
	told    map[string]string // by id: what stands in its row
}

func newQuestions(w *Window, lit func()) *questions {
	q := &questions{w: w, rows: map[string]*control.Press{}, lit: lit}
	q.head = control.NewSketch(render.InkPanel, q.drawHead)
	q.head.Least = fyne.NewSize(300, 64)
	q.against = control.NewPress(render.InkPanel, q.drawAgainst, w.chooseAgainst)
	q.against.Says = func() string { return "choose whose texts the bed is measured against" }
	q.foot = cautionLine(w)
	q.scroll, q.inner = control.NewColumn(0)
	q.accept = newAcceptBar(w)
	q.object = container.New(columnFrame{}, container.New(againstLayout{}, q.head, q.against), q.scroll, q.foot)
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
	q.against.Redraw()
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
	row.Enters = func() { control.Reveal(q.scroll, row) }
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
	marks := countMarks(count, countWords, render.Px(33), render.Px(48))
	if render.Bounds(marks).Max.X > w-render.Px(8) {
		marks = countMarks(count, briefWords, render.Px(29), render.Px(48))
	}
	d.Add(marks...)
	return d
}

// countMarks is a line of how many answers have each verdict; apart is what the next one takes beside the words.
func countMarks(count map[fit.Verdict]int, say map[fit.Verdict]string, apart, y render.Paper) []render.Mark {
	var marks []render.Mark
	x, st := render.Px(16), render.ScreenStyle
	for _, v := range []fit.Verdict{fit.DoesNotFit, fit.TooClose, fit.CannotTell, fit.Fits} {
		if count[v] == 0 {
			continue
		}
		words := fmt.Sprintf("%d %s", count[v], say[v])
		marks = append(marks, signAt(v, render.Point{X: x + render.Px(7), Y: y}, render.Px(14))...)
		marks = append(marks, render.Words("", st.Body.Text(render.Point{X: x + render.Px(19), Y: y}, words, inkOf(v), render.Left).Middled()))
		x += apart + st.Body.Wide(words)
	}
	return marks
}

// What is counted, and the same where there is little room.
var (
	countWords = map[fit.Verdict]string{fit.DoesNotFit: "do not fit", fit.TooClose: "too close", fit.CannotTell: "cannot tell", fit.Fits: "fit"}
	briefWords = map[fit.Verdict]string{fit.DoesNotFit: "do not", fit.TooClose: "close", fit.CannotTell: "ask", fit.Fits: "fit"}
)

// drawAgainst names what is measured against, as a link.
func (q *questions) drawAgainst(w, h render.Paper, s control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	j, st := q.w.session.Job(), render.ScreenStyle
	if j == nil {
		return d
	}
	against := "measured against " + strings.Join(j.Places, ", ")
	if len(j.Places) == 0 {
		against = "measured against: choose"
	}
	against = shortened(against, st.Body, w-render.Px(12))
	right := w - render.Px(6)
	d.Add(render.Words("", st.Body.Text(render.Point{X: right, Y: h / 2}, against, render.InkCannotTell, render.Right).Middled()))
	if s.Hover {
		y := h/2 + render.Px(9)
		d.Add(render.Stroke("", render.Line(render.Point{X: right - st.Body.Wide(against), Y: y}, render.Point{X: right, Y: y}), render.Pen{Width: render.Px(1), Ink: render.InkCannotTell}))
	}
	d.Add(control.FocusRing(w, h, s)...)
	return d
}

// againstLayout lays out the head of the column with its link at the right.
type againstLayout struct{}

func (againstLayout) Layout(items []fyne.CanvasObject, size fyne.Size) {
	items[0].Resize(size)
	items[1].Move(fyne.NewPos(114, 3))
	items[1].Resize(fyne.NewSize(size.Width-124, 28))
}

func (againstLayout) MinSize(items []fyne.CanvasObject) fyne.Size { return items[0].MinSize() }

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
