package fit

import (
	"math"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

// A FloorThing is something in the way on the floor, seen from above: convex, two points for a wall.
type FloorThing struct {
	What    string
	Outline geom.Polygon
}

// FloorThings returns what is in the way on the floor beside the walls, as far as its place is known: the bed with its drawers shut, furniture
// that stays and heaters.
func (s *Scene) FloorThings() []FloorThing {
	all, _ := s.thingsOnFloor()
	if s.Stands {
		all = append(s.bedOnFloor(), all...)
	}
	out := make([]FloorThing, len(all))
	for i := range all {
		out[i] = FloorThing{all[i].what, all[i].outline}
	}
	return out
}

// StepOff returns where one steps off the bed: before the lowest tread, or before the middle of the front where there is no ladder. The bed
// must stand.
func (s *Scene) StepOff() geom.V2 {
	g := s.bedGate()
	return g.A.Lerp(g.B, 0.5)
}

// Doorways returns the middle of the doorway of each door that may be the door of the room.
func (s *Scene) Doorways() []geom.V2 {
	out, _ := s.doorways()
	return out
}

// Pillows returns the middles of the lower and of the upper pillow in plan. The bed must stand.
func (s *Scene) Pillows() [2]geom.V2 {
	long := yardstick.Figures(yardstick.Pillow)[1]
	var out [2]geom.V2
	for i, d := range [2]*deckAt{&s.Bed.Lower, &s.Bed.Upper} {
		out[i] = s.ToRoom.Point(geom.V3{X: s.headX(d, long/2), Y: s.middleY(d)}).XY()
	}
	return out
}

// Outlets returns the places of the outlets on the walls in plan, as far as they are known.
func (s *Scene) Outlets() []geom.V2 {
	var out []geom.V2
	for i := range s.Job.Room.Outlets {
		if o, what := s.socket(i); what == "" && o.kind() == "outlet" {
			out = append(out, o.wall.Point(o.along, 0))
		}
	}
	return out
}

// FromWindows returns the level distance of a point from the nearest window whose place is known, infinite without any.
func (s *Scene) FromWindows(p geom.V2) float64 {
	least := math.Inf(1)
	panes := s.panes()
	for i := range panes {
		if panes[i].where != "" {
			continue
		}
		a, b := panes[i].ends(s)
		d, _ := geom.SegmentPoint(a, b, p)
		least = min(least, d)
	}
	return least
}

// StudsBehind returns how many times a cleat crosses a stud that somebody found. The bed must stand.
func (s *Scene) StudsBehind() int {
	n := 0
	studs := s.studs(s.At)
	for i := range s.Bed.Cleats {
		if len(studs) == 0 {
			break
		}
		c, _ := s.cleat(i, studs)
		for k := range c.studs {
			if c.studs[k].doubt() == "" {
				n++
			}
		}
	}
	return n
}
