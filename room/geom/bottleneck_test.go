package geom

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// hall is an empty room 4000 x 3000 with its lower left corner at the origin.
func hall() []Polygon {
	return []Polygon{{{0, 0}, {4000, 0}}, {{4000, 0}, {4000, 3000}}, {{4000, 3000}, {0, 3000}}, {{0, 3000}, {0, 0}}}
}

// left and right are gates 800 long in the middle of the short walls.
var (
	left  = Gate{A: V2{0, 1100}, B: V2{0, 1900}, Side: V2{1, 0}}
	right = Gate{A: V2{4000, 1100}, B: V2{4000, 1900}, Side: V2{-1, 0}}
)

// TestWidestDiscByHand: widths that a plan gives at sight.
func TestWidestDiscByHand(t *testing.T) {
	for _, c := range []struct {
		what string
		add  []Polygon
		want float64
		i, j int
	}{
		{"an empty room 3000 across", nil, 3000, 0, 2},
		{"past a chest 2000 deep at the lower wall", []Polygon{Rect(1500, 0, 2000, 2000)}, 1000, 2, 4},
		{"past a pillar, 1200 under and 1300 over it", []Polygon{Rect(1800, 1200, 2300, 1700)}, 1300, 2, 4},
		{"between two chests that lie diagonally: 300 and 400", []Polygon{Rect(0, 0, 2000, 1300), Rect(2300, 1700, 4000, 3000)}, 500, 4, 5},
		{"past two chests that leave 600 between them", []Polygon{Rect(1000, 0, 1500, 1200), Rect(1000, 1800, 1500, 3000)}, 600, 4, 5},
		{"nothing gets by a chest from wall to wall", []Polygon{Rect(1500, 0, 2000, 3000)}, 0, 0, 4},
		{"a stud wall of two points with a 700 opening", []Polygon{{{2000, 0}, {2000, 1000}}, {{2000, 1700}, {2000, 3000}}}, 700, 4, 5},
	} {
		n := WidestDisc(append(hall(), c.add...), left, right)
		if math.Abs(n.Width-c.want) > 1e-6 {
			t.Errorf("%s: %g, want %g", c.what, n.Width, c.want)
		}
		if c.add != nil && c.want > 0 && (n.I != c.i || n.J != c.j) {
			t.Errorf("%s: between %d and %d, want %d and %d", c.what, n.I, n.J, c.i, c.j)
		}
	}
}

// TestWidestDiscAtAGate: before the left gate stand two posts 400 apart, 100 from it, so that a disc can only touch the gate between
// them. A disc that touches x = 0 at mid gate and the posts' near corners (100, 1300) and (100, 1700): 200^2 + (r - 100)^2 = r^2
// gives r = 250, but it has to pass the 400 between the posts.
func TestWidestDiscAtAGate(t *testing.T) {
	posts := []Polygon{Rect(100, 1000, 200, 1300), Rect(100, 1700, 200, 2000)}
	n := WidestDisc(append(hall(), posts...), left, right)
	if math.Abs(n.Width-400) > 1e-6 || n.I != 4 || n.J != 5 {
		t.Errorf("%+v, want 400 between 4 and 5", n)
	}
	// Between two chests 200 apart that reach past the gate on both sides nothing wider goes.
	short := Gate{A: V2{0, 1495}, B: V2{0, 1505}, Side: V2{1, 0}}
	n = WidestDisc(append(hall(), Rect(-10, 0, 300, 1400), Rect(-10, 1600, 300, 3000)), short, right)
	if math.Abs(n.Width-200) > 1e-6 {
		t.Errorf("%+v, want the 200 between the chests", n)
	}
	// A single post 50 before a gate of one point: a disc that touches the gate at y = 1500 and the corner (50, 1530):
	// 30^2 + (r - 50)^2 = r^2, r = 34.
	point := Gate{A: V2{0, 1500}, B: V2{0, 1500}, Side: V2{1, 0}}
	n = WidestDisc(append(hall(), Rect(50, 1530, 90, 1600)), point, right)
	if math.Abs(n.Width-68) > 1e-5 || n.I != -1 {
		t.Errorf("%+v, want 68 at the gate", n)
	}
}

// flood is the slow way: a grid of centres with how far each is from everything.
type flood struct {
	grid   float64
	nx, ny int
	free   []float64
}

func newFlood(obstacles []Polygon, grid float64) flood {
	f := flood{grid: grid, nx: int(4000/grid) + 1, ny: int(3000/grid) + 1}
	f.free = make([]float64, f.nx*f.ny)
	for i := range f.free {
		p := f.at(i)
		f.free[i] = math.Inf(1)
		for _, o := range obstacles {
			f.free[i] = math.Min(f.free[i], o.Distance(p))
			if len(o) > 2 && o.Contains(p) {
				f.free[i] = 0
			}
		}
	}
	return f
}

func (f flood) at(i int) V2 { return V2{float64(i%f.nx) * f.grid, float64(i/f.nx) * f.grid} }

// near tells whether a centre touches the gate with a disc of radius r, within a step of the grid.
func (f flood) near(g Gate, i int, r float64) bool {
	d, _ := SegmentPoint(g.A.Add(g.Side.Mul(r)), g.B.Add(g.Side.Mul(r)), f.at(i))
	return d <= f.grid
}

// passes fills the grid from the first gate with centres of discs of radius r.
func (f flood) passes(from, to Gate, r float64) bool {
	seen := make([]bool, len(f.free))
	var todo []int
	for i := range seen {
		if f.free[i] >= r && f.near(from, i, r) {
			todo, seen[i] = append(todo, i), true
		}
	}
	for len(todo) > 0 {
		i := todo[len(todo)-1]
		todo = todo[:len(todo)-1]
		if f.near(to, i, r) {
			return true
		}
		for _, d := range [4]int{1, -1, f.nx, -f.nx} {
			k := i + d
			if k >= 0 && k < len(seen) && !seen[k] && f.free[k] >= r && (d%f.nx == 0 || k/f.nx == i/f.nx) {
				todo, seen[k] = append(todo, k), true
			}
		}
	}
	return false
}

// TestWidestDiscAgainstFlood: in rooms of random furniture a disc a little narrower than the answer gets through on a grid, and
// one a little wider does not. Where a gate decides little is more, since the grid finds gates only roughly.
func TestWidestDiscAgainstFlood(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		obstacles := hall()
		for range rapid.IntRange(0, 6).Draw(t, "things") {
			n := func(lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, "n") }
			at := NewPlace(n(0, 1.5), V3{n(400, 3600), n(0, 3000), 0})
			obstacles = append(obstacles, at.Box(NewBox(V3{}, V3{n(100, 1500), n(100, 700), 1})).Footprint())
		}
		const grid = 30
		n, f := WidestDisc(obstacles, left, right), newFlood(obstacles, grid)
		if n.Width > 4*grid && !f.passes(left, right, n.Width/2-1.5*grid) {
			t.Fatalf("%g does not get through", n.Width)
		}
		more := 2.0 * grid
		if n.I < 0 {
			more = 6 * grid
		}
		if f.passes(left, right, n.Width/2+more) {
			t.Fatalf("more than %g gets through", n.Width)
		}
	})
}

// TestWidestDiscMovesSmoothly: a chest moved by a micrometre moves the answer by no more.
func TestWidestDiscMovesSmoothly(t *testing.T) {
	for _, d := range []float64{-1e-3, 1e-3} {
		was := WidestDisc(append(hall(), Rect(1500, 0, 2000, 2000)), left, right)
		is := WidestDisc(append(hall(), Rect(1500, 0, 2000, 2000+d)), left, right)
		close(t, "slope", (is.Width-was.Width)/d, -1)
	}
}

func BenchmarkWidestDisc12(b *testing.B) {
	obstacles := append(hall(), Rect(0, 0, 2100, 1000), Rect(2100, 0, 2200, 500), Rect(1500, 1000, 1900, 1090), Rect(3500, 2000, 4000, 2600),
		Rect(0, 2600, 900, 3000), Rect(3900, 300, 4000, 1200), Rect(2500, 2850, 3000, 3000), Rect(3000, 0, 3400, 400))
	if w := WidestDisc(obstacles, left, right).Width; w < 500 {
		b.Fatal(w)
	}
	for b.Loop() {
		narrow = WidestDisc(obstacles, left, right)
	}
}

var narrow Narrow
