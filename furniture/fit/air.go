package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/survey"
)

var air = Question{
	ID:       "air",
	Sentence: "Are registers and returns left open?",
	Group:    Build,
	Why:      "A covered register leaves the room cold, and a covered return leaves the furnace short of air.",
	How: "Share of each register or return that is covered: in the floor by what of the bed is lower than own-air-height over it, in the " +
		"ceiling by what is nearer to it than that, in a wall by what is nearer than that to the wall, looked at square to it. Drawers are " +
		"shut. A register that is clear of the bed by less than twice the uncertainty of its place is too close to call.",
	Depends: Standing | FarLean | Registers | Ceiling,
	Propose: []Driver{Slide, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.air() },
}

const (
	airClear = "own-air-clear"
	airCover = "register-cover"
)

// CoveredShare returns the share of an area that is covered, from what is left free of it, both in one unit.
func CoveredShare(area, free float64) float64 { return 1 - free/area }

// grille is a register or return.
type grille struct {
	key  string
	rec  *room.Register
	refs *survey.RegisterRefs
	wall *Wall
	plan geom.Polygon   // in floor and ceiling
	face geom.Rectangle // in a wall
}

func (s *Scene) air() Finding {
	list := s.Job.Room.Registers
	switch {
	case s.unlisted(len(list), "register"):
		return Finding{Readings: []Reading{ask("register", "is there a register or return in the floor, a wall or the ceiling?", airClear, airCover)}}
	case len(list) == 0:
		return absent("there is no register or return")
	case !s.Stands:
		return Finding{Readings: []Reading{ask("register", s.Wants, airClear, airCover)}}
	}
	var f Finding
	lowest := math.Inf(1)
	for i := range list {
		g, what := s.grille(i)
		r := Reading{At: g.key, Rows: []string{airClear}, Ask: what, Parts: []string{g.key}}
		if what == "" {
			lowest = min(lowest, s.coverGrille(&g, &r))
		}
		cover := Reading{At: g.key + ".cover", Rows: []string{airCover}, Ask: r.Ask, Yes: r.Have > touch, Edge: r.Edge, Parts: r.Parts}
		f.Readings = append(f.Readings, r, cover)
	}
	if !math.IsInf(lowest, 1) {
		f.Figures = []Figure{{"free_height", lowest, "mm"}}
	}
	return f
}

// grille finds where a register or return is, or what is missing for it.
func (s *Scene) grille(i int) (g grille, what string) {
	rec, refs := &s.Job.Room.Registers[i], &s.Survey.Layout.Registers[i]
	g = grille{key: s.keys.registers[i], rec: rec, refs: refs, wall: s.wallOf(refs.Wall)}
	switch {
	case g.wall == nil:
		return g, askWall(g.key)
	case rec.In == "":
		return g, fmt.Sprintf("is %s by wall %s in the floor, in the wall or in the ceiling?", g.key, rec.Wall)
	case s.unread(refs.At):
		return g, askAlong("the near edge of", g.key, rec.Wall, rec.From)
	case s.unread(refs.Wide):
		return g, askSize("wide", g.key, rec.Wall)
	case s.unread(refs.Deep):
		return g, askSize(map[bool]string{true: "high", false: "deep"}[rec.In == "wall"], g.key, rec.Wall)
	case rec.In == "wall" && s.unread(refs.Height):
		return g, askHigh("the lower edge of", g.key, rec.Wall)
	case rec.In != "wall" && s.unread(refs.Out):
		return g, fmt.Sprintf("how far out from wall %s is the near edge of %s?", rec.Wall, g.key)
	}
	g.plan, _ = s.rect(refs.SpotRefs, refs.Wide, refs.Deep)
	if rec.In == "wall" {
		lo := g.wall.from(refs.FromEnd, s.v(refs.At))
		if refs.FromEnd {
			lo -= s.v(refs.Wide)
		}
		from, high := s.v(refs.Height), s.v(refs.Deep)
		g.face = geom.Rectangle{Lo: geom.V2{X: lo, Y: from}, Hi: geom.V2{X: lo + s.v(refs.Wide), Y: from + high}}
	}
	return g, ""
}

// coverGrille fills in the share that is covered and returns the lowest part of the bed over a register in the floor.
func (s *Scene) coverGrille(g *grille, r *Reading) (lowest float64) {
	lowest = math.Inf(1)
	high := yardstick.Figure(yardstick.AirHeight)
	switch g.rec.In {
	case "wall":
		s.coverFace(g, r, high)
		return lowest
	case "ceiling":
		o := s.ceilingOver(patch(g.plan))
		if o.Ask != "" {
			r.Ask = o.Ask
			return lowest
		}
		s.coverPlan(g, r, region{lo: geom.V3{Z: o.Z - high}, hi: geom.V3{Z: o.Z}})
		return lowest
	}
	s.coverPlan(g, r, region{lo: geom.V3{Z: math.Inf(-1)}, hi: geom.V3{Z: high}})
	s.things(g.over(region{lo: everywhere.lo, hi: everywhere.hi}, 0), func(t *Solid) {
		if t.Lo.Z < lowest && planGap(g.plan, t.Box.Footprint()) == 0 {
			lowest = t.Lo.Z
		}
	})
	return lowest
}

// over narrows a stretch of height to what is over the register or within some distance of it.
func (g *grille) over(z region, beside float64) region {
	lo, hi := g.plan.Bounds()
	return region{lo: geom.V3{X: lo.X - beside, Y: lo.Y - beside, Z: z.lo.Z}, hi: geom.V3{X: hi.X + beside, Y: hi.Y + beside, Z: z.hi.Z}}
}

// coverPlan takes from a register in floor or ceiling what lies over it between two heights.
func (s *Scene) coverPlan(g *grille, r *Reading, z region) {
	left := cover{free: []geom.Polygon{g.plan}, gap: math.Inf(1)}
	s.things(g.over(z, s.placeDoubt(g)), func(t *Solid) {
		if t.Lo.Z >= z.hi.Z || t.Hi.Z <= z.lo.Z {
			return
		}
		foot := t.Box.Footprint()
		if left.take(foot, planGap(g.plan, foot)) {
			r.covered(g, t.Part.ID)
		}
	})
	s.share(r, g, g.plan.Area(), &left)
}

// coverFace takes from a grille in a wall what is close before it.
func (s *Scene) coverFace(g *grille, r *Reading, deep float64) {
	in, beside := g.face, s.placeDoubt(g)
	left := cover{free: []geom.Polygon{geom.Rect(in.Lo.X, in.Lo.Y, in.Hi.X, in.Hi.Y)}, gap: math.Inf(1)}
	wider := geom.Rectangle{Lo: geom.V2{X: in.Lo.X - beside, Y: in.Lo.Y}, Hi: geom.V2{X: in.Hi.X + beside, Y: in.Hi.Y}}
	for _, sh := range s.shades(g.wall, wider, deep) {
		gap := max(0, max(in.Lo.X-sh.Hi.X, sh.Lo.X-in.Hi.X))
		if left.take(geom.Rect(sh.Lo.X, sh.Lo.Y, sh.Hi.X, sh.Hi.Y), gap) {
			r.covered(g, sh.name)
		}
	}
	s.share(r, g, in.Area(), &left)
	if what := s.thickBefore(g.wall, in, deep); what != "" {
		r.Ask = what
	}
}

// cover is what is left free of a register, and how far away the nearest thing is that does not lie over it.
type cover struct {
	free []geom.Polygon
	gap  float64
}

// take takes away what lies under an outline; it tells whether the outline is over the register at all.
func (c *cover) take(over geom.Polygon, gap float64) bool {
	c.gap = min(c.gap, gap)
	if gap > 0 {
		return false
	}
	var rest []geom.Polygon
	for _, p := range c.free {
		rest = append(rest, p.Without(over.Lines()...)...)
	}
	c.free = rest
	return true
}

func (r *Reading) covered(g *grille, name string) {
	r.Parts = append(r.Parts, name)
	r.Edge = name + " covers " + g.key
}

// share sets the share that is covered, rounding apart; a register that is clear by less than its place is known is too close to call.
func (s *Scene) share(r *Reading, g *grille, area float64, left *cover) {
	sum := 0.0
	for _, p := range left.free {
		sum += p.Area()
	}
	if r.Have = CoveredShare(area, sum); r.Have >= 1e-9 {
		return
	}
	r.Have, r.Edge = 0, ""
	if left.gap > 0 && left.gap < s.placeDoubt(g) {
		r.Cap = fmt.Sprintf("%s is nearer to the bed than its place is known: read it again from corner %s", g.key, cornerOf(g.rec.Wall, g.rec.From))
	}
}

// placeDoubt is how far off a register may lie: twice the uncertainty of its place. A share of nothing does not move with the place, so
// this is asked for here.
func (s *Scene) placeDoubt(g *grille) float64 {
	return 2 * math.Hypot(s.Survey.Sigma(g.refs.At), s.Survey.Sigma(g.refs.Out))
}
