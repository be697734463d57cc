package ui

import (
	"flag"
	"math/rand/v2"
	"testing"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"

	"bunkwright/furniture/job/jobfile"
)

// monkeyFor lets the monkey play longer: go test ./ui -run Monkey -monkey 1h
var monkeyFor = flag.Duration("monkey", 0, "how long the monkey plays; 0: a few hundred strokes")

// TestMonkey clicks, drags, types and presses keys at random: nothing panics, and at any time the job can be saved and opened.
func TestMonkey(t *testing.T) {
	const strokes = 250
	for _, name := range []string{"town-house.toml", "half-measured.toml"} {
		w, _ := opened(t, name)
		m := monkey{w, rand.New(rand.NewPCG(7, uint64(len(name))))}
		until := time.Now().Add(*monkeyFor)
		for i := 0; i < strokes || time.Now().Before(until); i++ {
			m.stroke()
			if _, err := jobfile.Load(jobfile.Encode(w.session.Job()), ""); err != nil {
				t.Fatalf("%s, stroke %d: the job cannot be opened again: %v", name, i, err)
			}
		}
	}
}

type monkey struct {
	w *Window
	r *rand.Rand
}

func (m monkey) at(o fyne.CanvasObject) fyne.Position {
	s := o.Size()
	return fyne.NewPos(m.r.Float32()*s.Width, m.r.Float32()*s.Height)
}

var monkeyKeys = []fyne.KeyName{fyne.KeyLeft, fyne.KeyRight, fyne.KeyUp, fyne.KeyDown, fyne.KeyR, fyne.KeyM, fyne.KeyW, fyne.KeyEscape, fyne.KeySpace, fyne.KeyTab}

var monkeyTexts = []string{"", "1 in", "12x", "7 ft", "-3", "0", "2 m", "999 ft", "67-3/8", "\u00bd", "1/0", "'"}

func (m monkey) stroke() {
	w, p := m.w, m.w.place
	switch m.r.IntN(10) {
	case 0, 1, 2:
		drag(w, m.at(p.drawings), m.r.Float32()*400-200, m.r.Float32()*400-200)
	case 3:
		p.drawings.Tapped(&fyne.PointEvent{Position: m.at(p.drawings)})
		p.stick.Tapped(&fyne.PointEvent{Position: m.at(p.stick)})
	case 4:
		p.key(&fyne.KeyEvent{Name: monkeyKeys[m.r.IntN(len(monkeyKeys))]})
	case 5:
		test.Tap(p.questions.row(p.questions.order[m.r.IntN(len(p.questions.order))]))
	case 6:
		test.Tap(w.tape.units[m.r.IntN(2)])
	case 7:
		w.undo()
	case 8:
		if m.r.IntN(2) == 0 {
			w.redo()
		}
		p.drawings.Scrolled(&fyne.ScrollEvent{PointEvent: fyne.PointEvent{Position: m.at(p.drawings)}, Scrolled: fyne.NewDelta(0, m.r.Float32()*40-20)})
	case 9:
		f := p.bar.along
		if m.r.IntN(2) == 0 {
			f = p.bar.gap
		}
		w.win.Canvas().Focus(f.Focusable())
		test.Type(f.Focusable(), monkeyTexts[m.r.IntN(len(monkeyTexts))])
		w.win.Canvas().Unfocus()
	}
	if m.r.IntN(8) == 0 {
		p.drawings.Paint(300, 200)
		p.stick.Paint(80, 200)
	}
}
