package survey

import (
	"cmp"
	"math"
	"slices"
)

// A Misfit is a slip that the readings show: one of those named is off. Several cannot be told apart.
type Misfit struct {
	Suspects []Suspected // the likeliest first
	Believed bool        // only what was taken for granted speaks against them
}

// Found tells whether one reading is known to be off: the readings say so, not only what is believed.
func (m Misfit) Found() bool { return len(m.Suspects) == 1 && !m.Believed }

// Suspected is one reading of a misfit.
type Suspected struct {
	Equation int
	Off      float64 // how far it is off, if it alone is: read less true
	Test     float64 // w or tau
}

// toldApart is how much likelier one slip must be than another to be told from it, as twice the logarithm of the odds (our own figure: 20 to
// 1, as sure as the words fits and does not fit are).
var toldApart = 2 * math.Log(20)

// accuse names the reading furthest beyond its limit, with those that cannot be told from it.
func (f *finder) accuse(s *Solution) (Misfit, bool) {
	worst := -1
	for e, c := range s.Checks {
		if f.testable(e, c) && (worst < 0 || math.Abs(c.W) > math.Abs(s.Checks[worst].W)) {
			worst = e
		}
	}
	if worst < 0 || !(math.Abs(f.test(s, worst)) > f.limit(f.checks(s))) {
		return Misfit{}, false
	}
	return f.misfit(s, worst), true
}

// testable tells whether a reading may be accused in this part of the search.
func (f *finder) testable(e int, c Check) bool {
	return !f.t.Believed[e] && !f.out[e] && c.Redundancy > watched && (!f.believed || !f.watch[e])
}

// test returns w or tau, this with the s0 of the readings left.
func (f *finder) test(s *Solution, e int) float64 {
	if f.t.Tau {
		return tauOf(s.Checks[e].W, s.VPV, f.checks(s))
	}
	return s.Checks[e].W
}

// tauOf scales w by s0 (Pope 1976); 0 without any check.
func tauOf(w, vpv float64, checks int) float64 {
	if checks < 1 || vpv <= 0 {
		return 0
	}
	return w / math.Sqrt(vpv/float64(checks))
}

// misfit lists the readings that may be what speaks against the worst one.
func (f *finder) misfit(s *Solution, worst int) Misfit {
	m := Misfit{Believed: f.believed}
	for e, c := range s.Checks {
		if e == worst || f.testable(e, c) && f.alike(s, worst, e) {
			m.Suspects = append(m.Suspects, Suspected{Equation: e, Off: c.Error, Test: f.test(s, e)})
		}
	}
	slices.SortStableFunc(m.Suspects, func(a, b Suspected) int { return heavier(a.Test, b.Test) })
	return m
}

// verified sets each suspect aside in turn: only one without which the rest agrees may be the wrong one, and the rest says how far off it is.
// Where no single one will do there are more slips than one, and the list stays. Suspects that nothing tells apart come in the order in which
// they go with what is believed.
func (f *finder) verified(m Misfit, whole *Solution) Misfit {
	var left []Suspected
	for _, one := range m.Suspects {
		f.out[one.Equation] = true
		s, err := f.solve(!m.Believed)
		if err == nil {
			one.Off = s.asIfBack(one.Equation, f.p.Equations[one.Equation].Sigma).Error
			if _, more := f.accuse(&s); !more || len(m.Suspects) == 1 {
				left = append(left, one)
			}
		}
		delete(f.out, one.Equation)
	}
	if len(left) == 0 {
		left = m.Suspects
	}
	if !m.Believed {
		slices.SortStableFunc(left, func(a, b Suspected) int {
			if !tied(a.Test, b.Test) {
				return 0
			}
			return heavier(whole.Checks[a.Equation].W, whole.Checks[b.Equation].W)
		})
	}
	m.Suspects = left
	return m
}

// tied tells whether two tests are equal but for rounding, as all are with one check.
func tied(a, b float64) bool {
	a, b = math.Abs(a), math.Abs(b)
	return math.Abs(a-b) <= 1e-6*max(a, b)
}

// heavier sorts the larger test first.
func heavier(a, b float64) int {
	if tied(a, b) {
		return 0
	}
	return cmp.Compare(math.Abs(b), math.Abs(a))
}

// alike tells whether reading e explains what speaks against worst nearly as well: it is hardly less likely, and with e set aside worst is
// no longer beyond the limit.
func (f *finder) alike(s *Solution, worst, e int) bool {
	a, b := s.Checks[worst].W, s.Checks[e].W
	if s.part.equationBlock[worst] != s.part.equationBlock[e] || f.apart(s, a, b) > toldApart {
		return false
	}
	rho := s.correlation(worst, e)
	left := 1 - rho*rho
	if left < 1e-6 {
		return true
	}
	rest, checks := (a-rho*b)/math.Sqrt(left), f.checks(s)-1
	if f.t.Tau {
		return checks < 1 || math.Abs(tauOf(rest, s.VPV-b*b, checks)) <= f.limit(checks)
	}
	return math.Abs(rest) <= f.limit(checks)
}

// apart is twice the logarithm of how much likelier a slip in the reading with w = a is than one in that with w = b.
func (f *finder) apart(s *Solution, a, b float64) float64 {
	if !f.t.Tau {
		return a*a - b*b
	}
	without, instead := s.VPV-a*a, s.VPV-b*b
	if tiny := 1e-9 * s.VPV; without < tiny {
		without, instead = tiny, max(tiny, instead)
	}
	return float64(f.checks(s)) * math.Log(instead/without)
}

// correlation is that of w of two equations, -1 to 1; 0 where one of them is not watched or they share no block.
func (s *Solution) correlation(i, j int) float64 {
	if s.part.equationBlock[i] != s.part.equationBlock[j] || !s.Checks[i].Checked() || !s.Checks[j].Checked() {
		return 0
	}
	b := &s.part.blocks[s.part.equationBlock[i]]
	eq := &s.p.Equations[i]
	at, slope := make([]float64, len(eq.Unknowns)), make([]float64, len(eq.Unknowns))
	for k, u := range eq.Unknowns {
		at[k] = s.X[u]
	}
	eq.Predict(at, slope)
	moves := 0.0 // of prediction i with reading j
	for k, u := range eq.Unknowns {
		moves += slope[k] * b.gain[s.part.column[u]*len(b.Equations)+s.part.row[j]]
	}
	q := -moves * s.p.Equations[j].Sigma / eq.Sigma
	if i == j {
		q++
	}
	return max(-1, min(1, q/math.Sqrt(s.Checks[i].Redundancy*s.Checks[j].Redundancy)))
}
