package control

import (
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"bunkwright/render"
)

// TestChoice: a click takes the word under it, the arrow keys the next, round the end; the word that is taken already is not taken again.
func TestChoice(t *testing.T) {
	test.NewTempApp(t)
	word, taken := "left", 0
	c := NewChoice(render.InkPanel, "End", []string{"left", "right", "both"}, func() string { return word }, func(w string) { word, taken = w, taken+1 })
	c.Resize(fyne.NewSize(300, 30))
	at := c.segments(Paper(300))
	for i, want := range c.Words {
		c.Tapped(&fyne.PointEvent{Position: fyne.NewPos(Screen((at[i]+at[i+1])/2), 15)})
		if word != want {
			t.Errorf("a click on %q takes %q", want, word)
		}
	}
	if taken != 2 {
		t.Errorf("%d words are taken by clicks, one of them on the word there was", taken)
	}
	c.Tapped(&fyne.PointEvent{Position: fyne.NewPos(2, 15)})
	for _, k := range []struct {
		key  fyne.KeyName
		want string
	}{{fyne.KeyRight, "left"}, {fyne.KeyLeft, "both"}, {fyne.KeyLeft, "right"}, {fyne.KeySpace, "both"}} {
		if c.TypedKey(&fyne.KeyEvent{Name: k.key}); word != k.want {
			t.Errorf("%s takes %q, want %q", k.key, word, k.want)
		}
	}
}

// TestRow: two things stand side by side where there is room, and below each other where there is not.
func TestRow(t *testing.T) {
	test.NewTempApp(t)
	var cells []fyne.CanvasObject
	for range 2 {
		s := NewSketch(render.InkPanel, nil)
		s.Least = fyne.NewSize(50, 30)
		cells = append(cells, s)
	}
	r := NewRow(cells...)
	wide, narrow := r.HeightFor(400), r.HeightFor(300)
	if wide != 30+2*rowLine || narrow != 60+3*rowLine {
		t.Errorf("%g high where there is room, %g where there is not", wide, narrow)
	}
	w := test.NewTempWindow(t, r)
	w.SetPadded(false)
	w.Resize(fyne.NewSize(400, 40))
	if a, b := cells[0].Position(), cells[1].Position(); a.Y != b.Y || a.X+cells[0].Size().Width >= b.X {
		t.Errorf("at %v and %v", a, b)
	}
}

// TestFieldSaysWhatIsTaken: an empty field shows in grey what is taken, and a ring where something is wrong with what it holds.
func TestFieldSaysWhatIsTaken(t *testing.T) {
	test.NewTempApp(t)
	wrong := false
	f := NewField(func() string { return "" }, func(string) error { return nil })
	f.Hint, f.Wrong = func() string { return "2x4" }, func() bool { return wrong }
	f.Follow()
	if f.entry.PlaceHolder != "2x4" || f.ring.Visible() {
		t.Errorf("grey %q, ring %v", f.entry.PlaceHolder, f.ring.Visible())
	}
	wrong = true
	if f.Follow(); !f.ring.Visible() {
		t.Error("no ring")
	}
}
