package render

// Anchor says which point of its baseline a text is placed by.
type Anchor uint8

// The anchors.
const (
	Left Anchor = iota
	Centre
	Right
)

// String returns the anchor's name as Dump prints it.
func (a Anchor) String() string {
	if a > Right {
		return "unknown"
	}
	return [...]string{"left", "centre", "right"}[a]
}

// Text is one level line of words.
type Text struct {
	At     Point // on the baseline
	Words  string
	Size   Paper // of the em; a line needs about 1.2 of it
	Face   Face
	Ink    Ink
	Anchor Anchor
}

// Start returns where the baseline begins, whatever the anchor.
func (t Text) Start() Point {
	w, _, _ := Measure(t.Words, t.Size, t.Face)
	switch t.Anchor {
	case Centre:
		return Point{t.At.X - w/2, t.At.Y}
	case Right:
		return Point{t.At.X - w, t.At.Y}
	}
	return t.At
}

// Bounds returns what the words cover, from the tallest letter to the deepest.
func (t Text) Bounds() Rect {
	w, up, down := Measure(t.Words, t.Size, t.Face)
	s := t.Start()
	return Rect{Point{s.X, s.Y - up}, Point{s.X + w, s.Y + down}}
}

// Middled returns the text moved so that its capitals and digits stand with their middle at the
// height of At.
func (t Text) Middled() Text {
	t.At.Y += CapHeight(t.Size, t.Face) / 2
	return t
}

// Lettering is a size and a face.
type Lettering struct {
	Size Paper
	Face Face
}

// Text returns words in this lettering.
func (l Lettering) Text(at Point, words string, ink Ink, anchor Anchor) Text {
	return Text{at, words, l.Size, l.Face, ink, anchor}
}

// Leading returns the distance of two baselines.
func (l Lettering) Leading() Paper { return l.Size * 1.28 }

// Wide returns the width of the words.
func (l Lettering) Wide(words string) Paper {
	w, _, _ := Measure(words, l.Size, l.Face)
	return w
}

// Paragraph returns the words wrapped to a width, the first baseline at the height of at.
func (l Lettering) Paragraph(ref string, at Point, words string, width Paper, ink Ink) []Mark {
	return l.Lines(ref, at, Wrap(words, l.Size, l.Face, width), ink, Left)
}

// Lines returns the lines one below the other, the first baseline at the height of at.
func (l Lettering) Lines(ref string, at Point, lines []string, ink Ink, anchor Anchor) []Mark {
	marks := make([]Mark, 0, len(lines))
	for i, line := range lines {
		p := Point{at.X, at.Y + Paper(i)*l.Leading()}
		marks = append(marks, Words(ref, l.Text(p, line, ink, anchor)))
	}
	return marks
}
