package length_test

import (
	"math"
	"testing"

	"bunkwright/room/length"
)

func TestFromMM(t *testing.T) {
	for _, c := range []struct {
		mm   float64
		want length.Length
	}{
		{0, 0}, {1711.325, 1_711_325_000}, {-12.7, -12_700_000}, {0.0000014, 1}, {0.0000005, 0}, {0.0000025, 2},
		{1e9, length.Max}, {-1e9, -length.Max},
		{1.1e9, length.OutOfRange}, {math.NaN(), length.OutOfRange}, {math.Inf(1), length.OutOfRange}, {math.Inf(-1), length.OutOfRange},
	} {
		if got := length.FromMM(c.mm); got != c.want {
			t.Errorf("%v mm: %d, want %d", c.mm, got, c.want)
		}
	}
}

func TestUnitsOut(t *testing.T) {
	l := 67*length.Inch + 3*length.Inch/8
	if l.MM() != 1711.325 || l.Inches() != 67.375 {
		t.Errorf("%v mm, %v in", l.MM(), l.Inches())
	}
	if !math.IsNaN(length.OutOfRange.MM()) || !math.IsNaN((length.Max + 1).Inches()) {
		t.Error("what is out of range has no number")
	}
}

// TestRound: worked by hand in steps of 10; 15 and -15 are ties, whose even neighbours are 20 and -20.
func TestRound(t *testing.T) {
	for _, c := range []struct {
		l, nearest, toward, away length.Length
	}{
		{0, 0, 0, 0}, {4, 0, 0, 10}, {5, 0, 0, 10}, {6, 10, 0, 10}, {10, 10, 10, 10}, {15, 20, 10, 20}, {25, 20, 20, 30},
		{-4, 0, 0, -10}, {-5, 0, 0, -10}, {-6, -10, 0, -10}, {-15, -20, -10, -20}, {-25, -20, -20, -30},
	} {
		nearest, toward, away := c.l.Round(10, length.Nearest), c.l.Round(10, length.TowardZero), c.l.Round(10, length.AwayFromZero)
		if nearest != c.nearest || toward != c.toward || away != c.away {
			t.Errorf("%d: nearest %d, toward zero %d, away %d", c.l, nearest, toward, away)
		}
	}
	if length.OutOfRange.Round(10, length.AwayFromZero) != length.OutOfRange || length.Length(7).Round(0, length.Nearest) != 7 {
		t.Error("what cannot be rounded must stay as it is")
	}
}

func TestNames(t *testing.T) {
	for _, name := range []string{"in", "mm"} {
		if u, err := length.ParseUnit(name); err != nil || u.String() != name {
			t.Errorf("%s: %v, %v", name, u, err)
		}
	}
	if _, err := length.ParseUnit("cm"); err == nil {
		t.Error("a job is in inches or millimetres")
	}
	if f, err := length.ParseField(""); err != nil || f != length.Plain {
		t.Errorf("no field: %v, %v", f, err)
	}
	if _, err := length.ParseField("widht"); err == nil {
		t.Error("an unknown field must be reported")
	}
}

func TestErrors(t *testing.T) {
	for _, c := range []struct {
		text string
		ctx  length.Context
		want string
	}{
		{"3", length.Context{}, `length "3": want a number and a unit, such as 31-1/2 in or 800 mm`},
		{"5 7", inches, `length "5 7": two numbers side by side: 5' 7"?`},
		{`5' 13"`, inches, `length "5' 13"": 13 in after feet: 6' 1"?`},
		{"12 - 1/2", inches, `length "12 - 1/2": a minus, or a dash with a space before it: 11-1/2" or 1' 0-1/2"?`},
		{"67 3/8\" 170.8 cm", inches, `length "67 3/8" 170.8 cm": two units that differ by 3.325 mm: 5' 7-3/8" or 170.8 cm?`},
		{"-5", inches, `length "-5": a length is not negative`},
		{"67\x07", inches, `length "67\a": a character that cannot be seen (U+0007): want a number and a unit, such as 31-1/2 in or 800 mm`},
	} {
		if _, err := length.Parse(c.text, c.ctx); err == nil || err.Error() != c.want {
			t.Errorf("%q:\n have %v\n want %s", c.text, err, c.want)
		}
	}
	if l, err := length.Parse("5' 7\"", inches); err != nil || l != 67*length.Inch {
		t.Errorf("%v, %v", l, err)
	}
}
