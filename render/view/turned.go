package view

import (
	"bunkwright/furniture/fit"
	"bunkwright/room/geom"
)

// Turned returns the place of the room in its plan with a wall at the top, in mm: x along that wall, y up from it. Together with the
// scale and the origin of a drawing of the plan it tells what part of the room a point on paper is.
func Turned(s *fit.Scene, top string) geom.Place { return newPlanner(s, Options{Top: top}).turn }
