package survey

import "math"

// Solution is an adjusted problem. Unknowns and equations are numbered as in the Problem.
type Solution struct {
	X            []float64 // adjusted unknowns
	Checks       []Check   // one an equation
	Undetermined []int     // unknowns that only the free datum holds: they say where Start was, nothing measured
	F            int       // equations beyond those needed
	VPV          float64   // sum of (residual / sigma)^2
	S0           float64   // sqrt(VPV / F), about 1 if the sigmas were right; 0 if F is 0

	part partition
	p    *Problem
}

// Check says how well one reading is watched by the others.
type Check struct {
	Key        string
	Residual   float64 // adjusted minus observed, in the reading's unit
	Redundancy float64 // the share of a blunder that shows in the residual: 0 nobody watches, 1 the reading is not needed
	W          float64 // Residual / (Sigma * sqrt(Redundancy)), normally distributed if sigmas and readings are right
	Tau        float64 // W / S0: the same where the sigmas are only relative weights; always +-1 if F is 1
	Error      float64 // -Residual / Redundancy: how far off the reading is, if it alone is wrong
	Smallest   float64 // the smallest blunder in it that would be noticed; +Inf for one that is not checked
}

// Checked reports whether any other reading watches this one. Where none does, W, Tau and Error are 0 and mean nothing.
func (c Check) Checked() bool { return c.Redundancy > 0 }

// unwatched is the redundancy below which a reading counts as not checked; rounding leaves about 1e-15.
const unwatched = 1e-9

func newSolution(p *Problem) Solution {
	s := Solution{X: make([]float64, len(p.Start)), Checks: make([]Check, len(p.Equations)), part: split(p), p: p}
	copy(s.X, p.Start)
	size := 0
	for _, b := range s.part.blocks {
		size += len(b.Unknowns) * (len(b.Unknowns) + len(b.Equations))
	}
	store := make([]float64, size)
	for i := range s.part.blocks {
		b := &s.part.blocks[i]
		n, m := len(b.Unknowns), len(b.Equations)
		b.cov, b.gain, store = store[:n*n:n*n], store[n*n:n*(n+m):n*(n+m)], store[n*(n+m):]
	}
	return s
}

// record takes a settled block's covariance, gain and residuals from the factors of its last step.
func (s *Solution) record(b *Block, it *iteration) {
	qr := &it.qr
	b.Deficiency, b.F = qr.n-qr.rank, qr.m-qr.rank
	b.null = append(b.null, qr.null[:b.Deficiency*qr.n]...)
	qr.invert()
	qr.covariance(b.cov)
	qr.gain(b.gain)
	for row, e := range b.Equations {
		eq := &s.p.Equations[e]
		for j := range b.Unknowns {
			b.gain[j*qr.m+row] /= eq.Sigma
		}
		residual := it.predict(eq) - eq.Observed
		b.VPV += (residual / eq.Sigma) * (residual / eq.Sigma)
		s.Checks[e] = Check{Key: eq.Key, Residual: residual, Redundancy: 1 - qr.leverage(row)}
	}
}

// judge fills in what needs the whole solution: f, s0 and the tests on every reading.
func (s *Solution) judge() {
	for i := range s.part.blocks {
		s.F += s.part.blocks[i].F
		s.VPV += s.part.blocks[i].VPV
	}
	if s.F > 0 {
		s.S0 = math.Sqrt(s.VPV / float64(s.F))
	}
	d0 := s.noncentrality()
	for e := range s.Checks {
		s.Checks[e].test(s.p.Equations[e].Sigma, s.S0, d0)
	}
}

// noncentrality is that of the problem's chances, or of the usual ones.
func (s *Solution) noncentrality() float64 {
	alpha, power := s.p.Alpha, s.p.Power
	if alpha == 0 {
		alpha = DefaultAlpha
	}
	if power == 0 {
		power = DefaultPower
	}
	return Noncentrality(alpha, power)
}

// TestOf returns the check of a reading by its residual (adjusted less observed), standard uncertainty, redundancy and s0.
func TestOf(residual, sigma, redundancy, s0 float64) Check {
	c := Check{Residual: residual, Redundancy: redundancy}
	c.test(sigma, s0, Noncentrality(DefaultAlpha, DefaultPower))
	return c
}

func (c *Check) test(sigma, s0, d0 float64) {
	if c.Redundancy < unwatched {
		c.Redundancy, c.Smallest = 0, math.Inf(1)
		return
	}
	c.W = c.Residual / (sigma * math.Sqrt(c.Redundancy))
	c.Error = -c.Residual / c.Redundancy
	c.Smallest = SmallestBlunder(sigma, c.Redundancy, d0)
	if s0 > 0 {
		c.Tau = c.W / s0
	}
}

// Blocks returns the independent parts of the problem, in the order of their first unknown.
func (s *Solution) Blocks() []Block { return s.part.blocks }

// BlockOf returns the block that the unknown belongs to.
func (s *Solution) BlockOf(unknown int) *Block { return &s.part.blocks[s.part.unknownBlock[unknown]] }

// Covariance returns the covariance of two unknowns that follows from the sigmas given, not scaled by the fit.
func (s *Solution) Covariance(i, j int) float64 {
	if s.part.unknownBlock[i] != s.part.unknownBlock[j] {
		return 0
	}
	b, a, c := s.BlockOf(i), s.part.column[i], s.part.column[j]
	return b.cov[min(a, c)*len(b.Unknowns)+max(a, c)]
}

// Sigma returns the standard uncertainty of an unknown that follows from the sigmas given.
func (s *Solution) Sigma(unknown int) float64 { return math.Sqrt(s.Covariance(unknown, unknown)) }

// Gain returns how far the unknown moves for one unit of every reading that can move it: the equations of its block,
// and the derivative for each. Neither slice may be changed.
func (s *Solution) Gain(unknown int) (equations []int, gain []float64) {
	b, row := s.BlockOf(unknown), s.part.column[unknown]
	m := len(b.Equations)
	return b.Equations, b.gain[row*m : (row+1)*m : (row+1)*m]
}

// ByReading returns how far a quantity moves for one unit of every reading, given its derivatives with respect to the
// unknowns. It fills into where that is long enough. The quantity's variance is the sum of (result * Sigma)^2,
// and each term is that reading's share.
func (s *Solution) ByReading(gradient []Term, into []float64) []float64 {
	into = sized(into, len(s.Checks))
	clear(into)
	for _, term := range gradient {
		equations, gain := s.Gain(term.Unknown)
		for k, e := range equations {
			into[e] += term.D * gain[k]
		}
	}
	return into
}

// Variance returns the variance of a quantity, given its derivatives with respect to the unknowns.
func (s *Solution) Variance(gradient []Term) float64 {
	sum := 0.0
	for _, a := range gradient {
		for _, b := range gradient {
			sum += a.D * b.D * s.Covariance(a.Unknown, b.Unknown)
		}
	}
	return max(0, sum) // rounding may leave less than nothing of a difference between two tied unknowns
}

// Worst returns the equation with the largest absolute W, or -1 if no reading is checked. It is located if no
// other reading explains the misfit as well; with one check all W are equal, so a blunder is seen and never located.
func (s *Solution) Worst() (equation int, located bool) {
	equation, largest, next := -1, 0.0, 0.0
	for e, c := range s.Checks {
		switch w := math.Abs(c.W); {
		case !c.Checked():
		case equation < 0 || w > largest:
			equation, largest, next = e, w, largest
		case w > next:
			next = w
		}
	}
	const equal = 1e-6 // of the larger: two readings that one check cannot tell apart differ by rounding
	return equation, equation >= 0 && largest > 0 && next < largest*(1-equal)
}
