package people

import (
	"fmt"
	"math"
)

// An LMSError reports L, M, S and z that give no size.
type LMSError struct{ L, M, S, Z float64 }

func (e *LMSError) Error() string {
	return fmt.Sprintf("L %g, M %g, S %g give no size at z %g", e.L, e.M, e.S, e.Z)
}

// LMS returns the size at z standard deviations from the parameters of a growth chart, in the unit of M:
// M (1 + L S z)^(1/L), and M exp(S z) where L is 0. Stat.Z gives z for a percentile.
// Source: CDC 2000 growth charts.
func LMS(l, m, s, z float64) (float64, error) {
	size := m * math.Exp(s*z)
	if l != 0 {
		size = m * math.Pow(1+l*s*z, 1/l)
	}
	if math.IsNaN(size) || math.IsInf(size, 0) {
		return 0, &LMSError{l, m, s, z}
	}
	return size, nil
}
