// Package session answers which job is open, how it came to be what it is, and what of it is not saved yet.
//
// It is plain Go: the window watches it and calls it from one goroutine; background runs come back through the post function.
package session

import (
	"time"

	"bunkwright/furniture/job"
)

// Options are what a session needs of the world outside; the zero value works for tests.
type Options struct {
	Now    func() time.Time // nil: time.Now
	Post   func(func())     // brings a function back to the goroutine that calls the session; nil: called where it is
	Folder string           // where recovery copies of jobs without a file and claims to files are kept; "": nowhere
}

// A Session holds one open job with its history. It is used from one goroutine.
type Session struct {
	options  Options
	job      *job.Job
	path     string   // "" while the job has no file
	saved    *job.Job // what the file holds; nil: nothing yet
	disk     stamp    // of the file when it was last read or written
	lines    func(key string) int
	claim    claim
	history  history
	recovery recovery
	runs     runs
	watchers []func()
}

// New returns a session without a job.
func New(o Options) *Session {
	if o.Now == nil {
		o.Now = time.Now
	}
	if o.Post == nil {
		o.Post = func(f func()) { f() }
	}
	s := &Session{options: o}
	s.claimFor("")
	return s
}

// Job returns the open job, nil where there is none. It must not be changed.
func (s *Session) Job() *job.Job { return s.job }

// Path returns the file of the job, "" where it has none.
func (s *Session) Path() string { return s.path }

// Unsaved tells whether the job differs from its file.
func (s *Session) Unsaved() bool { return s.job != nil && s.job != s.saved }

// Line returns the line of the file as it was opened that holds a key, 0 where it does not.
func (s *Session) Line(key string) int {
	if s.lines == nil {
		return 0
	}
	return s.lines(key)
}

// Watch has f called after every change of the job, its history or its file.
func (s *Session) Watch(f func()) { s.watchers = append(s.watchers, f) }

// Later has f called on the goroutine that calls the session, once what it is doing now is done.
func (s *Session) Later(f func()) { s.options.Post(f) }

func (s *Session) changed() {
	for _, f := range s.watchers {
		f()
	}
}

// Start opens a job that has no file yet.
func (s *Session) Start(j *job.Job) {
	s.replace(j, "")
	s.changed()
}

// claimFor lays claim to the file that the job is of from now on.
func (s *Session) claimFor(path string) {
	s.claim.free()
	s.claim = claimed(path, s.options.Folder)
}

// replace puts another job in the place of the one that is open.
func (s *Session) replace(j *job.Job, path string) {
	s.runs.cancelAll()
	s.claimFor(path)
	s.job, s.path, s.saved, s.lines, s.disk = j, path, nil, nil, stamp{}
	s.history = history{}
	s.recovery = recovery{}
}
