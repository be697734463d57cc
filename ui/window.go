// Package ui answers how a job is worked on in a window: its stages on a tape, a panel a file.
//
// Nothing is computed here. A panel calls the session, the session changes the job, and the job changes the panels.
package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// A Window is the window of one job.
type Window struct {
	app     fyne.App
	win     fyne.Window
	session *session.Session
	live    *live
	tape    *tape
	status  *status
	stage   stage
	stages  map[stage]fyne.CanvasObject
	middle  *fyne.Container
	place   *placeStage
}

// stage is one part of the job.
type stage int

// The stages that are built, in the order of the job.
const (
	roomStage stage = iota
	bedStage
	placingStage
)

var stageNames = map[stage]string{roomStage: "Room", bedStage: "Bed", placingStage: "Place"}

// Usual and smallest size of the window.
var (
	usual = fyne.NewSize(1440, 900)
	least = fyne.NewSize(1100, 700)
)

// New makes the window of a session; it is not shown yet.
func New(a fyne.App, s *session.Session) *Window {
	a.Settings().SetTheme(control.Theme{})
	w := &Window{app: a, win: a.NewWindow("Bunkwright"), session: s, stage: placingStage}
	w.live = newLive(s)
	w.tape = newTape(w)
	w.status = newStatus(w)
	w.place = newPlaceStage(w)
	w.middle = container.NewStack(w.place.object)
	w.win.SetContent(container.New(frame{}, w.tape.object, w.middle, w.status.object))
	w.win.SetPadded(false)
	w.win.Resize(usual)
	w.win.SetMainMenu(w.menu())
	w.win.Canvas().SetOnTypedKey(w.key)
	a.Settings().AddListener(func(fyne.Settings) { w.repaint() })
	w.live.watch(w.retitle)
	return w
}

// Open opens a job file.
func (w *Window) Open(path string) error { return w.session.Open(path) }

// Fyne returns the window of the toolkit, for tests.
func (w *Window) Fyne() fyne.Window { return w.win }

// ShowAndRun shows the window until it is closed.
func (w *Window) ShowAndRun() { w.win.ShowAndRun() }

func (w *Window) retitle() {
	title := "Bunkwright"
	if j := w.session.Job(); j != nil && j.Name != "" {
		title = j.Name + " - " + title
	}
	w.win.SetTitle(title)
}

func (w *Window) repaint() {
	w.tape.redraw()
	w.status.redraw()
	w.place.redraw()
}

func (w *Window) key(e *fyne.KeyEvent) { w.place.key(e) }

// frame lays out the tape at the top, the status line at the bottom, and the stage between them.
type frame struct{}

// Heights of the tape and of the status line.
const (
	tapeHigh   = 44
	statusHigh = 28
)

func (frame) Layout(items []fyne.CanvasObject, size fyne.Size) {
	at := [4]float32{0, tapeHigh, size.Height - statusHigh, size.Height}
	for i, o := range items {
		o.Move(fyne.NewPos(0, at[i]))
		o.Resize(fyne.NewSize(size.Width, at[i+1]-at[i]))
	}
}

func (frame) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(760, 480) }
