package people

import (
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// By hand from the P5 and P95 rows of age 8 in child_sizes.csv (UM-HSRI-77-17) and of adult_sizes.csv (ANSUR).
func TestReachesByHand(t *testing.T) {
	for _, c := range []struct {
		name string
		of   func(Sex, float64) (float64, error)
		sex  Sex
		age  float64
		want float64
	}{
		{"kneeling", KneelingReach, Male, 8, 1642.2 - 441.5},
		{"kneeling", KneelingReach, Female, 8.4, 1572.5 - 424.4},
		{"kneeling", KneelingReach, Unknown, 8, 1642.2 - 441.5},
		{"kneeling", KneelingReach, Male, 40, 2393 - 602},
		{"kneeling", KneelingReach, Female, 40, 2214 - 557},
		{"kneeling", KneelingReach, Unknown, 40, 2393 - 602},
		{"seated", SeatedGripReach, Male, 8, 1453.2 - (1202.3 - 642)},
		{"seated", SeatedGripReach, Female, 8, 1377 - (1175.8 - 638.2)},
		{"seated", SeatedGripReach, Unknown, 7.5, 1377 - (1175.8 - 638.2)},
		{"seated", SeatedGripReach, Male, 30, 1316},
		{"seated", SeatedGripReach, Unknown, 30, 1207},
		{"sideways", SidewaysReach, Male, 8, 581.5},
		{"sideways", SidewaysReach, Female, 8, 554.4},
		{"sideways", SidewaysReach, Unknown, 8, 581.5},
		{"sideways", SidewaysReach, Unknown, 30, 886},
	} {
		if got, err := c.of(c.sex, c.age); err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%s reach of %s at %v: got %v, %v, want %v", c.name, c.sex, c.age, got, err, c.want)
		}
	}
}

// Rows of adult_sizes.csv: P5 woman, P95 man.
func TestGrownUpsWhoHelp(t *testing.T) {
	if shoulder, reach, err := BedMaker(); shoulder != 1242 || reach != 674.2 || err != nil {
		t.Errorf("bed maker: %v, %v, %v", shoulder, reach, err)
	}
	if short, tall, err := ParentEyes(); short != 1421.2 || tall != 1753 || err != nil {
		t.Errorf("parents: %v, %v, %v", short, tall, err)
	}
}

// Rows of sitting_height.csv, sitting_ratio.csv and adult_sizes.csv; between rows the mean of the two by hand.
func TestSeatedHeights(t *testing.T) {
	for _, c := range []struct {
		name string
		got  func() (float64, error)
		want float64
	}{
		{"P95 boy of 8-1/4", func() (float64, error) { return SittingHeight(Male, 8.25, P95) }, (731 + 742) / 2.},
		{"sd girl of 8-1/4", func() (float64, error) { return SittingHeight(Female, 8.25, SD) }, (28.1 + 28.5) / 2},
		{"P95 of 8, sex unknown", func() (float64, error) { return SittingHeight(Unknown, 8, P95) }, 731},
		{"18 is still a child", func() (float64, error) { return SeatedHeight(Female, 18, P95) }, 915},
		{"over 18 is a grown-up", func() (float64, error) { return SeatedHeight(Female, 18.5, P95) }, 912},
		{"grown-up, sex unknown", func() (float64, error) { return SeatedHeight(Unknown, 35, P95) }, 977},
		{"ratio of a boy of 9-1/2", func() (float64, error) { return SittingRatio(Male, 9.5, Mean) }, (0.5276 + 0.5245) / 2},
		{"ratio at 9, sex unknown", func() (float64, error) { return SittingRatio(Unknown, 9, Mean) }, 0.5292},
		{"sd of it at 9, sex unknown", func() (float64, error) { return SittingRatio(Unknown, 9, SD) }, 0.0137},
	} {
		if got, err := c.got(); err != nil || math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%s: got %v, %v, want %v", c.name, got, err, c.want)
		}
	}
}

// Age a counts from a-0.5 up to a+0.5 years, age 2 from 2.0 (header of child_sizes.csv).
func TestChildBins(t *testing.T) {
	for age, want := range map[float64]float64{2: 492.2, 2.4: 492.2, 2.5: 531.2, 7.5: 642, 8.49: 642, 18: 856.7} {
		if got, err := ChildSize(SittingHeightErect, Male, age, P5); got != want || err != nil {
			t.Errorf("age %v: got %v, %v, want %v", age, got, err, want)
		}
	}
}

func TestWhatIsNotHeldIsAnError(t *testing.T) {
	for _, c := range []struct {
		got  func() (float64, error)
		want string
	}{
		{func() (float64, error) { return SittingHeight(Male, 1.9, P50) }, "sitting heights hold no p50 for sex M at age 1.9"},
		{func() (float64, error) { return SittingHeight(Male, 18.2, P50) }, "sitting heights hold no p50 for sex M at age 18.2"},
		{func() (float64, error) { return SittingHeight(Male, math.NaN(), P50) }, "sitting heights hold no p50 for sex M at age NaN"},
		{func() (float64, error) { return ChildSize("arm_span", Male, 8, P5) }, "child sizes hold no p5 arm_span for sex M at age 8"},
		{func() (float64, error) { return ChildSize(Stature, Male, 1.8, P5) }, "child sizes hold no p5 stature for sex M at age 1.8"},
		{func() (float64, error) { return ChildSize(Stature, Male, 18.5, P5) }, "child sizes hold no p5 stature for sex M at age 18.5"},
		{func() (float64, error) { return ChildSize(Stature, Unknown, 8, P5) }, "child sizes hold no p5 stature for sex unknown at age 8"},
		{func() (float64, error) { return AdultSize("step_height", Male, P5) }, "adult sizes hold no p5 step_height for sex M"},
		{func() (float64, error) { return AdultSize(Stature, Everyone, P5) }, "adult sizes hold no p5 stature for sex all"},
		{func() (float64, error) { return SittingRatio(Male, 9, P95) }, "sitting ratios hold no p95 for sex M at age 9"},
		{func() (float64, error) { return SittingRatio(Male, 30, Mean) }, "sitting ratios hold no mean for sex M at age 30"},
		{func() (float64, error) { return ChartSize(Weight, Male, 8, SD) }, "growth charts hold no sd weight for sex M at age 8"},
		{func() (float64, error) { return KneelingReach(Unknown, 2) }, "child sizes hold no p95 vertical_grip_reach for sex M at age 2"},
	} {
		_, err := c.got()
		var none *NoSizeError
		if !errors.As(err, &none) || err.Error() != c.want {
			t.Errorf("got %v, want %s", err, c.want)
		}
	}
}

// From sitting_height.csv: boys P50 pass 700 mm between 8.5 (695) and 9 (704), girls between 8.5 (689) and 9; the girls'
// P50 at 18 is 862, the boys' more.
func TestUnknownSexTakesTheEarlier(t *testing.T) {
	age, over, err := HeadroomAge(700, 0, 0, Unknown, P50)
	if want := 8.5 + 0.5*5/9; !over || err != nil || math.Abs(age-want) > 1e-9 {
		t.Errorf("got %v, %v, %v, want %v", age, over, err, want)
	}
	boy, over, err := HeadroomAge(870, 0, 0, Unknown, P50)
	if only, _, _ := HeadroomAge(870, 0, 0, Male, P50); !over || err != nil || boy != only {
		t.Errorf("got %v, %v, %v, want the boys' %v", boy, over, err, only)
	}
	if age, over, err := HeadroomAge(2000, 0, 0, Unknown, P95); over || err != nil {
		t.Errorf("got %v, %v, %v, want not by 18", age, over, err)
	}
}

func TestHeadroomAgeAtTheEnds(t *testing.T) {
	if age, over, err := HeadroomAge(500, 0, 0, Male, P50); age != 2 || !over || err != nil { // 525 at age 2
		t.Errorf("got %v, %v, %v, want 2", age, over, err)
	}
	if age, over, err := HeadroomAge(525, 0, 0, Male, P50); age != 2 || !over || err != nil { // equal at 2, over just after
		t.Errorf("got %v, %v, %v, want 2", age, over, err)
	}
	if age, over, err := HeadroomAge(1024.1, 162.1, 0, Female, P50); over || err != nil { // 862 at 18, equal but for float noise
		t.Errorf("got %v, %v, %v, want not by 18", age, over, err)
	}
	plain, _, _ := HeadroomAge(685.8, 50, 0, Male, P50)
	if soft, _, err := HeadroomAge(665.8, 50, 20, Male, P50); soft != plain || err != nil {
		t.Errorf("20 mm of compression is worth 20 mm of headroom: %v, %v", soft, plain)
	}
	if _, _, err := HeadroomAge(math.NaN(), 0, 0, Male, P50); !errors.Is(err, ErrNoNumber) {
		t.Errorf("got %v", err)
	}
	if _, _, err := HeadroomAge(700, 0, 0, Male, "p97"); err == nil {
		t.Error("p97 is not in the table")
	}
}

func TestNamedChildAtTheEnds(t *testing.T) {
	if at, over, err := NamedAge(Male, 8.2, 700, 690, 0, 0); at != 8.2 || !over || err != nil {
		t.Errorf("too tall already: got %v, %v, %v, want 8.2", at, over, err)
	}
	if at, over, err := NamedAge(Male, 8.1, 700.3, 700.3, 0, 0); !over || err != nil || math.Abs(at-8.1) > 1e-9 { // equal now, over just after
		t.Errorf("got %v, %v, %v, want 8.1", at, over, err)
	}
	if at, over, err := NamedAge(Male, 8, 700, 2000, 0, 0); over || err != nil {
		t.Errorf("got %v, %v, %v, want not by 18", at, over, err)
	}
	boy, _, _ := NamedAge(Male, 8, 700, 788.2, 0, 0)
	girl, _, _ := NamedAge(Female, 8, 700, 788.2, 0, 0)
	if at, over, err := NamedAge(Unknown, 8, 700, 788.2, 0, 0); at != min(boy, girl) || !over || err != nil {
		t.Errorf("got %v, want the earlier of %v and %v", at, boy, girl)
	}
	if _, _, err := NamedAge(Male, 40, 900, 950, 0, 0); err == nil {
		t.Error("a grown-up is not in the table")
	}
	if _, _, err := NamedAge(Male, 8, math.NaN(), 950, 0, 0); !errors.Is(err, ErrNoNumber) {
		t.Errorf("got %v", err)
	}
}

// The limits between the bands, from the wording of calc-posture-band, in sums that floats get wrong by themselves.
func TestPostureBandLimits(t *testing.T) {
	for _, c := range []struct {
		headroom float64
		want     Posture
	}{
		{774.1, SitsFreely}, {774.1 - 1e-6, ErectTight}, {724.1, ErectTight}, {724.1 - 1e-6, SlumpedOnly},
		{684.1, SlumpedOnly}, {684.1 - 1e-6, ReclinesOnly}, {math.NaN(), ""},
	} {
		if got := PostureBand(c.headroom, 724.1, 50, 40); got != c.want {
			t.Errorf("headroom %v: got %q, want %q", c.headroom, got, c.want)
		}
	}
}

func TestBunkReachOutOfReach(t *testing.T) {
	if level, ok := BunkReach(1400, 742, 1400); level != 632 || !ok { // level with the shoulder: the whole arm
		t.Errorf("got %v, %v", level, ok)
	}
	for _, top := range []float64{1400 + 632.1, 1400 - 632.1, math.NaN()} {
		if level, ok := BunkReach(1400, 742, top); ok {
			t.Errorf("a top at %v is within reach: %v", top, level)
		}
	}
	if _, ok := BunkReach(1400, 100, 1400); ok {
		t.Error("an arm shorter than from back to shoulder reaches")
	}
}

// By hand: at the slats the line is at the target when the target touches them, and halfway up when both are as far.
func TestSightLineByHand(t *testing.T) {
	if got := SightLine(1500, 2000, 600, 0); got != 600 {
		t.Errorf("got %v", got)
	}
	if got := SightLine(1500, 1000, 600, 1000); got != 1050 {
		t.Errorf("got %v", got)
	}
	if got := SightLine(1500, 0, 600, 0); !math.IsNaN(got) {
		t.Errorf("got %v", got)
	}
}

func TestLMSEnds(t *testing.T) {
	if got, err := LMS(0, 100, 0.05, 2); err != nil || math.Abs(got-100*math.Exp(0.1)) > 1e-9 { // the limit of L to 0
		t.Errorf("got %v, %v", got, err)
	}
	_, err := LMS(2, 100, 0.05, -20) // 1 + LSz = -1
	var bad *LMSError
	if !errors.As(err, &bad) {
		t.Errorf("got %v", err)
	}
}

func TestWords(t *testing.T) {
	for text, want := range map[string]Sex{"M": Male, "female": Female, "all": Everyone, "unknown": Unknown} {
		if got, err := ParseSex(text); got != want || err != nil {
			t.Errorf("%s: got %s, %v", text, got, err)
		}
	}
	if _, err := ParseSex(""); err == nil || err.Error() != `sex "": want M, F, all or unknown` {
		t.Errorf("got %v", err)
	}
	if _, err := ParseStat("p97"); err == nil {
		t.Error("p97 is no statistic of the tables")
	}
	if unit, ok := Unit(Weight); unit != "kg" || !ok {
		t.Errorf("weight is in %q", unit)
	}
	if unit, ok := Unit(ThumbtipReach); unit != "mm" || !ok {
		t.Errorf("thumb-tip reach is in %q", unit)
	}
	if _, ok := Unit("arm_span"); ok {
		t.Error("arm span is not held")
	}
}

// The header of sitting_height.csv: p5 and p95 = mean -/+ 1.645 sd, p50 = mean, all in whole mm.
func TestSittingHeightsAreNormal(t *testing.T) {
	for c, value := range sittingHeights().cells {
		k, ok := map[Stat]float64{P5: -1.645, P50: 0, P95: 1.645}[c.stat]
		if !ok {
			continue
		}
		mean, sd := sittingHeights().cells[cell{"", c.sex, c.age, Mean}], sittingHeights().cells[cell{"", c.sex, c.age, SD}]
		if math.Abs(mean+k*sd-value) > 1.1 { // both mean and value are rounded to 1 mm
			t.Errorf("%s at %v: %s is %v, want about %v", c.sex, c.age, c.stat, value, mean+k*sd)
		}
	}
}

// A higher ceiling never costs a year, and a stricter percentile never gains one.
func TestHeadroomAgeIsMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sex := rapid.SampledFrom([]Sex{Male, Female, Unknown, Everyone}).Draw(t, "sex")
		low := rapid.Float64Range(400, 1000).Draw(t, "headroom")
		more := rapid.Float64Range(0, 300).Draw(t, "more")
		years := func(h float64, stat Stat) float64 {
			age, over, err := HeadroomAge(h, 0, 0, sex, stat)
			if err != nil {
				t.Fatal(err)
			}
			if !over {
				return LastChildAge
			}
			return age
		}
		if years(low+more, P50) < years(low, P50) || years(low, P95) > years(low, P50) {
			t.Fatalf("%s at %v and %v more", sex, low, more)
		}
	})
}

func FuzzParseTable(f *testing.F) {
	f.Add("sex,age_years,n,unit,mean,sd,p5,p50,p95\nM,2.0,27,mm,525,23.9,486,525,564\n")
	f.Add("measure,sex,age_years,unit,p5\nstature,F,adult,mm,1525\n")
	f.Fuzz(func(t *testing.T, text string) {
		table, err := parseTable("sizes", text)
		if err == nil {
			_, _ = table.between(cell{"", Male, 2, Mean}, 1)
		} else if !strings.HasPrefix(err.Error(), "sizes") {
			t.Errorf("the error does not name the table: %v", err)
		}
	})
}

func BenchmarkHeadroomAge(b *testing.B) {
	age, over, err := HeadroomAge(685.8, 50, 0, Unknown, P95)
	if err != nil || !over || math.Abs(age-4.5) > 0.1 { // 27 in less 50 mm, boys
		b.Fatal(age, over, err)
	}
	for b.Loop() {
		sink, _, _ = HeadroomAge(685.8, 50, 0, Unknown, P95)
	}
}

var sink float64
