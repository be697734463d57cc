package view

import (
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
)

// stopsOf makes a row of dimensions of the stops, sorted; what is nearer than a hair is one.
func (v *bedView) stopsOf(stops ...float64) row {
	slices.Sort(stops)
	r := row{stops: stops[:1:1]}
	for _, s := range stops[1:] {
		if d := s - r.stops[len(r.stops)-1]; d >= shut {
			r.stops, r.spans = append(r.stops, s), append(r.spans, render.Span{Words: v.dim(d, true)})
		}
	}
	return r
}

// ruleApart draws rows of dimensions beside a frame like ruleSide, each level clear of the one before; lines to an outer level stop at the
// words of inner ones.
func (v *bedView) ruleApart(k side, frame render.Rect, levels [][]rule) {
	var words []render.Rect
	for _, level := range levels {
		first := len(v.marks)
		v.ruleSide(k, frame, [][]rule{level}, 0)
		v.breakAt(v.marks[first:], words)
		words = append(words, boxesOf(v.marks[first:]).words...)
		b := render.Bounds(v.marks[first:])
		switch k {
		case above:
			frame.Min.Y = b.Min.Y
		case below:
			frame.Max.Y = b.Max.Y
		case left:
			frame.Min.X = b.Min.X
		case right:
			frame.Max.X = b.Max.X
		}
	}
}

// breakAt breaks the extension lines among marks where they would run through words.
func (v *bedView) breakAt(marks []render.Mark, words []render.Rect) {
	for i := range marks {
		m := &marks[i]
		if m.Kind != render.KindStroke || m.Pen != v.st.Extension || len(m.Path)%2 != 0 { // a leader has a bend: three points
			continue
		}
		var path render.Path
		for j := 0; j < len(m.Path); j += 2 {
			path = append(path, broken(m.Path[j].To, m.Path[j+1].To, words, v.st.Gap/2)...)
		}
		m.Path = path
	}
}

// levelAt turns a row into a rule that starts at a height; uprightAt one that starts at a place across.
func (v *bedView) levelAt(r row, y float64) []rule {
	out := rule{spans: r.spans}
	for _, s := range r.stops {
		p := v.pt(s, y)
		out.stops, out.from = append(out.stops, p.X), append(out.from, p.Y)
	}
	return []rule{out}
}

func (v *bedView) uprightAt(r row, x float64) []rule {
	out := rule{spans: r.spans}
	for _, s := range r.stops {
		p := v.pt(x, s)
		out.stops, out.from = append(out.stops, p.Y), append(out.from, p.X)
	}
	return []rule{out}
}

// rulesOf keeps the rows that dimension anything.
func rulesOf(rows ...[]rule) [][]rule {
	return slices.DeleteFunc(rows, func(r []rule) bool { return len(r[0].spans) == 0 })
}

// frameHeights returns the heights that matter of the frame: rails, guards, top.
func (v *bedView) frameHeights() []float64 {
	out := []float64{0}
	for i := range v.b.Parts {
		p := &v.b.Parts[i]
		if p.Role == bunk.RoleSideRail || p.Role == bunk.RoleGuard {
			out = append(out, p.Box.Bottom(), p.Box.Top())
		}
	}
	return out
}

// insideAlong returns the ends of the room for a mattress along the bed, as it stands; insideWide those across it.
func (v *bedView) insideAlong() (lo, hi float64) {
	mid, half := v.along(v.b.Upper.Mattress.C.X), v.b.Inside.Long/2
	return mid - half, mid + half
}

func (v *bedView) insideWide() (lo, hi float64) {
	mid, half := v.b.Upper.Mattress.C.Y, v.b.Inside.Wide/2
	return mid - half, mid + half
}

// outmost returns the ends across the view of what stands out beyond two places: the ladder, the book ledge.
func (v *bedView) outmost(lo, hi float64) []float64 {
	a, b := v.spread(v.outlines())
	var out []float64
	if a.X < lo-shut {
		out = append(out, a.X)
	}
	if b.X > hi+shut {
		out = append(out, b.X)
	}
	return out
}

// wordsOver sets words in the middle over a row of dimensions.
func (v *bedView) wordsOver(row []render.Mark, x render.Paper, words string) {
	y := render.Bounds(row).Min.Y - v.st.Body.Leading()*0.6
	v.add(render.Words("way in", v.st.Body.Text(render.Point{X: x, Y: y}, words, render.InkSoft, render.Centre).Middled()))
}

// wordsUnder sets lines of words in the middle under a row of dimensions.
func (v *bedView) wordsUnder(row []render.Mark, x float64, lines ...string) {
	at := render.Point{X: v.pt(x, 0).X, Y: render.Bounds(row).Max.Y - v.st.Body.Leading()*0.15}
	for _, words := range lines {
		at.Y += v.st.Body.Leading()
		v.add(render.Words("", v.st.Body.Text(at, words, render.InkSoft, render.Centre).Middled()))
	}
}
