package fit

import (
	"math"

	"bunkwright/furniture"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var stands = Question{
	ID:       "stands",
	Sentence: "Does the bed stand where it is put?",
	Group:    Build,
	Why:      "A bed that is a finger too long, or that meets trim, a casing or the slope, does not go where the drawing has it.",
	How: "Least distance of any part from walls (their lean and bow), baseboards, casings, heaters, furniture that stays, beams, ceiling, " +
		"fans and lights over it; where they overlap, minus the depth. The wall that the bed is pressed to is counted from its nearest point, so it never clashes by itself; " +
		"a baseboard holds the bed off unless the posts are notched round it. A baseboard that nobody read is asked for where a low part is less " +
		"than 40 mm off its wall; a casing, where a part is less than 40 mm off its wall and level with the opening or less than 200 mm beside, over or " +
		"under it; a sill board, where a part is less than 200 mm off the wall at its height.",
	Depends: Standing | FarLean | FarTrim | Ceiling | Doors | Windows | Heaters | Fans | Lights | Furniture,
	Propose: []Driver{Slide, DeckDown, ShelfDown, ShelfAlong, Notch, Mirrored, LadderEnd, OtherWall},
	Measure: func(s *Scene) Finding { return s.standsThere() },
}

var standRows = []string{"own-stands"}

func (s *Scene) standsThere() Finding {
	if !s.Stands {
		return Finding{Readings: []Reading{ask("walls", s.Wants, standRows...)}}
	}
	out := append(s.fromWalls(), s.fromTrim(), s.fromThings(), s.underCeiling(), s.fromClimbables())
	return s.traced(Finding{Readings: append(out, s.campHeights()...)})
}

// reading makes a reading of the least distance; where nothing is near there is nothing to clash with.
func (n nearestTo) reading(at, nothing string) Reading {
	if math.IsInf(n.gap, 1) {
		return Reading{At: at, Rows: standRows, Skip: nothing}
	}
	return Reading{At: at, Rows: standRows, Have: n.gap, Parts: []string{n.part, n.what}, Edge: n.part + " to " + n.what}
}

// fromWalls measures every solid against every wall it faces. The walls that the bed is set against make one reading: how far it is from
// them is chosen and sure, and would hide how unsure the distance from another wall is. Each other wall has its own.
func (s *Scene) fromWalls() []Reading {
	out, set, end := make([]Reading, 1, len(s.Walls)+8), farOff(), s.pushedTo()
	for k := range s.Walls {
		w := &s.Walls[k]
		if w == s.At || w == end {
			s.fromWall(w, &set)
			continue
		}
		n := farOff()
		s.fromWall(w, &n)
		out = append(out, n.reading(w.Name, "the bed does not face it"))
	}
	out[0] = set.reading("walls", "")
	return out
}

// pushedTo returns the wall that an end of the bed is pushed against: that at the end its distance is counted from, where it is 0.
func (s *Scene) pushedTo() *Wall {
	p, n := s.Job.Place, len(s.Walls)
	if p.Along != 0 {
		return nil
	}
	fromEnd, k := p.From != "" && p.From == string([]rune(s.At.Key)[1]), s.At.Index+n-1
	if fromEnd {
		k = s.At.Index + 1
	}
	other := &s.Walls[k%n]
	if !s.convexAt(s.At, fromEnd) || math.Abs(other.In.Dot(s.At.Dir)) < 0.5 {
		return nil
	}
	return other
}

// fromWall measures every solid against one wall where it faces it.
func (s *Scene) fromWall(w *Wall, n *nearestTo) {
	most := s.Nearest(w, s.Feet, s.All.Hi.Z)
	if far := w.noNearer(&s.All) - most; s.brief && far > s.enough(standRows[0]) {
		n.gap = far
		return
	}
	bound := func(b *Solid) float64 { return w.noNearer(b) - most }
	s.nearestFirst(bound, math.Inf(-1), &n.gap, func(b *Solid) {
		lo, hi, near, _ := w.level(&b.Box)
		if b.Part.Frame == furniture.OnWall && w == s.At || hi < 0 || lo > w.Len || s.beyond(w, b) {
			return
		}
		n.take(near-s.Nearest(w, b.Lo.Z, b.Hi.Z), b.Part.ID, w.Name)
	})
}

// noNearer returns a distance out from the wall's middle line that no point of a solid falls short of, from its bounds.
func (w *Wall) noNearer(b *Solid) float64 {
	x, y := (b.Lo.X+b.Hi.X)/2-w.A.X, (b.Lo.Y+b.Hi.Y)/2-w.A.Y
	reach := math.Abs(w.In.X)*(b.Hi.X-b.Lo.X)/2 + math.Abs(w.In.Y)*(b.Hi.Y-b.Lo.Y)/2
	return x*w.In.X + y*w.In.Y - reach
}

// beyond tells whether a solid lies on the far side of a wall but inside the room all the same: in another arm of it.
func (s *Scene) beyond(w *Wall, b *Solid) bool {
	_, out := w.Along(b.Box.C.XY())
	return out < 0 && s.Outline.Contains(b.Box.C.XY())
}

// lowTrim is over any baseboard, mm.
const lowTrim = 600

// trimNear is how near a low part must come to a wall for an unread baseboard to matter, mm.
const trimNear = 40

// fromTrim measures low parts against baseboards, and all parts against the casings of doors and windows.
func (s *Scene) fromTrim() Reading {
	n, want := farOff(), ""
	for k := range s.Walls {
		w := &s.Walls[k]
		most := s.Nearest(w, s.Feet, s.All.Hi.Z)
		if w.BaseDeep > 0 {
			most += w.BaseDeep
		}
		if w.noNearer(&s.All)-most >= min(n.gap, trimNear) {
			continue
		}
		for i := range s.Solids {
			b := &s.Solids[i]
			if b.Lo.Z >= lowTrim || w.noNearer(b)-most >= min(n.gap, trimNear) || s.beyond(w, b) {
				continue
			}
			if ask := s.baseboard(w, b, &n); ask != "" {
				want = ask
			}
		}
	}
	want = or(want, s.casings(&n))
	r := n.reading("trim", "no trim is near")
	if r.Have >= 0 && want != "" {
		r.Ask, r.Skip = want, ""
	}
	return r
}

// baseboard measures one solid against one wall's baseboard; it returns what must be read first.
func (s *Scene) baseboard(w *Wall, b *Solid, n *nearestTo) (want string) {
	lo, hi, near, _ := w.level(&b.Box)
	if hi < 0 || lo > w.Len {
		return ""
	}
	low := b.Lo.Z < w.BaseHigh || math.IsNaN(w.BaseHigh) && b.Lo.Z < 200
	if !low {
		return ""
	}
	gap := near - s.Nearest(w, b.Lo.Z, b.Hi.Z)
	switch {
	case s.clearsNotch(w, b.Part) || w == s.At && !s.Job.Place.Gap.Set:
		return "" // the baseboard of its own wall holds the bed off where no gap is set
	case math.IsNaN(w.BaseDeep + w.BaseHigh):
		if gap < trimNear {
			return "how high and how thick is the baseboard on wall " + w.Key + "?"
		}
	case w.BaseDeep > 0:
		n.take(gap-w.BaseDeep, b.Part.ID, "baseboard."+w.Key)
	}
	return ""
}

// clearsNotch tells whether a part is notched round the baseboard of the wall the bed stands at.
func (s *Scene) clearsNotch(w *Wall, p *furniture.Part) bool {
	if w != s.At {
		return false
	}
	for _, c := range p.Cuts {
		if c.Kind == furniture.Notch && c.Along.MM() >= w.BaseHigh && c.Deep.MM() >= w.BaseDeep {
			return true
		}
	}
	return false
}

// box returns an upright box on a wall: along it, out from its middle line, and from z0 to z1.
func (w *Wall) box(along0, along1, out0, out1, z0, z1 float64) geom.Box {
	t := geom.NewPlace(math.Atan2(w.Dir.Y, w.Dir.X), w.A.At(0))
	return t.Box(geom.NewBox(geom.V3{X: along0, Y: -out1, Z: z0}, geom.V3{X: along1, Y: -out0, Z: z1}))
}

// nearBox measures every solid against a box.
func (s *Scene) nearBox(n *nearestTo, box geom.Box, what string) {
	lo, hi := box.Bounds()
	if apart := boundsGap(lo, hi, s.All.Lo, s.All.Hi); apart > 0 && apart >= n.gap {
		return
	}
	bound := func(b *Solid) float64 { return boundsGap(lo, hi, b.Lo, b.Hi) }
	s.nearestFirst(bound, 0, &n.gap, func(b *Solid) { n.take(geom.BoxGap(box, b.Box), b.Part.ID, what) })
}

// fromThings measures every solid against heaters and furniture that stays.
func (s *Scene) fromThings() Reading {
	n, want := farOff(), s.askFurniture()
	add := func(box geom.Box, ok bool, what string) {
		if ok {
			s.nearBox(&n, box, what)
		} else {
			want = or(want, askBox(what))
		}
	}
	for i, what := range s.keys.pieces {
		box, ok := s.pieceBox(i)
		add(box, ok, what)
	}
	for i, what := range s.keys.heaters {
		box, ok := s.heaterBox(i)
		add(box, ok, what)
	}
	r := n.reading("things", "nothing else stands in the room")
	if r.Have >= 0 && want != "" {
		r.Ask, r.Skip = want, ""
	}
	return r
}

// or returns the first that says something.
func or(a, b string) string {
	if a != "" {
		return a
	}
	return b
}

// underCeiling measures every solid against the ceiling, and the beams, fans and lights over it. Nothing lies lower than the lowest point over the whole
// bed, so most solids need not be looked at.
func (s *Scene) underCeiling() Reading {
	n, want := farOff(), ""
	all, steepest := s.lowestOver(patch(s.foot())), s.steepest()
	for i := len(s.Solids) - 1; i >= 0; i-- { // what hangs on the wall comes last and is highest
		b := &s.Solids[i]
		over := all.Z - b.Hi.Z
		if all.Ask == "" && b.Part.Frame != furniture.OnWall && min(over, over/steepest) >= n.gap {
			continue
		}
		want = or(s.closestOver(b, &n), want)
	}
	if math.IsInf(n.gap, 1) || (n.gap >= 0 && want != "") {
		return ask("ceiling", want, standRows...)
	}
	return n.reading("ceiling", "")
}

// closestOver measures one solid against what lies over it, square to each face of the ceiling; it returns what must be read first.
func (s *Scene) closestOver(b *Solid, n *nearestTo) (want string) {
	p := patch(b.Box.Footprint())
	want = s.facesOver(p, func(i int, z float64) {
		n.take((z-b.Hi.Z)/s.steep(i), b.Part.ID, s.keys.ceilings[i])
	})
	o := Overhead{Z: math.Inf(1)}
	s.hungOver(p, &o)
	n.take(o.Z-b.Hi.Z, b.Part.ID, o.What)
	return or(o.Ask, want)
}

// lowestOver returns the lowest of ceiling, beams, fans and lights over a patch.
func (s *Scene) lowestOver(p Patch) Overhead {
	o := s.ceilingOver(p)
	s.hungOver(p, &o)
	return o
}

// hungOver adds the beams, fans and lights over a patch; a light on a wall is left out, since a part may well stand over it and nobody
// reads how high it ends.
func (s *Scene) hungOver(p Patch, o *Overhead) {
	s.beamsOver(p, o)
	s.fansOver(p, o)
	for i := range s.Job.Room.Lights {
		if s.Job.Room.Lights[i].Kind != "wall" {
			s.lightOver(i, p, o)
		}
	}
}

// fromClimbables answers whether furniture that can be climbed stands beside the bed.
func (s *Scene) fromClimbables() Reading {
	r := Reading{At: "climbable", Rows: []string{"nz-climbable-furniture"}, Yes: true}
	if r.Ask = s.askFurniture(); r.Ask != "" {
		return r
	}
	foot := s.foot()
	for i := range s.Job.Room.Pieces {
		refs, what := &s.Survey.Layout.Pieces[i], s.keys.pieces[i]
		p, ok := s.rect(refs.SpotRefs, refs.Wide, refs.Deep)
		switch {
		case !ok:
			r.Ask = "where does " + what + " stand?"
		case planGap(foot, p) >= yardstick.Figure(yardstick.BedBeside):
		case s.Job.Room.Pieces[i].Climb == "":
			r.Ask = "can " + what + " be climbed?"
		case s.Job.Room.Pieces[i].Climb == "yes":
			r.Yes, r.Edge, r.Parts = false, what+" stands beside the bed", []string{what}
		}
	}
	return r
}

// campHeights holds heights over the floor against the rules of camps and worker housing, which are only shown.
func (s *Scene) campHeights() []Reading {
	return []Reading{
		{At: "top-bunk", Have: s.Feet + s.Bed.Upper.Top, Rows: []string{"mi-camp-topmax"}},
		{At: "under-bed", Have: s.Feet + s.Bed.Lower.Frame, Rows: []string{"or-camp-underbed", "md-camp-underbed"}},
		{At: "under-mattress", Have: s.Feet + s.Bed.Lower.Top, Rows: []string{"wa-labor-underbed"}},
	}
}
