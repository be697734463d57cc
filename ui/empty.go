package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/samples"
	"bunkwright/ui/control"
)

// newEmpty is what a window without a job offers: a file, or a sample.
func (w *Window) newEmpty() fyne.CanvasObject {
	column := container.NewVBox(words("Bunkwright", "Will this bed work in that room, and how sure are we?"))
	add := func(word string, do func()) {
		column.Add(control.NewButton(render.InkPaper, func() string { return word }, false, do))
	}
	column.Add(words("", "Start a room"))
	for _, s := range job.Shapes {
		add(shapeWords[s], func() { w.newRoom(s) })
	}
	column.Add(words("", "Open a file"))
	add("Open...", w.openDialog)
	column.Add(words("", "Or look at a sample"))
	names, _ := samples.Files.ReadDir(".")
	for _, f := range names {
		name := f.Name()
		add(sampleWords(name), func() { w.OpenSample(name) })
	}
	ground := control.NewSketch(render.InkPaper, func(w, h render.Paper) render.Drawing { return render.Drawing{W: w, H: h} })
	return container.NewStack(ground, container.New(layout.NewCenterLayout(), column))
}

// sampleWords names a sample by its job, or by its file where that has no name.
func sampleWords(file string) string {
	short := strings.ReplaceAll(strings.TrimSuffix(file, ".toml"), "-", " ")
	data, err := samples.Files.ReadFile(file)
	if err != nil {
		return short
	}
	if f, err := jobfile.Load(data, file); err == nil && f.Job.Name != "" {
		return f.Job.Name
	}
	return short
}

// words are a title and a line under it on the ground of the drawings.
func words(title, line string) fyne.CanvasObject {
	st := render.ScreenStyle
	s := control.NewSketch(render.InkPaper, func(w, h render.Paper) render.Drawing {
		d := render.Drawing{W: w, H: h}
		y := render.Px(20)
		if title != "" {
			d.Add(render.Words("", st.Title.Text(render.Point{Y: y}, title, render.InkMain, render.Left)))
			y += render.Px(22)
		}
		d.Add(render.Words("", st.Body.Text(render.Point{Y: y}, line, render.InkSoft, render.Left)))
		return d
	})
	high := float32(30)
	if title != "" {
		high = 56
	}
	s.Least = fyne.NewSize(420, high)
	return s
}
