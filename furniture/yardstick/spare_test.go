package yardstick

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// What each relation asks for, worded from the column description of rules.csv: one step below the lower end, at it,
// just above it, just below the upper end, at it, above it. '-' is a fail, '+' a pass, '=' left to at_limit.
var sides = map[Relation]string{
	AtLeast:         "-=+",
	MoreThan:        "-=+",
	AtMost:          "+=-",
	LessThan:        "+=-",
	Inside:          "-=++=-",
	OutsideOpen:     "+=--=+",
	OutsideClosed:   "+=--=+",
	OutsideUpperEnd: "+=--=+",
}

// TestEveryRowAtItsEnds holds the values around each end of each row against the words of its relation and at_limit.
func TestEveryRowAtItsEnds(t *testing.T) {
	for _, r := range All() {
		want, numeric := sides[r.Relation]
		if !numeric {
			continue
		}
		step := 1e-6 // 1 nm
		if r.Unit != MM {
			step = max(1, math.Abs(r.Need[0])) * 1e-6
		}
		i := 0
		for _, end := range r.Need {
			for _, have := range []float64{end - step, end, end + step} {
				checkSide(t, r, have, want[i])
				i++
			}
		}
	}
}

func checkSide(t *testing.T, r Row, have float64, want byte) {
	t.Helper()
	got := r.Outcome(have)
	if r.Role == RoleScope {
		got = map[Outcome]Outcome{Applies: Pass, NotApplies: Fail}[got]
	}
	spare := r.Round(r.Spare(have))
	switch want {
	case '+':
		if got != Pass || spare <= 0 {
			t.Errorf("%s %s at %v: got %s, spare %v, want pass", r.ID, r.Relation, have, got, spare)
		}
	case '-':
		if got != Fail || spare >= 0 {
			t.Errorf("%s %s at %v: got %s, spare %v, want fail", r.ID, r.Relation, have, got, spare)
		}
	case '=':
		if equal := map[Equality]Outcome{EqualPasses: Pass, EqualFails: Fail, EqualBorderline: Borderline}; got != equal[r.AtLimit(have)] || got == NotJudged || spare != 0 {
			t.Errorf("%s %s at %v: got %s, spare %v, want what at_limit says", r.ID, r.Relation, have, got, spare)
		}
	}
}

// The spare of each relation by hand, from "spare per rule" of the question table: >= x - a; <= a - x;
// inside min(x - a, b - x); outside max(a - x, x - b).
func TestSpareByHand(t *testing.T) {
	for _, c := range []struct {
		id         string
		have, want float64
	}{
		{"us-rail-over-mattress", 150, 23},         // 150 - 5 x 25.4
		{"us-rail-opening", 82.55, 6.35},           // 3.5 - 3.25 in
		{"us-bunk-scope", 1000, 238},               // 1000 - 30 x 25.4
		{"irc-fall-opening", 90, 11.6},             // 4 x 25.4 - 90
		{"eu-access-opening", 381, 19},             // min(81, 19)
		{"eu-access-opening", 290, -10},            // min(-10, 110)
		{"eu-adjoining-gap", 50, 25},               // max(25, -180)
		{"eu-adjoining-gap", 120, -45},             // max(-45, -110)
		{"us-lower-end-opening", 235, 6.4},         // 235 - 9 x 25.4
		{"us-age-upper", 5.5, -0.5},                // years
		{"irc-escape-area", 480. / 144, -2.366667}, // 20 x 24 in in ft2
	} {
		r, _ := Find(c.id)
		if got := r.Spare(c.have); math.Abs(got-c.want) > 1e-6 {
			t.Errorf("%s at %v: spare %v, want %v", c.id, c.have, got, c.want)
		}
	}
}

// A need in inches is exact: an inch is 25.4 mm by definition (international yard and pound agreement, 1959).
func TestNeedsInInchesAreExact(t *testing.T) {
	for id, want := range map[string]float64{
		"us-rail-opening":         88.9,
		"us-rail-over-mattress":   127, // not the rounded 130 of the text
		"us-rail-full-length-gap": 5.588,
		"irc-stair-riser":         196.85,
		"own-shelf-sag":           0.79375,
		"own-build-by-spacer":     1.5875,
	} {
		if r, _ := Find(id); len(r.Need) != 1 || r.Need[0] != want || r.Unit != MM {
			t.Errorf("%s: need %v %s, want %v mm", id, r.Need, r.Unit, want)
		}
	}
}

// The source's two units disagree by more than rounding here: the governing one decides.
func TestGoverningUnitDecides(t *testing.T) {
	for _, c := range []struct {
		id   string
		have float64
		want Outcome
	}{
		{"us-rail-over-mattress", 128, Pass},   // 130 mm is written beside 5 in
		{"us-rail-short-end-gap", 380.5, Pass}, // 380 mm is written beside 15 in = 381
		{"uscg-modu-gap", 761, Pass},           // 30 in is 762, the 760 mm governs
		{"us-bunk-scope", 761, NotApplies},     // 760 mm is written beside 30 in
	} {
		if r, _ := Find(c.id); r.Outcome(c.have) != c.want {
			t.Errorf("%s at %v mm: got %s, want %s", c.id, c.have, r.Outcome(c.have), c.want)
		}
	}
}

func TestAnswers(t *testing.T) {
	yes, _ := Find("us-rail-release")      // relation yes
	no, _ := Find("register-cover")        // relation no
	number, _ := Find("us-rail-opening")   // no answer fits it
	figure, _ := Find("own-head-cylinder") // a parameter
	for _, c := range []struct {
		row    Row
		answer bool
		spare  float64
		want   Outcome
	}{
		{yes, true, 0, Pass}, {yes, false, -1, Fail}, {no, false, 0, Pass}, {no, true, -1, Fail},
	} {
		if c.row.OutcomeOf(c.answer) != c.want || c.row.SpareOf(c.answer) != c.spare {
			t.Errorf("%s answered %v: got %s, spare %v", c.row.ID, c.answer, c.row.OutcomeOf(c.answer), c.row.SpareOf(c.answer))
		}
	}
	if number.OutcomeOf(true) != NotJudged || yes.Outcome(1) != NotJudged || figure.Outcome(100) != NotJudged {
		t.Error("a value of the wrong sort was judged")
	}
}

func TestMissingValueIsNotJudged(t *testing.T) {
	for _, r := range All() {
		if got := r.Outcome(math.NaN()); got != NotJudged {
			t.Errorf("%s without a value: got %s", r.ID, got)
		}
	}
}

// A value a whole count of nanometres off the need has exactly that spare once rounded, however it was added up.
func TestRoundUndoesFloatNoise(t *testing.T) {
	rows := All()
	rapid.Check(t, func(t *rapid.T) {
		r := rapid.SampledFrom(rows).Draw(t, "row")
		if r.Unit != MM || r.Relation.Band() || r.Relation == Equals {
			t.Skip("not a single length")
		}
		nm := rapid.IntRange(-1_000_000_000, 1_000_000_000).Draw(t, "nm")
		shift := rapid.Float64Range(-10_000, 10_000).Draw(t, "shift")
		spare := r.Round(r.Spare(r.Need[0] + shift + float64(nm)/1e6 - shift))
		if r.Relation == AtMost || r.Relation == LessThan {
			spare = -spare
		}
		if spare != float64(nm)/1e6 {
			t.Fatalf("%s: %d nm came out as %v mm", r.ID, nm, spare)
		}
	})
}

func TestRoundHasNoNegativeZero(t *testing.T) {
	r, _ := Find("own-sits")
	if got := r.Round(-1e-8); math.Signbit(got) {
		t.Errorf("got %v", got)
	}
}

func BenchmarkOutcome(b *testing.B) {
	r, _ := Find("eu-adjoining-gap")
	if r.Outcome(80) != Fail {
		b.Fatal("80 mm must fail 75..230")
	}
	for b.Loop() {
		sink = r.Outcome(80)
	}
}

var sink Outcome
