package geom

import "sort"

// Rectangle is an upright rectangle between two corners in any plane, in mm.
type Rectangle struct{ Lo, Hi V2 }

// Wide and High return the sides of the rectangle, 0 where it is empty.
func (r Rectangle) Wide() float64 { return max(0, r.Hi.X-r.Lo.X) }
func (r Rectangle) High() float64 { return max(0, r.Hi.Y-r.Lo.Y) }

// Area returns the area in mm2.
func (r Rectangle) Area() float64 { return r.Wide() * r.High() }

// Overlaps tells whether two rectangles have more than an edge in common.
func (r Rectangle) Overlaps(o Rectangle) bool {
	return r.Lo.X < o.Hi.X && o.Lo.X < r.Hi.X && r.Lo.Y < o.Hi.Y && o.Lo.Y < r.Hi.Y
}

func (r Rectangle) holds(o Rectangle) bool {
	return r.Lo.X <= o.Lo.X && o.Hi.X <= r.Hi.X && r.Lo.Y <= o.Lo.Y && o.Hi.Y <= r.Hi.Y
}

// LargestRectangle returns the largest rectangle inside in that none of taken reaches into; where several are equally large, the
// one whose left edge, then whose right edge, then whose lower edge comes first. Where nothing is free it is empty, at the lower
// left corner of in.
//
// Each side of the largest rectangle lies on a side of in or of something taken: every pair of such left and right edges is tried
// with the widest free stretch between them, so the work grows with the cube of what is taken.
func LargestRectangle(in Rectangle, taken []Rectangle) Rectangle {
	rest := essential(in, taken)
	best := Rectangle{in.Lo, in.Lo}
	if len(rest) == 0 {
		return in
	}
	lefts, rights := []float64{in.Lo.X}, []float64{in.Hi.X}
	for _, r := range rest {
		lefts, rights = append(lefts, r.Hi.X), append(rights, r.Lo.X)
	}
	sort.Float64s(lefts)
	sort.Float64s(rights)
	for _, lo := range lefts {
		for _, hi := range rights {
			if (hi-lo)*in.High() <= best.Area() {
				continue
			}
			if r := tallest(in, rest, lo, hi); r.Area() > best.Area() {
				best = r
			}
		}
	}
	return best
}

// essential leaves out what does not reach into in, and what lies within another; the rest comes in the order of lower edges.
func essential(in Rectangle, taken []Rectangle) []Rectangle {
	var out []Rectangle
next:
	for i, r := range taken {
		if !r.Overlaps(in) {
			continue
		}
		for j, o := range taken {
			if j != i && o.holds(r) && (j < i || !r.holds(o)) {
				continue next
			}
		}
		out = append(out, r)
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Lo.Y < out[j].Lo.Y })
	return out
}

// tallest returns the highest free rectangle between two upright edges; taken comes in the order of lower edges.
func tallest(in Rectangle, taken []Rectangle, lo, hi float64) Rectangle {
	best := Rectangle{V2{lo, in.Lo.Y}, V2{hi, in.Lo.Y}}
	from := in.Lo.Y
	try := func(to float64) {
		if to-from > best.High() {
			best.Lo.Y, best.Hi.Y = from, to
		}
	}
	for _, r := range taken {
		if r.Lo.X < hi && lo < r.Hi.X {
			try(min(r.Lo.Y, in.Hi.Y))
			from = max(from, r.Hi.Y)
		}
	}
	try(in.Hi.Y)
	return best
}
