package worked

import "math"

// TO BE REPLACED by the functions of package fit.

func fitHangFall(grip float64) float64                   { return grip - 1000 }
func fitSlopeDistance(knee, run, slope, railTop float64) float64 {
	s := slope * math.Pi / 180
	return math.Abs(knee+run*math.Tan(s)-railTop) * math.Cos(s)
}
func fitImpactArea(fall float64) float64 {
	if fall <= 1500 {
		return 1500
	}
	return 2*fall/3 + 500
}
