package view

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// Wall draws one wall face on, as seen from inside the room, with the bed in front of it where it stands there. Its origin is the wall's
// left end at the floor.
func Wall(s *fit.Scene, answers []fit.Answer, key string, o Options) render.Drawing {
	title := "Wall " + between(key)
	w := wallNamed(s, key)
	if w == nil {
		return o.draw(title, 0, 0, func(c *canvas) { noShape(c, s) })
	}
	f := newFacing(s, w)
	return o.draw(title, w.Len, f.high, func(c *canvas) {
		g := *f
		g.canvas = c
		g.paint(answers)
	})
}

// facing draws a wall face on: x runs along it from its first corner, y up from the floor covering.
type facing struct {
	*canvas
	s       *fit.Scene
	w       *fit.Wall
	known   known
	ceiling ceilings
	edge    []geom.V2 // the ceiling at the wall, from its left end to its right
	cut     []geom.V2 // the ceiling where the view is cut, in front of the bed
	high    float64   // of the drawing
	guessed bool      // the height of the ceiling is not known
	beside  bool      // the bed stands before this wall
	front   float64   // how far out the view is cut
	bodies  []seen    // of the bed, the farthest first
}

// usualCeiling is how high a wall is drawn whose ceiling nobody measured, mm.
const usualCeiling = 2400.0

// beforeWall is how near to a wall across its end the bed is part of the wall's picture, mm.
const beforeWall = 1000.0

func newFacing(s *fit.Scene, w *fit.Wall) *facing {
	f := &facing{s: s, w: w, known: knownOf(s), ceiling: ceilingsOf(s)}
	near, far := math.Inf(1), 0.0
	if s.Stands {
		for _, q := range s.Bed.Foot {
			_, out := w.Along(s.ToRoom.Point(q.At(0)).XY())
			near, far = min(near, out), max(far, out)
		}
	}
	across := s.At != nil && math.Abs(s.At.Dir.Dot(w.Dir)) < 0.5
	if f.beside = w == s.At || across && near < beforeWall; f.beside {
		f.front = far
	}
	if f.beside && s.Stands {
		f.bodies = f.seenBodies()
	}
	f.edge = f.profile(1)
	if f.guessed = f.edge == nil; f.guessed {
		f.edge = []geom.V2{{X: 0, Y: usualCeiling}, {X: w.Len, Y: usualCeiling}}
	}
	f.cut = f.edge
	if front := f.profile(f.front); f.beside && front != nil {
		f.cut = higher(f.edge, front)
	}
	for _, q := range f.cut {
		f.high = max(f.high, q.Y)
	}
	return f
}

// project returns a point of the room on the wall: along it, and up.
func (f *facing) project(q geom.V3) geom.V2 {
	along, _ := f.w.Along(q.XY())
	return geom.V2{X: along, Y: q.Z}
}

func (f *facing) shape(q geom.Polygon) render.Path {
	points := make([]render.Point, len(q))
	for i := range q {
		points[i] = f.pt(q[i].X, q[i].Y)
	}
	return render.Polygon(points...)
}

// box is an upright rectangle of the wall on paper.
func (f *facing) box(x0, z0, x1, z1 float64) render.Path { return render.Box(f.rect(x0, z0, x1, z1)) }

// paint draws everything, from the wall towards the viewer.
func (f *facing) paint(answers []fit.Answer) {
	f.face()
	f.studs()
	f.doors()
	f.windows()
	f.things()
	f.beams()
	f.pieces()
	f.bed()
	f.frame()
	f.rules()
	f.verdicts(f.s, answers)
	f.place()
}

// label asks for a label on the wall; a leader would point at where the thing stands.
func (f *facing) label(ref string, x, z float64, near render.Paper, lines ...line) {
	home := f.pt(x, z)
	dot, ok := f.spots[ref]
	if !ok {
		dot = home
	}
	f.notes = append(f.notes, label{ref: ref, lines: lines, home: home, near: near, dot: dot, inside: true})
}

// notIn asks for a name with the dashed ring.
func (f *facing) notIn(ref, name string, x, z float64) {
	at := f.pt(x, z)
	f.spots[ref], f.rings[ref] = at, true
	f.notes = append(f.notes, label{
		ref: ref, lines: []line{{name, f.st.Body, render.InkCannotTell}}, home: at, near: 14, dot: at, sign: render.SignCannotTell, signs: true, inside: true,
	})
}
