package ui

import (
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/ui/control"
)

// sizeGroup is one group of sizes in the column: its head, its rows where it is open, and what of it cannot be built.
type sizeGroup struct {
	s       *bedSizes
	of      bedGroup
	head    *control.Press
	bar     fyne.CanvasObject // the head with its check box
	check   *control.Press    // nil where every bed has it
	rows    []fyne.CanvasObject
	keys    []string
	shelves []*shelfLines
	more    *control.Row // adds a shelf
	refused []fyne.CanvasObject
	open    bool
}

const groupHigh = 34

func newSizeGroup(s *bedSizes, of bedGroup) *sizeGroup {
	g := &sizeGroup{s: s, of: of, open: of.open}
	g.head = control.NewPress(render.InkPanel, g.drawHead, g.fold)
	g.head.Least = fyne.NewSize(200, groupHigh)
	g.head.Says = func() string { return "open or fold: " + strings.ToLower(of.title) }
	g.head.Enters = func() { control.Reveal(s.scroll, g.bar) }
	g.bar = g.head
	if of.has != nil {
		g.check = control.NewCheck(render.InkPanel, "", g.there, g.toggle)
		g.check.Enters = g.head.Enters
		g.check.Says = func() string { return "the bed has it, or not: " + strings.ToLower(of.title) }
		g.bar = container.New(groupBar{}, g.head, g.check)
	}
	g.rows = g.lines(of.title, of.table, of.rows)
	if of.table == "bed.shelf" {
		add := control.NewButton(render.InkPanel, func() string { return "Add a shelf" }, false, g.addShelf)
		g.more = control.NewRow(add)
	}
	return g
}

// lines makes the rows of some sizes of what the title names.
func (g *sizeGroup) lines(title, table string, rows [][]bedCell) (out []fyne.CanvasObject) {
	for _, row := range rows {
		var cells []fyne.CanvasObject
		var keys []string
		for _, c := range row {
			key := table + "." + c.key
			cells, keys = append(cells, g.s.cell(key, title, c)), append(keys, key)
		}
		line := control.NewRow(cells...)
		for _, key := range keys {
			g.s.lines[key] = line
		}
		g.keys = append(g.keys, keys...)
		out = append(out, line)
	}
	return out
}

// holds tells whether a key is one of the group's, or in one of its.
func (g *sizeGroup) holds(key string) bool {
	return slices.ContainsFunc(g.keys, func(k string) bool { return render.Under(key, k) }) ||
		g.of.table != "bed" && render.Under(key, g.of.table) && !g.s.taken(key, g)
}

// taken tells whether a key is named by another group.
func (s *bedSizes) taken(key string, but *sizeGroup) bool {
	return slices.ContainsFunc(s.groups, func(g *sizeGroup) bool { return g != but && slices.Contains(g.keys, key) })
}

// there tells whether the bed has what the group is of.
func (g *sizeGroup) there() bool {
	j := g.s.w.session.Job()
	return g.of.has == nil || j != nil && g.of.has(j)
}

// objects are what of the group is shown.
func (g *sizeGroup) objects() []fyne.CanvasObject {
	out := []fyne.CanvasObject{g.bar}
	if g.open && g.there() {
		out = append(out, g.rows...)
		for i, n := range g.shelves {
			if i < g.shelfCount() {
				out = append(out, n.objects()...)
			}
		}
		if g.more != nil {
			out = append(out, g.more)
		}
	}
	return append(out, g.refused...)
}

func (g *sizeGroup) fold() {
	if !g.there() {
		g.toggle()
		return
	}
	g.open = !g.open
	g.s.follow()
}

// toggle gives the bed what the group is of, or takes it away.
func (g *sizeGroup) toggle() {
	what := strings.ToLower(g.of.title)
	if g.of.table == "bed.shelf" {
		g.toggleShelves()
		return
	}
	if g.there() {
		g.s.w.do("Take away: "+what, "", func(j *job.Job) (*job.Job, error) { return jobfile.Remove(j, g.of.table) })
		return
	}
	g.open = true
	g.s.w.do("Add: "+what, "", func(j *job.Job) (*job.Job, error) { return jobfile.Add(j, g.of.table, "") })
}

func (g *sizeGroup) follow() {
	g.followShelves()
	g.refused = g.refused[:0]
	for _, e := range g.s.bed.refused {
		if g.s.groupOf(e.Key) == g {
			g.refused = append(g.refused, g.s.refusal(e))
		}
	}
	if g.open && g.there() {
		g.followFields()
	}
	g.head.Redraw()
	if g.check != nil {
		g.check.Redraw()
	}
}

// followFields shows the values of the group's sizes as they are now; those of folded groups wait until they are opened.
func (g *sizeGroup) followFields() {
	for _, key := range g.keys {
		if f, ok := g.s.fields[key]; ok {
			f.Follow()
		}
	}
}

// groupOf finds the group of a key: the one that names it, else the one of its table, else the last.
func (s *bedSizes) groupOf(key string) *sizeGroup {
	for _, g := range s.groups {
		if g.holds(key) {
			return g
		}
	}
	return s.groups[len(s.groups)-1]
}

func (g *sizeGroup) drawHead(w, h render.Paper, st control.State) render.Drawing {
	d := render.Drawing{W: w, H: h}
	if st.Hover {
		d.Add(render.Fill("", render.Box(render.Rect{Max: render.Point{X: w, Y: h}}.Grow(-render.Px(1))), render.InkChosenRow))
	}
	y := h / 2
	x := render.Px(36)
	right := w - render.Px(16)
	if g.check != nil {
		right = w - render.Px(44)
	}
	d.Add(render.Stroke("", render.Line(render.Point{X: render.Px(16), Y: render.Px(0.5)}, render.Point{X: w - render.Px(16), Y: render.Px(0.5)}), render.Pen{Width: render.Px(1), Ink: render.InkHairline}))
	if g.there() {
		d.Add(chevronAt(render.Point{X: render.Px(21), Y: y}, g.open)...)
	}
	in := render.Lettering{Size: render.ScreenStyle.Body.Size, Face: render.Medium}
	d.Add(render.Words("", in.Text(render.Point{X: x, Y: y}, g.of.title, render.InkMain, render.Left).Middled()))
	room := right - x - in.Wide(g.of.title) - render.Px(16)
	d.Add(render.Words("", render.ScreenStyle.Body.Text(render.Point{X: right, Y: y}, shortened(g.words(), render.ScreenStyle.Body, room), render.InkSoft, render.Right).Middled()))
	d.Add(control.FocusRing(w, h, st)...)
	return d
}

// words are what the group is, in short.
func (g *sizeGroup) words() string {
	if !g.there() {
		return "none"
	}
	if bed := g.s.bed.bed(); bed != nil && g.has(g.s.bed.built.Job) {
		return g.of.summary(bed, g.s.w.live)
	}
	return ""
}

func (g *sizeGroup) has(j *job.Job) bool { return g.of.has == nil || g.of.has(j) }

// chevronAt points right where something is folded, down where it is open.
func chevronAt(at render.Point, open bool) []render.Mark {
	c := &card{}
	c.chevron(at, open)
	return c.marks
}

// groupBar lays out a group's head with its check box at the right.
type groupBar struct{}

func (groupBar) Layout(items []fyne.CanvasObject, size fyne.Size) {
	const box, edge = 22, 14
	items[0].Resize(size)
	items[1].Move(fyne.NewPos(size.Width-box-edge, (size.Height-box)/2))
	items[1].Resize(fyne.NewSize(box, box))
}

func (groupBar) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(200, groupHigh) }

// shelfLines are the rows of one shelf, and what takes it away.
type shelfLines struct {
	title fyne.CanvasObject
	rows  []fyne.CanvasObject
}

func (n *shelfLines) objects() []fyne.CanvasObject {
	return append([]fyne.CanvasObject{n.title}, n.rows...)
}

func (g *sizeGroup) shelfCount() int {
	if j := g.s.w.session.Job(); j != nil {
		return len(j.Bed.Shelves)
	}
	return 0
}

// followShelves makes rows for shelves that have none yet. Rows of shelves that are gone are kept for the next.
func (g *sizeGroup) followShelves() {
	if g.of.table != "bed.shelf" {
		return
	}
	for i := len(g.shelves) + 1; i <= g.shelfCount(); i++ {
		table := fmt.Sprintf("bed.shelf.%d", i)
		name := fmt.Sprintf("Shelf %d", i)
		away := control.NewButton(render.InkPanel, func() string { return "Take away" }, false, func() {
			g.s.w.do("Take a shelf away", "", func(j *job.Job) (*job.Job, error) { return jobfile.Remove(j, table) })
		})
		title := control.NewSketch(render.InkPanel, func(w, h render.Paper) render.Drawing {
			d := render.Drawing{W: w, H: h}
			d.Add(render.Words("", render.Lettering{Size: render.ScreenStyle.Body.Size, Face: render.Medium}.Text(render.Point{X: render.Px(16), Y: h / 2}, name, render.InkSoft, render.Left).Middled()))
			return d
		})
		title.Least = fyne.NewSize(100, 34)
		g.shelves = append(g.shelves, &shelfLines{container.New(shelfTitle{}, title, away), g.lines(name, table, shelfRows)})
	}
}

// shelfTitle lays out the name of a shelf with its button at the right.
type shelfTitle struct{}

func (shelfTitle) Layout(items []fyne.CanvasObject, size fyne.Size) {
	items[0].Resize(size)
	min := items[1].MinSize()
	items[1].Resize(min)
	items[1].Move(fyne.NewPos(size.Width-min.Width-16, 4))
}

func (shelfTitle) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(200, 34) }

// addShelf adds a shelf and goes to its height, which only the maker knows.
func (g *sizeGroup) addShelf() {
	g.open = true
	g.s.w.do("Add a shelf", "", func(j *job.Job) (*job.Job, error) {
		return jobfile.Add(j, "bed.shelf", "", jobfile.Change{Key: "for", Text: "upper"})
	})
	g.s.jump(fmt.Sprintf("bed.shelf.%d.height", g.shelfCount()))
}

// toggleShelves takes all shelves away in one step, or adds the first.
func (g *sizeGroup) toggleShelves() {
	if !g.there() {
		g.addShelf()
		return
	}
	g.s.w.do("Take the shelves away", "", func(j *job.Job) (next *job.Job, err error) {
		for next = j; len(next.Bed.Shelves) > 0 && err == nil; {
			next, err = jobfile.Remove(next, "bed.shelf.1")
		}
		return next, err
	})
}
