package ui

import (
	"fmt"
	"strconv"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/room/length"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// roomForm shows everything about the chosen wall or thing in fields.
type roomForm struct {
	r       *roomPanel
	object  fyne.CanvasObject
	head    *control.Sketch
	moves   [2]*control.Press // to the one before and after
	foot    []*control.Press  // the room, floor and ceiling
	scroll  *container.Scroll
	middle  fyne.CanvasObject // what scrolls, with its wheel
	inner   *fyne.Container
	wall    *control.Sketch // the picture of a wall in it, nil for none
	shown   string          // the lines as they are built
	first   string          // key of the first number of the form
	fields  map[string]focusable
	follows []func()
}

// focusable is what a key's line gives the focus to.
type focusable interface{ Focusable() fyne.Focusable }

func newRoomForm(r *roomPanel) *roomForm {
	f := &roomForm{r: r}
	f.head = control.NewSketch(render.InkWell, f.drawHead)
	f.head.Least = fyne.NewSize(150, 62)
	for i, word := range []string{"<", ">"} {
		by := 2*i - 1
		f.moves[i] = control.NewButton(render.InkWell, func() string { return word }, false, func() { r.next(by) })
		f.moves[i].Least = fyne.NewSize(28, 26)
		f.moves[i].Says = func() string {
			return "go to the wall, corner or thing " + map[int]string{-1: "before", 1: "after"}[by] + " (Page Up and Page Down on the plan go through all of them)"
		}
	}
	for _, e := range [][2]string{{"room", "Room"}, {"floor", "Floor"}, {"ceiling", "Ceiling"}} {
		b := control.NewButton(render.InkWell, func() string { return e[1] }, false, func() { f.goTo(e[0]) })
		b.Least.Width -= 12
		b.Says = func() string {
			return map[string]string{"room": "what the room has not, and what holds for all of it", "floor": "what the bed stands on", "ceiling": "the heights of the ceiling, flat, sloped or stepped"}[e[0]]
		}
		f.foot = append(f.foot, b)
	}
	for _, b := range append(f.foot, f.moves[:]...) {
		b.Key = func(e *fyne.KeyEvent) { r.key(e) }
	}
	f.scroll, f.inner = control.NewColumn(0)
	ground := control.NewSketch(render.InkWell, func(w, h render.Paper) render.Drawing { return render.Drawing{W: w, H: h} })
	f.middle = control.Wheel(f.scroll)
	f.object = container.New(formFrame{f}, ground, f.head, f.moves[0], f.moves[1], f.middle, f.foot[0], f.foot[1], f.foot[2])
	return f
}

// goTo shows the room, the floor or the ceiling; a room without one gets its first face.
func (f *roomForm) goTo(what string) {
	j := f.r.w.session.Job()
	if j == nil {
		return
	}
	if what != "ceiling" {
		f.r.choose(what, false)
		return
	}
	if len(j.Room.Ceilings) == 0 {
		f.r.w.do("Add a ceiling", "", func(j *job.Job) (*job.Job, error) { return session.AddCeiling(j) })
	}
	if j = f.r.w.session.Job(); len(j.Room.Ceilings) > 0 {
		f.r.choose("ceiling."+session.KeyOr(j.Room.Ceilings[0].Key, 0), false)
	}
}

func (f *roomForm) drawHead(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	j := f.r.w.session.Job()
	if j == nil {
		return d
	}
	st := render.ScreenStyle
	subject := session.Subject(f.r.chosen)
	name := f.r.nameOf(subject)
	name = capital(name)
	d.Add(render.Words("", st.Title.Text(render.Point{X: render.Px(14), Y: render.Px(26)}, shortened(name, st.Title, w-render.Px(86)), render.InkMain, render.Left)))
	sub := jobfile.Shown(j, subject+".name")
	if table, _, _ := strings.Cut(subject, "."); sub == "" && table != "wall" {
		sub = strings.TrimPrefix(keyWords(table), ": ")
	}
	if table, name, _ := strings.Cut(subject, "."); table == "corner" {
		sub = wallsAt(j.Room.Outline, name)
	}
	d.Add(render.Words("", st.Body.Text(render.Point{X: render.Px(14), Y: render.Px(46)}, shortened(sub, st.Body, w-render.Px(28)), render.InkSoft, render.Left)))
	return d
}

// wallsAt says which walls meet at a corner.
func wallsAt(outline, corner string) string {
	i, n := strings.Index(outline, corner), len(outline)
	if i < 0 || n < 3 {
		return ""
	}
	return outline[(i+n-1)%n:][:1] + " to " + corner + " meets " + corner + " to " + outline[(i+1)%n:][:1]
}

// follow builds the form anew where what it is of differs, and shows the values as they are now.
func (f *roomForm) follow() {
	f.head.Redraw()
	j := f.r.w.session.Job()
	if j == nil {
		return
	}
	specs := specsOf(j, f.r.w.live.scene, f.r.chosen)
	if shown := fmt.Sprint(specs); shown != f.shown {
		subject := strings.HasPrefix(f.shown, "[{"+fmt.Sprint(specs[0])[1:])
		f.shown = shown
		f.build(specs)
		if !subject {
			f.scroll.Offset.Y = 0
		}
		f.scroll.Refresh()
	}
	for _, do := range f.follows {
		do()
	}
}

// focus gives the focus to the field of a key, where it has none to the first number of the form, and scrolls to it.
func (f *roomForm) focus(key string) {
	field, ok := f.fields[key]
	if !ok {
		if field = f.fields[f.first]; field == nil {
			return
		}
	}
	if c := fyne.CurrentApp().Driver().CanvasForObject(f.scroll); c != nil {
		if o, ok := field.(fyne.CanvasObject); ok {
			f.into(o)
		}
		c.Focus(field.Focusable())
	}
}

// into scrolls until a line is in sight.
func (f *roomForm) into(o fyne.CanvasObject) {
	for _, row := range f.inner.Objects {
		if l, ok := row.(*labelled); ok && fyne.CanvasObject(l.what) == o {
			y := row.Position().Y
			if y < f.scroll.Offset.Y || y+80 > f.scroll.Offset.Y+f.scroll.Size().Height {
				f.scroll.Offset.Y = max(0, min(y-40, f.inner.MinSize().Height-f.scroll.Size().Height))
				f.scroll.Refresh()
			}
		}
	}
}

func (f *roomForm) build(specs []spec) {
	f.fields, f.follows, f.wall = map[string]focusable{}, nil, nil
	f.inner.Objects = nil
	f.first = firstNumber(specs)
	for _, s := range specs {
		f.inner.Objects = append(f.inner.Objects, f.line(s))
	}
	f.inner.Refresh()
}

// firstNumber returns the key of the first line that is a number, else of the first that is typed; of a wall it is its length.
func firstNumber(specs []spec) (key string) {
	for _, s := range specs {
		switch {
		case s.kind == readingSpec && strings.HasPrefix(s.key, "wall.") && !strings.HasSuffix(s.key, ".length"):
		case s.kind == readingSpec:
			return s.key
		case key == "" && (s.kind == lengthSpec || s.kind == textSpec):
			key = s.key
		}
	}
	return key
}

// line makes the widgets of one line.
func (f *roomForm) line(s spec) fyne.CanvasObject {
	switch s.kind {
	case sectionSpec:
		return newSection(s.label)
	case pictureSpec:
		return f.picture(strings.TrimPrefix(s.key, "wall."))
	case readingSpec:
		return f.labelled(s, f.readingField(s.key, s.label))
	case lengthSpec, textSpec:
		return f.labelled(s, f.plainField(s))
	case choiceSpec:
		return f.labelled(s, f.choice(s))
	case studSpec:
		return f.stud(s)
	case countedSpec:
		return f.counted(s.key)
	case absentSpec:
		return f.absent(s.key)
	case buttonSpec:
		return f.button(s)
	}
	return newSection(s.label)
}

func (f *roomForm) labelled(s spec, what lineWidget) fyne.CanvasObject {
	f.fields[s.key] = what
	l := newLabelled(s.label, what)
	if strings.ToLower(s.label) == s.label {
		l.indent = 10
	}
	return l
}

// readingField is a field of one reading: in parentheses where it rests on itself alone, and echoing what was understood.
func (f *roomForm) readingField(key, label string) *control.Field {
	field := control.NewField(func() string { return f.reading(key) }, func(text string) error {
		return f.r.set(key, label, bare(text))
	})
	field.Echo = func(text string) (string, bool) { return f.r.w.echo(bare(text)) }
	field.Says = func() string { return f.r.sentenceOf(key, label) }
	f.prepare(field, key)
	f.follows = append(f.follows, field.Follow)
	return field
}

// prepare makes a field one of this form.
func (f *roomForm) prepare(field *control.Field, key string) {
	field.Wide, field.Anew, field.Escape = 100, true, f.r.toPlan
	field.Grown = f.inner.Refresh
	field.Hint = func() string { return hintOf(key, f.r.w.live.unit()) }
}

// hintOf is what is taken where a key is not set, where that is a length, in a unit.
func hintOf(key string, unit length.Unit) string {
	row, _ := jobfile.Find(strings.TrimSuffix(key, ".2"))
	hint, _, _ := strings.Cut(keyRows()[row.Key].Default, ",")
	if hint == "" || strings.HasSuffix(key, ".2") || hint[0] < '0' || hint[0] > '9' {
		return ""
	}
	if _, err := strconv.ParseFloat(hint, 64); err == nil { // an angle or a count
		return hint
	}
	if l, err := length.Parse(hint, length.Context{Unit: length.Inches}); err == nil {
		return jobfile.ShownLength(l, unit)
	}
	return hint
}

// bare takes the parentheses off a reading that stands in them.
func bare(text string) string {
	text = strings.TrimSpace(text)
	if strings.HasPrefix(text, "(") && strings.HasSuffix(text, ")") {
		return strings.TrimSpace(text[1 : len(text)-1])
	}
	return text
}

func (f *roomForm) reading(key string) string {
	j := f.r.w.session.Job()
	if j == nil {
		return ""
	}
	text := jobfile.Shown(j, key)
	if text == "" || strings.HasSuffix(key, ".2") || session.Firm(j, key) {
		return text
	}
	return "(" + text + ")"
}

func (f *roomForm) plainField(s spec) *control.Field {
	field := control.NewField(func() string { return f.r.w.shown(s.key) }, func(text string) error { return f.r.rename(s.key, s.label, text) })
	if s.kind == lengthSpec {
		field.Echo = f.r.w.echo
	}
	field.Says = func() string { return s.label + keyWords(s.key) }
	f.prepare(field, s.key)
	f.follows = append(f.follows, field.Follow)
	return field
}

// choice is a list of words to choose from.
func (f *roomForm) choice(s spec) *choiceBox {
	c := newChoiceBox(s.words, func(word string) {
		if err := f.r.set(s.key, s.label, word); err != nil {
			f.r.w.trouble("Not set", err)
		}
	})
	c.says = func() string { return s.label + keyWords(s.key) }
	follow := func() {
		word := f.r.w.shown(s.key)
		if reading, ok := strings.CutSuffix(s.key, ".1.how"); ok && word == "" && f.r.w.shown(reading) != "" {
			word = "once" // what a reading is that says nothing
		}
		c.show(word)
	}
	f.follows = append(f.follows, follow)
	follow()
	return c
}

// picture is the wall face on, small: clicking a line or an opening chooses it.
func (f *roomForm) picture(key string) fyne.CanvasObject {
	s := control.NewSketch(render.InkWell, nil)
	s.Draw = func(w, h render.Paper) render.Drawing {
		scene := f.r.plan.scene()
		if scene == nil {
			return render.Drawing{W: w, H: h}
		}
		return view.WallSmall(scene, key, view.Options{Unit: f.r.w.live.unit(), Chosen: f.r.chosen, W: w, H: h})
	}
	s.Least = fyne.NewSize(150, 110)
	s.High = func(w render.Paper) render.Paper { return min(w*0.62, render.Px(150)) }
	s.Tap = func(at control.Pointed) {
		if f.r.adding != "" {
			d := s.Drawing()
			up := float64(d.Origin.Y-at.At.Y) / d.Scale
			f.r.plan.addOnWall(key, float64(at.At.X-d.Origin.X)/d.Scale, up)
			return
		}
		if key := pointed(at.Refs); key != "" {
			f.r.choose(key, isReading(key))
		}
	}
	s.Hover = f.r.plan.explain
	f.handle(s, key)
	f.wall = s
	f.follows = append(f.follows, s.Redraw)
	return s
}

// button is one of the things to do below a form.
func (f *roomForm) button(s spec) fyne.CanvasObject {
	b := control.NewButton(render.InkWell, func() string { return s.label }, false, func() { f.do(s.key) })
	b.Says = func() string {
		if s.key == "remove" && strings.HasPrefix(f.r.chosen, "corner.") {
			return "make one wall of the two at this corner; Undo brings it back"
		}
		return map[string]string{"remove": "take it out of the room; Undo brings it back", "add stud": "one more stud, its place to be typed",
			"add corner": "split the wall in two: pull one part for a step, or the corner for a bay; what is on the wall stays where it is",
			"add face":   "another face: sloped, or lower over a strip along a wall; where faces overlap the lowest counts",
			"add height": "one more height of this face, where and how high to be typed"}[s.key]
	}
	return container.New(buttonLine{}, b)
}

func (f *roomForm) do(what string) {
	subject := session.Subject(f.r.chosen)
	switch what {
	case "remove":
		f.r.chosen = subject
		f.r.removeChosen()
	case "add corner":
		f.r.addCorner()
	case "add face":
		f.r.w.do("Add a face of the ceiling", "", func(j *job.Job) (*job.Job, error) { return session.AddCeiling(j) })
		if c := f.r.w.session.Job().Room.Ceilings; len(c) > 0 {
			f.r.choose("ceiling."+session.KeyOr(c[len(c)-1].Key, len(c)-1), false)
		}
	case "add stud", "add height":
		list := map[string]string{"add stud": subject + ".stud", "add height": subject + ".height"}[what]
		key := ""
		f.r.w.do(strings.ToUpper(what[:1])+strings.Replace(what[1:], " ", " a ", 1), "", func(j *job.Job) (next *job.Job, err error) {
			next, key, err = session.AddElement(j, list)
			return next, err
		})
		if key != "" {
			f.r.choose(key+map[string]string{"add stud": ".at", "add height": ".height"}[what], true)
		}
	}
}

// lengthWords prints a length of the room.
func (f *roomForm) lengthWords(mm float64) string {
	return length.Format(length.FromMM(mm), length.Style{Unit: f.r.w.live.unit()})
}

// formFrame lays out the form: its head with the two buttons, what scrolls, the three buttons at the foot.
type formFrame struct{ f *roomForm }

func (l formFrame) Layout(items []fyne.CanvasObject, size fyne.Size) {
	f := l.f
	items[0].Resize(size)
	const foot = 40
	f.head.Resize(fyne.NewSize(size.Width, 62))
	for i, b := range f.moves {
		b.Resize(fyne.NewSize(28, 26))
		b.Move(fyne.NewPos(size.Width-72+float32(i)*32, 10))
	}
	f.middle.Move(fyne.NewPos(0, 62))
	f.middle.Resize(fyne.NewSize(size.Width, size.Height-62-foot))
	wide := (size.Width - 28 - 8) / 3
	for i, b := range f.foot {
		b.Move(fyne.NewPos(14+float32(i)*(wide+4), size.Height-foot+7))
		b.Resize(fyne.NewSize(wide, 26))
	}
}

func (formFrame) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(176, 200) }
