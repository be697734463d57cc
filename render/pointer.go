package render

// Corner returns the letter of a corner of the room in a circle about c.
func (s Style) Corner(ref, letter string, c Point) []Mark {
	marks := Outlined(ref, Circle(c, s.Body.Size*0.85), InkPaper, s.Thin)
	return append(marks, Words(ref, s.Body.Text(c, letter, InkMain, Centre).Middled()))
}

// Leader returns a thin line from a small dot on what is meant to the words, which stand with
// the middle of their capitals at the height of t.At.
func (s Style) Leader(ref string, dot Point, t Text) []Mark {
	t = t.Middled()
	b := t.Bounds().Grow(s.Gap / 2)
	end := Point{b.Min.X, t.At.Y - CapHeight(t.Size, t.Face)/2}
	if dot.X > b.Centre().X {
		end.X = b.Max.X
	}
	return []Mark{
		Stroke(ref, Line(dot, end), s.Extension),
		Fill(ref, Circle(dot, s.Tick/5), InkMain),
		Words(ref, t),
	}
}

// BreakLine returns a line from a to b with a zigzag in its middle: what is drawn goes on
// beyond it.
func (s Style) BreakLine(ref string, a, b Point) Mark {
	d := unit(b.Minus(a))
	across := Point{-d.Y, d.X}
	middle, size := a.Between(b, 0.5), float64(s.Tick)
	bend := func(along, out float64) Point {
		return middle.Plus(d.Times(along * size)).Plus(across.Times(out * size))
	}
	return Stroke(ref, Polyline(a, bend(-0.9, 0), bend(-0.3, 0.8), bend(0.3, -0.8), bend(0.9, 0), b), s.Thin)
}

// LevelMark returns the mark of a height: a triangle standing on its tip at a short line, the
// value and what it is the height of to its right.
func (s Style) LevelMark(ref string, tip Point, value, of string) []Mark {
	w := s.Tick * 0.75
	up := Point{tip.X, tip.Y - w*1.1}
	triangle := Polygon(tip, Point{tip.X - w, up.Y}, Point{tip.X + w, up.Y})
	x := tip.X + w*1.5 + s.Gap
	return []Mark{
		Stroke(ref, triangle, s.Thin),
		Stroke(ref, Line(Point{tip.X - w*1.5, tip.Y}, Point{tip.X + w*1.5, tip.Y}), s.Thin),
		Words(ref, s.Measure.Text(Point{x, tip.Y}, value, InkMain, Left)),
		Words(ref, s.Small.Text(Point{x, tip.Y + s.Small.Leading()}, of, InkSoft, Left)),
	}
}

// SectionMark returns the line along which a section is cut from a to b, with an arrow at
// either end that points the way the section looks: to the left of the way from a to b, or to
// the right if back is set.
func (s Style) SectionMark(ref string, a, b Point, back bool) []Mark {
	d := unit(b.Minus(a))
	look := Point{d.Y, -d.X}
	if back {
		look = look.Times(-1)
	}
	marks := []Mark{Stroke(ref, Line(a, b), s.Axis)}
	for _, p := range []Point{a, b} {
		tip := p.Plus(look.Times(float64(s.Tick) * 1.4))
		neck := tip.Minus(look.Times(float64(s.Tick) * 0.8))
		side := d.Times(float64(s.Tick) * 0.5)
		arrow := append(Line(p, tip), Polyline(neck.Plus(side), tip, neck.Minus(side))...)
		marks = append(marks, Stroke(ref, arrow, s.Seen))
	}
	return marks
}

// EndGrain returns a member cut through: its outline with both diagonals.
func (s Style) EndGrain(ref string, r Rect, outline Pen) []Mark {
	diagonals := append(Line(r.Min, r.Max), Line(Point{r.Min.X, r.Max.Y}, Point{r.Max.X, r.Min.Y})...)
	return []Mark{
		Fill(ref, Box(r), InkEndGrain),
		Stroke(ref, diagonals, s.Thin),
		Stroke(ref, Box(r), outline),
	}
}

// Ground returns a heavy line from a to b with short strokes on its right-hand side, going from
// a to b: the solid behind a floor or a ceiling.
func (s Style) Ground(ref string, a, b Point) []Mark {
	d := unit(b.Minus(a))
	step, lean := float64(s.Tick)*1.5, float64(s.Tick)*0.8
	var strokes Path
	for at := step / 2; at < float64(b.Minus(a).Length()); at += step {
		p := a.Plus(d.Times(at))
		strokes = append(strokes, Line(p, p.Plus(Point{-d.Y - d.X, d.X - d.Y}.Times(lean)))...)
	}
	return []Mark{Stroke(ref, strokes, s.Thin), Stroke(ref, Line(a, b), s.Cut)}
}

// unit returns the direction of v; that of nothing is to the right.
func unit(v Point) Point {
	l := v.Length()
	if l == 0 {
		return Point{X: 1}
	}
	return v.Times(1 / float64(l))
}
