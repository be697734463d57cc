package fit

import (
	"context"

	"bunkwright/furniture/job"
)

// All returns the questions in table order.
func All() []Question { return questions }

// Find returns a question by its id.
func Find(id string) (Question, bool) {
	for _, q := range questions {
		if q.ID == id {
			return q, true
		}
	}
	return Question{}, false
}

var questions = []Question{
	sitUpTop,
	sitUpBottom,
	lieAndTurn,
	oldEnough,
	railHeight,
	railSides,
	railEnds,
	railOpenings,
	endHeight,
	endOpenings,
	ladderSteps,
	climbSteps,
	slatGaps,
	mattressFits,
	nothingCatches,
	marks,
	stands,
	wallGap,
	doorsSwing,
	ladderLanding,
	walkway,
	drawersSlide,
	drawersOpen,
	climbSpace,
	makeTheBed,
	seeThem,
	wayOut,
	windowFall,
	windowCords,
	fanAndLights,
	heat,
	air,
	power,
	smokeAlarm,
	roomHeight,
	studsHit,
	screwLength,
	shelfHeights,
}

// Answers asks every question of a job, in table order, with how sure each answer is.
func Answers(j *job.Job) (*Scene, []Answer, error) {
	s, err := NewScene(j)
	if err != nil {
		return nil, nil, err
	}
	return s, s.Answers(), nil
}

// Answers asks every question of the scene, with how sure each answer is.
func (s *Scene) Answers() []Answer { return s.ask(questions) }

// AnswersTo asks some questions, with how sure each answer is. It gives up with ctx's error where that ends first.
func (s *Scene) AnswersTo(ctx context.Context, qs []Question) ([]Answer, error) {
	s.ctx = ctx
	out := s.ask(qs)
	s.ctx = nil
	return out, ctx.Err()
}

// Ask asks one question, with how sure the answer is.
func (s *Scene) Ask(q Question) Answer { return s.ask([]Question{q})[0] }

func (s *Scene) ask(qs []Question) []Answer {
	fs := make([]Finding, len(qs))
	for k, q := range qs {
		fs[k] = q.Measure(s)
	}
	us := s.uncertainties(qs, fs)
	on := s.doubts(qs, fs, us)
	out := make([]Answer, len(qs))
	for k, q := range qs {
		out[k] = s.judged(q, fs[k], us[k], on[k])
	}
	return out
}

// Nominal asks one question as if every reading were exact. What is asked of the bed alone is asked once, wherever it is put.
func (s *Scene) Nominal(q Question) Answer {
	if a, ok := s.ofBed[q.ID]; ok {
		return a
	}
	f := q.Measure(s)
	a := s.judged(q, f, make([]uncertainty, len(f.Readings)), make(doubt, len(f.Readings)))
	if q.OfBed {
		s.ofBed[q.ID] = a
	}
	return a
}

func (s *Scene) judged(q Question, f Finding, us []uncertainty, on doubt) Answer {
	a := judge{s, q, q.cover()}.answer(f, us, on)
	if f.finish != nil {
		f.finish(&a)
	}
	s.accept(&a)
	return a
}
