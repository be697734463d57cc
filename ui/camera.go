package ui

import (
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/render"
	"bunkwright/render/view"
	"bunkwright/room/geom"
)

// camera says at which scale and where the plan and the wall below it are drawn. It stays while the hand moves, so that nothing jumps.
type camera struct {
	fitted     bool
	w, h       render.Paper
	outline    string // of what room and walls it was fitted to
	top        string // the wall at the top of the plan
	scale      float64
	plan, wall render.Point // origins
	parts      render.Paper // where the plan ends and the wall begins
	held       [2]render.Point
	sparse     bool         // there is little room
	legend     render.Paper // where the legend stands, 0 where it has no room
}

// legendWide is the width of the legend beside the drawings, with the air on both sides.
var legendWide = render.Px(170)

// A pane under this size has little room.
var (
	littleWide = render.Px(620)
	littleHigh = render.Px(640)
)

// follow fits the drawings to the box where the box or the room differ, and returns the wall to show face on.
func (c *camera) follow(l *live, w, h render.Paper) string {
	key := wallOf(l.scene)
	if c.fitted && c.w == w && c.h == h && c.outline == l.of.Room.Outline {
		return key
	}
	c.fitted, c.w, c.h, c.outline, c.top = true, w, h, l.of.Room.Outline, key
	c.sparse = w < littleWide || h < littleHigh
	o := view.Options{Unit: l.unit(), W: w - render.Px(16), H: h - 2*headHigh, Beside: true, Sparse: c.sparse}
	plan, wall := view.Pair(l.scene, l.answers, key, o, 0)
	c.scale, c.plan, c.wall = plan.Scale, plan.Origin, wall.Origin
	c.parts = headHigh + plan.H
	c.plan = c.plan.Plus(render.Point{X: render.Px(8), Y: headHigh})
	c.wall = c.wall.Plus(render.Point{X: render.Px(8), Y: c.parts + headHigh})
	c.makeRoom(w, render.Bounds(append(plan.Marks, wall.Marks...)))
	return key
}

// makeRoom moves the drawings, which stand in the middle of the pane, to the left as far as the legend beside them asks for. Where there
// is no room for it there is none.
func (c *camera) makeRoom(w render.Paper, drawn render.Rect) {
	c.legend = 0
	if w-drawn.W() < legendWide+render.Px(32) {
		return
	}
	left := min((w-drawn.W())/2, w-drawn.W()-legendWide)
	by := render.Point{X: left - drawn.Min.X - render.Px(8)}
	c.plan, c.wall = c.plan.Plus(by), c.wall.Plus(by)
	c.legend = max(left+drawn.W(), w-legendWide) + render.Px(16)
}

// wallOf returns the wall that the bed stands at, else the first.
func wallOf(s *fit.Scene) string {
	if s.At != nil {
		return s.At.Key
	}
	for i := range s.Walls {
		if s.Walls[i].Key == s.Job.Place.Wall {
			return s.Job.Place.Wall
		}
	}
	if len(s.Walls) > 0 {
		return s.Walls[0].Key
	}
	return "AB"
}

func (c *camera) grab() { c.held = [2]render.Point{c.plan, c.wall} }

// pan moves both drawings along, and the one that was held up or down.
func (c *camera) pan(by render.Point) {
	c.plan, c.wall = c.held[0].Plus(by), c.held[1].Plus(by)
}

// zoom changes the scale about a point of the screen.
func (c *camera) zoom(at render.Point, dy float64) {
	k := 1 + max(-0.5, min(0.5, dy/200))
	next := max(0.005, min(1, c.scale*k))
	k = next / c.scale
	c.scale = next
	c.plan = at.Plus(c.plan.Minus(at).Times(k))
	c.wall = at.Plus(c.wall.Minus(at).Times(k))
}

// mm returns what a length on the screen is in the room.
func (c *camera) mm(px float64) float64 { return float64(render.Px(px)) / c.scale }

// inRoom turns a way on the plan into one in the room, in mm.
func (c *camera) inRoom(s *fit.Scene, by render.Point) geom.V2 {
	t := view.Turned(s, c.top)
	x, y := float64(by.X)/c.scale, -float64(by.Y)/c.scale
	return geom.V2{X: t.Cos*x + t.Sin*y, Y: -t.Sin*x + t.Cos*y}
}

// ofRoom are the tables of a job that are not the bed.
var ofRoom = map[string]bool{"wall": true, "corner": true, "door": true, "window": true, "outlet": true, "register": true, "heater": true,
	"fan": true, "light": true, "alarm": true, "hatch": true, "furniture": true, "ceiling": true, "beam": true, "floor": true, "room": true, "answer": true}

// isBed tells whether a ref is of the bed.
func isBed(ref string) bool {
	table, _, _ := strings.Cut(ref, ".")
	return ref != "" && !ofRoom[table]
}

// answerOf returns the question that a mark of a drawing stands for.
func answerOf(ref string) (id string, ok bool) { return strings.CutPrefix(ref, "answer.") }
