package survey

import "math"

// findNull builds an orthonormal basis of the directions that no equation feels: for every column left over,
// the combination of the others that equals it.
func (f *factor) findNull() {
	open := f.n - f.rank
	f.null = sized(f.null, open*f.n)
	clear(f.null)
	for k := range open {
		v := f.null[k*f.n : (k+1)*f.n]
		c := f.column[:f.rank]
		for i := range c {
			c[i] = f.a[i*f.n+f.rank+k]
		}
		f.backSubstitute(c)
		for i, value := range c {
			v[f.pivot[i]] = -value / f.scale[f.pivot[i]]
		}
		last := f.pivot[f.rank+k]
		v[last] = 1 / f.scale[last]
		f.orthonormalise(v, k)
	}
}

// orthonormalise clears v of the first k null rows, twice against rounding, and brings it to length one.
func (f *factor) orthonormalise(v []float64, k int) {
	for range 2 {
		f.clearOf(v, k)
		unit(v)
	}
}

func unit(v []float64) {
	if length := norm(v); length > 0 {
		for i := range v {
			v[i] /= length
		}
	}
}

// clearOf removes from v its part along the first k null rows.
func (f *factor) clearOf(v []float64, k int) {
	for i := range k {
		row := f.null[i*f.n : (i+1)*f.n]
		along := dot(row, v)
		for j := range v {
			v[j] -= along * row[j]
		}
	}
}

// anchor gives shift the part along the open directions that undoes that of moved, and no other. It returns the length of
// that part in the measure of step.
func (f *factor) anchor(moved, shift []float64) float64 {
	square := 0.0
	for k := range f.n - f.rank {
		row := f.null[k*f.n : (k+1)*f.n]
		drift := dot(row, moved)
		along := drift + dot(row, shift)
		for j, direction := range row {
			shift[j] -= along * direction
			square += math.Pow(drift*direction*f.scale[j], 2)
		}
	}
	return math.Sqrt(square)
}

// clearInverse makes every column of inverse free of the open directions: the minimum-norm inverse.
func (f *factor) clearInverse() {
	r, column := f.rank, f.column[:f.n]
	if r == f.n {
		return
	}
	for j := range r {
		for u := range column {
			column[u] = f.inverse[u*r+j]
		}
		f.clearOf(column, f.n-r)
		for u := range column {
			f.inverse[u*r+j] = column[u]
		}
	}
}
