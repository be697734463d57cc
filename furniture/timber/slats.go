package timber

import (
	"fmt"
	"math"
)

// SlatGap returns the gap that n slats of a width leave in an opening, gaps at both ends too, all in one unit. It is
// negative when the slats are wider together than it.
func SlatGap(opening, width float64, n int) float64 {
	return (opening - float64(n)*width) / float64(n+1)
}

// A SlatError reports sizes for which no number of slats keeps the gap.
type SlatError struct{ Opening, Width, MaxGap float64 }

func (e *SlatError) Error() string {
	return fmt.Sprintf("no number of slats %g wide leaves gaps of at most %g in %g", e.Width, e.MaxGap, e.Opening)
}

// SlatCount returns the fewest slats of a width that leave gaps of at most maxGap in an opening, gaps at both ends
// too: ceil((opening - maxGap) / (width + maxGap)), all in one unit.
func SlatCount(opening, width, maxGap float64) (int, error) {
	none := &SlatError{opening, width, maxGap}
	if !(opening > 0 && width > 0 && maxGap >= 0) {
		return 0, none
	}
	exact := (opening - maxGap) / (width + maxGap)
	n := math.Ceil(exact - 1e-9) // a whole count must not gain a slat by the noise of its last digit
	n = max(n, 0)
	if !(n*width <= opening && n < math.MaxInt32) {
		return 0, none
	}
	return int(n), nil
}
