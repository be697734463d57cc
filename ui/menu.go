package ui

import (
	"fyne.io/fyne/v2"

	"bunkwright/samples"
)

// menu holds every command with its key.
func (w *Window) menu() *fyne.MainMenu {
	undo := item("Undo", w.undo, &fyne.ShortcutUndo{})
	redo := item("Redo", w.redo, &fyne.ShortcutRedo{})
	recent := fyne.NewMenuItem("Open recent", nil)
	recent.ChildMenu = fyne.NewMenu("", w.recentItems()...)
	sample := fyne.NewMenuItem("Samples", nil)
	sample.ChildMenu = fyne.NewMenu("", w.sampleItems()...)
	fresh := fyne.NewMenuItem("New room", nil)
	fresh.ChildMenu = fyne.NewMenu("", w.newRoomItems()...)
	view := w.newViewMenu()
	menu := fyne.NewMainMenu(
		fyne.NewMenu("File",
			fresh,
			item("Open...", w.openDialog, key(fyne.KeyO, 0)),
			recent, sample,
			fyne.NewMenuItemSeparator(),
			item("Save", w.save, key(fyne.KeyS, 0)),
			item("Save as...", w.saveAs, key(fyne.KeyS, fyne.KeyModifierShift)),
			fyne.NewMenuItemSeparator(),
			item("Print the sheets", w.print, key(fyne.KeyP, 0)),
			item("Save a drawing...", w.pictures, key(fyne.KeyE, 0)),
			item("What cannot be as it is", w.problems, key(fyne.KeyE, fyne.KeyModifierShift)),
			fyne.NewMenuItemSeparator(),
			item("Close", w.close, key(fyne.KeyW, 0)),
		),
		fyne.NewMenu("Edit", undo, redo,
			fyne.NewMenuItemSeparator(),
			item("Turn the bed (R)", w.place.turn, nil),
			item("Mirror the bed (M)", w.place.mirror, nil),
			item("Press to the wall (W)", w.place.press, nil),
		),
		view.menu,
	)
	menu.Items = append(menu.Items, fyne.NewMenu("Help",
		item("Keys", w.keys, key(fyne.KeyK, 0)),
		item("The whole caution", w.caution, key(fyne.KeyH, fyne.KeyModifierShift))))
	told := ""
	w.menuFollows = func() { // building the menu anew costs more than a drawing
		undo.Label = withKey(named("Undo", w.session.UndoName()), &fyne.ShortcutUndo{})
		redo.Label = withKey(named("Redo", w.session.RedoName()), &fyne.ShortcutRedo{})
		undo.Disabled, redo.Disabled = w.session.UndoName() == "", w.session.RedoName() == ""
		if says := undo.Label + "\n" + redo.Label + "\n" + view.follow(); says != told {
			told = says
			menu.Refresh()
		}
	}
	w.menuFollows()
	return menu
}

func (w *Window) recentItems() (items []*fyne.MenuItem) {
	for _, path := range w.app.Preferences().StringList(recentKey) {
		items = append(items, fyne.NewMenuItem(path, func() { w.Open(path) }))
	}
	if len(items) == 0 {
		none := fyne.NewMenuItem("nothing yet", nil)
		none.Disabled = true
		items = append(items, none)
	}
	return items
}

func (w *Window) sampleItems() (items []*fyne.MenuItem) {
	names, _ := samples.Files.ReadDir(".")
	for _, f := range names {
		name := f.Name()
		items = append(items, fyne.NewMenuItem(sampleWords(name), func() { w.OpenSample(name) }))
	}
	return items
}
