package view

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/geom"
	"bunkwright/room/length"
)

// stacked is a bed of bare boxes.
func stacked(boxes ...geom.Box) *bunk.Bed {
	b := &bunk.Bed{Long: 1000, Wide: 1000}
	for i, box := range boxes {
		b.Parts = append(b.Parts, furniture.Part{ID: fmt.Sprintf("box.%d", i), Role: bunk.RoleSlat, Box: box})
	}
	return b
}

func box(x0, y0, z0, x1, y1, z1 float64) geom.Box {
	return geom.NewBox(geom.V3{X: x0, Y: y0, Z: z0}, geom.V3{X: x1, Y: y1, Z: z1})
}

// longSeen is the length of all edges that are seen, in space.
func longSeen(v *cornerView) (n int, sum float64) {
	for i := range v.blocks {
		for _, l := range v.seenEdges(i) {
			n, sum = n+1, sum+l.a.Dist(l.b)
		}
	}
	return n, sum
}

// TestOneBoxShowsNineEdges: from a corner one sees three faces of a box, which have nine edges; square to a face, the four round it.
func TestOneBoxShowsNineEdges(t *testing.T) {
	b := stacked(box(0, -300, 0, 500, 0, 200))
	for _, c := range []struct {
		turn, tilt float64
		n          int
		sum        float64
	}{
		{35, 25, 9, 3 * (500 + 300 + 200)},
		{-140, 60, 9, 3 * (500 + 300 + 200)},
		{0, 0, 4, 2 * (500 + 200)},
		{90, 0, 4, 2 * (300 + 200)},
		{30, 0, 7, 2*(500+300) + 3*200}, // level with it one sees two faces
	} {
		n, sum := longSeen(newCorner(b, c.turn, c.tilt, Options{}))
		if n != c.n || math.Abs(sum-c.sum) > 1 {
			t.Errorf("turned %g, tilted %g: %d edges of %.0f mm, by hand %d of %.0f", c.turn, c.tilt, n, sum, c.n, c.sum)
		}
	}
}

// TestTouchingPartsKeepTheirEdges: of two boxes on each other, each keeps its nine edges but the three under the upper one's seat: two of its
// own underside and their twins on the lower one are seen; the rest of the lower top lies under it.
func TestTouchingPartsKeepTheirEdges(t *testing.T) {
	b := stacked(box(0, -300, 0, 500, 0, 200), box(0, -300, 200, 500, 0, 400))
	// Nine edges each. The far two edges of the lower top, 500 and 300, lie behind the upper box.
	_, sum := longSeen(newCorner(b, 35, 25, Options{}))
	if want := 2*3*(500+300+200) - 500.0 - 300; math.Abs(sum-want) > 1 {
		t.Errorf("%.1f mm of edges are seen, by hand %.0f", sum, want)
	}
	// Side by side, flush: the further box's near end is hidden but for its outline on top and front, which the nearer one's edges meet.
	b = stacked(box(0, -300, 0, 500, 0, 200), box(500, -300, 0, 800, 0, 200))
	_, sum = longSeen(newCorner(b, 35, 25, Options{}))
	if want := 3*(500.0+300+200) + 3*(300+300+200) - 300 - 200; math.Abs(sum-want) > 1 {
		t.Errorf("%.1f mm of edges are seen, by hand %.0f", sum, want)
	}
}

// TestSeenEdgesAgreeWithRays looks at points of every edge along rays: with every turn the share that nothing stands before is what is drawn.
func TestSeenEdgesAgreeWithRays(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 2))
	for _, name := range sampleNames(t) {
		b := builtSample(t, name)
		for range 2 {
			v := newCorner(b, rng.Float64()*360-180, rng.Float64()*80+5, Options{Mirror: rng.IntN(2) == 0})
			got, want, whole := 0.0, 0.0, 0.0
			for i := range v.blocks {
				for _, l := range v.seenEdges(i) {
					got += l.a.Dist(l.b)
				}
				w, all := sampledEdges(v, i)
				want, whole = want+w, whole+all
			}
			if math.Abs(got-want) > 0.002*whole {
				t.Errorf("%s: %.0f mm of edges are drawn, rays see %.0f of %.0f", name, got, want, whole)
			}
		}
	}
}

// sampledEdges is the length of the edges of a block that rays see, from many points of each. Rays start a little way off the block, where
// its own faces turned to who looks cannot hide them.
func sampledEdges(v *cornerView, i int) (seen, whole float64) {
	const rays = 120
	b := &v.blocks[i]
	for c := range 8 {
		for k := range 3 {
			if c>>k&1 == 1 {
				continue
			}
			p, q := b.at[c], b.at[c|1<<k]
			for r := range rays {
				at := p.Add(q.Sub(p).Mul((float64(r) + 0.5) / rays))
				each := q.Sub(p).Len() / rays
				whole += each
				if !stopped(v, at, 0.01) {
					seen += each
				}
			}
		}
	}
	return seen, whole
}

// stopped follows a ray from a point to who looks in the bodies themselves, as boxes, and tells whether one is in its way for more than some mm.
func stopped(v *cornerView, at geom.V3, more float64) bool {
	for i := range v.blocks {
		lo, hi := 0.0, math.Inf(1)
		for _, f := range v.blocks[i].faces {
			room, way := f.c-f.n.Dot(at), f.n.Dot(v.toward)
			switch {
			case math.Abs(way) < 1e-12:
				if room < more {
					hi = lo
				}
			case way > 0:
				hi = min(hi, room/way)
			default:
				lo = max(lo, room/way)
			}
		}
		if hi-lo > more {
			return true
		}
	}
	return false
}

// TestNearestIsOnTop: wherever one looks at the bed, the fill that is drawn last is of the part that a ray meets first.
func TestNearestIsOnTop(t *testing.T) {
	rng := rand.New(rand.NewPCG(3, 4))
	for _, name := range sampleNames(t) {
		b := builtSample(t, name)
		for range 3 {
			turn, tilt := rng.Float64()*360-180, rng.Float64()*70+10
			v := newCorner(b, turn, tilt, Options{})
			d := BedCorner(b, turn, tilt, Options{Scale: 1})
			wrong, looked := 0, 0
			for range 300 {
				i := rng.IntN(len(v.blocks))
				at := v.blocks[i].lo.Lerp(v.blocks[i].hi, rng.Float64())
				at.Y = v.blocks[i].lo.Y + rng.Float64()*(v.blocks[i].hi.Y-v.blocks[i].lo.Y)
				want, sure := nearestAt(v, at)
				if !sure {
					continue
				}
				looked++
				if got := topFill(d, d.Origin.Plus(render.Point{X: render.Paper(at.X), Y: render.Paper(-at.Y)})); got != want {
					wrong++
					t.Logf("%s turned %.0f, tilted %.0f: at %v %q is on top, a ray meets %q first", name, turn, tilt, at, got, want)
				}
			}
			if wrong > 0 || looked < 100 {
				t.Errorf("%s turned %.0f, tilted %.0f: %d of %d places show a part that is hidden", name, turn, tilt, wrong, looked)
			}
		}
	}
}

// nearestAt returns the part that a ray meets first, "" for none. It is sure where no other is met within a hair.
func nearestAt(v *cornerView, at geom.V2) (id string, sure bool) {
	p := v.mid.Add(v.right.Mul(at.X)).Add(v.up.Mul(at.Y)).Sub(v.toward.Mul(1e5))
	first, second := math.Inf(-1), math.Inf(-1)
	for i := range v.blocks {
		lo, hi := math.Inf(-1), math.Inf(1)
		for _, f := range v.blocks[i].faces {
			room, way := f.c-f.n.Dot(p), f.n.Dot(v.toward)
			if way > 0 {
				hi = min(hi, room/way)
			} else {
				lo = max(lo, room/way)
			}
		}
		switch {
		case math.Abs(hi-lo) < 1: // by a hair
			return "", false
		case hi < lo:
			continue
		}
		if hi > first {
			first, second, id = hi, first, v.blocks[i].part.ID
		} else {
			second = max(second, hi)
		}
	}
	return id, first-second > 1
}

func topFill(d render.Drawing, at render.Point) string {
	for i := len(d.Marks) - 1; i >= 0; i-- {
		if m := d.Marks[i]; m.Kind == render.KindFill && m.Path.Inside(at) {
			return m.Ref
		}
	}
	return ""
}

// TestThreeSticksInARing: each of three sticks lies over the next and under the one before, as no order of whole sticks can show.
func TestThreeSticksInARing(t *testing.T) {
	long := geom.V3{X: 300, Y: 20, Z: 5}
	var sticks []geom.Box
	for i := range 3 {
		a := float64(i) * 2 * math.Pi / 3
		way := geom.V3{X: math.Cos(a), Y: math.Sin(a), Z: 0.2}
		way = way.Mul(1 / way.Len())
		side := geom.V3{X: -math.Sin(a), Y: math.Cos(a)}
		sticks = append(sticks, geom.Box{C: side.Mul(-60), Ax: [3]geom.V3{way, side, way.Cross(side)}, Half: long})
	}
	b := stacked(sticks...)
	v := newCorner(b, 0, 90, Options{})
	if _, ring, _ := sorted(behind(v, v.blocks)); len(ring) != 3 {
		t.Fatalf("%d sticks lie in a ring, want 3", len(ring))
	}
	if _, ring, _ := sorted(behind(v, inDepth(v, v.blocks))); len(ring) != 0 {
		t.Errorf("%d pieces still lie in a ring", len(ring))
	}
}

// TestCornerIsClean: nothing is cut off and no words stand on words, with the names of parts and without.
func TestCornerIsClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		b := builtSample(t, name)
		for turn := -180.0; turn < 180; turn += 45 {
			for _, o := range []Options{{W: render.Px(760), H: render.Px(350)}, {W: render.Px(760), H: render.Px(350), Names: true}, {On: OnPaper, Names: true, Mirror: true}} {
				o.Unit = length.Inches
				clean(t, fmt.Sprintf("%s turned %g", name, turn), BedCorner(b, turn, 25, o), o.On)
			}
		}
	}
}

// TestLeadersOfACornerDoNotCross: within a column no two leaders cross, and each ends on the part that it names.
func TestLeadersOfACornerDoNotCross(t *testing.T) {
	for _, name := range sampleNames(t) {
		b := builtSample(t, name)
		for turn := -170.0; turn < 180; turn += 50 {
			o := Options{W: render.Px(760), H: render.Px(350), Names: true}
			d := BedCorner(b, turn, 25, o)
			lines := leaders(d, o.Style())
			if len(lines) < 5 {
				t.Fatalf("%s turned %g: %d leaders", name, turn, len(lines))
			}
			for i, l := range lines {
				for _, m := range lines[:i] {
					if geom.SegmentsCross(flatPoint(l.Path[0].To), flatPoint(l.Path[1].To), flatPoint(m.Path[0].To), flatPoint(m.Path[1].To)) && (l.Path[0].To.X < o.W/2) == (m.Path[0].To.X < o.W/2) {
						t.Errorf("%s turned %g: the leaders of %s and %s cross", name, turn, l.Ref, m.Ref)
					}
				}
				plain := BedCorner(b, turn, 25, Options{Scale: d.Scale, Origin: &d.Origin, W: o.W, H: o.H})
				if got := topFill(plain, l.Path[1].To); got != l.Ref {
					t.Errorf("%s turned %g: the leader of %s ends on %s", name, turn, l.Ref, got)
				}
			}
		}
	}
}

func flatPoint(p render.Point) geom.V2 { return geom.V2{X: float64(p.X), Y: float64(p.Y)} }

// TestCornerRefsAreParts: whatever is drawn can be pointed at as the part it is of.
func TestCornerRefsAreParts(t *testing.T) {
	b := builtSample(t, "town-house.toml")
	ids := map[string]bool{}
	for _, p := range b.Parts {
		ids[p.ID] = true
	}
	for _, m := range BedCorner(b, 35, 25, Options{Names: true}).Marks {
		if !ids[m.Ref] {
			t.Fatalf("%q is no part", m.Ref)
		}
	}
}

var corner render.Drawing

// BenchmarkBedCorner draws the town-house bed, about 150 boards, from a corner.
func BenchmarkBedCorner(b *testing.B) {
	for _, names := range []bool{false, true} {
		b.Run(fmt.Sprintf("names=%v", names), func(b *testing.B) {
			bed := builtSample(b, "town-house.toml")
			o := Options{W: render.Px(780), H: render.Px(360), Names: names}
			for b.Loop() {
				corner = BedCorner(bed, 35, 25, o)
			}
			b.ReportMetric(float64(len(bed.Parts)), "boards")
		})
	}
}
