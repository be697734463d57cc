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

// TestSaveAPicture: every drawing can be saved as PNG and SVG, in the unit of the job.
func TestSaveAPicture(t *testing.T) {
	w, path := opened(t, "attic.toml")
	dir := filepath.Dir(path)
	for _, v := range view.Drawings(w.live.scene, w.live.answers) {
		w.keepAt(w.pictureSaving(v), filepath.Join(dir, v.Name+".png"))
		data, err := os.ReadFile(filepath.Join(dir, v.Name+".png"))
		if err != nil {
			t.Fatal(err)
		}
		if c, err := png.DecodeConfig(bytes.NewReader(data)); err != nil || c.Width != 2400 || c.Height != 1600 {
			t.Errorf("%s: %v, %d x %d", v.Name, err, c.Width, c.Height)
		}
	}
	plan := view.Drawings(w.live.scene, w.live.answers)[0]
	w.keepAt(w.pictureSaving(plan), filepath.Join(dir, "plan.SVG"))
	if data, _ := os.ReadFile(filepath.Join(dir, "plan.SVG")); !strings.Contains(string(data), "<svg") {
		t.Errorf("no SVG: %.80s", data)
	}
}
