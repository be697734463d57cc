package fit

import (
	"math"
	"testing"

	"bunkwright/furniture/bunk"
)

// The frame leaves 2020 - 2000 = 20 and 920 - 900 = 20; 0 to 1 in = 25.4 both sides together (own-mattress-gap-need).
func TestMattressFits(t *testing.T) {
	real := func(long, wide float64) func(*Scene) {
		return func(s *Scene) { s.Bed.Sizes.Lower.MattressLong, s.Bed.Sizes.Lower.MattressWide = mm(long), mm(wide) }
	}
	// A frame of inches round a mattress that is only named.
	named := func(name string, long, wide float64) func(*Scene) {
		return func(s *Scene) {
			deck := bunk.Deck{MattressName: name}
			s.Bed.Sizes.Upper, s.Bed.Sizes.Lower = deck, deck
			s.Bed.Inside = bunk.Inside{Long: long, Wide: wide}
		}
	}
	runCases(t, "mattress-fits", []bedCase{
		{"measured", "US", nil, Fits, 25.4 - 20, "top.long"},
		{"too long", "US", real(2030, 900), DoesNotFit, -10, "bottom.long"},
		{"too narrow", "US", real(2000, 880), DoesNotFit, 25.4 - 40, "bottom.wide"},
		{"just in", "US", real(2020, 900), Fits, 0, "bottom.long"},
		{"a gap of just 1 in", "US", real(1994.6, 900), Fits, 0, "bottom.long"},
		// 5.4 to spare, u = 5/sqrt(3) = 2.89, safety asks 5.77
		{"within the build tolerance", "US", func(s *Scene) { s.Bed.Sizes.Tolerance = mm(5) }, TooClose, 5.4, "top.long"},
		// a twin is 38 to 39 by 74 to 76 in (mattresses.csv)
		{"a twin may not go in", "US", named("twin", 75.5*25.4, 39.5*25.4), CannotTell, none, "top.long"},
		{"a twin's width fits either way", "US", named("Twin", 1e3, 39*25.4), DoesNotFit, 1000 - 74*25.4, "top.long"},
		{"a twin leaves at least 2 in", "US", named("twin", 78*25.4, 39*25.4), DoesNotFit, -25.4, "top.long"},
		// exactly 80 in long and 38 to 39 wide in a frame 80.5 by 39: 0.5 and 0 to 1
		{"an extra long one fits whatever it measures", "US", named("twin extra long", 80.5*25.4, 39*25.4), Fits, 0, "top.wide"},
		{"a name that no table has", "US", named("hay", 2020, 920), CannotTell, none, "top.long"},
		{"neither measured nor named", "US", named("", 2020, 920), CannotTell, none, "top.long"},
		// 880 to 920 by 1980 to 2020: EN 1334:1998 allows 20 mm either way (secondary)
		{"a single 90 in the EU", "EU", named("single 90", 2020, 918), CannotTell, none, "top.long"},
		{"a single 90 in a frame too wide for any", "EU", named("single 90", 2020, 950), DoesNotFit, 25.4 - 30, "top.wide"},
		// exactly 900 by 1900 in the table, with nothing said of what it may differ
		{"a single in the UK", "UK", named("single", 1912, 912), Fits, 12, "top.long"},
		{"no bed", "US", unbuildable, CannotTell, none, "mattress"},
	})
}

// A single is 900 x 1900 in the UK and 920 x 1870 to 1880 in AU (mattresses.csv). The places of the job choose; two of them together, or
// none that has the name, leave the whole range.
func TestMattressNamesGoByPlace(t *testing.T) {
	for _, c := range []struct {
		places     string
		long, wide spread
	}{
		{"UK", spread{1900, 1900}, spread{900, 900}},
		{"NZ", spread{1870, 1880}, spread{920, 920}},
		{"UK AU", spread{1870, 1900}, spread{900, 920}},
		{"US", spread{1870, 1900}, spread{900, 920}},
	} {
		m, ok := plainScene(t, c.places).mattressNamed(" Single ")
		if !ok || m.Long != c.long || m.Wide != c.wide {
			t.Errorf("%s: %+v", c.places, m)
		}
	}
}

// The question says what a name may mean, in the job's unit.
func TestMattressAsks(t *testing.T) {
	s := plainScene(t, "US")
	s.Job.Unit = "in"
	s.Bed.Sizes.Upper = bunk.Deck{MattressName: "twin"}
	s.Bed.Inside = bunk.Inside{Long: 2020, Wide: 38.5 * 25.4}
	got := line(t, answer(t, s, "mattress-fits"), "own-mattress-gap-need", "top.wide").Ask
	if want := "how wide is the upper mattress? a twin may be 38 in to 39 in: measure it"; got != want {
		t.Errorf("%q, want %q", got, want)
	}
}

// mattresses.csv states inches exactly for US rows and mm for the others.
func TestMattressTable(t *testing.T) {
	if n := len(mattressTable()); n != 21 {
		t.Errorf("%d rows", n)
	}
	for _, m := range mattressTable() {
		if !(m.Long.Min > 1500 && m.Long.Min <= m.Long.Max && m.Long.Max < 2200 && m.Wide.Min > 700 && m.Wide.Min <= m.Wide.Max && m.Wide.Max <= 2020) {
			t.Errorf("%+v", m)
		}
	}
}

func FuzzReadMattresses(f *testing.F) {
	f.Add(mattressesCSV)
	f.Add("region,name,governs,length_mm_min,length_mm_max,width_mm_min,width_mm_max\nX,y,mm,NaN,1,1,Inf\n")
	f.Add("region\n\"")
	f.Fuzz(func(t *testing.T, text string) {
		list, err := readMattresses(text)
		for _, m := range list {
			if err == nil && !(0 < m.Long.Min && m.Long.Min <= m.Long.Max && 0 < m.Wide.Min && m.Wide.Min <= m.Wide.Max && !math.IsInf(m.Wide.Max, 1)) {
				t.Errorf("%+v", m)
			}
		}
	})
}
