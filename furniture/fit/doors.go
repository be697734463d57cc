package fit

import (
	"math"
	"slices"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var doorsSwing = Question{
	ID:       "doors-swing",
	Sentence: "Does every door open fully?",
	Group:    Build,
	Why:      "A door that meets the bed opens part of the way for as long as the bed stands there.",
	How: "Each leaf is a rectangle of its thickness that turns about a pin on the room face, with its handle, to 90 degrees or as far as the " +
		"job says; its least distance from bed, ladder and shut drawers. At a clash: the leaf's width less the distance from the pin to " +
		"the nearest point in the way. A folding leaf counts as its half next to the pin; sliding doors, plain openings and doors that " +
		"open out sweep nothing in the room.",
	Depends: Standing | Doors | Leaves,
	Propose: []Driver{Slide, Mirrored, LadderEnd, LadderSide, DrawerTravel, OtherWall},
	Measure: func(s *Scene) Finding { return s.doorsSwing() },
}

// ClearWidth returns what a leaf leaves of its opening at 90 degrees: its width less its thickness, the stop and the gap at the
// hinges, all in one unit (US HUD Fair Housing Accessibility Guidelines, requirement 3(2): a 34 in leaf leaves 32 in).
func ClearWidth(leaf, thickness, stop, hingeGap float64) float64 {
	return leaf - thickness - stop - hingeGap
}

// A swing is what a door sweeps in the room: one leaf or two, up to a height.
type swing struct {
	what   string
	leaves []geom.Leaf
	high   float64
	ask    string // what is missing to tell
	none   string // why it sweeps nothing
}

// swings returns every door.
func (s *Scene) swings() []swing {
	if f := &s.facts; !f.swings {
		f.swings, f.swingList = true, make([]swing, len(s.Job.Room.Doors))
		for i := range f.swingList {
			f.swingList[i] = s.swing(i)
		}
	}
	return s.facts.swingList
}

func (s *Scene) swing(i int) swing {
	d, refs := &s.Job.Room.Doors[i], &s.Survey.Layout.Doors[i]
	g := swing{what: s.keys.doors[i], high: s.v(refs.High)}
	switch d.Kind {
	case "slides":
		g.none = "it slides"
	case "open":
		g.none = "it has no leaf"
	case "":
		g.ask = "how does " + g.what + " open?"
	}
	switch {
	case g.none != "" || g.ask != "":
	case d.Swing == "out":
		g.none = "it opens out of the room"
	case d.Swing == "" && d.Kind == "swings":
		g.ask = "does " + g.what + " open in or out?"
	case d.Hinge == "" && d.Leaves < 2:
		g.ask = "at which side are the hinges of " + g.what + "?"
	default:
		s.hang(i, &g)
	}
	return g
}

// hang adds the leaves of a door that opens into the room.
func (s *Scene) hang(i int, g *swing) {
	d, refs := &s.Job.Room.Doors[i], &s.Survey.Layout.Doors[i]
	w, lo, hi, ok := s.interval(refs.OnWallRefs, refs.Wide)
	thick := s.v(refs.LeafThick)
	if !ok || math.IsNaN(thick+g.high) {
		g.ask = "where is " + g.what + ", how wide, and how thick is its leaf?"
		return
	}
	leaf := geom.Leaf{In: w.In, Wide: hi - lo, Thick: thick, Opens: math.Pi / 2, Handle: s.v(refs.Handle)}
	if d.Opens > 0 {
		leaf.Opens = min(d.Opens, 180) * math.Pi / 180
	}
	if d.Leaves > 1 {
		leaf.Wide /= 2
	}
	leaf.HandleAt = leaf.Wide - s.v(refs.HandleIn)
	if d.Kind == "folds" {
		leaf.Wide, leaf.HandleAt = leaf.Wide/2, 0
	}
	near, far := leaf, leaf
	near.Pin, near.Shut = w.Point(lo, 0), w.Dir
	far.Pin, far.Shut = w.Point(hi, 0), w.Dir.Mul(-1)
	switch {
	case d.Leaves > 1:
		g.leaves = []geom.Leaf{near, far}
	case d.Hinge == string([]rune(w.Key)[0]):
		g.leaves = []geom.Leaf{near}
	default:
		g.leaves = []geom.Leaf{far}
	}
}

// stopped is where a door meets the bed, or how near it comes.
type stopped struct {
	gap   float64 // mm; negative: what the leaf lacks
	opens float64 // radians
	part  string  // nearest
	meets string  // met first; "" where nothing is met
}

// against turns a door against everything that stands up as high as its leaf.
func (s *Scene) against(g swing) stopped {
	out := stopped{gap: math.Inf(1), opens: math.Inf(1)}
	for _, l := range g.leaves {
		out.opens = min(out.opens, l.Opens)
		lo, hi := l.Bounds()
		reach := l.Reach()
		if far := max(boundsApart(lo, hi, &s.All), boundsApart(l.Pin, l.Pin, &s.All)-reach); s.brief && far > s.enough("own-door-clear") {
			out.gap = min(out.gap, far)
			continue
		}
		bound := func(b *Solid) float64 { return max(boundsApart(lo, hi, b), boundsApart(l.Pin, l.Pin, b)-reach) }
		s.nearestFirst(bound, 0, &out.gap, func(b *Solid) {
			plan := b.Box.Footprint()
			d := overhead(l.Gap(plan), b.Lo.Z-g.high)
			if d < out.gap {
				out.gap, out.part = d, b.Part.ID
			}
			if d < 0 {
				if a, ok := l.MeetsAt(plan); ok && a < out.opens {
					out.opens, out.meets = a, b.Part.ID
				}
			}
		})
	}
	return out
}

// boundsApart returns how far the bounds of a solid lie from what lies between two corners in plan, at least.
func boundsApart(lo, hi geom.V2, b *Solid) float64 {
	dx, dy := max(0, b.Lo.X-hi.X, lo.X-b.Hi.X), max(0, b.Lo.Y-hi.Y, lo.Y-b.Hi.Y)
	return math.Sqrt(dx*dx + dy*dy)
}

// overhead adds how far a solid stays over the door's head to its distance in plan.
func overhead(plan, over float64) float64 {
	switch {
	case over <= 0:
		return plan
	case plan <= 0:
		return over
	}
	return math.Hypot(plan, over)
}

// clearOf tells whether an outline surely lies beside all that a leaf sweeps.
func clearOf(l geom.Leaf, p geom.Polygon) bool {
	lo, hi := l.Bounds()
	a, b := p.Bounds()
	return a.X > hi.X || b.X < lo.X || a.Y > hi.Y || b.Y < lo.Y
}

func (s *Scene) doorsSwing() Finding {
	rows := []string{"own-door-clear"}
	if len(s.Job.Room.Doors) == 0 {
		return Finding{Readings: []Reading{ask("doors", "where is the door of the room, and how does it open?", "own-door-clear", "door-sweep")}}
	}
	var f Finding
	least := math.Inf(1)
	for _, g := range s.swings() {
		r := Reading{At: g.what, Rows: rows, Ask: g.ask, Skip: g.none, Parts: []string{g.what}}
		if r.Skip == "" && !s.Stands {
			r.Ask = s.Wants
		}
		if r.Ask == "" && r.Skip == "" {
			m := s.against(g)
			r.Have, r.Edge, r.Parts = m.gap, "nearest to "+m.part, []string{m.part, g.what}
			opens := m.opens * 180 / math.Pi
			if m.meets != "" {
				r.Edge = "meets " + m.meets + " at " + s.angleWords(opens)
			}
			f.Figures = append(f.Figures, Figure{"opens_to." + g.what, opens, string(yardstick.Degree)})
			if r.Have < least { // the door that is the worst off stands for all
				least = r.Have
				f.Figures = setFigure(f.Figures, Figure{"opens_to", opens, string(yardstick.Degree)})
			}
		}
		f.Readings = append(f.Readings, r)
	}
	f.Readings = append(f.Readings, s.sweep(f.Readings))
	return f
}

// setFigure puts a figure first, in place of one of its name.
func setFigure(list []Figure, f Figure) []Figure {
	if len(list) > 0 && list[0].Name == f.Name {
		list[0] = f
		return list
	}
	return append([]Figure{f}, list...)
}

func (s *Scene) angleWords(degrees float64) string {
	return Amount(degrees, yardstick.Degree, s.unit(), 0)
}

// sweep answers whether bed, ladder and pulled drawers are all clear of every door.
func (s *Scene) sweep(doors []Reading) Reading {
	r := Reading{At: "every door", Rows: []string{"door-sweep"}, Yes: true}
	if !slices.ContainsFunc(doors, func(d Reading) bool { return d.Skip == "" }) {
		r.Skip = doors[0].Skip
		return r
	}
	for _, d := range doors {
		switch {
		case d.Ask != "":
			r.Ask = d.Ask
		case d.Skip == "" && d.Have < 0 && r.Yes:
			r.Yes, r.Edge, r.Parts = false, d.At+" "+d.Edge, d.Parts
		}
	}
	for i := 0; s.Stands && i < len(s.Bed.Drawers) && !s.idle(r.Rows); i++ {
		if m := s.drawerMeets(i); m.door != "" && r.Yes {
			r.Yes, r.Edge, r.Parts = false, m.words(s), []string{s.Bed.Drawers[i].ID, m.door}
		}
	}
	return r
}
