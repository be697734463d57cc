package place

import (
	"math"

	"bunkwright/furniture/fit"
)

// A trial tries placements in one scene, as if every reading were exact.
type trial struct {
	s     *fit.Scene
	rank  *ranking
	tried int
}

// outcome is what is known of one placement.
type outcome struct {
	grades grades
	done   bool    // every question was asked
	not    refusal // why the bed cannot stand there at all
	short  float64 // and how much is lacking for it, mm; NaN where that is no length
	asked  int     // place of the question that does not fit where it clashes
}

// refusal is why the bed cannot stand somewhere.
type refusal int8

const (
	stands  refusal = iota
	unread          // a reading is missing without which it has no place
	doorway         // it would stand before a doorway
	clashes         // it runs into something, or another answer that has to fit does not
)

// grade asks a placement, cheap questions first, until it is surely behind another one; best may be nil.
func (t *trial) grade(at start, best grades) outcome {
	out := outcome{}
	if out.not, out.short = t.put(at); out.not != stands {
		return out
	}
	out.grades = t.rank.blank()
	for _, i := range t.rank.cheap {
		v, short := t.s.Verdict(t.rank.asks[i])
		out.grades[i] = gradeOf(v)
		if t.rank.must[i] && v == fit.DoesNotFit {
			out.not, out.short, out.asked = clashes, short, i
			return out
		}
		if best != nil && t.rank.worse(out.grades, best) {
			return out
		}
	}
	out.done = true
	return out
}

// like tells whether a placement has just these grades; it asks no further than to the first difference.
func (t *trial) like(at start, want grades) bool {
	if not, _ := t.put(at); not != stands {
		return false
	}
	for _, i := range t.rank.cheap {
		if v, _ := t.s.Verdict(t.rank.asks[i]); gradeOf(v) != want[i] {
			return false
		}
	}
	return true
}

// put moves the bed, and tells why it cannot stand there whatever the questions say.
func (t *trial) put(at start) (not refusal, short float64) {
	t.tried++
	t.s.Put(at.place)
	if !t.s.Stands {
		return unread, math.NaN()
	}
	if door, by := inDoorway(t.s); door >= 0 {
		return doorway, by
	}
	return stands, 0
}

// inDoorway returns the door whose opening the bed would stand before at its own wall, -1 for none, and by how much.
func inDoorway(s *fit.Scene) (door int, by float64) {
	door = -1
	lo, hi := reach(s)
	for i := range s.Survey.Layout.Doors {
		d := &s.Survey.Layout.Doors[i]
		if d.Wall != s.At.Index {
			continue
		}
		a, b := stretchOf(s, d.OnWallRefs, d.Wide)
		if over := min(hi, b) - max(lo, a); over > by {
			door, by = i, over
		}
	}
	return door, by
}

// reach returns the stretch of its wall that the bed takes.
func reach(s *fit.Scene) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, p := range s.Bed.Foot {
		at, _ := s.At.Along(s.ToRoom.Point(p.At(0)).XY())
		lo, hi = min(lo, at), max(hi, at)
	}
	return lo, hi
}
