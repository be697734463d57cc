package ui

import (
	"fmt"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"

	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/room"
	"bunkwright/room/survey"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// roomTable lists every reading of the room; one row is chosen.
type roomTable struct {
	r      *roomPanel
	object fyne.CanvasObject
	head   *control.Sketch
	rows   *control.Sketch
	scroll *container.Scroll
	list   []session.Taken
}

const (
	rowHigh       = 21
	tableHeadHigh = 96
)

func newRoomTable(r *roomPanel) *roomTable {
	t := &roomTable{r: r}
	t.head = control.NewSketch(render.InkPanel, t.drawHead)
	t.head.Least = fyne.NewSize(290, tableHeadHigh)
	t.rows = control.NewSketch(render.InkPanel, t.draw)
	t.rows.Least = fyne.NewSize(290, 40)
	t.rows.High = func(render.Paper) render.Paper { return render.Px(float64(len(t.list)*rowHigh + 8)) }
	t.rows.Tap, t.rows.Hover, t.rows.Key = t.tap, t.hover, t.key
	t.rows.Shape = func(at control.Pointed) desktop.Cursor {
		if len(at.Refs) > 0 {
			return desktop.PointerCursor
		}
		return desktop.DefaultCursor
	}
	t.rows.Focus = func(on bool) {
		if on {
			control.Explain("the readings: Up and Down choose one, Enter goes to its field, Del forgets it")
		} else {
			control.Explain("")
		}
	}
	scroll, _ := control.NewColumn(0, t.rows)
	t.scroll = scroll
	t.object = container.NewBorder(t.head, nil, nil, nil, scroll)
	return t
}

func (t *roomTable) redraw() {
	l := t.r.w.live
	t.list = nil
	if l.of != nil {
		var s *survey.Survey
		if l.scene != nil {
			s = l.scene.Survey
		}
		t.list = session.Readings(l.of, s)
	}
	t.head.Redraw()
	t.rows.Redraw()
	t.scroll.Content.Refresh()
	t.scroll.Refresh()
}

// count returns how many readings are in.
func (t *roomTable) count() (in, differ int) {
	for _, r := range t.list {
		if !missing(r) {
			in++
		}
		if r.State == session.Differ {
			differ++
		}
	}
	return in, differ
}

// columns are where things stand in a row of a width.
type columns struct {
	from, to, toWide, first, second, state render.Paper
	narrow                                 bool // states are dots alone
	one                                    bool // second readings are left to the form
}

func columnsOf(w render.Paper) columns {
	px := render.Px
	c := columns{from: px(16), to: px(76), narrow: w < px(400)}
	c.state = w - px(80)
	if c.narrow {
		c.state = w - px(26)
	}
	c.second = c.state - px(8)
	c.first = c.second - px(76)
	if c.one = w < px(350); c.one {
		c.first = c.second
	}
	c.toWide = c.first - px(74) - c.to
	return c
}

func (t *roomTable) drawHead(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	st, px := render.ScreenStyle, render.Px
	d.Add(heading(px(16), px(14), "Readings", "")...)
	in, differ := t.count()
	bold := render.Lettering{Size: st.Body.Size, Face: render.Medium}
	x, y := px(16), px(46)
	put := func(l render.Lettering, words string, ink render.Ink) {
		if x+l.Wide(words) > w-px(12) {
			x, y = px(16), y+px(18)
		}
		d.Add(render.Words("", l.Text(render.Point{X: x, Y: y}, words, ink, render.Left)))
		x += l.Wide(words)
	}
	put(bold, fmt.Sprintf("%d of %d", in, len(t.list)), render.InkMain)
	put(st.Body, " readings in; ", render.InkMain)
	switch differ {
	case 0:
	case 1:
		put(st.Body, "1 does not agree; ", render.InkNotFit)
	default:
		put(st.Body, fmt.Sprintf("%d do not agree; ", differ), render.InkNotFit)
	}
	if s := t.r.w.live.scene; s != nil {
		if plus := view.ShapeKnown(s, t.r.w.live.unit()); plus != "" {
			put(st.Body, "shape known to ", render.InkMain)
			put(bold, "±"+plus, render.InkMain)
		} else {
			put(st.Body, "shape not determined", render.InkCannotTell)
		}
	}
	c, y := columnsOf(w), h-px(8)
	for _, col := range []struct {
		x     render.Paper
		words string
		at    render.Anchor
	}{{c.from, "From", render.Left}, {c.to, "To", render.Left}, {c.first, "Reading", render.Right}, {c.second, "Second", render.Right}, {c.state, "State", render.Left}} {
		if c.narrow && col.words == "State" || c.one && col.words == "Second" {
			continue
		}
		d.Add(render.Words("", st.Body.Text(render.Point{X: col.x, Y: y}, col.words, render.InkSoft, col.at)))
	}
	d.Add(render.Stroke("", render.Line(render.Point{X: px(16), Y: h - px(0.5)}, render.Point{X: w - px(12), Y: h - px(0.5)}), render.Pen{Width: px(1), Ink: render.InkHairline}))
	return d
}

func (t *roomTable) draw(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	px := render.Px
	for i, r := range t.list {
		y := px(float64(4 + i*rowHigh))
		box := render.Rect{Min: render.Point{X: px(8), Y: y}, Max: render.Point{X: w - px(4), Y: y + px(rowHigh)}}
		ground := render.InkPanel
		if r.Wall != "" && render.Under(t.r.chosen, "wall."+r.Wall) || render.Under(r.Key, session.Subject(t.r.chosen)) {
			ground = render.InkChosenRow
		}
		d.Add(render.Fill(r.Key, render.Box(box), ground))
		if i > 0 && t.list[i-1].Wall != r.Wall {
			d.Add(render.Stroke("", render.Line(box.Min, render.Point{X: box.Max.X, Y: y}), render.Pen{Width: px(1), Ink: render.InkHairline}))
		}
		d.Add(rowMarks(r, w, y+px(rowHigh)/2)...)
		if r.Key == t.r.chosen {
			pen := render.Pen{Width: px(1.5), Ink: render.InkMain}
			d.Add(render.Stroke("", render.RoundBox(box.Grow(-px(1)), px(3)), pen))
		}
	}
	if t.rows.Focused() {
		d.Add(control.FocusRing(w, h, control.State{Focus: true})...)
	}
	return d
}

// rowMarks are the words of a row and the dot that says how it is known.
func rowMarks(r session.Taken, w, y render.Paper) []render.Mark {
	r.First, r.Second = strings.ReplaceAll(r.First, " mm", ""), strings.TrimSuffix(r.Second, " mm") // as on the plan
	st, px, c := render.ScreenStyle, render.Px, columnsOf(w)
	ink := render.InkMain
	switch r.State {
	case session.NotIn:
		ink = render.InkCannotTell
	case session.Differ:
		ink = render.InkNotFit
	}
	put := func(l render.Lettering, x render.Paper, words string, at render.Anchor) render.Mark {
		return render.Words("", l.Text(render.Point{X: x, Y: y}, words, ink, at).Middled())
	}
	measure := render.Lettering{Size: st.Body.Size, Face: render.Medium}
	marks := []render.Mark{
		put(st.Body, c.from, shortened(r.From, st.Body, c.to-c.from-px(4)), render.Left),
		put(st.Body, c.to, shortened(r.To, st.Body, c.toWide), render.Left),
		put(measure, c.first, r.First, render.Right),
	}
	if !c.one {
		marks = append(marks, put(measure, c.second, r.Second, render.Right))
	}
	sign := map[session.State]render.Sign{session.Agree: render.DotFilled, session.Once: render.DotOpen, session.Differ: render.SignDoesNotFit, session.NotIn: render.DotDashed}[r.State]
	marks = append(marks, sign.At("", render.Point{X: c.state + px(7), Y: y}, px(11))...)
	if !c.narrow {
		marks = append(marks, put(st.Body, c.state+px(19), stateWords(r), render.Left))
	}
	return marks
}

// stateWords say how a reading is known.
func stateWords(r session.Taken) string {
	switch r.State {
	case session.NotIn:
		return "not in"
	case session.Differ:
		return "differ"
	case session.Agree:
		if r.Second == "" && r.How == room.Mine {
			return "mine"
		}
		if r.Second == "" {
			return "twice"
		}
		return "agree"
	}
	if r.How == "" || r.How == room.Once {
		return "once"
	}
	return string(r.How)
}

func (t *roomTable) tap(at control.Pointed) {
	if len(at.Refs) > 0 {
		t.r.choose(at.Refs[0], true)
	}
}

func (t *roomTable) hover(at control.Pointed) {
	if len(at.Refs) == 0 {
		t.r.w.status.at("")
		return
	}
	t.r.w.status.at(t.r.sentence(at.Refs[0]))
}

// place returns the row of a key, -1 where it has none.
func (t *roomTable) place(key string) int {
	for i, r := range t.list {
		if r.Key == key {
			return i
		}
	}
	for i, r := range t.list {
		if render.Under(r.Key, session.Subject(key)) {
			return i
		}
	}
	return -1
}

// key goes through the rows by the arrows; the other keys do what they do on the plan.
func (t *roomTable) key(e *fyne.KeyEvent) bool {
	switch e.Name {
	case fyne.KeyUp:
		t.step(-1)
	case fyne.KeyDown:
		t.step(1)
	case fyne.KeyLeft, fyne.KeyRight:
		return false
	default:
		return t.r.key(e)
	}
	return true
}

// step chooses the row after the chosen one, or by -1 before it.
func (t *roomTable) step(by int) {
	i := t.place(t.r.chosen)
	if i >= 0 && t.list[i].Key != t.r.chosen && by > 0 {
		by = 0 // from the thing to its first row
	}
	if i += by; i >= 0 && i < len(t.list) {
		t.r.choose(t.list[i].Key, false)
	}
}

// reveal scrolls a row into sight.
func (t *roomTable) reveal(key string) {
	i := t.place(key)
	if i < 0 {
		return
	}
	top, high := float32(i*rowHigh), t.scroll.Size().Height
	switch {
	case top < t.scroll.Offset.Y:
		t.scroll.Offset.Y = max(0, top-rowHigh)
	case top+2*rowHigh > t.scroll.Offset.Y+high:
		t.scroll.Offset.Y = max(0, top+2*rowHigh-high)
	default:
		return
	}
	t.scroll.Refresh()
}
