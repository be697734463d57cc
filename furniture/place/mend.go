package place

import (
	"cmp"
	"context"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
)

// How many remedies of an answer are looked for, how many pairs of changes are tried for it, and after how many values that make it fit but
// spoil something else a driver is given up: our own figures, which only keep the time short.
const (
	mostRemedies = 5
	mostPairs    = 24
	enoughPairs  = 2 // single changes that spare the search for pairs
	givenUp      = 6
)

// Mend tries the changes that a question proposes, single ones first and then pairs, and returns those that make its answer fit without any
// other answer coming out worse, the least change of each kind. Answers are those of the scene, with how sure they are. An answer that fits,
// or waits for a reading, has no remedies: asking is the remedy. The scene stays as it is.
func Mend(ctx context.Context, s *fit.Scene, answers []fit.Answer, id string) ([]fit.Remedy, error) {
	m, err := newMender(ctx, s, answers)
	if err != nil {
		return nil, err
	}
	return m.mend(id)
}

// MendAll fills in the remedies of all answers that do not fit or are too close to call.
func MendAll(ctx context.Context, s *fit.Scene, answers []fit.Answer) error {
	m, err := newMender(ctx, s, answers)
	if err != nil {
		return err
	}
	for i := range answers {
		if answers[i].Remedies, err = m.mend(answers[i].ID); err != nil {
			return err
		}
	}
	return nil
}

// A mender tries changes in a scene of its own.
type mender struct {
	ctx    context.Context
	s      *fit.Scene
	job    *job.Job
	asked  []fit.Question
	before []fit.Answer  // in the order of asked
	plain  []fit.Verdict // the same as if every reading were exact
	stood  bool          // the bed has a place before anything is changed
}

func newMender(ctx context.Context, s *fit.Scene, answers []fit.Answer) (*mender, error) {
	own, err := fit.NewScene(s.Job)
	if err != nil {
		return nil, err
	}
	m := &mender{ctx: ctx, s: own, job: s.Job, before: answers, stood: own.Stands}
	for i := range answers {
		q, _ := fit.Find(answers[i].ID)
		v, _ := own.Verdict(q)
		m.asked, m.plain = append(m.asked, q), append(m.plain, v)
	}
	return m, nil
}

// tried is some changes that were made one after the other.
type tried struct {
	job     *job.Job
	changes []fit.Change
	spoils  []int // places of the questions that come out worse
}

// mend looks for the remedies of one answer.
func (m *mender) mend(id string) ([]fit.Remedy, error) {
	i := slices.IndexFunc(m.before, func(a fit.Answer) bool { return a.ID == id })
	if i < 0 || m.before[i].Verdict != fit.DoesNotFit && m.before[i].Verdict != fit.TooClose {
		return nil, nil
	}
	m.back(m.job)
	var out []fit.Remedy
	var partly []tried
	for _, d := range m.asked[i].Propose {
		r, spoiled := m.drive(i, tried{job: m.job}, d, i)
		if r != nil {
			out = append(out, *r)
		} else if spoiled != nil {
			partly = append(partly, *spoiled)
		}
		if len(out) == mostRemedies || m.ctx.Err() != nil {
			return out, m.ctx.Err()
		}
	}
	if len(out) < enoughPairs {
		out = append(out, m.pairs(i, partly)...)
	}
	return out[:min(len(out), mostRemedies)], m.ctx.Err()
}

// pairs puts right what single changes spoil, with one change more.
func (m *mender) pairs(i int, partly []tried) []fit.Remedy {
	var out []fit.Remedy
	n := 0
	for _, t := range partly {
		if len(t.spoils) > 1 {
			continue
		}
		for _, d := range m.asked[t.spoils[0]].Propose {
			if n++; n > mostPairs || m.ctx.Err() != nil {
				return out
			}
			if d == t.changes[0].Driver {
				continue
			}
			m.back(t.job)
			if r, _ := m.drive(i, t, d, t.spoils[0]); r != nil {
				out = append(out, *r)
				break
			}
		}
	}
	return out
}

// back gives the scene a job that was tried before, so that drivers start from there.
func (m *mender) back(j *job.Job) { m.s.Change(j) }

// drive tries the values of a driver on top of what was changed before, the least first, until the answer i and the one that is put right both
// fit and nothing else is worse. Where none does, it returns the first that makes them fit but spoils something.
func (m *mender) drive(i int, from tried, d fit.Driver, right int) (*fit.Remedy, *tried) {
	var spoiled *tried
	bad := 0
	for _, a := range attempts(m.s, d) {
		if m.ctx.Err() != nil || bad > givenUp && !a.moves {
			break
		}
		to, change := edited(from.job, a)
		if len(change.Settings) == 0 {
			continue
		}
		m.try(to, a.moves)
		if m.s.Bed == nil || m.stood && !m.s.Stands || !m.fits(i) || right != i && !m.holds(right) {
			continue
		}
		t := tried{to, append(slices.Clone(from.changes), change), m.spoils()}
		if len(t.spoils) == 0 {
			if r, spoils := m.sure(i, t); r != nil {
				m.back(from.job)
				return r, nil
			} else if len(spoils) > 0 {
				t.spoils = spoils
			}
		}
		if bad++; spoiled == nil && len(t.spoils) > 0 && m.s.Ask(m.asked[i]).Verdict == fit.Fits {
			spoiled = &t
		}
	}
	m.back(from.job)
	return nil, spoiled
}

// try puts a changed job on trial.
func (m *mender) try(j *job.Job, moves bool) {
	if moves {
		m.s.Put(j.Place)
		return
	}
	m.s.Change(j)
}

// fits tells whether an answer fits as if every reading were exact.
func (m *mender) fits(i int) bool {
	v, _ := m.s.Verdict(m.asked[i])
	return v == fit.Fits
}

// holds tells whether an answer is no worse than before anything was changed.
func (m *mender) holds(i int) bool {
	v, _ := m.s.Verdict(m.asked[i])
	return !v.Worse(m.plain[i])
}

// spoils lists the answers that come out worse as if every reading were exact, two at most: more than one is more than a change puts right.
func (m *mender) spoils() (out []int) {
	for k := range m.asked {
		if !m.holds(k) {
			if out = append(out, k); len(out) > 1 {
				break
			}
		}
	}
	return out
}

// sure asks everything again with how sure it is. It returns the remedy where the answer fits beyond doubt and none is worse than it was, else
// the answers that are.
func (m *mender) sure(i int, t tried) (*fit.Remedy, []int) {
	after := m.s.Ask(m.asked[i])
	if after.Verdict != fit.Fits {
		return nil, nil
	}
	all, err := m.s.AnswersTo(m.ctx, m.asked)
	if err != nil {
		return nil, nil
	}
	var spoils []int
	r := &fit.Remedy{Answer: m.asked[i].ID, Changes: t.changes, After: after}
	for k := range all {
		b := &m.before[k]
		switch {
		case all[k].Verdict.Worse(b.Verdict) && b.Verdict != fit.NotApplicable && b.Verdict != fit.None || worseThanNone(&all[k], b):
			spoils = append(spoils, k)
		case k != i && all[k].HasSpare && b.HasSpare && all[k].Unit == b.Unit && all[k].Spare < b.Spare-sameSpare:
			r.Costs = append(r.Costs, fit.Cost{ID: b.ID, Spare: all[k].Spare, Before: b.Spare, Answer: all[k]})
		}
	}
	if len(spoils) > 0 {
		return nil, spoils
	}
	slices.SortStableFunc(r.Costs, func(a, b fit.Cost) int { return cmp.Compare(a.Spare, b.Spare) })
	return r, nil
}

// sameSpare is what two spares may differ by that are one, in the unit of the answer: rounding.
const sameSpare = 1e-6

// worseThanNone tells whether an answer that did not apply, or had nothing to be measured against, now asks for something to be done.
func worseThanNone(now, before *fit.Answer) bool {
	return (before.Verdict == fit.NotApplicable || before.Verdict == fit.None) && now.Verdict.Open()
}
