package control

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"bunkwright/render"
)

// A Look says whether the window is light or dark.
type Look string

// The looks.
const (
	AsSystem  Look = ""
	LightLook Look = "light"
	DarkLook  Look = "dark"
)

// light tells whether a look is light where the system's is a variant.
func (l Look) light(variant fyne.ThemeVariant) bool {
	return l == LightLook || l == AsSystem && variant == theme.VariantLight
}

// Theme is the look of the toolkit's own widgets: the inks and the family of the drawings.
type Theme struct{ Look Look }

var faces = [...]fyne.Resource{
	fyne.NewStaticResource("regular.ttf", render.Regular.TTF()),
	fyne.NewStaticResource("medium.ttf", render.Medium.TTF()),
}

// inks says which ink each colour of the toolkit is.
var inks = map[fyne.ThemeColorName]render.Ink{
	theme.ColorNameBackground:          render.InkPanel,
	theme.ColorNameForeground:          render.InkMain,
	theme.ColorNameButton:              render.InkField,
	theme.ColorNameDisabledButton:      render.InkPanel,
	theme.ColorNameDisabled:            render.InkSoft,
	theme.ColorNamePlaceHolder:         render.InkSoft,
	theme.ColorNameInputBackground:     render.InkField,
	theme.ColorNameInputBorder:         render.InkMain,
	theme.ColorNameMenuBackground:      render.InkField,
	theme.ColorNameOverlayBackground:   render.InkPanel,
	theme.ColorNameHeaderBackground:    render.InkWell,
	theme.ColorNameSeparator:           render.InkHairline,
	theme.ColorNameHover:               render.InkChosenRow,
	theme.ColorNameSelection:           render.InkLit,
	theme.ColorNamePrimary:             render.InkMain,
	theme.ColorNameForegroundOnPrimary: render.InkField,
	theme.ColorNameFocus:               render.InkLit,
	theme.ColorNamePressed:             render.InkLit,
	theme.ColorNameError:               render.InkNotFit,
	theme.ColorNameWarning:             render.InkTooClose,
	theme.ColorNameSuccess:             render.InkFits,
	theme.ColorNameHyperlink:           render.InkCannotTell,
	theme.ColorNameScrollBar:           render.InkHairline,
}

// Color returns an ink of ours where there is one.
func (t Theme) Color(name fyne.ThemeColorName, variant fyne.ThemeVariant) color.Color {
	palette := render.Dark
	if t.Look.light(variant) {
		palette, variant = render.Light, theme.VariantLight
	} else {
		variant = theme.VariantDark
	}
	if name == theme.ColorNameShadow {
		return color.Transparent
	}
	if ink, ok := inks[name]; ok {
		return palette.Color(ink)
	}
	return theme.DefaultTheme().Color(name, variant)
}

// Font returns the family of the drawings.
func (Theme) Font(style fyne.TextStyle) fyne.Resource {
	switch {
	case style.Monospace || style.Symbol:
		return theme.DefaultTheme().Font(style)
	case style.Bold:
		return faces[1]
	}
	return faces[0]
}

// Icon returns the toolkit's own.
func (Theme) Icon(name fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(name) }

// sizes that differ from the toolkit's.
var sizes = map[fyne.ThemeSizeName]float32{
	theme.SizeNameText:               13,
	theme.SizeNameSubHeadingText:     15,
	theme.SizeNameHeadingText:        18,
	theme.SizeNameCaptionText:        13,
	theme.SizeNamePadding:            4,
	theme.SizeNameInnerPadding:       6,
	theme.SizeNameInputBorder:        1,
	theme.SizeNameInputRadius:        3,
	theme.SizeNameSelectionRadius:    3,
	theme.SizeNameScrollBar:          10,
	theme.SizeNameScrollBarSmall:     4,
	theme.SizeNameSeparatorThickness: 1,
	theme.SizeNameInlineIcon:         16,
}

// Size returns a size of the spacing unit of 4.
func (Theme) Size(name fyne.ThemeSizeName) float32 {
	if size, ok := sizes[name]; ok {
		return size
	}
	return theme.DefaultTheme().Size(name)
}
