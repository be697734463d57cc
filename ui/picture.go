package ui

import (
	"bunkwright/render"
	"bunkwright/render/raster"
	"bunkwright/render/svg"
	"bunkwright/render/view"
	"bytes"
	"path/filepath"
	"strings"
)

// pictureSize is the box that a saved drawing fills, and how many pixels of a PNG make one of its own: enough for paper.
var (
	pictureSize  = [2]render.Paper{render.Px(1200), render.Px(800)}
	pictureScale = 2.0
)

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
	w.list("Save a drawing", lines, func(i int) { w.savePicture(all[i]) })
}

// savePicture puts one drawing into a file, in the manner that the ending of its name says.
func (w *Window) savePicture(v view.Named) {
	w.keep(w.pictureSaving(v))
}

func (w *Window) pictureSaving(v view.Named) saving {
	return saving{
		what: "The drawing", name: fileName(w.session.Job().Name) + "-" + v.Name, exts: []string{".png", ".svg"},
		write: func(path string) error {
			data, err := w.picture(strings.ToLower(filepath.Ext(path)), v)
			if err != nil {
				return err
			}
			return w.writeWhole(path, data)
		},
	}
}

// picture draws in the light, whatever the window has: a picture goes to paper or to somebody else.
func (w *Window) picture(kind string, v view.Named) ([]byte, error) {
	d := v.Draw(view.Options{Unit: w.live.unit(), W: pictureSize[0], H: pictureSize[1]}).Substituted()
	var b bytes.Buffer
	var err error
	if kind == ".svg" {
		err = svg.Write(&b, d, render.Light)
	} else {
		err = raster.PNG(&b, d, pictureScale, render.Light)
	}
	return b.Bytes(), err
}
