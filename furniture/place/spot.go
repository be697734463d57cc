package place

import (
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/geom"
)

// A Spot is a stretch of one wall along which the bed can be slid without any verdict changing.
type Spot struct {
	Wall     string
	Turn     job.Turn
	Mirror   bool
	Head     string        // letter of the corner that the upper pillow is towards, "" where its length does not run along the wall
	Place    job.Placement // where it stands best within the stretch
	At       float64       // near side of the bed there, mm from the wall's first corner
	From, To float64       // the same where it is slid to either end
	Span     float64       // how much of the wall the bed takes, mm
	Asked    []Asked       // the questions that spots are ranked by, as if every reading were exact, in the order that counts
	Answers  []fit.Answer  // how it stands at Place, with how sure that is, in table order; nil until that is worked out
	Comfort  Comfort       // at Place
	Rank     int           // 1 is the best; 0 while the search goes on

	lane    int
	pillows [2]geom.V2
	grades  grades
	nominal grades // as if every reading were exact
}

// Asked is one question and what became of it.
type Asked struct {
	ID      string
	Verdict fit.Verdict
}

// Free returns the stretch of wall that the bed may take, slid from end to end, in mm.
func (s *Spot) Free() float64 { return s.To - s.From + s.Span }

// Slides returns how far the bed can be slid, in mm.
func (s *Spot) Slides() float64 { return s.To - s.From }

// oneChoice is how near two stretches of one way to stand at a wall are that are one choice to whoever slides a bed, mm.
const oneChoice = 100

// nearly tells whether another spot is the same choice: the same way to stand at the same wall, with hardly anything between; or the same place
// reached from the other wall of a corner.
func (s *Spot) nearly(o Spot) bool {
	if s.lane == o.lane {
		return s.From < o.To+oneChoice && o.From < s.To+oneChoice
	}
	return s.Turn != o.Turn && s.Mirror == o.Mirror && s.pillows[0].Dist(o.pillows[0]) < oneChoice && s.pillows[1].Dist(o.pillows[1]) < oneChoice
}

// Worst returns the question that ranks the spot where it is: the first in the order that counts that has the worst verdict of all. ok is
// false where everything fits.
func (s *Spot) Worst() (worst Asked, ok bool) {
	worst.Verdict = fit.Fits
	for _, a := range s.Asked {
		if gradeOf(a.Verdict) < gradeOf(worst.Verdict) && a.Verdict.Worse(worst.Verdict) {
			worst, ok = a, true
		}
	}
	return worst, ok
}

// Answer returns one of the answers of the spot.
func (s *Spot) Answer(id string) (a fit.Answer, ok bool) {
	for i := range s.Answers {
		if s.Answers[i].ID == id {
			return s.Answers[i], true
		}
	}
	return a, false
}

// head returns the letter of the corner that the upper pillow is towards.
func (l *lane) head(s *fit.Scene) string {
	letters := []rune(s.Walls[l.wall].Key)
	right := s.Bed.Upper.HeadAtRight != l.mirror
	switch l.turn {
	case job.AgainstSide:
	case job.AgainstFront:
		right = !right
	default:
		return ""
	}
	if right {
		return string(letters[1])
	}
	return string(letters[0])
}
