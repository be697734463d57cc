package survey

import (
	"errors"
	"math"
	"slices"
)

// Testing says how wrong readings are looked for: by w where the standard uncertainties are known (Baarda 1968), by tau where they are
// only relative weights (Pope 1976).
type Testing struct {
	Alpha    float64      // two-sided chance of accusing any reading of a good set; 0: DefaultSetAlpha
	Tau      bool         // the sigmas are only relative weights
	Believed map[int]bool // equations that nobody read: they accuse nobody whom other readings watch, and are never accused
	Aside    []int        // readings known to be impossible: they stay out
}

// DefaultSetAlpha is the chance of accusing any of the good readings of a room (project rule: 0.01 two-sided, 0.01/n a reading).
const DefaultSetAlpha = 0.01

// watched is the redundancy from which a reading counts as watched: below it only a slip of 4000 sigmas would be noticed.
const watched = 1e-6

// Found is what a search for wrong readings came to.
type Found struct {
	Misfits  []Misfit
	Solution Solution   // without the readings that were found
	Aside    []SetAside // those readings, and the ones of Testing.Aside, in the order of the equations
	Checks   []Check    // every reading against the other readings, or against what is believed where no reading watches it
	Watched  []bool     // other readings watch this one
	Readings int        // how many readings were tested: each at Alpha / Readings
	Limit    float64    // critical value of w, or of tau at the first adjustment
}

// FindSlips looks for wrong readings: the worst beyond its limit is set aside, the rest adjusted again, until nobody is beyond; after every
// step those set aside before are taken back where the rest no longer speaks against them. Readings watch each other first; what is
// believed watches only those that no reading does. Errors are those of Solve.
func FindSlips(p Problem, t Testing) (Found, error) {
	f := newFinder(p, t)
	whole, err := f.solve(false)
	if err != nil {
		return Found{}, err
	}
	return f.run(whole)
}

func newFinder(p Problem, t Testing) *finder {
	if t.Alpha == 0 {
		t.Alpha = DefaultSetAlpha
	}
	f := &finder{p: p, t: t, out: map[int]bool{}, back: map[int]bool{}, watch: make([]bool, len(p.Equations))}
	for _, e := range t.Aside {
		f.out[e] = true
	}
	return f
}

// run searches, given the adjustment of everything.
func (f *finder) run(whole Solution) (Found, error) {
	f.places = whole.X
	f.count(&whole)
	strict, err := f.amongReadings()
	if err != nil {
		return Found{}, err
	}
	if err := f.againstBelief(&whole); err != nil {
		return Found{}, err
	}
	if err := f.review(&whole); err != nil {
		return Found{}, err
	}
	return f.finish(whole, strict)
}

// finder is one search.
type finder struct {
	p        Problem
	t        Testing
	n        int          // readings that can be tested
	limited  float64      // the first limit
	out      map[int]bool // set aside: those known to be impossible, and the likeliest reading of every misfit
	back     map[int]bool // taken back once
	misfits  []Misfit
	watch    []bool    // who is watched by readings
	places   []float64 // the adjustment of everything: where things were read, and where the next adjustment starts
	believed bool      // the second part of the search: what is believed speaks too
}

// count counts the readings that can be tested at all.
func (f *finder) count(s *Solution) {
	for e, c := range s.Checks {
		if !f.t.Believed[e] && !f.out[e] && c.Redundancy > watched {
			f.n++
		}
	}
	f.limited = f.limit(f.checks(s))
}

// amongReadings searches with the readings alone. It returns nil where they do not settle without what is believed.
func (f *finder) amongReadings() (*Solution, error) {
	s, err := f.solve(true)
	switch {
	case errors.Is(err, ErrNotConverged):
		return nil, nil
	case err != nil:
		return nil, err
	}
	for e := range s.Checks {
		f.watch[e] = !f.t.Believed[e] && !f.out[e] && s.Checks[e].Redundancy > watched
	}
	return &s, f.search(&s)
}

// againstBelief searches among those whom only what is believed watches. Readings that could not be told apart all stay out of it.
func (f *finder) againstBelief(whole *Solution) error {
	if len(f.t.Believed) == 0 {
		return nil
	}
	f.believed = true
	if len(f.misfits) == 0 {
		return f.search(whole)
	}
	f.group(func(e int) { f.out[e] = true })
	defer f.group(func(e int) { delete(f.out, e) })
	switch again, err := f.solve(false); {
	case errors.Is(err, ErrNotConverged):
		return nil
	case err != nil:
		return err
	default:
		return f.search(&again)
	}
}

// group calls do for all suspects of misfits among readings but the likeliest.
func (f *finder) group(do func(equation int)) {
	for _, m := range f.misfits {
		if !m.Believed {
			for _, one := range m.Suspects[1:] {
				do(one.Equation)
			}
		}
	}
}

// solve adjusts what is left; strict leaves out what is believed.
func (f *finder) solve(strict bool) (Solution, error) {
	p := f.p
	if f.places != nil {
		p.Start = f.places
	}
	p.Equations = slices.Clone(f.p.Equations)
	for e := range p.Equations {
		if strict {
			p.Equations[e] = p.Equations[e].inPlace(f.places)
		}
		if f.out[e] || strict && f.t.Believed[e] {
			p.Equations[e].Sigma *= aside
		}
	}
	return Solve(p)
}

// search sets readings aside until nobody left is beyond the limit; s comes in as the adjustment so far.
func (f *finder) search(s *Solution) error {
	for range 2 * len(f.p.Equations) {
		m, ok := f.accuse(s)
		if !ok {
			return nil
		}
		f.misfits = append(f.misfits, m)
		f.out[m.Suspects[0].Equation] = true
		for again := true; again; again = f.takeBack(s) {
			next, err := f.solve(!f.believed)
			if errors.Is(err, ErrNotConverged) { // what was found so far stands, and the reading stays in
				delete(f.out, m.Suspects[0].Equation)
				return nil
			}
			if err != nil {
				return err
			}
			*s = next
		}
	}
	return nil
}

// takeBack takes back one reading that the rest does not speak against any more; each at most once, so that the search ends.
func (f *finder) takeBack(s *Solution) bool {
	for i, m := range f.misfits {
		e := m.Suspects[0].Equation
		if m.Believed != f.believed || f.back[e] {
			continue
		}
		checks := f.checks(s) + 1
		test := s.asIfBack(e, f.p.Equations[e].Sigma).W
		if f.t.Tau {
			test = tauOf(test, s.VPV+test*test, checks)
		}
		if math.Abs(test) <= f.limit(checks) {
			delete(f.out, e)
			f.back[e] = true
			f.misfits = slices.Delete(f.misfits, i, i+1)
			return true
		}
	}
	return false
}

// checks counts what is left over for checking: a reading set aside counts for nothing.
func (f *finder) checks(s *Solution) int { return s.F - len(f.out) }

// limit is the critical value for one reading.
func (f *finder) limit(checks int) float64 {
	alpha := f.t.Alpha / float64(max(1, f.n))
	switch {
	case f.t.Tau && checks < 2: // with one check tau is 1 whatever was read
		return math.Inf(1)
	case f.t.Tau:
		return TauCritical(checks, alpha)
	}
	return NormalQuantile(1 - alpha/2)
}

// review looks at every misfit again with only the others set aside: what was seen first was seen through the other slips.
func (f *finder) review(whole *Solution) error {
	for i, m := range f.misfits {
		e := m.Suspects[0].Equation
		if !f.out[e] {
			continue
		}
		delete(f.out, e)
		f.believed = m.Believed
		if len(f.misfits) > 1 {
			s, err := f.solve(!m.Believed)
			switch {
			case err == nil:
				m = f.misfit(&s, e)
			case !errors.Is(err, ErrNotConverged):
				return err
			}
		}
		f.misfits[i] = f.verified(m, whole)
		f.out[f.misfits[i].Suspects[0].Equation] = true
	}
	return nil
}

// finish adjusts without those that were found.
func (f *finder) finish(whole Solution, strict *Solution) (Found, error) {
	out := Found{Misfits: f.misfits, Readings: f.n, Limit: f.limited, Watched: f.watch}
	for _, m := range f.misfits {
		if !m.Found() {
			delete(f.out, m.Suspects[0].Equation)
		}
	}
	if err := f.again(&whole, false); err != nil {
		return Found{}, err
	}
	if strict != nil {
		if err := f.again(strict, true); err != nil {
			return Found{}, err
		}
	}
	f.assemble(&out, whole, strict)
	return out, nil
}

// again adjusts once more after the search, if it found anything.
func (f *finder) again(s *Solution, strict bool) error {
	if len(f.misfits) == 0 {
		return nil
	}
	next, err := f.solve(strict)
	if errors.Is(err, ErrNotConverged) {
		clear(f.out)
		for _, e := range f.t.Aside {
			f.out[e] = true
		}
		return nil
	}
	*s = next
	return err
}

// assemble collects the checks, and clears the solution of what was set aside.
func (f *finder) assemble(out *Found, whole Solution, strict *Solution) {
	out.Checks = slices.Clone(whole.Checks)
	for e := range whole.Checks {
		sigma := f.p.Equations[e].Sigma
		if f.out[e] {
			out.Aside = append(out.Aside, SetAside{e, whole.backFactor(e, sigma)})
			whole.Checks[e] = whole.asIfBack(e, sigma)
			out.Checks[e] = whole.Checks[e]
			whole.F--
		}
		switch {
		case !f.watch[e] || strict == nil:
		case f.out[e]:
			out.Checks[e] = strict.asIfBack(e, sigma)
		default:
			out.Checks[e] = strict.Checks[e]
		}
	}
	if whole.S0 = 0; whole.F > 0 {
		whole.S0 = math.Sqrt(whole.VPV / float64(whole.F))
	}
	out.Solution = whole
}
