package session

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// standing is a plain oblong of 4000 x 3000 with square corners, upright walls and a baseboard of 15, the bed at wall AB.
func standing(t interface{ Fatal(...any) }, edit func(*job.Job)) *fit.Scene {
	mm := func(n int64) length.Length { return length.Length(n) * length.Millimetre }
	j := job.New(job.Start{Name: "plain", Unit: length.Millimetres, Places: []string{"EU"}, AB: mm(4000), BC: mm(3000), Ceiling: mm(2500)})
	j.Room.Floor.Cover = "hard"
	for i := range j.Room.Walls {
		j.Room.Walls[i].BaseDeep = j.Room.Walls[i].BaseDeep[:0:0]
		j.Room.Walls[i].BaseDeep = append(j.Room.Walls[i].BaseDeep, reading(15))
	}
	j.Place.Along = mm(500)
	if edit != nil {
		edit(&j)
	}
	s, err := fit.NewScene(&j)
	if err != nil {
		t.Fatal(err)
	}
	if !s.Stands {
		t.Fatal(s.Wants)
	}
	return s
}

func foot(s *fit.Scene) (lo, hi geom.V2) {
	lo, hi = geom.V2{X: math.Inf(1), Y: math.Inf(1)}, geom.V2{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, p := range s.Bed.Foot {
		q := s.ToRoom.Point(p.At(0)).XY()
		lo.X, lo.Y, hi.X, hi.Y = min(lo.X, q.X), min(lo.Y, q.Y), max(hi.X, q.X), max(hi.Y, q.Y)
	}
	return lo, hi
}

// TestMovedBedIsWhereItWasMoved: without anything to settle on, the bed stands exactly where it was moved, whichever wall counts it then.
func TestMovedBedIsWhereItWasMoved(t *testing.T) {
	turns := []job.Turn{job.AgainstSide, job.AgainstFront, job.AgainstLeft, job.AgainstRight}
	rapid.Check(t, func(t *rapid.T) {
		s := standing(t, func(j *job.Job) {
			j.Place.Turn = rapid.SampledFrom(turns).Draw(t, "turn")
			j.Place.Mirror = rapid.Bool().Draw(t, "mirror")
			j.Place.From = rapid.SampledFrom([]string{"A", "B"}).Draw(t, "from")
			j.Place.Gap = length.Some(length.FromMM(300))
		})
		lo, hi := foot(s)
		by := geom.V2{X: rapid.Float64Range(-400, 1200).Draw(t, "x"), Y: rapid.Float64Range(-600, 250).Draw(t, "y")}
		s.Put(Move(s, by, Snapping{}).Place)
		got, top := foot(s)
		want := lo.Add(by)
		if want.X < 1 || want.Y < -2999 || hi.Add(by).X > 3999 || hi.Add(by).Y > -1 {
			if got.X < 0 || got.Y < -3000 || top.X > 4000.001 || top.Y > 0.001 {
				t.Fatalf("moved by %v from %v: left the room, %v to %v", by, lo, got, top)
			}
			return
		}
		if math.Abs(got.X-want.X) > 1 || math.Abs(got.Y-want.Y) > 1e-3 {
			t.Fatalf("moved by %v from %v: stands at %v", by, lo, got)
		}
	})
}

func TestMoveSettles(t *testing.T) {
	const near = 40
	mm := length.FromMM
	for _, c := range []struct {
		name string
		by   geom.V2
		want job.Placement
		on   string
	}{
		{"along the wall, on the step", geom.V2{X: 203.4}, job.Placement{Wall: "AB", From: "A", Along: mm(703)}, ""},
		{"into corner A", geom.V2{X: -480}, job.Placement{Wall: "AB", From: "A"}, "in corner A"},
		{"into corner B", geom.V2{X: 1320}, job.Placement{Wall: "AB", From: "B"}, "in corner B"},
		{"off the wall", geom.V2{Y: -300.2}, job.Placement{Wall: "AB", From: "A", Along: mm(500), Gap: length.Some(mm(315))}, ""},
		{"a little off the wall", geom.V2{Y: -20}, job.Placement{Wall: "AB", From: "A", Along: mm(500)}, "against wall AB"},
	} {
		s := standing(t, nil)
		if c.want.Turn == "" {
			c.want.Turn = job.AgainstSide
		}
		got := Move(s, c.by, Snapping{Step: length.Millimetre, Within: near})
		if c.name == "into corner B" {
			_, hi := foot(s)
			c.by.X = 4000 - hi.X - 10
			got = Move(s, c.by, Snapping{Step: length.Millimetre, Within: near})
		}
		if got.Place != c.want || got.On != c.on {
			t.Errorf("%s: %+v, on %q; want %+v, on %q", c.name, got.Place, got.On, c.want, c.on)
		}
	}
}

func TestMoveSettlesOnAStud(t *testing.T) {
	s := standing(t, func(j *job.Job) { j.Room.Walls[0].Studs = studs(400, 800) })
	got := Move(s, geom.V2{X: 285}, Snapping{Step: length.Millimetre, Within: 40})
	if got.On != "on a stud" || got.Place.Along != length.FromMM(800) {
		t.Errorf("%+v, on %q", got.Place, got.On)
	}
	if free := Move(s, geom.V2{X: 285}, Snapping{Step: length.Millimetre}); free.On != "" || free.Place.Along != length.FromMM(785) {
		t.Errorf("with snapping held off: %+v, on %q", free.Place, free.On)
	}
}

// TestFourTurnsComeBack: four quarter turns bring the bed back to its place, about one middle.
func TestFourTurnsComeBack(t *testing.T) {
	s := standing(t, func(j *job.Job) { j.Place.Along, j.Place.Gap = length.FromMM(800), length.Some(length.FromMM(900)) })
	lo, hi := foot(s)
	for range 4 {
		s.Put(Turn(s, Snapping{}).Place)
		l, h := foot(s)
		if d := l.Add(h).Sub(lo.Add(hi)); math.Abs(d.X) > 1e-3 || math.Abs(d.Y) > 1e-3 {
			t.Errorf("%s: its middle moved by %v", s.Job.Place.Turn, d)
		}
	}
	if l, _ := foot(s); math.Abs(l.X-lo.X) > 1e-3 || s.Job.Place.Turn != job.AgainstSide || s.Job.Place.Wall != "AB" {
		t.Errorf("back at %v, was %v", l, lo)
	}
	if p := Turn(s, Snapping{}).Place; p.Wall != "BC" { // what faced up the plan faces right after a turn clockwise
		t.Errorf("turned once it stands at %s", p.Wall)
	}
}

func TestPressAndMirror(t *testing.T) {
	s := standing(t, func(j *job.Job) { j.Place.Gap = length.Some(length.FromMM(250)) })
	p := Press(s)
	if p.Place.Gap.Set || p.Place.Wall != "AB" || p.Place.Along != length.FromMM(500) || !strings.Contains(p.On, "against wall AB") {
		t.Errorf("pressed: %+v, on %q", p.Place, p.On)
	}
	corner := standing(t, func(j *job.Job) { j.Place.Along, j.Place.Gap = length.FromMM(100), length.Some(length.FromMM(700)) })
	if p := Press(corner).Place; p.Along != 0 || p.From != "A" || !p.Gap.Set {
		t.Errorf("with its end nearest to wall DA: %+v", p)
	}
	if m := Mirror(s).Place; !m.Mirror || m.Along != s.Job.Place.Along {
		t.Errorf("mirrored: %+v", m)
	}
}
