package length_test

import (
	"testing"

	"bunkwright/room/length"
)

// TestFormat: 67-3/8 in is 1711.325 mm; the marks of a tape are common practice, no source.
func TestFormat(t *testing.T) {
	const in, mm = length.Inch, length.Millimetre
	var tape, only, metric = length.Style{}, length.Style{InchesOnly: true}, length.Style{Unit: length.Millimetres}
	for _, c := range []struct {
		l     length.Length
		style length.Style
		want  string
	}{
		{67*in + 3*in/8, tape, `5' 7-3/8"`}, {7*in + 3*in/8, tape, `7-3/8"`}, {0, tape, `0"`}, {96*in + in/4, tape, `8' 0-1/4"`},
		{22 * in, tape, `1' 10"`}, {60 * in, tape, `5' 0"`}, {in / 2, tape, `1/2"`}, {12*in - in/64, tape, `1' 0"`},
		{-7*in - 3*in/8, tape, `-7-3/8"`}, {-67*in - 3*in/8, tape, `-5' 7-3/8"`}, {-in / 64, tape, `0"`},
		{67*in + 3*in/8, only, `67-3/8 in`}, {3 * in / 8, only, `3/8 in`}, {0, only, `0 in`}, {-in / 2, only, `-1/2 in`},
		{67*in + 3*in/8, metric, `1711 mm`}, {-3 * mm / 2, metric, `-2 mm`}, {mm / 2, metric, `0 mm`}, {5 * mm / 2, metric, `2 mm`},
		{in / 32, tape, `0"`}, {3 * in / 32, tape, `1/8"`}, // ties go to the even sixteenth
		{1711325 * mm / 1000, length.Style{Unit: length.Millimetres, Step: mm / 10}, `1711.3 mm`},
		{1001 * mm / 1000, length.Style{Unit: length.Millimetres, Step: 1}, `1.001 mm`},
		{67*in + 21*in/64, length.Style{Step: in / 64}, `5' 7-21/64"`},
		{67*in + 21*in/64, length.Style{Step: mm}, `5' 7-5/16"`}, // a millimetre is no step in inches: 1/16 in
		{67*in + 21*in/64, length.Style{Step: in}, `5' 7"`},
		{length.OutOfRange, tape, "out of range"}, {length.Max + 1, metric, "out of range"},
	} {
		if got := length.Format(c.l, c.style); got != c.want {
			t.Errorf("%d nm %+v: %s, want %s", c.l, c.style, got, c.want)
		}
	}
}

// TestFormatSpare: a spare of 1-1/32 in is shown as 1 in, a shortage of as much as 1-1/16 in.
func TestFormatSpare(t *testing.T) {
	l := 33 * length.Inch / 32
	for _, c := range []struct {
		l    length.Length
		unit length.Unit
		want string
	}{
		{l, length.Inches, `1"`}, {-l, length.Inches, `-1-1/16"`}, {length.Inch / 64, length.Inches, `0"`}, {-length.Inch / 64, length.Inches, `-1/16"`},
		{l, length.Millimetres, "26 mm"}, {-l, length.Millimetres, "-27 mm"}, // 26.19 mm
	} {
		if got := length.FormatSpare(c.l, length.Style{Unit: c.unit}); got != c.want {
			t.Errorf("%v: %s, want %s", c.l, got, c.want)
		}
	}
}

func TestExact(t *testing.T) {
	for _, c := range []struct {
		nm     length.Length
		in, mm string
	}{
		{1_711_325_000, "67-3/8 in", "1711.325 mm"},
		{396_875, "1/64 in", "0.396875 mm"},
		{1_709_420_000, "67.3 in", "1709.42 mm"},
		{254, "0.00001 in", "0.000254 mm"},
		{1_700_000_000, "1700 mm", "1700 mm"},
		{1, "0.000001 mm", "0.000001 mm"},
		{0, "0 in", "0 mm"},
		{-12_700_000, "-1/2 in", "-12.7 mm"},
	} {
		in, mm := length.Exact(c.nm, length.Inches), length.Exact(c.nm, length.Millimetres)
		if in != c.in || mm != c.mm || c.nm.String() != c.mm {
			t.Errorf("%d nm: %q %q", c.nm, in, mm)
		}
	}
	if length.Exact(length.OutOfRange, length.Inches) != "out of range" {
		t.Error("what is out of range must not be written as a number")
	}
}
