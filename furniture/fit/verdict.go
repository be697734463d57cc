package fit

import "bunkwright/furniture/yardstick"

// Verdict asks one question as if every reading were exact, for its verdict alone: what Nominal says, without the words. Where it does not
// fit, short is a length in mm that is lacking, at most what Nominal has; 0 where no length is.
func (s *Scene) Verdict(q Question) (v Verdict, short float64) {
	s.brief = true
	f := q.Measure(s)
	s.brief = false
	if f.Absent != "" {
		return NotApplicable, 0
	}
	j := judge{s, q, q.cover()}
	s.lines = s.lines[:0]
	for i := range f.Readings {
		j.lines(i, &f.Readings[i], 0)
	}
	if best := deciding(s.lines); best >= 0 {
		l := &s.lines[best]
		if l.HasSpare && l.Row.Unit == yardstick.MM {
			short = max(0, -l.Spare)
		}
		return l.Verdict, short
	}
	for i := range s.lines {
		if s.lines[i].Verdict != NotApplicable {
			return None, 0
		}
	}
	if len(s.lines) > 0 {
		return NotApplicable, 0
	}
	return None, 0
}

// Judges tells whether anything that a question is held against is judged at the job's places: else it never fits or does not fit.
func (s *Scene) Judges(q Question) bool {
	for _, row := range yardstick.OfQuestion(q.ID) {
		if _, force, _ := s.row(row.ID); force.Judged() {
			return true
		}
	}
	return false
}

// idle tells whether a measurement can be left out: only a verdict is asked for, and none of the rows it is held against is judged here.
func (s *Scene) idle(rows []string) bool {
	if !s.brief {
		return false
	}
	for _, id := range rows {
		if _, force, _ := s.row(id); force.Judged() {
			return false
		}
	}
	return true
}

// enough is a distance at which the need of a row is met beyond doubt, mm: twice it, and never less than the width of a hand.
func (s *Scene) enough(id string) float64 {
	row, _, _ := s.row(id)
	return max(2*row.Need[0], hand)
}

// hand is wider than any board is thick and any handle stands out, mm.
const hand = 100
