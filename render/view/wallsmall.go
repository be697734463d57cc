package view

import (
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// WallSmall draws one wall face on, small and without figures: where its length is read high, in the middle and low, its studs, doors and
// windows, and what is fixed to it. Refs are the keys of the job; what is chosen is lit.
func WallSmall(s *fit.Scene, key string, o Options) render.Drawing {
	w := wallNamed(s, key)
	if w == nil {
		return o.draw(key, 0, 0, func(*canvas) {})
	}
	if o.Chosen != "wall."+key {
		o.Lit = append(o.Lit, o.Chosen)
	}
	f := newFacing(s, w)
	f.beside, f.bodies, f.cut = false, nil, f.edge
	return o.draw("Wall "+between(key), w.Len, f.high, func(c *canvas) {
		g := *f
		g.canvas = c
		g.face()
		g.stroke("", g.studLines(), g.st.Behind)
		g.doors()
		g.windows()
		g.readLines()
		g.things()
		g.notes = nil
		g.frame()
	})
}

// studLines are all studs of the wall, from floor to ceiling.
func (f *facing) studLines() render.Path {
	var path render.Path
	for _, st := range studsOf(f.s, f.w) {
		path = append(path, render.Line(f.pt(st.at, 0), f.pt(st.at, heightOf(f.edge, st.at)))...)
	}
	return path
}

// readLines are the heights at which lengths are read, each with its word in a break of the line.
func (f *facing) readLines() {
	low, middle, high := f.s.Job.Room.ReadAt()
	wall, _ := f.s.Job.Room.Wall(f.w.Key)
	ref := "wall." + f.w.Key
	for _, l := range []struct {
		z    float64
		word string
		key  string
		read bool
	}{
		{min(high, f.high-100), "high", ".high", len(wall.HighLength) > 0}, {middle, "middle", ".length", len(wall.Length) > 0}, {low, "low", ".low", len(wall.LowLength) > 0},
	} {
		pen := f.st.Thin
		if !l.read {
			pen = pen.In(render.InkCannotTell)
		}
		a, b := f.pt(0, l.z), f.pt(f.w.Len, l.z)
		word := f.st.Body.Text(a.Between(b, 0.3), l.word, pen.Ink, render.Centre).Middled()
		box := word.Bounds().Grow(f.st.Gap / 2)
		f.fill("", render.Box(box), f.ground())
		f.stroke(ref+l.key, slices.Concat(render.Line(a, render.Point{X: box.Min.X, Y: a.Y}), render.Line(render.Point{X: box.Max.X, Y: a.Y}, b)), pen)
		f.add(render.Words(ref+l.key, word))
	}
}
