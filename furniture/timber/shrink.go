package timber

import (
	"fmt"
	"sync"
)

// Moisture percents between which the shrinkage formula holds. Boards are bought at the wettest that still counts as dry
// and end at the driest, which is that of a heated room.
const driest = 8

var wettest = sync.OnceValue(func() float64 { return must(rule("lr-08").number("value")) })

// A MoistureError reports a moisture for which the shrinkage formula does not hold.
type MoistureError struct{ Percent float64 }

func (e *MoistureError) Error() string {
	return fmt.Sprintf("moisture %g %%: the shrinkage formula holds from %d to %g %%", e.Percent, driest, wettest())
}

// Shrink returns what a board loses of its width, in the unit of the width, as its moisture goes from one percent to
// another, both 8 to 19; it is negative when the board gets wetter.
// Source: FPL-RP-489: shrinkage from green S = 6.031 - 0.215 M percent, loss = width (S(to) - S(from)) / (100 - S(from)).
func Shrink(width, from, to float64) (loss float64, err error) {
	for _, m := range []float64{from, to} {
		if !(m >= driest && m <= wettest()) {
			return 0, &MoistureError{m}
		}
	}
	return width * (fromGreen(to) - fromGreen(from)) / (100 - fromGreen(from)), nil
}

// ShrinkIndoors returns what a board bought dry loses of its width in a heated room, from 19 to 8 percent moisture, in
// the unit of the width: what a gap beside it may grow.
func ShrinkIndoors(width float64) float64 { return must(Shrink(width, wettest(), driest)) }

// fromGreen returns the shrinkage of the width from green in percent.
func fromGreen(moisture float64) float64 { return 6.031 - 0.215*moisture }
