package geom

import "testing"

// TestCornersByHand: 3-4-5 is square; legs of 3000 and 4000 whose diagonal is 10 too long are off by 10 x 5000 / (3000 x 4000) radians, to
// first order.
func TestCornersByHand(t *testing.T) {
	close(t, "3-4-5", CornerAngle(3, 4, 5), 90)
	close(t, "an even triangle", CornerAngle(2, 2, 2), 60)
	close(t, "diagonal 10 off", DiagonalError(3000, 4000, 10), 0.004166666666666667*57.29577951308232)
}
