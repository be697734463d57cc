package place

import (
	"context"
	"slices"
	"sync"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
)

// Result is where the bed could stand.
type Result struct {
	Spots   []Spot  // the best first
	Walls   []NoWay // walls without a spot
	Tried   int     // placements
	Missing string  // what is missing to try anything at all, "" where nothing is
}

// Search tries all placements of the bed of a job. It ends with ctx's error when that is cancelled, within a few milliseconds. The same job
// and options give the same result, however many walls are tried at a time.
func Search(ctx context.Context, j *job.Job, o Options) (Result, error) {
	s, err := fit.NewScene(j)
	if err != nil {
		return Result{}, err
	}
	rank, err := newRanking(s, o.Order, o.Must)
	if err != nil {
		return Result{}, err
	}
	switch {
	case s.Bed == nil:
		return Result{Missing: s.Wants}, nil
	case s.Walls == nil:
		return Result{Missing: s.Wants}, nil
	}
	r := &search{ctx: ctx, o: o.withDefaults(s), rank: rank, job: j, first: s}
	r.lanes = lanes(s, r.o)
	return r.run()
}

// search is a search on its way.
type search struct {
	ctx   context.Context
	o     Options
	rank  *ranking
	job   *job.Job
	first *fit.Scene // of the first worker
	lanes []lane
	swept []swept

	lock     sync.Mutex // of what is told
	progress Progress
}

func (r *search) run() (Result, error) {
	for i := range r.lanes {
		r.progress.Places += len(r.lanes[i].starts)
	}
	r.swept = make([]swept, len(r.lanes))
	err := r.each(len(r.lanes), func(t *trial, i int) error {
		var err error
		before := t.tried
		r.swept[i], err = t.sweep(r.ctx, &r.lanes[i], r.o, r.tried)
		r.swept[i].tried = t.tried - before
		r.found(r.swept[i].spots...)
		return err
	})
	if err != nil {
		return Result{}, err
	}
	out := Result{Spots: r.best(), Walls: r.without()}
	for i := range r.swept {
		out.Tried += r.swept[i].tried
	}
	if err := r.settle(out.Spots); err != nil {
		return Result{}, err
	}
	for i := range out.Spots {
		out.Spots[i].Rank = i + 1
	}
	return out, nil
}

// each does n things, some at a time, each worker in a scene of its own.
func (r *search) each(n int, do func(*trial, int) error) error {
	next := make(chan int, n)
	for i := range n {
		next <- i
	}
	close(next)
	workers := min(r.o.Workers, n)
	errs := make([]error, workers)
	var all sync.WaitGroup
	for w := range workers {
		all.Go(func() { errs[w] = r.work(w, next, do) })
	}
	all.Wait()
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return r.ctx.Err()
}

func (r *search) work(w int, next <-chan int, do func(*trial, int) error) error {
	s := r.first
	if w > 0 {
		var err error
		if s, err = fit.NewScene(r.job); err != nil {
			return err
		}
	}
	t := &trial{s: s, rank: r.rank}
	for i := range next {
		if err := do(t, i); err != nil {
			return err
		}
	}
	return nil
}

// tellEvery is after how many placements a search says how far it is.
const tellEvery = 64

func (r *search) tried(n int) {
	r.lock.Lock()
	defer r.lock.Unlock()
	r.progress.Tried += n
	if r.o.Tell != nil && (r.progress.Tried%tellEvery == 0 || r.progress.Tried == r.progress.Places) {
		r.o.Tell(r.progress)
	}
}

func (r *search) found(spots ...Spot) {
	r.lock.Lock()
	defer r.lock.Unlock()
	for _, s := range spots {
		if r.o.Found != nil {
			r.o.Found(s)
		}
	}
}

// best keeps the best spots of every wall, as if every reading were exact.
func (r *search) best() []Spot {
	var out []Spot
	for wall := range r.first.Walls {
		var here []Spot
		for i := range r.swept {
			if r.lanes[i].wall == wall {
				here = append(here, r.swept[i].spots...)
			}
		}
		here = r.rank.foremost(here, r.o.PerWall)
		for i := range here {
			here[i].Comfort = comfortAt(r.first, &here[i])
			here[i].pillows = r.first.Pillows()
		}
		slices.SortStableFunc(here, func(a, b Spot) int { return r.rank.less(&a, &b) })
		here = apart(here)
		out = append(out, here[:min(len(here), r.o.PerWall)]...)
	}
	slices.SortStableFunc(out, func(a, b Spot) int { return r.rank.less(&a, &b) })
	return apart(out)
}

// apart leaves out spots that are the same choice as one before them.
func apart(spots []Spot) []Spot {
	var out []Spot
	for i := range spots {
		if !slices.ContainsFunc(out, spots[i].nearly) {
			out = append(out, spots[i])
		}
	}
	return out
}

// settle ranks the spots, and works out how sure the answers of the best are. That may put others before them, which are then looked at too.
func (r *search) settle(spots []Spot) error {
	sort := func() { slices.SortStableFunc(spots, func(a, b Spot) int { return r.rank.less(&a, &b) }) }
	for {
		sort()
		var next []*Spot
		for i := range spots[:min(len(spots), r.o.Sure)] {
			if spots[i].Answers == nil {
				next = append(next, &spots[i])
			}
		}
		if len(next) == 0 || r.o.Nominal {
			return r.ctx.Err()
		}
		r.progress.Spots += len(next)
		if err := r.each(len(next), func(t *trial, i int) error { return r.makeSure(t, next[i]) }); err != nil {
			return err
		}
	}
}

func (r *search) makeSure(t *trial, spot *Spot) error {
	if err := t.settle(r.ctx, &r.lanes[spot.lane], spot, r.o); err != nil {
		return err
	}
	r.found(*spot)
	r.sure()
	return nil
}

func (r *search) sure() {
	r.lock.Lock()
	defer r.lock.Unlock()
	r.progress.Sure++
	if r.o.Tell != nil {
		r.o.Tell(r.progress)
	}
}
