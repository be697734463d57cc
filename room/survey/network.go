package survey

import (
	"errors"
	"fmt"
	"slices"
	"strings"
)

// Network is a set of points and what was observed between them. Coordinates are x east, y north, in the unit of the
// distances; angles turn clockwise and are held in arcseconds.
type Network struct {
	Points       []Point
	Observations []Observation
}

// Point is a point of a network: approximate coordinates, or exact ones where fixed.
type Point struct {
	ID             string
	X, Y           float64
	FixedX, FixedY bool
}

// ObservationKind tells what was observed.
type ObservationKind string

// The kinds of observation.
const (
	DistanceKind  ObservationKind = "distance"        // from From to To
	ClockwiseKind ObservationKind = "angle_clockwise" // at Station, from From to To
)

// Observation is one observation; an angle and its SD are in arcseconds.
type Observation struct {
	ID                string
	Kind              ObservationKind
	Station, From, To string
	Value, SD         float64
}

// Adjusted is an adjusted network. Points and observations stand in the order of the network.
type Adjusted struct {
	Points       []AdjustedPoint
	Observations []Check // Check.Key is the observation's ID; angles in arcseconds
	Free         bool    // nothing was fixed: coordinates are the ones nearest to the approximate ones
	F            int
	VPV, S0      float64
	Solution     Solution
}

// AdjustedPoint is a point with its standard deviations: posterior, that is S0 times what the observations' own
// sds lead to. Without any check (F = 0) there is no S0 and they are the prior ones. Fixed coordinates have 0.
type AdjustedPoint struct {
	ID           string
	X, Y, SX, SY float64
}

// LooseError lists the coordinates of a network that its observations leave open, such as "x of P".
type LooseError struct {
	Coordinates []string
	Hint        string
}

func (e *LooseError) Error() string {
	return "the observations do not determine " + strings.Join(e.Coordinates, ", ") + "\nhint: " + e.Hint
}

// Adjust solves the network. With nothing fixed the datum is free: the sum of the squared shifts from the
// approximate coordinates is smallest.
func Adjust(n Network) (Adjusted, error) {
	net := number(n)
	p, err := net.problem()
	if err != nil {
		return Adjusted{}, err
	}
	s, err := Solve(p)
	if err != nil {
		return Adjusted{}, net.explain(err)
	}
	if loose := net.loose(&s); len(loose) > 0 {
		return Adjusted{}, net.looseError(loose)
	}
	return net.adjusted(s), nil
}

// FindSlipsIn looks for wrong readings in a network. Off is in the unit of the distances, of angles in arcseconds.
func FindSlipsIn(n Network, t Testing) (Found, error) {
	net := number(n)
	p, err := net.problem()
	if err != nil {
		return Found{}, err
	}
	found, err := FindSlips(p, t)
	return found, net.explain(err)
}

// numbered is a network with its free coordinates numbered as unknowns.
type numbered struct {
	Network
	positions []Position
	index     map[string]int
	start     []float64
	free      bool
}

func number(n Network) *numbered {
	net := &numbered{Network: n, index: make(map[string]int, len(n.Points)), free: true}
	coordinate := func(v float64, fixed bool) Coordinate {
		if fixed {
			net.free = false
			return Known(v)
		}
		net.start = append(net.start, v)
		return Unknown(len(net.start) - 1)
	}
	for i, p := range n.Points {
		net.index[p.ID] = i
		net.positions = append(net.positions, Position{coordinate(p.X, p.FixedX), coordinate(p.Y, p.FixedY)})
	}
	return net
}

func (net *numbered) problem() (Problem, error) {
	p := Problem{Start: net.start, FreeDatum: net.free}
	for _, o := range net.Observations {
		eq, err := net.equation(o)
		if err != nil {
			return Problem{}, fmt.Errorf("observation %s: %w", o.ID, err)
		}
		p.Equations = append(p.Equations, eq)
	}
	return p, nil
}

func (net *numbered) equation(o Observation) (Equation, error) {
	ids := []string{o.From, o.To}
	if o.Kind == ClockwiseKind {
		ids = []string{o.Station, o.From, o.To}
	}
	at := make([]Position, len(ids))
	for i, id := range ids {
		k, ok := net.index[id]
		if !ok {
			return Equation{}, fmt.Errorf("no point %q", id)
		}
		if slices.Contains(ids[:i], id) {
			return Equation{}, fmt.Errorf("point %q stands twice", id)
		}
		at[i] = net.positions[k]
	}
	switch o.Kind {
	case DistanceKind:
		return DistanceEquation(o.ID, at[0], at[1], o.Value, o.SD), nil
	case ClockwiseKind:
		return ClockwiseEquation(o.ID, at[0], at[1], at[2], o.Value, o.SD, Arcsecond), nil
	}
	return Equation{}, fmt.Errorf("unknown kind %q", o.Kind)
}

func (net *numbered) adjusted(s Solution) Adjusted {
	a := Adjusted{Observations: s.Checks, Free: net.free, F: s.F, VPV: s.VPV, S0: s.S0, Solution: s}
	scale := s.S0
	if s.F == 0 {
		scale = 1
	}
	for i, p := range net.Points {
		q := AdjustedPoint{ID: p.ID}
		q.X, q.SX = net.positions[i].X.value(&s, scale)
		q.Y, q.SY = net.positions[i].Y.value(&s, scale)
		a.Points = append(a.Points, q)
	}
	return a
}

// value returns the adjusted coordinate and its standard deviation times scale.
func (c Coordinate) value(s *Solution, scale float64) (v, sd float64) {
	if c.ref == 0 {
		return c.known, 0
	}
	return s.X[c.ref-1], scale * s.Sigma(c.ref-1)
}

// explain turns unknowns back into coordinates of points.
func (net *numbered) explain(err error) error {
	var u *UndeterminedError
	if errors.As(err, &u) {
		return net.looseError(u.Unknowns)
	}
	return err
}

func (net *numbered) looseError(unknowns []int) error {
	e := &LooseError{Hint: "observe them, or fix more coordinates, or fix none for a free network"}
	if net.free {
		e.Hint = "observe more between these points and the others"
	}
	for i, p := range net.Points {
		if r := net.positions[i].X.ref; r > 0 && slices.Contains(unknowns, r-1) {
			e.Coordinates = append(e.Coordinates, "x of "+p.ID)
		}
		if r := net.positions[i].Y.ref; r > 0 && slices.Contains(unknowns, r-1) {
			e.Coordinates = append(e.Coordinates, "y of "+p.ID)
		}
	}
	return e
}
