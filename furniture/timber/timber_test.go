package timber

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"bunkwright/room/length"

	"pgregory.net/rapid"
)

// The table of sizes and the rules of PS 20 by which package length reads a nominal size agree on every dry size.
func TestDressedSizesFollowTheRules(t *testing.T) {
	for _, nominal := range Nominals() {
		size, err := DressedSize(nominal, Dry)
		thick, wide, bad := length.ParseSection(nominal, length.Inches)
		if err != nil || bad != nil || size != (Size{thick, wide}) {
			t.Errorf("%s: %v, %v here, %v x %v, %v by the rules", nominal, size, err, thick, wide, bad)
		}
	}
}

// The printed columns of lumber.csv, four decimals: a second working of the same formulas, not evidence.
func TestSectionsAgreeWithTheTable(t *testing.T) {
	for _, rec := range must(records(lumberCSV)) {
		size, _ := DressedSize(rec["nominal"], Dry)
		s := size.Section()
		for column, got := range map[string]float64{"area_in2": s.Area, "S_edge_in3": s.SEdge, "I_edge_in4": s.IEdge,
			"S_flat_in3": s.SFlat, "I_flat_in4": s.IFlat, "weight_lb_per_ft_at_35pcf": s.PoundsPerFoot(35)} {
			if want, _ := rec.number(column); math.Abs(got-want) > 0.00051 {
				t.Errorf("%s: %s is %v, want %v", rec["nominal"], column, got, want)
			}
		}
	}
}

func TestNominalSpellings(t *testing.T) {
	want := Size{length.Inch, 11 * length.Inch / 2} // 5/4x6 is 1 x 5-1/2 in
	for _, name := range []string{"5/4x6", "5/4 x 6", "5/4X6", "5/4 × 6"} {
		if got, err := DressedSize(name, Dry); got != want || err != nil {
			t.Errorf("%s: got %v, %v", name, got, err)
		}
	}
}

func TestUnknownSizes(t *testing.T) {
	var unknown *UnknownError
	if _, err := DressedSize("2x5", Dry); !errors.As(err, &unknown) || !strings.HasPrefix(err.Error(), `lumber size "2x5" is not in the tables: want one of 1x2, 1x3`) {
		t.Errorf("got %v", err)
	}
	var state *StateError
	if _, err := DressedSize("6x6", Green); !errors.As(err, &state) {
		t.Errorf("got %v", err)
	}
	if _, err := DressedSize("2x4", "damp"); !errors.As(err, &state) {
		t.Errorf("got %v", err)
	}
}

// FPL-RP-489 at its own ends: green width 100 is 98.054 at 19 percent and 95.689 at 8 percent.
func TestShrinkByHand(t *testing.T) {
	want := 98.054 - 95.689
	if got, err := Shrink(98.054, 19, 8); err != nil || math.Abs(got-want) > 1e-9 {
		t.Errorf("got %v, %v, want %v", got, err, want)
	}
	if got, err := Shrink(95.689, 8, 19); err != nil || math.Abs(got+want) > 1e-9 {
		t.Errorf("getting wetter: got %v, %v, want %v", got, err, -want)
	}
	// The planning figure for drying: 0.13 in for a 5-1/2 in board and 0.084 in for 3-1/2 in.
	if a, b := ShrinkIndoors(5.5), ShrinkIndoors(3.5); math.Abs(a-0.13) > 0.005 || math.Abs(b-0.084) > 0.0005 {
		t.Errorf("got %v and %v", a, b)
	}
	var moisture *MoistureError
	for _, m := range []float64{7.9, 19.1, math.NaN()} {
		if _, err := Shrink(100, m, 8); !errors.As(err, &moisture) {
			t.Errorf("from %v: got %v", m, err)
		}
		if _, err := Shrink(100, 19, m); !errors.As(err, &moisture) {
			t.Errorf("to %v: got %v", m, err)
		}
	}
}

// The count returned keeps the gap and one slat fewer does not.
func TestSlatCountIsTheFewest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		opening := rapid.Float64Range(100, 3000).Draw(t, "opening")
		width := rapid.Float64Range(20, 200).Draw(t, "width")
		most := rapid.Float64Range(5, 150).Draw(t, "most")
		n, err := SlatCount(opening, width, most)
		if err != nil {
			return // too coarse for the opening
		}
		if g := SlatGap(opening, width, n); g > most+1e-6 || g < 0 {
			t.Fatalf("%d slats leave %v", n, g)
		}
		if n > 0 && SlatGap(opening, width, n-1) <= most-1e-6 {
			t.Fatalf("%d slats would do", n-1)
		}
	})
}

func TestSlatCountEnds(t *testing.T) {
	if n, err := SlatCount(70, 89, 75); n != 0 || err != nil { // the opening itself is no wider than the gap
		t.Errorf("got %d, %v", n, err)
	}
	if n, err := SlatCount(7*0.3+6*0.1, 0.1, 0.3); n != 6 || err != nil { // a whole count in sums that floats get wrong
		t.Errorf("got %d, %v", n, err)
	}
	var none *SlatError
	for _, c := range [][3]float64{{100, 89, 5}, {0, 89, 75}, {1000, 0, 75}, {1000, 89, -1}, {math.NaN(), 89, 75}, {math.Inf(1), 89, 75}} {
		if n, err := SlatCount(c[0], c[1], c[2]); !errors.As(err, &none) {
			t.Errorf("%v: got %d, %v", c, n, err)
		}
	}
}

// ANSI B18.6.1: diameter 0.060 + 0.013 N in. NDS: penetration 6 D with the tip for wood screws, 4 D without it for lags;
// pilot 70 and 90 percent of the root; edge 2.5 D and 1.5 D. Table values carry four decimals.
func TestFastenersFollowTheirRules(t *testing.T) {
	near := func(got length.Length, want float64) bool { return math.Abs(got.Inches()-want) <= 0.000051 }
	for _, f := range Fasteners() {
		d := f.D.Inches()
		times, edge := 6.0, 2.5
		if f.Kind == LagScrew {
			times, edge = 4, 1.5
		} else if n, err := strconv.Atoi(f.Size); err != nil || !near(f.D, 0.060+0.013*float64(n)) {
			t.Errorf("%s: D is %v in", f.ID, d)
		}
		if !near(f.Penetration, times*d) || math.Abs(LeastPenetration(f.Kind, d)-times*d) > 1e-12 {
			t.Errorf("%s: penetration %v in", f.ID, f.Penetration.Inches())
		}
		if !near(f.EdgeDistance, edge*d) || !near(f.PilotSoft, 0.7*f.Root.Inches()) || !near(f.PilotHard, 0.9*f.Root.Inches()) {
			t.Errorf("%s: edge %v, pilots %v and %v in", f.ID, f.EdgeDistance.Inches(), f.PilotSoft.Inches(), f.PilotHard.Inches())
		}
		if f.Root >= f.D || f.Tip <= 0 || f.Source == "" || f.Basis == "" {
			t.Errorf("%s: root, tip, source or basis is missing", f.ID)
		}
	}
}

// Rows of fasteners.csv.
func TestFastenersByHand(t *testing.T) {
	screw, err := FindFastener("screw-10")
	if err != nil || screw.D != length.Inch*19/100 || screw.Head != length.Inch*363/1000 || !screw.TipCounts {
		t.Errorf("got %+v, %v", screw, err)
	}
	if screw.LeastDepth() != length.Inch*114/100 { // 6 x 0.19, the tip in it
		t.Errorf("screw-10 goes %v in deep", screw.LeastDepth().Inches())
	}
	lag, err := FindFastener("lag-5/16")
	if err != nil || lag.D != length.Inch*5/16 || lag.TipCounts || lag.Head != 0 {
		t.Errorf("got %+v, %v", lag, err)
	}
	if lag.LeastDepth() != length.Inch*5/4+length.Inch*3/16 { // 4 x 5/16, and the tip beyond it
		t.Errorf("lag-5/16 goes %v in deep", lag.LeastDepth().Inches())
	}
	var unknown *UnknownError
	if _, err := FindFastener("screw-11"); !errors.As(err, &unknown) || !strings.HasPrefix(err.Error(), `fastener "screw-11" is not in the tables: want one of screw-6`) {
		t.Errorf("got %v", err)
	}
	if !math.IsNaN(LeastPenetration("nail", 0.1)) || ClearOfCable(math.NaN(), 1.25) {
		t.Error("what is not known was answered")
	}
}

// PS 1 as tabled: both ends of a category belong to it, and a sheet is 4 by 8 ft.
func TestSheets(t *testing.T) {
	for _, s := range Sheets() {
		if s.Thick < s.Min || s.Thick > s.Max || s.Wide != 4*length.Foot || s.Long != 8*length.Foot || s.Density != 3 {
			t.Errorf("%+v", s)
		}
		for inches, want := range map[float64]bool{s.Min.Inches(): true, s.Max.Inches(): true, s.Min.Inches() - 1e-6: false, s.Max.Inches() + 1e-6: false} {
			if got, err := SheetWithin(s.Category, inches); got != want || err != nil {
				t.Errorf("%s at %v in: got %v, %v", s.Category, inches, got, err)
			}
		}
	}
	var unknown *UnknownError
	if _, err := SheetWithin("7/16", 0.43); !errors.As(err, &unknown) {
		t.Errorf("got %v", err)
	}
	if _, err := SheetWithin("1/2", math.NaN()); !errors.Is(err, ErrNoNumber) {
		t.Errorf("got %v", err)
	}
}

// Whole feet in steps of two, 6 to 16 ft: usual practice, from memory.
func TestStockLengths(t *testing.T) {
	var got []int
	for _, l := range StockLengths() {
		got = append(got, int(l/length.Foot))
	}
	if len(got) != 6 || got[0] != 6 || got[5] != 16 {
		t.Errorf("got %v", got)
	}
	for _, text := range []string{"six", "0", "-8", "9999999999999999999"} {
		if list, err := feet(text); err == nil {
			t.Errorf("%s: got %v", text, list)
		}
	}
}

func FuzzParse(f *testing.F) {
	f.Add("nominal,thickness_dry_in,width_dry_in\n2x4,1.5,3.5\n")
	f.Add("category,min_in,max_in\n23/32,0.688,0.75\n")
	f.Add("id,kind,D_in,min_penetration_rule\nscrew-8,wood_screw,0.164,6*D including tip\n")
	f.Fuzz(func(t *testing.T, text string) {
		if list, err := parseLumber(text); err == nil {
			for _, l := range list {
				if !l.sizes[Dry].Thick.Valid() {
					t.Errorf("%s has no valid size", l.nominal)
				}
			}
		}
		if list, err := parseSheets(text); err == nil && len(list) > 0 && !list[0].Thick.Valid() {
			t.Errorf("%+v", list[0])
		}
		if list, err := parseFasteners(text); err == nil && len(list) > 0 && !list[0].Penetration.Valid() {
			t.Errorf("%+v", list[0])
		}
	})
}

func BenchmarkDressedSize(b *testing.B) {
	size, err := DressedSize("4x12", Dry)
	if err != nil || size.Wide != 45*length.Inch/4 {
		b.Fatal(size, err)
	}
	for b.Loop() {
		sink, _ = DressedSize("4x12", Dry)
	}
}

var sink Size
