package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// menu holds every command with its key.
func (w *Window) menu() *fyne.MainMenu {
	key := func(name fyne.KeyName, mod fyne.KeyModifier) fyne.Shortcut {
		return &desktop.CustomShortcut{KeyName: name, Modifier: fyne.KeyModifierShortcutDefault | mod}
	}
	item := func(label string, do func(), s fyne.Shortcut) *fyne.MenuItem {
		m := fyne.NewMenuItem(label, do)
		m.Shortcut = s
		return m
	}
	undo := item("Undo", w.undo, key(fyne.KeyZ, 0))
	redo := item("Redo", w.redo, key(fyne.KeyZ, fyne.KeyModifierShift))
	menu := fyne.NewMainMenu(
		fyne.NewMenu("File",
			item("Open...", w.open, key(fyne.KeyO, 0)),
			item("Save", w.save, key(fyne.KeyS, 0)),
			item("Save as...", w.saveAs, key(fyne.KeyS, fyne.KeyModifierShift)),
		),
		fyne.NewMenu("Edit", undo, redo,
			fyne.NewMenuItemSeparator(),
			item("Turn the bed (R)", w.place.turn, nil),
			item("Mirror the bed (M)", w.place.mirror, nil),
			item("Press to the wall (W)", w.place.press, nil),
		),
		fyne.NewMenu("View",
			item("Fit all", w.place.fitAll, key(fyne.Key0, 0)),
			item("Feet and inches", func() { w.showIn("in") }, nil),
			item("Millimetres", func() { w.showIn("mm") }, nil),
		),
	)
	w.live.watch(func() {
		undo.Label, redo.Label = named("Undo", w.session.UndoName()), named("Redo", w.session.RedoName())
		undo.Disabled, redo.Disabled = w.session.UndoName() == "", w.session.RedoName() == ""
		menu.Refresh()
	})
	return menu
}
