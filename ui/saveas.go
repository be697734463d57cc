package ui

import (
	"path/filepath"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/storage/repository"
)

// askWhere asks for a file to write, and calls write with its path. The endings are those that may be written, the first is added to a
// name without one. Write says itself what became of it.
func (w *Window) askWhere(name string, endings []string, write func(path string)) {
	sparing()
	d := dialog.NewFileSave(func(to fyne.URIWriteCloser, err error) {
		if err != nil || to == nil {
			return
		}
		path := to.URI().Path()
		to.Close()
		w.app.Preferences().SetString(folderKey, filepath.Dir(path))
		write(ended(path, endings[0]))
	}, w.win)
	d.SetFileName(name + endings[0])
	w.showFiles(d, endings)
}

// ended adds an ending to a name that has none.
func ended(path, ending string) string {
	if filepath.Ext(path) == "" {
		return strings.TrimSuffix(path, ".") + ending
	}
	return path
}

// showFiles shows a dialog of files where the last one was, large enough to find something.
func (w *Window) showFiles(d *dialog.FileDialog, endings []string) {
	d.SetFilter(storage.NewExtensionFileFilter(endings))
	d.SetView(dialog.ListView)
	if folder := w.app.Preferences().String(folderKey); folder != "" {
		if uri, err := storage.ListerForURI(storage.NewFileURI(folder)); err == nil {
			d.SetLocation(uri)
		}
	}
	size := w.win.Canvas().Size()
	d.Show()
	d.Resize(fyne.NewSize(size.Width*0.9, size.Height*0.9)) // not before Show: the toolkit would fall over its own missing window
}

// files is all that the toolkit's own way to files can do.
type files interface {
	repository.ListableRepository
	repository.AppendableRepository
	repository.HierarchicalRepository
	repository.CopyableRepository
	repository.MovableRepository
	repository.DeleteAllRepository
}

// spared is the toolkit's way to files, but for this: a file that is named to be written is not emptied before something is.
type spared struct{ files }

// Writer is called by the toolkit when a name was chosen.
func (s spared) Writer(u fyne.URI) (fyne.URIWriteCloser, error) {
	return &later{uri: u, open: s.files.Writer}, nil
}

// sparing makes the toolkit's dialogs leave files whole.
func sparing() {
	r, err := repository.ForURI(storage.NewFileURI("/"))
	if f, ok := r.(files); err == nil && ok {
		if _, already := r.(spared); !already {
			repository.Register("file", spared{f})
		}
	}
}

// later opens its file when something is written to it.
type later struct {
	uri  fyne.URI
	open func(fyne.URI) (fyne.URIWriteCloser, error)
	to   fyne.URIWriteCloser
}

// URI returns the name that was chosen.
func (l *later) URI() fyne.URI { return l.uri }

// Write opens the file the first time.
func (l *later) Write(data []byte) (n int, err error) {
	if l.to == nil {
		if l.to, err = l.open(l.uri); err != nil {
			return 0, err
		}
	}
	return l.to.Write(data)
}

// Close closes what was opened.
func (l *later) Close() error {
	if l.to == nil {
		return nil
	}
	return l.to.Close()
}
