package view

import (
	"math"
	"slices"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/geom"
)

// rules draws the dimensions round the wall: below it studs, openings and lengths, beside it heights.
func (f *facing) rules() {
	frame := f.rect(0, 0, f.w.Len, f.high)
	f.below(frame)
	f.ruleSide(left, frame, f.upright(left, f.leftHeights(), 0), 0)
	f.ruleSide(right, frame, f.upright(right, f.rightHeights(), f.w.Len), 0)
}

// below draws the rows under the floor line.
func (f *facing) below(frame render.Rect) {
	var levels [][]rule
	studs := f.studRow()
	if len(studs.spans) > 1 {
		levels = append(levels, []rule{f.levelRule(studs)})
	}
	if f.o.Beside && len(levels) > 0 { // the plan over it has the rest
		f.studRule(frame, levels)
		return
	}
	for _, r := range f.rowsOf(f.along(), 0, f.w.Len) {
		levels = append(levels, []rule{f.levelRule(r)})
	}
	key := "wall." + f.w.Key + ".length"
	whole := render.Span{Ref: "reading." + key, Words: f.dim(f.w.Len, f.known.firm(key))}
	if !f.known.read(key) {
		whole.Words, whole.Ink = "("+f.dim(f.w.Len, true)+"?)", render.InkCannotTell
	}
	levels = append(levels, []rule{f.levelRule(row{stops: []float64{0, f.w.Len}, spans: []render.Span{whole}})})
	if len(studs.spans) > 1 {
		f.studRule(frame, levels)
		return
	}
	f.ruleSide(below, frame, levels, 0)
}

// studRule draws rows of which the first is that of the studs, and names it.
func (f *facing) studRule(frame render.Rect, levels [][]rule) {
	first := len(f.marks)
	f.ruleSide(below, frame, levels, 0)
	f.nameRow(f.marks[first:], "stud centres")
}

// nameRow writes what the first row of dimensions is of, before its left end.
func (f *facing) nameRow(marks []render.Mark, words string) {
	row := render.Bounds(marks)
	for _, m := range marks {
		if m.Kind == render.KindStroke {
			row = m.Bounds()
			break
		}
	}
	at := render.Point{X: render.Bounds(marks).Min.X - f.st.Gap*1.5, Y: row.Centre().Y}
	f.add(render.Words("", f.st.Body.Text(at, words, render.InkSoft, render.Right).Middled()))
}

func (f *facing) levelRule(r row) rule {
	out := rule{spans: r.spans}
	for _, s := range r.stops {
		p := f.pt(s, 0)
		out.stops, out.from = append(out.stops, p.X), append(out.from, p.Y)
	}
	return out
}

// studRow dimensions the centres of the studs.
func (f *facing) studRow() row {
	r := row{stops: []float64{0}}
	once := false
	for _, st := range studsOf(f.s, f.w) {
		d := st.at - r.stops[len(r.stops)-1]
		if d < shut {
			continue
		}
		weak := st.found != "twice"
		r.stops = append(r.stops, st.at)
		r.spans = append(r.spans, render.Span{Ref: st.ref, Words: f.dim(d, !weak && !once)})
		once = weak
	}
	if last := r.stops[len(r.stops)-1]; f.w.Len-last > shut {
		r.stops = append(r.stops, f.w.Len)
		r.spans = append(r.spans, render.Span{Words: f.dim(f.w.Len-last, !once)})
	}
	return r
}

// along lists what takes a stretch of the wall: openings, and the bed before it.
func (f *facing) along() []ruled {
	list := ruledOpenings(f.s, f.known, f.w)
	if f.beside {
		lo, hi := footAlong(f.s, f.w)
		list = append(list, ruled{lo: lo, hi: hi, ref: "bed"})
	}
	return list
}

// height is a level that a row of heights stops at.
type height struct {
	z    float64
	ref  string
	once bool
}

// leftHeights lists the levels of the bed: the undersides of the cleats where there are shelves, else decks and rail.
func (f *facing) leftHeights() []height {
	if !f.beside || f.w != f.s.At {
		return nil
	}
	var list []height
	for i := range f.s.Solids {
		if b := &f.s.Solids[i]; b.Part.Role == bunk.RoleCleat {
			list = append(list, height{z: b.Lo.Z, ref: b.Part.ID})
		}
	}
	if len(list) == 0 {
		list = append(list, height{z: f.s.Feet + f.s.Bed.Lower.Top, ref: "lower.deck"}, height{z: f.s.Feet + f.s.Bed.Upper.Top, ref: "upper.deck"})
	}
	return append(list, height{z: f.railTop(), ref: "guard"})
}

// railTop is the height of the guardrail over the floor covering, of the upper deck where there is none.
func (f *facing) railTop() float64 {
	top := f.s.Bed.Upper.Top
	for _, g := range f.s.Bed.Guards {
		top = max(top, g.Top)
	}
	return f.s.Feet + top
}

// rightHeights lists the levels of the openings of the wall that were read.
func (f *facing) rightHeights() []height {
	var list []height
	add := func(key string, z float64) {
		if !math.IsNaN(z) {
			list = append(list, height{z, "reading." + key, !f.known.firm(key)})
		}
	}
	l := &f.s.Survey.Layout
	for i := range l.Windows {
		if l.Windows[i].Wall == f.w.Index {
			key := "window." + keyOr(f.s.Job.Room.Windows[i].Key, i)
			add(key+".sill", f.s.Survey.Value(l.Windows[i].Sill))
			add(key+".head", f.s.Survey.Value(l.Windows[i].Head))
		}
	}
	for i := range l.Doors {
		key := "door." + keyOr(f.s.Job.Room.Doors[i].Key, i) + ".high"
		if l.Doors[i].Wall == f.w.Index && f.known.read(key) {
			add(key, f.s.Survey.Value(l.Doors[i].High))
		}
	}
	return list
}

// upright makes the rows of heights at one end of the wall: the levels on the inner one, floor to ceiling on the outer one.
func (f *facing) upright(k side, list []height, x float64) [][]rule {
	top, edge := f.ceilingAt(f.cut, f.front, k), f.ceilingAt(f.edge, 0, k)
	if edge.z < top.z-sameOnPaper {
		list = append(list, edge)
	} else {
		top = edge // a wall out of square meets the cut a little beside the corner
	}
	slices.SortFunc(list, func(a, b height) int { return int(math.Copysign(1, a.z-b.z)) })
	r := row{stops: []float64{0}}
	once := false
	for _, h := range list {
		d := h.z - r.stops[len(r.stops)-1]
		if d < 5 || h.z > top.z-5 {
			continue
		}
		r.stops, r.spans = append(r.stops, h.z), append(r.spans, render.Span{Ref: h.ref, Words: f.dim(d, !h.once && !once)})
		once = h.once
	}
	var levels [][]rule
	if n := len(r.stops); n > 1 {
		if !f.guessed {
			r.spans = append(r.spans, render.Span{Words: f.dim(top.z-r.stops[n-1], !top.once && !once)})
			r.stops = append(r.stops, top.z)
		}
		levels = append(levels, []rule{f.uprightRule(r, x)})
	}
	if f.guessed {
		return levels
	}
	whole := row{stops: []float64{0, top.z}, spans: []render.Span{{Ref: "ceiling", Words: f.dim(top.z, !top.once)}}}
	return append(levels, []rule{f.uprightRule(whole, x)})
}

func (f *facing) uprightRule(r row, x float64) rule {
	out := rule{spans: r.spans}
	for _, s := range r.stops {
		p := f.pt(x, s)
		out.stops, out.from = append(out.stops, p.Y), append(out.from, p.X)
	}
	return out
}

// ceilingAt returns the height of a line of the ceiling at one end of the wall, a distance out, with how well its face is known. Where the
// height was read in the corner it is what was read; a face that is level along the wall is as high at its other end.
func (f *facing) ceilingAt(line []geom.V2, out float64, k side) height {
	x, z, ends := profileIn, line[0].Y, []rune(f.w.Key)
	if k == right {
		x, z = f.w.Len-profileIn, line[len(line)-1].Y
		slices.Reverse(ends)
	}
	h := height{z: z, ref: "ceiling"}
	_, i, ok := f.ceiling.at(f.w.Point(x, max(out, profileIn)))
	if !ok {
		return h
	}
	h.once = !faceFirm(f.s, f.known, f.ceiling.faces[i].ref)
	c := &f.s.Job.Room.Ceilings[i]
	if c.Along != f.w.Key {
		ends = ends[:1]
	}
	for _, corner := range ends {
		if read, ok := readAtCorner(c, corner); ok && math.Abs(z-read) < sameLevel {
			h.z = read
			break
		}
	}
	return h
}

// readAtCorner returns the height of a face that was read at a corner.
func readAtCorner(c *room.Ceiling, corner rune) (mm float64, ok bool) {
	for _, h := range c.Heights {
		if h.Corner == string(corner) && len(h.Height) > 0 {
			return h.Height[0].Value.MM(), true
		}
	}
	return 0, false
}

// sameLevel is how far what is worked out from all readings may lie from one of them and still be printed as it was read, mm.
const sameLevel = 3.0
