package render

import (
	"errors"
	"fmt"
	"math"
)

// ErrEmptyPage says that a drawing has no width or height.
var ErrEmptyPage = errors.New("drawing without a width and a height")

// MissingError says that a text has characters the embedded fonts lack. Drawn, they would be
// boxes; Drawing.Substituted replaces them.
type MissingError struct {
	Text  string
	Runes []rune
}

// Error names the characters and the text.
func (e *MissingError) Error() string {
	return fmt.Sprintf("text %q: no letter for %q in the font", e.Text, string(e.Runes))
}

// MarkError says that a mark cannot be drawn.
type MarkError struct {
	Index  int // in Drawing.Marks
	Ref    string
	Reason string
}

// Error names the mark and the reason.
func (e *MarkError) Error() string {
	return fmt.Sprintf("mark %d (%q): %s", e.Index, e.Ref, e.Reason)
}

// Check returns every reason why the drawing cannot be put out as it stands, joined, or nil.
func (d Drawing) Check() error {
	var errs []error
	if !(d.W > 0 && d.H > 0) || !finite(d.W, d.H) {
		errs = append(errs, ErrEmptyPage)
	}
	for i, m := range d.Marks {
		if reason := m.Fault(); reason != "" {
			errs = append(errs, &MarkError{i, m.Ref, reason})
		}
		if m.Kind != KindText {
			continue
		}
		if runes := Missing(m.Text.Words); len(runes) > 0 {
			errs = append(errs, &MissingError{m.Text.Words, runes})
		}
	}
	return errors.Join(errs...)
}

// Substituted returns the drawing with a question mark for every character the fonts lack, for
// the caller who has told the reader about them.
func (d Drawing) Substituted() Drawing {
	marks := make([]Mark, len(d.Marks))
	for i, m := range d.Marks {
		m.Text.Words = Substituted(m.Text.Words)
		marks[i] = m
	}
	d.Marks = marks
	return d
}

// Fault returns why a mark cannot be drawn, or "".
func (m Mark) Fault() string {
	switch m.Kind {
	case KindStroke:
		if fault := m.Pen.fault(); fault != "" {
			return fault
		}
		return m.Path.fault()
	case KindFill:
		if m.Ink >= inks {
			return "no ink"
		}
		return m.Path.fault()
	case KindText:
		return m.Text.fault()
	}
	return "neither stroke nor fill nor text"
}

// finestDash keeps a pattern that is all but nothing from making millions of dashes.
const finestDash Paper = 0.01

func (p Pen) fault() string {
	if !(p.Width > 0) || !finite(p.Width) || p.Ink >= inks {
		return "no pen"
	}
	if !finite(append(p.Dash.Pattern[:], p.Dash.Phase)...) || !p.Dash.Solid() && p.Dash.Period() < finestDash {
		return "dashes too fine or without end"
	}
	return ""
}

func (p Path) fault() string {
	for i, s := range p {
		starts := i == 0 || p[i-1].Op == OpClose
		if s.Op > OpClose || starts && s.Op != OpMove {
			return "subpath does not start with a move"
		}
		if !finite(s.C1.X, s.C1.Y, s.C2.X, s.C2.Y, s.To.X, s.To.Y) {
			return "coordinate is not a number"
		}
	}
	return ""
}

func (t Text) fault() string {
	if !(t.Size > 0) || !finite(t.Size) || t.Face >= faces || t.Ink >= inks || t.Anchor > Right {
		return "no lettering"
	}
	if !finite(t.At.X, t.At.Y) {
		return "coordinate is not a number"
	}
	return ""
}

func finite(values ...Paper) bool {
	for _, v := range values {
		if math.IsNaN(float64(v)) || math.IsInf(float64(v), 0) {
			return false
		}
	}
	return true
}
