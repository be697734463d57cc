package place_test

import (
	"context"
	"errors"
	"math"
	"reflect"
	"testing"
	"time"

	"bunkwright/furniture/job"
	"bunkwright/furniture/place"
	"bunkwright/room"
	"bunkwright/room/length"
)

// sillAt makes a bedroom with a guarded window, far from the bed, whose sill is under the 44 in of a way out (irc-escape-sill) by a margin, read
// once with a stated standard uncertainty; everything else about it has room. All in inches.
func sillAt(margin, u float64) *job.Job {
	in := func(x float64) float64 { return x * 25.4 }
	j := bedroom(4200, 3600)
	present(j, "window")
	j.Room.Windows = []room.Window{{
		Key: "yard", OnWall: room.OnWall{Wall: "AB", From: "A", At: read(600)}, Wide: read(900), Head: read(2100), Kind: "hinged at a side", Guard: "yes",
		Sill:      room.Measure{{Value: mm(in(44 - margin)), How: room.Once, U: mm(in(u))}},
		ClearWide: read(860), ClearHigh: read(900), Opens: read(860), Casing: read(60), CasingDeep: read(15), SillDeep: read(0), Cordless: true, Drop: read(3000),
	}}
	return j
}

// TestShareAgainstClosedForm: with one Gaussian reading that decides, the share is the probability of conformity, the normal distribution at
// margin / u (JCGM 106:2012, 7.3; cases con-015, con-017, con-019 and con-023 of room/survey/testdata/conformity_cases.csv, whose margins are
// 120.0 less the need). The share may differ by four standard uncertainties of drawing n rooms.
func TestShareAgainstClosedForm(t *testing.T) {
	for _, c := range []struct {
		id           string
		margin, u, p float64
	}{
		{"con-015", 120.0 - 119.75, 0.098, 0.9946},
		{"con-017", 120.0 - 119.9, 0.098, 0.8462},
		{"con-019", 120.0 - 120.25, 0.098, 0.0054},
		{"con-023", 120.0 - 119.83, 0.098, 0.9586},
	} {
		s, answers := answered(t, sillAt(c.margin, c.u))
		r, err := place.PlausibleRooms(context.Background(), s, answers, place.RoomsOptions{N: 10_000})
		if err != nil {
			t.Fatal(err)
		}
		if off := 4 * math.Sqrt(c.p*(1-c.p)/float64(r.N)); math.Abs(r.Share()-c.p) > off+0.0001 {
			t.Errorf("%s: share %.4f, want %.4f within %.4f; %v", c.id, r.Share(), c.p, off, r.Fails)
		}
		if r.Moves != "window.yard.sill" {
			t.Errorf("%s: %s moves it most", c.id, r.Moves)
		}
	}
}

// TestSureRoom: where every safety answer has far more to spare than its uncertainty, all rooms fit; words say so.
func TestSureRoom(t *testing.T) {
	s, answers := answered(t, sillAt(20, 0.1))
	r, err := place.PlausibleRooms(context.Background(), s, answers, place.RoomsOptions{})
	if err != nil || r.Share() != 1 || r.Words() != "in all of 10000 rooms that agree with these readings" {
		t.Errorf("%v %q %v", r.Share(), r.Words(), err)
	}
}

// TestSameRoomsWhateverTheWorkers: the same rooms are drawn however many work, and other ones from another seed.
func TestSameRoomsWhateverTheWorkers(t *testing.T) {
	s, answers := answered(t, sillAt(0.05, 0.1))
	draw := func(o place.RoomsOptions) place.Rooms {
		r, err := place.PlausibleRooms(context.Background(), s, answers, o)
		if err != nil {
			t.Fatal(err)
		}
		return r
	}
	a, b, c := draw(place.RoomsOptions{N: 3000, Workers: 1}), draw(place.RoomsOptions{N: 3000, Workers: 3}), draw(place.RoomsOptions{N: 3000, Seed: 7})
	if !reflect.DeepEqual(a, b) {
		t.Errorf("one worker %+v, three %+v", a, b)
	}
	if a.Fit == c.Fit {
		t.Error("another seed draws the same rooms")
	}
}

// TestRoomsCancel ends within 0.1 s.
func TestRoomsCancel(t *testing.T) {
	s, answers := answered(t, sample(t, "town-house.toml"))
	ctx, cancel := context.WithCancel(context.Background())
	time.AfterFunc(30*time.Millisecond, cancel)
	begin := time.Now()
	_, err := place.PlausibleRooms(ctx, s, answers, place.RoomsOptions{N: 1_000_000})
	if took := time.Since(begin); !errors.Is(err, context.Canceled) || took > 130*time.Millisecond {
		t.Errorf("%v after %v", err, took)
	}
}

// BenchmarkPlausibleRooms draws 10,000 rooms of the town house (budget 2 s).
func BenchmarkPlausibleRooms(b *testing.B) {
	s, answers := answered(b, sample(b, "town-house.toml"))
	for b.Loop() {
		r, err := place.PlausibleRooms(context.Background(), s, answers, place.RoomsOptions{Workers: 1})
		if err != nil || r.N != 10_000 {
			b.Fatal(err)
		}
	}
}

// BenchmarkGrowth shows how the time of a search grows with corners, things in the room and step.
func BenchmarkGrowth(b *testing.B) {
	run := func(name string, j *job.Job, o place.Options) {
		o.Nominal, o.Workers = true, 1
		b.Run(name, func(b *testing.B) {
			tried := 0
			for b.Loop() {
				r, err := place.Search(context.Background(), j, o)
				if err != nil {
					b.Fatal(err)
				}
				tried = r.Tried
			}
			b.ReportMetric(float64(tried), "placements")
		})
	}
	for _, teeth := range []int{1, 3, 9} {
		j := comb(teeth)
		run("corners-"+[]string{1: "8", 3: "16", 9: "40"}[teeth], j, place.Options{Step: 25 * length.Millimetre})
	}
	for _, n := range []int{0, 4, 16, 60} {
		run("things-"+[]string{0: "0", 4: "4", 16: "16", 60: "60"}[n], crowded(n), place.Options{Step: 25 * length.Millimetre})
	}
	for _, step := range []length.Length{100, 25, 5} {
		run("step-"+length.Exact(step*length.Millimetre, length.Millimetres), sample(b, "town-house.toml"), place.Options{Step: step * length.Millimetre})
	}
}
