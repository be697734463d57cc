package geom

import (
	"math"
	"testing"
)

// TestSectorByHand: a leaf of 800 by 40 whose pin is the origin opens a right angle from x towards y. Its outermost corner is
// sqrt(800^2 + 40^2) = 800.9994 from the pin and stops atan(40/800) = 2.8624 degrees short; its handle, 730 out, sticks out 60.
func TestSectorByHand(t *testing.T) {
	l := Leaf{Shut: V2{1, 0}, In: V2{0, 1}, Wide: 800, Thick: 40, Opens: math.Pi / 2, HandleAt: 730, Handle: 60}
	s := l.Sectors()
	at := func(what string, got, want V2) {
		if got.Dist(want) > 1e-3 {
			t.Errorf("%s: %v, want %v", what, got, want)
		}
	}
	at("shut", s[0].At(0), V2{800, 0})
	at("open", s[0].At(s[0].Angle), V2{0, 800})
	at("corner, open", s[1].At(s[1].Angle), V2{40, 800})
	h := l.HandleSweep()
	at("handle's foot", h[0], V2{0, 730})
	at("handle's tip", h[2], V2{-60, 730})

	for _, c := range []struct {
		d    V2
		want bool
	}{{V2{1, 1}, true}, {V2{1, 0}, true}, {V2{0, 5}, true}, {V2{-0.1, 1}, false}, {V2{1, -0.1}, false}, {V2{-1, -1}, false}} {
		if s[0].Spans(c.d) != c.want {
			t.Errorf("%v within: %v, want %v", c.d, !c.want, c.want)
		}
	}
}
