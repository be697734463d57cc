package bunk_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"bunkwright/furniture"
	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"
	"bunkwright/room/length"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

// bounds writes where a part lies in inches.
func bounds(p furniture.Part) string {
	lo, hi := p.Box.Bounds()
	f := func(a, b float64) string { return fmt.Sprintf("%s..%s", inches(a), inches(b)) }
	return f(lo.X, hi.X) + " " + f(lo.Y, hi.Y) + " " + f(lo.Z, hi.Z)
}

func inches(mm float64) string {
	s := fmt.Sprintf("%.4f", mm/25.4)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}

// TestTwinByHand compares the plain twin bed with sums on paper, in inches:
//
//	inside          75 + 3/4 = 75-3/4 by 38 + 3/4 = 38-3/4
//	overall         75-3/4 + 2 x 1-1/2 = 78-3/4 by 38-3/4 + 4 x 1-1/2 = 44-3/4
//	lower frame     13 - 3/4 - 1-1/2 = 10-3/4 up to 10-3/4 + 5-1/2 = 16-1/4
//	upper frame     55 - 3/4 - 1-1/2 = 52-3/4 up to 58-1/4
//	guard top       58-1/4 + 3 + 5-1/2 = 66-3/4
//	middle pieces   16-1/4 to 52-3/4 = 36-1/2
//	slats           38-3/4 - 1/8 = 38-5/8; (75-3/4 - 2-1/2) / 6 = 12.2, so 13 in gaps of (75-3/4 - 13 x 3-1/2) / 14 = 2.1607
func TestTwinByHand(t *testing.T) {
	b := mustBuild(t, twin())
	for id, want := range map[string]string{
		"left.post.wall":       "1.5..5 -1.5..0 0..66.75",
		"right.post.front":     "73.75..77.25 -44.75..-43.25 0..66.75",
		"left.foot.front":      "1.5..5 -43.25..-41.75 0..10.75",
		"right.middle.wall":    "73.75..77.25 -3..-1.5 16.25..52.75",
		"lower.rail.wall":      "1.5..77.25 -3..-1.5 10.75..16.25",
		"upper.rail.front":     "1.5..77.25 -43.25..-41.75 52.75..58.25",
		"upper.ledge.front":    "1.5..77.25 -41.75..-40.25 52.75..54.25",
		"lower.member.left":    "0..1.5 -43.25..-1.5 10.75..16.25",
		"upper.member.right":   "77.25..78.75 -44.75..0 52.75..58.25",
		"left.board.1":         "0.75..1.5 -44.75..0 61.25..66.75",
		"guard.wall.1":         "1.5..77.25 -2.25..-1.5 61.25..66.75",
		"guard.front.1":        "1.5..77.25 -43.25..-42.5 61.25..66.75",
		"upper.slat.1":         "3.6607..7.1607 -41.6875..-3.0625 54.25..55",
		"guard.wall.upright.1": "37.625..41.125 -1.5..0 52.75..66.75",
	} {
		if got := bounds(part(t, &b, id)); got != want {
			t.Errorf("%s lies at %s, by hand %s", id, got, want)
		}
	}
	if got := inches(b.Long) + " x " + inches(b.Wide) + " outside, " + inches(b.Inside.Long) + " x " + inches(b.Inside.Wide); got != "78.75 x 44.75 outside, 75.75 x 38.75" {
		t.Error(got)
	}
	if got := part(t, &b, "lower.slat.13").Length; got != 309*in/8 {
		t.Errorf("slat is %v long", got)
	}
	for _, k := range []bunk.DeckAt{b.Upper, b.Lower} {
		if k.SlatCount != 13 || inches(k.SlatGap) != "2.1607" {
			t.Errorf("%d slats in gaps of %s", k.SlatCount, inches(k.SlatGap))
		}
	}
	if b.WayIn.Side != "" || b.Steps != nil || b.Climb != nil {
		t.Error("a bed without ladder or climbing end has a way up")
	}
}

// TestLadderByHand: treads 55 / 11 = 5, 11 apart; the way in of 14-1/2 ends at the right post's edge 73-3/4 and begins at 59-1/4,
// behind it an upright from 55-3/4; stiles in front of upright and post, outside the way in; the top tread stands 1-1/2 before
// the side rail.
func TestLadderByHand(t *testing.T) {
	s := twin()
	s.Ladder = &bunk.Ladder{}
	b := mustBuild(t, s)
	for id, want := range map[string]string{
		"guard.front.1":         "1.5..59.25 -43.25..-42.5 61.25..66.75",
		"guard.front.upright.2": "55.75..59.25 -44.75..-43.25 52.75..66.75",
		"ladder.stile.1":        "57.75..59.25 -48.25..-44.75 0..66.75",
		"ladder.stile.2":        "73.75..75.25 -48.25..-44.75 0..66.75",
		"ladder.tread.5":        "59.25..73.75 -48.25..-44.75 53.5..55",
		"ladder.block.1.2":      "72.25..73.75 -48.25..-44.75 8..9.5",
	} {
		if got := bounds(part(t, &b, id)); got != want {
			t.Errorf("%s lies at %s, by hand %s", id, got, want)
		}
	}
	st := b.Steps
	if got := fmt.Sprintf("%d %s %s %s", len(st.Tops), inches(st.Tops[0]), inches(st.Clear), inches(st.ToBed)); got != "5 11 14.5 1.5" {
		t.Error(got)
	}
	w := b.WayIn
	if got := fmt.Sprintf("%s %s %s %s", w.Side, inches(w.From), inches(w.To), inches(w.Short)); got != "front 59.25 73.75 14.5" {
		t.Error(got)
	}
	if st.Out != (geom.V2{Y: -1}) || st.Side != "front" {
		t.Errorf("steps off to %v from %s", st.Out, st.Side)
	}
}

// TestSlopingLadderByHand: a stile at 60 degrees, 3-1/2 in wide, cut level at the floor and at 66-3/4 in, is (66-3/4 + 3-1/2 cos 60) /
// sin 60 = 79.0970 in long from toe to heel; its back meets the uprights' plane at the top and stands 66-3/4 / tan 60 = 38.5381 in
// out at the floor.
func TestSlopingLadderByHand(t *testing.T) {
	s := twin()
	s.Ladder = &bunk.Ladder{Angle: 60}
	b := mustBuild(t, s)
	stile := part(t, &b, "ladder.stile.1")
	if got := inches(stile.Length.MM()); got != "79.097" {
		t.Errorf("stile is %s in long", got)
	}
	var low, top []geom.V3
	for _, c := range stile.Corners() {
		if math.Abs(c.Z) < 1e-3 {
			low = append(low, c)
		}
		if math.Abs(c.Z-66.75*25.4) < 1e-3 {
			top = append(top, c)
		}
	}
	if len(low) != 4 || len(top) != 4 {
		t.Fatalf("%d corners on the floor, %d at the top", len(low), len(top))
	}
	nearest := func(cs []geom.V3) float64 { return math.Max(math.Max(cs[0].Y, cs[1].Y), math.Max(cs[2].Y, cs[3].Y)) }
	if got := inches(-nearest(low)) + " " + inches(-nearest(top)); got != "83.2881 44.75" { // 44-3/4 + 38.5381
		t.Errorf("back of the stile at %s", got)
	}
}

// TestEndLadderByHand: uprights lap the end member from outside, so the end stands out by 1-1/2 + 1-1/2; the way in lies between the
// upright at the front post (to 44-3/4 - 3-1/2 = 41-1/4) and the one 14-1/2 nearer the wall.
func TestEndLadderByHand(t *testing.T) {
	s := twin()
	s.Ladder = &bunk.Ladder{OnEnd: true, At: bunk.Left}
	b := mustBuild(t, s)
	for id, want := range map[string]string{
		"left.upright.1":    "0..1.5 -26.75..-23.25 52.75..66.75",
		"left.upright.2":    "0..1.5 -44.75..-41.25 52.75..66.75",
		"left.packing":      "1.5..3 -44.75..-43.25 58.25..66.75",
		"left.board.1":      "1.5..3 -26.75..0 61.25..66.75",
		"upper.member.left": "1.5..3 -44.75..0 52.75..58.25",
		"ladder.stile.1":    "-3.5..0 -42.75..-41.25 0..66.75",
		"ladder.tread.1":    "-3.5..0 -41.25..-26.75 9.5..11",
	} {
		if got := bounds(part(t, &b, id)); got != want {
			t.Errorf("%s lies at %s, by hand %s", id, got, want)
		}
	}
	for _, h := range part(t, &b, "left.upright.1").Holes {
		if z := 52.75*25.4 + h.Along.MM(); strings.HasSuffix(h.Joint, "ladder.stile.2") && (z < 58.25*25.4 || z > 61.25*25.4) {
			t.Errorf("a ladder screw at %s in is hidden by the end board", inches(z))
		}
	}
	w := b.WayIn
	if got := fmt.Sprintf("%s %s %s %s", w.Side, inches(w.From), inches(w.To), inches(b.Long)); got != "left 26.75 41.25 80.25" {
		t.Error(got)
	}
}

// TestClimbingEndByHand, gaps of at most 3 in between 3-1/2 in slats: under the lower frame 10-3/4 takes 2 in gaps of 1-1/4;
// 36-1/2 between the frames takes 6 in gaps of 15-1/2 / 7; 8-1/2 above takes 2 in gaps of 3/4, the last one level with the top. The end members, 1-1/2 in thick, stand out
// furthest: 1-1/2 + 75-3/4 + 1-1/2.
func TestClimbingEndByHand(t *testing.T) {
	s := twin()
	s.Climb = &bunk.Climb{At: bunk.Right}
	b := mustBuild(t, s)
	var got []string
	for _, g := range b.Climb.Gaps {
		got = append(got, inches(g))
	}
	want := "1.25 1.25 1.25 2.2143 2.2143 2.2143 2.2143 2.2143 2.2143 2.2143 0.75 0.75"
	if strings.Join(got, " ") != want {
		t.Errorf("gaps %v, by hand %s", got, want)
	}
	last := b.Climb.Footholds[len(b.Climb.Footholds)-1]
	if len(b.Climb.Footholds) != 12 || inches(last.Top) != "66.75" || inches(b.Climb.Face) != "78.75" {
		t.Errorf("%d footholds up to %s, face at %s", len(b.Climb.Footholds), inches(last.Top), inches(b.Climb.Face))
	}
}

// TestScrewsByWidth: two screws in a piece up to 3-1/2 in wide, three at 5-1/2 in (fastening rules fr-023 and fr-024, from memory).
func TestScrewsByWidth(t *testing.T) {
	b := mustBuild(t, twin())
	want := map[string]int{
		"lower.ledge.wall/lower.slat.1": 2, "left.post.wall/upper.rail.wall": 3, "upper.member.left/left.post.front": 3, "left.board.1/left.post.wall": 3,
	}
	for _, j := range b.Joints {
		if n, ok := want[j.ID]; ok {
			if j.Count != n || j.Fastener != "screw-10" {
				t.Errorf("%s: %d of %s, want %d", j.ID, j.Count, j.Fastener, n)
			}
			delete(want, j.ID)
		}
	}
	if len(want) > 0 {
		t.Errorf("no joints %v", want)
	}
}

// TestSlatCases are the rows of slat_cases.csv that a deck can show (gap = (W - n s) / (n + 1), geometry, computed): slats 3-1/2 in wide in
// 75 in.
func TestSlatCases(t *testing.T) {
	for _, c := range []struct {
		row   string
		slats int
		most  length.Length
		n     int
		gap   float64
	}{
		{"sla-001", 13, 0, 13, 2.1071}, {"sla-002", 14, 0, 14, 1.7333}, {"sla-005", 12, 0, 12, 2.5385}, {"sla-006", 0, 5 * in / 2, 13, 2.1071},
		{"sla-007", 0, 3 * in, 12, 2.5385},
	} {
		s := twin()
		s.Play = in / 2
		s.Upper.MattressLong, s.Lower.MattressLong = 149*in/2, 149*in/2
		s.Upper.Slats, s.Upper.SlatGap = c.slats, c.most
		b := mustBuild(t, s)
		if b.Upper.SlatCount != c.n || math.Abs(b.Upper.SlatGap/25.4-c.gap) > 1e-4 {
			t.Errorf("%s: %d slats in gaps of %g in, want %d in %g", c.row, b.Upper.SlatCount, b.Upper.SlatGap/25.4, c.n, c.gap)
		}
	}
}

// TestMetricByHand: posts and rails of 38 mm, mattress 2000 x 900 with 20 mm play: 2020 + 2 x 38 = 2096 by 920 + 4 x 38 = 1072; deck 1500 on
// 18 mm slats and 45 mm ledges: side rail 1437 to 1577.
func TestMetricByHand(t *testing.T) {
	s := bunk.Sizes{
		Upper: bunk.Deck{Height: 1500 * mm, MattressLong: 2000 * mm, MattressWide: 900 * mm},
		Lower: bunk.Deck{Height: 350 * mm, MattressLong: 2000 * mm, MattressWide: 900 * mm},
		Play:  20 * mm, Post: board("38x89", 38, 89), Rail: board("38x140", 38, 140), Ledge: board("38x45", 38, 45), Slat: board("18x70", 18, 70),
	}
	b := mustBuild(t, s)
	rail := part(t, &b, "upper.rail.wall").Box
	if b.Long != 2096 || b.Wide != 1072 || math.Abs(rail.Bottom()-1437) > speck || math.Abs(rail.Top()-1577) > speck {
		t.Errorf("%g x %g, side rail %g to %g", b.Long, b.Wide, rail.Bottom(), rail.Top())
	}
}

func board(name string, thick, wide int64) furniture.Stock {
	return furniture.Stock{Name: name, Thick: length.Length(thick) * mm, Wide: length.Length(wide) * mm}
}

func TestSameSizesSameBed(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := buildable.Draw(t, "sizes")
		first, err1 := bunk.Build(s)
		second, err2 := bunk.Build(s)
		if err1 != nil || err2 != nil || !cmp.Equal(first, second) {
			t.Fatalf("%v %v %s", err1, err2, cmp.Diff(first, second))
		}
		again, err := bunk.Build(first.Sizes)
		if err != nil || len(again.Assumed) > 0 || !cmp.Equal(first.Parts, again.Parts) {
			t.Fatalf("the filled-in sizes give another bed: %v, still assumed %v", err, again.Assumed)
		}
	})
}

func TestBuildLeavesItsSizesAlone(t *testing.T) {
	s := dressed()
	mustBuild(t, s)
	if d := cmp.Diff(dressed(), s); d != "" {
		t.Error(d)
	}
}

// TestAssumedNamesItsDefaults: what was left out is listed under a key of the table of defaults, and what was chosen is not.
func TestAssumedNamesItsDefaults(t *testing.T) {
	known := map[string]bunk.Default{}
	for _, d := range bunk.Defaults() {
		if _, twice := known[d.Key]; twice || d.Value() == "" || d.Meaning == "" {
			t.Errorf("default %q is doubled or says nothing", d.Key)
		}
		known[d.Key] = d
	}
	used := map[string]bool{}
	holds := dressed()
	holds.Climb.Holds = true
	for _, s := range []bunk.Sizes{dressed(), holds} {
		for _, key := range mustBuild(t, s).Assumed {
			key = strings.Replace(strings.Replace(key, "shelf.1.", "shelf.", 1), "shelf.2.", "shelf.", 1)
			if _, ok := known[key]; !ok {
				t.Errorf("%q was assumed and is no default", key)
			}
			used[key] = true
		}
	}
	for key := range known {
		if chosen := key == "bed.books.long"; used[key] == chosen {
			t.Errorf("default %q: assumed %t", key, used[key])
		}
	}
}

func TestDefaultsInWords(t *testing.T) {
	got := map[string]string{}
	for _, d := range bunk.Defaults() {
		got[d.Key] = d.Value()
	}
	for key, want := range map[string]string{
		"bed.play": "3/4 in", "bed.post": "2x4 (1-1/2 in x 3-1/2 in)", "bed.guard.gap": "14-1/2 in", "bed.ladder.angle": "90 degrees",
		"bed.drawers.bottom": "plywood 1/2 (1/2 in)", "bed.guard.rows": "1", "bed.gaps": "by eye",
	} {
		if got[key] != want {
			t.Errorf("%s: %q, want %q", key, got[key], want)
		}
	}
}

// TestNamedStockGetsItsDressedSize: a 2x3 that is only named measures 1-1/2 x 2-1/2 in (American Softwood Lumber Standard PS 20).
func TestNamedStockGetsItsDressedSize(t *testing.T) {
	s := twin()
	s.Post = furniture.Stock{Name: "2x3"}
	b := mustBuild(t, s)
	if p := part(t, &b, "left.post.wall"); p.Stock.Thick != 3*in/2 || p.Stock.Wide != 5*in/2 {
		t.Errorf("%+v", p.Stock)
	}
}

func TestClassesTellWhenToCut(t *testing.T) {
	b := mustBuild(t, dressed())
	for id, want := range map[string]string{
		"left.post.wall": "cut now", "upper.slat.12": "cut now", "upper.slat.13": "fit in place", "drawer.1.front.1": "fit in place",
		"shelf.1.board": "fit in place", "guard.wall.1": "cut after a reading bed.upper.mattress_thick", "shelf.2.cleat": "cut after a reading studs",
	} {
		p := part(t, &b, id)
		if got := strings.TrimSpace(p.Class.String() + " " + p.After); got != want {
			t.Errorf("%s: %s, want %s", id, got, want)
		}
	}
}

// Benchmarks run Build as a drag does; the budget is 0.3 ms.
func BenchmarkBuild(b *testing.B) {
	for name, s := range map[string]bunk.Sizes{"plain": twin(), "every-add-on": dressed()} {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			var bed bunk.Bed
			for b.Loop() {
				bed = mustBuild(b, s)
			}
			if len(bed.Parts) < 40 {
				b.Fatalf("%d parts", len(bed.Parts))
			}
		})
	}
}
