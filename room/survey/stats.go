package survey

import (
	"math"

	"gonum.org/v1/gonum/stat"
	"gonum.org/v1/gonum/stat/distuv"
)

// NormalQuantile returns z with a chance of p that a standard normal value lies below it; NaN unless 0 < p < 1.
func NormalQuantile(p float64) float64 {
	if !(p > 0 && p < 1) {
		return math.NaN()
	}
	return distuv.UnitNormal.Quantile(p)
}

// NormalCDF returns the chance that a standard normal value lies below z.
func NormalCDF(z float64) float64 { return distuv.UnitNormal.CDF(z) }

// TauCritical returns the size of Check.Tau that a good reading passes with chance alpha (two-sided) when f readings
// more than needed were taken: Pope (1976), tau = t sqrt(f) / sqrt(f-1+t^2) with t of Student's distribution at f-1.
// With f = 1 it is always 1. NaN for f < 1 or alpha outside 0 to 1.
func TauCritical(f int, alpha float64) float64 {
	switch {
	case f < 1 || !(alpha > 0 && alpha < 1):
		return math.NaN()
	case f == 1:
		return 1
	}
	t := distuv.StudentsT{Sigma: 1, Nu: float64(f - 1)}.Quantile(1 - alpha/2)
	return t * math.Sqrt(float64(f)) / math.Sqrt(float64(f-1)+t*t)
}

// Noncentrality returns d0, the shift of a test value, in standard deviations, that a two-sided test at alpha notices with
// the given power: z(1-alpha/2) + z(power), Baarda (1968). NaN for a chance outside 0 to 1.
func Noncentrality(alpha, power float64) float64 {
	return NormalQuantile(1-alpha/2) + NormalQuantile(power)
}

// SmallestBlunder returns the smallest blunder in a reading that would be noticed, in the unit of sigma:
// d0 sigma / sqrt(redundancy), Baarda (1968). +Inf for a reading that nothing checks.
func SmallestBlunder(sigma, redundancy, d0 float64) float64 {
	return d0 * sigma / math.Sqrt(redundancy)
}

// MeanSD returns the mean of repeated readings and the standard deviation of one of them; NaN where there are too few.
func MeanSD(values []float64) (mean, sd float64) { return stat.MeanStdDev(values, nil) }
