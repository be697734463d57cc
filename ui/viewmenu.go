package ui

import (
	"fmt"

	"fyne.io/fyne/v2"

	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// lookKey is the key under which the look of the window is remembered.
const lookKey = "look"

// viewMenu is what changes how the job is looked at, not the job; but the unit, which is the job's.
type viewMenu struct {
	w     *Window
	menu  *fyne.Menu
	looks map[control.Look]*fyne.MenuItem
	units map[string]*fyne.MenuItem
}

func (w *Window) newViewMenu() *viewMenu {
	v := &viewMenu{w: w}
	look := func(label string, l control.Look, s fyne.Shortcut) *fyne.MenuItem {
		return item(label, func() { w.setLook(l) }, s)
	}
	shift := fyne.KeyModifierShift
	v.looks = map[control.Look]*fyne.MenuItem{
		control.LightLook: look("Light", control.LightLook, key(fyne.KeyL, 0)),
		control.DarkLook:  look("Dark", control.DarkLook, key(fyne.KeyD, 0)),
		control.AsSystem:  look("Light or dark as the system", control.AsSystem, key(fyne.KeyL, shift)),
	}
	v.units = map[string]*fyne.MenuItem{
		"in": item("Feet and inches", func() { w.showIn("in") }, key(fyne.KeyU, 0)),
		"mm": item("Millimetres", func() { w.showIn("mm") }, key(fyne.KeyU, shift)),
	}
	v.menu = fyne.NewMenu("View",
		item("Room", func() { w.show(roomStage) }, key(fyne.Key1, 0)),
		item("Bed", func() { w.show(bedStage) }, key(fyne.Key2, 0)),
		item("Place", func() { w.show(placingStage) }, key(fyne.Key3, 0)),
		fyne.NewMenuItemSeparator(),
		item("Fit all", w.fitAll, key(fyne.Key0, 0)),
		v.units["in"], v.units["mm"],
		fyne.NewMenuItemSeparator(),
		v.looks[control.LightLook], v.looks[control.DarkLook], v.looks[control.AsSystem],
		fyne.NewMenuItemSeparator(),
		item("Measured against...", w.chooseAgainst, key(fyne.KeyA, shift)),
	)
	return v
}

// follow ticks what is so, and returns what it ticked.
func (v *viewMenu) follow() string {
	now := v.w.look()
	for l, m := range v.looks {
		m.Checked = l == now
	}
	for unit, m := range v.units {
		m.Checked = (v.w.live.unit() == length.Millimetres) == (unit == "mm")
	}
	return fmt.Sprint(now, v.units["in"].Checked, v.units["mm"].Checked)
}

// look is whether the window is light, dark, or as the system is.
func (w *Window) look() control.Look {
	l := control.Look(w.app.Preferences().String(lookKey))
	if l != control.LightLook && l != control.DarkLook {
		return control.AsSystem
	}
	return l
}

// setLook changes the look, and remembers it.
func (w *Window) setLook(l control.Look) {
	w.app.Preferences().SetString(lookKey, string(l))
	w.app.Settings().SetTheme(control.Theme{Look: l})
	w.menuFollows()
}
