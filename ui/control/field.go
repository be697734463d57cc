package control

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/widget"

	"bunkwright/render"
)

// A Field is one value that can be typed. It echoes what it understood while typing, keeps text that it cannot take and says beside it what
// is wrong, and hands the text on when it is left or Enter is pressed.
type Field struct {
	widget.BaseWidget
	Shows  func() string                               // the value as it is now
	Echo   func(text string) (words string, good bool) // what a text means, or what is wrong with it; nil: anything is good
	Commit func(text string) error                     // takes a text; nothing for the one that is shown already
	Says   func() string                               // for the status line
	Escape func()                                      // Escape with nothing typed that could be given up; nil: nothing
	Wide   float32                                     // of the box
	Anew   bool                                        // with the focus everything is selected: what is typed takes its place
	Label  string                                      // before the box, which then stands at the right; "": the box alone
	Aside  func() string                               // in soft ink between label and box; nil: nothing
	Hint   func() string                               // what is taken where nothing is typed, shown in soft ink; nil: nothing
	Wrong  func() bool                                 // the value was taken but something is wrong with it; nil: never
	Grown  func()                                      // its height differs from before; nil: nobody needs to know
	Enters func(on bool)                               // it has the focus, or lost it; nil: nobody needs to know

	entry *typed
	note  *Note
	label *canvas.Text
	aside *canvas.Text
	ring  *canvas.Rectangle // round a box with something wrong in it, or with the focus
	has   bool              // the focus
	all   *fyne.Container
	trash bool // the text could not be taken
}

// NewField returns a field of a value.
func NewField(shows func() string, commit func(string) error) *Field {
	f := &Field{Shows: shows, Commit: commit, Wide: 110}
	f.entry = newTyped(f)
	f.note = NewNote()
	f.label = canvas.NewText("", Palette().Color(render.InkSoft))
	f.label.TextSize = 13
	f.aside = canvas.NewText("", Palette().Color(render.InkSoft))
	f.aside.TextSize = 13
	f.ring = canvas.NewRectangle(color.Transparent)
	f.ring.StrokeWidth, f.ring.CornerRadius = 2, 3
	f.ring.Hide()
	f.all = container.New(fieldLayout{f}, f.label, f.aside, f.entry, f.ring, f.note)
	f.ExtendBaseWidget(f)
	f.Follow()
	return f
}

// CreateRenderer is asked for by the toolkit.
func (f *Field) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(f.all) }

// Follow shows the value as it is now, unless somebody is typing or the text could not be taken.
func (f *Field) Follow() {
	if f.Hint != nil {
		if hint := f.Hint(); hint != f.entry.PlaceHolder {
			f.entry.SetPlaceHolder(hint)
		}
	}
	if !f.entry.typing && !f.trash {
		f.entry.set(f.Shows())
	}
	if f.Aside != nil && f.aside.Text != f.Aside() {
		f.Refresh()
	}
	f.mark()
}

// mark puts a red ring round a box with something wrong in it, and one in the ink of lines round the one with the focus.
func (f *Field) mark() {
	wrong := f.trash || f.Wrong != nil && f.Wrong()
	ink := Palette().Color(render.InkMain)
	if wrong {
		ink = Palette().Color(render.InkNotFit)
	}
	if shown := wrong || f.has; shown == f.ring.Visible() && ink == f.ring.StrokeColor {
		return
	}
	f.ring.StrokeColor, f.ring.Hidden = ink, !(wrong || f.has)
	f.ring.Refresh()
}

// Refresh follows the theme and what the field says of itself.
func (f *Field) Refresh() {
	f.label.Text, f.label.Color = f.Label, Palette().Color(render.InkSoft)
	f.aside.Color = f.label.Color
	if f.Aside != nil {
		f.aside.Text = f.Aside()
	}
	f.mark()
	f.BaseWidget.Refresh()
}

// Text returns what stands in the box.
func (f *Field) Text() string { return f.entry.Text }

// Bad tells whether the text could not be taken.
func (f *Field) Bad() bool { return f.trash }

// Settle hands on what is typed and not handed on yet: before saving or printing, whoever has the focus.
func (f *Field) Settle() { f.entry.leave() }

// Focusable is what takes the focus: for jumping to the field.
func (f *Field) Focusable() fyne.Focusable { return f.entry }

// HeightFor is the height with the note, where there is one.
func (f *Field) HeightFor(w float32) float32 {
	return f.entry.MinSize().Height + f.note.HeightFor(w)
}

// MinSize is asked for by the toolkit.
func (f *Field) MinSize() fyne.Size {
	return fyne.NewSize(f.Wide, f.HeightFor(max(f.Wide, f.Size().Width)))
}

func (f *Field) changed(text string) {
	if f.Echo == nil {
		return
	}
	words, good := f.Echo(text)
	if text == f.Shows() {
		words = ""
	}
	f.say(words, good)
}

func (f *Field) commit(text string) {
	if text == f.Shows() {
		f.trash = false
		f.say("", true)
		return
	}
	err := f.Commit(text)
	f.trash = err != nil
	if err != nil {
		f.say(err.Error(), false)
		return
	}
	f.entry.set(f.Shows())
	f.say("", true)
}

// say changes the note.
func (f *Field) say(words string, good bool) {
	was := f.HeightFor(f.Size().Width)
	f.note.Set(words, good)
	f.Refresh()
	if f.Grown != nil && f.HeightFor(f.Size().Width) != was {
		f.Grown()
	}
}

// GiveUp shows the value again.
func (f *Field) GiveUp() {
	f.trash = false
	f.entry.set(f.Shows())
	f.say("", true)
}

type fieldLayout struct{ f *Field }

func (l fieldLayout) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	h, x := l.f.entry.MinSize().Height, float32(0)
	if l.f.Label != "" {
		x = max(0, size.Width-l.f.Wide)
		l.f.label.Text = l.f.Label
		l.f.label.Move(fyne.NewPos(0, (h-l.f.label.MinSize().Height)/2))
		l.asideAt(x-8, h)
	}
	l.f.entry.Move(fyne.NewPos(x, 0))
	l.f.entry.Resize(fyne.NewSize(size.Width-x, h))
	l.f.ring.Move(fyne.NewPos(x, 0))
	l.f.ring.Resize(fyne.NewSize(size.Width-x, h))
	l.f.note.Move(fyne.NewPos(0, h))
	l.f.note.Resize(fyne.NewSize(size.Width, l.f.note.HeightFor(size.Width)))
}

// asideAt sets what stands between label and box, left out where it has no room.
func (l fieldLayout) asideAt(right, h float32) {
	if l.f.Aside != nil {
		l.f.aside.Text = l.f.Aside()
	}
	size := l.f.aside.MinSize()
	l.f.aside.Move(fyne.NewPos(right-size.Width, (h-size.Height)/2))
	if right-size.Width < l.f.label.MinSize().Width+8 {
		l.f.aside.Hide()
	} else {
		l.f.aside.Show()
	}
}

func (l fieldLayout) MinSize([]fyne.CanvasObject) fyne.Size { return l.f.MinSize() }

// typed is the box of a field.
type typed struct {
	widget.Entry
	f      *Field
	typing bool
	quiet  bool // the text is set, not typed
}

func newTyped(f *Field) *typed {
	t := &typed{f: f}
	t.ExtendBaseWidget(t)
	t.Wrapping = fyne.TextWrapOff
	t.OnChanged = func(text string) {
		if !t.quiet {
			t.typing = true
			f.changed(text)
		}
	}
	t.OnSubmitted = func(string) { t.leave() }
	return t
}

func (t *typed) set(text string) {
	if t.Text != text {
		t.quiet = true
		t.SetText(text)
		t.quiet = false
	}
}

func (t *typed) leave() {
	if t.typing {
		t.typing = false
		t.f.commit(t.Text)
	}
}

// FocusGained explains the field.
func (t *typed) FocusGained() {
	t.Entry.FocusGained()
	t.f.has = true
	t.f.mark()
	if t.f.Anew {
		t.TypedShortcut(&fyne.ShortcutSelectAll{})
	}
	if t.f.Says != nil {
		Explain(t.f.Says())
	}
	if t.f.Enters != nil {
		t.f.Enters(true)
	}
}

// FocusLost hands the text on.
func (t *typed) FocusLost() {
	t.Entry.FocusLost()
	t.f.has = false
	t.f.mark()
	Explain("")
	t.leave()
	if t.f.Enters != nil {
		t.f.Enters(false)
	}
}

// TypedKey gives up on Escape.
func (t *typed) TypedKey(e *fyne.KeyEvent) {
	if e.Name == fyne.KeyEscape {
		if !t.typing && !t.f.trash && t.f.Escape != nil {
			t.f.Escape()
			return
		}
		t.typing = false
		t.f.GiveUp()
		return
	}
	t.Entry.TypedKey(e)
}

// A Note is a line or more under something: an echo in soft ink, or what is wrong in red.
type Note struct {
	widget.BaseWidget
	words string
	good  bool
	lines *fyne.Container
}

// NewNote returns an empty note, which takes no room.
func NewNote() *Note {
	n := &Note{good: true, lines: container.NewWithoutLayout()}
	n.ExtendBaseWidget(n)
	return n
}

// CreateRenderer is asked for by the toolkit.
func (n *Note) CreateRenderer() fyne.WidgetRenderer { return widget.NewSimpleRenderer(n.lines) }

// Set changes the words.
func (n *Note) Set(words string, good bool) {
	if n.words != words || n.good != good {
		n.words, n.good = words, good
		n.fill(n.Size().Width)
	}
}

const noteLine = 18

func (n *Note) wrap(w float32) []string {
	if n.words == "" {
		return nil
	}
	return render.Wrap(n.words, render.ScreenStyle.Body.Size, render.Regular, Paper(max(w, 60)))
}

// HeightFor is the height that a width asks for.
func (n *Note) HeightFor(w float32) float32 { return float32(len(n.wrap(w))) * noteLine }

// MinSize is asked for by the toolkit.
func (n *Note) MinSize() fyne.Size { return fyne.NewSize(60, n.HeightFor(n.Size().Width)) }

// Resize breaks the lines anew.
func (n *Note) Resize(size fyne.Size) {
	n.BaseWidget.Resize(size)
	n.fill(size.Width)
}

func (n *Note) fill(w float32) {
	ink := render.InkSoft
	if !n.good {
		ink = render.InkNotFit
	}
	n.lines.Objects = n.lines.Objects[:0]
	for i, line := range n.wrap(w) {
		t := canvas.NewText(line, Palette().Color(ink))
		t.TextSize = 13
		t.Move(fyne.NewPos(0, float32(i)*noteLine))
		n.lines.Objects = append(n.lines.Objects, t)
	}
	n.lines.Refresh()
}
