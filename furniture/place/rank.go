package place

import (
	"cmp"
	"slices"

	"bunkwright/furniture/fit"
)

// grade is a verdict as spots are ranked by it: higher is better. What does not apply there is as good as what fits.
type grade int8

const (
	unasked grade = iota - 1 // not asked yet
	failing
	untold
	tight
	passing
)

func gradeOf(v fit.Verdict) grade {
	switch v {
	case fit.DoesNotFit:
		return failing
	case fit.CannotTell:
		return untold
	case fit.TooClose:
		return tight
	}
	return passing
}

// atBest returns what a grade can still become.
func (g grade) atBest() grade {
	if g == unasked {
		return passing
	}
	return g
}

// grades are the grades of one placement, in the order that counts; measures stay unasked.
type grades []grade

// worse tells whether a placement is surely behind another one: in the first criterion in which they may differ it has less, whatever is
// not asked yet. Behind a measure nothing is sure, since it is only worked out for the best.
func (r *ranking) worse(a, b grades) bool {
	for i := range a {
		if r.list[i].Measure {
			return false
		}
		if x, y := a[i].atBest(), b[i].atBest(); x != y {
			return x < y
		}
	}
	return false
}

// ranking is the order that counts, with the questions behind it.
type ranking struct {
	list  []Criterion
	asks  []fit.Question // one a criterion; empty for a measure
	cheap []int          // places of the questions, the cheapest first
	must  []bool         // it has to fit for a place to be a spot
}

// newRanking puts an order into force. Questions that nothing is judged of at the places of the job cannot tell two placements apart and are
// not asked.
func newRanking(s *fit.Scene, o Order, must []string) (*ranking, error) {
	o, err := o.complete()
	if err != nil {
		return nil, err
	}
	for _, id := range must {
		if i := find(id); i < 0 || criteria[i].Measure {
			return nil, &OrderError{id}
		}
	}
	r := &ranking{}
	for _, id := range o {
		c := criteria[find(id)]
		q, _ := fit.Find(id)
		r.list, r.asks = append(r.list, c), append(r.asks, q)
		r.must = append(r.must, id == "stands" || slices.Contains(must, id))
	}
	for _, id := range cheapFirst {
		for i := range r.list {
			if r.list[i].ID == id && s.Judges(r.asks[i]) {
				r.cheap = append(r.cheap, i)
			}
		}
	}
	return r, nil
}

// cheapFirst lists the questions from the cheapest to the dearest, as measured beside fit; only the time of a search hangs on it.
var cheapFirst = []string{
	"stands", "way-out", "heat", "window-cords", "wall-gap", "air", "fan-and-lights", "shelf-heights", "screw-length", "window-fall", "climb-space",
	"doors-swing", "lie-and-turn", "make-the-bed", "ladder-landing", "drawers-open", "power", "sit-up-bottom", "sit-up-top", "walkway", "studs-hit",
	"see-them",
}

// less orders spots: the grades and classes of measures in the order that counts, then walls round the room, then along the wall.
func (r *ranking) less(a, b *Spot) int {
	for i, c := range r.list {
		x, y := int(a.grades[i]), int(b.grades[i])
		if c.Measure {
			x, y = a.Comfort.class(c.ID), b.Comfort.class(c.ID)
		}
		if x != y {
			return cmp.Compare(y, x)
		}
	}
	return cmp.Or(cmp.Compare(a.lane, b.lane), cmp.Compare(a.From, b.From))
}

// blank returns the grades of a placement that nothing was asked of.
func (r *ranking) blank() grades {
	out := make(grades, len(r.list))
	for i := range out {
		out[i] = unasked
	}
	return out
}

// foremost returns the spots that may be among the first n, whatever their measures are: those measures need not be worked out of the others.
func (r *ranking) foremost(spots []Spot, n int) []Spot {
	var out []Spot
	for i := range spots {
		ahead := 0
		for k := range spots {
			if r.worse(spots[i].grades, spots[k].grades) {
				ahead++
			}
		}
		if ahead < n {
			out = append(out, spots[i])
		}
	}
	return out
}
