package view

import (
	"bunkwright/render"
)

// A line is one line of a label.
type line struct {
	words string
	in    render.Lettering
	ink   render.Ink
}

// A label is a few centred lines that name something. It stands at home if there is room, else on the nearest free ground, with a leader
// where that is too far away to be understood without one.
type label struct {
	ref    string
	lines  []line
	home   render.Point // wanted middle
	near   render.Paper // how far from home it may stand without a leader
	dot    render.Point // what a leader points at
	sign   render.Sign
	signs  bool        // a sign stands after the words, or alone where there are none
	block  *markings   // finished marks in the place of lines
	on     ground      // what it may stand on
	patch  render.Ink  // of the ground it brings with it; zero: that of the drawing
	inside bool        // it keeps inside the room
	last   bool        // it is placed after the others
	only   render.Rect // where it may stand at all; the zero rectangle: anywhere
	needed bool        // where there is no room within only, it stands elsewhere with a leader; else it is left out
}

// farAway is a distance that no label goes: it needs no leader, because its words or its place say what it is of.
const farAway = 1000

// markings are marks that are moved as one.
type markings struct {
	marks []render.Mark
	box   render.Rect
}

// words makes a line in the body letters.
func (c *canvas) words(text string) line { return line{text, c.st.Body, render.InkMain} }

// soft makes a line of secondary words.
func (c *canvas) soft(text string) line { return line{text, c.st.Body, render.InkSoft} }

// value makes a line of a measure.
func (c *canvas) value(text string) line { return line{text, c.st.Measure, render.InkMain} }

// name asks for a label in the middle of something, near saying how far it may move without a leader.
func (c *canvas) name(ref string, home render.Point, near render.Paper, lines ...line) {
	c.notes = append(c.notes, label{ref: ref, lines: lines, home: home, near: near, dot: home, inside: true})
}

// nameOf asks for a label beside something, at home if there is room.
func (c *canvas) nameOf(ref string, dot, home render.Point, near render.Paper, lines ...line) {
	c.notes = append(c.notes, label{ref: ref, lines: lines, home: home, near: near, dot: dot, on: floorGround, inside: true})
}

// size returns the width and height of the label.
func (l label) size(c *canvas) (w, h render.Paper) {
	if l.block != nil {
		return l.block.box.W(), l.block.box.H()
	}
	for _, n := range l.lines {
		w, h = max(w, n.in.Wide(n.words)), h+n.in.Leading()
	}
	switch {
	case len(l.lines) == 0:
		return c.st.Sign, c.st.Sign
	case l.signs:
		w += c.st.Sign + c.st.Gap
	}
	return w, h
}

// rank says which labels are placed first: signs at their parts, what belongs into one place, then the rest.
func (l label) rank() int {
	switch {
	case len(l.lines) == 0 && l.block == nil:
		return 0
	case l.only != render.Rect{}:
		return 1
	case l.last:
		return 3
	}
	return 2
}

// nameIn asks for a label that belongs into a rectangle, wrapped to it. One that is not needed is left out where it finds no room.
func (c *canvas) nameIn(ref string, only render.Rect, words string, ink render.Ink, needed bool) {
	l := label{ref: ref, home: only.Centre(), near: farAway, dot: only.Centre(), inside: true, only: only, needed: needed}
	l.lines = c.wrapped(only.W()-c.st.Gap, words, ink)
	c.notes = append(c.notes, l)
}
