package ui

import (
	"fmt"
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/timber"
	"bunkwright/render"
	"bunkwright/ui/control"
)

// bedSizes is the column of the sizes to choose, in groups that fold.
type bedSizes struct {
	w       *Window
	bed     *bedPane
	object  fyne.CanvasObject
	head    *control.Sketch
	fold    *control.Press
	scroll  *container.Scroll
	inner   *fyne.Container
	groups  []*sizeGroup
	fields  map[string]*control.Field // by key
	lines   map[string]*control.Row   // by key: where it stands
	foot    *bedFoot
	watched []func()
}

func newBedSizes(w *Window, b *bedPane) *bedSizes {
	s := &bedSizes{w: w, bed: b, fields: map[string]*control.Field{}, lines: map[string]*control.Row{}}
	s.head = control.NewSketch(render.InkPanel, s.drawHead)
	s.head.Least = fyne.NewSize(200, 64)
	s.fold = control.NewButton(render.InkPanel, s.foldWord, false, s.foldAll)
	s.fold.Says = func() string { return "fold all groups, or open them" }
	s.scroll, s.inner = control.NewColumn(0)
	for _, g := range bedGroups {
		s.groups = append(s.groups, newSizeGroup(s, g))
	}
	s.foot = newBedFoot(w, b)
	s.object = container.New(columnFrame{}, container.New(withButton{}, s.head, s.fold), control.Wheel(s.scroll), s.foot.object)
	s.arrange()
	return s
}

// follow shows the sizes as they are now.
func (s *bedSizes) follow() {
	s.head.Redraw()
	for _, f := range s.watched {
		f()
	}
	for _, g := range s.groups {
		g.follow()
	}
	s.foot.follow()
	s.fold.Redraw()
	if list := s.shownObjects(); !slices.Equal(list, s.inner.Objects) {
		s.arrange()
	}
}

// afresh draws everything anew.
func (s *bedSizes) afresh() {
	s.follow()
	s.arrange()
}

// arrange puts what is shown of the groups below each other.
func (s *bedSizes) arrange() {
	s.inner.Objects = s.shownObjects()
	s.inner.Refresh()
}

func (s *bedSizes) shownObjects() (list []fyne.CanvasObject) {
	for _, g := range s.groups {
		list = append(list, g.objects()...)
	}
	return list
}

func (s *bedSizes) anyOpen() bool {
	for _, g := range s.groups {
		if g.open {
			return true
		}
	}
	return false
}

func (s *bedSizes) foldWord() string {
	if s.anyOpen() {
		return "Fold all"
	}
	return "Open all"
}

func (s *bedSizes) foldAll() {
	open := !s.anyOpen()
	for _, g := range s.groups {
		g.open = open && g.there()
	}
	s.follow()
}

// drawHead counts what cannot be built.
func (s *bedSizes) drawHead(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	d.Add(heading(render.Px(16), render.Px(14), "Sizes to choose", "")...)
	st, x, y := render.ScreenStyle, render.Px(16), render.Px(48)
	put := func(words string, ink render.Ink) {
		d.Add(render.Words("", st.Body.Text(render.Point{X: x, Y: y}, words, ink, render.Left).Middled()))
		x += st.Body.Wide(words)
	}
	switch n := len(s.bed.refused); {
	case n == 0:
		put("an empty field takes the size in grey", render.InkSoft)
	case s.bed.bed() == nil:
		put(fmt.Sprintf("%d cannot be built", n), render.InkNotFit)
	default:
		put(fmt.Sprintf("%d cannot be built", n), render.InkNotFit)
		put("; the last that could is drawn", render.InkSoft)
	}
	return d
}

// cell makes the control of one size of what the title names.
func (s *bedSizes) cell(key, title string, c bedCell) fyne.CanvasObject {
	label := strings.ToLower(title + ": " + c.label)
	set := func(text string) {
		if err := s.w.setKey(key, label, text); err != nil {
			s.w.trouble(c.label, err)
		}
	}
	switch c.kind {
	case chosenWord:
		o := control.NewChoice(render.InkPanel, c.label, c.words, func() string { return jobfile.Shown(s.filled(), key) }, set)
		o.Says, o.Enters = func() string { return label + keyWords(key) }, func() { s.reveal(key) }
		s.watched = append(s.watched, o.Follow)
		return o
	case ticked:
		on := func() bool { return jobfile.Shown(s.filled(), key) == "true" }
		o := control.NewCheck(render.InkPanel, c.label, on, func() { set(fmt.Sprint(!on())) })
		o.Says, o.Enters = func() string { return label + keyWords(key) }, func() { s.reveal(key) }
		s.watched = append(s.watched, o.Redraw)
		return o
	}
	return s.field(key, label, c)
}

// filled is the job with the sizes that were not chosen filled in.
func (s *bedSizes) filled() *job.Job {
	j := s.w.session.Job()
	if j == nil {
		return &job.Job{}
	}
	if s.bed.filled != nil && s.bed.built != nil && s.bed.built.Job.Unit == j.Unit && len(s.bed.refused) == 0 {
		return s.bed.filled
	}
	return j
}

func (s *bedSizes) field(key, label string, c bedCell) *control.Field {
	f := control.NewField(func() string { return s.shown(key) }, func(text string) error { return s.w.setKey(key, label, text) })
	f.Label, f.Wide = c.label, 84
	switch c.kind {
	case typedLength:
		f.Echo = s.w.echo
	case typedBoard:
		f.Wide = 104
		f.Aside = func() string { return s.section(key) }
	}
	f.Says = func() string { return label + keyWords(key) }
	f.Hint = func() string { return s.hint(key) }
	f.Wrong = func() bool { return s.refusedAt(key) }
	f.Grown = s.arrange
	f.Enters = func(on bool) { s.enter(key, on) }
	s.fields[key] = f
	f.Follow()
	return f
}

// shown is the text of a size as it is now, tried ones included.
func (s *bedSizes) shown(key string) string {
	if sc := s.w.live.scene; sc != nil {
		return jobfile.Shown(sc.Job, key)
	}
	return s.w.shown(key)
}

// hint is what is taken for a size that was not chosen.
func (s *bedSizes) hint(key string) string {
	if hint := jobfile.Shown(s.filled(), key); hint != "" || s.filled() != s.bed.filled {
		return hint
	}
	return "none"
}

// section is what a board that is named by its size as sold really measures.
func (s *bedSizes) section(key string) string {
	size, err := timber.DressedSize(jobfile.Shown(s.filled(), key), timber.Dry)
	if err != nil {
		return ""
	}
	return s.w.live.shows(size.Thick) + " x " + s.w.live.shows(size.Wide)
}

// enter lights the parts of a size while its field has the focus.
func (s *bedSizes) enter(key string, on bool) {
	if !on {
		key = ""
	} else {
		s.reveal(key)
	}
	if s.bed.lit != key {
		s.bed.lit = key
		s.bed.drawn()
	}
}

// reveal scrolls to the line of a key.
func (s *bedSizes) reveal(key string) {
	if row := s.lines[key]; row != nil {
		control.Reveal(s.scroll, row)
	}
}

// jump opens the group of a key and goes to its field.
func (s *bedSizes) jump(key string) {
	for ; key != "bed" && key != ""; key = above(key) {
		f, ok := s.fields[key]
		if !ok {
			continue
		}
		for _, g := range s.groups {
			if g.holds(key) {
				g.open = true
			}
		}
		s.follow()
		s.w.win.Canvas().Focus(f.Focusable())
		return
	}
}

// withButton lays out a heading with a button at its right end.
type withButton struct{}

func (withButton) Layout(items []fyne.CanvasObject, size fyne.Size) {
	items[0].Resize(size)
	min := items[1].MinSize()
	items[1].Resize(min)
	items[1].Move(fyne.NewPos(size.Width-min.Width-14, 12))
}

func (withButton) MinSize(items []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(items[0].MinSize().Width+items[1].MinSize().Width, items[0].MinSize().Height)
}
