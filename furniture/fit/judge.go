package fit

import (
	"math"
	"slices"

	"bunkwright/furniture/yardstick"
)

// judge turns what a question measured into an answer. It alone knows cover factors, forces, caps and words.
type judge struct {
	s *Scene
	q Question
	k float64
}

func (j judge) answer(f Finding, us []uncertainty, on doubt) Answer {
	a := Answer{ID: j.q.ID, Sentence: j.q.Sentence, Group: j.q.Group, Band: f.Band, Figures: f.Figures, Notes: f.Notes, Decides: -1}
	if j.q.Group == Safety {
		a.Caution = j.q.Caution
	}
	if f.Absent != "" {
		a.Verdict, a.Reason = NotApplicable, f.Absent
		return a
	}
	j.s.lines = j.s.lines[:0]
	for i := range f.Readings {
		from := len(j.s.lines)
		j.lines(i, &f.Readings[i], us[i].total)
		j.disagree(j.s.lines[from:], on[i])
	}
	a.Lines = slices.Clone(j.s.lines)
	j.settle(&a)
	if a.Decides >= 0 {
		i := a.Lines[a.Decides].reading
		a.Inputs = j.s.inputs(f.Readings[i], us[i])
		j.mention(&a, on[i])
	}
	a.Parts = a.about()
	return a
}

// lines holds one reading against each of its rows that means something at the job's places.
func (j judge) lines(i int, r *Reading, u float64) {
	for _, id := range r.Rows {
		row, force, place := j.s.row(id)
		if force == yardstick.NoForce {
			continue
		}
		j.s.lines = append(j.s.lines, Line{Row: r.held(row), Place: place, Force: force, At: r.At, Parts: r.Parts, reading: i})
		j.decide(&j.s.lines[len(j.s.lines)-1], r, u)
	}
}

func (j judge) decide(l *Line, r *Reading, u float64) {
	of := j.scope(l.Row, r)
	switch {
	case r.Skip != "":
		l.Verdict, l.Reason = NotApplicable, r.Skip
	case of.why != "":
		l.Verdict, l.Reason = NotApplicable, of.why
	case of.want != "":
		l.Verdict, l.Ask = CannotTell, of.want
	case r.Ask != "":
		l.Verdict, l.Ask = CannotTell, r.Ask
	case l.Row.Role == yardstick.RoleAttribute:
		j.decideConfirmed(l)
	case l.Row.Relation.Answer():
		j.decideYes(l, r)
	default:
		j.decideNumber(l, r, u)
	}
	if doubt := or(r.Doubt, of.doubt); doubt != "" && l.Verdict == DoesNotFit {
		l.Verdict, l.Reason = TooClose, doubt
	}
	if l.Force == yardstick.OutsideFigure && l.Verdict != NotApplicable {
		l.Verdict = None
	}
}

func (j judge) decideYes(l *Line, r *Reading) {
	l.Has, l.Value = true, 0
	if r.Yes {
		l.Value = 1
	}
	l.Verdict, l.Reason = Fits, r.Edge
	if l.Row.SpareOf(r.Yes) < 0 {
		l.Verdict = DoesNotFit
	}
	if r.Cap != "" && l.Verdict == Fits {
		l.Verdict, l.Reason = TooClose, r.Cap
	}
}

// decideConfirmed takes the maker's word: yes fits, no does not, unanswered cannot be told.
func (j judge) decideConfirmed(l *Line) {
	switch j.s.Job.Confirmed[l.Row.ID] {
	case "yes":
		l.Has, l.Value, l.Verdict, l.Reason = true, 1, Fits, "confirmed by the maker"
	case "no":
		l.Has, l.Verdict, l.Reason = true, DoesNotFit, "the maker says no"
	default:
		l.Verdict, l.Ask = CannotTell, j.s.confirmWords(l.Row)
	}
}

func (j judge) decideNumber(l *Line, r *Reading, u float64) {
	if math.IsNaN(r.Have) {
		l.Verdict, l.Ask = CannotTell, "a reading is missing"
		return
	}
	l.Has, l.Value, l.U = true, r.Have, u
	l.Spare, l.HasSpare = l.Row.Round(l.Row.Spare(r.Have)), true
	l.Verdict, l.Reason = verdictOf(l.Spare, u, j.k, l.Row.AtLimit(r.Have)), r.Edge
	if l.Verdict == TooClose && u == 0 {
		l.Reason = "equal to the limit"
	}
	if r.Cap != "" && l.Verdict == Fits {
		l.Verdict, l.Reason = TooClose, r.Cap
	}
}

// settle chooses the line that decides: the worst of the limits and needs, among equals the least spare over its uncertainty.
func (j judge) settle(a *Answer) {
	best := deciding(a.Lines)
	switch {
	case best >= 0:
		l := &a.Lines[best]
		a.Decides, a.Verdict, a.Force = best, l.Verdict, l.Force
		a.Has, a.Value, a.Unit = l.Has, l.Value, l.Row.Unit
		a.Spare, a.HasSpare, a.U, a.PlusMinus = l.Spare, l.HasSpare, l.U, j.k*l.U
		a.Reason, a.Ask = l.Reason, l.Ask
	case slices.ContainsFunc(a.Lines, func(l Line) bool { return l.Verdict != NotApplicable }):
		a.Verdict, a.Force = None, strongest(a.Lines)
	case len(a.Lines) > 0:
		a.Verdict, a.Reason = NotApplicable, a.Lines[0].Reason
	default:
		a.Verdict = None
	}
}

// deciding returns the place of the line that decides, -1 where none is judged.
func deciding(lines []Line) int {
	best := -1
	for i := range lines {
		l := &lines[i]
		if !l.Force.Judged() || l.Verdict == NotApplicable {
			continue
		}
		if best < 0 || l.before(&lines[best]) {
			best = i
		}
	}
	return best
}

func strongest(lines []Line) yardstick.Force {
	f := yardstick.NoForce
	for _, l := range lines {
		if l.Verdict != NotApplicable && l.Force > f {
			f = l.Force
		}
	}
	return f
}

func (l *Line) before(m *Line) bool {
	if l.Verdict != m.Verdict {
		return l.Verdict.Worse(m.Verdict)
	}
	return l.tightness() < m.tightness()
}

// tightness is spare over uncertainty; an answer by yes or no counts as spare 0 or -1.
func (l *Line) tightness() float64 {
	switch {
	case l.HasSpare:
		return l.Spare / (l.U + slack(l.Row.Unit))
	case l.Has && l.Verdict == DoesNotFit:
		return -1
	}
	return 0
}

// about collects what the answer is about: the parts of the line that decides, or of all lines.
func (a *Answer) about() []string {
	if a.Decides >= 0 {
		return a.Lines[a.Decides].Parts
	}
	var out []string
	for i := range a.Lines {
		for _, p := range a.Lines[i].Parts {
			if !slices.Contains(out, p) {
				out = append(out, p)
			}
		}
	}
	return out
}
