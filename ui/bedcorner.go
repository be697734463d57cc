package ui

import (
	"fyne.io/fyne/v2"

	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/ui/control"
)

// turning is where the bed is looked at from: degrees round from the front, and up from level.
type turning struct {
	turn, tilt float64
	held       [2]float64 // where it was when it was grabbed
}

// fromCorner is where it is looked at from at first.
var fromCorner = turning{turn: view.PlainTurn, tilt: view.PlainTilt}

// How far a pixel and an arrow key turn, in degrees, and how far up one may look.
const (
	turnPixel = 0.4
	turnKey   = 5
	leastTilt = 5
	mostTilt  = 85
)

func (t *turning) to(turn, tilt float64) {
	for turn > 180 {
		turn -= 360
	}
	for turn <= -180 {
		turn += 360
	}
	t.turn, t.tilt = turn, max(leastTilt, min(tilt, mostTilt))
}

func (b *bedPane) drawCorner(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	bed := b.bed()
	if bed == nil {
		return d
	}
	d.Add(heading(render.Px(16), render.Px(14), "From a corner", "drag to turn")...)
	head, edge := render.Px(8), render.Px(10)
	o := b.options(w-2*edge, h-head-edge)
	o.Names = w >= littleWide
	corner := view.BedCorner(bed, b.turning.turn, b.turning.tilt, o)
	d.Add(render.Shift(corner.Marks, render.Point{X: edge, Y: head})...)
	return d
}

func (b *bedPane) grabCorner(control.Pointed) bool {
	b.turning.held = [2]float64{b.turning.turn, b.turning.tilt}
	return b.bed() != nil
}

// dragCorner turns the bed as if the hand had hold of its near side.
func (b *bedPane) dragCorner(by render.Point, _ fyne.KeyModifier) {
	x, y := float64(by.X/render.Px(1)), float64(by.Y/render.Px(1))
	b.turning.to(b.turning.held[0]-x*turnPixel, b.turning.held[1]+y*turnPixel)
	b.corner.Redraw()
}

func (b *bedPane) focusCorner(on bool) {
	words := ""
	if on {
		words = "the bed from a corner, its mattresses left off: drag or arrow keys turn it, Home brings it back"
	}
	control.Explain(words)
}

// turnByKey turns the view by arrow keys.
func (b *bedPane) turnByKey(e *fyne.KeyEvent) bool {
	t := &b.turning
	switch e.Name {
	case fyne.KeyLeft:
		t.to(t.turn+turnKey, t.tilt)
	case fyne.KeyRight:
		t.to(t.turn-turnKey, t.tilt)
	case fyne.KeyUp:
		t.to(t.turn, t.tilt-turnKey)
	case fyne.KeyDown:
		t.to(t.turn, t.tilt+turnKey)
	case fyne.KeyHome:
		b.turnBack()
	case fyne.KeyEscape:
		b.levels.giveUp()
		b.lit = ""
		b.drawn()
	default:
		return false
	}
	b.corner.Redraw()
	return true
}

// turnBack looks at the bed from where it is looked at at first.
func (b *bedPane) turnBack() {
	b.turning = fromCorner
	b.corner.Redraw()
}

// key is for keys that nothing with the focus took.
func (b *bedPane) key(e *fyne.KeyEvent) bool { return b.turnByKey(e) }
