package render

// Kind says which of the three kinds a mark is.
type Kind uint8

// The kinds of marks. A mark without a kind draws nothing and is refused by Check.
const (
	KindStroke Kind = iota + 1
	KindFill
	KindText
)

// Mark is one stroke, fill or text.
type Mark struct {
	Kind Kind
	Ref  string // what the mark shows, such as "bed.post.head.front"; empty for nothing in particular
	Path Path   // of a stroke or a fill
	Pen  Pen    // of a stroke
	Ink  Ink    // of a fill
	Text Text   // of a text
}

// Stroke returns the path drawn with a pen: round joins, round ends if solid, square-cut ends
// if dashed.
func Stroke(ref string, path Path, pen Pen) Mark {
	return Mark{Kind: KindStroke, Ref: ref, Path: path, Pen: pen}
}

// Fill returns the inside of the path, covered with one ink.
func Fill(ref string, path Path, ink Ink) Mark {
	return Mark{Kind: KindFill, Ref: ref, Path: path, Ink: ink}
}

// Words returns the text as a mark.
func Words(ref string, t Text) Mark { return Mark{Kind: KindText, Ref: ref, Text: t} }

// Outlined returns the path filled and then drawn over with a pen.
func Outlined(ref string, path Path, ink Ink, pen Pen) []Mark {
	return []Mark{Fill(ref, path, ink), Stroke(ref, path, pen)}
}

// Label returns the text on a patch of the ground ink, pad wide around it, for words that
// stand on lines.
func Label(ref string, t Text, ground Ink, pad Paper) []Mark {
	return []Mark{Fill(ref, Box(t.Bounds().Grow(pad)), ground), Words(ref, t)}
}

// Bounds returns what the mark covers, half its pen's width included.
func (m Mark) Bounds() Rect {
	switch m.Kind {
	case KindText:
		return m.Text.Bounds()
	case KindStroke:
		return m.Path.Bounds().Grow(m.Pen.Width / 2)
	}
	return m.Path.Bounds()
}

// Bounds returns what the marks cover together; it is empty without any.
func Bounds(marks []Mark) Rect {
	r := nowhere
	for _, m := range marks {
		if b := m.Bounds(); !b.Empty() {
			r = r.Union(b)
		}
	}
	return r
}

// Shift returns the marks moved by d.
func Shift(marks []Mark, d Point) []Mark {
	steps := 0
	for i := range marks {
		steps += len(marks[i].Path)
	}
	moved, all := make([]Mark, len(marks)), make(Path, 0, steps) // all paths in one piece: a drawing has a thousand
	for i, m := range marks {
		n := len(all)
		for _, s := range m.Path {
			all = append(all, s.shift(d))
		}
		m.Path = all[n:len(all):len(all)]
		m.Text.At = m.Text.At.Plus(d)
		moved[i] = m
	}
	return moved
}
