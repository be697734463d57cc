package fit

import (
	"math"

	"bunkwright/room/survey"
)

// uncertainty is the standard uncertainty of one reading, and what each source of the survey adds to it.
type uncertainty struct {
	total   float64
	sources []float64 // signed contribution of each source, in the reading's unit; nil where nothing of the room counts
	own     float64
}

// uses tells whether a source moves the reading at all.
func (u uncertainty) uses(source int) bool {
	return source < len(u.sources) && math.Abs(u.sources[source]) > 1e-9
}

// step is how far a quantity is moved to see what hangs on it, in mm: small against any board, large against rounding.
const step = 1e-3

// slopes is how the readings of a question move with one quantity.
type slopes struct {
	quantity int
	by       []float64 // one a reading: the larger one-sided slope
}

// differentiate moves every quantity that some question depends on up and down and measures those questions again: one list of slopes
// a question. Through a minimum the larger one-sided slope counts.
func (s *Scene) differentiate(qs []Question, fs []Finding) [][]slopes {
	s.settleFacets()
	out := make([][]slopes, len(qs))
	up, down := make([]Finding, len(qs)), make([]Finding, len(qs))
	var any Facet
	doubt := make([]bool, len(qs))
	for k, q := range qs {
		if doubt[k] = s.matters(fs[k]); doubt[k] {
			any |= q.Depends
		}
	}
	for i, facet := range s.facets {
		if facet&any == 0 {
			continue
		}
		if s.ctx != nil && s.ctx.Err() != nil {
			break
		}
		depends := func(k int) bool { return facet&qs[k].Depends != 0 && doubt[k] }
		h := step * s.scale(i)
		s.again(qs, up, s.moved(i, h), depends)
		s.again(qs, down, s.moved(i, -h), depends)
		s.restore(i)
		for k := range qs {
			if !depends(k) {
				continue
			}
			if by, any := slope(fs[k], up[k], down[k], h); any {
				out[k] = append(out[k], slopes{i, by})
			}
		}
	}
	return out
}

// again measures those questions once more that depend on what was moved.
func (s *Scene) again(qs []Question, into []Finding, moved *Scene, depends func(int) bool) {
	for k := range qs {
		if depends(k) {
			into[k] = qs[k].Measure(moved)
		}
	}
}

// slope returns how the readings of one question moved.
func slope(f, up, down Finding, h float64) (by []float64, any bool) {
	by = make([]float64, len(f.Readings))
	for i, r := range f.Readings {
		hi, ok1 := match(up, i, r.At)
		lo, ok2 := match(down, i, r.At)
		if !ok1 || !ok2 {
			continue
		}
		by[i] = larger((hi-r.Have)/h, (r.Have-lo)/h)
		any = any || by[i] != 0
	}
	return by, any
}

// larger returns the slope of the larger size; slopes that are only rounding count as none.
func larger(a, b float64) float64 {
	if math.Abs(b) > math.Abs(a) {
		a = b
	}
	if math.Abs(a) < 1e-7 || math.IsNaN(a) || math.IsInf(a, 0) {
		return 0
	}
	return a
}

// match finds the reading of the same place in another finding.
func match(f Finding, i int, at string) (float64, bool) {
	if i < len(f.Readings) && f.Readings[i].At == at {
		return f.Readings[i].Have, f.Readings[i].Ask == ""
	}
	for _, r := range f.Readings {
		if r.At == at {
			return r.Have, r.Ask == ""
		}
	}
	return 0, false
}

// uncertainties works out how sure each reading of each question is: the gain of the survey carries the slopes to the readings of the
// room, and what is the reading's own is added.
func (s *Scene) uncertainties(qs []Question, fs []Finding) [][]uncertainty {
	out := make([][]uncertainty, len(qs))
	moves := s.differentiate(qs, fs)
	for k, f := range fs {
		out[k] = make([]uncertainty, len(f.Readings))
		for i, r := range f.Readings {
			out[k][i] = s.spread(i, r, moves[k])
		}
	}
	return out
}

// matters tells whether anything in a finding is a number that is held against a row at the job's places.
func (s *Scene) matters(f Finding) bool {
	for i := range f.Readings {
		r := &f.Readings[i]
		if r.Ask != "" || r.Skip != "" {
			continue
		}
		if s.speaks(r.Rows) {
			return true
		}
	}
	return false
}

// nothing is the uncertainty below which a value counts as exact: spares are rounded to it, and what is less is rounding.
const nothing = 1e-6

func (s *Scene) spread(i int, r Reading, moves []slopes) uncertainty {
	u := uncertainty{own: r.U}
	var gradient []survey.Term
	for _, m := range moves {
		if m.by[i] != 0 {
			gradient = append(gradient, survey.Term{Unknown: m.quantity, D: m.by[i]})
		}
	}
	sum := u.own * u.own
	if len(gradient) > 0 {
		u.sources = s.Survey.ByReading(gradient, nil)
		for k, src := range s.Survey.Sources {
			u.sources[k] *= src.U
			if src.Aside { // what it would do: it was left out
				continue
			}
			sum += u.sources[k] * u.sources[k]
		}
	}
	if u.total = math.Sqrt(sum); u.total < nothing {
		return uncertainty{}
	}
	return u
}

// inputs lists what went into a reading, the largest share first, then what is exact.
func (s *Scene) inputs(r Reading, u uncertainty) []Input {
	var out []Input
	for k, c := range u.sources {
		src := s.Survey.Sources[k]
		if !u.uses(k) || src.Aside {
			continue
		}
		out = append(out, Input{Key: src.Key, Value: src.Value, Unit: src.Unit(), How: string(src.How), By: src.By, Share: share(c, u.total)})
	}
	if u.own > 0 {
		out = append(out, Input{Key: r.UKey, Value: u.own, Unit: "mm", How: "build", Share: share(u.own, u.total)})
	}
	sortInputs(out)
	for _, use := range r.Uses {
		out = append(out, Input{Key: use.Key, Value: use.Value, Unit: use.Unit, How: use.How})
	}
	return out
}

func share(c, total float64) float64 {
	if total == 0 {
		return 0
	}
	return c * c / (total * total)
}
