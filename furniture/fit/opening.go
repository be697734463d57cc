package fit

import (
	"fmt"
	"math"

	"bunkwright/room/geom"
)

// pane is a window as it is in its wall: all of it, and what is clear when it is open, along the wall from its first corner and in
// height over the floor.
type pane struct {
	key   string
	place int // in the room's list
	wall  *Wall
	whole geom.Rectangle // up to any height where the head is unread
	clear geom.Rectangle
	shut  bool   // it does not open at all
	ask   string // what is missing of the clear opening
	where string // what is missing of its place; nothing else is known then
}

// panes returns the windows of the room.
func (s *Scene) panes() []pane {
	if f := &s.facts; !f.panes {
		f.panes, f.paneList = true, make([]pane, len(s.Job.Room.Windows))
		for i := range f.paneList {
			f.paneList[i] = s.pane(i)
		}
	}
	return s.facts.paneList
}

func (s *Scene) pane(i int) pane {
	rec, refs := &s.Job.Room.Windows[i], &s.Survey.Layout.Windows[i]
	p := pane{key: s.keys.windows[i], place: i, shut: rec.Kind == "fixed"}
	if p.where = s.askBeside(p.key, rec.OnWall, refs.OnWallRefs, refs.Wide); p.where == "" && s.unread(refs.Sill) {
		p.where = askHigh("the sill of", p.key, rec.Wall)
	}
	if p.ask = p.where; p.where != "" {
		return p
	}
	w, lo, hi, _ := s.interval(refs.OnWallRefs, refs.Wide)
	sill, head := s.v(refs.Sill), s.v(refs.Head)
	if math.IsNaN(head) {
		head = math.Inf(1)
	}
	p.wall, p.whole = w, geom.Rectangle{Lo: geom.V2{X: lo, Y: sill}, Hi: geom.V2{X: hi, Y: head}}
	switch {
	case p.shut:
		p.clear = geom.Rectangle{Lo: p.whole.Lo, Hi: p.whole.Lo}
	case s.unread(refs.ClearWide), s.unread(refs.ClearHigh):
		p.ask = fmt.Sprintf("how wide and how high is the clear opening of %s on wall %s when it is open?", p.key, rec.Wall)
	default:
		p.clear = s.clearOpening(i, lo, hi, sill)
	}
	return p
}

// clearOpening puts the clear opening into the window: from the near edge as read, else in the middle.
func (s *Scene) clearOpening(i int, lo, hi, sill float64) geom.Rectangle {
	refs := &s.Survey.Layout.Windows[i]
	wide, high, in := s.v(refs.ClearWide), s.v(refs.ClearHigh), s.v(refs.ClearIn)
	from := (lo + hi - wide) / 2
	switch {
	case math.IsNaN(in):
	case refs.FromEnd:
		from = hi - in - wide
	default:
		from = lo + in
	}
	return geom.Rectangle{Lo: geom.V2{X: from, Y: sill}, Hi: geom.V2{X: from + wide, Y: sill + high}}
}

// ends returns the ends of the window on the wall's face at sill height.
func (p *pane) ends(s *Scene) (a, b geom.V2) {
	face := s.Nearest(p.wall, p.whole.Lo.Y, p.whole.Lo.Y)
	return p.wall.Point(p.whole.Lo.X, face), p.wall.Point(p.whole.Hi.X, face)
}
