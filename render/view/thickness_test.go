package view

import (
	"fmt"
	"testing"
)

// TestUnknownThicknessIsDrawn: a mattress of which nobody knows how thick it is lies flat on its deck, and every drawing stays whole: no
// rail is dimensioned over it, nobody sits on it, and the section asks.
func TestUnknownThicknessIsDrawn(t *testing.T) {
	for _, name := range sampleNames(t) {
		j := sample(t, name)
		j.Bed.Upper.MattressThick, j.Bed.Lower.MattressThick = 0, 0
		s, answers := asked(t, &j)
		for _, o := range []Options{screen, {On: OnPaper}} {
			section := Section(s, answers, o)
			views := append(everyView(s, answers, o), named{"section", section}, named{"stick", Stick(s, answers, o)},
				named{"front", BedFront(s.Bed, o)}, named{"end", BedEnd(s.Bed, "left", o)}, named{"above", BedAbove(s.Bed, o)})
			for _, v := range views {
				clean(t, fmt.Sprintf("%s, %s, medium %d", name, v.name, o.On), v.d, o.On)
			}
			if !has(section, "mattress: how thick?") {
				t.Errorf("%s: the section does not ask", name)
			}
		}
	}
}
