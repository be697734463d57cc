package ui

import (
	"runtime"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
)

// key is a key with Control, or with Command where that is usual.
func key(name fyne.KeyName, mod fyne.KeyModifier) fyne.Shortcut {
	return &desktop.CustomShortcut{KeyName: name, Modifier: fyne.KeyModifierShortcutDefault | mod}
}

// item is a command with its key.
func item(label string, do func(), s fyne.Shortcut) *fyne.MenuItem {
	m := fyne.NewMenuItem(withKey(label, s), do)
	m.Shortcut = s
	if inWindow && s != nil {
		m.Shortcut = hiddenKey{s}
	}
	return m
}

// inWindow tells that the menu is drawn by the toolkit. It would write keys in a tint that nobody can read on our grounds; they stand in the
// labels instead.
const inWindow = runtime.GOOS != "darwin"

// hiddenKey is a key that works and that the toolkit does not write.
type hiddenKey struct{ fyne.Shortcut }

// withKey is a label with its key.
func withKey(label string, s fyne.Shortcut) string {
	k, ok := s.(fyne.KeyboardShortcut)
	if !ok || !inWindow {
		return label
	}
	words := ""
	for _, m := range []struct {
		mod  fyne.KeyModifier
		name string
	}{{fyne.KeyModifierControl, "Ctrl+"}, {fyne.KeyModifierAlt, "Alt+"}, {fyne.KeyModifierShift, "Shift+"}} {
		if k.Mod()&m.mod != 0 {
			words += m.name
		}
	}
	return label + " (" + words + string(k.Key()) + ")"
}
