package view

import (
	"math"

	"bunkwright/render"
	"bunkwright/room"
)

// Widths at which openings are drawn that nobody measured, in mm.
const (
	usualDoor   = 760.0
	usualWindow = 900.0
)

// openings cuts doors and windows out of their walls.
func (p *planner) openings() {
	l := &p.s.Survey.Layout
	for i := range l.Doors {
		p.opening(onWall(p.s, l.Doors[i].OnWallRefs, l.Doors[i].Wide, usualDoor))
	}
	for i := range l.Windows {
		p.opening(onWall(p.s, l.Windows[i].OnWallRefs, l.Windows[i].Wide, usualWindow))
	}
	for i := range p.walls {
		sortGaps(p.walls[i].gaps)
	}
}

func (p *planner) opening(at place, ok bool) {
	if !ok || at.guessed {
		return
	}
	w := &p.walls[at.w.Index]
	if lo, hi := max(at.lo, 0), min(at.hi, at.w.Len); hi > lo {
		w.gaps = append(w.gaps, gap{lo, hi})
	}
}

func zeroIfUnread(v float64) float64 {
	if math.IsNaN(v) {
		return 0
	}
	return v
}

func (p *planner) doors() {
	for i := range p.s.Job.Room.Doors {
		d, refs := &p.s.Job.Room.Doors[i], &p.s.Survey.Layout.Doors[i]
		at, ok := onWall(p.s, refs.OnWallRefs, refs.Wide, usualDoor)
		ref := "door." + keyOr(d.Key, i)
		switch {
		case !ok:
			continue
		case at.guessed:
			p.unplaced(ref, doorName(d), at, 0)
			continue
		}
		p.casing(ref, at, p.s.Survey.Value(refs.Casing), p.s.Survey.Value(refs.CasingDeep))
		p.lintel(ref, at)
		p.leaves(ref, d, at, zeroIfUnread(p.s.Survey.Value(refs.LeafThick)))
		p.doorLabel(ref, d, at)
	}
}

// doorName is what a door is called on a drawing: by where it leads.
func doorName(d *room.Door) string {
	switch d.LeadsTo {
	case "closet":
		return "closet"
	case "", "other room":
		return "door"
	}
	return d.LeadsTo + " door"
}

// doorLabel names the door in the middle of what its leaf sweeps.
func (p *planner) doorLabel(ref string, d *room.Door, at place) {
	out := (at.hi - at.lo) * 0.4
	if d.Leaves > 1 {
		out *= 0.8
	}
	p.spots[ref] = p.on(at.w.Point(at.middle(), 0))
	home := p.on(at.w.Point(at.middle(), out))
	if hinged(d) && d.Hinge == "" && d.Leaves < 2 {
		p.notIn(ref, doorName(d)+", hinges", home)
		return
	}
	p.nameOf(ref, p.spots[ref], home, 14, p.soft(doorName(d)))
}

// hinged tells whether a door turns about pins.
func hinged(d *room.Door) bool { return d.Kind == "swings" || d.Kind == "folds" }

// lintel marks the edge of the wall over a doorway.
func (p *planner) lintel(ref string, at place) {
	w := &p.walls[at.w.Index]
	p.stroke(ref, append(p.line(w.point(at.lo, 0), w.point(at.hi, 0)), p.line(w.point(at.lo, w.deep), w.point(at.hi, w.deep))...), p.st.Behind)
}

// casing draws the trim on both sides of an opening.
func (p *planner) casing(ref string, at place, wide, deep float64) {
	if !(wide > 0 && deep > 0) {
		return
	}
	for _, side := range []place{{w: at.w, lo: at.lo - wide, hi: at.lo}, {w: at.w, lo: at.hi, hi: at.hi + wide}} {
		p.outlined(ref, p.shape(side.quad(0, deep)), render.InkBoard, p.st.Thin)
	}
}
