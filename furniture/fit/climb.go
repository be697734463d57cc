package fit

import (
	"math"
	"slices"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var climbSteps = Question{
	ID:       "climb-steps",
	Sentence: "Can the climbing end be climbed, and no higher than it should?",
	Group:    Safety,
	Why:      "Footholds too far apart are jumped for; footholds too high up lead over the rail.",
	How:      "Height from one foothold to the next, the highest foothold over the floor, what is gripped, and the next plane behind the slats.",
	Caution:  "The heights are those of play equipment that stands over padding. Carpet is no fall protection.",
	Depends:  Floor,
	Propose:  []Driver{DeckDown, ClimbEnd},
	Measure:  func(s *Scene) Finding { return s.climbSteps() },
}

var (
	footholdRows = []string{"own-climb-foothold"}
	highestRows  = []string{"play-climb-attached", "play-climb-attached-young", "eu-fall-max"}
	gripRows     = []string{"au-grip-width", "play-grip-width"}
	loadRows     = []string{"eu-wall-hold-insert", "eu-wall-deflection"}
	freeRows     = []string{"play-climb-free"}
)

func (s *Scene) climbSteps() Finding {
	switch {
	case s.Bed == nil && s.Job.Bed.Climb != nil:
		return unbuilt("climbing-end", append(footholdRows[:1:1], gripRows...)...)
	case s.Bed == nil || s.Bed.Climb == nil:
		return absent("there is no climbing end")
	}
	c := s.Bed.Climb
	f := Finding{Readings: s.footholds(c)}
	s.addBuildTolerance(f.Readings)
	f.Readings = append(f.Readings,
		grip(c),
		Reading{At: "top", Rows: freeRows, Skip: "the climbing end is fixed to the bed"},
		Reading{At: "load", Rows: loadRows, Skip: loadWords(s.Bed.Sizes.Climb)})
	f.Readings = append(f.Readings, s.confirmations("climb-steps")...)
	if d := s.plan().secondPlane; !math.IsInf(d, 1) {
		f.Figures = append(f.Figures, Figure{"second_plane", d, "mm"})
	}
	return s.traced(f)
}

// grip measures what a hand closes round. What a bought hold is like to the hand is not known.
func grip(c *bunk.ClimbAt) Reading {
	r := Reading{At: "grip", Rows: gripRows, Have: c.Grip, Parts: c.Parts}
	if c.Grip <= 0 {
		r.Ask = "how wide is a hold where a hand grips it?"
	}
	return r
}

// footholds measures the largest step between footholds and the highest of them. Every level member that is deep enough is one.
func (s *Scene) footholds(c *bunk.ClimbAt) []Reading {
	var at []bunk.Foothold
	for _, h := range c.Footholds {
		if h.Deep >= yardstick.Figure(yardstick.FootholdDepth) {
			at = append(at, h)
		}
	}
	if len(at) == 0 {
		return []Reading{{At: "footholds", Rows: footholdRows, Have: s.Bed.Upper.Top, Parts: c.Parts, Edge: "there is no foothold below the deck"},
			{At: "highest", Rows: highestRows, Skip: "there is no foothold"}}
	}
	step := Reading{At: "footholds", Rows: footholdRows}
	step.Have, step.Edge, step.Parts = widestStep(at)
	highest := at[len(at)-1]
	return []Reading{step, {At: "highest", Rows: highestRows, Have: s.overFloor(highest.Top), Parts: []string{highest.Part}}}
}

// widestStep finds the largest height from one foothold to the next, lowest first, the step from the floor counted.
func widestStep(at []bunk.Foothold) (step float64, edge string, parts []string) {
	below := bunk.Foothold{Part: "floor"}
	step = math.Inf(-1)
	for _, h := range at {
		if d := h.Top - below.Top; d > step {
			step, edge, parts = d, "from "+below.Part+" to "+h.Part, []string{below.Part, h.Part}
		}
		below = h
	}
	return step, edge, parts
}

func loadWords(c *bunk.Climb) string {
	if c == nil || !c.Holds {
		return "there is no panel with holds"
	}
	return "it takes a load test of the panel, not a measurement"
}

// secondPlane returns how far behind the members of the climbing end the next part of the bed lies, where a foot or a head that goes
// between them would meet it; infinite where it is open. It is looked for half way between footholds, in the middle of the end.
func secondPlane(bed *bunk.Bed) float64 {
	c := bed.Climb
	if c == nil {
		return math.Inf(1)
	}
	lo, hi := boundsOf(bed, c.Parts)
	y, near := (lo.Y+hi.Y)/2, math.Inf(1)
	for i := range bed.Parts {
		p := &bed.Parts[i]
		if p.Frame != furniture.OnBed || math.Abs(y-p.Box.C.Y) > p.Box.Reach(geom.V3{Y: 1}) {
			continue
		}
		a, b := p.Box.Bounds()
		d := a.X - hi.X
		if c.End == bunk.Right {
			d = lo.X - b.X
		}
		if d >= 0 && d < near && betweenFootholds(c, a.Z, b.Z) && !slices.Contains(c.Parts, p.ID) {
			near = d
		}
	}
	return near
}

// betweenFootholds tells whether something from height lo to hi stands behind the middle between two footholds.
func betweenFootholds(c *bunk.ClimbAt, lo, hi float64) bool {
	for i := 1; i < len(c.Footholds); i++ {
		if z := (c.Footholds[i-1].Top + c.Footholds[i].Top) / 2; lo <= z && z <= hi {
			return true
		}
	}
	return false
}

// boundsOf returns the box, square to the bed, over some of its parts.
func boundsOf(bed *bunk.Bed, ids []string) (lo, hi geom.V3) {
	lo, hi = geom.V3{X: math.Inf(1), Y: math.Inf(1)}, geom.V3{X: math.Inf(-1), Y: math.Inf(-1)}
	for i := range bed.Parts {
		if p := &bed.Parts[i]; slices.Contains(ids, p.ID) {
			a, b := p.Box.Bounds()
			lo.X, lo.Y = min(lo.X, a.X), min(lo.Y, a.Y)
			hi.X, hi.Y = max(hi.X, b.X), max(hi.Y, b.Y)
		}
	}
	return lo, hi
}
