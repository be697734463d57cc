package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// RoomAsRead draws the room from above without the bed: every reading that was taken is a dimension on it, refs are the keys of the job
// ("wall.AB", "wall.AB.length"). The chosen wall has an ink of its own, anything else that is chosen is lit. Corners carry handles.
func RoomAsRead(s *fit.Scene, o Options) render.Drawing {
	const title = "The room as read"
	if len(s.Walls) == 0 {
		return o.draw(title, 0, 0, func(c *canvas) { noShape(c, s) })
	}
	p := newPlanner(s, o)
	if p.wallOf(o.Chosen) != o.Chosen && o.Chosen != "" && o.Chosen != "floor" {
		o.Lit = append(o.Lit, o.Chosen)
	}
	lo, hi := p.outline.Bounds()
	return o.draw(title, hi.X-lo.X, hi.Y-lo.Y, func(c *canvas) {
		q := *p
		q.canvas = c
		q.apart = true
		q.paintAsRead()
	})
}

// wallOf returns the key of the wall that a key is of: "wall.AB" for "wall.AB.length"; "" for none.
func (p *planner) wallOf(key string) string {
	for i := range p.walls {
		if render.Under(key, p.walls[i].ref) {
			return p.walls[i].ref
		}
	}
	return ""
}

func (p *planner) paintAsRead() {
	p.room = p.shape(p.s.Outline)
	p.letters()
	p.rulesOf(p.takenAlong)
	p.marks = p.askFor(p.marks)
	p.drawWalls()
	p.doors()
	p.windows()
	for i := range p.walls {
		if p.walls[i].ref == p.wallOf(p.o.Chosen) {
			p.studsIn(p.walls[i].w)
		}
	}
	p.floorThings()
	p.wallThings()
	p.overhead()
	first := len(p.marks)
	p.insideRules()
	p.marks = append(p.marks[:first], p.askFor(p.marks[first:])...)
	p.heightsAsRead()
	p.place()
	p.handles()
	b := render.Bounds(p.marks)
	p.scaleBar(b.Max.X, b.Max.Y+p.st.Gap*2)
}

// handles are the corners as they can be taken hold of.
func (p *planner) handles() {
	letters := []rune(p.s.Job.Room.Outline)
	for i, w := range p.walls {
		ref := "corner." + string(letters[i])
		c := p.on(w.w.A)
		p.outlined(ref, render.Circle(c, p.st.Tick*0.42), render.InkField, p.st.Seen)
		p.fill(ref, render.Circle(c, p.st.Tick*0.22), render.InkMain)
	}
}

// heightsAsRead marks the heights of the ceiling where they were read.
func (p *planner) heightsAsRead() {
	for i, f := range p.s.Job.Room.Ceilings {
		for k, h := range f.Heights {
			ref := "ceiling." + keyOr(f.Key, i) + ".height." + keyOr(h.Key, k)
			if q, ok := p.readAt(ref, h); ok && len(h.Height) > 0 {
				p.level(ref+".height", q, p.taken(ref+".height", h.Height), p.ceilingWord(i)+cornerWords(h.Corner))
			}
		}
	}
}
