package ui

import (
	"errors"
	"time"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/room/length"
	"bunkwright/ui/control"
)

// bedPane is the stage where the sizes of the bed are chosen: the bed from its sides and from a corner, the story stick, the sizes. The
// drawings show the last bed that could be built.
type bedPane struct {
	w       *Window
	object  *control.Panes
	sides   *control.Sketch
	corner  *control.Sketch
	stick   *control.Sketch
	levels  *stickLevels
	sizes   *bedSizes
	turning turning
	built   *fit.Scene // the last scene with a bed
	answers []fit.Answer
	filled  *job.Job // the job with what was not chosen filled in
	refused bunk.SizesError
	lit     string         // the key whose field has the focus, or the part that was clicked
	turned  time.Time      // when the view from a corner was drawn last
	held    render.Drawing // the sides as they were drawn last
	sparse  bool           // with few dimensions
	stale   stale
}

func newBedPane(w *Window) *bedPane {
	b := &bedPane{w: w, turning: fromCorner, stale: stale{w: w, of: bedStage}}
	b.sides = control.NewSketch(render.InkPaper, b.drawSides)
	b.sides.Least = fyne.NewSize(380, 150)
	b.sides.Hover, b.sides.Tap = b.hover, b.tap
	b.corner = control.NewSketch(render.InkPaper, b.drawCorner)
	b.corner.Least = fyne.NewSize(380, 150)
	b.corner.Hover, b.corner.Tap, b.corner.Key = b.hover, b.tap, b.turnByKey
	b.corner.Grab, b.corner.Drag, b.corner.Focus, b.corner.Ring = b.grabCorner, b.dragCorner, b.focusCorner, true
	b.stick = control.NewSketch(render.InkWell, b.drawStick)
	b.stick.Least = fyne.NewSize(216, 300)
	b.stick.Hover = b.hover
	b.levels = newStickLevels(w, b.stick)
	b.sizes = newBedSizes(w, b)
	b.object = control.NewPanes(container.New(halves{}, b.sides, b.corner), b.stick, b.sizes.object, [2]float32{0.58, 0.73})
	b.object.Changed = func() { w.place.object.Shares = b.object.Shares }
	w.live.watchDrawing(b.follow)
	w.live.watch(func() { b.stale.unless(b.follows) })
	return b
}

// follow takes over the bed as it is now. While another stage is shown it only keeps the last bed that could be built.
func (b *bedPane) follow() {
	l := b.w.live
	b.refused = nil
	switch {
	case l.scene == nil:
		b.built, b.answers, b.filled = nil, nil, l.of
	case l.scene.Bed != nil:
		b.built, b.answers = l.scene, l.answers
		b.filled = withSizes(l.scene.Job, l.scene.Bed)
	default:
		errors.As(l.scene.BedErr, &b.refused)
		if l.scene.Job == l.of && b.w.session.UndoName() == "" { // another job: what was built before is none of it
			b.built, b.answers, b.filled = nil, nil, l.of
		}
	}
	b.stale.unless(b.drawn)
}

// withSizes returns a job with what a bed was built of.
func withSizes(j *job.Job, bed *bunk.Bed) *job.Job {
	next := *j
	next.Bed = bed.Sizes
	step := length.Inch / 16
	if j.Unit == "mm" {
		step = length.Millimetre
	}
	for _, d := range []struct {
		to *bunk.Deck
		at *bunk.DeckAt
	}{{&next.Bed.Upper, &bed.Upper}, {&next.Bed.Lower, &bed.Lower}} {
		d.to.Slats = d.at.SlatCount
		if d.to.SlatGap == 0 {
			d.to.SlatGap = length.FromMM(d.at.SlatGap).Round(step, length.Nearest)
		}
	}
	return &next
}

// shown is called when the stage is gone to. Its columns are as wide as those of Place.
func (b *bedPane) shown() {
	if shares := b.w.place.object.Shares; shares != b.object.Shares {
		b.object.Shares = shares
		b.object.Refresh()
	}
	b.stale.now(b.redraw)
}

func (b *bedPane) redraw() {
	b.drawn()
	b.sizes.afresh()
}

// cornerRests is how long the view from a corner, the costliest, stays as it is while a level is dragged.
const cornerRests = 100 * time.Millisecond

// drawn draws the bed anew. While a level is dragged the view from a corner follows a frame later, and not every time.
func (b *bedPane) drawn() {
	b.sides.Redraw()
	b.stick.Redraw()
	if b.levels.key == "" {
		b.corner.Redraw()
	}
}

// follows draws what may come a frame after the hand: the view from a corner and the column.
func (b *bedPane) follows() {
	if b.levels.key != "" && time.Since(b.turned) > cornerRests {
		b.turned = time.Now()
		b.corner.Redraw()
	}
	b.sizes.follow()
}

// bed is the last bed that could be built, nil where there is none.
func (b *bedPane) bed() *bunk.Bed {
	if b.built == nil {
		return nil
	}
	return b.built.Bed
}

// options are what the drawings share: what is lit, and what cannot be built.
func (b *bedPane) options(w, h render.Paper) view.Options {
	o := view.Options{Unit: b.w.live.unit(), W: w, H: h, Beside: true}
	if bed := b.bed(); bed != nil {
		o.Mirror = b.built.Job.Place.Mirror
		o.Lit = partsOf(bed, b.lit)
		for _, e := range b.refused {
			o.Refused = append(o.Refused, partsOf(bed, e.Key)...)
		}
	}
	return o
}

// Where the drawings stand under their headings.
var (
	sidesHead = render.Px(44)
	sidesEdge = render.Px(10)
)

// leastShare is what the bed itself takes of the width at least: where its dimensions leave it less, only those over all are drawn.
const leastShare = 0.36

func (b *bedPane) drawSides(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	bed := b.bed()
	if bed == nil {
		return b.nothing(d)
	}
	end := bed.Sizes.Upper.Head.Other()
	o := b.options(w-2*sidesEdge, h-sidesHead-sidesEdge)
	moves := b.levels.key != "" && b.held.Scale > 0
	if o.Sparse = w < littleWide || moves && b.sparse; moves { // nothing jumps while the hand moves
		o.Scale, o.Origin = b.held.Scale, &b.held.Origin
	}
	sides, endFrom := view.BedSides(bed, end, o)
	if !moves && !o.Sparse && sides.Scale*(bed.Long+bed.Wide) < leastShare*float64(o.W) {
		o.Sparse = true
		sides, endFrom = view.BedSides(bed, end, o)
	}
	b.held, b.sparse = sides, o.Sparse
	d.Scale = sides.Scale
	d.Add(render.Shift(sides.Marks, render.Point{X: sidesEdge, Y: sidesHead})...)
	d.Add(heading(render.Px(16), render.Px(14), "From the front", "one scale for both")...)
	wall := "right"
	if end == bunk.Left {
		wall = "left"
	}
	from := max(sidesEdge+endFrom, render.Px(170))
	d.Add(heading(from, render.Px(14), "From the "+string(end)+" end", "wall on the "+wall)...)
	d.Add(b.callout(d.Marks, from)...)
	return d
}

// nothing says why there is no bed to draw.
func (b *bedPane) nothing(d render.Drawing) render.Drawing {
	if b.w.live.scene == nil {
		return d
	}
	st, at := render.ScreenStyle, render.Point{X: render.Px(16), Y: render.Px(22)}
	d.Add(render.Words("", st.Title.Text(at, "No bed to draw yet", render.InkMain, render.Left)))
	for _, words := range b.nothingWords() {
		at.Y += render.Px(22)
		lines := render.Wrap(words, st.Body.Size, render.Regular, d.W-render.Px(32))
		d.Add(st.Body.Lines("", at, lines, render.InkSoft, render.Left)...)
		at.Y += render.Px(18) * render.Paper(len(lines)-1)
	}
	return d
}

// nothingWords are why there is no bed: a line for each size that cannot be built.
func (b *bedPane) nothingWords() []string {
	if len(b.refused) == 0 {
		return []string{"its sizes are not chosen yet"}
	}
	var list []string
	for _, e := range b.refused {
		r := refusal{s: b.sizes, e: e}
		words := r.groupName() + ": " + e.Reason
		if near := r.nearest(); near != "" {
			words += "; the nearest that can be built is " + near
		}
		list = append(list, words)
	}
	return list
}

func (b *bedPane) drawStick(w, h render.Paper) render.Drawing {
	s, answers := b.built, b.answers
	if s == nil {
		s, answers = b.w.live.scene, b.w.live.answers
	} else if s == b.w.live.scene {
		answers = b.w.live.answers
	}
	o := b.options(w, h)
	o.Refused = nil
	if s != nil && s.Bed == nil {
		s = nil // the view from the front says why
	}
	return storyStick(s, answers, o, w, h)
}

// hover says what is pointed at.
func (b *bedPane) hover(at control.Pointed) {
	if len(at.Refs) == 0 {
		b.w.status.at("")
		return
	}
	b.w.status.at(b.partWords(at.Refs[0]))
}

// tap lights the part that was clicked in every drawing, or nothing.
func (b *bedPane) tap(at control.Pointed) {
	b.lit = ""
	if len(at.Refs) > 0 {
		b.lit = at.Refs[0]
		b.w.status.at(b.partWords(b.lit))
	}
	b.drawn()
}

// halves lays out two things below each other: the upper is a little higher.
type halves struct{}

func (halves) Layout(items []fyne.CanvasObject, size fyne.Size) {
	high := float32(int(size.Height * 0.54))
	items[0].Resize(fyne.NewSize(size.Width, high))
	items[1].Move(fyne.NewPos(0, high))
	items[1].Resize(fyne.NewSize(size.Width, size.Height-high))
}

func (halves) MinSize(items []fyne.CanvasObject) fyne.Size {
	a, b := items[0].MinSize(), items[1].MinSize()
	return fyne.NewSize(max(a.Width, b.Width), a.Height+b.Height)
}
