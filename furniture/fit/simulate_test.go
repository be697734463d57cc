package fit

import (
	"fmt"
	"math"
	"math/rand/v2"
	"reflect"
	"slices"
	"testing"

	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/length"
	"bunkwright/samples"
)

// The whole way, from fixed seeds: a true room, what a relative reads of it (everything twice, normal errors of 1/8 in, in every other room one
// slip), a bed placed by those readings, and the truth. What the readings call "fits" has to be so in the true room; the aim of the project is
// at most 1 in 1000 that is not, where what hangs on an unresolved slip counts as refused.

const inch = 25.4

// trueJob draws a true room round the bed of a sample and reads it exactly. Walls lean and the ceiling slopes by no more than is accepted
// workmanship (3/8 in per 32 in, 1/2 in over 20 ft; house_tolerance.csv), corners are off square by 0.3 degree.
func trueJob(r *rand.Rand, base *job.Job) *job.Job {
	j := *base
	a, b := inch*(118+42*r.Float64()), inch*(96+34*r.Float64())
	at := [][2]float64{{0, 0}, {a, 0}, {a, -b}, {0, -b}}
	for i := 1; i < 4; i++ {
		at[i][0] += 0.005 * b * r.NormFloat64()
		at[i][1] += 0.005 * b * r.NormFloat64()
	}
	at[1][1] = 0
	d := func(i, k int) room.Measure { return exact(math.Hypot(at[i][0]-at[k][0], at[i][1]-at[k][1])) }
	j.Room.Walls = slices.Clone(base.Room.Walls)
	for i := range j.Room.Walls {
		w := &j.Room.Walls[i]
		w.Length = d(i, (i+1)%4)
		lean := 0.375 / 32 * (2*r.Float64() - 1)
		low, middle, high := j.Room.ReadAt()
		w.Plumbs = []room.Plumb{{Low: exact(100 + lean*(low-middle)), Middle: exact(100), High: exact(100 + lean*(high-middle))}}
	}
	j.Room.Diagonals = []room.Diagonal{{Key: "AC", Length: d(0, 2)}, {Key: "BD", Length: d(1, 3)}}
	z, sx, sy := inch*(86+14*r.Float64()), 0.5/240*(2*r.Float64()-1), 0.5/240*(2*r.Float64()-1)
	j.Room.Ceilings = []room.Ceiling{{Key: "main"}}
	for i, c := range "ABCD" {
		j.Room.Ceilings[0].Heights = append(j.Room.Ceilings[0].Heights,
			room.Height{Key: string(c), Corner: string(c), Height: exact(z + sx*at[i][0] + sy*at[i][1])})
	}
	things(r, &j.Room, a, b, d(3, 0)[0].Value.MM())
	eachMeasure(reflect.ValueOf(&j.Room).Elem(), func(m room.Measure) room.Measure { return exact(m[0].Value.MM()) })
	return &j
}

// things puts door, window, lamp and alarm somewhere into the true room.
func things(r *rand.Rand, in *room.Room, a, b, window float64) {
	in.Doors, in.Windows = slices.Clone(in.Doors), slices.Clone(in.Windows)
	in.Lights, in.Alarms = slices.Clone(in.Lights), slices.Clone(in.Alarms)
	in.Doors[0].At = exact(inch * (3 + 20*r.Float64()))
	w := &in.Windows[0]
	w.At = exact(inch * (8 + 20*r.Float64()))
	w.Rest = exact(window - w.At[0].Value.MM() - w.Wide[0].Value.MM())
	w.Sill = exact(inch * (20 + 20*r.Float64()))
	in.Lights[0].At, in.Lights[0].Out = exact(a*(0.3+0.4*r.Float64())), exact(b*(0.2+0.4*r.Float64()))
	in.Alarms[0].At, in.Alarms[0].Out = exact(a*(0.1+0.3*r.Float64())), exact(b*(0.1+0.3*r.Float64()))
}

// exact is the truth: a reading with next to no uncertainty.
func exact(mm float64) room.Measure {
	return room.Measure{{Value: length.FromMM(mm), How: room.Mine, U: 1}}
}

// eachMeasure changes every measure that was read; lists on the way are copied.
func eachMeasure(v reflect.Value, do func(room.Measure) room.Measure) {
	switch m, ok := v.Interface().(room.Measure); {
	case ok && len(m) > 0:
		v.Set(reflect.ValueOf(do(m)))
	case ok:
	case v.Kind() == reflect.Struct:
		for i := range v.NumField() {
			eachMeasure(v.Field(i), do)
		}
	case v.Kind() == reflect.Slice && v.Type().Elem().Kind() == reflect.Struct:
		list := reflect.MakeSlice(v.Type(), v.Len(), v.Len())
		reflect.Copy(list, v)
		v.Set(list)
		for i := range list.Len() {
			eachMeasure(list.Index(i), do)
		}
	}
}

// readBy is what the relative makes of a true room: no plumb line, everything twice, and a slip in one reading if asked for.
func readBy(r *rand.Rand, truth *job.Job, slip bool) *job.Job {
	j := *truth
	j.Room.Walls = slices.Clone(truth.Room.Walls)
	for i := range j.Room.Walls {
		j.Room.Walls[i].Plumbs = nil
	}
	var all []*room.Reading
	eachMeasure(reflect.ValueOf(&j.Room).Elem(), func(m room.Measure) room.Measure {
		out := make(room.Measure, 2)
		for i := range out {
			v := m[0].Value.MM()
			sd := min(0.125*inch, v/8) // of what is small nobody is off by half
			out[i] = room.Reading{Value: length.FromMM(max(0, v+sd*r.NormFloat64())), How: room.Once}
			all = append(all, &out[i])
		}
		return out
	})
	for slip {
		one := all[r.IntN(len(all))]
		v := one.Value.MM() + inch*[]float64{1, -1, 2, 10, -10, 12, -12, 24, -3}[r.IntN(9)]
		if one.Value.MM() > 6*inch && v > 0 {
			one.Value, slip = length.FromMM(v), false
		}
	}
	return &j
}

// toll counts answers.
type toll struct{ rooms, fits, falsely, short, roomy, unsaid int }

func (c toll) String() string {
	return fmt.Sprintf("%4d rooms: %5d answers say fits, %d of them falsely (%.2f in 1000), while %d truly do not fit; %5d true fits with 1/2 in and more to spare, %d not said (%.1f %%)",
		c.rooms, c.fits, c.falsely, 1000*float64(c.falsely)/float64(max(1, c.fits)), c.short, c.roomy, c.unsaid, 100*float64(c.unsaid)/float64(max(1, c.roomy)))
}

// hold compares what the readings say with the truth, answer by answer.
func (c *toll) hold(t *testing.T, said, truth []Answer) {
	c.rooms++
	for i, a := range said {
		really := truth[i]
		if really.Verdict == DoesNotFit {
			c.short++
		}
		if a.Verdict == Fits {
			c.fits++
			if really.Verdict == DoesNotFit {
				c.falsely++
				t.Logf("%s said to fit by %.1f u %.1f, and is short by %.1f: %s", a.ID, a.Spare, a.U, really.Spare, really.Reason)
			}
		}
		if really.Verdict == Fits && really.HasSpare && really.Unit == yardstick.MM && really.Spare >= inch/2 {
			c.roomy++
			if a.Verdict != Fits {
				c.unsaid++
			}
		}
	}
}

// TestSaidAndTrue is the simulation; with -short a tenth of it.
func TestSaidAndTrue(t *testing.T) {
	data, err := samples.Files.ReadFile("measured-for-us.toml")
	if err != nil {
		t.Fatal(err)
	}
	f, err := jobfile.Load(data, "measured-for-us.toml")
	if err != nil {
		t.Fatal(err)
	}
	n := 500
	if testing.Short() {
		n /= 10
	}
	var clean, slipped toll
	for i := range n {
		r := rand.New(rand.NewPCG(20270604, uint64(i)))
		f.Job.Bed.Upper.Height = length.FromMM(inch * (50 + 6*r.Float64()))
		truth := trueJob(r, &f.Job)
		measured := readBy(r, truth, i%2 == 1)
		_, said, err := Answers(measured)
		if err != nil {
			t.Fatal(err)
		}
		_, really, err := Answers(truth)
		if err != nil {
			t.Fatal(err)
		}
		if i%2 == 1 {
			slipped.hold(t, said, really)
		} else {
			clean.hold(t, said, really)
		}
	}
	t.Logf("without a slip %v", clean)
	t.Logf("with one slip  %v", slipped)
	if bad, all := clean.falsely+slipped.falsely, clean.fits+slipped.fits; 1000*bad > all && !testing.Short() {
		t.Errorf("%d of %d answers say fits falsely, want at most 1 in 1000", bad, all)
	}
}
