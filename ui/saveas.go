package ui

import (
	"errors"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"syscall"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/widget"
)

// A saving is something that is put into a file that the maker names.
type saving struct {
	what  string                  // as a sentence begins: "The parts list"
	name  string                  // of the file, proposed
	exts  []string                // endings that it may have; the first is added where none of them is there
	write func(path string) error // all of it, or nothing: see Window.writeWhole
	done  func(path string)       // it is written; nil: a notice says where
}

// keep asks for a place, writes there and says what came of it. A file that is there is opened by nobody before all of the new one is
// written: the toolkit's own dialog would empty it first.
func (w *Window) keep(s saving) {
	newSaveAsk(w, s).show()
}

// keepAt writes to a place and says what came of it.
func (w *Window) keepAt(s saving, path string) {
	old := exists(path)
	if err := s.write(path); err != nil {
		w.banner.say(notice{"save", s.what + " was not saved: " + diskWords(err) + "; " + leftWords(old), nil})
		return
	}
	w.app.Preferences().SetString(folderKey, filepath.Dir(path))
	if s.done != nil {
		w.banner.say(notice{id: "save"})
		s.done(path)
		return
	}
	w.banner.say(notice{"save", s.what + " is in " + path, nil})
}

// withEnding adds the first ending to a path that has none of them.
func withEnding(path string, exts []string) string {
	if len(exts) == 0 || slices.Contains(exts, strings.ToLower(filepath.Ext(path))) {
		return path
	}
	return path + exts[0]
}

func exists(path string) bool {
	_, err := os.Stat(path)
	return err == nil
}

// diskWords says in words why a file could not be written.
func diskWords(err error) string {
	var at *os.PathError
	switch {
	case errors.Is(err, syscall.ENOSPC):
		return "the disk is full"
	case errors.Is(err, os.ErrPermission):
		return "it may not be written there"
	case errors.Is(err, os.ErrNotExist):
		return "there is no such folder"
	case errors.As(err, &at):
		return at.Err.Error()
	}
	return plain(err).Error()
}

func leftWords(old bool) string {
	if old {
		return "what is there is as it was"
	}
	return "nothing was written"
}

// saveAsk asks for the name and the folder of a file.
type saveAsk struct {
	w      *Window
	s      saving
	folder string
	name   *widget.Entry
	place  *widget.Label
	note   *widget.Label
	dialog *dialog.ConfirmDialog
}

func newSaveAsk(w *Window, s saving) *saveAsk {
	a := &saveAsk{w: w, s: s, folder: w.lastFolder(), name: widget.NewEntry(), place: widget.NewLabel(""), note: widget.NewLabel(" ")}
	a.place.Truncation = fyne.TextTruncateEllipsis
	a.name.SetText(withEnding(s.name, s.exts))
	a.name.OnChanged = func(string) { a.follow() }
	other := widget.NewButton("Another folder...", a.browse)
	form := container.NewVBox(
		widget.NewLabel("Name, or a whole path"), a.name,
		widget.NewLabel("In the folder"), container.NewBorder(nil, nil, nil, other, a.place), a.note)
	a.dialog = dialog.NewCustomConfirm("Save: "+strings.ToLower(s.what), "Save", "Leave it", form, a.answered, w.win)
	a.name.OnSubmitted = func(string) { a.dialog.Confirm() }
	a.follow()
	return a
}

// lastFolder is where a file was opened or saved last, else the folder of the job, else the home folder.
func (w *Window) lastFolder() string {
	home, _ := os.UserHomeDir()
	for _, folder := range []string{w.app.Preferences().String(folderKey), filepath.Dir(w.session.Path()), home} {
		if folder != "" && folder != "." && exists(folder) {
			return folder
		}
	}
	return "."
}

// path is the place that is asked for.
func (a *saveAsk) path() string {
	name := strings.TrimSpace(a.name.Text)
	if name == "" {
		return ""
	}
	if filepath.IsAbs(name) {
		return withEnding(filepath.Clean(name), a.s.exts)
	}
	return withEnding(filepath.Join(a.folder, name), a.s.exts)
}

// follow says what saving would do.
func (a *saveAsk) follow() {
	path := a.path()
	a.place.SetText(a.folder)
	switch {
	case path == "":
		a.note.SetText("it needs a name")
	case exists(path):
		a.note.SetText(filepath.Base(path) + " is there already and will be written over")
	default:
		a.note.SetText("becomes " + filepath.Base(path))
	}
}

func (a *saveAsk) show() {
	size := a.w.win.Canvas().Size()
	a.dialog.Resize(fyne.NewSize(min(620, size.Width*0.9), 260))
	a.dialog.Show()
	a.w.win.Canvas().Focus(a.name)
	a.name.TypedShortcut(&fyne.ShortcutSelectAll{})
}

func (a *saveAsk) answered(yes bool) {
	if path := a.path(); yes && path != "" {
		a.w.keepAt(a.s, path)
	}
}

// browse lets another folder be chosen.
func (a *saveAsk) browse() {
	d := dialog.NewFolderOpen(func(to fyne.ListableURI, err error) {
		if err == nil && to != nil {
			a.folder = to.Path()
			a.follow()
		}
	}, a.w.win)
	a.w.showFiles(d)
}
