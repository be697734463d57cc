package fit

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/room"
)

// once makes a measure of readings that were taken once each: u = 1/8 in.
func once(values ...float64) room.Measure {
	var m room.Measure
	for _, v := range values {
		m = append(m, room.Reading{Value: mm(v), How: room.Once})
	}
	return m
}

// measured is the bedroom of 3600 by 3000 with every wall and diagonal read once, BC as given.
func measured(bc ...float64) *job.Job {
	return bedroom(3600, 3000, func(j *job.Job) {
		for i, v := range [][]float64{{3600}, bc, {3600}, {3000}} {
			j.Room.Walls[i].Length = once(v...)
		}
		d := math.Hypot(3600, 3000)
		j.Room.Diagonals = []room.Diagonal{{Key: "AC", Length: once(d)}, {Key: "BD", Length: once(d)}}
	})
}

// TestWhatHangsOnConflicts: without a conflict the way to the door fits with much to spare; one of six readings a foot off, it is too close to
// call and names the six; that wall read again, it names the one. The bed by itself fits in any case.
func TestWhatHangsOnConflicts(t *testing.T) {
	for _, c := range []struct {
		bc   []float64
		says string
	}{
		{[]float64{3000}, ""}, {[]float64{3304.8}, "one of these six is off, by 190 mm to 300 mm depending on which"},
		{[]float64{3304.8, 3000}, "wall BC.length, reading 1, read as 3305 mm, is 305 mm more than the other readings say: take it again"},
	} {
		_, answers, err := Answers(measured(c.bc...))
		if err != nil {
			t.Fatal(err)
		}
		for _, a := range answers {
			switch a.ID {
			case walkway.ID:
				if (a.Verdict == Fits) != (c.says == "") || (a.Doubt == 0) != (c.says == "") || !strings.Contains(strings.ReplaceAll(a.Reason, "wall.BC", "wall BC"), c.says) {
					t.Errorf("%v: %s: %v, %q", c.bc, a.ID, a.Verdict, a.Reason)
				}
			case railHeight.ID:
				if a.Verdict != Fits || a.Doubt != 0 {
					t.Errorf("%v: %s: %v, %q", c.bc, a.ID, a.Verdict, a.Reason)
				}
			}
		}
	}
}

// TestYesAndNoHangToo: the blades of a fan, 300 mm about its middle, end more than 50 mm before the bed by the readings. Its place read twice,
// 300 mm apart, may put it over the bed: the row that asks by yes or no is not sure either.
func TestYesAndNoHangToo(t *testing.T) {
	for _, out := range [][]float64{{1500}, {1500, 1800}} { // from wall AB; the bed lies from about 2015 to 3000
		j := measured(3000)
		j.Room.Fans = []room.Fan{{Key: "fan", Spot: room.Spot{Wall: "AB", From: "A", At: once(1800), Out: once(out...)}, Sweep: once(600), Blades: once(2300)}}
		_, answers, err := Answers(j)
		if err != nil {
			t.Fatal(err)
		}
		for _, a := range answers {
			if a.ID != fanAndLights.ID {
				continue
			}
			for _, l := range a.Lines {
				if l.Row.ID == overheadRows[0] && l.At == "fan.fan.under" && (l.Verdict == Fits) != (len(out) == 1) {
					t.Errorf("out %v: %v %q", out, l.Verdict, l.Reason)
				}
			}
		}
	}
}
