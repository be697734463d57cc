package place

import (
	"math"

	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// Ids of the measures of comfort. They are our own figures to tell two places apart by, not limits: there is nothing that they must reach.
const (
	WayLength    = "way-length"
	PillowWindow = "pillow-window"
	PillowOutlet = "pillow-outlet"
	StudsBehind  = "studs-behind"
	FreeSquare   = "free-square"
)

// Comfort is how a placement compares where the questions do not tell it from another; lengths in mm, NaN where what it is measured to is not
// there or not known.
type Comfort struct {
	Way    float64 // shortest way on the floor from the middle of the doorway to where one steps off the bed, round what stands there; shorter is better
	Window float64 // level, from the middle of the nearer pillow to the nearest window; farther is better
	Outlet float64 // level, from the middle of the farther pillow to its nearest outlet; nearer is better
	Square float64 // side of the largest free square of floor in line with the bed's wall, to 50 mm; larger is better
	Studs  int     // how many times the cleats of the shelves cross a stud that somebody found; more is better
}

// Of returns one measure by its id.
func (c *Comfort) Of(id string) float64 {
	switch id {
	case WayLength:
		return c.Way
	case PillowWindow:
		return c.Window
	case PillowOutlet:
		return c.Outlet
	case FreeSquare:
		return c.Square
	}
	return float64(c.Studs)
}

// classWide is how wide a class of a measured length is, mm: what differs by less is as good.
const classWide = 100

// class is the place of a measure among classes, higher is better; the lowest where it is not known.
func (c *Comfort) class(id string) int {
	v := c.Of(id)
	switch {
	case math.IsNaN(v):
		return math.MinInt32
	case id == StudsBehind:
		return c.Studs
	case id == WayLength || id == PillowOutlet:
		return -int(math.Ceil(v / classWide))
	}
	return int(math.Floor(v / classWide))
}

// comfortAt measures a spot where it stands.
func comfortAt(s *fit.Scene, spot *Spot) Comfort {
	s.Put(spot.Place)
	c := Comfort{Way: math.NaN(), Window: math.Inf(1), Outlet: math.NaN(), Square: freeSquare(s), Studs: s.StudsBehind()}
	floor := newFloor(s)
	for _, d := range s.Doorways() {
		if way := floor.way(d, s.StepOff()); !(way >= c.Way) {
			c.Way = way
		}
	}
	for _, p := range s.Pillows() {
		c.Window = min(c.Window, s.FromWindows(p))
		if d := nearest(p, s.Outlets()); !(d <= c.Outlet) {
			c.Outlet = d
		}
	}
	if math.IsInf(c.Window, 1) {
		c.Window = math.NaN()
	}
	return c
}

// nearest returns the distance of the nearest point, NaN without any.
func nearest(p geom.V2, points []geom.V2) float64 {
	least := math.NaN()
	for _, q := range points {
		if d := p.Dist(q); !(d >= least) {
			least = d
		}
	}
	return least
}
