package fit

import (
	"math"
	"testing"

	"bunkwright/room/geom"
)

// TestLookingThroughBoards: lines of sight cast past upright boards get through as often as the formula for boards says: the same optics as
// the slat values of ISO 15099 (reference: "board slats"). 400 lines find the share within 1 in 200.
func TestLookingThroughBoards(t *testing.T) {
	const face, thick, gap = 88.9, 19.05, 85.725
	boards := make([]blocker, 60)
	for i := range boards {
		x := (face + gap) * float64(i)
		b := geom.NewBox(geom.V3{X: x, Y: 0, Z: -10}, geom.V3{X: x + face, Y: thick, Z: 10})
		lo, hi := b.Bounds()
		boards[i] = blocker{&b, lo, hi}
	}
	var s Scene
	for _, degrees := range []float64{0, 15, 30, 45, 60, 75, 80} {
		slope := math.Tan(degrees * math.Pi / 180)
		n := 0
		const lines = 400
		for k := range lines {
			_, part := math.Modf(float64(k) * math.Phi) // spread evenly, in no step with the boards
			x := (face + gap) * (20 + part)
			if s.blocked(geom.V3{X: x - 100*slope, Y: -100}, geom.V3{X: x + 100*slope, Y: 100}, boards, 0) == clearLook {
				n++
			}
		}
		want := BoardsLetThrough(face, thick, gap, degrees)
		if got := float64(n) / lines; math.Abs(got-want) > 0.005 {
			t.Errorf("at %g degrees %g gets through, the formula says %g", degrees, got, want)
		}
	}
}

// TestPillowInSight: from the doorway of an empty room nothing stands before the near half of the bed but the bed itself; a screen as
// high as the room before the bed hides the pillow.
func TestPillowInSight(t *testing.T) {
	s := stage(t, bedroom(3500, 3000))
	open := s.Nominal(seeThem).Lines
	if len(open) != 2 || open[0].Value <= 0 {
		t.Errorf("%+v", open)
	}
	hidden := stage(t, bedroom(3500, 3000, screen)).Nominal(seeThem).Lines
	for _, l := range hidden {
		if l.Value != 0 {
			t.Errorf("%s sees %g through a screen", l.At, l.Value)
		}
	}
}
