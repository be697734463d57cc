package fit

import (
	"fmt"
	"hash/fnv"
	"math"
)

// accept marks an answer that the maker lives with, as long as what it was judged by is what it was when it was accepted.
func (s *Scene) accept(a *Answer) {
	for _, x := range s.Job.Accepted {
		if x.Question != a.ID || !a.Verdict.Open() {
			continue
		}
		if x.Inputs == "" || x.Inputs == a.Print() {
			a.Accepted = x.Reason
			return
		}
		a.Notes = append(a.Notes, fmt.Sprintf("was accepted (%s); what went into it has changed since", x.Reason))
	}
}

// Print returns a short print of what an answer is judged by, every limit and need of it: it changes when an input moves any of them,
// or brings another one. How sure the inputs are is left out, so that an answer has one print while the bed is dragged and after.
func (a Answer) Print() string {
	h := fnv.New32a()
	for i := range a.Lines {
		if l := &a.Lines[i]; l.Force.Judged() && l.Verdict != NotApplicable {
			fmt.Fprintf(h, "%s %s %t %g %s\n", l.Row.ID, l.At, l.Has, math.Round(l.Value*1000)+0, l.Ask)
		}
	}
	return fmt.Sprintf("%08x", h.Sum32())
}
