package length_test

import (
	"errors"
	"testing"

	"bunkwright/room/length"
)

// TestDressedSizes: dry dressed sizes of the American Softwood Lumber Standard PS 20 (read second hand), in quarters of an inch.
func TestDressedSizes(t *testing.T) {
	for name, quarters := range map[string][2]length.Length{
		"1x2": {3, 6}, "1x3": {3, 10}, "1x4": {3, 14}, "1x6": {3, 22}, "1x8": {3, 29}, "1x10": {3, 37}, "1x12": {3, 45},
		"5/4x4": {4, 14}, "5/4 x 6": {4, 22}, "5/4x8": {4, 29}, "6/4x6": {5, 22}, "6/4x12": {5, 45},
		"2x2": {6, 6}, "2x3": {6, 10}, "2x4": {6, 14}, "2x6": {6, 22}, "2x8": {6, 29}, "2x10": {6, 37}, "2x12": {6, 45}, "2x14": {6, 53},
		"3x4": {10, 14}, "3x12": {10, 45}, "4x4": {14, 14}, "4x6": {14, 22}, "4x8": {14, 29}, "4x12": {14, 45},
		"5x5": {18, 18}, "6x6": {22, 22}, "6x8": {22, 29},
		"2 X 4": {6, 14}, "2×4": {6, 14}, "2 by 4": {6, 14},
	} {
		first, second, err := length.ParseSection(name, length.Inches)
		if err != nil || first != quarters[0]*length.Inch/4 || second != quarters[1]*length.Inch/4 {
			t.Errorf("%s: %v x %v, %v", name, first, second, err)
		}
	}
}

// TestActualSizes: what is no whole-number pair of lumber is taken as it stands (R15).
func TestActualSizes(t *testing.T) {
	const in, mm = length.Inch, length.Millimetre
	for _, c := range []struct {
		text          string
		unit          length.Unit
		first, second length.Length
	}{
		{"1 1/2 x 3 1/2", length.Inches, 3 * in / 2, 7 * in / 2},
		{`3/4"x5-1/2"`, length.Inches, 3 * in / 4, 11 * in / 2},
		{"2.0x4.0", length.Inches, 2 * in, 4 * in},
		{"18 x 95 mm", length.Inches, 18 * mm, 95 * mm},
		{"18mmx95mm", length.Inches, 18 * mm, 95 * mm},
		{"18 mm x 95", length.Millimetres, 18 * mm, 95 * mm},
		{"38,5 x 89,5 mm", length.Inches, 77 * mm / 2, 179 * mm / 2},
		{"38x89", length.Millimetres, 38 * mm, 89 * mm},
	} {
		first, second, err := length.ParseSection(c.text, c.unit)
		if err != nil || first != c.first || second != c.second {
			t.Errorf("%q: %v x %v, %v", c.text, first, second, err)
		}
	}
}

func TestSectionsAskedAndRefused(t *testing.T) {
	ask, refuse := new(*length.AskError), new(*length.RefuseError)
	for _, c := range []struct {
		text string
		unit length.Unit
		want any
	}{
		{"2x", length.Inches, ask}, {"x4", length.Inches, ask}, {"5.5", length.Inches, ask}, {"2x4x8", length.Inches, ask},
		{"4x2", length.Inches, ask}, {"1x1", length.Inches, ask}, {"18x95", length.Inches, ask}, {"2x4 or 2x6", length.Inches, ask},
		{`2"x4"`, length.Inches, ask}, {"2x4 ft", length.Inches, ask}, {"about 2x4", length.Inches, ask}, {"2x4 strong", length.Inches, ask},
		{"2x4", length.Millimetres, ask}, {"about 18x95", length.Millimetres, ask}, {"18x95 light", length.Millimetres, ask},
		{"1.5x5.5", length.Millimetres, ask}, {"18 mm x 95", length.Inches, ask}, {"1,5x5,5", length.Inches, ask},
		{"0x4", length.Inches, refuse}, {"1.5x0", length.Inches, refuse}, {"abc x 4", length.Inches, refuse}, {"", length.Inches, refuse},
		{"x", length.Inches, refuse}, {"-2x4", length.Inches, refuse}, {"18x95", length.Unstated, ask}, {"1.5x5.5", length.Unstated, refuse},
		{"3/0x4", length.Inches, refuse}, {"2x4)", length.Inches, refuse},
	} {
		if _, _, err := length.ParseSection(c.text, c.unit); !errors.As(err, c.want) {
			t.Errorf("%q: %v", c.text, err)
		}
	}
	if _, err := length.Parse("2x4", in(length.Section)); err == nil {
		t.Error("a section is no single length")
	}
}
