package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var roomHeight = Question{
	ID:       "room-height",
	Sentence: "Is the ceiling what a bedroom needs?",
	Group:    Build,
	Why:      "A room that is no bedroom by the book may lack more than height: a way out, heating, light.",
	How: "About the room, not the bed. Level ceiling: its lowest point, beams counted. Sloped ceiling: the area under at least the height of " +
		"irc-ceiling as a share of the area that irc-room-area asks for, and the lowest ceiling over that much of the floor where it is highest; " +
		"beams are not counted there. Floor area within the walls at middle height. Least level dimension: the least distance, square to a " +
		"wall, between two walls that face each other within 45 degrees, alcoves and legs of the room included; where no walls face each " +
		"other, the least width of the outline.",
	Depends: Outline | Ceiling,
	Measure: func(s *Scene) Finding { return s.roomHeight() },
}

const (
	ceilingLevel = "irc-ceiling"
	ceilingShare = "irc-ceiling-slope-share"
	ceilingLeast = "irc-ceiling-slope-min"
	roomArea     = "irc-room-area"
	roomLeast    = "irc-room-least"
)

// SlopeShare returns the area with headroom as a percentage of the area that is asked for, both in one unit.
func SlopeShare(high, required float64) float64 { return 100 * high / required }

func (s *Scene) roomHeight() Finding {
	if s.Walls == nil {
		return Finding{Readings: []Reading{ask("ceiling", noShape, ceilingLevel), ask("area", noShape, roomArea), ask("least", noShape, roomLeast)}}
	}
	plan := s.Outline.Turned()
	f := Finding{Readings: s.ceilingReadings(plan)}
	least, walls := s.leastDimension()
	f.Readings = append(f.Readings,
		Reading{At: "area", Rows: []string{roomArea}, Have: SquareFeet(plan.Area(), 1)},
		Reading{At: "least", Rows: []string{roomLeast}, Have: least, Parts: walls})
	return f
}

// ceilingReadings asks the rows of a level or of a sloped ceiling; the others do not apply.
func (s *Scene) ceilingReadings(plan geom.Polygon) []Reading {
	rs := []Reading{
		{At: "ceiling", Rows: []string{ceilingLevel}},
		{At: "ceiling.share", Rows: []string{ceilingShare}},
		{At: "ceiling.least", Rows: []string{ceilingLeast}},
	}
	sloped := s.sloped()
	roof, what := s.roof(plan)
	for i := range rs {
		switch r := &rs[i]; {
		case sloped && i == 0:
			r.Skip = "the ceiling slopes: its own rows are asked"
		case !sloped && i > 0:
			r.Skip = "no part of the ceiling slopes"
		case what != "":
			r.Ask = what
		case i == 0:
			s.levelReading(r, roof)
		case i == 1:
			r.Have = SlopeShare(roof.areaAt(need(ceilingLevel)), requiredArea())
		default:
			r.Have = roof.heightOver(requiredArea())
		}
	}
	return rs
}

// need returns the one number of a row.
func need(id string) float64 {
	row, _ := yardstick.Find(id)
	return row.Need[0]
}

// requiredArea is the floor area that a habitable room is asked for, in mm2.
func requiredArea() float64 { return need(roomArea) * squareFoot }

func (s *Scene) sloped() bool {
	for _, c := range s.Job.Room.Ceilings {
		if c.Sloped {
			return true
		}
	}
	return false
}

// levelReading takes the lowest of a ceiling that is meant to be level, and of the beams under it.
func (s *Scene) levelReading(r *Reading, f *roof) {
	o := Overhead{Z: f.lowest, What: f.what}
	for i := range s.Survey.Layout.Beams {
		key := s.keys.beams[i]
		under := s.v(s.Survey.Layout.Beams[i].Under)
		if math.IsNaN(under) {
			r.Ask = fmt.Sprintf("how high over the floor is the underside of %s along wall %s?", key, s.Job.Room.Beams[i].Along)
			return
		}
		o.lower(under, key)
	}
	r.Have, r.Parts, r.Edge = o.Z, []string{o.What}, "under "+o.What
}
