package survey

import "math"

// loose lists the unknowns of a free network that can move otherwise than the whole network can: the datum
// accounts for two shifts, a turn and, where no distance was observed, a change of scale.
func (net *numbered) loose(s *Solution) []int {
	if !net.free {
		return nil
	}
	modes := net.datumModes(s.X)
	var loose []int
	for _, b := range s.Blocks() {
		n := len(b.Unknowns)
		for k := range b.Deficiency {
			rest := make([]float64, len(s.X))
			for j, u := range b.Unknowns {
				rest[u] = b.null[k*n+j]
			}
			for _, m := range modes {
				subtractAlong(rest, m)
			}
			loose = appendMoving(loose, rest)
		}
	}
	return loose
}

// appendMoving adds the unknowns with a share in direction d, which is zero but for rounding if the datum explains it.
func appendMoving(loose []int, d []float64) []int {
	const still = 1e-6 // of a direction of length one
	for u, v := range d {
		if math.Abs(v) > still {
			loose = append(loose, u)
		}
	}
	return loose
}

// datumModes returns orthonormal directions in which the whole network can move without changing an observation.
func (net *numbered) datumModes(x []float64) [][]float64 {
	points := float64(len(x)) / 2
	var cx, cy float64
	for i := 0; i < len(x); i += 2 {
		cx, cy = cx+x[i]/points, cy+x[i+1]/points
	}
	modes := make([][]float64, 4)
	for m := range modes {
		modes[m] = make([]float64, len(x))
	}
	for i := 0; i < len(x); i += 2 {
		dx, dy := x[i]-cx, x[i+1]-cy
		modes[0][i], modes[1][i+1] = 1, 1
		modes[2][i], modes[2][i+1] = -dy, dx
		modes[3][i], modes[3][i+1] = dx, dy
	}
	for _, m := range modes {
		unit(m)
	}
	if net.hasDistance() {
		return modes[:3]
	}
	return modes
}

func (net *numbered) hasDistance() bool {
	for _, o := range net.Observations {
		if o.Kind == DistanceKind {
			return true
		}
	}
	return false
}

func subtractAlong(v, direction []float64) {
	along := dot(v, direction)
	for i := range v {
		v[i] -= along * direction[i]
	}
}
