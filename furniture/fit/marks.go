package fit

import (
	"fmt"
	"math"
	"strings"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

var marks = Question{
	ID:       "marks",
	Sentence: "Does the bed carry its marks, and come apart only with a tool?",
	Group:    Build,
	Why:      "Whoever buys the next mattress or lets a small guest sleep on top has not read the plan.",
	How:      "What the maker confirms. The text for a label is printed beside it.",
	OfBed:    true,
	Measure:  func(s *Scene) Finding { return s.marks() },
}

func (s *Scene) marks() Finding {
	f := Finding{Readings: s.confirmations("marks")}
	if s.Bed != nil {
		f.Figures = s.thickestMattress()
		f.Notes = []string{"label: " + s.label(f.Figures), "the wording is this project's own: the label text that laws give was not read"}
	}
	return f
}

// label words what to write inside an upper end, in the job's unit.
func (s *Scene) label(thickest []Figure) string {
	var say []string
	if age := s.ageAsked(); age > 0 {
		say = append(say, fmt.Sprintf("No child under %g years on the upper bed.", age))
	}
	u := s.Bed.Sizes.Upper
	size := fmt.Sprintf("Mattress %s x %s", s.words(u.MattressLong.MM(), length.Nearest), s.words(u.MattressWide.MM(), length.Nearest))
	thick := math.Inf(1)
	for _, f := range thickest {
		thick = min(thick, f.Value)
	}
	if !math.IsInf(thick, 1) {
		size += fmt.Sprintf(", at most %s thick with its topper", s.words(thick, length.TowardZero))
	}
	return strings.Join(append(say, size+".", "Keep all rails on. Use the ladder or the climbing end to get up and down."), " ")
}

// ageAsked is the highest age that the texts deciding at the job's places ask of the upper sleeper, 0 where they ask for none.
func (s *Scene) ageAsked() float64 {
	age := 0.0
	for _, id := range ageRows {
		if row, force, _ := s.row(id); force == yardstick.Limit {
			age = max(age, row.Need[0])
		}
	}
	return age
}
