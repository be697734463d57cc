package fit

var railEnds = Question{
	ID:       "rail-ends",
	Sentence: "Are the gaps at the ends of the rails right?",
	Group:    Safety,
	Why:      "A gap at the end of a rail is where a sleeping child rolls out, or where a finger is caught.",
	How:      "Rail end to end structure, each end, and the clear width of the way in.",
	Caution:  "Most of these figures are largest gaps; some places also ask for a smallest way in.",
	OfBed:    true,
	Propose:  []Driver{WayIn, RailAllRound},
	Measure:  func(s *Scene) Finding { return s.railEnds() },
}

func (s *Scene) railEnds() Finding {
	const full, short, access, rollout, count = "us-rail-full-length-gap", "us-rail-short-end-gap", "eu-access-opening", "au-gap-rollout", "au-access-count"
	if s.Bed == nil {
		return unbuilt("rail-ends", full, short, access, rollout, count)
	}
	f := Finding{Readings: []Reading{s.wayIn(access, rollout)}}
	g := s.fullRail()
	if g == nil {
		f.Readings = append(f.Readings, Reading{At: "rail.full", Rows: []string{full}, Skip: fullWords(nil, "")})
	} else {
		f.Readings = append(f.Readings, s.railEnd(g, "full", largerGap(g), full, rollout))
	}
	f.Readings = append(f.Readings, s.otherRailEnds(g, short, rollout)...)
	s.addBuildTolerance(f.Readings)
	f.Readings = append(f.Readings, Reading{At: "ways-in", Rows: []string{count}, Have: s.waysIn(), Parts: s.Bed.WayIn.Parts})
	return s.traced(f)
}

// otherRailEnds measures each end by itself of every rail of a long side but the full-length one.
func (s *Scene) otherRailEnds(full *guardAt, short, rollout string) []Reading {
	var out []Reading
	for i := range s.Bed.Guards {
		g := &s.Bed.Guards[i]
		if g != full && long(g.Side) {
			out = append(out, s.railEnd(g, "left", g.GapFrom, short, rollout), s.railEnd(g, "right", g.GapTo, short, rollout))
		}
	}
	if len(out) == 0 {
		return []Reading{{At: "rail.short", Rows: []string{short}, Skip: "there is no rail that stops short"}}
	}
	return out
}

// largerGap is the gap of a rail at that end where it is larger.
func largerGap(g *guardAt) float64 { return max(g.GapFrom, g.GapTo) }

func (s *Scene) railEnd(g *guardAt, end string, gap float64, rows ...string) Reading {
	return Reading{At: "rail." + g.Side + "." + end, Rows: rows, Have: gap, Parts: g.Parts, Scope: s.gapScope(s.Bed.Upper.Top)}
}

// gapScope is the height over the floor of a gap that begins at a height over the post feet, for texts that test gaps from a height on.
// The one of EN 747-1 is asked where an opening is chosen: bodyOpening.
func (s *Scene) gapScope(bottom float64) []Scope {
	return []Scope{{Row: "au-gap-scope-height", Have: s.overFloor(bottom)}}
}

func (s *Scene) waysIn() float64 {
	if s.Bed.WayIn.Side == "" {
		return 0
	}
	return 1
}

// wayIn measures the gap in the rail that one climbs in through.
func (s *Scene) wayIn(rows ...string) Reading {
	w := s.Bed.WayIn
	r := Reading{At: "way-in", Rows: rows, Have: w.Clear, Parts: w.Parts, Scope: s.gapScope(s.Bed.Upper.Top), Uses: []Use{{"bed.guard.gap", w.Clear, "mm", "chosen"}}}
	if r.Edge = "on the " + w.Side; w.Side == "" {
		r.Ask = howUp
	}
	return r
}

// howUp is asked where a bed has neither a ladder nor an end to climb.
const howUp = "how does the sleeper get up?"
