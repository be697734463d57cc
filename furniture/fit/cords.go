package fit

import (
	"math"
	"slices"

	"bunkwright/furniture/yardstick"
	"bunkwright/room"
)

var windowCords = Question{
	ID:       "window-cords",
	Sentence: "Are cords out of reach of the beds?",
	Group:    Safety,
	Why:      "A loop of blind cord within reach of a bed can strangle a child in minutes.",
	How: "Level distance of each mattress from the window less the sideways reach of who sleeps there (frontal grip reach, P95 of the age): " +
		"the cord may hang anywhere over the width of its window and at any height. The reachable length of a cord is asked about where a " +
		"mattress lies within own-bed-beside of the window or a sleeper reaches it.",
	Caution: "Cordless is better than short. Look for chains, loops and inner cords too.",
	Depends: Standing | FarLean | Windows | Panes,
	Propose: []Driver{Slide, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.windowCords() },
}

const (
	cordLength = "wcma-cord-length"
	cordReach  = "nz-cord-reach"
)

// OutOfReach returns how far something stays out of reach: its distance less the reach, in one unit.
func OutOfReach(distance, reach float64) float64 { return distance - reach }

func (s *Scene) windowCords() Finding {
	rows := []string{cordLength, cordReach}
	switch {
	case s.Job.Room.Lacks("cord"):
		return absent("there are no cords")
	case s.unlisted(len(s.Job.Room.Windows), "window"):
		return Finding{Readings: []Reading{ask("window", "is there a window, and does a cord hang at it?", rows...)}}
	case len(s.Job.Room.Windows) == 0:
		return absent("there is no window")
	case s.cordless():
		return absent("every window is cordless")
	case !s.Stands:
		return Finding{Readings: []Reading{ask("window", s.Wants, rows...)}}
	}
	var f Finding
	least := math.Inf(1)
	panes := s.panes()
	for i := range panes {
		rs, spare := s.cordReadings(&panes[i])
		f.Readings = append(f.Readings, rs...)
		least = min(least, spare)
	}
	if !math.IsInf(least, 1) {
		f.Figures = []Figure{{"out_of_reach", least, "mm"}}
	}
	return f
}

func (s *Scene) cordless() bool {
	return !slices.ContainsFunc(s.Job.Room.Windows, func(w room.Window) bool { return !w.Cordless })
}

// cordReadings measures the cord of one window: its length, and whether a sleeper reaches it.
func (s *Scene) cordReadings(p *pane) (rs []Reading, least float64) {
	rec, refs := &s.Job.Room.Windows[p.place], &s.Survey.Layout.Windows[p.place]
	least = math.Inf(1)
	long := Reading{At: p.key + ".cord", Rows: []string{cordLength}, Have: s.v(refs.Cord), Parts: []string{p.key}}
	reach := Reading{At: p.key + ".reach", Rows: []string{cordReach}, Parts: []string{p.key}}
	both := func(f func(*Reading)) []Reading { f(&long); f(&reach); return []Reading{long, reach} }
	switch {
	case rec.Cordless:
		return both(func(r *Reading) { r.Skip = p.key + " is cordless" }), least
	case p.wall == nil:
		return both(func(r *Reading) { r.Ask = p.where }), least
	}
	spare, beside, what := s.nearestReach(p)
	if what == "" && spare > 0 && !beside {
		long.Skip = "no bed lies beside " + p.key + ", and no sleeper reaches it"
	}
	if s.unread(refs.Cord) {
		long.Ask = "does a cord hang at " + p.key + " on wall " + rec.Wall + ", and how much of it can be reached?"
	}
	reach.Yes, reach.Ask = spare > 0, what
	reach.Uses = []Use{{"own-cord-reach", spare, "mm", "table"}}
	if !reach.Yes {
		reach.Edge = "a sleeper reaches " + p.key
	}
	if what == "" {
		least = spare
	}
	return []Reading{long, reach}, least
}

// nearestReach returns how far the window stays out of the sleepers' reach, whether a mattress lies beside it, and what is missing to
// tell.
func (s *Scene) nearestReach(p *pane) (spare float64, beside bool, what string) {
	spare = math.Inf(1)
	for _, b := range [2]bed{lowerBed, upperBed} {
		d := s.mattressFrom(p, b)
		beside = beside || d <= yardstick.Figure(yardstick.BedBeside)
		reach, missing := s.sideways(b)
		if missing != "" {
			what = missing
			continue
		}
		spare = min(spare, OutOfReach(d, reach))
	}
	return spare, beside, what
}
