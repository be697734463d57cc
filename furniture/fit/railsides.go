package fit

import "bunkwright/furniture/job"

var railSides = Question{
	ID:       "rail-sides",
	Sentence: "Is there a rail wherever one is asked for?",
	Group:    Safety,
	Why:      "A bed stands off its wall sooner or later, and a child slips into the gap where no rail was thought needed.",
	How:      "Rails on each long side, sides with a rail with the ends counted, and where the rail is that runs the full length.",
	Caution:  "A wall beside the bed does not stand in for a rail: some texts let it, most do not.",
	Propose:  []Driver{RailAllRound},
	Measure:  func(s *Scene) Finding { return s.railSides() },
}

var bedSides = [...]string{"front", "wall", "left", "right"}

func (s *Scene) railSides() Finding {
	rows := []string{"us-rail-each-side", "eu-rail-four-sides", "fr-rail-four-sides", "au-rail-four-sides", "ca-rail-all-sides", "us-rail-full-side", "qld-wall-rail"}
	if s.Bed == nil {
		return unbuilt("sides", rows...)
	}
	var f Finding
	guarded, parts := 0, []string(nil)
	for i, side := range bedSides {
		n, on := s.railsOn(side)
		if n > 0 {
			guarded, parts = guarded+1, append(parts, on...)
		}
		if i < 2 {
			f.Readings = append(f.Readings, Reading{At: side, Rows: rows[:1], Have: float64(n), Parts: on, Edge: "rails on the " + side})
		}
	}
	full, wall := s.fullRail(), s.sideAtWall()
	walled, onWall := s.railsOn(wall)
	return s.traced(Finding{Readings: append(f.Readings,
		Reading{At: "sides", Rows: rows[1:4], Have: float64(guarded), Parts: parts},
		Reading{At: "sides.all", Rows: rows[4:5], Yes: guarded == len(bedSides), Parts: parts},
		Reading{At: "full", Rows: rows[5:6], Yes: full != nil && FullRailAway(full.Side, s.Bed.WayIn.Side, wall), Parts: partsOf(full), Edge: fullWords(full, s.Bed.WayIn.Side)},
		Reading{At: "at-wall", Rows: rows[6:], Yes: walled > 0, Parts: onWall})})
}

// FullRailAway tells whether the full-length rail lies on the side away from the ladder or against the wall; a ladder on an end
// leaves both long sides away from it. Sides are named as the bed has them, "" is none.
func FullRailAway(full, ladder, wall string) bool {
	return full != "" && (full != ladder || full == wall)
}

// railsOn counts the runs of rail on one side.
func (s *Scene) railsOn(side string) (n int, parts []string) {
	for i := range s.Bed.Guards {
		if g := &s.Bed.Guards[i]; g.Side == side && s.barrier(g) {
			n, parts = n+1, append(parts, g.Parts...)
		}
	}
	return n, parts
}

// fullRail returns the rail of a long side that runs from end structure to end structure. Of two it is the one away from the way in,
// else the one with the smaller gaps; nil where there is none.
func (s *Scene) fullRail() *guardAt {
	var best *guardAt
	for i := range s.Bed.Guards {
		g := &s.Bed.Guards[i]
		switch {
		case !g.Full || !long(g.Side):
		case best == nil,
			g.Side != s.Bed.WayIn.Side && best.Side == s.Bed.WayIn.Side,
			(g.Side == s.Bed.WayIn.Side) == (best.Side == s.Bed.WayIn.Side) && largerGap(g) < largerGap(best):
			best = g
		}
	}
	return best
}

func partsOf(g *guardAt) []string {
	if g == nil {
		return nil
	}
	return g.Parts
}

func fullWords(g *guardAt, wayIn string) string {
	switch {
	case g == nil:
		return "no rail runs the full length"
	case wayIn == "":
		return "the full-length rail is on the " + g.Side
	}
	return "the full-length rail is on the " + g.Side + ", the way in on the " + wayIn
}

// sideAtWall names the side of the bed that stands at the wall of its placement.
func (s *Scene) sideAtWall() string {
	switch s.Job.Place.Turn {
	case job.AgainstLeft:
		return "left"
	case job.AgainstRight:
		return "right"
	case job.AgainstFront:
		return "front"
	}
	return "wall"
}
