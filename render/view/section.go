package view

import (
	"bunkwright/furniture"
	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// Section draws both beds cut along the middle of the mattresses, looking at the bed's wall side: what is cut through, who sits up in each
// bed with the air over the head, what lies behind, and the story stick beside it. Its origin is the bed's left end at the floor.
func Section(s *fit.Scene, answers []fit.Answer, o Options) render.Drawing {
	const title = "Section through both beds"
	if s.Bed == nil {
		return NoBed(s, title, o)
	}
	v := newSection(s, answers)
	return o.draw(title, v.hi-v.lo, v.high, func(c *canvas) {
		g := *v
		g.canvas = c
		g.paint()
	})
}

// A section is cut along a line through the room: across runs along it from the bed's left end, as seen looking at the wall side.
type section struct {
	bedView
	s       *fit.Scene
	known   known
	sit     [2]sitting
	thick   *fit.Answer // that knows the thickest mattress
	plane   float64     // y of the cut, in the bed's own axes
	from    geom.V2     // the section's origin in the room
	dir     geom.V2     // its direction in the room
	ends    [2]sectionEnd
	lo, hi  float64 // how far the drawing goes
	ceiling []geom.V2
	behind  *fit.Wall // the wall that is looked at
	high    float64   // of the drawing
	railAt  int       // the end at which the rail is dimensioned
}

// sectionEnd is where the section ends on one side: at a wall, or where it is broken off.
type sectionEnd struct {
	at   float64
	wall *fit.Wall
}

// How far the section shows the room beyond the bed at least and at most, and how far away a wall at its end may be to be shown, mm.
const (
	beyond     = 180.0
	mostBeyond = 700.0
	endWall    = 500.0
)

func newSection(s *fit.Scene, answers []fit.Answer) *section {
	v := &section{s: s, known: knownOf(s), sit: sittings(s, answers), plane: s.Bed.Upper.Mattress.C.Y}
	for i := range answers {
		if answers[i].ID == "rail-height" {
			v.thick = &answers[i]
		}
	}
	v.bedView = bedView{
		b: s.Bed, mirrored: s.Job.Place.Mirror, lift: heightOver(s, 0),
		across: func(q geom.V3) float64 { return v.along(q.X) },
		up:     func(q geom.V3) float64 { return heightOver(s, q.Z) },
		near:   func(q geom.V3) float64 { return -q.Y },
	}
	if s.Stands {
		v.from, v.dir = v.inRoom(0), v.inRoom(1).Sub(v.inRoom(0))
	}
	v.findEnds()
	v.findCeiling()
	v.findBehind()
	v.high = v.top() + v.lift
	if v.ceiling != nil {
		for _, q := range within(v.ceiling, v.lo, v.hi) {
			v.high = max(v.high, q.Y)
		}
	}
	for _, p := range v.sit {
		if p.known {
			v.high = max(v.high, p.head(), p.lowest)
		}
	}
	if v.ceiling == nil {
		v.high = rounded(max(v.high, v.highestHung()) + 150)
	}
	return v
}

// highestHung returns how high the highest thing reaches that hangs on the wall or from the ceiling: without a ceiling the drawing and its
// story stick have to go beyond it.
func (v *section) highestHung() float64 {
	high := 0.0
	for _, m := range hungMarks(v.s, v.known) {
		high = max(high, m.z)
	}
	for i := range v.b.Parts {
		if p := &v.b.Parts[i]; p.Frame == furniture.OnWall {
			high = max(high, p.Box.Top())
		}
	}
	return high
}

// paint draws everything, from what lies behind to what is nearest. The lower sleeper sits behind what is cut of the upper bed.
func (v *section) paint() {
	v.breakOff()
	v.wallBehind()
	v.bedBehind()
	v.shelves()
	v.sitter(0)
	v.inCut()
	v.mattress(0)
	v.mattress(1)
	v.frameOfRoom()
	v.sitter(1)
	v.over()
	v.dimensions()
	v.place()
}
