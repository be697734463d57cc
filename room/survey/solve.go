package survey

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/blas"
	"gonum.org/v1/gonum/blas/blas64"
	"gonum.org/v1/gonum/lapack/lapack64"
)

const (
	maxSteps     = 200
	settledAt    = 1e-9  // sigmas of the readings: a step this small changes nothing that can be measured
	firstDamping = 1e-3  // Marquardt's constant on scaled columns, after a step that made things worse
	leastDamping = 1e-6  // below this the step is an undamped Gauss-Newton step again
	epsilon      = 1e-16 // rounding of one operation, about
)

// Solve adjusts the problem by Gauss-Newton steps, each a QR of one block. A step is damped (Levenberg and Marquardt)
// only after one that raised the sum of squares. It fails with an EquationError, an UndeterminedError
// that lists every open unknown, or ErrNotConverged. The problem is not changed.
func Solve(p Problem) (Solution, error) {
	if err := p.check(); err != nil {
		return Solution{}, err
	}
	s := newSolution(&p)
	it := iteration{p: &p, part: &s.part, x: s.X}
	var open []int
	for b := range s.part.blocks {
		block := &s.part.blocks[b]
		undetermined, err := it.settle(block)
		if err != nil {
			return Solution{}, err
		}
		open = append(open, undetermined...)
		if len(undetermined) == 0 || p.FreeDatum {
			s.record(block, &it)
		}
	}
	slices.Sort(open)
	if len(open) > 0 && !p.FreeDatum {
		return Solution{}, &UndeterminedError{Unknowns: open}
	}
	s.Undetermined = open
	s.judge()
	return s, nil
}

// iteration carries one block at a time to its solution.
type iteration struct {
	p    *Problem
	part *partition
	x    []float64 // all unknowns, current values
	qr   factor

	r, moved, shift, kept []float64 // weighted misclosures; shift from the start, next shift, last good values
	at, slope             []float64
	damped, right         []float64
}

// misfit is the weighted sum of squares, and the part of its root that is rounding.
type misfit struct{ phi, noise float64 }

func (m misfit) settled() float64 { return settledAt + 8*m.noise }

// worse tells a sum of squares that really rose from one that rounding moved.
func (m misfit) worse(than misfit) bool {
	slack := than.settled()
	return !finite(m.phi) || !finite(m.noise) || m.phi > than.phi*(1+1e-12)+slack*(math.Sqrt(than.phi)+slack)
}

// settle iterates the block, leaves the factors of its last step behind, and returns what stays undetermined.
func (it *iteration) settle(b *Block) ([]int, error) {
	it.reset(b)
	good, damping := misfit{phi: math.Inf(1)}, 0.0
	for range maxSteps {
		now := it.linearise(b)
		switch {
		case !now.worse(good):
			good = now
			it.keep(b)
			if damping /= 10; damping < leastDamping {
				damping = 0
			}
		case math.IsInf(good.phi, 1):
			return nil, it.notFinite(b)
		default:
			it.restore(b)
			it.linearise(b)
			damping = max(firstDamping, damping*10)
		}
		size := it.nextShift(damping, good)
		it.apply(b)
		open := it.qr.rank < it.qr.n && !it.p.FreeDatum
		if open || size <= good.settled() {
			return it.undetermined(b), nil
		}
	}
	return nil, ErrNotConverged
}

func (it *iteration) reset(b *Block) {
	m, n := len(b.Equations), len(b.Unknowns)
	it.qr.reset(m, n)
	it.r = sized(it.r, m)
	it.moved, it.shift, it.kept = sized(it.moved, n), sized(it.shift, n), sized(it.kept, n)
	clear(it.moved)
}

// linearise fills the block's slopes and misclosures at the current values, each over its sigma.
func (it *iteration) linearise(b *Block) misfit {
	var m misfit
	clear(it.qr.a)
	for row, e := range b.Equations {
		eq := &it.p.Equations[e]
		value := it.predict(eq)
		weight, size := 1/eq.Sigma, math.Abs(eq.Observed)
		it.r[row] = (eq.Observed - value) * weight
		line := it.qr.a[row*it.qr.n:]
		for i, u := range eq.Unknowns {
			line[it.part.column[u]] += it.slope[i] * weight
			size += math.Abs(it.slope[i] * it.at[i])
		}
		m.phi += it.r[row] * it.r[row]
		m.noise += (size * weight) * (size * weight)
	}
	m.noise = epsilon * math.Sqrt(m.noise)
	return m
}

func (it *iteration) predict(eq *Equation) float64 {
	it.at = sized(it.at, len(eq.Unknowns))
	it.slope = sized(it.slope, len(eq.Unknowns))
	clear(it.slope)
	for i, u := range eq.Unknowns {
		it.at[i] = it.x[u]
	}
	return eq.Predict(it.at, it.slope)
}

func (it *iteration) notFinite(b *Block) error {
	for _, e := range b.Equations {
		if eq := &it.p.Equations[e]; !finite(it.predict(eq)) || slices.ContainsFunc(it.slope, func(v float64) bool { return !finite(v) }) {
			return &EquationError{Index: e, Key: eq.Key, Reason: "its prediction is not a finite number at the start values"}
		}
	}
	return ErrNotConverged
}

// nextShift factors the slopes and fills shift; the size it returns is that of the undamped step.
func (it *iteration) nextShift(damping float64, now misfit) float64 {
	it.qr.scaleColumns()
	if damping > 0 {
		it.damp(damping)
	}
	it.qr.decompose()
	size := it.qr.step(it.r, it.moved, it.shift)
	if damping > 0 && size > now.settled() {
		for j := range it.shift {
			it.shift[j] = it.right[j] / it.qr.scale[j]
		}
		it.qr.anchor(it.moved, it.shift)
	}
	return size
}

// damp solves the scaled block with damping on every unknown, by the same QR: one more equation an unknown.
func (it *iteration) damp(damping float64) {
	m, n := it.qr.m, it.qr.n
	it.damped, it.right = sized(it.damped, (m+n)*n), sized(it.right, m+n)
	copy(it.damped, it.qr.a)
	clear(it.damped[m*n:])
	for j := range n {
		it.damped[(m+j)*n+j] = math.Sqrt(damping)
	}
	clear(it.right[copy(it.right, it.r):])
	work := make([]float64, 4*(m+n))
	lapack64.Gels(blas.NoTrans, blas64.General{Rows: m + n, Cols: n, Stride: n, Data: it.damped},
		blas64.General{Rows: m + n, Cols: 1, Stride: 1, Data: it.right}, work, len(work))
}

func (it *iteration) apply(b *Block) {
	for j, u := range b.Unknowns {
		it.x[u] += it.shift[j]
		it.moved[j] = it.x[u] - it.p.Start[u]
	}
}

func (it *iteration) keep(b *Block) {
	for j, u := range b.Unknowns {
		it.kept[j] = it.x[u]
	}
}

func (it *iteration) restore(b *Block) {
	for j, u := range b.Unknowns {
		it.x[u] = it.kept[j]
		it.moved[j] = it.x[u] - it.p.Start[u]
	}
}

// undetermined lists the unknowns that move along an open direction of the block.
func (it *iteration) undetermined(b *Block) []int {
	const still = 1e-7 // of a direction of length one, in scaled unknowns
	n, open := it.qr.n, []int(nil)
	for k := range n - it.qr.rank {
		row := it.qr.null[k*n : (k+1)*n]
		longest := 0.0
		for j, v := range row {
			longest = max(longest, math.Abs(v)*it.qr.scale[j])
		}
		for j, u := range b.Unknowns {
			if math.Abs(row[j])*it.qr.scale[j] > still*longest && !slices.Contains(open, u) {
				open = append(open, u)
			}
		}
	}
	return open
}
