package fit

import (
	"fmt"

	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// Problems lists what can be read but cannot be, the bed's reach in the room and what is accepted included.
func (s *Scene) Problems() []job.Problem {
	out := job.Problems(s.Job, s.Survey)
	if s.BedErr != nil {
		out = append(out, job.SizeProblems(s.Job, s.BedErr)...)
	}
	if over := s.outside(); over > 1 {
		out = append(out, job.Problem{
			Key:   "place.along",
			Text:  fmt.Sprintf("the bed reaches %s out of the room", s.size(over)),
			Right: "another wall, another place along it, or a shorter bed",
		})
	}
	for i, a := range s.Job.Accepted {
		if _, ok := Find(a.Question); !ok && a.Question != "" {
			out = append(out, job.Problem{Key: fmt.Sprintf("accepted.%s.question", keyOr(a.Question, i)), Text: fmt.Sprintf("there is no question %q", a.Question), Right: "the id of a question, such as sit-up-top"})
		}
	}
	return out
}

// outside returns how far the bed's outline reaches out of the room, in mm; 0 where it stands inside, or stands nowhere.
func (s *Scene) outside() float64 {
	if !s.Stands {
		return 0
	}
	most := 0.0
	for _, p := range s.foot() {
		if !s.Outline.Contains(p) {
			most = max(most, s.Outline.Distance(p))
		}
	}
	return most
}

// size writes a length in the job's unit.
func (s *Scene) size(mm float64) string {
	return length.Format(length.FromMM(mm), length.Style{Unit: s.unit()})
}
