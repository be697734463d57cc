package fit

// Verdict asks one question as if every reading were exact, for its verdict and spare alone: what Nominal says, without the words. hasSpare
// is false where the line that decides carries no number.
func (s *Scene) Verdict(q Question) (v Verdict, spare float64, hasSpare bool) {
	f := q.Measure(s)
	if f.Absent != "" {
		return NotApplicable, 0, false
	}
	j := judge{s, q, q.cover()}
	s.lines = s.lines[:0]
	for i := range f.Readings {
		j.lines(i, &f.Readings[i], 0)
	}
	if best := deciding(s.lines); best >= 0 {
		l := &s.lines[best]
		return l.Verdict, l.Spare, l.HasSpare
	}
	for i := range s.lines {
		if s.lines[i].Verdict != NotApplicable {
			return None, 0, false
		}
	}
	if len(s.lines) > 0 {
		return NotApplicable, 0, false
	}
	return None, 0, false
}
