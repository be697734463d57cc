package survey

import (
	"math"

	"bunkwright/room/length"
	"bunkwright/room/misread"
)

// State says how one reading stands among the others.
type State string

// The states, from the best.
const (
	Agrees    State = "agrees"    // other readings watch it, and agree
	Believed  State = "believed"  // only what is taken for granted watches it
	Unwatched State = "unwatched" // nothing would show a slip in it
	Doubtful  State = "doubtful"  // one of several that cannot be told apart is off
	Wrong     State = "wrong"     // it is off, and the room was worked out without it
)

// A Standing is what is known of one reading.
type Standing struct {
	State      State
	Conflict   int             // the first conflict it is a suspect of, an index into Survey.Conflicts; -1: none
	Off        float64         // how far it is off, if it alone is, mm; 0 without a conflict
	Causes     []misread.Cause // what that may come from, the likeliest first
	Redundancy float64         // share of a slip that shows: 0 nobody watches, 1 the reading is not needed
	Smallest   float64         // the smallest slip that would be noticed, mm (see Checks); +Inf where none would
}

// Standing tells how a source stands among the others. What was taken for granted is Agrees without a conflict.
func (s *Survey) Standing(source int) Standing {
	c := s.found.Checks[source]
	out := Standing{State: Agrees, Conflict: -1, Redundancy: c.Redundancy, Smallest: c.Smallest}
	switch {
	case s.Sources[source].Index < 0:
	case c.Redundancy <= watched:
		out.State, out.Smallest = Unwatched, math.Inf(1)
	case !s.found.Watched[source]:
		out.State = Believed
	}
	for i, conflict := range s.Conflicts {
		for _, one := range conflict.Suspects {
			if one.Source == source && out.Conflict < 0 {
				out.State, out.Conflict, out.Off, out.Causes = Doubtful, i, one.Off, one.Causes
			}
		}
	}
	if out.Conflict >= 0 && s.Conflicts[out.Conflict].Found() {
		out.State = Wrong
	}
	return out
}

// Questions asks after the causes of a doubt, the likeliest first: "read as 9' 0" instead of 10' 0"? A foot dropped or added?"
func (st Standing) Questions(style length.Style) []string {
	var out []string
	for _, c := range st.Causes {
		out = append(out, c.Question(style))
	}
	return out
}

// Shift is how far a corner would move, mm.
type Shift struct {
	Corner string
	X, Y   float64
}

// IfOff returns how far the corners would move if a reading were off by so many mm and nobody noticed.
func (s *Survey) IfOff(source int, by float64) []Shift {
	var out []Shift
	for i, letter := range []rune(s.Room.Outline) {
		out = append(out, Shift{string(letter), by * s.moves(s.Layout.X[i], source), by * s.moves(s.Layout.Y[i], source)})
	}
	return out
}

// moves is how far a quantity moves with a reading, one that is set aside as if it were back.
func (s *Survey) moves(r Ref, source int) float64 {
	if r == 0 {
		return 0
	}
	return s.ByReading([]Term{{int(r - 1), 1}}, nil)[source]
}
