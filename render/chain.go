package render

// Axis says which way a chain of dimensions runs.
type Axis uint8

// The axes.
const (
	Level Axis = iota
	Upright
)

// Span is one dimension of a chain. Without words only its line is drawn.
type Span struct {
	Ref   string
	Words string
	Ink   Ink // of the words, the line and its ticks
}

// Chain is a row of dimensions end to end on one line. Values that find no room in the line
// stand beyond its ends or, in the middle of the row, in a second row on the free side.
type Chain struct {
	Along Axis
	At    Paper   // the y of a level chain, the x of an upright one
	Stops []Paper // where the ticks stand; must not decrease
	Spans []Span  // one fewer than stops
	Less  bool    // the free side is above or left, not below or right
}

// Chain returns the lines, ticks and words of the chain. Bounds of the result tells the room
// that a second row took.
func (s Style) Chain(c Chain) []Mark { return s.chain(c, false) }

// chain draws a chain; before puts the words of a lone level span before it, not after.
func (s Style) chain(c Chain, before bool) []Mark {
	n := min(len(c.Spans), len(c.Stops)-1)
	if n < 1 {
		return nil
	}
	c.Spans, c.Stops = c.Spans[:n], c.Stops[:n+1]
	labels := s.labels(c)
	s.placeEnds(c, labels, before)
	knee, edge := s.placeRow(c, labels)

	var marks []Mark
	for i := range labels {
		marks = append(marks, s.spanLine(c, i, labels[i]))
	}
	for i, at := range c.Stops {
		span := c.spanOfTick(i)
		marks = append(marks, s.tick(span.Ref, c.point(at, 0), c.point(1, 0).Minus(c.point(0, 0)), span.Ink))
	}
	for i, l := range labels {
		marks = append(marks, s.spanWords(c, c.Spans[i].Ref, l, knee, edge)...)
	}
	return marks
}

// spanOfTick returns which of the two spans that share a tick it is drawn for: the first, or the
// second if that stands out by its ink.
func (c Chain) spanOfTick(i int) Span {
	if i == 0 || i < len(c.Spans) && c.Spans[i].Ink != InkMain {
		return c.Spans[i]
	}
	return c.Spans[i-1]
}

// point turns a place along and off the chain's line into a point on paper.
func (c Chain) point(along, off Paper) Point {
	if c.Along == Level {
		return Point{along, c.At + off}
	}
	return Point{c.At + off, along}
}

// out returns a distance off the line on the free side.
func (c Chain) out(d Paper) Paper {
	if c.Less {
		return -d
	}
	return d
}

// place says where a label stands.
type place uint8

const (
	inLine  place = iota
	atEnd         // on the line's level, beyond its end
	inRow         // in the second row, before it is laid out
	nowords       // there is nothing to place
)

// label is the text of a span with the middle of its box, along the line and off it, and half
// the size of the box, air included.
type label struct {
	text        Text
	place       place
	mid, length Paper // of the span
	along, off  Paper
	half        Point // X along the line, Y across it
}

// labels returns every label in the middle of its span, marked for the second row if the span
// is too short for it.
func (s Style) labels(c Chain) []label {
	labels := make([]label, len(c.Spans))
	for i, span := range c.Spans {
		l := &labels[i]
		l.text = s.Measure.Text(Point{}, span.Words, span.Ink, Centre)
		l.length = c.Stops[i+1] - c.Stops[i]
		l.mid = (c.Stops[i] + c.Stops[i+1]) / 2
		l.along = l.mid
		l.half = s.halfSize(l.text)
		if c.Along == Upright {
			l.half = Point{l.half.Y, l.half.X}
		}
		if span.Words == "" {
			l.place = nowords
		} else if l.length < 2*(l.half.X+s.tickReach()) {
			l.place = inRow
		}
	}
	return labels
}

// spanLine returns the line of a span, broken where its label stands in it. The line of the
// first and the last span goes on a little beyond the tick.
func (s Style) spanLine(c Chain, i int, l label) Mark {
	from, to := c.Stops[i], c.Stops[i+1]
	if i == 0 {
		from -= s.Over
	}
	if i == len(c.Spans)-1 {
		to += s.Over
	}
	path := Line(c.point(from, 0), c.point(to, 0))
	if l.place == inLine {
		path = append(Line(c.point(from, 0), c.point(l.along-l.half.X, 0)),
			Line(c.point(l.along+l.half.X, 0), c.point(to, 0))...)
	}
	return Stroke(c.Spans[i].Ref, path, s.Thin.In(c.Spans[i].Ink))
}

// spanWords returns the words of a span, with a leader if they moved away from it.
func (s Style) spanWords(c Chain, ref string, l label, knee, edge Paper) []Mark {
	if l.place == nowords {
		return nil
	}
	l.text.At = c.point(l.along, l.off)
	words := Words(ref, l.text.Middled())
	if l.place != inRow || !l.moved() {
		return []Mark{words}
	}
	leader := Polyline(c.point(l.mid, 0), c.point(l.mid, c.out(knee)), c.point(l.along, c.out(edge)))
	return []Mark{Stroke(ref, leader, s.Extension), words}
}
