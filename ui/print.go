package ui

import (
	"bytes"
	"context"
	"net/url"
	"os"
	"path/filepath"
	"time"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render/pdf"
	"bunkwright/render/view"
	"bunkwright/room/length"
)

// print makes all sheets as one PDF beside the job, or in a folder for what goes away again, and opens it in the system's viewer.
func (w *Window) print() {
	w.settleFields()
	if w.session.Job() == nil {
		return
	}
	path := w.printPath()
	w.banner.say(notice{"print", "Drawing the sheets ...", []choice{{"Cancel", func() { w.session.Cancel("print") }}}})
	day := time.Now()
	w.session.Run("print", func(ctx context.Context, j *job.Job) func() {
		data, err := sheets(ctx, j, day)
		if err == nil && ctx.Err() == nil {
			err = jobfile.WriteWhole(path, data)
		}
		return func() { w.printed(path, err) }
	})
}

func (w *Window) printed(path string, err error) {
	if err != nil {
		w.banner.say(notice{id: "print"})
		w.trouble("Not printed", err)
		return
	}
	w.banner.say(notice{"print", "The sheets are in " + path, nil})
	if w.openURL != nil {
		if err := w.openURL(&url.URL{Scheme: "file", Path: path}); err != nil {
			w.banner.say(notice{"print", "No viewer opened; the sheets are in " + path, nil})
		}
	}
}

func (w *Window) printPath() string {
	if path := w.session.Path(); path != "" {
		return path[:len(path)-len(filepath.Ext(path))] + ".pdf"
	}
	return filepath.Join(os.TempDir(), fileName(w.session.Job().Name)+".pdf")
}

// sheets draws a job on paper: Letter in inches, A4 in mm.
func sheets(ctx context.Context, j *job.Job, day time.Time) ([]byte, error) {
	s, answers, err := fit.Answers(j)
	if err != nil || ctx.Err() != nil {
		return nil, err
	}
	o, size := view.SheetOptions{Paper: view.Letter, Unit: length.Inches, Date: day.Format("January 2, 2006")}, pdf.Letter
	if j.Unit == "mm" {
		o.Paper, o.Unit, size = view.A4, length.Millimetres, pdf.A4
	}
	var out bytes.Buffer
	err = pdf.Write(&out, pdf.On(size, view.Sheets(s, answers, o)), pdf.Info{Title: j.Name, Date: day})
	return out.Bytes(), err
}
