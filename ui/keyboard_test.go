package ui

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"bunkwright/render"
	"bunkwright/ui/control"
)

// tabbed goes through everything that Tab reaches, and calls f with each.
func tabbed(w *Window, f func(fyne.Focusable)) (n int) {
	c := w.win.Canvas()
	c.Unfocus()
	c.FocusNext()
	for first := c.Focused(); ; {
		f(c.Focused())
		n++
		if c.FocusNext(); c.Focused() == first || n > 500 {
			return n
		}
	}
}

func press(f fyne.Focusable, key fyne.KeyName) { f.TypedKey(&fyne.KeyEvent{Name: key}) }

// TestTabReachesWhatCanBeTapped: stage marks, Undo, units, links, dividers and drawings of Place and Bed; each says what it is for.
func TestTabReachesWhatCanBeTapped(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	w.place.key(&fyne.KeyEvent{Name: fyne.KeyM}) // there is something to undo
	reached := map[fyne.Focusable]string{}
	for _, s := range []stage{placingStage, bedStage} {
		w.show(s)
		tabbed(w, func(f fyne.Focusable) { reached[f] = w.status.says })
	}
	want := map[string]fyne.Focusable{
		"Room": w.tape.stages[roomStage], "Bed": w.tape.stages[bedStage], "Place": w.tape.stages[placingStage],
		"Undo": w.tape.undo, "in": w.tape.units[0], "mm": w.tape.units[1],
		"measured against": w.place.questions.against, "caution": w.place.questions.foot, "a question": w.place.questions.rows["window-fall"],
		"plan": w.place.drawings, "corner": w.bed.corner, "parts": w.bed.sizes.foot.parts, "most open": w.bed.sizes.foot.open,
		"fold": w.bed.sizes.fold, "a group": w.bed.sizes.groups[0].head, "an add-on": w.bed.sizes.groups[5].check,
	}
	for name, f := range want {
		if says, ok := reached[f]; !ok || says == "" {
			t.Errorf("%s: reached %v, says %q", name, ok, says)
		}
	}
	if _, ok := reached[w.tape.redo]; ok {
		t.Error("the focus does not pass by Redo, which is off")
	}
	n := 0
	for _, says := range reached {
		if says == "drag to make a column wider or narrower, or use the arrow keys" {
			n++
		}
	}
	if n != 4 {
		t.Errorf("%d dividers, want two a stage", n)
	}
}

// TestTheFocusIsInSight: wherever Tab goes in a column, the column scrolls to it.
func TestTheFocusIsInSight(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	w.win.Resize(least)
	for _, s := range []stage{placingStage, bedStage} {
		w.show(s)
		scroll := w.place.questions.scroll
		if s == bedStage {
			scroll = w.bed.sizes.scroll
		}
		n := 0
		tabbed(w, func(f fyne.Focusable) {
			o := f.(fyne.CanvasObject)
			d := w.app.Driver()
			top, from := d.AbsolutePositionForObject(o), d.AbsolutePositionForObject(scroll)
			if top.X < from.X || o == w.place.questions.against || o == w.place.questions.foot || top.Y < from.Y && top.Y < 100 || slices.Contains(footOf(w), o) {
				return
			}
			n++
			if top.Y < from.Y-1 || top.Y+o.Size().Height > from.Y+scroll.Size().Height+1 {
				t.Errorf("stage %v: %T at %.0f, %.0f high, is out of sight: %q", s, o, top.Y-from.Y, o.Size().Height, w.status.says)
			}
		})
		if n < 10 {
			t.Errorf("stage %v: %d things in its column", s, n)
		}
	}
}

func footOf(w *Window) []fyne.CanvasObject {
	f := w.bed.sizes.foot
	return []fyne.CanvasObject{f.parts, f.open, f.line, w.bed.sizes.fold}
}

// TestDividersByKeys: the arrow keys move a divider as a drag does, in both stages that share their columns.
func TestDividersByKeys(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	before := w.place.object.Shares
	tabbed(w, func(f fyne.Focusable) {
		if w.status.says == "drag to make a column wider or narrower, or use the arrow keys" {
			press(f, fyne.KeyRight)
		}
	})
	if w.place.object.Shares == before {
		t.Error("the divider does not move")
	}
	moved := w.place.object.Shares
	w.show(bedStage)
	if w.bed.object.Shares != moved {
		t.Errorf("the columns of Bed are %v, of Place %v", w.bed.object.Shares, moved)
	}
	w.leave()
	w.place.object.Shares = before
	w.remembered()
	if !slices.Equal(w.place.object.Shares[:], moved[:]) {
		t.Errorf("remembered: %v, want %v", w.place.object.Shares, moved)
	}
}

// TestLinksByKeys: Enter and Space do what a click does.
func TestLinksByKeys(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	top := w.win.Canvas().Overlays
	for name, f := range map[string]fyne.Focusable{"against": w.place.questions.against, "caution": w.place.questions.foot} {
		press(f, fyne.KeySpace)
		if top().Top() == nil {
			t.Errorf("%s opens nothing", name)
			continue
		}
		top().Remove(top().Top())
	}
	press(w.tape.units[1], fyne.KeyReturn)
	press(w.tape.stages[bedStage], fyne.KeyReturn)
	if w.session.Job().Unit != "mm" || w.stage != bedStage {
		t.Errorf("unit %s, stage %v", w.session.Job().Unit, w.stage)
	}
	press(w.tape.undo, fyne.KeySpace)
	if w.session.Job().Unit != "in" {
		t.Error("Undo does nothing")
	}
}

// TestDrawingsShowTheFocus: a drawing that keys work on has a line round it while they do.
func TestDrawingsShowTheFocus(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	for _, s := range []*control.Sketch{w.place.drawings, w.bed.corner} {
		s.Resize(fyne.NewSize(400, 300))
		at := func() any { return s.Paint(400, 300).At(200, 3) }
		bare := at()
		s.FocusGained()
		if at() == bare {
			t.Error("the focus is not seen")
		}
		s.FocusLost()
		if at() != bare {
			t.Error("it stays")
		}
	}
}

// TestLook: light and dark are chosen whatever the system is, remembered, and ticked in the menu.
func TestLook(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	for look, palette := range map[control.Look]render.Palette{control.LightLook: render.Light, control.DarkLook: render.Dark} {
		w.setLook(look)
		want := palette.Color(render.InkPaper)
		if got := control.Palette().Color(render.InkPaper); got != want {
			t.Errorf("%s: paper is %v, want %v", look, got, want)
		}
		th := w.app.Settings().Theme()
		for _, system := range []fyne.ThemeVariant{theme.VariantDark, theme.VariantLight} {
			if got := th.Color(theme.ColorNameForeground, system); got != palette.Color(render.InkMain) {
				t.Errorf("%s: ink is %v", look, got)
			}
		}
		if w.look() != look {
			t.Errorf("%s is not remembered", look)
		}
		for _, m := range w.win.MainMenu().Items[2].Items {
			if strings.HasPrefix(m.Label, "Light (") && m.Checked != (look == control.LightLook) || strings.HasPrefix(m.Label, "Dark") && m.Checked != (look == control.DarkLook) {
				t.Errorf("%s: %s is ticked: %v", look, m.Label, m.Checked)
			}
		}
	}
	w.setLook(control.AsSystem)
	if w.look() != control.AsSystem {
		t.Error("the system's look does not come back")
	}
}

// TestEveryCommandHasAKey: of the menus, all that is not a list of files, samples or shapes.
func TestEveryCommandHasAKey(t *testing.T) {
	w, _ := opened(t, "town-house.toml")
	keys := map[string]string{}
	for _, menu := range w.win.MainMenu().Items {
		for _, m := range menu.Items {
			if m.IsSeparator || m.ChildMenu != nil {
				continue
			}
			last := m.Label[len(m.Label)-1]
			if m.Shortcut == nil {
				if last != ')' { // the key of what no field may take stands in its name
					t.Errorf("%s has no key", m.Label)
				}
				continue
			}
			if other, taken := keys[m.Shortcut.ShortcutName()]; taken {
				t.Errorf("%s and %s have one key", m.Label, other)
			}
			keys[m.Shortcut.ShortcutName()] = m.Label
		}
	}
}
