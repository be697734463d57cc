package render

import (
	"image/color"
	"math"
	"testing"
)

// contrast returns the contrast ratio of two colours (W3C, WCAG 2.1, "contrast ratio" and
// "relative luminance").
func contrast(a, b color.RGBA) float64 {
	la, lb := luminance(a), luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

func luminance(c color.RGBA) float64 {
	part := func(v uint8) float64 {
		s := float64(v) / 255
		if s <= 0.03928 {
			return s / 12.92
		}
		return math.Pow((s+0.055)/1.055, 2.4)
	}
	return 0.2126*part(c.R) + 0.7152*part(c.G) + 0.0722*part(c.B)
}

func TestContrastFormula(t *testing.T) {
	black, white := color.RGBA{A: 255}, color.RGBA{255, 255, 255, 255}
	if got := contrast(black, white); math.Abs(got-21) > 1e-9 { // WCAG: "from 1 to 21"
		t.Errorf("black on white: %v", got)
	}
}

// TestTextContrast holds the palettes against the project's own rule: 5 to 1, on boards, cut
// walls and what is lit only for the main ink.
func TestTextContrast(t *testing.T) {
	anyInk := []Ink{InkMain, InkSoft, InkNotFit, InkTooClose, InkCannotTell, InkFits}
	grounds := map[Ink][]Ink{
		InkPaper: anyInk, InkPanel: anyInk, InkField: anyInk,
		InkWell: {InkMain, InkSoft}, InkChosenRow: {InkMain, InkSoft}, InkTape: {InkMain, InkSoft},
		InkWhite: {InkMain, InkSoft}, InkGlass: {InkMain, InkSoft},
		InkNotFitTint: {InkMain, InkNotFit}, InkTooCloseTint: {InkMain, InkTooClose},
		InkBoard: {InkMain}, InkEndGrain: {InkMain}, InkDrawerFront: {InkMain},
		InkWallCut: {InkMain}, InkChosenWall: {InkMain}, InkLit: {InkMain},
		InkNotFit: {InkOnSign}, InkFits: {InkOnSign},
	}
	for name, p := range map[string]Palette{"light": Light, "dark": Dark, "print": Print} {
		for ground, inks := range grounds {
			for _, ink := range inks {
				if c := contrast(p.Color(ink), p.Color(ground)); c < 5 {
					t.Errorf("%s: %v on %v has %.2f to 1", name, ink, ground, c)
				}
			}
		}
	}
}

// TestPrintIsGrey: a sheet says nothing by colour.
func TestPrintIsGrey(t *testing.T) {
	for i := range inks {
		if c := Print.Color(i); c.R != c.G || c.G != c.B {
			t.Errorf("%v is %v", i, c)
		}
	}
}

// TestPalettesAreWhole: no ink was left out of a table, which would be black and see-through.
func TestPalettesAreWhole(t *testing.T) {
	for i := range inks {
		for name, table := range map[string][inks]uint32{"light": light, "dark": dark} {
			if table[i] == 0 {
				t.Errorf("%s lacks %v", name, i)
			}
		}
		if inkNames[i] == "" {
			t.Errorf("ink %d has no name", i)
		}
	}
}

// TestTypeSizes: nothing is set under 13 pixels on screen or 7 points on paper (our own rule).
func TestTypeSizes(t *testing.T) {
	for least, s := range map[Paper]Style{Px(13): ScreenStyle, Pt(7): SheetStyle} {
		for _, l := range []Lettering{s.Title, s.Heading, s.Body, s.Measure, s.Small} {
			if l.Size < least {
				t.Errorf("%v is under %v", l, least)
			}
		}
	}
}
