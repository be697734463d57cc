package ui

import (
	"context"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
	"bunkwright/ui/session"
)

// live is the open job as the window shows it: its scene and its answers. While the hand moves the answers are nominal; how sure they are
// follows from the background.
type live struct {
	session  *session.Session
	scene    *fit.Scene
	answers  []fit.Answer
	sure     bool
	err      error // the job cannot be put into numbers
	of       *job.Job
	watchers []func()
}

func newLive(s *session.Session) *live {
	l := &live{session: s}
	s.Watch(l.follow)
	return l
}

// watch has f called whenever scene or answers differ.
func (l *live) watch(f func()) { l.watchers = append(l.watchers, f) }

func (l *live) tell() {
	for _, f := range l.watchers {
		f()
	}
}

// follow takes over what the session holds now.
func (l *live) follow() {
	j := l.session.Job()
	if j == l.of {
		l.tell()
		return
	}
	l.of, l.scene, l.answers, l.sure, l.err = j, nil, nil, false, nil
	if j == nil {
		l.tell()
		return
	}
	if l.scene, l.err = fit.NewScene(j); l.err == nil {
		l.answers = nominal(l.scene)
		l.ascertain()
	}
	l.tell()
}

// put shows the bed somewhere else without making it an edit.
func (l *live) put(p job.Placement) {
	l.session.Cancel(sureRun)
	l.scene.Put(p)
	l.answers, l.sure = nominal(l.scene), false
	l.tell()
}

// try shows another job without making it an edit. One whose bed cannot be built is not shown; err says why.
func (l *live) try(j *job.Job) error {
	s, err := fit.NewScene(j)
	if err != nil {
		return err
	}
	if s.Bed == nil {
		return s.BedErr
	}
	l.session.Cancel(sureRun)
	l.scene, l.answers, l.sure = s, nominal(s), false
	l.tell()
	return nil
}

// untry shows the job again as it is.
func (l *live) untry() {
	l.of = nil
	l.follow()
}

// back shows the bed again where the job has it.
func (l *live) back() {
	if l.scene != nil && l.of != nil && l.scene.Job.Place != l.of.Place {
		l.put(l.of.Place)
		l.ascertain()
	}
}

const sureRun = "answers"

// ascertain works out in the background how sure each answer is.
func (l *live) ascertain() {
	l.session.Run(sureRun, func(ctx context.Context, j *job.Job) func() {
		_, answers, err := fit.Answers(j)
		if err != nil || ctx.Err() != nil {
			return nil
		}
		return func() {
			if l.of == j {
				l.answers, l.sure = answers, true
				l.tell()
			}
		}
	})
}

func nominal(s *fit.Scene) []fit.Answer {
	var out []fit.Answer
	for _, q := range fit.All() {
		out = append(out, s.Nominal(q))
	}
	return out
}

// unit is what lengths are shown in.
func (l *live) unit() length.Unit {
	if l.of != nil && l.of.Unit == "mm" {
		return length.Millimetres
	}
	return length.Inches
}

// worst returns the worst verdict that is open among some groups of questions; ok is false where all is settled.
func (l *live) worst(of func(fit.Answer) bool) (worst fit.Verdict, ok bool) {
	for _, a := range l.answers {
		if a.Verdict.Open() && a.Accepted == "" && of(a) && (!ok || a.Verdict.Worse(worst)) {
			worst, ok = a.Verdict, true
		}
	}
	return worst, ok
}

// shows and say write a length as people read it, in the unit of the job.
func (l *live) shows(x length.Length) string { return length.Format(x, length.Style{Unit: l.unit()}) }

func (l *live) say(mm float64) string { return l.shows(length.FromMM(mm)) }
