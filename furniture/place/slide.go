package place

import (
	"context"
	"math"

	"bunkwright/furniture/fit"
)

// swept is what came of trying one lane.
type swept struct {
	spots []Spot
	miss  *miss // the placement that came nearest where the bed stands nowhere
	tried int
}

// miss is a placement where the bed cannot stand.
type miss struct {
	at    start
	not   refusal
	short float64
	asked int
}

// sweep tries every placement of a lane and gathers those with one best set of verdicts into spots.
func (t *trial) sweep(ctx context.Context, l *lane, o Options, tell func(int)) (swept, error) {
	var out swept
	var best grades
	outcomes := make([]outcome, len(l.starts))
	for i, at := range l.starts {
		if err := ctx.Err(); err != nil {
			return out, err
		}
		outcomes[i] = t.grade(at, best)
		if r := &outcomes[i]; r.not != stands {
			out.near(at, r)
		} else if r.done && (best == nil || t.rank.worse(best, r.grades)) {
			best = r.grades
		}
		tell(1)
	}
	for i := 0; i < len(outcomes); i++ {
		if !outcomes[i].done || t.rank.worse(outcomes[i].grades, best) {
			continue
		}
		k := i
		for k+1 < len(outcomes) && outcomes[k+1].done && equal(outcomes[k+1].grades, outcomes[i].grades) {
			k++
		}
		out.spots = append(out.spots, t.spot(l, i, k, outcomes[i].grades, o))
		i = k
	}
	return out, nil
}

// near keeps the miss that is the easiest to put right.
func (s *swept) near(at start, r *outcome) {
	if s.miss == nil || r.not > s.miss.not || r.not == s.miss.not && r.short < s.miss.short {
		s.miss = &miss{at, r.not, r.short, r.asked}
	}
}

func equal(a, b grades) bool {
	for i := range a {
		if a[i] != b[i] {
			return false
		}
	}
	return true
}

// spot makes a spot of the placements from the first to the last, and finds how far beyond them the verdicts still hold.
func (t *trial) spot(l *lane, first, last int, g grades, o Options) Spot {
	fine := o.Step.MM() / fineIn
	lo, hi := l.starts[first], l.starts[last]
	if first > 0 {
		lo = t.edge(l, lo, l.starts[first-1], g, fine)
	}
	if last+1 < len(l.starts) {
		hi = t.edge(l, hi, l.starts[last+1], g, fine)
	}
	w := &t.s.Walls[l.wall]
	out := Spot{Wall: w.Key, Turn: l.turn, Mirror: l.mirror, Head: l.head(t.s), From: lo.at, To: hi.at, Span: l.span, lane: l.index, grades: g, nominal: g}
	best := l.favourite(t.s, lo, hi, o.Step.MM())
	out.Place, out.At = best.place, best.at
	out.Asked = t.asked(best)
	return out
}

// asked asks everything that spots are ranked by at one placement.
func (t *trial) asked(at start) []Asked {
	t.s.Put(at.place)
	var out []Asked
	for i, c := range t.rank.list {
		if !c.Measure {
			v, _ := t.s.Verdict(t.rank.asks[i])
			out = append(out, Asked{c.ID, v})
		}
	}
	return out
}

// edge returns the last placement from one that has these grades towards one that has not, to a fine step from the nearer corner.
func (t *trial) edge(l *lane, has, not start, g grades, fine float64) start {
	for {
		mid := l.startAt(t.s, l.round(t.s, (has.at+not.at)/2, fine))
		if mid.at <= min(has.at, not.at)+same || mid.at >= max(has.at, not.at)-same {
			return has
		}
		if t.like(mid, g) {
			has = mid
		} else {
			not = mid
		}
	}
}

// round takes a place along the wall to a whole number of steps from the nearer corner.
func (l *lane) round(s *fit.Scene, at, step float64) float64 {
	room := s.Walls[l.wall].Len - l.span
	if at > room/2 {
		return room - math.Round((room-at)/step)*step
	}
	return math.Round(at/step) * step
}

// favourite returns where in its stretch the bed goes first: in a corner where it reaches one, else in the middle, where readings that are
// a little off do the least harm.
func (l *lane) favourite(s *fit.Scene, lo, hi start, step float64) start {
	switch {
	case lo.place.Along == 0:
		return lo
	case hi.place.Along == 0:
		return hi
	}
	return l.middle(s, lo, hi, step)
}

// middle returns the middle of a stretch, on a step where there is one in it.
func (l *lane) middle(s *fit.Scene, lo, hi start, step float64) start {
	mid := l.startAt(s, l.round(s, (lo.at+hi.at)/2, step))
	if mid.at < lo.at || mid.at > hi.at {
		return lo
	}
	return mid
}
