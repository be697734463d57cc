package render

import "image/color"

// Palette turns inks into opaque colours. All three palettes keep text at a contrast of 5 to 1
// or more on the grounds it may stand on.
type Palette struct{ colors [inks]color.RGBA }

// Color returns the colour of an ink.
func (p Palette) Color(i Ink) color.RGBA {
	if i >= inks {
		i = InkMain
	}
	return p.colors[i]
}

// Light is for screens by day, Dark for screens by night. Print is black on white paper: what
// colour says on screen, shape and words say there.
var (
	Light = paletteOf(light)
	Dark  = paletteOf(dark)
	Print = paletteOf(print)
)

var light = [inks]uint32{
	InkMain: 0x2A231A, InkSoft: 0x5C5140,
	InkNotFit: 0x9C2B1C, InkTooClose: 0x7A5000, InkCannotTell: 0x32546E, InkFits: 0x2C6136,
	InkNotFitTint: 0xF6E0D6, InkTooCloseTint: 0xF6E7C4, InkOnSign: 0xFFFDF6,
	InkPaper: 0xF7F0E0, InkPanel: 0xFCF8EE, InkWell: 0xF1E6CF, InkTape: 0xF1D896,
	InkField: 0xFFFDF6, InkChosenRow: 0xF6E9CB, InkWhite: 0xFFFFFF,
	InkBoard: 0xE6C48F, InkEndGrain: 0xC99B5C, InkDrawerFront: 0xEFD6AE,
	InkWallCut: 0xCDBB96, InkChosenWall: 0xE8B765, InkGlass: 0xDDE7E4,
	InkHairline: 0xD6C6A4, InkLit: 0xE8B765,
}

var dark = [inks]uint32{
	InkMain: 0xF0E8D8, InkSoft: 0xC4B8A2,
	InkNotFit: 0xFF9C88, InkTooClose: 0xE9BC5C, InkCannotTell: 0x93BEDD, InkFits: 0x8CCB97,
	InkNotFitTint: 0x47241C, InkTooCloseTint: 0x413213, InkOnSign: 0x1B1712,
	InkPaper: 0x221D16, InkPanel: 0x2A241C, InkWell: 0x332B20, InkTape: 0x453817,
	InkField: 0x1B1712, InkChosenRow: 0x3D321D, InkWhite: 0x443E35,
	InkBoard: 0x6B4F28, InkEndGrain: 0x553A18, InkDrawerFront: 0x5C4A2F,
	InkWallCut: 0x575042, InkChosenWall: 0x7A5815, InkGlass: 0x2E4347,
	InkHairline: 0x5A503E, InkLit: 0x7A5815,
}

var print = [inks]uint32{
	InkMain: 0x000000, InkSoft: 0x000000,
	InkNotFit: 0x000000, InkTooClose: 0x000000, InkCannotTell: 0x000000, InkFits: 0x000000,
	InkNotFitTint: 0xE6E6E6, InkTooCloseTint: 0xFFFFFF, InkOnSign: 0xFFFFFF,
	InkPaper: 0xFFFFFF, InkPanel: 0xFFFFFF, InkWell: 0xFFFFFF, InkTape: 0xFFFFFF,
	InkField: 0xFFFFFF, InkChosenRow: 0xEEEEEE, InkWhite: 0xFFFFFF,
	InkBoard: 0xFFFFFF, InkEndGrain: 0xFFFFFF, InkDrawerFront: 0xFFFFFF,
	InkWallCut: 0xFFFFFF, InkChosenWall: 0xDDDDDD, InkGlass: 0xFFFFFF,
	InkHairline: 0x000000, InkLit: 0xDDDDDD,
}

func paletteOf(table [inks]uint32) Palette {
	var p Palette
	for i, c := range table {
		p.colors[i] = color.RGBA{uint8(c >> 16), uint8(c >> 8), uint8(c), 0xff}
	}
	return p
}
