package view

import (
	"math"
	"testing"

	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// TestWallIsTrueToScale: at 1:20 from (60, 50), what is x mm from A and z mm up stands at (60 + x/20, 50 - z/20).
func TestWallIsTrueToScale(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	o := atScale
	o.Origin = &render.Point{X: 60, Y: 200}
	d := Wall(s, answers, "AB", o)
	up20 := func(x, z float64) render.Point {
		return render.Point{X: render.Paper(60 + x/20), Y: render.Paper(200 - z/20)}
	}
	face := under(d, "wall.AB")[0].Path.Bounds()
	if want := render.Around(up20(0, 0), up20(4000, 2600)); !near(face.Min, want.Min) || !near(face.Max, want.Max) {
		t.Errorf("the wall covers %v, want %v", face, want)
	}
	pane := render.Bounds(under(d, "window.garden"))
	for _, p := range []render.Point{up20(2600, 900), up20(3600, 2000)} {
		if !pane.Grow(0.3).Contains(p) {
			t.Errorf("the window %v does not reach %v", pane, p)
		}
	}
	for _, w := range []string{"450", "(3150)", "(400)", "900", "1100", "600", "2600", "4000"} { // 4000 - 450 - 400 = 3150; 2600 - 2000 = 600
		if !has(d, w) {
			t.Errorf("no %q among %q", w, texts(d.Marks))
		}
	}
}

// TestNearerHidesFarther: the side rail hides the slats behind it; nothing of a slat is painted on the wall.
func TestNearerHidesFarther(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	d := Wall(s, answers, "AB", screen)
	order := map[string]int{}
	for i, m := range d.Marks {
		if m.Kind == render.KindFill {
			order[m.Ref] = i + 1
		}
	}
	if order["upper.rail.front"] == 0 || order["mattress.upper"] == 0 || order["upper.rail.front"] < order["mattress.upper"] {
		t.Errorf("the front side rail is painted at %d, the mattress behind it at %d", order["upper.rail.front"], order["mattress.upper"])
	}
	if order["upper.rail.wall"] > 0 {
		t.Error("the wall-side rail is painted though the front one hides it")
	}
}

// TestSlopeIsFollowed: a ceiling of 2400 mm meets a slope that is 1200 mm high at C to D and 1800 mm high 800 mm out: it rises 3 in 4 and
// reaches 2400 mm 1600 mm out. Wall B to C, 3000 mm long, is level for 1400 mm from B and falls to 1200 mm.
func TestSlopeIsFollowed(t *testing.T) {
	mm := func(v float64) room.Measure { return room.Exact(length.FromMM(v)) }
	j := plainRoom()
	at := func(out, high float64) room.Height {
		return room.Height{Key: "at " + length.FromMM(out).String(), Spot: room.Spot{Wall: "CD", From: "C", At: mm(2000), Out: mm(out)}, Height: mm(high)}
	}
	j.Room.Ceilings = []room.Ceiling{
		{Key: "flat", Heights: []room.Height{{Key: "A", Corner: "A", Height: mm(2400)}, {Key: "B", Corner: "B", Height: mm(2400)}}},
		{Key: "slope", Sloped: true, Along: "CD", Heights: []room.Height{at(0, 1200), at(800, 1800)}},
	}
	s, _ := asked(t, &j)
	f := newFacing(s, wallNamed(s, "BC"))
	want := []geom.V2{{X: 0, Y: 2400}, {X: 1400, Y: 2400}, {X: 3000, Y: 1200}}
	if len(f.edge) != len(want) {
		t.Fatalf("ceiling %v, want %v", f.edge, want)
	}
	for i, q := range want {
		if f.edge[i].Dist(q) > 3 {
			t.Errorf("corner %d of the ceiling at %v, want %v", i, f.edge[i], q)
		}
	}
}

// TestStripSteps: a duct along C to D, 500 mm deep and 2100 mm high, under a ceiling of 2600 mm: wall B to C steps down 2500 mm from B.
func TestStripSteps(t *testing.T) {
	mm := func(v float64) room.Measure { return room.Exact(length.FromMM(v)) }
	j := plainRoom()
	j.Room.Ceilings = append(j.Room.Ceilings, room.Ceiling{Key: "duct", Strip: "CD", Deep: mm(500), Heights: []room.Height{
		{Key: "d", Spot: room.Spot{Wall: "CD", From: "C", At: mm(1000), Out: mm(200)}, Height: mm(2100)}}})
	s, _ := asked(t, &j)
	f := newFacing(s, wallNamed(s, "BC"))
	if a, b := heightOf(f.edge, 2480), heightOf(f.edge, 2520); math.Abs(a-2600) > 2 || math.Abs(b-2100) > 2 {
		t.Errorf("ceiling %v before the duct and %v under it, want 2600 and 2100: %v", a, b, f.edge)
	}
}
