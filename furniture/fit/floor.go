package fit

import (
	"math"
	"slices"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"
)

// walkHigh is up to where a thing is in the way of somebody who walks, mm: the clear height of a doorway, 80 in (ADA Standards 404.2).
const walkHigh = 2032

// A stander is something in the way on the floor: what it is, and its outline, convex; two points for a wall.
type stander struct {
	what    string
	outline geom.Polygon
	low     float64 // how high over the floor it begins, mm
	own     bool    // it belongs to the bed
	drawer  bool    // and is one of its drawers
}

// bedPlan is what does not change while the bed stands somewhere else.
type bedPlan struct {
	of          *bunk.Bed
	standers    []stander    // in the bed's own axes: the bed itself first, then what stands out from it, drawers shut
	topBoards   [][2]geom.V3 // by guardrail: the corners of its top board
	out         []bool       // by part: it reaches out of the bed's outline
	secondPlane float64      // how far behind the climbing end the next part lies
}

// plan works the bed's own plan out once.
func (s *Scene) plan() *bedPlan {
	if s.bedPlan.of == s.Bed {
		return &s.bedPlan
	}
	p := bedPlan{of: s.Bed, out: make([]bool, len(s.Bed.Parts)), secondPlane: secondPlane(s.Bed)}
	p.standers = append(p.standers, stander{what: "bed", outline: s.Bed.Foot, own: true})
	lo, hi := s.Bed.Foot.Bounds()
	var names []string
	points, low, pulls := map[string][]geom.V2{}, map[string]float64{}, map[string]bool{}
	drawers := drawerParts(s.Bed)
	for i := range s.Bed.Parts {
		part := &s.Bed.Parts[i]
		l, h := part.Box.Bounds()
		p.out[i] = l.X < lo.X-1e-6 || h.X > hi.X+1e-6 || l.Y < lo.Y-1e-6 || h.Y > hi.Y+1e-6
		if !p.out[i] || part.Frame != furniture.OnBed || l.Z >= walkHigh {
			continue
		}
		if points[part.Assembly] == nil {
			names = append(names, part.Assembly)
			low[part.Assembly] = l.Z
		}
		low[part.Assembly] = min(low[part.Assembly], l.Z)
		pulls[part.Assembly] = pulls[part.Assembly] || slices.Contains(drawers, part.ID)
		for _, c := range part.Corners() {
			points[part.Assembly] = append(points[part.Assembly], c.XY())
		}
	}
	for _, n := range names {
		p.standers = append(p.standers, stander{n, geom.Hull(points[n]), low[n], true, pulls[n]})
	}
	for i := range s.Bed.Guards {
		lo, hi := topBoard(s.Bed, &s.Bed.Guards[i])
		p.topBoards = append(p.topBoards, [2]geom.V3{lo, hi})
	}
	s.bedPlan = p
	return &s.bedPlan
}

// drawerParts returns the parts of all drawers of the bed.
func drawerParts(b *bunk.Bed) (out []string) {
	for i := range b.Drawers {
		out = append(out, b.Drawers[i].Parts...)
	}
	return out
}

// bedOnFloor returns what of the bed is in the way on the floor, drawers shut.
func (s *Scene) bedOnFloor() []stander {
	plan := s.plan().standers
	out := make([]stander, len(plan))
	for i, p := range plan {
		out[i] = p
		out[i].outline = s.inRoom(p.outline)
	}
	return out
}

// inRoom moves an outline from the bed's own axes into the room; it stays anticlockwise where the bed is mirrored.
func (s *Scene) inRoom(p geom.Polygon) geom.Polygon {
	out := make(geom.Polygon, len(p))
	for i, q := range p {
		if s.ToRoom.Mirrored {
			out[len(p)-1-i] = s.ToRoom.Point(q.At(0)).XY()
		} else {
			out[i] = s.ToRoom.Point(q.At(0)).XY()
		}
	}
	return out
}

// wallsOnFloor returns each wall as a straight line, where it comes nearest over the height that somebody walks in.
func (s *Scene) wallsOnFloor() []stander {
	if s.facts.walls {
		return s.facts.wallList
	}
	out := make([]stander, len(s.Walls))
	for i := range s.Walls {
		w := &s.Walls[i]
		in := s.Nearest(w, 0, walkHigh)
		out[i] = stander{what: w.Name, outline: geom.Polygon{w.Point(0, in), w.Point(w.Len, in)}}
	}
	s.facts.walls, s.facts.wallList = true, out
	return out
}

// across returns the walls that a strip may end at. A wall that runs along it is beside it, whatever its lean: where such a wall would
// stand in the strip, another one comes before.
func (s *Scene) across(b strip) []stander {
	all := s.wallsOnFloor()
	out := make([]stander, 0, len(all))
	for i := range s.Walls {
		if math.Abs(s.Walls[i].In.Dot(b.out)) > alongStrip {
			out = append(out, all[i])
		}
	}
	return out
}

// alongStrip is the sine of the angle up to which a wall runs along a strip: about 6 degrees, more than any corner is out of square.
const alongStrip = 0.1

// thingsOnFloor returns furniture that stays and heaters. ask is set where one is there whose place or size nobody read, or where
// nobody said whether there is any furniture.
func (s *Scene) thingsOnFloor() (out []stander, ask string) {
	if !s.facts.things {
		s.facts.thingList, s.facts.thingAsk = s.findThings()
		s.facts.things = true
	}
	return slices.Clip(s.facts.thingList), s.facts.thingAsk
}

func (s *Scene) findThings() (out []stander, ask string) {
	l, r := &s.Survey.Layout, &s.Job.Room
	ask = s.askFurniture()
	add := func(what string, p geom.Polygon, ok bool) {
		if ok {
			out = append(out, stander{what: what, outline: p})
		} else if ask == "" {
			ask = askPlan(what)
		}
	}
	for i := range r.Pieces {
		p, ok := s.rect(l.Pieces[i].SpotRefs, l.Pieces[i].Wide, l.Pieces[i].Deep)
		add(s.keys.pieces[i], p, ok)
	}
	for i := range r.Heaters {
		p, ok := s.rect(l.Heaters[i].SpotRefs, l.Heaters[i].Wide, l.Heaters[i].Deep)
		add(s.keys.heaters[i], p, ok)
	}
	return out, ask
}

// askFurniture asks whether any furniture stays where the job neither lists it nor says that there is none.
func (s *Scene) askFurniture() string {
	if len(s.Job.Room.Pieces) == 0 && !s.Job.Room.Lacks("furniture") {
		return "does any furniture stay in the room?"
	}
	return ""
}

// askPlan asks where something stands on the floor, and how much of it it takes.
func askPlan(what string) string {
	return "where does " + what + " stand, and how wide and how deep is it?"
}

// askPieces asks for the first piece of furniture whose place or size in plan nobody read, or whether any stays at all.
func (s *Scene) askPieces() string {
	for i := range s.Survey.Layout.Pieces {
		refs := &s.Survey.Layout.Pieces[i]
		if _, ok := s.rect(refs.SpotRefs, refs.Wide, refs.Deep); !ok {
			return askPlan(s.keys.pieces[i])
		}
	}
	return s.askFurniture()
}

// stillUnread adds what is still to be asked about the floor, held against the rows of the first reading: what nobody read can take from the
// room that was measured but add nothing to it, so a place that is too small stays so.
func (s *Scene) stillUnread(want string, f Finding) Finding {
	if want != "" {
		f.Readings = append(f.Readings, ask("unread", want, f.Readings[0].Rows...))
	}
	return f
}

// onFloor returns everything in the way on the floor: walls, then the bed, then what else stands there.
func (s *Scene) onFloor() (all []stander, ask string) {
	things, ask := s.thingsOnFloor()
	if !s.facts.floor {
		s.facts.floor, s.facts.floorList = true, slices.Concat(s.wallsOnFloor(), s.bedOnFloor(), things)
	}
	return slices.Clip(s.facts.floorList), ask
}

// A strip is a band of floor that starts at a line and runs straight out from it.
type strip struct {
	from geom.V2 // middle of the line
	out  geom.V2 // unit direction
	half float64 // half its width, mm
}

// touching is the overlap in mm up to which things only touch: rounding.
const touching = 1e-6

// free returns how far the strip is free from its line, and what ends it.
func (b strip) free(all []stander) (depth float64, what string) {
	depth = math.Inf(1)
	for i := range all {
		if d, ok := b.reach(all[i].outline); ok && d < depth {
			depth, what = d, all[i].what
		}
	}
	return depth, what
}

// free returns how far a strip is free from its line, and what ends it. Where no wall lies ahead the line itself lies at or beyond a
// wall, and nothing is free.
func (s *Scene) free(b strip, all []stander) (depth float64, what string) {
	if depth, what = b.free(all); math.IsInf(depth, 1) {
		return 0, s.wallBy(b.from)
	}
	return depth, what
}

// wallBy names the wall nearest to a point.
func (s *Scene) wallBy(p geom.V2) (name string) {
	least := math.Inf(1)
	for i := range s.Walls {
		w := &s.Walls[i]
		if d, _ := geom.SegmentPoint(w.Point(0, 0), w.Point(w.Len, 0), p); d < least {
			least, name = d, w.Name
		}
	}
	return name
}

// reach returns how far from the line an outline begins within the strip, 0 where it lies on the line; ok is false where it is
// beside the strip or behind the line.
func (b strip) reach(p geom.Polygon) (depth float64, ok bool) {
	e := untouched
	for i := range p {
		b.edge(p[i], p[(i+1)%len(p)], &e)
	}
	return e.depth()
}

// reachSector is reach for a sector. Its chord lies within it, so that the arc is looked at for itself.
func (b strip) reachSector(c geom.Sector) (depth float64, ok bool) {
	e := untouched
	near, far := c.At(0), c.At(c.Angle)
	b.edge(c.Pin, near, &e)
	b.edge(near, far, &e)
	b.edge(far, c.Pin, &e)
	b.arc(c, &e)
	return e.depth()
}

// ends is where something begins and ends along a strip.
type ends struct{ least, most float64 }

var untouched = ends{math.Inf(1), math.Inf(-1)}

func (e *ends) take(d float64) { e.least, e.most = min(e.least, d), max(e.most, d) }

func (e *ends) depth() (depth float64, ok bool) {
	switch {
	case e.most <= touching:
		return 0, false
	case e.least < 0:
		return 0, true
	}
	return e.least, true
}

// edge takes in the part of an edge that lies within the strip.
func (b strip) edge(q, r geom.V2, e *ends) {
	q, r = b.seen(q), b.seen(r)
	if t0, t1 := within(q.Y, r.Y, b.half-touching); t0 < t1 {
		e.take(q.X + (r.X-q.X)*t0)
		e.take(q.X + (r.X-q.X)*t1)
	}
}

// arc takes in the part of a sector's arc that lies within the strip: where it crosses the strip's sides, and where it begins and ends.
func (b strip) arc(c geom.Sector, e *ends) {
	pin, half := b.seen(c.Pin), b.half-touching
	try := func(u, v float64) {
		if math.Abs(v) <= b.half && c.Spans(b.out.Mul(u-pin.X).Add(b.out.Left().Mul(v-pin.Y))) {
			e.take(u)
		}
	}
	try(pin.X-c.Radius, pin.Y)
	try(pin.X+c.Radius, pin.Y)
	for _, v := range [2]float64{-half, half} {
		if h := c.Radius*c.Radius - (v-pin.Y)*(v-pin.Y); h >= 0 {
			try(pin.X-math.Sqrt(h), v)
			try(pin.X+math.Sqrt(h), v)
		}
	}
}

// seen returns a point as the strip has it: x along it from its line, y across it.
func (b strip) seen(p geom.V2) geom.V2 {
	d := p.Sub(b.from)
	return geom.V2{X: d.Dot(b.out), Y: d.Dot(b.out.Left())}
}

// within returns the part of the way from a to b, 0 to 1, that lies between -half and half; t0 >= t1 where there is none.
func within(a, b, half float64) (t0, t1 float64) {
	if a == b {
		if math.Abs(a) > half {
			return 1, 0
		}
		return 0, 1
	}
	t0, t1 = (-half-a)/(b-a), (half-a)/(b-a)
	if t0 > t1 {
		t0, t1 = t1, t0
	}
	return max(0, t0), min(1, t1)
}
