package ui

import (
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/samples"
	"bunkwright/ui/session"
)

// Keys of what is remembered from one start to the next.
const (
	recentKey = "recent"
	folderKey = "folder"
	mostKept  = 8
)

// Open opens a job file, or its recovery copy where a crash left one.
func (w *Window) Open(path string) error {
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	err := w.session.Open(path)
	if err != nil {
		w.cannotOpen(path, err)
		return err
	}
	w.remember(path)
	if !w.session.Alone() {
		w.banner.say(notice{"two", "This job is open in another window too: what is saved there is noticed here before it can be lost.", nil})
		return nil
	}
	w.offerRecovery(path)
	return nil
}

// OpenSample opens one of the jobs that come with the program, as a job without a file.
func (w *Window) OpenSample(name string) {
	data, err := samples.Files.ReadFile(name)
	if err != nil {
		return
	}
	if f, err := jobfile.Load(data, name); err == nil {
		w.session.Start(&f.Job)
	}
}

// offerRecovery offers what was not saved when the program ended last.
func (w *Window) offerRecovery(path string) {
	if _, ok := session.Lost(path, w.folder); !ok || !w.session.Alone() {
		return
	}
	words := "The program ended last time before this job was saved: what was done since is kept."
	if path == "" {
		words = "The program ended last time with a job that had no file yet: it is kept."
	}
	w.banner.say(notice{"recovery", words, []choice{
		{"Bring it back", func() {
			if err := w.session.Recover(path); err != nil {
				w.trouble("Not brought back", err)
			}
		}},
	}})
}

func (w *Window) remember(path string) {
	p := w.app.Preferences()
	list := slices.DeleteFunc(p.StringList(recentKey), func(old string) bool { return old == path })
	list = append([]string{path}, list...)
	p.SetStringList(recentKey, list[:min(len(list), mostKept)])
	p.SetString(folderKey, filepath.Dir(path))
	w.win.SetMainMenu(w.menu())
}

// save writes the job to its file, or asks for one.
func (w *Window) save() {
	w.settleFields()
	switch err := w.session.Save(); {
	case w.session.Job() == nil:
	case errors.Is(err, session.ErrNoFile):
		w.saveAs()
	case errors.Is(err, session.ErrChangedOnDisk):
		w.changedOnDisk()
	case err != nil:
		w.trouble("Not saved: the file is as it was", err)
	default:
		w.saved()
	}
}

func (w *Window) saved() {
	w.status.saved = "saved " + time.Now().Format("15:04")
	w.banner.say(notice{id: "disk"})
	w.banner.say(notice{id: "recovery"})
	w.status.redraw()
}

// jobSaving puts the job into a file, which is its own from then on.
func (w *Window) jobSaving() saving {
	return saving{
		what: "The job", name: fileName(w.session.Job().Name), exts: []string{".toml"},
		write: w.session.SaveAs,
		done: func(path string) {
			w.remember(path)
			w.saved()
		},
	}
}

// changedOnDisk says that another program wrote the file.
func (w *Window) changedOnDisk() {
	path := w.session.Path()
	words, read := "The file was changed by another program.", []choice{{"Read it again", func() { w.Open(path) }}}
	if w.session.Gone() {
		words, read = "The file is no longer where it was.", nil
	}
	w.banner.say(notice{"disk", words, append(read, choice{"Write mine over it", func() { w.keepAt(w.jobSaving(), path) }})})
}

func (w *Window) saveAs() {
	if w.session.Job() == nil {
		return
	}
	w.settleFields()
	w.keep(w.jobSaving())
}

func (w *Window) openDialog() {
	d := dialog.NewFileOpen(func(from fyne.URIReadCloser, err error) {
		if err != nil || from == nil {
			return
		}
		from.Close()
		w.Open(from.URI().Path())
	}, w.win)
	d.SetFilter(storage.NewExtensionFileFilter([]string{".toml"}))
	w.showFiles(d)
}

// showFiles shows a dialog of files where the last one was, large enough to find something.
func (w *Window) showFiles(d *dialog.FileDialog) {
	if folder := w.app.Preferences().String(folderKey); folder != "" {
		if uri, err := storage.ListerForURI(storage.NewFileURI(folder)); err == nil {
			d.SetLocation(uri)
		}
	}
	size := w.win.Canvas().Size()
	d.Show()
	d.Resize(fyne.NewSize(size.Width*0.9, size.Height*0.9)) // not before Show: the toolkit would fall over its own missing window
}

// fileName makes a name of a file of a job's name.
func fileName(name string) string {
	var out []rune
	for _, r := range name {
		switch {
		case r >= 'a' && r <= 'z' || r >= '0' && r <= '9':
			out = append(out, r)
		case r >= 'A' && r <= 'Z':
			out = append(out, r+'a'-'A')
		case len(out) > 0 && out[len(out)-1] != '-':
			out = append(out, '-')
		}
	}
	if len(out) == 0 {
		return "bunk"
	}
	return string(out)
}

// Tick is called every second or so: it keeps the recovery copy and looks whether the file was changed meanwhile.
func (w *Window) Tick() {
	if err := w.session.Tick(); err != nil {
		w.banner.say(notice{"tick", fmt.Sprintf("No copy against a crash can be kept: %v", err), nil})
	}
	if w.session.ChangedOnDisk() && w.banner.shown("disk") == "" {
		w.changedOnDisk()
	}
}

// close asks about what is not saved, or closes.
func (w *Window) close() {
	w.settleFields()
	if !w.session.Unsaved() || w.session.UndoName() == "" {
		w.leave()
		return
	}
	w.banner.say(notice{"close", "This job is not saved.", []choice{
		{"Save and close", func() {
			if w.save(); !w.session.Unsaved() {
				w.leave()
			}
		}},
		{"Close without saving", w.leave},
	}})
}

func (w *Window) leave() {
	p := w.app.Preferences()
	size := w.win.Canvas().Size()
	p.SetFloat("width", float64(size.Width))
	p.SetFloat("height", float64(size.Height))
	for key, share := range w.splits() {
		p.SetFloat(key, float64(*share))
	}
	if j := w.session.Job(); j != nil {
		p.SetString("unit", j.Unit)
	}
	w.session.Close()
	w.win.SetCloseIntercept(nil)
	w.win.Close()
}
