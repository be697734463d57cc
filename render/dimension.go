package render

import "math"

// Dimension is one measured distance. Its value stands level in a break of the line, or beside
// the line if the line is too short for it.
type Dimension struct {
	Ref      string
	From, To Point // the middles of the ticks
	Words    string
	Ink      Ink     // of the words, the line and its ticks
	Beside   bool    // the words stand beside an unbroken line though there is room in it
	Before   bool    // words outside the line stand before From, or left of or above it, not after To, right or below
	Share    float64 // how far along the line the words stand; 0: in its middle
	Bare     bool    // no ticks: what it runs between is seen
}

// Dimension returns the line, its 45 degree ticks and its words.
func (s Style) Dimension(d Dimension) []Mark {
	a, b := d.From, d.To
	level, upright := Aligned(a.Y, b.Y), Aligned(a.X, b.X)
	switch {
	case d.Beside:
		return s.beside(d)
	case d.Share != 0:
		return s.slanted(d)
	case level && !upright:
		return s.chain(d.alone(Level, a.Y, a.X, b.X), d.Before != (a.X > b.X))
	case upright && !level:
		return s.chain(d.alone(Upright, a.X, a.Y, b.Y), false)
	}
	return s.slanted(d)
}

// alone returns the dimension as a chain of one span.
func (d Dimension) alone(along Axis, at, from, to Paper) Chain {
	return Chain{
		Along: along, At: at, Less: d.Before,
		Stops: []Paper{min(from, to), max(from, to)},
		Spans: []Span{{d.Ref, d.Words, d.Ink}},
	}
}

// slanted draws a dimension that is neither level nor upright. Its words stay level.
func (s Style) slanted(d Dimension) []Mark {
	a, b, before := d.From, d.To, d.Before
	if before {
		a, b = b, a
	}
	dir := unit(b.Minus(a))
	length := b.Minus(a).Length()
	share := d.Share
	if share == 0 {
		share = 0.5
	}
	words := s.Measure.Text(a.Between(b, share), d.Words, d.Ink, Centre)
	half := reach(dir, s.halfSize(words))
	line := Line(a, b)
	if length >= 2*(half+s.Tick) {
		gap := dir.Times(float64(half))
		line = append(Line(a, words.At.Minus(gap)), Line(words.At.Plus(gap), b)...)
	} else {
		words.At = b.Plus(dir.Times(float64(s.Tick + half)))
	}
	return s.dimensionMarks(d, line, dir, words)
}

// dimensionMarks returns the marks of a dimension of its own.
func (s Style) dimensionMarks(d Dimension, line Path, dir Point, words Text) []Mark {
	if d.Bare {
		return []Mark{Stroke(d.Ref, line, s.Thin.In(d.Ink)), Words(d.Ref, words.Middled())}
	}
	return []Mark{
		Stroke(d.Ref, line, s.Thin.In(d.Ink)),
		s.tick(d.Ref, d.From, dir, d.Ink),
		s.tick(d.Ref, d.To, dir, d.Ink),
		Words(d.Ref, words.Middled()),
	}
}

// beside draws the words next to the middle of the whole line.
func (s Style) beside(d Dimension) []Mark {
	dir := unit(d.To.Minus(d.From))
	out := Point{-dir.Y, dir.X}
	if out.X < 0 || out.X == 0 && out.Y < 0 {
		out = out.Times(-1)
	}
	if d.Before {
		out = out.Times(-1)
	}
	words := s.Measure.Text(d.From.Between(d.To, 0.5), d.Words, d.Ink, Centre)
	half := s.halfSize(words)
	away := math.Abs(float64(out.X*half.X)) + math.Abs(float64(out.Y*half.Y)) + float64(s.tickReach())
	words.At = words.At.Plus(out.Times(away))
	return s.dimensionMarks(d, Line(d.From, d.To), dir, words)
}

// halfSize returns half the width and height of a centred text about its middle, with the gap
// that lines keep from it.
func (s Style) halfSize(t Text) Point {
	w, up, down := Measure(t.Words, t.Size, t.Face)
	middle := CapHeight(t.Size, t.Face) / 2
	return Point{w/2 + s.Gap, max(up-middle, down+middle) + s.Gap*0.6}
}

// reach returns how far from the middle of a box a line in a direction leaves it.
func reach(dir, half Point) Paper {
	x := math.Abs(float64(half.X / dir.X))
	y := math.Abs(float64(half.Y / dir.Y))
	return Paper(min(x, y))
}

// tick returns the 45 degree tick of a dimension line. Of the two that are possible it is the
// one that rises to the right, as it does on level and upright lines.
func (s Style) tick(ref string, at, dir Point, ink Ink) Mark {
	turned := Point{dir.X + dir.Y, dir.Y - dir.X}
	other := Point{dir.X - dir.Y, dir.X + dir.Y}
	rising := Point{1, -1}
	if math.Abs(float64(dot(other, rising))) > math.Abs(float64(dot(turned, rising))) {
		turned = other
	}
	half := unit(turned).Times(float64(s.Tick) / 2)
	return Stroke(ref, Line(at.Minus(half), at.Plus(half)), s.tickPen().In(ink))
}

// tickPen is heavier than the line it ends, so that the ends of a dimension are found at once.
func (s Style) tickPen() Pen { return Pen{Width: s.Thin.Width * 1.6} }

// tickReach is how far a tick reaches along its line: 0.354 of its length, and half its width.
func (s Style) tickReach() Paper { return s.Tick * 0.4 }

// ExtensionLine returns the line from a point of the thing measured to the dimension line at to: it
// starts a gap away and ends a little beyond.
func (s Style) ExtensionLine(ref string, from, to Point) Mark {
	d := unit(to.Minus(from))
	return Stroke(ref, Line(from.Plus(d.Times(float64(s.Gap))), to.Plus(d.Times(float64(s.Over)))), s.Extension)
}
