package fit

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"bunkwright/furniture/job"
	"bunkwright/furniture/yardstick"
	"bunkwright/room"
	"bunkwright/room/geom"
)

func ceilingOf(heights ...float64) func(*job.Job) {
	return func(j *job.Job) {
		for i, c := range []string{"A", "B", "C", "D"} {
			j.Room.Ceilings[0].Heights[i] = room.Height{Corner: c, Height: read(heights[i])}
		}
	}
}

// attic slopes from 1200 over wall AB to 2800 over wall CD, 4000 away: 0.4 up per mm.
func attic(j *job.Job) {
	ceilingOf(1200, 1200, 2800, 2800)(j)
	j.Room.Ceilings[0].Sloped = true
}

// IRC R304 and R305.1 as rules.csv quotes them: 84 in = 2133.6, 70 ft2, under a slope half of that with 84 in and all of it with 60 in = 1524.
//
// The attic reaches 2133.6 from (2133.6 - 1200) / 0.4 = 2334 on: 1666 x 4500 = 7497000 mm2 = 80.6970 ft2, 115.281 % of 70. Its highest 70 ft2 =
// 6503212.8 mm2 are 1445.15840 deep, so they begin 2554.84160 from AB: 2221.93664 high.
func TestRoomHeight(t *testing.T) {
	share := SlopeShare(1666*4500/92903.04, 70)
	least := 1200 + 0.4*(4000-70*92903.04/4500)
	runHouse(t, roomHeight, nil, []houseCase{
		{"level at 2440", "US", nil, Fits, 2440 - 2133.6, "ceiling"},
		{"level at 83 in (case c39)", "US", ceilingOf(2108.2, 2108.2, 2108.2, 2108.2), DoesNotFit, -25.4, "ceiling"},
		{"just level at 84 in, give or take", "US", ceilingOf(2134, 2134, 2134, 2134), TooClose, 0.4, "ceiling"},
		{"low in one corner", "EU", ceilingOf(2440, 2440, 2440, 2100), None, noSpare, ""},
		{"a beam", "US", func(j *job.Job) {
			j.Room.Beams = []room.Beam{{Key: "main", Along: "AB", Out: read(1000), Wide: read(100), Under: read(2000)}}
		}, DoesNotFit, -133.6, "ceiling"},
		{"a beam not read", "US", func(j *job.Job) { j.Room.Beams = []room.Beam{{Key: "main", Along: "AB"}} }, CannotTell, noSpare, "ceiling"},
		{"no ceiling read", "US", func(j *job.Job) { j.Room.Ceilings = nil }, CannotTell, noSpare, "ceiling"},
		{"half of the ceiling read", "US", func(j *job.Job) {
			j.Room.Ceilings[0].Strip, j.Room.Ceilings[0].Deep = "AB", read(2000)
		}, CannotTell, noSpare, "ceiling"},
		{"attic", "US", attic, Fits, noSpare, ""},
		{"attic too low", "US", both(attic, ceilingOf(600, 600, 2200, 2200), func(j *job.Job) { j.Room.Ceilings[0].Sloped = true }), DoesNotFit, noSpare, "ceiling.share"},
	})
	a := stage(t, houseJob("US", attic, nil)).Ask(roomHeight)
	for at, want := range map[[2]string]float64{
		{"irc-ceiling-slope-share", "ceiling.share"}: share,
		{"irc-ceiling-slope-min", "ceiling.least"}:   least,
		{"irc-room-area", "area"}:                    4500 * 4000 / 92903.04,
		{"irc-room-least", "least"}:                  4000,
	} {
		if l := spareOf(t, a, at[0], at[1]); math.Abs(l.Value-want) > 1e-4 {
			t.Errorf("%s: %v, want %v", at[0], l.Value, want)
		}
	}
	if l := spareOf(t, a, "irc-ceiling", "ceiling"); l.Verdict != NotApplicable {
		t.Errorf("the row of a level ceiling under a slope: %v", l.Verdict)
	}
}

// Case c39: 36 of 70 ft2 are 51.4 %, enough, with 60 in the lowest.
func TestRoomHeightRuleCases(t *testing.T) {
	share := SlopeShare(36, 70)
	row, _ := yardstick.Find("irc-ceiling-slope-share")
	if math.Abs(share-51.4) > 0.05 || row.Outcome(share) != yardstick.Pass {
		t.Errorf("36 of 70: %v %%, %v", share, row.Outcome(share))
	}
	row, _ = yardstick.Find("irc-ceiling-slope-min")
	if row.Outcome(60*25.4) != yardstick.Pass {
		t.Error("60 in are enough")
	}
}

// A ceiling of 2400 with a strip along AB, 1500 deep, that slopes from 1500 to 2400: under 2000 lies what is less than 1500 x 500/900 = 833.33 from
// AB. Over the rest of the room it is level.
func TestRoofOfTwoFaces(t *testing.T) {
	s := stage(t, houseJob("US", ceilingOf(2400, 2400, 2400, 2400), func(j *job.Job) {
		out := func(key, from string, at, out, high float64) room.Height {
			return room.Height{Key: key, Spot: spotAt("AB", from, at, out), Height: read(high)}
		}
		j.Room.Ceilings = append(j.Room.Ceilings, room.Ceiling{Key: "slope", Sloped: true, Along: "AB", Strip: "AB", Deep: read(1500), Heights: []room.Height{
			out("1", "A", 500, 0, 1500), out("2", "A", 500, 1500, 2400), out("3", "B", 500, 0, 1500), out("4", "B", 500, 1500, 2400)}})
	}))
	r, what := s.roof(s.Outline.Turned())
	if what != "" {
		t.Fatal(what)
	}
	want := 4500 * (4000 - 1500*500/900.0)
	if got := r.areaAt(2000); math.Abs(got-want) > 10 {
		t.Errorf("area 2000 high: %v, want %v", got, want)
	}
	if math.Abs(r.lowest-1500) > 1e-3 || r.what != "ceiling.slope" {
		t.Errorf("lowest %v at %s, want 1500 at the slope", r.lowest, r.what)
	}
	if got := r.areaAt(2400.001); got > 1 {
		t.Errorf("area over 2400: %v, want none", got)
	}
}

// A property: the height that the ceiling keeps over an area keeps that area.
func TestHeightOverKeepsTheArea(t *testing.T) {
	plan := geom.Polygon{{X: 0, Y: -3000}, {X: 2000, Y: -3000}, {X: 2000, Y: -2000}, {X: 4000, Y: -2000}, {X: 4000, Y: 0}, {X: 0, Y: 0}}
	rapid.Check(t, func(t *rapid.T) {
		slope := func(name string) float64 { return rapid.Float64Range(-1, 1).Draw(t, name) }
		r := &roof{plan: plan, lowest: math.Inf(1), highest: math.Inf(-1)}
		for range 2 {
			r.add(face{z: 2500, g: geom.V2{X: slope("x"), Y: slope("y")}, parts: [][]geom.Line{nil}}, "")
		}
		area := rapid.Float64Range(1e6, 9e6).Draw(t, "area")
		h := r.heightOver(area)
		if got := r.areaAt(h - 1e-6); got < area-10 {
			t.Fatalf("%v high over %v mm2, want %v", h, got, area)
		}
		if got := r.areaAt(h + 0.01); got > area+10 {
			t.Fatalf("higher than %v there are still %v mm2 of %v", h, got, area)
		}
	})
}

// wallsOf makes the walls of an outline, clockwise.
func wallsOf(p geom.Polygon) *Scene {
	s := &Scene{Outline: p}
	for i := range p {
		a, b := p.Edge(i)
		d := b.Sub(a).Unit()
		s.Walls = append(s.Walls, Wall{Index: i, Key: string(rune('A'+i)) + string(rune('A'+(i+1)%len(p))), A: a, B: b, Dir: d, In: d.Right(), Len: a.Dist(b)})
	}
	return s
}

// Least dimensions by hand: the short side of a rectangle; the leg of an ell, 1200 wide; an alcove; the narrow end of a room whose walls run
// together; the height of a triangle with sides of 3000, where no walls face each other.
func TestLeastDimension(t *testing.T) {
	lean := math.Atan(0.075) // of either long wall of the room whose walls run together: 300 in 4000
	for name, c := range map[string]struct {
		plan geom.Polygon
		want float64
	}{
		"rectangle": {geom.Polygon{{X: 0, Y: 0}, {X: 4500, Y: 0}, {X: 4500, Y: -4000}, {X: 0, Y: -4000}}, 4000},
		"ell":       {geom.Polygon{{X: 0, Y: 0}, {X: 4500, Y: 0}, {X: 4500, Y: -4000}, {X: 3300, Y: -4000}, {X: 3300, Y: -2500}, {X: 0, Y: -2500}}, 1200},
		"chimney breast": {geom.Polygon{{X: 0, Y: 0}, {X: 900, Y: 0}, {X: 900, Y: -300}, {X: 2500, Y: -300}, {X: 2500, Y: 0}, {X: 4500, Y: 0},
			{X: 4500, Y: -4000}, {X: 0, Y: -4000}}, 900},
		"running together": {geom.Polygon{{X: 0, Y: 0}, {X: 4000, Y: -300}, {X: 4000, Y: -2700}, {X: 0, Y: -3000}}, 2400 / (math.Cos(lean) - math.Sin(lean)*0.075)},
		"triangle":         {geom.Polygon{{X: 0, Y: 0}, {X: 3000, Y: 0}, {X: 1500, Y: -3000 * math.Sqrt(3) / 2}}, 3000 * math.Sqrt(3) / 2},
	} {
		if got, _ := wallsOf(c.plan).leastDimension(); math.Abs(got-c.want) > 0.1 {
			t.Errorf("%s: %v, want %v", name, got, c.want)
		}
	}
}
