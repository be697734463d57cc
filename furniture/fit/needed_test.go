package fit

import (
	"testing"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

// TestNeeded writes needs in both units: 24 in is 609.6 mm and 1 in is 25.4 mm; what a text publishes keeps its exact value.
func TestNeeded(t *testing.T) {
	ours := &yardstick.Row{Unit: yardstick.MM, Own: yardstick.Need, Relation: yardstick.AtLeast, Need: []float64{609.6}}
	band := &yardstick.Row{Unit: yardstick.MM, Own: yardstick.Need, Relation: yardstick.Inside, Need: []float64{0, 25.4}}
	round := &yardstick.Row{Unit: yardstick.MM, Own: yardstick.Advice, Relation: yardstick.AtLeast, Need: []float64{50}}
	text := &yardstick.Row{Unit: yardstick.MM, Relation: yardstick.AtMost, Need: []float64{88.9}}
	for _, c := range []struct {
		row    *yardstick.Row
		in, mm string
	}{
		{ours, "at least 24 in", "at least 610 mm (24 in)"},
		{band, "0 in to 1 in", "0 mm to 25 mm (1 in)"},
		{round, "at least 50 mm", "at least 50 mm"},
		{text, "at most 3-1/2 in", "at most 88.9 mm"},
	} {
		l := Line{Row: c.row}
		if in, mm := l.Against(length.Inches), l.Against(length.Millimetres); in != c.in || mm != c.mm {
			t.Errorf("got %q and %q, want %q and %q", in, mm, c.in, c.mm)
		}
	}
}
