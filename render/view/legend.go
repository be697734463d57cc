package view

import (
	"slices"
	"strings"

	"bunkwright/render"
)

// legendEntry explains one kind of line or sign that a drawing uses.
type legendEntry struct {
	words string
	used  func(m render.Mark) bool
	draw  func(st render.Style, at render.Rect) []render.Mark
}

// Legend explains, in a column of the width of the box, the lines and signs that marks on a screen use.
func Legend(marks []render.Mark, o Options) render.Drawing {
	c := &column{st: o.Style(), w: o.W}
	c.heading("Lines")
	for _, e := range legendOnScreen(marks, c.st) {
		c.y += c.step() * 0.35
		c.explain(e)
	}
	return render.Drawing{Title: "Lines", W: o.W, H: c.y + c.st.Gap, Marks: c.marks}
}

// legendOnScreen says nothing of millimetres on paper, and a wall cut through is filled there.
func legendOnScreen(marks []render.Mark, st render.Style) []legendEntry {
	var list []legendEntry
	for i, e := range legend(st) {
		if i == 0 {
			e.used, e.draw = isPen(st.Cut), filledSample
		}
		e.words, _, _ = strings.Cut(e.words, ", 0.")
		if slices.ContainsFunc(marks, e.used) {
			list = append(list, e)
		}
	}
	return list
}

// legendOf returns the entries that a drawing uses.
func legendOf(marks []render.Mark, st render.Style) []legendEntry {
	var list []legendEntry
	entries := legend(st)
	if !slices.ContainsFunc(marks, isHatched) {
		entries[0] = legendEntry{"edge of what is cut through, 0.5 mm", isPen(st.Cut), lineSample(st.Cut)}
	}
	for _, e := range entries {
		if slices.ContainsFunc(marks, e.used) {
			list = append(list, e)
		}
	}
	return list
}

// legend lists all entries in the order they are printed in.
func legend(st render.Style) []legendEntry {
	return []legendEntry{
		{"cut through, 0.5 mm", isHatched, cutSample},
		{"edge seen, 0.35 mm", isPen(st.Seen), lineSample(st.Seen)},
		{"overhead, behind or moved out", isPen(st.Behind), lineSample(st.Behind)},
		{"floor kept clear", but(isPen(st.KeepClear), "cylinder"), lineSample(st.KeepClear)},
		{"free round a seated head", refWith("cylinder"), lineSample(st.KeepClear)},
		{"spare over the head", refWith("spare."), barSample},
		{"where the section is cut", isPen(st.Axis), lineSample(st.Axis)},
		{"stud found twice; once or only assumed", filledRef(".stud."), dotsSample},
		{"screw", refWith(".screws"), crossSample},
		{"read once, not trusted yet", hasWords("("), wordsSample(`(6)`)},
		{"worked out, not read", hasWords("?)"), wordsSample(`(6?)`)},
		{"not read yet, place assumed", hasWords("?"), ringSample},
		{"outlet, switch", refWith("outlet."), plugSample},
	}
}

func isPen(p render.Pen) func(render.Mark) bool {
	return func(m render.Mark) bool {
		return m.Kind == render.KindStroke && m.Pen.Width == p.Width && m.Pen.Dash == p.Dash
	}
}

// isHatched tells the hatching of a wall or a board cut through: strokes aslant and side by side in one mark.
func isHatched(m render.Mark) bool {
	if m.Kind != render.KindStroke || len(m.Path) < 8 || m.Ref == "floor" || render.Under(m.Ref, "ceiling") {
		return false
	}
	for i, s := range m.Path {
		aslant := i == 0 || s.To.X > m.Path[i-1].To.X && s.To.Y < m.Path[i-1].To.Y
		if s.Op == render.OpMove != (i%2 == 0) || i%2 == 1 && !aslant {
			return false
		}
	}
	return true
}

// but leaves out what a ref names.
func but(used func(render.Mark) bool, ref string) func(render.Mark) bool {
	return func(m render.Mark) bool { return m.Ref != ref && used(m) }
}

// filledRef tells signs of a kind of thing from its lines.
func filledRef(part string) func(render.Mark) bool {
	return func(m render.Mark) bool { return m.Kind == render.KindFill && strings.Contains(m.Ref, part) }
}

func refWith(part string) func(render.Mark) bool {
	return func(m render.Mark) bool { return strings.Contains(m.Ref, part) }
}

// hasWords tells texts that are a question mark alone from those that only hold one.
func hasWords(part string) func(render.Mark) bool {
	return func(m render.Mark) bool {
		if m.Kind != render.KindText {
			return false
		}
		if part == "?" {
			return m.Text.Words == part
		}
		return strings.HasPrefix(m.Text.Words, part) || part == "?)" && strings.HasSuffix(m.Text.Words, part)
	}
}

func lineSample(pen render.Pen) func(render.Style, render.Rect) []render.Mark {
	return func(_ render.Style, r render.Rect) []render.Mark {
		y := r.Centre().Y
		return []render.Mark{render.Stroke("", render.Line(render.Point{X: r.Min.X, Y: y}, render.Point{X: r.Max.X, Y: y}), pen)}
	}
}

func cutSample(st render.Style, r render.Rect) []render.Mark {
	box := render.Box(r.Grow(-0.3))
	return []render.Mark{render.Stroke("", render.Hatch(box, st.Hatch, 45), st.Thin), render.Stroke("", box, st.Cut)}
}

func filledSample(st render.Style, r render.Rect) []render.Mark {
	box := render.Box(r.Grow(-0.3))
	return []render.Mark{render.Fill("", box, render.InkWallCut), render.Stroke("", box, st.Cut)}
}

func dotsSample(st render.Style, r render.Rect) []render.Mark {
	c, d := r.Centre(), st.Tick*0.9
	return append(render.DotFilled.At("", render.Point{X: c.X - d*0.9, Y: c.Y}, d), render.DotOpen.At("", render.Point{X: c.X + d*0.9, Y: c.Y}, d)...)
}

func crossSample(st render.Style, r render.Rect) []render.Mark {
	return []render.Mark{render.Stroke("", crossAt(r.Centre(), st.Tick*0.3), st.Thin)}
}

func barSample(st render.Style, r render.Rect) []render.Mark {
	c := r.Centre()
	bar := st.Cut
	bar.Width *= spareThick
	return []render.Mark{render.Stroke("", render.Line(render.Point{X: c.X, Y: r.Min.Y}, render.Point{X: c.X, Y: r.Max.Y}), bar)}
}

func wordsSample(words string) func(render.Style, render.Rect) []render.Mark {
	return func(st render.Style, r render.Rect) []render.Mark {
		return []render.Mark{render.Words("", st.Measure.Text(r.Centre(), words, render.InkMain, render.Centre).Middled())}
	}
}

func ringSample(st render.Style, r render.Rect) []render.Mark {
	return render.SignCannotTell.At("", r.Centre(), st.Sign*0.9)
}

func plugSample(st render.Style, r render.Rect) []render.Mark {
	c := &canvas{st: st}
	at, up := r.Centre(), st.Tick*0.6
	foot := func(dx render.Paper) render.Point { return render.Point{X: at.X + dx, Y: at.Y + up*0.7} }
	tip := func(dx render.Paper) render.Point { return render.Point{X: at.X + dx, Y: at.Y - up*0.7} }
	return append(c.plugSign("", "outlet", foot(-2), tip(-2), render.InkMain), c.plugSign("", "switch", foot(2), tip(2), render.InkMain)...)
}

// besides fills the column beside a drawing, or the strip under it: the legend, then whatever else the page has to say.
func (f *frame) besides(p *page) {
	entries := []legendEntry{}
	if p.legend {
		entries = legendOf(f.d.Marks, f.st)
	}
	if f.upright {
		f.strip(p, entries)
		return
	}
	c := &column{st: f.st, x: f.column.Min.X, w: f.column.W(), y: f.column.Min.Y - f.st.Small.Size*0.6, to: f.occupied - f.st.Gap*3}
	if len(entries) > 0 {
		c.heading("Lines")
	}
	for _, e := range entries {
		c.explain(e)
	}
	if p.beside != nil {
		p.beside(c)
	}
	f.add(c.marks...)
}

// sampleWide is the width of a sample in the legend.
const sampleWide render.Paper = 9

// explain adds an entry of the legend.
func (c *column) explain(e legendEntry) {
	c.y += c.step() * 0.15
	lines := render.Wrap(e.words, c.st.Small.Size, c.st.Small.Face, c.w-sampleWide-c.st.Gap*2)
	for i, l := range lines {
		c.y += c.step()
		if i == 0 {
			mid := c.y - c.st.Small.Size*0.36
			r := render.Rect{Min: render.Point{X: c.x, Y: mid - 1.4}, Max: render.Point{X: c.x + sampleWide, Y: mid + 1.4}}
			c.marks = append(c.marks, e.draw(c.st, r)...)
		}
		c.put(c.x+sampleWide+c.st.Gap*2, c.st.Small, l, render.Left)
	}
}

// strip lays legend and further words out in columns under an upright drawing.
func (f *frame) strip(p *page, entries []legendEntry) {
	top := f.column.Min.Y - p.stripHigh() - 2
	wide := f.column.W() / 3
	columns := 3
	if p.beside != nil {
		columns = 1
		c := &column{st: f.st, x: f.column.Min.X + wide, w: wide * 1.5, y: top - f.st.Small.Size, to: f.column.Min.Y - f.st.Gap*3}
		p.beside(c)
		f.add(c.marks...)
	}
	rows := max(1, (len(entries)+columns-1)/columns)
	for i, e := range entries {
		c := &column{st: f.st, x: f.column.Min.X + render.Paper(i/rows)*wide, w: wide - 3}
		c.y = top + render.Paper(i%rows)*c.step()*1.12
		c.explain(e)
		f.add(c.marks...)
	}
}
