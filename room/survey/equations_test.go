package survey

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// Derivatives are held against central differences: (f(x+h) - f(x-h)) / 2h errs by about h^2.
func TestSlopesAreDerivatives(t *testing.T) {
	coordinates := rapid.SliceOfN(rapid.Float64Range(-5, 5), 6, 6).Filter(func(at []float64) bool {
		return shortLeg([6]float64(at)) > 0.5 // closer points bend too much for a difference quotient
	})
	rapid.Check(t, func(t *rapid.T) {
		at := [6]float64(coordinates.Draw(t, "coordinates"))
		distance := func(at [6]float64) (float64, [6]float64) {
			d, s := PredictDistance([4]float64(at[:4]))
			return d, [6]float64{s[0], s[1], s[2], s[3]}
		}
		for name, f := range map[string]func([6]float64) (float64, [6]float64){
			"distance": distance, "clockwise": PredictClockwise, "corner": PredictCorner} {
			value, slopes := f(at)
			if name == "corner" && (value < 0.1 || value > math.Pi-0.1) {
				continue // at a straight or folded corner the angle has a kink
			}
			checkSlopes(t, name, f, at, slopes)
		}
	})
}

func shortLeg(at [6]float64) float64 {
	return min(math.Hypot(at[2]-at[0], at[3]-at[1]), math.Hypot(at[4]-at[0], at[5]-at[1]))
}

func checkSlopes(t *rapid.T, name string, f func([6]float64) (float64, [6]float64), at, slopes [6]float64) {
	const h = 1e-5
	for i := range at {
		up, down := at, at
		up[i] += h
		down[i] -= h
		a, _ := f(up)
		b, _ := f(down)
		// The remainder takes out the whole turn between two sides of a half turn; differences are far smaller.
		if d := math.Remainder(a-b, 2*math.Pi) / (2 * h); math.Abs(d-slopes[i]) > 1e-6 {
			t.Fatalf("%s at %v: slope %d is %v, the difference quotient %v", name, at, i, slopes[i], d)
		}
	}
}

// By hand: standing at the origin, north (0, 1) to east (1, 0) is 90 degrees clockwise, east to north 270.
func TestAnglesTurnClockwise(t *testing.T) {
	origin, north, east := Position{}, Position{Y: Known(1)}, Position{X: Known(1)}
	for _, c := range []struct {
		eq   Equation
		want float64
	}{
		{ClockwiseEquation("", origin, north, east, 91, 1, Degree), 90},
		{ClockwiseEquation("", origin, east, north, 269, 1, Degree), 270},
		{ClockwiseEquation("", origin, east, north, -91, 1, Degree), -90},
		{ClockwiseEquation("", origin, north, east, 0, 1, Arcsecond), 324000},
		{ClockwiseEquation("", origin, north, east, 1, 1, Radian), math.Pi / 2},
		{CornerEquation("", origin, north, east, 90, 1, Degree), 90},
		{CornerEquation("", origin, east, north, 90, 1, Degree), 90},
	} {
		if got := c.eq.Predict(nil, nil); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("reading %v: got %v, want %v", c.eq.Observed, got, c.want)
		}
	}
}

func TestPointsInOnePlace(t *testing.T) {
	if d, s := PredictDistance([4]float64{1, 2, 1, 2}); d != 0 || s != [4]float64{} {
		t.Errorf("distance: got %v, %v", d, s)
	}
	if a, s := PredictClockwise([6]float64{}); a != 0 || s != [6]float64{} {
		t.Errorf("angle: got %v, %v", a, s)
	}
}

// Two corners that share an unknown (a wall kept parallel to x) must add its two slopes.
func TestSharedUnknown(t *testing.T) {
	y := Unknown(0)
	eq := DistanceEquation("", Position{Known(0), y}, Position{Known(3), y}, 3, 1)
	p := Problem{Start: []float64{5}, Equations: []Equation{eq, LinearEquation("", []Term{{0, 2}}, 1, 12, 1)}}
	s, err := Solve(p)
	if err != nil || math.Abs(s.X[0]-5.5) > 1e-12 {
		t.Errorf("got %v, %v; want 5.5 from 2y + 1 = 12, the distance says nothing about y", s.X, err)
	}
}
