package ui

import (
	"errors"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/job"
	"bunkwright/furniture/job/jobfile"
	"bunkwright/render"
	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// stickLevels lets the levels of a story stick be dragged: while the hand moves the whole job follows, as far as
// the bed can be built; letting go is one edit.
type stickLevels struct {
	w     *Window
	stick *control.Sketch
	key   string // of the level that is held, "" for none
	name  string
	from  length.Length
	scale float64
	to    length.Length
}

// levelKeys are the sizes that the levels of a stick stand for, by the beginning of their refs, and what they are called.
var levelKeys = []struct{ ref, key, name string }{
	{"upper.slat", "bed.upper.height", "upper deck"},
	{"lower.slat", "bed.lower.height", "lower deck"},
	{"guard", "bed.guard.top", "rail top"},
	{"mattress.upper", "bed.upper.mattress_thick", "upper mattress"},
	{"mattress.lower", "bed.lower.mattress_thick", "lower mattress"},
}

func newStickLevels(w *Window, stick *control.Sketch) *stickLevels {
	l := &stickLevels{w: w, stick: stick}
	stick.Grab, stick.Drag, stick.Drop, stick.Shape = l.grab, l.drag, l.drop, l.shape
	return l
}

// levelAt finds the level among what is pointed at.
func (l *stickLevels) levelAt(at control.Pointed) (key, name string) {
	for _, ref := range at.Refs {
		for _, k := range levelKeys {
			if render.Under(ref, k.ref) {
				return k.key, k.name
			}
		}
	}
	return "", ""
}

func (l *stickLevels) shape(at control.Pointed) desktop.Cursor {
	if key, _ := l.levelAt(at); key != "" {
		return desktop.VResizeCursor
	}
	return desktop.DefaultCursor
}

// grab takes hold of a level, where the size it stands for is known.
func (l *stickLevels) grab(at control.Pointed) bool {
	j, d := l.w.session.Job(), l.stick.Drawing()
	if l.key, l.name = l.levelAt(at); l.key == "" || j == nil || l.w.live.scene == nil || l.w.live.scene.Bed == nil || d.Scale <= 0 {
		return false
	}
	filled := withSizes(j, l.w.live.scene.Bed)
	got, err := length.Parse(jobfile.Shown(filled, l.key), length.Context{Unit: l.w.live.unit()})
	if err != nil {
		return false
	}
	l.from, l.to, l.scale = got, got, d.Scale
	return true
}

// drag tries the size that the level would have.
func (l *stickLevels) drag(by render.Point, _ fyne.KeyModifier) {
	step := stepOf(l.w.live.unit())
	to := (l.from + length.FromMM(-float64(by.Y)/l.scale)).Round(step, length.Nearest)
	if to = max(to, step); to == l.to {
		return
	}
	was := l.to
	l.to = to
	next, err := l.edit(l.w.session.Job())
	if err == nil {
		err = l.w.live.try(next)
	}
	if err != nil {
		l.to = was // the level stays where it can be built
	}
	l.say(to, err)
}

// say says where the level is, or why it cannot be there.
func (l *stickLevels) say(to length.Length, err error) {
	words := l.name + ": " + l.w.live.shows(to)
	if strings.HasSuffix(l.key, "thick") {
		words += " thick"
	} else {
		words += " over the post feet"
	}
	var list bunk.SizesError
	if errors.As(err, &list) && len(list) > 0 {
		words += " cannot be built: " + list[0].Reason
	}
	l.w.status.at(words)
}

func (l *stickLevels) edit(j *job.Job) (*job.Job, error) {
	return jobfile.Set(j, jobfile.Change{Key: l.key, Text: jobfile.ShownLength(l.to, l.w.live.unit())})
}

// drop makes the drag one edit.
func (l *stickLevels) drop() {
	if l.key == "" {
		return
	}
	if l.to == l.from {
		l.w.live.untry()
	} else {
		l.w.do("Move the "+l.name, "", l.edit)
	}
	l.key = ""
}

// giveUp drops a level where it was.
func (l *stickLevels) giveUp() {
	if l.key != "" {
		l.key = ""
		l.stick.GiveUp()
		l.w.live.untry()
	}
}
