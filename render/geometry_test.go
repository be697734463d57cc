package render

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestQuarterCircleError(t *testing.T) {
	c := Point{10, -3}
	var worst Paper
	for _, run := range Circle(c, 1).Flatten(1e-7) {
		for _, p := range run.Points {
			worst = max(worst, Paper(math.Abs(float64(p.Minus(c).Length()-1))))
		}
	}
	if worst > 0.00028 {
		t.Errorf("strays by %v of the radius", worst)
	}
}

func TestArcDirection(t *testing.T) {
	p := Arc(Point{10, 10}, 5, 0, 90)
	first, last := p[0].To, p[len(p)-1].To
	near(t, "starts right", first.X, 15, 1e-9)
	near(t, "ends up the paper", last.Y, 5, 1e-9)
	if middle := p.Flatten(0.01)[0].Points; !Around(middle...).Grow(1e-9).Contains(Point{10 + 5*math.Sqrt2/2, 10 - 5*math.Sqrt2/2}) {
		t.Error("does not pass the upper right")
	}
	b := Circle(Point{10, 10}, 5).Bounds()
	for i, got := range []Paper{b.Min.X, b.Min.Y, b.Max.X, b.Max.Y} {
		near(t, "bounds of a circle", got, [...]Paper{5, 5, 15, 15}[i], 1e-9)
	}
	r := Rect{Point{1, 2}, Point{11, 7}}
	if got := RoundBox(r, 2).Bounds().Grow(1e-9); !got.Holds(r) || !r.Grow(2e-9).Holds(got) {
		t.Errorf("rounded box covers %v", got)
	}
}

// TestFlattenKeepsTolerance compares with points computed from the curve's own formula.
func TestFlattenKeepsTolerance(t *testing.T) {
	coordinate := rapid.Float64Range(-100, 100)
	rapid.Check(t, func(t *rapid.T) {
		var p [4]Point
		for i := range p {
			p[i] = Point{Paper(coordinate.Draw(t, "x")), Paper(coordinate.Draw(t, "y"))}
		}
		tolerance := Paper(rapid.Float64Range(0.01, 2).Draw(t, "tolerance"))
		path := Path{}.Move(p[0]).Cubic(p[1], p[2], p[3])
		flat := Polyline(path.Flatten(tolerance)[0].Points...)
		for i := range 51 {
			u := float64(i) / 50
			v := 1 - u
			at := p[0].Times(v * v * v).Plus(p[1].Times(3 * v * v * u)).Plus(p[2].Times(3 * v * u * u)).Plus(p[3].Times(u * u * u))
			if d := flat.distance(at, false); d > tolerance+1e-9 {
				t.Fatalf("strays by %v, not %v", d, tolerance)
			}
		}
	})
}

// length returns the length of all lines of a path.
func (p Path) length() (sum Paper) {
	segments(p.Flatten(0.001), false, func(a, b Point) { sum += b.Minus(a).Length() })
	return sum
}

// area returns the area of a polygon (the shoelace formula), positive or negative.
func area(points []Point) (sum Paper) {
	for i, a := range points {
		b := points[(i+1)%len(points)]
		sum += (a.X*b.Y - b.X*a.Y) / 2
	}
	return sum
}

func TestHatchByHand(t *testing.T) {
	square := Box(Rect{Max: Point{10, 10}})
	level := Hatch(square, 2, 0)
	want := "M 0 2 L 10 2 M 0 4 L 10 4 M 0 6 L 10 6 M 0 8 L 10 8"
	if level.String() != want {
		t.Errorf("got %v", level)
	}
	// Rising to the right, 5*sqrt(2) apart: the diagonal alone, since the next pass the corners.
	rising := Hatch(square, 5*math.Sqrt2, 45)
	if rising.String() != "M 0 10 L 10 0" {
		t.Errorf("got %v", rising)
	}
	holed := append(square, Box(Rect{Point{4, 1}, Point{6, 5}})...)
	want = "M 0 3 L 4 3 M 6 3 L 10 3 M 0 6 L 10 6 M 0 9 L 10 9"
	if got := Hatch(holed, 3, 0); got.String() != want {
		t.Errorf("round a hole: got %v", got)
	}
	if got := Hatch(square, 0, 45); got != nil {
		t.Errorf("no spacing: got %v", got)
	}
}

// TestHatchCoversArea: lines at a spacing measure an area (Cavalieri), whatever their angle.
func TestHatchCoversArea(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := Paper(rapid.Float64Range(20, 80).Draw(t, "w"))
		hole := Paper(rapid.Float64Range(1, 9).Draw(t, "hole"))
		angle := rapid.Float64Range(-180, 180).Draw(t, "angle")
		shape := Polygon(Point{0, 0}, Point{w, 0}, Point{w, 30}, Point{w / 2, 18}, Point{0, 30})
		shape = append(shape, Box(Rect{Point{2, 2}, Point{2 + hole, 2 + hole}})...)
		want := w*30 - w*12/2 - hole*hole
		got := Hatch(shape, 0.05, angle).length() * 0.05
		if math.Abs(float64(got-want)) > 0.02*float64(want) {
			t.Fatalf("covers %v, not %v", got, want)
		}
	})
}

func TestInside(t *testing.T) {
	ring := append(Circle(Point{0, 0}, 10), Circle(Point{0, 0}, 5)...)
	for at, want := range map[Point]bool{{0, 0}: false, {7, 0}: true, {0, -7}: true, {11, 0}: false, {8, 8}: false} {
		if ring.Inside(at) != want {
			t.Errorf("%v inside: want %v", at, want)
		}
	}
}

func TestClipByHand(t *testing.T) {
	window := Rect{Max: Point{10, 10}}
	line := []Point{{-5, 5}, {15, 5}, {15, 8}, {5, 8}, {5, 20}}
	got := ClipPolyline(line, window)
	want := [][]Point{{{0, 5}, {10, 5}}, {{10, 8}, {5, 8}, {5, 10}}}
	if len(got) != 2 || Polyline(got[0]...).String() != Polyline(want[0]...).String() ||
		Polyline(got[1]...).String() != Polyline(want[1]...).String() {
		t.Errorf("got %v, want %v", got, want)
	}
	triangle := ClipPolygon([]Point{{5, -5}, {20, 10}, {5, 10}}, window)
	// Of the triangle, 15 by 15, a piece 5 high lies above the window and one 10 wide to the right
	// of it; they do not meet. 112.5 - 5*5/2 - 10*10/2 = 50: the square from 5, 0 to 10, 10.
	near(t, "area of the triangle in the window", area(triangle), 50, 1e-9)
	if outside := ClipPolygon([]Point{{20, 20}, {30, 20}, {30, 30}}, window); len(outside) != 0 {
		t.Errorf("outside the window: got %v", outside)
	}
}

// TestClipSplits: what lies left and right of a cut makes up the whole polygon.
func TestClipSplits(t *testing.T) {
	coordinate := rapid.Float64Range(-50, 50)
	rapid.Check(t, func(t *rapid.T) {
		points := make([]Point, rapid.IntRange(3, 9).Draw(t, "n"))
		for i := range points {
			points[i] = Point{Paper(coordinate.Draw(t, "x")), Paper(coordinate.Draw(t, "y"))}
		}
		cut := Paper(coordinate.Draw(t, "cut"))
		left := ClipPolygon(points, Rect{Point{-100, -100}, Point{cut, 100}})
		right := ClipPolygon(points, Rect{Point{cut, -100}, Point{100, 100}})
		if d := area(left) + area(right) - area(points); math.Abs(float64(d)) > 1e-6 {
			t.Fatalf("parts differ from the whole by %v", d)
		}
		for _, p := range left {
			if p.X > cut+1e-9 {
				t.Fatalf("%v lies right of %v", p, cut)
			}
		}
	})
}

func TestClipKeepsDashes(t *testing.T) {
	pen := dashed(0.2, InkMain, 3, 2)
	window := Rect{Max: Point{10, 10}}
	// 7 mm lie before the grown window's edge at -0.2: 6.8 mod 5 = 1.8 into the pattern.
	parts := Stroke("x", Line(Point{-7, 5}, Point{30, 5}), pen).Clip(window)
	if len(parts) != 1 {
		t.Fatalf("got %d parts", len(parts))
	}
	near(t, "phase", parts[0].Pen.Dash.Phase, 1.8, 1e-9)
	near(t, "starts", parts[0].Path[0].To.X, -0.2, 1e-9)
	near(t, "ends", parts[0].Path[1].To.X, 10.2, 1e-9)
}

func TestClipDrawing(t *testing.T) {
	d := Drawing{W: 10, H: 10}
	d.Add(
		Stroke("in", Line(Point{1, 1}, Point{9, 9}), Pen{Width: 0.2}),
		Stroke("out", Line(Point{20, 1}, Point{20, 9}), Pen{Width: 0.2}),
		Fill("half", Box(Rect{Point{5, 5}, Point{15, 15}}), InkBoard),
		Words("words", Lettering{3, Regular}.Text(Point{9, 5}, "sticks out", InkMain, Left)),
		Words("far", Lettering{3, Regular}.Text(Point{30, 5}, "far", InkMain, Left)),
		Stroke("box", Box(Rect{Point{-5, 2}, Point{5, 4}}), Pen{Width: 1}),
	)
	got := d.Clip(d.Page()).Dump()
	want := `drawing 10 x 10 ""
stroke "in" 0.2 main M 1 1 L 9 9
fill "half" board M 5 10 L 5 5 L 10 5 L 10 10 Z
text "words" 9 5 left 3 regular main "sticks out"
stroke "box" 1 main M -1 2 L 5 2 L 5 4 L -1 4
`
	if got != want {
		t.Errorf("got\n%swant\n%s", got, want)
	}
}

func TestRect(t *testing.T) {
	r := Rect{Point{1, 2}, Point{5, 4}}
	if r.W() != 4 || r.H() != 2 || r.Centre() != (Point{3, 3}) {
		t.Errorf("size or middle of %v", r)
	}
	if !nowhere.Empty() || r.Empty() || nowhere.Union(r) != r || !Around().Empty() {
		t.Error("the empty rectangle")
	}
	if r.Overlaps(Rect{Point{5, 2}, Point{9, 4}}) || !r.Overlaps(Rect{Point{4.9, 3}, Point{9, 9}}) {
		t.Error("rectangles that share an edge do not overlap")
	}
}
