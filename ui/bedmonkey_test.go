package ui

import (
	"maps"
	"math/rand/v2"
	"slices"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/test"

	"bunkwright/furniture/job/jobfile"
	"bunkwright/ui/control"
)

// TestMonkeyChoosesSizes types, ticks, drags and undoes at random in the Bed stage: nothing panics, the job can be opened again at any time,
// and undoing all of it gives back the first job.
func TestMonkeyChoosesSizes(t *testing.T) {
	const strokes = 100
	for _, name := range []string{"town-house.toml", "half-measured.toml"} {
		w := openedBed(t, name)
		first := w.session.Job()
		m := monkey{w, rand.New(rand.NewPCG(11, uint64(len(name))))}
		until := time.Now().Add(*monkeyFor)
		for i := 0; i < strokes || time.Now().Before(until); i++ {
			m.size()
			if _, err := jobfile.Load(jobfile.Encode(w.session.Job()), ""); err != nil {
				t.Fatalf("%s, stroke %d: the job cannot be opened again: %v", name, i, err)
			}
		}
		w.win.Canvas().Unfocus()
		for w.session.UndoName() != "" {
			w.session.Undo()
		}
		if w.session.Job() != first {
			t.Errorf("%s: undoing everything does not give back the first job", name)
		}
	}
}

var monkeySizes = append([]string{"2x4", "1x6", "2", "58 in", "1400 mm", "3", "plywood 1/2 in", "45x95 mm", "90"}, monkeyTexts...)

func (m monkey) size() {
	b := m.w.bed
	s := b.sizes
	g := s.groups[m.r.IntN(len(s.groups))]
	switch m.r.IntN(9) {
	case 0, 1, 2:
		key := slices.Sorted(maps.Keys(s.fields))[m.r.IntN(len(s.fields))]
		s.jump(key)
		if f := s.fields[key]; m.w.win.Canvas().Focused() == f.Focusable() {
			f.Focusable().(interface{ SetText(string) }).SetText("")
			test.Type(f.Focusable(), monkeySizes[m.r.IntN(len(monkeySizes))])
			m.w.win.Canvas().Unfocus()
		}
	case 3:
		if g.check != nil {
			test.Tap(g.check)
		}
	case 4:
		test.Tap(g.head)
		if m.r.IntN(4) == 0 {
			s.foldAll()
		}
	case 5:
		for _, g := range s.groups {
			if len(g.refused) > 0 && m.r.IntN(2) == 0 {
				g.refused[0].(*control.Press).Tapped(nil)
				break
			}
		}
	case 6:
		m.w.undo()
		if m.r.IntN(3) == 0 {
			m.w.redo()
		}
	case 7:
		for _, k := range []*control.Sketch{b.corner, b.stick} {
			k.MouseDown(&desktop.MouseEvent{PointEvent: fyne.PointEvent{Position: m.at(k)}, Button: desktop.MouseButtonPrimary})
			k.Dragged(&fyne.DragEvent{Dragged: fyne.NewDelta(m.r.Float32()*60-30, m.r.Float32()*60-30)})
			k.DragEnd()
			k.MouseUp(&desktop.MouseEvent{})
			k.Tapped(&fyne.PointEvent{Position: m.at(k)})
		}
	case 8:
		b.key(&fyne.KeyEvent{Name: monkeyKeys[m.r.IntN(len(monkeyKeys))]})
		test.Tap(m.w.tape.units[m.r.IntN(2)])
	}
	if m.r.IntN(8) == 0 {
		b.sides.Paint(300, 200)
		b.corner.Paint(300, 200)
		b.stick.Paint(80, 200)
	}
}
