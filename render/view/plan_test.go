package view

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/room"
	"bunkwright/room/length"
)

// plainRoom is a rectangle of 4000 x 3000 mm read by the maker, with a plain bunk at wall A to B, 100 mm from A. A door of 800 mm stands
// 500 mm from B on wall B to C, its pins towards C; a window of 1000 mm begins 2600 mm from A on A to B.
func plainRoom() job.Job {
	mm := func(v float64) room.Measure { return room.Exact(length.FromMM(v)) }
	j := job.New(job.Start{Name: "plain", Unit: length.Millimetres, Places: []string{"EU"}, AB: 4000 * length.Millimetre, BC: 3000 * length.Millimetre,
		Ceiling: 2600 * length.Millimetre})
	for i, v := range []float64{4000, 3000, 4000, 3000} {
		j.Room.Walls[i].Length, j.Room.Walls[i].BaseDeep = mm(v), mm(20)
	}
	j.Room.Ceilings[0].Heights[0].Height[0].How = room.Mine
	j.Room.Diagonals = []room.Diagonal{{Key: "AC", Length: mm(5000)}} // 3-4-5
	j.Room.Floor = room.Floor{Cover: "hard"}
	j.Place.Along = 100 * length.Millimetre
	j.Room.Doors = []room.Door{{Key: "hall", OnWall: room.OnWall{Wall: "BC", From: "B", At: mm(500)}, Wide: mm(800), Kind: "swings", Hinge: "C",
		Swing: "in", LeadsTo: "hall"}}
	j.Room.Windows = []room.Window{{Key: "garden", OnWall: room.OnWall{Wall: "AB", From: "A", At: mm(2600)}, Wide: mm(1000), Sill: mm(900), Head: mm(2000)}}
	j.Room.Walls[0].Studs = []room.Stud{{Key: "1", From: "A", At: mm(450), Found: "twice"}, {Key: "2", From: "B", At: mm(400), Found: "once"}}
	j.Sleepers = []job.Sleeper{{Name: "Ada", Age: 9, Bed: "upper"}, {Name: "Bo", Age: 6, Bed: "lower"}}
	return j
}

// atScale draws on paper at 1:20 with the origin in a known place.
var atScale = Options{On: OnPaper, Unit: length.Millimetres, Scale: 1.0 / 20, W: 400, H: 300, Origin: &render.Point{X: 60, Y: 50}}

// under returns the marks whose ref is of, or a part of it.
func under(d render.Drawing, of string) []render.Mark {
	var list []render.Mark
	for _, m := range d.Marks {
		if render.Under(m.Ref, of) {
			list = append(list, m)
		}
	}
	return list
}

// TestPlanIsTrueToScale: at 1:20 from (60, 50), what lies x mm along wall A to B and y mm into the room stands at (60 + x/20, 50 + y/20).
func TestPlanIsTrueToScale(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	d := Plan(s, answers, atScale)
	for _, c := range []struct {
		ref            string
		x0, y0, x1, y1 float64
	}{
		{"floor", 0, 0, 4000, 3000},
		{"window.garden", 2600, -framedWall, 3600, 0},
		{"mattress.upper", 100 + 0, 0, 0, 0}, // only that it is there: its place is the bed's business
	} {
		marks := slices.DeleteFunc(under(d, c.ref), func(m render.Mark) bool { return m.Kind == render.KindText })
		if len(marks) == 0 {
			t.Errorf("no %s on the plan", c.ref)
			continue
		}
		if c.x1 == 0 {
			continue
		}
		got := marks[0].Path.Bounds()
		want := render.Around(on20(c.x0, c.y0), on20(c.x1, c.y1))
		if !near(got.Min, want.Min) || !near(got.Max, want.Max) {
			t.Errorf("%s covers %v, want %v", c.ref, got, want)
		}
	}
	if b := render.Bounds(under(d, "mattress.upper")); math.Abs(float64(b.W())-2000.0/20) > 0.5 || math.Abs(float64(b.H())-900.0/20) > 0.5 {
		t.Errorf("a mattress of 2000 x 900 is %v x %v on paper, want 100 x 45", b.W(), b.H())
	}
}

func on20(x, y float64) render.Point {
	return render.Point{X: render.Paper(60 + x/20), Y: render.Paper(50 + y/20)}
}

func near(a, b render.Point) bool { return a.Minus(b).Length() < 0.02 }

// TestDoorSweepsItsQuarter: the door's pins stand 500 + 800 = 1300 mm from B, so its leaf, open square, ends 800 mm into the room there.
func TestDoorSweepsItsQuarter(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	d := Plan(s, answers, atScale)
	tip, found := on20(4000-800, 1300), false
	for _, m := range under(d, "door.hall") {
		for _, st := range m.Path {
			found = found || near(st.To, tip)
		}
	}
	if !found {
		t.Errorf("no corner of the leaf at %v", tip)
	}
}

// TestStudsStandUnderThemselves: in a pair, a stud stands at the same place across in the plan and on the wall, and so do the walls' ends.
func TestStudsStandUnderThemselves(t *testing.T) {
	for _, name := range []string{"town-house.toml", "attic.toml"} {
		j := sample(t, name)
		s, answers := asked(t, &j)
		plan, wall := Pair(s, answers, s.At.Key, screen, 0)
		if plan.W != screen.W || wall.W != screen.W || math.Abs(float64(plan.H+wall.H-screen.H)) > 1e-6 {
			t.Errorf("%s: boxes %v x %v and %v x %v", name, plan.W, plan.H, wall.W, wall.H)
		}
		n := 0
		for _, st := range studsOf(s, s.At) {
			a, b := render.Bounds(filled(plan, st.ref)), render.Bounds(filled(wall, st.ref))
			if a.Empty() || b.Empty() {
				continue // hidden by an opening
			}
			n++
			if off := a.Centre().X - b.Centre().X; math.Abs(float64(off)) > 0.01 {
				t.Errorf("%s: %s stands %v mm aside", name, st.ref, off)
			}
		}
		if n == 0 {
			t.Errorf("%s: no stud in both views", name)
		}
	}
}

// filled returns the fills of a ref: of a stud, its dot.
func filled(d render.Drawing, ref string) []render.Mark {
	return slices.DeleteFunc(under(d, ref), func(m render.Mark) bool { return m.Kind != render.KindFill })
}

// TestReadOnceStandsInParentheses: the maker's own readings stand plainly, a single one of somebody else in parentheses, and what was
// worked out says so.
func TestReadOnceStandsInParentheses(t *testing.T) {
	j := plainRoom()
	j.Room.Walls[1].Length[0].How = room.Once
	j.Room.Walls[2].Length = nil
	s, answers := asked(t, &j)
	d := Plan(s, answers, atScale)
	for _, words := range []string{"4000", "(3000)", "(4000?)", "800", "1000"} {
		if !has(d, words) {
			t.Errorf("no %q among %q", words, texts(d.Marks))
		}
	}
}

// TestRowsByHand: along A to B the bed takes 100 to 100 + its length, the window 2600 to 3600; what lies between is dimensioned too.
func TestRowsByHand(t *testing.T) {
	c := newCanvas(Options{Unit: length.Millimetres}, 1)
	rows := c.rowsOf([]ruled{{lo: 2600, hi: 3600}, {lo: 100, hi: 2200}}, 0, 4000)
	if len(rows) != 1 || !slices.Equal(rows[0].stops, []float64{0, 100, 2200, 2600, 3600, 4000}) {
		t.Fatalf("rows %v", rows)
	}
	var words []string
	for _, sp := range rows[0].spans {
		words = append(words, sp.Words)
	}
	if want := []string{"100", "2100", "400", "1000", "400"}; !slices.Equal(words, want) {
		t.Errorf("words %q, want %q", words, want)
	}
	if rows := c.rowsOf([]ruled{{lo: 0, hi: 2000}, {lo: 1500, hi: 2500}}, 0, 4000); len(rows) != 2 {
		t.Errorf("two things that overlap stand in %d rows, want 2", len(rows))
	}
}

// TestSignsAreForOpenAnswers: on the screen a part of an answer that does not fit carries the sign, on paper none does.
func TestSignsAreForOpenAnswers(t *testing.T) {
	j := plainRoom()
	s, _ := asked(t, &j)
	answers := []fit.Answer{
		{ID: "doors-swing", Verdict: fit.DoesNotFit, Parts: []string{"door.hall"}},
		{ID: "way-out", Verdict: fit.TooClose, Parts: []string{"window.garden"}, Accepted: "as it is"},
		{ID: "air", Verdict: fit.Fits, Parts: []string{"window.garden"}},
	}
	o := screen
	for id, want := range map[string]bool{"doors-swing": true, "way-out": false, "air": false} {
		if got := len(under(Plan(s, answers, o), "answer."+id)) > 0; got != want {
			t.Errorf("sign of %s on the screen: %v, want %v", id, got, want)
		}
	}
	if n := len(under(Plan(s, answers, atScale), "answer")); n > 0 {
		t.Errorf("%d marks of signs on paper", n)
	}
}

// TestPicking: a point on a thing names the thing.
func TestPicking(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	d := Plan(s, answers, atScale)
	for _, c := range []struct {
		x, y float64
		ref  string
	}{{3100, -60, "window.garden"}, {1000, 500, "mattress.upper"}, {3000, -60, "window.garden"}, {2300, -60, "wall.AB"}, {3000, 2500, "floor"}} {
		if refs := d.Pick(on20(c.x, c.y), 0.2); !slices.Contains(refs, c.ref) {
			t.Errorf("at %v, %v: %q, want %s", c.x, c.y, refs, c.ref)
		}
	}
}

// TestEveryWayOfStanding: views of every sample are clean with the bed turned, mirrored, at each wall, unbuilt or without a ceiling.
func TestEveryWayOfStanding(t *testing.T) {
	for _, name := range sampleNames(t) {
		for _, way := range ways {
			j := sample(t, name)
			way.change(&j)
			s, answers := asked(t, &j)
			for _, v := range everyView(s, answers, screen) {
				clean(t, name+" "+way.name+", "+v.name, v.d, OnScreen)
			}
		}
		for _, key := range []string{"AB", "BC", "CD", "DA"} {
			j := sample(t, name)
			j.Place.Wall, j.Place.From = key, key[:1]
			s, answers := asked(t, &j)
			clean(t, name+" at "+key, Plan(s, answers, screen), OnScreen)
		}
	}
}

// TestAnyOutline: rooms with corners that are not square, drawn with every wall at the top.
func TestAnyOutline(t *testing.T) {
	mm := func(v float64) room.Measure { return room.Exact(length.FromMM(v)) }
	for _, c := range []struct {
		outline string
		corners []room.Corner
		lengths []float64
	}{
		{"ABCDE", []room.Corner{{Key: "C", Inside: 135}, {Key: "D", Inside: 135}}, []float64{3600, 2163, 1414, 2600, 3163}},
		{"ABCDEFGH", []room.Corner{{Key: "E", Inside: 270}, {Key: "F", Inside: 270}}, []float64{5000, 4000, 1500, 1500, 2000, 1500, 1500, 4000}},
		{"ABC", []room.Corner{{Key: "B", Inside: 53.13}, {Key: "C", Inside: 36.87}}, []float64{3000, 5000, 4000}},
	} {
		j := plainRoom()
		j.Room.Outline, j.Room.Corners, j.Room.Diagonals, j.Room.Walls = c.outline, c.corners, nil, nil
		for i, l := range c.lengths {
			key := string(c.outline[i]) + string(c.outline[(i+1)%len(c.outline)])
			j.Room.Walls = append(j.Room.Walls, room.Wall{Key: key, Length: mm(l), BaseDeep: mm(15)})
		}
		s, answers := asked(t, &j)
		if len(s.Walls) != len(c.outline) {
			t.Fatalf("%s: %d walls", c.outline, len(s.Walls))
		}
		for _, w := range s.Walls {
			o := screen
			o.Top = w.Key
			clean(t, fmt.Sprintf("%s with %s on top", c.outline, w.Key), Plan(s, answers, o), OnScreen)
			clean(t, fmt.Sprintf("%s, wall %s", c.outline, w.Key), Wall(s, answers, w.Key, o), OnScreen)
		}
	}
}

// TestUnknownShapeIsSaid: without an outline the plan says what to read, and what was read.
func TestUnknownShapeIsSaid(t *testing.T) {
	j := plainRoom()
	s, answers := asked(t, &j)
	s.Walls, s.Outline, s.Stands, s.At = nil, nil, false, nil
	for _, d := range []render.Drawing{Plan(s, answers, screen), Wall(s, answers, "AB", screen), Plan(s, answers, Options{On: OnPaper})} {
		all := strings.Join(texts(d.Marks), " ")
		if !strings.Contains(all, "not determined") || !strings.Contains(all, "wall A to B: ") {
			t.Errorf("%s says %q", d.Title, all)
		}
		clean(t, "unknown shape", d, OnPaper)
	}
}

// TestUnplacedIsMarked: what nobody read the place of carries the ring, and the plan says why the bed is not there.
func TestUnplacedIsMarked(t *testing.T) {
	j := plainRoom()
	j.Room.Windows[0].At, j.Place.Wall = nil, ""
	s, answers := asked(t, &j)
	d := Plan(s, answers, screen)
	if !has(d, "window") || !has(d, "?") || !strings.Contains(strings.Join(texts(d.Marks), " "), "The bed is not placed yet") {
		t.Errorf("the plan says %q", texts(d.Marks))
	}
	if len(under(d, "mattress")) > 0 {
		t.Error("a bed without a place is drawn")
	}
}
