package ui

import (
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// roomPlan is the room from above with every reading on it.
type roomPlan struct {
	r      *roomPanel
	object fyne.CanvasObject
	sketch *control.Sketch
	add    *control.Press
	fit    *control.Press
	cam    roomCamera
	pulled string     // ref of the wall or corner that is pulled, "" where the drawing is moved
	shown  *fit.Scene // the room while a wall is pulled, nil else
	shaped *session.Reshaped
}

// roomCamera says at which scale and where the plan is drawn.
type roomCamera struct {
	fitted  bool
	w, h    render.Paper
	outline string
	scale   float64
	at      render.Point
	held    render.Point
}

// Heights of the heading over the plan and of the legend under it.
var (
	planHead = render.Px(52)
	planFoot = render.Px(54)
)

func newRoomPlan(r *roomPanel) *roomPlan {
	p := &roomPlan{r: r}
	p.sketch = control.NewSketch(render.InkPaper, p.draw)
	p.sketch.Least = fyne.NewSize(380, 300)
	p.sketch.Tap, p.sketch.Hover, p.sketch.Wheel, p.sketch.Key = p.tap, p.hover, p.zoom, p.key
	p.sketch.Tabs, p.sketch.Focus = true, p.focused
	p.sketch.Grab, p.sketch.Drag, p.sketch.Drop, p.sketch.Shape = p.grab, p.drag, p.drop, p.shape
	p.add = control.NewButton(render.InkPaper, func() string { return "Add to the room" }, false, p.offer)
	p.add.Says = func() string {
		return "choose a door, a window, a fan or whatever there is, then click where it is (key: A)"
	}
	p.fit = control.NewButton(render.InkPaper, func() string { return "Fit" }, false, p.fitAll)
	p.fit.Says = func() string { return "show all of the room (key: F); the wheel zooms, a drag on the floor moves it" }
	for _, b := range []*control.Press{p.add, p.fit} {
		b.Key = func(e *fyne.KeyEvent) { r.key(e) }
	}
	p.object = container.New(planFrame{p}, p.sketch, p.fit, p.add)
	return p
}

func (p *roomPlan) redraw() {
	p.sketch.Redraw()
	p.add.Redraw()
}

func (p *roomPlan) scene() *fit.Scene {
	if p.shown != nil {
		return p.shown
	}
	return p.r.w.live.scene
}

func (p *roomPlan) draw(w, h render.Paper) render.Drawing {
	d := render.Drawing{W: w, H: h}
	s := p.scene()
	d.Add(heading(render.Px(16), render.Px(14), "The room as read", "from above, to scale")...)
	if s == nil {
		return d
	}
	p.follow(w, h)
	o := p.options(w, h)
	if len(s.Walls) > 0 {
		at := p.origin()
		o.Scale, o.Origin = p.cam.scale, &at
	}
	plan := view.RoomAsRead(s, o)
	d.Scale, d.Origin = plan.Scale, plan.Origin
	box := render.Rect{Min: render.Point{Y: planHead}, Max: render.Point{X: w, Y: h - planFoot}}
	d.Add(clipped(plan.Marks, box)...)
	d.Add(p.legend(w, h)...)
	if p.sketch.Focused() {
		d.Add(control.FocusRing(w, h, control.State{Focus: true})...)
	}
	return d
}

func (p *roomPlan) options(w, h render.Paper) view.Options {
	return view.Options{Unit: p.r.w.live.unit(), Chosen: p.r.chosen, W: w, H: h}
}

// follow fits the plan to the box where the box or the room differ.
func (p *roomPlan) follow(w, h render.Paper) {
	c, s := &p.cam, p.scene()
	if c.fitted && c.w == w && c.h == h && c.outline == s.Job.Room.Outline {
		return
	}
	o := p.options(w, h)
	o.W, o.H = w-render.Px(20), h-planHead-planFoot-render.Px(4)
	o.Chosen = ""
	plan := view.RoomAsRead(s, o)
	*c = roomCamera{true, w, h, s.Job.Room.Outline, plan.Scale, plan.Origin.Plus(render.Point{X: render.Px(10), Y: planHead}), render.Point{}}
}

func (p *roomPlan) fitAll() {
	p.cam.fitted = false
	p.redraw()
}

func (p *roomPlan) zoom(at render.Point, dy float32) {
	k := 1 + max(-0.5, min(0.5, float64(dy)/200))
	next := max(0.005, min(1, p.cam.scale*k))
	p.cam.at = at.Plus(p.cam.at.Minus(at).Times(next / p.cam.scale))
	p.cam.scale = next
	p.redraw()
}

// tap chooses what was clicked, or puts there what is to be added.
func (p *roomPlan) tap(at control.Pointed) {
	if p.r.adding != "" {
		p.addAt(at.At)
		return
	}
	if key := pointed(at.Refs); key != "" {
		p.r.choose(key, session.Subject(key) != key)
	}
}

// pointed returns the key to choose of what is under the pointer: parts of a thing that are no reading stand for the thing.
func pointed(refs []string) string {
	for _, ref := range refs {
		switch {
		case ref == "scale" || ref == "":
		case isReading(ref) || ref == "floor":
			return ref
		default:
			return session.Subject(ref)
		}
	}
	return ""
}

// hover says what is under the pointer, and where on the floor it is.
func (p *roomPlan) hover(at control.Pointed) {
	if p.r.adding == "" && p.shown == nil && p.scene() != nil && len(p.scene().Walls) > 0 && pointed(at.Refs) == "floor" {
		p.r.w.status.at(p.where(at.At))
		return
	}
	p.explain(at)
}

// explain says what is under the pointer.
func (p *roomPlan) explain(at control.Pointed) {
	if p.r.adding != "" {
		p.r.w.status.at("click where the " + p.r.adding + " is; Esc leaves it")
		return
	}
	j := p.r.w.session.Job()
	key := pointed(at.Refs)
	if key == "" || j == nil || !session.Exists(j, session.Subject(key)) {
		p.r.w.status.at("")
		return
	}
	p.r.w.status.at(p.r.sentence(key))
}

// where says where on the floor the pointer is.
func (p *roomPlan) where(at render.Point) string {
	s := p.r.w.live.scene
	wall, along, out := session.Where(s, p.pointInRoom(at))
	if wall == "" {
		return ""
	}
	f := p.r.form
	return "from corner " + wall[:1] + ": " + f.lengthWords(along) + " along " + wall[:1] + " to " + wall[1:] + ", " + f.lengthWords(out) + " out"
}

// sentence says what a key is and how it is known.
func (r *roomPanel) sentence(key string) string {
	j := r.w.session.Job()
	for _, t := range session.Readings(j, nil) {
		if t.Key == key {
			words := strings.TrimSpace(t.From + " to " + t.To)
			if t.First == "" {
				return words + ": not in yet"
			}
			return words + ": " + t.First + ", " + stateWords(t)
		}
	}
	words := r.nameOf(session.Subject(key))
	switch {
	case strings.HasPrefix(key, "corner."):
		words += ": drag it to move both walls"
	case strings.HasPrefix(key, "wall.") || session.Movable(j, key):
		words += ": click for its form, drag to move it"
	default:
		words += ": click for its form"
	}
	return words
}

// shape is a hand where something can be chosen.
func (p *roomPlan) shape(at control.Pointed) desktop.Cursor {
	switch {
	case p.r.adding != "":
		return desktop.CrosshairCursor
	case len(at.Refs) > 0 && at.Refs[0] != "floor" && at.Refs[0] != "scale":
		return desktop.PointerCursor
	}
	return desktop.DefaultCursor
}

// planFrame lays out the plan with its button.
type planFrame struct{ p *roomPlan }

func (f planFrame) Layout(_ []fyne.CanvasObject, size fyne.Size) {
	f.p.sketch.Resize(size)
	min := f.p.add.MinSize()
	f.p.add.Resize(min)
	f.p.add.Move(fyne.NewPos(size.Width-min.Width-16, 12))
	f.p.fit.Resize(fyne.NewSize(50, min.Height))
	f.p.fit.Move(fyne.NewPos(size.Width-min.Width-16-56, 12))
}

func (f planFrame) MinSize([]fyne.CanvasObject) fyne.Size { return f.p.sketch.MinSize() }
