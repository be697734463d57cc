package session

import (
	"context"
	"sync"

	"bunkwright/furniture/job"
)

// runs are the works in the background, one of a kind at a time.
type runs struct {
	mu   sync.Mutex
	kind map[string]*run
}

type run struct {
	cancel context.CancelFunc
}

// Run works on the open job in the background and cancels an older run of the same kind. Work gets a job that will not change and
// returns what to do with its result; that is posted back, and left out where the run was cancelled.
func (s *Session) Run(kind string, work func(ctx context.Context, j *job.Job) (done func())) {
	ctx, cancel := context.WithCancel(context.Background())
	me, j := &run{cancel}, s.job
	s.runs.begin(kind, me)
	go func() {
		done := work(ctx, j)
		s.options.Post(func() {
			if s.runs.end(kind, me) && done != nil {
				done()
			}
		})
	}()
}

// Cancel ends a run; its result is dropped.
func (s *Session) Cancel(kind string) { s.runs.cancel(kind) }

// Running tells whether a run of a kind is under way.
func (s *Session) Running(kind string) bool {
	s.runs.mu.Lock()
	defer s.runs.mu.Unlock()
	return s.runs.kind[kind] != nil
}

func (r *runs) begin(kind string, me *run) {
	r.mu.Lock()
	defer r.mu.Unlock()
	if old := r.kind[kind]; old != nil {
		old.cancel()
	}
	if r.kind == nil {
		r.kind = map[string]*run{}
	}
	r.kind[kind] = me
}

// end takes a run off the list; ok is false where it was cancelled, or another one took its place.
func (r *runs) end(kind string, me *run) (ok bool) {
	r.mu.Lock()
	defer r.mu.Unlock()
	me.cancel()
	if r.kind[kind] != me {
		return false
	}
	delete(r.kind, kind)
	return true
}

func (r *runs) cancel(kind string) {
	r.mu.Lock()
	defer r.mu.Unlock()
	if old := r.kind[kind]; old != nil {
		old.cancel()
		delete(r.kind, kind)
	}
}

func (r *runs) cancelAll() {
	r.mu.Lock()
	defer r.mu.Unlock()
	for kind, old := range r.kind {
		old.cancel()
		delete(r.kind, kind)
	}
}
