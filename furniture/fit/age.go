package fit

import (
	"math"
	"strings"

	"bunkwright/furniture/job"
)

var oldEnough = Question{
	ID:       "old-enough",
	Sentence: "Is everyone who sleeps on top old enough?",
	Group:    Safety,
	Why:      "A small child does not climb down safely half asleep, and no rail holds one who climbs over it.",
	How:      "Age of the youngest sleeper of the upper bed, in whole years rounded down.",
	Caution:  "Places differ in the age they ask for. Visiting children count too, and a label says so to those who do not know.",
	OfBed:    true,
	Measure:  func(s *Scene) Finding { return s.oldEnough() },
}

var ageRows = []string{"us-age-upper", "fr-age-upper", "ca-age-upper", "asnzs-age-upper", "qld-age-upper"}

// grownUp stands for the age, in years, of a grown-up who told none: the sizes of adults begin there.
const grownUp = 18

func (s *Scene) oldEnough() Finding {
	who, keys := s.sleepersOf("upper")
	if len(who) == 0 {
		return Finding{Readings: []Reading{ask("top.youngest", "who sleeps in the upper bed?", ageRows...)}}
	}
	var f Finding
	youngest := -1
	for i, p := range who {
		switch {
		case ageOf(p) <= 0:
			f.Readings = append(f.Readings, ask("top."+strings.TrimPrefix(keys[i], "sleeper."), "how old is "+called(p)+"?", ageRows...))
		case youngest < 0 || ageOf(p) < ageOf(who[youngest]):
			youngest = i
		}
	}
	if youngest >= 0 {
		p := who[youngest]
		f.Readings = append(f.Readings, Reading{At: "top.youngest", Rows: ageRows, Have: math.Floor(ageOf(p)), Edge: called(p),
			Parts: []string{"mattress.upper"}, Uses: []Use{{keys[youngest] + ".age", p.Age, "year", "told"}}})
	}
	return f
}

// ageOf returns an age in years, 0 where it was not told.
func ageOf(p job.Sleeper) float64 {
	if p.Age <= 0 && p.Grown() {
		return grownUp
	}
	return p.Age
}
