package bunk_test

import (
	"math"
	"strings"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/timber"
	"bunkwright/room/geom"

	"pgregory.net/rapid"
)

// Properties that hold for every bed that can be built. None is taken from a published text: they say what carpentry is.

const speck = 1e-6 // mm: the rounding of exact places to float64

func solids(b *bunk.Bed) []geom.Box {
	out := make([]geom.Box, len(b.Parts))
	for i, p := range b.Parts {
		out[i] = p.Solid()
	}
	return out
}

func byID(b *bunk.Bed) map[string]furniture.Part {
	out := map[string]furniture.Part{}
	for _, p := range b.Parts {
		out[p.ID] = p
	}
	return out
}

func TestNoPartCutsIntoAnother(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		all := solids(&b)
		for i, p := range b.Parts {
			for j := i + 1; j < len(all); j++ {
				if q := b.Parts[j]; p.Frame == q.Frame && geom.BoxGap(all[i], all[j]) < -speck {
					t.Fatalf("%s cuts %g mm into %s", p.ID, -geom.BoxGap(all[i], all[j]), q.ID)
				}
			}
		}
	})
}

func TestShelvesClearTheBedAgainstTheWall(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		all := solids(&b)
		for i, p := range b.Parts {
			for j, q := range b.Parts {
				if p.Frame == furniture.OnWall && q.Frame == furniture.OnBed && geom.BoxGap(all[i], all[j]) < -speck {
					t.Fatalf("%s cuts into %s", p.ID, q.ID)
				}
			}
		}
	})
}

func TestPartIsAsLongWideAndThickAsItsBox(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		seen := map[string]bool{}
		for _, p := range b.Parts {
			size := p.Box.Size()
			for k, want := range []float64{p.Length.MM(), p.Width().MM(), p.Stock.Thick.MM()} {
				if math.Abs(size.Axis(k)-want) > speck || want <= 0 {
					t.Fatalf("%s: box axis %d is %g mm, the part %g", p.ID, k, size.Axis(k), want)
				}
			}
			if d := p.Box.Ax[0].Cross(p.Box.Ax[1]).Dot(p.Box.Ax[2]); math.Abs(d-1) > 1e-9 {
				t.Fatalf("%s: axes are not right-handed", p.ID)
			}
			if seen[p.ID] || p.Role == "" || p.Name == "" || p.Assembly == "" || p.FaceUp == "" {
				t.Fatalf("%s: doubled or not described: %+v", p.ID, p)
			}
			if p.Rip > p.Stock.Wide && !p.Stock.Sheet {
				t.Fatalf("%s: ripped to more than the board is wide", p.ID)
			}
			seen[p.ID] = true
		}
	})
}

func TestSlatRestsOnTwoLedges(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		ledges := map[string]int{}
		for _, j := range b.Joints {
			if j.Carries && parts[j.A].Role == bunk.RoleLedge && parts[j.B].Role == bunk.RoleSlat {
				ledges[j.B]++
			}
		}
		for _, p := range b.Parts {
			if p.Role == bunk.RoleSlat && ledges[p.ID] != 2 {
				t.Fatalf("%s rests on %d ledges", p.ID, ledges[p.ID])
			}
		}
	})
}

func TestJointPartsTouch(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		for _, j := range b.Joints {
			if j.B == furniture.Wall {
				if math.Abs(high(parts[j.A].Box).Y) > speck {
					t.Fatalf("%s is not on the wall", j.A)
				}
				continue
			}
			a, c := parts[j.A], parts[j.B]
			if a.ID == "" || c.ID == "" || a.Frame != c.Frame {
				t.Fatalf("%s joins what is not there", j.ID)
			}
			if gap := geom.BoxGap(a.Solid(), c.Solid()); gap > 0.01 {
				t.Fatalf("%s: %g mm apart", j.ID, gap)
			}
			if j.FaceA == "" || j.FaceB == "" {
				t.Fatalf("%s: faces not named: %+v", j.ID, j)
			}
		}
	})
}

func high(b geom.Box) geom.V3 { _, hi := b.Bounds(); return hi }

// level tells whether top stands on under: its underside on the other's top, over some area.
func standsOn(top, under geom.Box) bool {
	lo, hi := top.Bounds()
	ulo, uhi := under.Bounds()
	return math.Abs(lo.Z-uhi.Z) < speck &&
		math.Min(hi.X, uhi.X)-math.Max(lo.X, ulo.X) > 1 && math.Min(hi.Y, uhi.Y)-math.Max(lo.Y, ulo.Y) > 1
}

func TestWeightPassesWoodOnWood(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		for _, j := range b.Joints {
			if j.Carries && !standsOn(parts[j.B].Box, parts[j.A].Box) {
				t.Fatalf("%s: %s does not stand on %s", j.ID, j.B, j.A)
			}
			if !j.Carries && j.Fastener == "" {
				t.Fatalf("%s holds nothing", j.ID)
			}
		}
	})
}

// TestUpperSideRailIsCarriedToTheFloor follows the weight down: side rail, middle piece, lower side rail, foot block, floor.
func TestUpperSideRailIsCarriedToTheFloor(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		carried := map[string][]string{}
		for _, j := range b.Joints {
			if j.Carries {
				carried[j.B] = append(carried[j.B], j.A)
			}
		}
		for _, at := range []string{"wall", "front"} {
			for _, end := range []string{"left", "right"} {
				chain := []string{"upper.rail." + at, end + ".middle." + at, "lower.rail." + at, end + ".foot." + at}
				for i := range chain[1:] {
					if !strings.Contains(strings.Join(carried[chain[i]], " "), chain[i+1]) {
						t.Fatalf("%s is not carried by %s", chain[i], chain[i+1])
					}
				}
				if z := parts[chain[3]].Box.Bottom(); math.Abs(z) > speck {
					t.Fatalf("%s hangs %g mm over the floor", chain[3], z)
				}
			}
		}
	})
}

func TestEveryPartIsHeld(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		near := map[string][]string{}
		for _, j := range b.Joints {
			near[j.A], near[j.B] = append(near[j.A], j.B), append(near[j.B], j.A)
		}
		held := map[string]bool{furniture.Wall: true}
		todo := []string{furniture.Wall}
		reach := func(id string) {
			if !held[id] {
				held[id], todo = true, append(todo, id)
			}
		}
		for _, p := range b.Parts {
			if p.Frame == furniture.OnBed && onFloor(&b, p) {
				reach(p.ID)
			}
		}
		for len(todo) > 0 {
			id := todo[0]
			todo = todo[1:]
			for _, next := range near[id] {
				reach(next)
			}
		}
		for _, p := range b.Parts {
			if !held[p.ID] || len(near[p.ID]) == 0 {
				t.Fatalf("%s is held by nothing", p.ID)
			}
		}
	})
}

// onFloor tells whether a part stands on the floor: posts and foot blocks, or a drawer's bottom on its casters.
func onFloor(b *bunk.Bed, p furniture.Part) bool {
	if p.Role == bunk.RoleBottom {
		return math.Abs(p.Box.Bottom()-b.Sizes.Drawers.Casters.MM()) < speck
	}
	return (p.Role == bunk.RolePost || p.Role == bunk.RoleFoot) && math.Abs(p.Box.Bottom()) < speck
}

func TestGluedOnlyWhereItNeverComesApart(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		for _, j := range b.Joints {
			if j.Glued == j.ComesApart {
				t.Fatalf("%s: glued %t, comes apart %t", j.ID, j.Glued, j.ComesApart)
			}
			if j.Glued && parts[j.A].Assembly != parts[j.B].Assembly {
				t.Fatalf("%s glues %q to %q", j.ID, parts[j.A].Assembly, parts[j.B].Assembly)
			}
		}
	})
}

func TestHolesLieInBothParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		drilled := map[string]int{}
		joints := map[string]furniture.Joint{}
		for _, j := range b.Joints {
			joints[j.ID] = j
		}
		for _, p := range b.Parts {
			for _, h := range p.Holes {
				j := joints[h.Joint]
				drilled[j.ID]++
				other := parts[j.A]
				if other.ID == p.ID {
					other = parts[j.B]
				}
				if j.From != p.ID || h.Along <= 0 || h.Along >= p.Length || h.Across <= 0 || h.Across >= p.Width() {
					t.Fatalf("%s: hole out of the part: %+v", j.ID, h)
				}
				if t0, t1, ok := other.Box.Ray(p.HoleAt(h), p.Box.Ax[2]); !ok || t1-t0 < 5 {
					t.Fatalf("%s: a screw of %s misses %s: %+v", j.ID, p.ID, other.ID, h)
				}
			}
		}
		for _, j := range b.Joints {
			if want := j.Count; j.B != furniture.Wall && drilled[j.ID] != want {
				t.Fatalf("%s: %d holes for %d screws", j.ID, drilled[j.ID], want)
			}
		}
	})
}

// TestScrewsKeepFromTheEdges: no screw is nearer an edge of its lap than timber asks for that screw, or it stands in the middle of what is
// narrower than two such distances. Laps of sloping stiles are cut by the slope and are not judged here.
func TestScrewsKeepFromTheEdges(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		for _, j := range b.Joints {
			if j.Fastener == "" || j.B == furniture.Wall || sloping(parts[j.A]) || sloping(parts[j.B]) {
				continue
			}
			screw, err := timber.FindFastener(j.Fastener)
			if err != nil {
				t.Fatal(err)
			}
			lo, hi := lap(parts[j.A].Box, parts[j.B].Box)
			through := parts[j.From].Box.Ax[2]
			for _, h := range parts[j.From].Holes {
				if h.Joint != j.ID {
					continue
				}
				at := parts[j.From].HoleAt(h)
				for k := range 3 {
					wide := hi.Axis(k) - lo.Axis(k)
					in := math.Min(at.Axis(k)-lo.Axis(k), hi.Axis(k)-at.Axis(k))
					if math.Abs(through.Axis(k)) < 0.5 && in < math.Min(screw.EdgeDistance.MM(), wide/2)-speck {
						t.Fatalf("%s: a screw stands %g mm from the edge of a lap %g mm wide", j.ID, in, wide)
					}
				}
			}
		}
	})
}

func sloping(p furniture.Part) bool {
	return math.Abs(p.Box.Ax[0].Z) > 1e-9 && math.Abs(p.Box.Ax[0].Z) < 1-1e-9
}

func lap(a, b geom.Box) (lo, hi geom.V3) {
	alo, ahi := a.Bounds()
	blo, bhi := b.Bounds()
	return geom.V3{X: math.Max(alo.X, blo.X), Y: math.Max(alo.Y, blo.Y), Z: math.Max(alo.Z, blo.Z)},
		geom.V3{X: math.Min(ahi.X, bhi.X), Y: math.Min(ahi.Y, bhi.Y), Z: math.Min(ahi.Z, bhi.Z)}
}

func TestMirroredPartnersAreMirrorImages(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		parts := byID(&b)
		for _, p := range b.Parts {
			if p.Mirror == "" {
				continue
			}
			q := parts[p.Mirror]
			if q.Mirror != p.ID {
				t.Fatalf("%s names %s, which names %q", p.ID, q.ID, q.Mirror)
			}
			if !mirrored(p, q) || len(p.Cuts) != len(q.Cuts) {
				t.Fatalf("%s is no mirror image of %s", p.ID, q.ID)
			}
		}
	})
}

// mirrored tells whether the corners of p, reflected about the plane half way to q, are q's corners, and its holes q's holes where both have as
// many (a ladder is screwed to one post only).
func mirrored(p, q furniture.Part) bool {
	d := q.Box.C.Sub(p.Box.C)
	if d.Len() == 0 {
		return false
	}
	n := d.Mul(1 / d.Len())
	if math.Max(math.Abs(n.X), math.Abs(n.Y)) < 1-1e-9 {
		return false
	}
	mid := p.Box.C.Add(q.Box.C).Mul(0.5)
	flip := func(v geom.V3) geom.V3 { return v.Sub(n.Mul(2 * v.Sub(mid).Dot(n))) }
	pc, qc := p.Corners(), q.Corners()
	if !sameSet(pc[:], qc[:], flip) {
		return false
	}
	return len(p.Holes) != len(q.Holes) || sameSet(holes(p), holes(q), flip)
}

func holes(p furniture.Part) []geom.V3 {
	var out []geom.V3
	for _, h := range p.Holes {
		out = append(out, p.HoleAt(h))
	}
	return out
}

func sameSet(a, b []geom.V3, flip func(geom.V3) geom.V3) bool {
	for _, v := range a {
		found := false
		for _, w := range b {
			found = found || flip(v).Dist(w) < 1e-5
		}
		if !found {
			return false
		}
	}
	return true
}

// TestOverallSizes holds the outside against sums written by hand.
func TestOverallSizes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := anyBed(t)
		s := &b.Sizes
		inside := math.Max(s.Upper.MattressLong.MM(), s.Lower.MattressLong.MM()) + s.Play.MM()
		across := math.Max(s.Upper.MattressWide.MM(), s.Lower.MattressWide.MM()) + s.Play.MM()
		long := inside + endOut(s, bunk.Left) + endOut(s, bunk.Right)
		plane := math.Max(s.Post.Thick.MM(), math.Max(s.Rail.Thick.MM(), s.Guard.Stock.Thick.MM()))
		wide := across + 2*s.Post.Thick.MM() + 2*plane
		if math.Abs(b.Long-long) > speck || math.Abs(b.Wide-wide) > speck ||
			math.Abs(b.Inside.Long-inside) > speck || math.Abs(b.Inside.Wide-betweenRails(&b)) > speck {
			t.Fatalf("%g x %g, by hand %g x %g", b.Long, b.Wide, long, wide)
		}
		box := frameBounds(&b)
		want := geom.NewBox(geom.V3{Y: -wide}, geom.V3{X: long, Z: s.Guard.Top.MM()})
		if box.C.Dist(want.C) > speck || box.Half.Dist(want.Half) > speck {
			t.Fatalf("the frame fills %+v, by hand %+v", box, want)
		}
	})
}

// betweenRails measures the clear width from side rail to side rail on the parts themselves.
func betweenRails(b *bunk.Bed) float64 {
	var wall, front float64
	for _, p := range b.Parts {
		lo, hi := p.Box.Bounds()
		switch p.ID {
		case "upper.rail.wall":
			wall = lo.Y
		case "upper.rail.front":
			front = hi.Y
		}
	}
	return wall - front
}

// endOut is how far an end stands out: the end member, or what is thicker than it or lies on it.
func endOut(s *bunk.Sizes, e bunk.End) float64 {
	rail := s.Rail.Thick.MM()
	out := math.Max(rail, s.Guard.Stock.Thick.MM())
	if k := s.Climb; k != nil && k.At == e {
		out = math.Max(rail, k.Slat.Thick.MM())
		if k.Holds {
			out = math.Max(rail+k.Panel.Thick.MM(), s.Guard.Stock.Thick.MM())
		}
	}
	if l := s.Ladder; l != nil && l.OnEnd && l.At == e {
		out = math.Max(out, rail+s.Post.Thick.MM())
	}
	return out
}

func frameBounds(b *bunk.Bed) geom.Box {
	lo, hi := geom.V3{X: math.Inf(1), Y: math.Inf(1), Z: math.Inf(1)}, geom.V3{X: math.Inf(-1), Y: math.Inf(-1), Z: math.Inf(-1)}
	for _, p := range b.Parts {
		if p.Frame == furniture.OnWall || p.Assembly == "ladder" || strings.HasPrefix(p.ID, "books.") || strings.HasPrefix(p.ID, "drawer.") {
			continue
		}
		a, c := p.Box.Bounds()
		lo = geom.V3{X: math.Min(lo.X, a.X), Y: math.Min(lo.Y, a.Y), Z: math.Min(lo.Z, a.Z)}
		hi = geom.V3{X: math.Max(hi.X, c.X), Y: math.Max(hi.Y, c.Y), Z: math.Max(hi.Z, c.Z)}
	}
	return geom.NewBox(lo, hi)
}
