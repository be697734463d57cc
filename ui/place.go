package ui

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/room/geom"
	"bunkwright/room/length"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// placeStage is where the bed is put into the room: drawings, story stick and questions side by side.
type placeStage struct {
	w         *Window
	object    *control.Panes
	drawings  *control.Sketch
	stick     *control.Sketch
	levels    *stickLevels
	questions *questions
	bar       *placeBar
	camera    camera
	from      job.Placement // where the bed was when it was grabbed
	panning   bool
	stale     stale
}

// stepOf is how far a nudge goes and what places are rounded to.
func stepOf(u length.Unit) length.Length {
	if u == length.Millimetres {
		return length.Millimetre
	}
	return length.Inch / 8
}

// snapWithin is how near on the screen something must be for the bed to settle on it.
const snapWithin = 8

func newPlaceStage(w *Window) *placeStage {
	p := &placeStage{w: w}
	p.drawings = control.NewSketch(render.InkPaper, p.draw)
	p.drawings.Least = fyne.NewSize(380, 300)
	p.drawings.Grab, p.drawings.Drag, p.drawings.Drop = p.grab, p.drag, p.drop
	p.drawings.Wheel, p.drawings.Hover, p.drawings.Tap = p.zoom, p.hover, p.tap
	p.drawings.Key, p.drawings.Focus, p.drawings.Ring = p.key, p.focus, true
	p.stick = control.NewSketch(render.InkWell, p.drawStick)
	p.stick.Least = fyne.NewSize(216, 300)
	p.levels = newStickLevels(w, p.stick)
	p.questions = newQuestions(w, p.redraw)
	p.stale = stale{w: w, of: placingStage}
	p.drawings.Shape = p.shape
	p.bar = newPlaceBar(w)
	p.object = control.NewPanes(container.NewBorder(nil, p.bar.object, nil, nil, p.drawings), p.stick, p.questions.object, [2]float32{0.58, 0.73})
	w.live.watchDrawing(func() { p.stale.unless(p.moved) })
	w.live.watch(func() { p.stale.unless(p.follows) })
	return p
}

func (p *placeStage) redraw() {
	p.drawn()
	p.questions.afresh()
}

func (p *placeStage) drawn() {
	p.drawings.Redraw()
	p.stick.Redraw()
}

// moved draws what is under the hand: the drawings, or the stick and the drawings where it is a level.
func (p *placeStage) moved() {
	p.drawings.Redraw()
	if p.levels.key != "" {
		p.stick.Redraw()
	}
}

// follows draws what may come a frame after the hand.
func (p *placeStage) follows() {
	if p.levels.key == "" {
		p.stick.Redraw()
	}
	p.questions.follow()
}

// shown is called when the stage is gone to.
func (p *placeStage) shown() { p.stale.now(p.redraw) }

func (p *placeStage) stepWords() string {
	return length.Format(stepOf(p.w.live.unit()), length.Style{Unit: p.w.live.unit()})
}

// options are what all views of the stage share: what an opened question lights.
func (p *placeStage) options(w, h render.Paper) view.Options {
	o := view.Options{Unit: p.w.live.unit(), W: w, H: h, Beside: true, Sparse: p.camera.sparse}
	if a, ok := p.questions.opened(); ok {
		o.Lit, o.LitAs = a.Parts, a.Verdict
	}
	return o
}

// headHigh is the height of the heading over a drawing.
var headHigh = render.Px(18)

// stickHead is that of the story stick, which begins below its heading.
var stickHead = render.Px(44)

// draw draws the room from above and, below it, the wall that the bed stands at, in one scale.
func (p *placeStage) draw(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	l := p.w.live
	if l.scene == nil {
		return d
	}
	key := p.camera.follow(l, w, h)
	o := p.options(w, h)
	o.Scale, o.Top = p.camera.scale, p.camera.top
	o.Origin = &p.camera.plan
	plan := view.Plan(l.scene, l.answers, o)
	d.Scale, d.Origin = p.camera.scale, p.camera.plan
	d.Add(clipped(plan.Marks, render.Rect{Min: render.Point{Y: headHigh}, Max: render.Point{X: w, Y: p.camera.parts}})...)
	o.Origin = &p.camera.wall
	wall := view.Wall(l.scene, l.answers, key, o)
	d.Add(clipped(wall.Marks, render.Rect{Min: render.Point{Y: p.camera.parts + headHigh}, Max: render.Point{X: w, Y: h}})...)
	if c := &p.camera; c.legend > 0 {
		lines := view.Legend(d.Marks, view.Options{W: w - c.legend - render.Px(12)})
		at := render.Point{X: c.legend, Y: headHigh}
		d.Add(render.Fill("", render.Box(render.Rect{Min: at, Max: at.Plus(render.Point{X: lines.W, Y: lines.H})}), render.InkPaper))
		d.Add(render.Shift(lines.Marks, at)...)
	}
	d.Add(headingOver(d.Marks, render.Px(14), "From above", "one scale for both")...)
	d.Add(headingOver(d.Marks, p.camera.parts+render.Px(14), "Wall "+key[:1]+" to "+key[1:], p.faceOn())...)
	return d
}

// faceOn is the line under the name of the wall.
func (p *placeStage) faceOn() string {
	if !p.w.live.scene.Stands {
		return "face on; no bed yet"
	}
	return "face on, with the bed"
}

func clipped(marks []render.Mark, in render.Rect) []render.Mark {
	var out []render.Mark
	for _, m := range marks {
		if in.Holds(m.Bounds()) {
			out = append(out, m)
		} else {
			out = append(out, m.Clip(in)...)
		}
	}
	return out
}

// headingOver is a heading at the left edge whose second line gives way to what is drawn.
func headingOver(drawn []render.Mark, y render.Paper, title, sub string) []render.Mark {
	marks := heading(render.Px(16), y, title, sub)
	line := marks[1].Bounds().Grow(render.Px(3))
	for i := range drawn {
		if b := drawn[i].Bounds(); b.Min.X < line.Max.X && b.Max.X > line.Min.X && b.Min.Y < line.Max.Y && b.Max.Y > line.Min.Y {
			return marks[:1]
		}
	}
	return marks
}

// heading is the title of a drawing and a line under it.
func heading(x, y render.Paper, title, sub string) []render.Mark {
	st := render.ScreenStyle
	return []render.Mark{
		render.Words("", st.Title.Text(render.Point{X: x, Y: y + render.Px(8)}, title, render.InkMain, render.Left)),
		render.Words("", st.Body.Text(render.Point{X: x, Y: y + render.Px(26)}, sub, render.InkSoft, render.Left)),
	}
}

func (p *placeStage) drawStick(w, h render.Paper) render.Drawing {
	o := p.options(w, h)
	o.Sparse = false // the stick has its own room
	return storyStick(p.w.live.scene, p.w.live.answers, o, w, h)
}

// storyStick is the story stick under its heading.
func storyStick(s *fit.Scene, answers []fit.Answer, o view.Options, w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	d.Add(heading(render.Px(14), render.Px(14), "Story stick", "floor up to ceiling")...)
	if s == nil {
		return d
	}
	o.W, o.H = w-render.Px(12), h-stickHead-render.Px(16)
	stick := view.Stick(s, answers, o)
	d.Scale = stick.Scale
	d.Add(render.Shift(stick.Marks, render.Point{X: render.Px(6), Y: stickHead + render.Px(6)})...)
	return d
}

// grab takes hold of the bed where it is under the pointer, of the ground elsewhere.
func (p *placeStage) grab(at control.Pointed) bool {
	l := p.w.live
	p.panning = at.Button == desktop.MouseButtonTertiary || !onBed(at.Refs) || l.scene == nil || !l.scene.Stands
	if l.scene == nil {
		return false
	}
	p.from = l.scene.Job.Place
	p.camera.grab()
	return true
}

// shape is a hand where something can be taken hold of or opened.
func (p *placeStage) shape(at control.Pointed) desktop.Cursor {
	if len(at.Refs) > 0 {
		if _, mark := answerOf(at.Refs[0]); mark || onBed(at.Refs) {
			return desktop.PointerCursor
		}
	}
	return desktop.DefaultCursor
}

// onBed tells whether the topmost thing under the pointer is of the bed.
func onBed(refs []string) bool { return len(refs) > 0 && isBed(refs[0]) }

// drag moves the bed, or the drawing.
func (p *placeStage) drag(by render.Point, mod fyne.KeyModifier) {
	if p.panning {
		p.camera.pan(by)
		p.drawings.Redraw()
		return
	}
	l := p.w.live
	if l.scene.Job.Place != p.from {
		l.scene.Put(p.from)
	}
	snap := session.Snapping{Step: stepOf(l.unit()), Within: p.camera.mm(snapWithin)}
	if mod&fyne.KeyModifierAlt != 0 {
		snap.Within = 0
	}
	pose := session.Move(l.scene, p.camera.inRoom(l.scene, by), snap)
	l.put(pose.Place)
	p.w.status.at(p.where(pose))
}

// where says where the bed stands.
func (p *placeStage) where(pose session.Pose) string {
	u := length.Style{Unit: p.w.live.unit()}
	key := pose.Place.Wall
	words := "bed at wall " + key[:1] + " to " + key[1:]
	if pose.Place.Along > 0 {
		words += ", " + length.Format(pose.Place.Along, u) + " from " + pose.Place.From
	}
	if pose.Place.Gap.Set {
		words += ", " + length.Format(pose.Place.Gap.Value, u) + " off it"
	}
	if pose.On != "" {
		words += ": " + pose.On
	}
	return words
}

// rest says where the bed stands while nothing is pointed at, and how it is moved.
func (p *placeStage) rest() {
	s := p.w.live.scene
	if s == nil || !s.Stands {
		p.w.status.at("")
		return
	}
	p.w.status.rest(p.where(session.Pose{Place: s.Job.Place}), "; drag or arrow keys move it, R turns, M mirrors, W presses it to a wall; Alt drags freely")
}

// drop makes the drag one edit.
func (p *placeStage) drop() {
	if p.panning {
		return
	}
	p.moveTo("Move the bed", "", p.w.live.scene.Job.Place)
}

// moveTo makes a place of the bed an edit.
func (p *placeStage) moveTo(name, key string, to job.Placement) {
	p.w.do(name, key, func(j *job.Job) (*job.Job, error) {
		if j.Place == to {
			return j, nil
		}
		next := *j
		next.Place = to
		return &next, nil
	})
	p.w.live.back()
}

func (p *placeStage) pose(name, key string, of func(*fit.Scene) session.Pose) {
	l := p.w.live
	if l.scene == nil || !l.scene.Stands {
		return
	}
	pose := of(l.scene)
	p.w.status.at(p.where(pose))
	p.moveTo(name, key, pose.Place)
}

func (p *placeStage) turn() {
	p.pose("Turn the bed", "", func(s *fit.Scene) session.Pose {
		return session.Turn(s, session.Snapping{Step: stepOf(p.w.live.unit())})
	})
}
func (p *placeStage) mirror() { p.pose("Mirror the bed", "", session.Mirror) }
func (p *placeStage) press()  { p.pose("Press the bed to the wall", "", session.Press) }

// key moves the bed by keys.
func (p *placeStage) key(e *fyne.KeyEvent) bool {
	switch e.Name {
	case fyne.KeyR:
		p.turn()
	case fyne.KeyM:
		p.mirror()
	case fyne.KeyW:
		p.press()
	case fyne.KeyEscape:
		p.levels.giveUp()
		p.drawings.GiveUp()
		p.w.live.back()
	case fyne.KeyLeft:
		p.nudge(-1, 0)
	case fyne.KeyRight:
		p.nudge(1, 0)
	case fyne.KeyUp:
		p.nudge(0, -1)
	case fyne.KeyDown:
		p.nudge(0, 1)
	default:
		return false
	}
	return true
}

// focus explains the keys.
func (p *placeStage) focus(on bool) {
	words := ""
	if on {
		words = "arrow keys move the bed by " + p.stepWords() + ", with Shift by eight of them; R turns, M mirrors, W presses it to the wall"
	}
	control.Explain(words)
}

// nudge moves the bed by one step as the plan lies, eight with Shift.
func (p *placeStage) nudge(x, y float64) {
	step := stepOf(p.w.live.unit()).MM()
	if d, ok := p.w.app.Driver().(desktop.Driver); ok && d.CurrentKeyModifiers()&fyne.KeyModifierShift != 0 {
		step *= 8
	}
	p.pose("Move the bed", "nudge", func(s *fit.Scene) session.Pose {
		way := view.Turned(s, p.camera.top)
		by := geom.V2{X: x * step, Y: -y * step}
		return session.Move(s, geom.V2{X: way.Cos*by.X + way.Sin*by.Y, Y: -way.Sin*by.X + way.Cos*by.Y}, session.Snapping{Step: stepOf(p.w.live.unit())})
	})
}

func (p *placeStage) zoom(at render.Point, dy float32) {
	p.camera.zoom(at, float64(dy))
	p.drawings.Redraw()
}

func (p *placeStage) fitAll() {
	p.camera.fitted = false
	p.drawings.Redraw()
}

func (p *placeStage) hover(at control.Pointed) {
	if p.w.live.scene == nil || len(at.Refs) == 0 {
		p.rest()
		return
	}
	p.w.status.at(p.w.live.scene.Called(fit.Spoken(at.Refs[0])))
}

// tap opens the question whose mark was clicked.
func (p *placeStage) tap(at control.Pointed) {
	for _, ref := range at.Refs {
		if id, ok := answerOf(ref); ok {
			p.questions.open(id)
			return
		}
	}
}
