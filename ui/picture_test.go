package ui

import (
	"bytes"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"bunkwright/render/view"
)

// TestSaveAPicture: every drawing can be saved as PNG and SVG, in the unit of the job; another ending is refused in words.
func TestSaveAPicture(t *testing.T) {
	w, path := opened(t, "attic.toml")
	dir := filepath.Dir(path)
	for _, v := range view.Drawings(w.live.scene, w.live.answers) {
		w.savePictureTo(filepath.Join(dir, v.Name+".png"), v)
		data, err := os.ReadFile(filepath.Join(dir, v.Name+".png"))
		if err != nil {
			t.Fatal(err)
		}
		if c, err := png.DecodeConfig(bytes.NewReader(data)); err != nil || c.Width != 2400 || c.Height != 1600 {
			t.Errorf("%s: %v, %d x %d", v.Name, err, c.Width, c.Height)
		}
	}
	plan := view.Drawings(w.live.scene, w.live.answers)[0]
	w.savePictureTo(filepath.Join(dir, "plan.SVG"), plan)
	if data, _ := os.ReadFile(filepath.Join(dir, "plan.SVG")); !strings.Contains(string(data), "<svg") {
		t.Errorf("no SVG: %.80s", data)
	}
	w.savePictureTo(filepath.Join(dir, "plan.jpg"), plan)
	if said := w.banner.shown("trouble"); said != "The drawing was not saved: a drawing is saved as .png or .svg" {
		t.Errorf("said %q", said)
	}
	if _, err := os.Stat(filepath.Join(dir, "plan.jpg")); err == nil {
		t.Error("written nevertheless")
	}
}
