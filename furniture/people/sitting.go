package people

// halfYear is the step of the table of sitting heights.
const halfYear = 0.5

// z90 is the half-width of a 90 % band in standard deviations.
const z90 = 1.645

// SittingHeight returns a statistic of erect sitting height in mm, seat plane to top of head, the straight line between
// half-years, age 2 to 18. An unknown sex takes the larger of the two.
// Source: UM-HSRI-77-17 (1977) records, smoothed over age; slightly small against children of today.
func SittingHeight(sex Sex, age float64, stat Stat) (float64, error) {
	return larger(sex, func(s Sex) (float64, error) { return sittingAt(s, age, stat) })
}

func sittingAt(sex Sex, age float64, stat Stat) (float64, error) {
	return sittingHeights().between(cell{sex: sex, age: age, stat: stat}, halfYear)
}

// SeatedHeight returns SittingHeight up to LastChildAge and the sitting height of a grown-up above it, in mm.
func SeatedHeight(sex Sex, age float64, stat Stat) (float64, error) {
	if age > LastChildAge {
		return LargestSize(SittingHeightErect, sex, age, stat)
	}
	return SittingHeight(sex, age, stat)
}

// SittingRatio returns mean or sd of sitting height / stature, the straight line between whole years, age 2 to 18.
// An unknown sex takes the larger of the two. One ratio is an approximation for any one child.
// Source: UM-HSRI-77-17 (1977) records.
func SittingRatio(sex Sex, age float64, stat Stat) (float64, error) {
	return larger(sex, func(s Sex) (float64, error) {
		return sittingRatios().between(cell{sex: s, age: age, stat: stat}, 1)
	})
}

// SittingFromStature returns the sitting height in mm guessed from a stature in mm. Measure the child when you can.
func SittingFromStature(stature, ratio float64) float64 { return ratio * stature }

// SittingBand returns the half-width in mm of the 90 % band round SittingFromStature; sdRatio x stature itself is the
// standard uncertainty.
func SittingBand(stature, sdRatio float64) float64 { return z90 * sdRatio * stature }
