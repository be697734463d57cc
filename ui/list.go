package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"

	"bunkwright/render"
)

// lines is a list to read and to choose from by pointer or keys: arrows go through it, Enter or Space chooses, Escape puts it away.
type lines struct {
	widget.List
	away func()
}

// TypedKey is called by the toolkit.
func (l *lines) TypedKey(e *fyne.KeyEvent) {
	switch e.Name {
	case fyne.KeyEscape:
		l.away()
	case fyne.KeyReturn, fyne.KeyEnter:
		l.List.TypedKey(&fyne.KeyEvent{Name: fyne.KeySpace})
	default:
		l.List.TypedKey(e)
	}
}

// How much of a line and of a list stands round its words, in pixels, and the widest it gets.
const (
	lineAir  = 14
	listAir  = 120
	listWide = 900
)

// list shows lines to read, as large as they ask for; choosing one calls choose, nil where there is nothing to choose.
func (w *Window) list(title string, words []string, choose func(int)) {
	l := &lines{List: widget.List{
		Length: func() int { return len(words) },
		CreateItem: func() fyne.CanvasObject {
			text := widget.NewLabel("")
			text.Wrapping = fyne.TextWrapWord
			return text
		},
		UpdateItem: func(i widget.ListItemID, o fyne.CanvasObject) { o.(*widget.Label).SetText(words[i]) },
	}}
	l.ExtendBaseWidget(l)
	d := dialog.NewCustom(title, "Close", l, w.win)
	l.away = d.Hide
	l.OnSelected = func(i widget.ListItemID) {
		l.UnselectAll()
		if choose != nil {
			d.Hide()
			choose(i)
		}
	}
	d.Resize(l.fit(words, w.win.Canvas().Size()))
	d.Show()
	w.win.Canvas().Focus(l)
}

// fit gives every line the height its words ask for, and returns the size of the whole within that of the window.
func (l *lines) fit(words []string, window fyne.Size) fyne.Size {
	st := render.ScreenStyle.Body
	longest := render.Paper(0)
	for _, line := range words {
		longest = max(longest, st.Wide(line))
	}
	wide := min(listWide, window.Width*0.85, max(420, float32(longest/render.Px(1))*1.1+80))
	high := float32(listAir)
	for i, line := range words {
		rows := len(render.Wrap(line, st.Size*1.1, st.Face, render.Px(float64(wide-80))))
		own := float32(rows)*19 + lineAir
		l.SetItemHeight(i, own)
		high += own + 4
	}
	return fyne.NewSize(wide, min(high, window.Height*0.85))
}
