package place

import (
	"context"

	"bunkwright/furniture/fit"
)

// placed lists the questions that hang on where the bed stands.
func placed() []fit.Question {
	var out []fit.Question
	for _, q := range fit.All() {
		if q.Placed() {
			out = append(out, q)
		}
	}
	return out
}

// settle works out how sure a spot's answers are where it stands first. Where that makes one of them worse than it was, the middle of the
// stretch is looked at too and taken where it is better.
func (t *trial) settle(ctx context.Context, l *lane, s *Spot, o Options) error {
	at := start{s.At, s.Place}
	if err := t.sure(ctx, s, at); err != nil {
		return err
	}
	mid := l.middle(t.s, l.startAt(t.s, s.From), l.startAt(t.s, s.To), o.Step.MM())
	if !t.lost(s) || mid.at == at.at {
		return nil
	}
	other := *s
	if err := t.sure(ctx, &other, mid); err != nil {
		return err
	}
	other.Comfort = comfortAt(t.s, &other)
	if t.rank.less(&other, s) < 0 {
		*s = other
	}
	return nil
}

// lost tells whether the plus-or-minus took a verdict away from a spot.
func (t *trial) lost(s *Spot) bool {
	for i, g := range s.nominal {
		if s.grades[i] < g {
			return true
		}
	}
	return false
}

// sure asks everything at one placement of a spot, with how sure it is.
func (t *trial) sure(ctx context.Context, s *Spot, at start) (err error) {
	t.s.Put(at.place)
	s.Place, s.At = at.place, at.at
	if s.Answers, err = t.s.AnswersTo(ctx, placed()); err != nil {
		return err
	}
	g := t.rank.blank()
	for i, c := range t.rank.list {
		for k := range s.Answers {
			if a := &s.Answers[k]; a.ID == c.ID {
				g[i] = gradeOf(a.Verdict)
			}
		}
	}
	s.grades, s.Asked = g, nil
	for i, c := range t.rank.list {
		if !c.Measure {
			a, _ := s.Answer(t.rank.list[i].ID)
			s.Asked = append(s.Asked, Asked{c.ID, a.Verdict})
		}
	}
	return nil
}
