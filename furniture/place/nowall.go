package place

import (
	"fmt"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/room/length"
)

// NoWay is a wall at which the bed stands nowhere, and the one or two reasons for it in words.
type NoWay struct {
	Wall    string
	Reasons []string
}

// mostReasons is how many reasons are given for a wall.
const mostReasons = 2

// without lists the walls without a spot.
func (r *search) without() []NoWay {
	var out []NoWay
	for i := range r.first.Walls {
		if !r.spotAt(i) {
			out = append(out, NoWay{r.first.Walls[i].Key, r.reasons(i)})
		}
	}
	return out
}

func (r *search) spotAt(wall int) bool {
	for i := range r.swept {
		if r.lanes[i].wall == wall && len(r.swept[i].spots) > 0 {
			return true
		}
	}
	return false
}

// reasons tells why there is no spot at a wall: too little of it, else what the bed ran into where it came nearest to standing.
func (r *search) reasons(wall int) []string {
	if short := r.tooShort(wall); short != "" {
		return []string{short}
	}
	var out []string
	for i := range r.swept {
		if m := r.swept[i].miss; m != nil && r.lanes[i].wall == wall {
			if words := r.missWords(m); !slices.Contains(out, words) && len(out) < mostReasons {
				out = append(out, words)
			}
		}
	}
	return out
}

// tooShort compares the least that the bed takes with the longest stretch of a wall between its corners and doorways.
func (r *search) tooShort(wall int) string {
	need := math.Inf(1)
	for i := range r.lanes {
		if r.lanes[i].wall == wall {
			need = min(need, r.lanes[i].span)
		}
	}
	best := longestBetween(r.first, wall)
	if best.to-best.from >= need {
		return ""
	}
	where := "the wall is %s long"
	if best.left != "" || best.right != "" {
		where = fmt.Sprintf("from %s to %s it is %%s", endName(r.first, wall, best.left, 0), endName(r.first, wall, best.right, 1))
	}
	return fmt.Sprintf(where+", the bed needs %s: %s short", r.say(best.to-best.from, length.TowardZero), r.say(need, length.AwayFromZero),
		r.say(need-(best.to-best.from), length.AwayFromZero))
}

func (r *search) say(mm float64, how length.Rounding) string {
	unit, _ := length.ParseUnit(r.job.Unit)
	return length.Format(length.FromMM(mm), length.Style{Unit: unit, Rounding: how})
}

// between is a stretch of wall and the doors at its ends; "" for a corner.
type between struct {
	from, to    float64
	left, right string
}

// longestBetween returns the longest stretch of a wall that no doorway cuts.
func longestBetween(s *fit.Scene, wall int) between {
	var doors []between
	for i := range s.Survey.Layout.Doors {
		d := &s.Survey.Layout.Doors[i]
		if lo, hi := stretchOf(s, d.OnWallRefs, d.Wide); d.Wall == wall && !math.IsNaN(lo+hi) {
			doors = append(doors, between{from: lo, to: hi, left: fit.Spoken(doorKey(s, i))})
		}
	}
	slices.SortFunc(doors, func(a, b between) int { return int(math.Copysign(1, a.from-b.from)) })
	best, at := between{}, between{}
	for _, d := range append(doors, between{from: s.Walls[wall].Len, to: s.Walls[wall].Len}) {
		if at.to, at.right = d.from, d.left; at.to-at.from > best.to-best.from {
			best = at
		}
		at = between{from: max(at.from, d.to), left: d.left}
	}
	return best
}

func doorKey(s *fit.Scene, i int) string {
	if key := s.Job.Room.Doors[i].Key; key != "" {
		return "door." + key
	}
	return fmt.Sprintf("door.%d", i+1)
}

// endName names an end of a stretch: the door there, else the corner.
func endName(s *fit.Scene, wall int, door string, end int) string {
	if door != "" {
		return door
	}
	return "corner " + string([]rune(s.Walls[wall].Key)[end])
}

// missWords tells what kept the bed from standing where it came nearest to it.
func (r *search) missWords(m *miss) string {
	s := r.first
	s.Put(m.at.place)
	switch m.not {
	case unread:
		return s.Wants
	case doorway:
		door, by := inDoorway(s)
		return fmt.Sprintf("%s is in the way: %s short", fit.Spoken(doorKey(s, door)), r.say(by, length.AwayFromZero))
	}
	a := s.Nominal(r.rank.asks[m.asked])
	unit, _ := length.ParseUnit(r.job.Unit)
	words := a.Tell(unit)
	if a.HasSpare && a.Reason != "" {
		words = fit.Spoken(a.Reason) + ": " + fit.SpareWords(a.Spare, a.Unit, unit)
	}
	if a.ID == "way-out" && len(r.job.Room.Windows) == 1 {
		words = "the window is the only way out; " + words
	}
	return words
}
