package session

import (
	"time"

	"bunkwright/furniture/job"
)

// mergeWithin is the time in which edits with one key become one step: the strokes of one drag, the letters of one field.
const mergeWithin = time.Second

// A step is one edit that can be undone: its name, and the job before and after it.
type step struct {
	name          string
	before, after *job.Job
}

type history struct {
	past, future []step
	key          string // of the last edit, while it may still be merged into
	at           time.Time
}

// Do makes an edit: a function from the job to another one, which may refuse. Edits with the same key that is not empty, one within a
// second of the other, become one step. An edit that returns the same job is no step.
func (s *Session) Do(name, key string, edit func(*job.Job) (*job.Job, error)) error {
	next, err := edit(s.job)
	if err != nil || next == s.job {
		return err
	}
	h, now := &s.history, s.options.Now()
	if n := len(h.past); key != "" && key == h.key && n > 0 && now.Sub(h.at) < mergeWithin {
		h.past[n-1].after = next
	} else {
		h.past = append(h.past, step{name, s.job, next})
	}
	h.key, h.at, h.future = key, now, nil
	s.job = next
	s.changed()
	return nil
}

// Settle ends the merging of edits: the next one is a step of its own.
func (s *Session) Settle() { s.history.key = "" }

// Undo takes the last step back.
func (s *Session) Undo() {
	h := &s.history
	if n := len(h.past); n > 0 {
		last := h.past[n-1]
		h.past, h.future, h.key = h.past[:n-1], append(h.future, last), ""
		s.job = last.before
		s.changed()
	}
}

// Redo makes the step again that was taken back last.
func (s *Session) Redo() {
	h := &s.history
	if n := len(h.future); n > 0 {
		next := h.future[n-1]
		h.future, h.past, h.key = h.future[:n-1], append(h.past, next), ""
		s.job = next.after
		s.changed()
	}
}

// UndoName returns what Undo would take back, "" where there is nothing.
func (s *Session) UndoName() string { return lastName(s.history.past) }

// RedoName returns what Redo would make again, "" where there is nothing.
func (s *Session) RedoName() string { return lastName(s.history.future) }

func lastName(steps []step) string {
	if len(steps) == 0 {
		return ""
	}
	return steps[len(steps)-1].name
}
