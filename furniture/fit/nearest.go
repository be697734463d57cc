package fit

import "math"

// nearestFirst calls f with the solids in the order of a lower bound of how far away they are, until the rest are surely no nearer than
// limit, which f brings down. Where a bound is no more than floor it says nothing of how far a solid may overlap, so f always sees
// that one. Where only a verdict is asked for, the first that overlaps is enough.
func (s *Scene) nearestFirst(bound func(*Solid) float64, floor float64, limit *float64, f func(*Solid)) {
	s.bounds = s.bounds[:0]
	for i := range s.Solids {
		s.bounds = append(s.bounds, bound(&s.Solids[i]))
	}
	for {
		best, least := -1, math.Inf(1)
		for i, d := range s.bounds {
			if d < least {
				best, least = i, d
			}
		}
		if best < 0 || least >= *limit && least > floor || s.brief && *limit < 0 {
			return
		}
		s.bounds[best] = math.Inf(1)
		f(&s.Solids[best])
	}
}

// nearestTo keeps the least distance and what it is between.
type nearestTo struct {
	gap        float64
	part, what string
}

func (n *nearestTo) take(gap float64, part, what string) {
	if gap < n.gap {
		n.gap, n.part, n.what = gap, part, what
	}
}

func farOff() nearestTo { return nearestTo{gap: math.Inf(1)} }
