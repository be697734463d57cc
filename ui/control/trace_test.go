package control

import (
	"regexp"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"bunkwright/render"
)

// TestTrace: a step that is dragged and painted is a line with its parts in order of size, what follows is one of its own, and nothing is
// written of paintings that no step asked for.
func TestTrace(t *testing.T) {
	test.NewTempApp(t)
	var out strings.Builder
	Traced = NewTrace(&out)
	defer func() { Traced = nil }()
	s := NewSketch(render.InkPaper, square)
	s.Grab = func(Pointed) bool { return true }
	s.Drag = func(render.Point, fyne.KeyModifier) { s.Redraw() }
	s.Resize(fyne.NewSize(100, 100))
	s.Paint(100, 100)
	s.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(10, 0)})
	s.Paint(100, 100)
	Traced.Later("words")
	s.Paint(100, 100)
	Traced.Painted()
	want := regexp.MustCompile(`^step \d+\.\d{6} model [\d.]+ drawing [\d.]+ painted [\d.]+\nwords \d+\.\d{6} drawing [\d.]+ painted [\d.]+\n$`)
	if !want.MatchString(out.String()) {
		t.Errorf("traced:\n%s", out.String())
	}
}
