package fit

import (
	"math"

	"bunkwright/furniture/job"
	"bunkwright/furniture/people"
)

// furthestReach returns the greatest of one reach over all who sleep in a bed, in mm, or what is missing to tell.
func (s *Scene) furthestReach(b bed, of func(people.Sex, float64) (float64, error)) (reach float64, what string) {
	return s.reachOf(b, of, math.Max)
}

// leastReach is the same for a reach that must do: the least.
func (s *Scene) leastReach(b bed, of func(people.Sex, float64) (float64, error)) (reach float64, what string) {
	return s.reachOf(b, of, math.Min)
}

func (s *Scene) reachOf(b bed, of func(people.Sex, float64) (float64, error), choose func(a, b float64) float64) (reach float64, what string) {
	any := false
	for _, p := range s.Job.Sleepers {
		if p.Bed != b.word() {
			continue
		}
		r, err := of(sexOf(p.Sex), tableAge(p))
		switch {
		case err != nil:
			return 0, "how old is " + called(p) + "?"
		case !any:
			reach, any = r, true
		default:
			reach = choose(reach, r)
		}
	}
	if !any {
		what = "who sleeps in the " + b.word() + " bed?"
	}
	return reach, what
}

// sideways returns how far the sleepers of a bed may reach level from the mattress, in mm.
func (s *Scene) sideways(b bed) (reach float64, what string) {
	return s.furthestReach(b, people.SidewaysReach)
}

// tableAge is the age to look a body size up with: grown-ups are looked up among grown-ups, whatever age they gave.
func tableAge(p job.Sleeper) float64 {
	if p.Grown() {
		return max(p.Age, people.LastChildAge+1)
	}
	return p.Age
}
