package fit

import (
	"math"

	"bunkwright/room/geom"
)

// facesOver calls f with the lowest point of each face of the ceiling over the patch, and returns what is missing to know all of it.
func (s *Scene) facesOver(p Patch, f func(i int, z float64)) (ask string) {
	n, whole := 0, false
	for i := range s.Survey.Layout.Ceilings {
		z, covers := s.faceOver(i, p)
		switch {
		case !covers:
			continue
		case math.IsNaN(z):
			ask = "how high is the ceiling at one more point?"
		default:
			f(i, z)
		}
		c := &s.Job.Room.Ceilings[i]
		n, whole = n+1, whole || c.Strip == "" && c.Corners == ""
	}
	switch {
	case ask != "" || whole:
		return ask
	case len(s.Survey.Layout.Ceilings) == 0:
		return "how high is the ceiling?"
	case n == 0:
		return "how high is the ceiling over the bed?"
	case s.bareOver(p):
		return "how high is the ceiling over the rest of the room?"
	}
	return ""
}

// bareShare is the share of a patch up to which a part of it without a ceiling is rounding.
const bareShare = 1e-4

// bareOver tells whether some of the patch, inside the room, lies under no face of the ceiling.
func (s *Scene) bareOver(p Patch) bool {
	around := p.around()
	bare := []geom.Polygon{around}
	for i := range s.Survey.Layout.Ceilings {
		parts, _ := s.faceParts(i)
		for _, part := range parts {
			if len(part) == 0 {
				continue // corners that no face can lie over
			}
			var rest []geom.Polygon
			for _, q := range bare {
				rest = append(rest, q.Without(part...)...)
			}
			bare = rest
		}
	}
	sum := 0.0
	for _, q := range bare {
		sum += math.Abs(s.Outline.Intersect(q).Area())
	}
	return sum > bareShare*math.Abs(around.Area())
}

// steep returns the length of a face of the ceiling over one of plan: a distance straight up divided by it is square to the face.
func (s *Scene) steep(i int) float64 {
	f := s.Survey.Layout.Ceilings[i]
	return math.Sqrt(1 + s.v(f.SlopeX)*s.v(f.SlopeX) + s.v(f.SlopeY)*s.v(f.SlopeY))
}

// steepest returns the greatest steep of all faces, 1 where they are level.
func (s *Scene) steepest() float64 {
	most := 1.0
	for i := range s.Survey.Layout.Ceilings {
		if k := s.steep(i); k > most {
			most = k
		}
	}
	return most
}
