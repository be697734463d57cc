package ui

import (
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/render/raster"
	"bunkwright/render/svg"
	"bunkwright/render/view"
	"bytes"
	"errors"
	"path/filepath"
	"strings"
)

// pictureSize is the box that a saved drawing fills, and how many pixels of a PNG make one of its own: enough for paper.
var (
	pictureSize  = [2]render.Paper{render.Px(1200), render.Px(800)}
	pictureScale = 2.0
)

// errNoPicture reports a name that ends in the manner of no kind of picture.
var errNoPicture = errors.New("a drawing is saved as .png or .svg")

// pictures lists the drawings of the job, to save one of them.
func (w *Window) pictures() {
	w.settleFields()
	if w.live.scene == nil {
		w.status.at("there is nothing to draw yet")
		return
	}
	all := view.Drawings(w.live.scene, w.live.answers)
	lines := make([]string, len(all))
	for i, v := range all {
		lines[i] = v.Title
	}
	w.list("Save a drawing as PNG or SVG", lines, func(i int) { w.savePicture(all[i]) })
}

// savePicture asks where one drawing goes.
func (w *Window) savePicture(v view.Named) {
	w.askWhere(fileName(w.session.Job().Name)+"-"+v.Name, []string{".png", ".svg"}, func(path string) { w.savePictureTo(path, v) })
}

// savePictureTo writes a drawing in the manner that the ending of the name says.
func (w *Window) savePictureTo(path string, v view.Named) {
	data, err := w.picture(strings.ToLower(filepath.Ext(path)), v)
	if err == nil {
		err = jobfile.WriteWhole(path, data)
	}
	if err != nil {
		w.trouble("The drawing was not saved", err)
		return
	}
	w.banner.say(notice{"picture", "The drawing is in " + path, nil})
}

// picture draws in the light, whatever the window has: a picture goes to paper or to somebody else.
func (w *Window) picture(kind string, v view.Named) ([]byte, error) {
	d := v.Draw(view.Options{Unit: w.live.unit(), W: pictureSize[0], H: pictureSize[1]}).Substituted()
	var b bytes.Buffer
	var err error
	switch kind {
	case ".png":
		err = raster.PNG(&b, d, pictureScale, render.Light)
	case ".svg":
		err = svg.Write(&b, d, render.Light)
	default:
		err = errNoPicture
	}
	return b.Bytes(), err
}
