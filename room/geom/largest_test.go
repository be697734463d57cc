package geom

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// The largest free rectangle on a small grid is found by trying every rectangle of whole cells.
func TestLargestRectangleAgainstEveryRectangle(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		const n = 6
		in := Rectangle{V2{0, 0}, V2{n, n}}
		var taken []Rectangle
		for range rapid.IntRange(0, 6).Draw(t, "things") {
			x, y := rapid.IntRange(-1, n).Draw(t, "x"), rapid.IntRange(-1, n).Draw(t, "y")
			w, h := rapid.IntRange(1, 4).Draw(t, "w"), rapid.IntRange(1, 4).Draw(t, "h")
			taken = append(taken, Rectangle{V2{float64(x), float64(y)}, V2{float64(x + w), float64(y + h)}})
		}
		got := LargestRectangle(in, taken)
		for _, r := range taken {
			if got.Area() > 0 && got.Overlaps(r) {
				t.Fatalf("%v reaches into %v", got, r)
			}
		}
		if got.Area() > 0 && !in.holds(got) {
			t.Fatalf("%v lies outside", got)
		}
		if want := largestByTrial(n, taken); got.Area() != want {
			t.Fatalf("area %v, want %v; taken %v", got.Area(), want, taken)
		}
	})
}

func largestByTrial(n int, taken []Rectangle) float64 {
	best := 0.0
	for x0 := range n {
		for x1 := x0 + 1; x1 <= n; x1++ {
			for y0 := range n {
				for y1 := y0 + 1; y1 <= n; y1++ {
					r := Rectangle{V2{float64(x0), float64(y0)}, V2{float64(x1), float64(y1)}}
					free := true
					for _, o := range taken {
						free = free && !r.Overlaps(o)
					}
					if free {
						best = math.Max(best, r.Area())
					}
				}
			}
		}
	}
	return best
}

// A window of 900 x 1000 with a post before its left 100 and a rail across at 300 to 400: above the rail 800 x 600 is left, by hand.
func TestLargestRectangleOfAWindow(t *testing.T) {
	in := Rectangle{V2{1000, 600}, V2{1900, 1600}}
	got := LargestRectangle(in, []Rectangle{{V2{900, 0}, V2{1100, 2000}}, {V2{0, 900}, V2{3000, 1000}}})
	if want := (Rectangle{V2{1100, 1000}, V2{1900, 1600}}); got != want {
		t.Errorf("got %v, want %v", got, want)
	}
	if got := LargestRectangle(in, nil); got != in {
		t.Errorf("nothing before it: got %v, want all of it", got)
	}
	if got := LargestRectangle(in, []Rectangle{{V2{0, 0}, V2{3000, 3000}}}); got.Area() != 0 || got.Lo != in.Lo {
		t.Errorf("all of it taken: got %v, want nothing at its lower left corner", got)
	}
}

func BenchmarkLargestRectangleOf12(b *testing.B) {
	in := Rectangle{V2{0, 0}, V2{900, 1000}}
	var taken []Rectangle
	for i := range 12 {
		x, y := float64(70*i), float64(80*((i*5)%12))
		taken = append(taken, Rectangle{V2{x, y}, V2{x + 20, y + 40}})
	}
	var kept Rectangle
	for b.Loop() {
		kept = LargestRectangle(in, taken)
	}
	if kept.Area() == 0 {
		b.Fatal("nothing left")
	}
}
