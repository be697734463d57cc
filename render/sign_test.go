package render

import "testing"

var verdictSigns = []Sign{SignDoesNotFit, SignTooClose, SignCannotTell, SignFits}

func TestSignsKeepTheirWidth(t *testing.T) {
	for s := SignDoesNotFit; s <= DotDashed; s++ {
		b := Bounds(s.At("", Point{20, 30}, 8))
		if !(Rect{Point{16, 26}, Point{24, 34}}).Grow(0.01).Holds(b) {
			t.Errorf("sign %d covers %v", s, b)
		}
		if b.W() < 7 {
			t.Errorf("sign %d is only %v wide", s, b.W())
		}
	}
}

// TestSignsDifferWithoutColour: in black and white each verdict has a shape of its own.
func TestSignsDifferWithoutColour(t *testing.T) {
	seen := map[string]Sign{}
	for _, s := range verdictSigns {
		shape := ""
		for _, m := range s.At("", Point{}, 8) {
			shape += m.Path.String() + m.Text.Words + ";"
		}
		if other, ok := seen[shape]; ok {
			t.Errorf("signs %d and %d look alike", s, other)
		}
		seen[shape] = s
	}
}

// TestCheckBarIsTrue: from outer edge to outer edge the bar is as long as it says (an inch is
// 25.4 mm by definition: international yard and pound agreement, 1959).
func TestCheckBarIsTrue(t *testing.T) {
	for want, bar := range map[Paper]CheckBar{
		50.8: CheckTwoInches, 101.6: CheckFourInch, 50: CheckFiftyMM, 100: CheckHundredMM,
	} {
		for _, style := range []Style{ScreenStyle, SheetStyle} {
			for _, m := range style.CheckBar("", Point{7, 9}, bar) {
				if m.Kind == KindStroke && m.Pen == style.Cut {
					b := m.Bounds()
					near(t, bar.Words, b.W(), want, 1e-9)
					near(t, "left edge", b.Min.X, 7, 1e-9)
				}
			}
		}
	}
	inches := CheckTwoInches.ticks(0, 0, 1)
	if n := len(inches) / 2; n != 7 { // quarters of 2 in, the ends aside
		t.Errorf("2 in has %d ticks", n)
	}
}

func TestScaleBarIsTrue(t *testing.T) {
	marks := SheetStyle.ScaleBar("", Point{10, 10}, 12.7, 3, "ft")
	var boxes Rect = nowhere
	for _, m := range marks {
		if m.Kind == KindFill {
			boxes = boxes.Union(m.Bounds())
		}
	}
	near(t, "length", boxes.W(), 38.1, 1e-9)
	for i, text := range textsOf(marks) {
		digit := Lettering{text.Size, text.Face}.Text(text.Start(), text.Words[:1], InkMain, Left)
		near(t, "figure over its joint", digit.Bounds().Centre().X, 10+12.7*Paper(i), 1e-9)
	}
}

func TestLeaderStopsAtItsWords(t *testing.T) {
	for _, dot := range []Point{{0, 0}, {90, 40}} {
		words := SheetStyle.Body.Text(Point{40, 20}, "guardrail", InkMain, Left)
		marks := SheetStyle.Leader("x", dot, words)
		if bad := crossed(marks); bad != "" {
			t.Error(bad)
		}
	}
}
