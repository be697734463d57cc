package length_test

import (
	"testing"

	"bunkwright/room/length"

	"pgregory.net/rapid"
)

// readable draws a length that can be read: often one with a mark on a tape, sometimes any number of nanometres.
func readable(t *rapid.T) length.Length {
	const most = int64(length.MaxRead)
	switch rapid.IntRange(0, 3).Draw(t, "scale") {
	case 0:
		return length.Length(rapid.Int64Range(0, most/396_875).Draw(t, "64ths") * 396_875)
	case 1:
		return length.Length(rapid.Int64Range(0, most/254).Draw(t, "hundred-thousandths") * 254)
	case 2:
		return length.Length(rapid.Int64Range(0, 10_000).Draw(t, "mm")) * length.Millimetre
	}
	return length.Length(rapid.Int64Range(0, most).Draw(t, "nm"))
}

func style(t *rapid.T) length.Style {
	s := length.Style{
		InchesOnly: rapid.Bool().Draw(t, "inches only"),
		Rounding:   rapid.SampledFrom([]length.Rounding{length.Nearest, length.TowardZero, length.AwayFromZero}).Draw(t, "rounding"),
		Unit:       rapid.SampledFrom([]length.Unit{length.Inches, length.Millimetres}).Draw(t, "unit"),
	}
	s.Step = length.Inch / length.Length(int64(1)<<rapid.IntRange(0, 6).Draw(t, "power of two"))
	if s.Unit == length.Millimetres {
		s.Step = rapid.SampledFrom([]length.Length{1, 1000, length.Millimetre / 2, length.Millimetre, 5 * length.Millimetre}).Draw(t, "step")
	}
	return s
}

// TestPrintedReadsBack: what is shown means the rounded length, in every notation, in a job of either unit or none.
func TestPrintedReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l, s := readable(t), style(t)
		want := l.Round(s.Step, s.Rounding)
		if want > length.MaxRead {
			t.Skip("rounded beyond what is read")
		}
		unit := rapid.SampledFrom([]length.Unit{length.Unstated, length.Inches, length.Millimetres}).Draw(t, "job")
		text := length.Format(l, s)
		if got, err := length.Parse(text, length.Context{Unit: unit}); err != nil || got != want {
			t.Fatalf("%d nm printed %q and read back %d: %v", l, text, got, err)
		}
	})
}

// TestExactReadsBack: the form for files loses nothing, whatever unit the file is read with.
func TestExactReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := readable(t)
		units := rapid.SampledFrom([]length.Unit{length.Unstated, length.Inches, length.Millimetres})
		text := length.Exact(l, units.Draw(t, "written"))
		if got, err := length.Parse(text, length.Context{Unit: units.Draw(t, "read")}); err != nil || got != l {
			t.Fatalf("%d nm written %q and read back %d: %v", l, text, got, err)
		}
	})
}

// TestRoundingBounds: nearest errs by half a step, toward zero never adds, away from zero never takes away, none by a step.
func TestRoundingBounds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := length.Length(rapid.Int64Range(-int64(length.Max), int64(length.Max)).Draw(t, "nm"))
		step := length.Length(rapid.Int64Range(1, int64(length.Foot)).Draw(t, "step"))
		size := func(l length.Length) length.Length { return max(l, -l) }
		nearest, toward, away := l.Round(step, length.Nearest), l.Round(step, length.TowardZero), l.Round(step, length.AwayFromZero)
		for _, r := range []length.Length{nearest, toward, away} {
			if r%step != 0 || size(r-l) >= step {
				t.Fatalf("%d by %d: %d", l, step, r)
			}
		}
		if 2*size(nearest-l) > step || size(toward) > size(l) || size(away) < size(l) {
			t.Fatalf("%d by %d: nearest %d, toward zero %d, away %d", l, step, nearest, toward, away)
		}
	})
}

// TestFloatsKeepTapeMarks: a tape mark within a room survives the way through float64 millimetres.
func TestFloatsKeepTapeMarks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := length.Length(rapid.Int64Range(-64*1200, 64*1200).Draw(t, "64ths") * 396_875)
		if got := length.FromMM(l.MM()); got != l {
			t.Fatalf("%d nm came back as %d", l, got)
		}
	})
}
