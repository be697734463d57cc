// Package control answers how the window's own widgets draw and behave: drawings that can be pointed at, rows, dividers, fields for
// lengths. They know nothing of jobs.
package control

import (
	"fyne.io/fyne/v2"

	"bunkwright/render"
)

// Palette returns the colours of the theme as it is set now.
func Palette() render.Palette {
	app := fyne.CurrentApp()
	if app == nil {
		return render.Dark
	}
	t, _ := app.Settings().Theme().(Theme)
	if t.Look.light(app.Settings().ThemeVariant()) {
		return render.Light
	}
	return render.Dark
}

// unit is the length on paper of one unit of the toolkit.
var unit = render.Px(1)

// Paper turns a length of the toolkit into one on paper.
func Paper(x float32) render.Paper { return render.Paper(x) * unit }

// Screen turns a length on paper into one of the toolkit.
func Screen(x render.Paper) float32 { return float32(x / unit) }

// OnPaper turns a place of the toolkit into one on paper.
func OnPaper(p fyne.Position) render.Point { return render.Point{X: Paper(p.X), Y: Paper(p.Y)} }
