package survey

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"
)

// Problem is a weighted least-squares problem: find the unknowns that make the sum of
// ((predicted - observed) / sigma)^2 over all equations smallest.
type Problem struct {
	Start     []float64  // approximate value of every unknown, in the caller's own units
	Equations []Equation // readings, and whatever else is believed with a sigma

	// FreeDatum asks for a solution even where the equations leave unknowns open: of all that fit equally well,
	// the one nearest to Start (the sum of the squared shifts is smallest). Without it an open unknown is an error.
	FreeDatum bool

	// Alpha is the two-sided chance of accusing a good reading, Power the chance of noticing a blunder of the
	// size Check.Smallest; left at zero they are DefaultAlpha and DefaultPower.
	Alpha, Power float64
}

// DefaultAlpha and DefaultPower are the usual choice of Baarda (1968), A testing procedure for use in geodetic networks.
const (
	DefaultAlpha = 0.001
	DefaultPower = 0.80
)

// Equation says what one reading ought to be, given the few unknowns it depends on.
type Equation struct {
	Key      string  // names the reading; the solver only repeats it
	Observed float64 // what was read
	// Sigma is its standard uncertainty before adjustment, same unit, above zero. An equation with more than about 1e11 times
	// the sigma of those that share its unknowns is lost in their rounding and determines nothing.
	Sigma    float64
	Unknowns []int // indices into Problem.Start; one may stand twice
	// Place counts the last Unknowns that only tell where it was read, such as the corner below a height of the ceiling: a search for slips
	// among readings holds these still, so that a height does not move walls.
	Place int
	// Predict returns the reading that the unknowns' values at lead to, and writes its derivative with respect to
	// each of them into slope, which comes in as zeros. Both slices run parallel to Unknowns and are reused afterwards.
	Predict func(at, slope []float64) float64
}

// Term is a coefficient on one unknown, or a derivative with respect to it.
type Term struct {
	Unknown int
	D       float64
}

// EquationError says which equation cannot be used, and why.
type EquationError struct {
	Index  int
	Key    string
	Reason string
}

func (e *EquationError) Error() string {
	return fmt.Sprintf("equation %d (%s): %s", e.Index, e.Key, e.Reason)
}

// UndeterminedError lists the unknowns that the equations leave open, in rising order.
type UndeterminedError struct {
	Unknowns []int
}

func (e *UndeterminedError) Error() string {
	return "not determined by the readings: unknowns " + strings.Trim(fmt.Sprint(e.Unknowns), "[]")
}

// ErrNotConverged reports that the iteration found no lowest sum of squares within its step limit.
var ErrNotConverged = errors.New("the adjustment does not settle: look for a grossly wrong reading or start value")

// check finds the first equation that the solver could not use.
func (p *Problem) check() error {
	for i, v := range p.Start {
		if !finite(v) {
			return fmt.Errorf("start value of unknown %d is not a finite number", i)
		}
	}
	for i := range p.Equations {
		if reason := p.Equations[i].fault(len(p.Start)); reason != "" {
			return &EquationError{Index: i, Key: p.Equations[i].Key, Reason: reason}
		}
	}
	return nil
}

func (e *Equation) fault(unknowns int) string {
	outside := func(u int) bool { return u < 0 || u >= unknowns }
	switch {
	case !finite(e.Observed):
		return "the reading is not a finite number"
	case !finite(e.Sigma) || e.Sigma <= 0:
		return "its sigma must be a number above zero"
	case e.Predict == nil:
		return "it has no prediction"
	case slices.ContainsFunc(e.Unknowns, outside):
		return "it depends on an unknown that does not exist"
	}
	return ""
}

func finite(v float64) bool { return !math.IsNaN(v) && !math.IsInf(v, 0) }
