package view

import (
	"slices"
	"strings"

	"bunkwright/furniture/ask"
	"bunkwright/render"
)

// pointAt marks the thing that a question without a tape is about.
func (f *cardFace) pointAt(t cardThing) {
	if !t.found {
		return
	}
	r := f.rect(t.x0, t.z0, t.x1, t.z1)
	tip := render.Point{X: r.Max.X + f.words.Size*0.35, Y: r.Centre().Y}
	back := render.Point{X: 1}
	if f.box.Max.X-r.Max.X < r.Min.X-f.box.Min.X {
		tip.X, back.X = r.Min.X-f.words.Size*0.35, -1
	}
	f.arrow(tip, back, f.words.Size*2.2)
}

// ends are both ends of the tape on paper.
func (f *cardFace) ends(t cardThing) (a, b render.Point) {
	from, to := f.c.Shown.From, f.c.Shown.To
	z := f.level(t)
	if upright(from.At) || upright(to.At) {
		x := f.besideOf(t)
		return f.pt(x, f.height(from.At, t)), f.pt(x, f.height(to.At, t))
	}
	return f.pt(f.along(from, t), z), f.pt(f.along(to, t), z)
}

// upright tells whether a place is one of those that a tape from floor to ceiling goes to.
func upright(at ask.Place) bool {
	return slices.Contains([]ask.Place{ask.AtFloor, ask.AtCeiling, ask.AtBottom, ask.AtTop}, at)
}

// height is how high a place is, in mm.
func (f *cardFace) height(at ask.Place, t cardThing) float64 {
	switch at {
	case ask.AtFloor:
		return 0
	case ask.AtCeiling:
		return f.high
	case ask.AtTop:
		if strings.Contains(f.c.Key, "baseboard") {
			return f.high * 0.3
		}
		return t.z1
	case ask.AtBottom:
		return t.z0
	}
	return (t.z0 + t.z1) / 2
}

// besideOf is where an upright tape stands: in the middle of what it goes to, beside a plate, near its corner for the ceiling.
func (f *cardFace) besideOf(t cardThing) float64 {
	switch {
	case t.table == "outlet":
		return t.x1 + 0.03*f.long
	case t.table == "ceiling" || !t.found:
		if t.found && jobfileCorner(f.cardPainter) == "" {
			return (t.x0 + t.x1) / 2
		}
		return 0.09 * f.long
	case t.table == "window" || t.table == "door":
		return t.x0 + (t.x1-t.x0)*0.3
	case t.table == "fan":
		return t.x0 + (t.x1-t.x0)*0.12
	}
	return (t.x0 + t.x1) / 2
}

// level is the height at which a level tape lies.
func (f *cardFace) level(t cardThing) float64 {
	switch f.c.Shown.Level {
	case ask.Low:
		return f.high * 0.12
	case ask.High:
		return f.high * 0.86
	case ask.Middle:
		return f.high * 0.47
	}
	switch {
	case t.table == "window" && f.c.Shown.From.At == ask.AtCorner:
		return t.z0 + 0.05*f.high
	case t.table == "door" && f.c.Shown.From.At == ask.AtCorner:
		return f.high * 0.42
	case t.table == "stud":
		return f.high * 0.6
	}
	return (t.z0 + t.z1) / 2
}

// along is how far a place is from the left end of the wall, in mm.
func (f *cardFace) along(m ask.Mark, t cardThing) float64 {
	lo, hi := t.x0, t.x1
	if t.fromRight {
		lo, hi = hi, lo
	}
	switch m.At {
	case ask.AtCorner:
		if m.Name == f.right {
			return f.long
		}
		return 0
	case ask.AtNear:
		return lo
	case ask.AtFar:
		return hi
	case ask.AtFront: // the outer edge of a casing
		return lo + map[bool]float64{true: 1, false: -1}[t.fromRight]*trim*f.long
	}
	return (lo + hi) / 2
}
