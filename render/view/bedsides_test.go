package view

import (
	"fmt"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/render"
	"bunkwright/room/length"
)

func sidesOf(b *bunk.Bed, o Options) render.Drawing {
	d, _ := BedSides(b, bunk.Right, o)
	return d
}

// TestSidesAreClean: front and end beside each other keep within their box in a window of either size, in both units.
func TestSidesAreClean(t *testing.T) {
	for _, name := range sampleNames(t) {
		b := builtSample(t, name)
		for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
			for _, o := range []Options{{W: render.Px(815), H: render.Px(380), Beside: true}, {W: render.Px(560), H: render.Px(270), Beside: true, Sparse: true}} {
				o.Unit = unit
				clean(t, fmt.Sprintf("%s, %v, %v", name, unit, o.Sparse), sidesOf(b, o), o.On)
			}
		}
	}
}

// TestSidesFillTheirBox: from a width on at which there is room for all dimensions, the bed itself takes a good part of its box.
func TestSidesFillTheirBox(t *testing.T) {
	for _, name := range sampleNames(t) {
		b := builtSample(t, name)
		for _, unit := range []length.Unit{length.Inches, length.Millimetres} {
			for wide := 680.0; wide <= 860; wide += 40 {
				o := Options{Unit: unit, W: render.Px(wide), H: render.Px(380), Beside: true}
				d := sidesOf(b, o)
				share := max(d.Scale*(b.Long+b.Wide)/float64(o.W), d.Scale*frontOf(b, o).top()/float64(o.H))
				if share < 0.35 {
					t.Errorf("%s, %v, %g wide: the bed takes %.2f of its box", name, unit, wide, share)
				}
			}
		}
	}
}

// TestRefusedIsDashed: of the lines of what cannot be built each is dashed in red, leaders to it are not, and nothing else is.
func TestRefusedIsDashed(t *testing.T) {
	b := builtSample(t, "town-house.toml")
	o := Options{W: render.Px(815), H: render.Px(380), Names: true, Refused: []string{"guard"}}
	for _, d := range []render.Drawing{sidesOf(b, o), BedCorner(b, 30, 25, o)} {
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
