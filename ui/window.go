// Package ui answers how a job is worked on in a window: its stages on a tape, a panel a file.
//
// Nothing is computed here. A panel calls the session, the session changes the job, and the job changes the panels.
package ui

import (
	"net/url"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/room/length"
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
	banner  *banner
	stage   stage
	stages  map[stage]fyne.CanvasObject
	jumps   map[stage]func(key string) // goes to the field of a key
	middle  *fyne.Container
	place   *placeStage
	room    *roomPanel
	bed     *bedPane
	empty   fyne.CanvasObject

	menuFollows func()               // shows in the menu what is so now
	folder      string               // of recovery copies of jobs without a file
	openURL     func(*url.URL) error // opens something in the system's own program; nil: nothing is opened

	writeWhole func(path string, data []byte) error // writes all of a file or nothing
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

// New makes the window of a session; it is not shown yet. Folder is where the session keeps copies of jobs without a file.
func New(a fyne.App, s *session.Session, folder string) *Window {
	w := &Window{app: a, win: a.NewWindow("Bunkwright"), session: s, stage: placingStage, folder: folder, openURL: a.OpenURL, writeWhole: jobfile.WriteWhole}
	a.Settings().SetTheme(control.Theme{Look: w.look()})
	w.win.SetIcon(Icon())
	w.live = newLive(s)
	w.banner = newBanner()
	w.tape = newTape(w)
	w.status = newStatus(w)
	w.place = newPlaceStage(w)
	w.bed = newBedPane(w)
	w.stages = map[stage]fyne.CanvasObject{placingStage: w.place.object, bedStage: w.bed.object}
	w.jumps = map[stage]func(string){bedStage: w.bed.sizes.jump}
	w.room = newRoomPanel(w)
	w.room.hook()
	w.empty = w.newEmpty()
	w.middle = container.NewStack(w.empty)
	w.win.SetContent(container.New(frame{}, w.tape.object, container.New(underBanner{}, w.banner.object, w.middle), w.status.object))
	w.win.SetPadded(false)
	w.remembered()
	w.win.SetMainMenu(w.menu())
	w.win.Canvas().SetOnTypedKey(w.key)
	w.win.SetOnDropped(w.dropped)
	w.win.SetCloseIntercept(w.close)
	a.Settings().AddListener(func(fyne.Settings) { w.repaint() })
	w.live.watch(w.follow)
	w.live.watch(func() { w.menuFollows() })
	w.offerRecovery("")
	return w
}

// remembered gives the window the size and the columns it had last.
func (w *Window) remembered() {
	p := w.app.Preferences()
	w.win.Resize(fyne.NewSize(
		max(least.Width, float32(p.FloatWithFallback("width", float64(usual.Width)))),
		max(least.Height, float32(p.FloatWithFallback("height", float64(usual.Height))))))
	for key, share := range w.splits() {
		*share = float32(p.FloatWithFallback(key, float64(*share)))
	}
	w.bed.object.Shares = w.place.object.Shares
	if p.String("unit") == "mm" {
		w.live.usual = length.Millimetres
	}
}

// splits are the columns that are remembered, by their keys.
func (w *Window) splits() map[string]*float32 {
	a, b := &w.place.object.Shares, &w.room.object.Shares
	return map[string]*float32{"left": &a[0], "right": &a[1], "room left": &b[0], "room right": &b[1]}
}

// dropped opens a file that was dropped on the window.
func (w *Window) dropped(_ fyne.Position, files []fyne.URI) {
	if len(files) > 0 {
		w.Open(files[0].Path())
	}
}

// Fyne returns the window of the toolkit, for tests.
func (w *Window) Fyne() fyne.Window { return w.win }

// ShowAndRun shows the window until it is closed.
func (w *Window) ShowAndRun() { w.win.ShowAndRun() }

// follow shows the stage of a job that was opened, and the job's name.
func (w *Window) follow() {
	if len(w.middle.Objects) == 1 && w.middle.Objects[0] == w.empty && w.session.Job() != nil {
		w.show(w.stage)
	}
	w.retitle()
}

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
	w.place.stale.unless(w.place.redraw)
	w.room.redraw()
	w.bed.stale.unless(w.bed.redraw)
}

func (w *Window) key(e *fyne.KeyEvent) {
	if over := w.win.Canvas().Overlays(); over.Top() != nil {
		if e.Name == fyne.KeyEscape {
			over.Remove(over.Top())
		}
		return
	}
	switch w.stage {
	case placingStage:
		w.place.key(e)
	case roomStage:
		w.room.key(e)
	case bedStage:
		w.bed.key(e)
	}
}

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

// underBanner lays out the notices and, below them, the stage.
type underBanner struct{}

func (underBanner) Layout(items []fyne.CanvasObject, size fyne.Size) {
	high := items[0].MinSize().Height
	items[0].Resize(fyne.NewSize(size.Width, high))
	items[1].Move(fyne.NewPos(0, high))
	items[1].Resize(fyne.NewSize(size.Width, size.Height-high))
}

func (underBanner) MinSize(items []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(items[1].MinSize().Width, items[0].MinSize().Height+items[1].MinSize().Height)
}
