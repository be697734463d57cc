package geom

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// quarter is a leaf 800 wide and 40 thick with its pin at the origin; shut it lies along x, open along y.
func quarter() Leaf {
	return Leaf{Shut: V2{1, 0}, In: V2{0, 1}, Wide: 800, Thick: 40, Opens: math.Pi / 2}
}

// TestLeafByHand: distances from a quarter circle of 800, whose outermost corner reaches root(800^2 + 40^2) = 800.9994.
func TestLeafByHand(t *testing.T) {
	l := quarter()
	close(t, "reach", l.Reach(), math.Sqrt(641600))
	for _, c := range []struct {
		what string
		p    Polygon
		gap  float64
	}{
		{"square on, beyond the leaf when open", Rect(-50, 1000, 50, 1100), 200}, // the open leaf ends at y = 800
		{"at 45 degrees, corner (600, 800) is 1000 from the pin", Rect(600, 800, 700, 900), 1000 - l.Reach()},
		{"in the way: corner (480, 360) is 600 from the pin", Rect(480, 360, 900, 900), -200},
		{"beside the open leaf, behind the hinge", Rect(-300, 100, -30, 500), 30},
		{"flush with the open leaf", Rect(-300, 100, 0, 500), 0},
		{"along the wall beyond the leaf", Rect(900, 0, 1200, 300), 900 - l.Reach()},
	} {
		close(t, c.what, l.Gap(c.p), c.gap)
	}
	// The same with a handle 63 out, 730 from the pin: open, its tip stands at (-63, 730).
	l.HandleAt, l.Handle = 730, 63
	close(t, "beside the handle", l.Gap(Rect(-300, 600, -80, 900)), 17)
	if g := l.Gap(Rect(-300, 600, -30, 900)); g >= 0 || g < 730-800-5 {
		t.Errorf("in the handle's way: %g, want about -70", g)
	}
}

// TestLeafMeetsByHand: a point straight ahead is met at its own direction; the handle comes earlier by atan(63 / 730).
func TestLeafMeetsByHand(t *testing.T) {
	l := quarter()
	deg := func(p Polygon) float64 {
		a, ok := l.MeetsAt(p)
		if !ok {
			return 90
		}
		return a * 180 / math.Pi
	}
	close(t, "corner (480, 360)", deg(Rect(480, 360, 900, 900)), math.Asin(360.0/800)*180/math.Pi) // its lower edge, out on the circle
	close(t, "post at 60 degrees", deg(Rect(100, 100*math.Sqrt(3), 110, 190)), math.Atan2(100*math.Sqrt(3), 110)*180/math.Pi)
	close(t, "out of reach", deg(Rect(600, 800, 700, 900)), 90)
	l.HandleAt, l.Handle = 730, 63
	tip := math.Hypot(730, 63)
	close(t, "wall that the handle meets", deg(Rect(-900, 0, -30, 900)), (math.Acos(-30/tip)-math.Atan2(63, 730))*180/math.Pi)
}

// met tells whether the leaf at an angle, or its handle, shares a point with p: straight from the definition.
func (l Leaf) met(p Polygon, angle float64) bool {
	u := l.Shut.Mul(math.Cos(angle)).Add(l.In.Mul(math.Sin(angle)))
	v := l.In.Mul(math.Cos(angle)).Sub(l.Shut.Mul(math.Sin(angle)))
	at := func(x, y float64) V2 { return l.Pin.Add(u.Mul(x)).Add(v.Mul(y)) }
	leaf := Polygon{at(0, 0), at(0, -l.Thick), at(l.Wide, -l.Thick), at(l.Wide, 0)}
	if d, _, _ := Closest(p, leaf); d == 0 {
		return true
	}
	d, _, _ := Closest(p, Polygon{at(l.HandleAt, 0), at(l.HandleAt, l.Handle)})
	return d == 0
}

// TestLeafAgainstTurning: the leaf turned in 2000 steps meets an outline exactly where Gap is negative, and first at the
// angle that MeetsAt gives.
func TestLeafAgainstTurning(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		num := func(what string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, what) }
		place := NewPlace(num("turned", 0, 6), V3{num("x", -500, 500), num("y", -500, 500), 0})
		l := Leaf{
			Pin: place.Point(V3{}).XY(), Shut: place.Dir(V3{X: 1}).XY(), In: place.Dir(V3{Y: 1}).XY(),
			Wide: num("wide", 300, 1000), Thick: num("thick", 20, 60), Opens: num("opens", 0.5, math.Pi),
		}
		if rapid.Bool().Draw(t, "left hand") {
			l.Shut = l.Shut.Mul(-1)
		}
		l.HandleAt, l.Handle = l.Wide-70, num("handle", 20, 80)
		c, r := l.Shut.Mul(num("along", -1200, 1200)).Add(l.In.Mul(num("out", 60, 1200))), num("size", 10, 50)
		p := NewPlace(num("box", 0, 3), l.Pin.Add(c).At(0)).Box(NewBox(V3{-r, -r, 0}, V3{r, r, 1})).Footprint()

		first := math.Inf(1)
		for i := 0; i <= 2000; i++ {
			if a := float64(i) / 2000 * l.Opens; l.met(p, a) {
				first = a
				break
			}
		}
		gap := l.Gap(p)
		angle, meets := l.MeetsAt(p)
		switch {
		case math.IsInf(first, 1) && (gap < -2 || meets && angle < l.Opens-0.01): // what a step or the handle's arc may hide
			t.Fatalf("never met, but gap %g, angle %g", gap, angle)
		case !math.IsInf(first, 1) && (gap > 1e-6 || !meets && first < l.Opens-0.003):
			t.Fatalf("met at %g, but gap %g", first, gap)
		case !math.IsInf(first, 1) && math.Abs(first-angle) > 0.004:
			t.Fatalf("met at %g, not %g", first, angle)
		}
	})
}

// TestLeafBoundsHoldTheSweep: what lies outside the bounds is never met, and a leaf opened to any angle lies inside them.
func TestLeafBoundsHoldTheSweep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		num := func(lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, "n") }
		u := turned(num(0, 6))
		l := Leaf{Pin: V2{num(-100, 100), num(-100, 100)}, Shut: u, In: u.Right(), Wide: num(300, 900), Thick: num(20, 50), Opens: num(0.3, 3.1), HandleAt: num(200, 280), Handle: num(0, 80)}
		lo, hi := l.Bounds()
		p := V2{num(-1500, 1500), num(-1500, 1500)}
		inside := p.X >= lo.X-1 && p.X <= hi.X+1 && p.Y >= lo.Y-1 && p.Y <= hi.Y+1
		if !inside && l.Gap(Rect(p.X, p.Y, p.X+0.5, p.Y+0.5)) < 0 {
			t.Fatalf("%v is swept outside %v to %v", p, lo, hi)
		}
	})
}

// TestAHandleOfNoDepthSweepsNothing: a handle as deep as a rounding error once made every outline count as met.
func TestAHandleOfNoDepthSweepsNothing(t *testing.T) {
	l := Leaf{Shut: V2{1, 0}, In: V2{0, 1}, Wide: 300, Thick: 20, Opens: 1, HandleAt: 200, Handle: 7e-15}
	if gap := l.Gap(Rect(-62.5, 8, -62, 8.5)); gap < 40 {
		t.Errorf("gap %g behind the pin, want over 40", gap)
	}
}
