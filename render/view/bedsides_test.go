package view

import (
	"fmt"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/length"
)

// TestSidesAreClean: front and end beside each other keep within their box in a window of either size, in both units.
func TestSidesAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		b := builtSample(t, name)
		for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
			for _, o := range []Options{{W: render.Px(815), H: render.Px(380), Beside: true}, {W: render.Px(560), H: render.Px(270), Beside: true, Sparse: true}} {
				o.Unit = unit
				clean(t, fmt.Sprintf("%s, %v, %v", name, unit, o.Sparse), BedSides(b, bunk.Right, o), o.On)
			}
		}
	}
}

// TestRefusedIsDashed: of the lines of what cannot be built each is dashed in red, leaders to it are not, and nothing else is.
func TestRefusedIsDashed(t *testing.T) {
	b := builtSample(t, "town-house.toml")
	o := Options{W: render.Px(815), H: render.Px(380), Names: true, Refused: []string{"guard"}}
	for _, d := range []render.Drawing{BedSides(b, bunk.Right, o), BedCorner(b, 30, 25, o)} {
		n := 0
		for _, m := range d.Marks {
			if m.Kind != render.KindStroke || m.Pen == o.Style().Extension {
				continue
			}
			if dashed := m.Pen == o.Style().Refused; dashed != render.Under(m.Ref, "guard") {
				t.Errorf("%s: %.60s", d.Title, m)
			} else if dashed {
				n++
			}
		}
		if n == 0 {
			t.Errorf("%s: nothing is dashed", d.Title)
		}
	}
}
