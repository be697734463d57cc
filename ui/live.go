package ui

import (
	"context"
	"time"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
	"bunkwright/ui/control"
	"bunkwright/ui/session"
)

// live is the open job as the window shows it: its scene and its answers. While the hand moves the answers are nominal and the drawings are
// told of them first, columns of words a frame later; how sure the answers are follows from the background once the hand rests.
type live struct {
	session  *session.Session
	scene    *fit.Scene
	answers  []fit.Answer
	sure     bool
	moving   bool  // what is shown is no edit yet
	err      error // the job cannot be put into numbers
	of       *job.Job
	drawings []func()
	words    []func()
	usual    length.Unit // while no job is open
	waiting  bool        // the words will be told
}

func newLive(s *session.Session) *live {
	l := &live{session: s, usual: length.Inches}
	s.Watch(l.follow)
	return l
}

// watch has f called whenever scene or answers differ, a frame later while the hand moves.
func (l *live) watch(f func()) { l.words = append(l.words, f) }

// watchDrawing has f called at once whenever scene or answers differ.
func (l *live) watchDrawing(f func()) { l.drawings = append(l.drawings, f) }

func (l *live) tell() {
	for _, f := range l.drawings {
		f()
	}
	l.tellWords()
}

func (l *live) tellWords() {
	l.waiting = false
	for _, f := range l.words {
		f()
	}
}

// rests is how long the hand must rest before it is worked out how sure the answers are: two frames of a screen.
const rests = 34 * time.Millisecond

// stepped tells of a step of the hand: the drawings now, the words after this frame.
func (l *live) stepped() {
	for _, f := range l.drawings {
		f()
	}
	l.ascertain(rests)
	if !l.waiting {
		l.waiting = true
		l.session.Later(func() {
			if l.waiting {
				control.Traced.Later("words")
				l.tellWords()
			}
		})
	}
}

// follow takes over what the session holds now.
func (l *live) follow() {
	j := l.session.Job()
	if j == l.of {
		l.tell()
		return
	}
	l.of, l.scene, l.answers, l.sure, l.moving, l.err = j, nil, nil, false, false, nil
	if j == nil {
		l.tell()
		return
	}
	if l.scene, l.err = fit.NewScene(j); l.err == nil {
		l.answers = nominal(l.scene)
		l.ascertain(0)
	}
	l.tell()
}

// put shows the bed somewhere else without making it an edit.
func (l *live) put(p job.Placement) {
	l.session.Cancel(sureRun)
	l.scene.Put(p)
	l.answers, l.sure, l.moving = nominal(l.scene), false, true
	l.stepped()
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
	l.scene, l.answers, l.sure, l.moving = s, nominal(s), false, true
	l.stepped()
	return nil
}

// untry shows the job again as it is.
func (l *live) untry() {
	l.of = nil
	l.follow()
}

// back ends what the hand did: the bed is shown where the job has it.
func (l *live) back() {
	if l.scene == nil || l.of == nil || !l.moving {
		return
	}
	l.session.Cancel(sureRun)
	l.moving = false
	if l.scene.Job.Place != l.of.Place {
		l.scene.Put(l.of.Place)
		l.answers, l.sure = nominal(l.scene), false
	}
	l.tell()
	if !l.sure {
		l.ascertain(0)
	}
}

const sureRun = "answers"

// ascertain works out in the background how sure each answer is, for the job as it is shown, after a while in which nothing else is shown.
func (l *live) ascertain(after time.Duration) {
	j := l.scene.Job
	l.session.Run(sureRun, func(ctx context.Context, _ *job.Job) func() {
		select {
		case <-ctx.Done():
			return nil
		case <-time.After(after):
		}
		s, err := fit.NewScene(j)
		if err != nil {
			return nil
		}
		answers, err := s.AnswersTo(ctx, fit.All())
		if err != nil {
			return nil
		}
		return func() {
			if l.scene != nil && l.scene.Job == j {
				control.Traced.Later("sure")
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
	switch {
	case l.of == nil:
		return l.usual
	case l.of.Unit == "mm":
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
