package view

import (
	"cmp"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/survey"
)

// taken writes the first reading of a measure, in parentheses where it rests on one.
func (p *planner) taken(key string, m room.Measure) string {
	return p.dim(m[0].Value.MM(), p.known.firm(key))
}

// stretch is a reading along a wall.
type stretch struct {
	lo, hi float64
	span   render.Span
}

// takenAlong returns the readings along a wall, in rows as they stand outside it: openings inside, the whole length outside.
func (p *planner) takenAlong(w *fit.Wall) [][]row {
	var packed [][]stretch
	for _, s := range p.openingsRead(w) {
		k := slices.IndexFunc(packed, func(r []stretch) bool {
			return !slices.ContainsFunc(r, func(t stretch) bool { return s.lo < t.hi-shut && t.lo < s.hi-shut })
		})
		if k < 0 {
			packed, k = append(packed, nil), len(packed)
		}
		packed[k] = append(packed[k], s)
	}
	var levels [][]row
	for _, r := range packed {
		levels = append(levels, chained(r))
	}
	levels = append(levels, []row{p.lengthRead(w)})
	for _, d := range p.s.Job.Room.Diagonals {
		if first, n := p.straightRun(d.Key); n > 0 && (w.Index-first+len(p.walls))%len(p.walls) < n {
			levels = append(levels, p.runRead(d, w, w.Index == first))
		}
	}
	return levels
}

// straightRun returns the walls between two corners where they run on in one line: the first of them, and how many; 0 where they do not.
func (p *planner) straightRun(key string) (first, n int) {
	letters := []rune(p.s.Job.Room.Outline)
	ends := []rune(key)
	if len(ends) != 2 {
		return 0, 0
	}
	i, k := slices.Index(letters, ends[0]), slices.Index(letters, ends[1])
	if i < 0 || k < 0 {
		return 0, 0
	}
	for _, way := range [2][2]int{{i, k}, {k, i}} {
		dir := p.walls[way[0]].w.Dir
		for n = 0; (way[0]+n)%len(letters) != way[1]; n++ {
			if d := p.walls[(way[0]+n)%len(letters)].w.Dir; dir.Cross(d) > squareWithin || dir.Cross(d) < -squareWithin || dir.Dot(d) < 0 {
				n = -1
				break
			}
		}
		if n > 0 {
			return way[0], n
		}
	}
	return 0, 0
}

// runRead is a reading over walls that run on in one line: it stands outside the first of them; the others leave it its row.
func (p *planner) runRead(d room.Diagonal, w *fit.Wall, first bool) []row {
	if !first || len(d.Length) == 0 {
		return nil
	}
	key := "diagonal." + d.Key + ".length"
	far := p.s.Outline[strings.IndexByte(p.s.Job.Room.Outline, d.Key[1])]
	if far == w.A {
		far = p.s.Outline[strings.IndexByte(p.s.Job.Room.Outline, d.Key[0])]
	}
	return []row{{stops: []float64{0, far.Dist(w.A)}, spans: []render.Span{{Ref: key, Words: p.taken(key, d.Length)}}}}
}

// chained joins stretches that follow each other; the rest stand apart.
func chained(list []stretch) []row {
	slices.SortFunc(list, func(a, b stretch) int { return cmp.Compare(a.lo, b.lo) })
	var rows []row
	for _, s := range list {
		if n := len(rows); n > 0 && s.lo-rows[n-1].stops[len(rows[n-1].stops)-1] < shut {
			rows[n-1].stops, rows[n-1].spans = append(rows[n-1].stops, s.hi), append(rows[n-1].spans, s.span)
			continue
		}
		rows = append(rows, row{stops: []float64{s.lo, s.hi}, spans: []render.Span{s.span}})
	}
	return rows
}

// lengthRead is the length of a wall as it was read.
func (p *planner) lengthRead(w *fit.Wall) row {
	key := "wall." + w.Key + ".length"
	span := render.Span{Ref: key, Words: notIn, Ink: render.InkCannotTell}
	if read, _ := p.s.Job.Room.Wall(w.Key); len(read.Length) > 0 {
		span = render.Span{Ref: key, Words: p.taken(key, read.Length)}
	}
	return row{stops: []float64{0, w.Len}, spans: []render.Span{span}}
}

// openingsRead lists the readings of doors and windows along a wall, widths and near edges first.
func (p *planner) openingsRead(w *fit.Wall) []stretch {
	var inner, outer []stretch
	r, l := &p.s.Job.Room, &p.s.Survey.Layout
	add := func(key string, on room.OnWall, wide room.Measure, refs survey.OnWallRefs, width survey.Ref) {
		at, ok := onWall(p.s, refs, width, 0)
		if !ok || at.guessed || at.w != w {
			return
		}
		near, far := [2]float64{0, at.lo}, [2]float64{0, at.hi}
		rest := [2]float64{at.hi, w.Len}
		if refs.FromEnd {
			near, far, rest = [2]float64{at.hi, w.Len}, [2]float64{at.lo, w.Len}, [2]float64{0, at.lo}
		}
		put := func(to *[]stretch, of string, m room.Measure, s [2]float64) {
			if len(m) > 0 && s[1]-s[0] >= shut {
				*to = append(*to, stretch{s[0], s[1], render.Span{Ref: key + of, Words: p.taken(key+of, m)}})
			}
		}
		put(&inner, ".at", on.At, near)
		put(&inner, ".wide", wide, [2]float64{at.lo, at.hi})
		put(&outer, ".rest", on.Rest, rest)
		put(&outer, ".far", on.Far, far)
	}
	for i := range r.Doors {
		d := &r.Doors[i]
		add("door."+keyOr(d.Key, i), d.OnWall, d.Wide, l.Doors[i].OnWallRefs, l.Doors[i].Wide)
	}
	for i := range r.Windows {
		d := &r.Windows[i]
		add("window."+keyOr(d.Key, i), d.OnWall, d.Wide, l.Windows[i].OnWallRefs, l.Windows[i].Wide)
	}
	return append(inner, outer...)
}
