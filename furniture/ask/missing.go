package ask

import (
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/room/survey"
)

// Missing is something that nobody read yet.
type Missing struct {
	Key     string   // the measure to take, "" where an answer only says it in words
	Text    string   // "diagonal A to C not read: corners taken as square", "how far is the sill from the floor?"
	Answers []string // ids of the answers that cannot be told without it
}

// WhatIsMissing lists the gaps of the survey, then what answers ask of the room, in their order and each once.
func WhatIsMissing(s *survey.Survey, answers []fit.Answer) []Missing {
	var out []Missing
	for _, g := range s.Gaps {
		out = append(out, Missing{Key: g.Key, Text: g.Text})
	}
	for i := range answers {
		a := &answers[i]
		if a.Verdict != fit.CannotTell || a.Ask == "" || confirmed(a) {
			continue
		}
		k := slices.IndexFunc(out, func(m Missing) bool { return m.Text == a.Ask })
		if k < 0 {
			k = len(out)
			out = append(out, Missing{Text: a.Ask})
		}
		out[k].Answers = append(out[k].Answers, a.ID)
	}
	return out
}

// confirmed tells whether an answer waits for the maker's word, which nobody can measure.
func confirmed(a *fit.Answer) bool {
	return a.Decides >= 0 && a.Lines[a.Decides].Row.Role == "attribute"
}
