package fit

import (
	"math"

	"bunkwright/furniture"
	"bunkwright/room/geom"
)

var wallGap = Question{
	ID:       "wall-gap",
	Sentence: "Is the gap along the wall closed?",
	Group:    Safety,
	Why:      "A gap beside the top barrier that lets a child's body through and holds the head is a trap.",
	How: "From the outer top edge of each top barrier, ends too, to every wall it faces, to slopes, ceiling and shelves beside it: the shortest straight " +
		"line, square to walls and slopes; along a wall the widest place counts. And from the mattress to the rail on the wall side.",
	Caution: "Measure the gap again once the bed stands, all along the wall.",
	Depends: Standing | FarLean | Ceiling,
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
	out  geom.V2
	part []string
}

func (s *Scene) wallGaps() Finding {
	if !s.Stands {
		return Finding{Readings: []Reading{ask("wall", s.Wants, wallGapRows...)}}
	}
	var f Finding
	for _, e := range s.outerEdges() {
		f.Readings = append(f.Readings, s.gapsOf(e)...)
	}
	if r, ok := s.mattressToRail(); ok {
		f.Readings = append(f.Readings, r)
	}
	if len(f.Readings) == 0 {
		return absent("there is no top barrier")
	}
	return s.traced(f)
}

// outerEdges returns the outer top edge of each top barrier.
func (s *Scene) outerEdges() []outerEdge {
	var out []outerEdge
	lo, hi := s.Bed.Foot.Bounds()
	for i := range s.Bed.Guards {
		g := &s.Bed.Guards[i]
		e := outerEdge{side: g.Side, part: g.Parts}
		var a, b geom.V3
		var d geom.V3
		switch g.Side {
		case "wall":
			a, b, d = geom.V3{X: g.From, Y: hi.Y, Z: g.Top}, geom.V3{X: g.To, Y: hi.Y, Z: g.Top}, geom.V3{Y: 1}
		case "front":
			a, b, d = geom.V3{X: g.From, Y: lo.Y, Z: g.Top}, geom.V3{X: g.To, Y: lo.Y, Z: g.Top}, geom.V3{Y: -1}
		case "left":
			a, b, d = geom.V3{X: lo.X, Y: hi.Y, Z: g.Top}, geom.V3{X: lo.X, Y: lo.Y, Z: g.Top}, geom.V3{X: -1}
		default:
			a, b, d = geom.V3{X: hi.X, Y: hi.Y, Z: g.Top}, geom.V3{X: hi.X, Y: lo.Y, Z: g.Top}, geom.V3{X: 1}
		}
		e.a, e.b, e.out = s.ToRoom.Point(a), s.ToRoom.Point(b), s.ToRoom.Dir(d).XY()
		out = append(out, e)
	}
	return out
}

// gapsOf measures from one edge to the walls it faces, the ceiling over it and the shelves beside it.
func (s *Scene) gapsOf(e outerEdge) []Reading {
	var out []Reading
	for i := range s.Walls {
		w := &s.Walls[i]
		if gap, faces := s.edgeToWall(e, w); faces {
			out = append(out, Reading{At: e.side + "." + w.Key, Rows: wallGapRows, Have: gap, Parts: append([]string{wallKey(w)}, e.part...), Edge: "to " + wallKey(w)})
		}
	}
	for i := range s.Survey.Layout.Ceilings {
		if gap, ok := s.edgeToFace(e, i); ok {
			r := Reading{At: e.side + "." + s.ceilingKeys[i], Rows: wallGapRows[:1], Have: gap, Parts: append([]string{s.ceilingKeys[i]}, e.part...), Edge: "to " + s.ceilingKeys[i]}
			if math.IsNaN(gap) {
				r.Ask = "how does " + s.ceilingKeys[i] + " lie? read its height at one more point"
			}
			out = append(out, r)
		}
	}
	return append(out, s.edgeToShelves(e)...)
}

// facing is the cosine from which an edge faces a wall.
const facing = 0.7

// edgeToWall returns the widest gap from an edge to a wall that it faces, at the edge's own height.
func (s *Scene) edgeToWall(e outerEdge, w *Wall) (gap float64, faces bool) {
	a, outA := w.Along(e.a.XY())
	b, outB := w.Along(e.b.XY())
	if e.out.Dot(w.In) > -facing || math.Max(a, b) < 0 || math.Min(a, b) > w.Len {
		return 0, false
	}
	near := math.Max(outA, outB) - s.Furthest(w, e.a.Z, e.a.Z)
	return near, near > -touching
}

// edgeToFace returns the shortest distance from an edge to a face of the ceiling: square to it, at whichever end it is over and comes
// nearest.
func (s *Scene) edgeToFace(e outerEdge, i int) (gap float64, ok bool) {
	c := &s.Job.Room.Ceilings[i]
	f := s.Survey.Layout.Ceilings[i]
	square := math.Sqrt(1 + s.v(f.SlopeX)*s.v(f.SlopeX) + s.v(f.SlopeY)*s.v(f.SlopeY))
	gap = math.Inf(1)
	for _, p := range [2]geom.V3{e.a, e.b} {
		if c.Strip != "" || c.Corners != "" { // only where it is over the edge
			if _, covers := s.faceOver(i, disc(p.XY(), 1)); !covers {
				continue
			}
		}
		gap, ok = math.Min(gap, (s.faceHeight(i, p.XY())-p.Z)/square), true
	}
	return gap, ok
}

// edgeToShelves measures to what hangs on the wall and lies over or beside the edge.
func (s *Scene) edgeToShelves(e outerEdge) []Reading {
	n := farOff()
	edge := geom.NewBox(e.a, e.b)
	edge.Half = edge.Half.Add(geom.V3{X: touching, Y: touching, Z: touching})
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

// mattressToRail returns the gap between the upper mattress and the rail on the wall side, pushed to the front.
func (s *Scene) mattressToRail() (Reading, bool) {
	for i := range s.Bed.Guards {
		if g := &s.Bed.Guards[i]; g.Side == "wall" {
			gap := s.Bed.Inside.Wide - s.Bed.Upper.Mattress.Half.Y*2
			return Reading{At: "mattress", Rows: wallGapRows[:1], Have: gap, Parts: append([]string{"mattress.upper"}, g.Parts...), Edge: "mattress to the rail"}, true
		}
	}
	return Reading{}, false
}
