package control

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

func (s *Sketch) pointed(at fyne.Position, button desktop.MouseButton, mod fyne.KeyModifier) Pointed {
	p := OnPaper(at)
	return Pointed{At: p, Refs: s.Drawing().Pick(p, pickWithin), Button: button, Mod: mod}
}

// MouseDown takes the focus and begins what may become a drag.
func (s *Sketch) MouseDown(e *desktop.MouseEvent) {
	if s.Key != nil {
		if c := fyne.CurrentApp().Driver().CanvasForObject(s); c != nil {
			c.Focus(s)
		}
	}
	s.hold = hold{from: s.pointed(e.Position, e.Button, e.Modifier), pressed: true}
}

// MouseUp ends a press.
func (s *Sketch) MouseUp(*desktop.MouseEvent) { s.hold.pressed = false }

// Tapped tells what was clicked.
func (s *Sketch) Tapped(e *fyne.PointEvent) {
	if s.Tap != nil {
		s.Tap(s.pointed(e.Position, desktop.MouseButtonPrimary, s.hold.from.Mod))
	}
}

// TappedSecondary tells what was clicked with the other button.
func (s *Sketch) TappedSecondary(e *fyne.PointEvent) {
	if s.Tap != nil {
		s.Tap(s.pointed(e.Position, desktop.MouseButtonSecondary, s.hold.from.Mod))
	}
}

// Dragged follows the pointer once it has gone far enough to mean it.
func (s *Sketch) Dragged(e *fyne.DragEvent) {
	h := &s.hold
	if !h.pressed && !h.grabbed { // a drag that came without a press, as tests make them
		*h = hold{from: s.pointed(e.Position.SubtractXY(e.Dragged.DX, e.Dragged.DY), desktop.MouseButtonPrimary, 0)}
	}
	h.by = fyne.NewDelta(h.by.DX+e.Dragged.DX, h.by.DY+e.Dragged.DY)
	if !h.grabbed && !h.refused && (abs(h.by.DX) >= dragFrom || abs(h.by.DY) >= dragFrom) {
		h.grabbed = s.Grab != nil && s.Grab(h.from)
		h.refused = !h.grabbed
	}
	if h.grabbed && s.Drag != nil {
		defer Traced.Step()()
		s.Drag(OnPaper(fyne.NewPos(h.by.DX, h.by.DY)), modifiers())
	}
}

// DragEnd ends a drag.
func (s *Sketch) DragEnd() {
	grabbed := s.hold.grabbed
	s.hold = hold{}
	if grabbed && s.Drop != nil {
		s.Drop()
	}
}

// GiveUp ends a drag before the pointer does: what follows of it is left alone.
func (s *Sketch) GiveUp() { s.hold.grabbed, s.hold.refused = false, true }

// MouseIn is asked for by the toolkit.
func (s *Sketch) MouseIn(e *desktop.MouseEvent) { s.MouseMoved(e) }

// MouseMoved tells what the pointer is over.
func (s *Sketch) MouseMoved(e *desktop.MouseEvent) {
	s.at = s.pointed(e.Position, e.Button, e.Modifier)
	if s.Hover != nil {
		s.Hover(s.at)
	}
}

// MouseOut tells that it is over nothing.
func (s *Sketch) MouseOut() {
	s.at = Pointed{}
	if s.Hover != nil {
		s.Hover(s.at)
	}
}

// Scrolled turns the wheel.
func (s *Sketch) Scrolled(e *fyne.ScrollEvent) {
	if s.Wheel != nil {
		s.Wheel(OnPaper(e.Position), e.Scrolled.DY)
	}
}

// Cursor is asked for by the toolkit: the shape for what is pointed at.
func (s *Sketch) Cursor() desktop.Cursor {
	if s.Shape == nil {
		return desktop.DefaultCursor
	}
	return s.Shape(s.at)
}

// Disabled tells the toolkit that the focus passes by a sketch that no key does anything to.
func (s *Sketch) Disabled() bool { return s.Key == nil }

// Enable and Disable are asked for by the toolkit; whether keys do anything is up to Key.
func (s *Sketch) Enable() {}

// Disable does nothing: see Enable.
func (s *Sketch) Disable() {}

// FocusGained and FocusLost tell whether keys come here.
func (s *Sketch) FocusGained() { s.focus(true) }

// FocusLost tells that keys go elsewhere.
func (s *Sketch) FocusLost() { s.focus(false) }

func (s *Sketch) focus(on bool) {
	s.focused = on
	if s.Focus != nil {
		s.Focus(on)
	}
	s.Redraw()
}

// Focused tells whether keys come here.
func (s *Sketch) Focused() bool { return s.focused }

// AcceptsTab tells the toolkit whose key Tab is.
func (s *Sketch) AcceptsTab() bool { return s.Tabs }

// TypedKey hands a key on.
func (s *Sketch) TypedKey(e *fyne.KeyEvent) {
	if s.Key != nil {
		s.Key(e)
	}
}

// TypedRune is asked for by the toolkit; letters arrive as keys.
func (s *Sketch) TypedRune(rune) {}

func modifiers() fyne.KeyModifier {
	if app := fyne.CurrentApp(); app != nil {
		if d, ok := app.Driver().(desktop.Driver); ok {
			return d.CurrentKeyModifiers()
		}
	}
	return 0
}

func abs(x float32) float32 {
	if x < 0 {
		return -x
	}
	return x
}
