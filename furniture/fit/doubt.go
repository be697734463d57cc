package fit

import (
	"math"

	"bunkwright/room/length"
	"bunkwright/room/survey"
)

// doubt names, for every reading of a question, the first conflict of the room's readings that it hangs on: its place in the list of the survey
// plus one, 0 for none.
type doubt []int

// doubts finds the readings that hang on readings which do not agree: those that would come out otherwise if one of the suspects is what is
// off, a yes or no too, and the nearest of several things.
func (s *Scene) doubts(qs []Question, fs []Finding, us [][]uncertainty) []doubt {
	out := make([]doubt, len(qs))
	for k := range out {
		out[k] = make(doubt, len(fs[k].Readings))
	}
	for i, c := range s.Survey.Conflicts {
		for one := range c.Suspects {
			other := s.measuredIf(qs, c, one)
			for k, f := range fs {
				for r := range f.Readings {
					if out[k][r] == 0 && differs(f, other[k], r, us[k][r].total) {
						out[k][r] = i + 1
					}
				}
			}
		}
	}
	return out
}

// measuredIf measures the questions as if one suspect of a conflict were what is off, or, of one that is known to be, as if it were right.
func (s *Scene) measuredIf(qs []Question, c survey.Conflict, suspect int) []Finding {
	held := s.Survey.X
	s.Survey.X = s.Survey.Otherwise(c.Suspects[suspect])
	s.forget()
	s.settle()
	out := make([]Finding, len(qs))
	for k, q := range qs {
		out[k] = q.Measure(s)
	}
	s.Survey.X = held
	s.forget()
	s.settle()
	return out
}

// idle is what a slip may move an answer by, in standard uncertainties, without the answer hanging on it (our own figure).
const idle = 0.1

// differs tells whether a reading, of standard uncertainty u, came out otherwise the second time.
func differs(f, g Finding, i int, u float64) bool {
	r := &f.Readings[i]
	for k := range g.Readings {
		if o := &g.Readings[k]; o.At == r.At {
			return math.Abs(o.Have-r.Have) > max(nothing, idle*u) || o.Yes != r.Yes || (o.Ask == "") != (r.Ask == "") || (o.Skip == "") != (r.Skip == "")
		}
	}
	return true
}

// disagree caps the lines of a reading that hangs on readings which do not agree.
func (j judge) disagree(lines []Line, conflict int) {
	if conflict == 0 {
		return
	}
	for i := range lines {
		if lines[i].Verdict == Fits {
			lines[i].Verdict, lines[i].Reason = TooClose, j.s.conflictWords(conflict)
		}
	}
}

// mention notes the conflict that an answer hangs on, in words where it is no better than too close anyhow.
func (j judge) mention(a *Answer, conflict int) {
	a.Doubt = conflict
	if conflict > 0 && a.Reason != j.s.conflictWords(conflict) {
		a.Notes = append(a.Notes, j.s.conflictWords(conflict))
	}
}

func (s *Scene) conflictWords(conflict int) string {
	return s.Survey.Say(s.Survey.Conflicts[conflict-1], length.Style{Unit: s.unit()})
}
