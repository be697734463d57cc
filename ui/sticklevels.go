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
	level // that is held, the zero value for none
	from  length.Length
	scale float64
	to    length.Length
}

// levelKeys are the sizes that the levels of a stick stand for, by the beginning of their refs, and what they are called.
var levelKeys = []level{
	{"upper.slat", "bed.upper.height", "upper deck", func(s *bunk.Sizes) *length.Length { return &s.Upper.Height }},
	{"lower.slat", "bed.lower.height", "lower deck", func(s *bunk.Sizes) *length.Length { return &s.Lower.Height }},
	{"guard", "bed.guard.top", "rail top", func(s *bunk.Sizes) *length.Length { return &s.Guard.Top }},
	{"mattress.upper", "bed.upper.mattress_thick", "upper mattress", func(s *bunk.Sizes) *length.Length { return &s.Upper.MattressThick }},
	{"mattress.lower", "bed.lower.mattress_thick", "lower mattress", func(s *bunk.Sizes) *length.Length { return &s.Lower.MattressThick }},
}

type level struct {
	ref, key, name string
	of             func(*bunk.Sizes) *length.Length
}

func newStickLevels(w *Window, stick *control.Sketch) *stickLevels {
	l := &stickLevels{w: w, stick: stick}
	stick.Grab, stick.Drag, stick.Drop, stick.Shape = l.grab, l.drag, l.drop, l.shape
	return l
}

// levelAt finds the level among what is pointed at.
func (l *stickLevels) levelAt(at control.Pointed) level {
	for _, ref := range at.Refs {
		for _, k := range levelKeys {
			if render.Under(ref, k.ref) {
				return k
			}
		}
	}
	return level{}
}

func (l *stickLevels) shape(at control.Pointed) desktop.Cursor {
	if l.levelAt(at).key != "" {
		return desktop.VResizeCursor
	}
	return desktop.DefaultCursor
}

// grab takes hold of a level, where the size it stands for is known.
func (l *stickLevels) grab(at control.Pointed) bool {
	j, d := l.w.session.Job(), l.stick.Drawing()
	l.level = level{}
	held := l.levelAt(at)
	if held.key == "" || j == nil || l.w.live.scene == nil || l.w.live.scene.Bed == nil || d.Scale <= 0 {
		return false
	}
	l.level, l.from, l.scale = held, *held.of(&l.w.live.scene.Bed.Sizes), d.Scale
	l.to = l.from
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
	next := *l.w.session.Job()
	*l.of(&next.Bed) = to
	err := l.w.live.try(&next)
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

// drop makes the drag one edit.
func (l *stickLevels) drop() {
	held := l.level
	l.level = level{}
	switch {
	case held.key == "":
	case l.to == l.from:
		l.w.live.untry()
	default:
		l.w.do("Move the "+held.name, "", func(j *job.Job) (*job.Job, error) {
			return jobfile.Set(j, jobfile.Change{Key: held.key, Text: jobfile.ShownLength(l.to, l.w.live.unit())})
		})
	}
}

// giveUp drops a level where it was.
func (l *stickLevels) giveUp() {
	if l.key != "" {
		l.level = level{}
		l.stick.GiveUp()
		l.w.live.untry()
	}
}
