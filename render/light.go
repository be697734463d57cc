package render

import "strings"

// Under reports whether ref is of, or a part of it: "bed.post.head" is under "bed.post" and
// "bed", and not under "bed.po".
func Under(ref, of string) bool {
	return of != "" && (ref == of || strings.HasPrefix(ref, of+"."))
}

// Light returns the drawing with everything under the refs lit: fills in InkLit, closed
// outlines at least as wide as the given pen, open lines twice as wide but not wider than it.
// Inks of lines and words stay, so that what does not fit stays red; fills in the ink of a
// verdict stay too, for they are its sign.
func (d Drawing) Light(outline Pen, refs ...string) Drawing {
	marks := make([]Mark, len(d.Marks))
	for i, m := range d.Marks {
		if underAny(m.Ref, refs) {
			m = m.lit(outline.Width)
		}
		marks[i] = m
	}
	d.Marks = marks
	return d
}

func underAny(ref string, refs []string) bool {
	for _, of := range refs {
		if Under(ref, of) {
			return true
		}
	}
	return false
}

func (m Mark) lit(width Paper) Mark {
	switch {
	case m.Kind == KindFill && m.Ink > InkFits && m.Ink != InkOnSign:
		m.Ink = InkLit
	case m.Kind == KindStroke && m.Path.closed():
		m.Pen.Width = max(m.Pen.Width, width)
	case m.Kind == KindStroke:
		m.Pen.Width = max(m.Pen.Width, min(2*m.Pen.Width, width))
	}
	return m
}

// closed reports whether every subpath is an outline.
func (p Path) closed() bool {
	open := false
	for _, s := range p {
		if s.Op == OpMove && open {
			return false
		}
		open = s.Op != OpClose
	}
	return len(p) > 0 && !open
}
