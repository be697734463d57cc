package survey

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/blas"
	"gonum.org/v1/gonum/blas/blas64"
	"gonum.org/v1/gonum/lapack/lapack64"
)

// rankTolerance is the smallest diagonal of R, with columns scaled to length one, that still counts as determined.
// Rounding leaves about 1e-15 on a column that depends on others; the worst set checked here (Filip, ten powers of x)
// has 1.2e-9.
const rankTolerance = 1e-12

// factor is the Householder QR of one block's weighted slopes, columns scaled and pivoted. The normal equations
// are never formed: they would square the condition number. Its arrays are kept from block to block.
type factor struct {
	m, n, rank int
	a          []float64 // m x n: slopes, then R above and reflectors below the diagonal, then Q
	scale      []float64 // length of every column before scaling
	pivot      []int
	tau, work  []float64
	null       []float64 // n - rank orthonormal rows: directions in which no equation changes
	inverse    []float64 // n x rank: inverse of R in the order and scale of the unknowns, clear of null
	column     []float64
}

// reset makes room for m equations in n unknowns.
func (f *factor) reset(m, n int) {
	f.m, f.n, f.rank = m, n, 0
	f.a = sized(f.a, m*n)
	f.scale = sized(f.scale, n)
	f.tau = sized(f.tau, min(m, n))
	f.column = sized(f.column, max(m, n))
	f.work = sized(f.work, max(35*n+64, m)+m) // Geqp3 is blocked by 32 columns, Ormqr and Orgqr by what is left
	f.pivot = slices.Grow(f.pivot[:0], n)[:n]
}

// sized returns a slice of length n on s's storage where it is large enough; its content is unspecified.
func sized(s []float64, n int) []float64 { return slices.Grow(s[:0], n)[:n] }

func (f *factor) matrix(cols int) blas64.General {
	return blas64.General{Rows: f.m, Cols: cols, Stride: max(1, f.n), Data: f.a}
}

func (f *factor) triangle() blas64.Triangular {
	return blas64.Triangular{Uplo: blas.Upper, Diag: blas.NonUnit, N: f.rank, Stride: f.n, Data: f.a}
}

// scaleColumns brings every column of slopes to length one, so that unknowns of any unit can share a tolerance.
func (f *factor) scaleColumns() {
	if f.m == 0 || f.n == 0 {
		fill(f.scale, 1)
		return
	}
	for j := range f.scale {
		v := blas64.Vector{N: f.m, Inc: f.n, Data: f.a[j:]}
		f.scale[j] = blas64.Nrm2(v)
		if f.scale[j] == 0 {
			f.scale[j] = 1
			continue
		}
		blas64.Scal(1/f.scale[j], v)
	}
}

// decompose replaces the scaled slopes by their QR and finds the rank and what it leaves open.
func (f *factor) decompose() {
	for j := range f.pivot {
		f.pivot[j] = -1
	}
	if f.m == 0 || f.n == 0 {
		for j := range f.pivot {
			f.pivot[j] = j
		}
	} else {
		lapack64.Geqp3(f.matrix(f.n), f.pivot, f.tau, f.work, len(f.work))
	}
	f.rank = 0
	for f.rank < len(f.tau) && math.Abs(f.a[f.rank*f.n+f.rank]) > rankTolerance {
		f.rank++
	}
	f.findNull()
}

func (f *factor) backSubstitute(c []float64) {
	if f.rank == 0 {
		return
	}
	lapack64.Trtrs(blas.NoTrans, f.triangle(), blas64.General{Rows: f.rank, Cols: 1, Stride: 1, Data: c})
}

// step writes into shift the change of the unknowns that fits the misclosures r best. moved is how far the unknowns
// are from their start: along the open directions the step goes back to it. The length that step returns is the
// change measured by what it does to the readings, in units of their sigmas; where nothing is open it is never less
// than the largest shift over its own standard deviation.
func (f *factor) step(r, moved, shift []float64) float64 {
	clear(shift)
	size := 0.0
	if f.rank > 0 {
		c := f.column[:f.m]
		copy(c, r)
		lapack64.Ormqr(blas.Left, blas.Trans, f.matrix(f.rank), f.tau[:f.rank],
			blas64.General{Rows: f.m, Cols: 1, Stride: 1, Data: c}, f.work, len(f.work))
		size = norm(c[:f.rank])
		f.backSubstitute(c[:f.rank])
		for i, value := range c[:f.rank] {
			shift[f.pivot[i]] = value / f.scale[f.pivot[i]]
		}
	}
	return math.Hypot(size, f.anchor(moved, shift))
}

// invert prepares inverse and turns a into Q; R is gone afterwards.
func (f *factor) invert() {
	n, r := f.n, f.rank
	f.inverse = sized(f.inverse, n*r)
	clear(f.inverse)
	if r == 0 {
		return
	}
	lapack64.Trtri(f.triangle())
	for i := range r {
		u := f.pivot[i]
		for j := i; j < r; j++ {
			f.inverse[u*r+j] = f.a[i*n+j] / f.scale[u]
		}
	}
	f.clearInverse()
	lapack64.Orgqr(f.matrix(r), f.tau[:r], f.work, len(f.work))
}

// covariance writes the upper triangle of inverse times its transpose into c (n x n).
func (f *factor) covariance(c []float64) {
	if f.rank == 0 || f.n == 0 {
		return
	}
	t := blas64.General{Rows: f.n, Cols: f.rank, Stride: f.rank, Data: f.inverse}
	blas64.Syrk(blas.NoTrans, 1, t, 0, blas64.Symmetric{Uplo: blas.Upper, N: f.n, Stride: f.n, Data: c})
}

// gain writes inverse times Q transposed into g (n x m): what each weighted reading does to each unknown.
func (f *factor) gain(g []float64) {
	if f.rank == 0 || f.m == 0 {
		return
	}
	t := blas64.General{Rows: f.n, Cols: f.rank, Stride: f.rank, Data: f.inverse}
	blas64.Gemm(blas.NoTrans, blas.Trans, 1, t, f.matrix(f.rank), 0,
		blas64.General{Rows: f.n, Cols: f.m, Stride: f.m, Data: g})
}

// leverage returns how much of reading row is taken up by the unknowns, 0 to 1.
func (f *factor) leverage(row int) float64 {
	if f.rank == 0 {
		return 0
	}
	q := f.a[row*f.n : row*f.n+f.rank]
	return dot(q, q)
}

func dot(a, b []float64) float64 {
	sum := 0.0
	for i, v := range a {
		sum += v * b[i]
	}
	return sum
}

func norm(v []float64) float64 { return math.Sqrt(dot(v, v)) }

func fill(s []float64, v float64) {
	for i := range s {
		s[i] = v
	}
}
