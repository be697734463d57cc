package fit

import (
	"fmt"
	"hash/fnv"
)

// accept marks an answer that the maker lives with, as long as the inputs of the answer are what they were when it was accepted.
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

// Print returns a short print of what went into an answer: it changes when any input does.
func (a Answer) Print() string {
	h := fnv.New32a()
	fmt.Fprintf(h, "%s\n", a.Verdict)
	for _, in := range a.Inputs {
		fmt.Fprintf(h, "%s %.6f %s\n", in.Key, in.Value, in.How)
	}
	return fmt.Sprintf("%08x", h.Sum32())
}
