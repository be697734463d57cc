package survey

import "math"

// aside is the factor on the sigma of a reading that is set aside: it keeps its place among the equations and moves nothing.
const aside = 1e5

// SetAside is a reading that the adjustment leaves out.
type SetAside struct {
	Equation int
	Back     float64 // times what Gain says of it: how far an unknown would move with it, were it back among the others
}

// asIfBack returns the check of a reading that was set aside as it would be with the reading, of its own sigma, back among the others.
func (s *Solution) asIfBack(e int, sigma float64) Check {
	c := s.Checks[e]
	back := Check{Key: c.Key, Redundancy: sigma * sigma / (sigma*sigma + s.othersVariance(e))}
	back.Residual = c.Residual * back.Redundancy
	back.test(sigma, s.S0, s.noncentrality())
	return back
}

// othersVariance is that of what the others say about a reading that was set aside.
func (s *Solution) othersVariance(e int) float64 {
	large := s.p.Equations[e].Sigma
	return max(0, 1-s.Checks[e].Redundancy) * large * large
}

func (s *Solution) backFactor(e int, sigma float64) float64 {
	large := s.p.Equations[e].Sigma
	return math.Pow(large, 2) / (sigma*sigma + s.othersVariance(e))
}

// inPlace returns an equation with the unknowns that tell where it was read held at x.
func (e Equation) inPlace(x []float64) Equation {
	if e.Place == 0 {
		return e
	}
	all, predict := len(e.Unknowns), e.Predict
	k := all - e.Place
	at, slope := make([]float64, all), make([]float64, all)
	for i, u := range e.Unknowns[k:] {
		at[k+i] = x[u]
	}
	e.Unknowns, e.Place = e.Unknowns[:k:k], 0
	e.Predict = func(v, d []float64) float64 {
		copy(at, v)
		clear(slope)
		value := predict(at, slope)
		copy(d, slope)
		return value
	}
	return e
}
