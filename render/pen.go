package render

// Pen is what a stroke is drawn with.
type Pen struct {
	Width Paper
	Ink   Ink
	Dash  Dash
}

// Dash is the pattern of a broken line: on, off, on, off. All zero is a solid line; a pattern
// of two leaves the last two zero. Phase says how far into the pattern the line starts.
type Dash struct {
	Pattern [4]Paper
	Phase   Paper
}

// Lengths returns the pattern without trailing zeros; it is empty for a solid line.
func (d Dash) Lengths() []Paper {
	n := 0
	for n+1 < len(d.Pattern) && d.Pattern[n] > 0 && d.Pattern[n+1] > 0 {
		n += 2
	}
	return d.Pattern[:n]
}

// Period returns the length after which the pattern repeats, 0 for a solid line.
func (d Dash) Period() Paper {
	var sum Paper
	for _, l := range d.Lengths() {
		sum += l
	}
	return sum
}

// Solid reports whether the line is unbroken.
func (d Dash) Solid() bool { return len(d.Lengths()) == 0 }

// In returns the pen with another ink.
func (p Pen) In(i Ink) Pen {
	p.Ink = i
	return p
}

// Dashed returns the pen with another's dashes.
func (p Pen) Dashed(like Pen) Pen {
	p.Dash = like.Dash
	return p
}

// dashed returns a pen with an on-off pattern.
func dashed(width Paper, ink Ink, pattern ...Paper) Pen {
	p := Pen{Width: width, Ink: ink}
	copy(p.Dash.Pattern[:], pattern)
	return p
}
