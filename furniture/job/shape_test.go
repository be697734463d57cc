package job_test

import (
	"math"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// TestShapesBegin: areas by hand, of rooms 4 m by 3 m. The L lacks 1.6 m x 1.2 m (two fifths each); the alcove of 2.4 m x 0.6 m comes on top:
// two fifths of 4 m are its two sides, half of two fifths of 3 m its depth.
func TestShapesBegin(t *testing.T) {
	for shape, want := range map[job.Shape]float64{
		job.Rectangle: 12, job.LShape: 12 - 1.6*1.2, job.Alcove: 12 + 2.4*0.6, job.Slope: 12, "": 12,
	} {
		j := job.New(job.Start{Name: "new", Unit: length.Millimetres, Places: []string{"EU"}, Shape: shape, AB: 4000 * length.Millimetre,
			BC: 3000 * length.Millimetre, Assumed: true})
		s, err := j.Survey()
		if err != nil || !s.Outline {
			t.Fatalf("%q: %v, a shape: %v", shape, err, s.Outline)
		}
		if got := areaOf(j, func(i int) geom.V2 {
			at := geom.V2{}
			if r := s.Layout.X[i]; r != 0 {
				at.X = s.Value(r)
			}
			if r := s.Layout.Y[i]; r != 0 {
				at.Y = s.Value(r)
			}
			return at
		}); math.Abs(got-want) > 1e-3 {
			t.Errorf("%q: %.4f m2, want %.4f", shape, got, want)
		}
		for _, w := range j.Room.Walls {
			if len(w.Length) > 0 && w.Length[0].How != room.Assumed {
				t.Errorf("%q: %s is known as %s", shape, w.Key, w.Length[0].How)
			}
		}
		if _, err := jobfile.Load(jobfile.Encode(&j), "new"); err != nil {
			t.Errorf("%q is not loadable: %v", shape, err)
		}
	}
}

// areaOf is the area of the outline in square metres, by the trapezoid rule.
func areaOf(j job.Job, corner func(int) geom.V2) float64 {
	n, sum := len(j.Room.Outline), 0.0
	for i := range n {
		a, b := corner(i), corner((i+1)%n)
		sum += a.Cross(b) / 2
	}
	return math.Abs(sum) / 1e6
}

// TestSlopeIsAtFortyFive: the face rises as much as it comes out from its wall.
func TestSlopeIsAtFortyFive(t *testing.T) {
	j := job.New(job.Start{Unit: length.Inches, Shape: job.Slope, AB: 144 * length.Inch, BC: 120 * length.Inch, Ceiling: 90 * length.Inch})
	if len(j.Room.Ceilings) != 2 || !j.Room.Ceilings[1].Sloped {
		t.Fatalf("ceilings %+v", j.Room.Ceilings)
	}
	h := j.Room.Ceilings[1].Heights
	if rise, out := h[1].Height[0].Value-h[0].Height[0].Value, h[1].Out[0].Value-h[0].Out[0].Value; rise != out || rise <= 0 {
		t.Errorf("it rises %v over %v", rise, out)
	}
	if j.Room.Walls[0].Length[0].How != room.Once || h[0].Height[0].How != room.Assumed {
		t.Error("what was given is read once, what was not is assumed")
	}
}
