package fit

import (
	"math"
	"slices"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var wallGap = Question{
	ID:       "wall-gap",
	Sentence: "Is the gap along the wall closed?",
	Group:    Safety,
	Why:      "A gap beside the top barrier that lets a child's body through and holds the head is a trap.",
	How: "From the outer top edge of each top barrier, ends too, to every wall it faces, to slopes, ceiling, shelves and furniture beside it: the " +
		"shortest straight line, square to walls and slopes; along a wall the widest place counts, and the worst one where the gap runs through a " +
		"band or out of it; under a ceiling or a slope the worst place counts. And from the mattress to the rail on the wall side.",
	Caution: "Measure the gap again once the bed stands, all along the wall.",
	Depends: Standing | FarLean | Ceiling | Furniture,
	Propose: []Driver{Slide, Notch, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.wallGaps() },
}

var wallGapRows = []string{"eu-adjoining-gap", "qld-wall-gap"}

// SlopeDistance returns the shortest distance from a rail's top to a slope: the knee wall's height, how far out from it the rail stands, the
// slope in degrees and the rail's height over the floor, all lengths in one unit (calc-slope-distance).
func SlopeDistance(knee, run, slope, railTop float64) float64 {
	a := slope * math.Pi / 180
	return math.Abs(knee+run*math.Tan(a)-railTop) * math.Cos(a)
}

// outerEdge is the outer top edge of a barrier, in the room, and the level direction it faces.
type outerEdge struct {
	side string
	a, b geom.V3
	from geom.V3 // its ends in the bed's own axes
	to   geom.V3
	out  geom.V2
	part []string
}

func (s *Scene) wallGaps() Finding {
	if !s.Stands {
		return Finding{Readings: []Reading{ask("wall", s.Wants, wallGapRows...)}}
	}
	if !s.speaks(wallGapRows) {
		return Finding{}
	}
	var f Finding
	for _, e := range s.outerEdges() {
		f.Readings = append(f.Readings, s.gapsOf(e)...)
	}
	f.Readings = append(f.Readings, s.unplacedThings()...)
	if r, ok := s.mattressToRail(); ok {
		f.Readings = append(f.Readings, r)
	}
	return s.traced(f)
}

// outerEdges returns the outer top edge of each top barrier: that of the board itself, which may lie farther in than the posts. What
// closes an end no higher than the frame is no barrier.
func (s *Scene) outerEdges() []outerEdge {
	var out []outerEdge
	lo, hi := s.Bed.Foot.Bounds()
	for i := range s.Bed.Guards {
		g := &s.Bed.Guards[i]
		if !s.barrier(g) {
			continue
		}
		e := outerEdge{side: g.Side, part: g.Parts}
		inner, outer := s.plan().topBoards[i][0], s.plan().topBoards[i][1]
		var d geom.V3
		switch g.Side {
		case "wall":
			e.from, e.to, d = geom.V3{X: g.From, Y: outer.Y, Z: g.Top}, geom.V3{X: g.To, Y: outer.Y, Z: g.Top}, geom.V3{Y: 1}
		case "front":
			e.from, e.to, d = geom.V3{X: g.From, Y: inner.Y, Z: g.Top}, geom.V3{X: g.To, Y: inner.Y, Z: g.Top}, geom.V3{Y: -1}
		case "left":
			e.from, e.to, d = geom.V3{X: inner.X, Y: hi.Y, Z: g.Top}, geom.V3{X: inner.X, Y: lo.Y, Z: g.Top}, geom.V3{X: -1}
		default:
			e.from, e.to, d = geom.V3{X: outer.X, Y: hi.Y, Z: g.Top}, geom.V3{X: outer.X, Y: lo.Y, Z: g.Top}, geom.V3{X: 1}
		}
		e.a, e.b, e.out = s.ToRoom.Point(e.from), s.ToRoom.Point(e.to), s.ToRoom.Dir(d).XY()
		out = append(out, e)
	}
	return out
}

// topBoard returns the corners, in the bed's own axes, of the longest board of a rail that reaches its top.
func topBoard(bed *bunk.Bed, g *guardAt) (lo, hi geom.V3) {
	longest := 0.0
	for i := range bed.Parts {
		p := &bed.Parts[i]
		if !slices.Contains(g.Parts, p.ID) {
			continue
		}
		a, b := p.Box.Bounds()
		if long := max(b.X-a.X, b.Y-a.Y); b.Z > g.Top-touching && long > longest {
			longest, lo, hi = long, a, b
		}
	}
	return lo, hi
}

// gapsOf measures from one edge to the walls it faces, the ceiling over it and the shelves beside it.
func (s *Scene) gapsOf(e outerEdge) []Reading {
	var out []Reading
	for i := range s.Walls {
		w := &s.Walls[i]
		if narrow, wide, faces := s.edgeToWall(e, w); faces {
			r := Reading{At: e.side + "." + w.Key, Rows: wallGapRows, Have: wide, Parts: append([]string{w.Name}, e.part...), Edge: "to " + w.Name}
			out = append(append(out, r), s.through(r, narrow)...)
		}
	}
	for i := range s.Survey.Layout.Ceilings {
		if narrow, wide, want, ok := s.edgeToFace(e, i); ok {
			key := s.keys.ceilings[i]
			out = append(out, Reading{
				At: e.side + "." + key, Rows: wallGapRows[:1], Have: s.worstBetween(wallGapRows[0], narrow, wide), Ask: want,
				Parts: append([]string{key}, e.part...), Edge: "to " + key,
			})
		}
	}
	return append(append(out, s.edgeToShelves(e)...), s.edgeToThings(e)...)
}

// worstBetween returns the worst place of a gap that widens steadily, for a row with a band that no gap may lie in: the widest place up to
// the middle of the band, the middle where the gap runs through it, else the narrowest place.
func (s *Scene) worstBetween(id string, narrow, wide float64) float64 {
	row, _, _ := s.row(id)
	return min(wide, max(narrow, (row.Need[0]+row.Need[1])/2))
}

// through returns the worst place of a gap that widens along a wall out of a row's band. Its widest place alone would lie beyond the band.
func (s *Scene) through(widest Reading, narrow float64) (out []Reading) {
	for _, id := range widest.Rows {
		row, _, _ := s.row(id)
		if narrow <= row.Need[1] && widest.Have > row.Need[1] {
			r := widest
			r.At, r.Rows, r.Have = r.At+".between."+id, []string{id}, s.worstBetween(id, narrow, widest.Have)
			out = append(out, r)
		}
	}
	return out
}

// facing is the cosine from which an edge faces a wall.
const facing = 0.7

// edgeToWall returns the narrowest and the widest gap from an edge to a wall that it faces, at the edge's own height.
func (s *Scene) edgeToWall(e outerEdge, w *Wall) (narrow, wide float64, faces bool) {
	a, outA := w.Along(e.a.XY())
	b, outB := w.Along(e.b.XY())
	if e.out.Dot(w.In) > -facing || max(a, b) < 0 || min(a, b) > w.Len {
		return 0, 0, false
	}
	in := s.Furthest(w, e.a.Z, e.a.Z)
	narrow, wide = min(outA, outB)-in, max(outA, outB)-in
	return narrow, wide, wide > -touching
}

// edgeToFace returns the narrowest and the widest gap from an edge to a face of the ceiling, square to it, over the stretch of the edge
// that it is over.
func (s *Scene) edgeToFace(e outerEdge, i int) (narrow, wide float64, want string, ok bool) {
	from, to, want := s.underFace(e, i)
	if want != "" || from > to {
		return 0, 0, want, want != ""
	}
	gap := func(share float64) float64 {
		return (s.faceHeight(i, e.a.XY().Lerp(e.b.XY(), share)) - e.a.Z) / s.steep(i)
	}
	a, b := gap(from), gap(to)
	if math.IsNaN(a + b) {
		want = "how does " + s.keys.ceilings[i] + " lie? read its height at one more point"
	}
	return min(a, b), max(a, b), want, true
}

// faceSlack is how far outside a face an edge still counts as under it, mm: walls lean.
const faceSlack = 1

// underFace returns the stretch of an edge, as shares of it, that a face of the ceiling is over; from > to where it is over none of it.
func (s *Scene) underFace(e outerEdge, i int) (from, to float64, want string) {
	parts, want := s.faceParts(i)
	from, to = math.Inf(1), math.Inf(-1)
	for _, part := range parts {
		if t0, t1 := e.inside(part); t0 <= t1 {
			from, to = min(from, t0), max(to, t1)
		}
	}
	return from, to, want
}

// inside returns the stretch of the edge that lies inside all the lines, as shares of it.
func (e *outerEdge) inside(lines []geom.Line) (t0, t1 float64) {
	t1 = 1
	for _, l := range lines {
		u := l.Along.Unit()
		a, b := u.Cross(e.a.XY().Sub(l.At)), u.Cross(e.b.XY().Sub(l.At))
		from, to := shareWithin(a, b, [2]float64{-faceSlack, math.Inf(1)})
		t0, t1 = max(t0, from), min(t1, to)
	}
	return t0, t1
}

// edgeToThings measures to furniture that stays, such as a cupboard, where it lies beside the bed and beyond the edge.
func (s *Scene) edgeToThings(e outerEdge) (out []Reading) {
	if len(s.Job.Room.Pieces) == 0 {
		return nil
	}
	edge := s.ToRoom.Box(geom.NewBox(e.from, e.to))
	for i := range s.Job.Room.Pieces {
		box, ok := s.pieceBox(i)
		if !ok || box.C.Sub(e.a).XY().Dot(e.out)+box.Reach(e.out.At(0)) <= touching {
			continue
		}
		if gap := geom.BoxGap(edge, box); gap < yardstick.Figure(yardstick.BedBeside) {
			what := s.keys.pieces[i]
			out = append(out, Reading{At: e.side + "." + what, Rows: wallGapRows[:1], Have: gap, Parts: append([]string{what}, e.part...), Edge: "to " + what})
		}
	}
	return out
}

// unplacedThings asks about furniture that may stand beside the bed, since nobody read where it does.
func (s *Scene) unplacedThings() (out []Reading) {
	for i := range s.Job.Room.Pieces {
		if _, ok := s.pieceBox(i); !ok {
			what := s.keys.pieces[i]
			out = append(out, ask(what, askBox(what), wallGapRows[:1]...))
		}
	}
	return out
}

// edgeToShelves measures to what hangs on the wall and lies over or beside the edge.
func (s *Scene) edgeToShelves(e outerEdge) []Reading {
	n := farOff()
	edge := s.ToRoom.Box(geom.NewBox(e.from, e.to))
	for i := range s.Solids {
		if b := &s.Solids[i]; b.Part.Frame == furniture.OnWall {
			n.take(geom.BoxGap(edge, b.Box), b.Part.ID, e.side)
		}
	}
	if math.IsInf(n.gap, 1) {
		return nil
	}
	return []Reading{{At: e.side + ".shelf", Rows: wallGapRows[:1], Have: n.gap, Parts: append([]string{n.part}, e.part...), Edge: "to " + n.part}}
}

// mattressToRail returns the gap between the upper mattress and the rail on the wall side, the mattress pushed to the front of its frame.
func (s *Scene) mattressToRail() (Reading, bool) {
	for i := range s.Bed.Guards {
		if g := &s.Bed.Guards[i]; g.Side == "wall" {
			m := &s.Bed.Upper.Mattress
			inner := s.plan().topBoards[i][0]
			play := s.Bed.Inside.Wide - 2*m.Half.Y
			gap := inner.Y - (m.C.Y + m.Half.Y) + play/2
			return Reading{At: "mattress", Rows: wallGapRows[:1], Have: gap, Parts: append([]string{"mattress.upper"}, g.Parts...), Edge: "mattress to the rail"}, true
		}
	}
	return Reading{}, false
}
