package place

import (
	"context"
	"fmt"
	"math"
	"math/rand/v2"
	"sync"

	"bunkwright/furniture/fit"
	"bunkwright/room/survey"
)

// RoomsOptions say how many rooms are drawn, and from which random numbers. The zero value draws 10,000, always the same.
type RoomsOptions struct {
	N       int
	Seed    uint64
	Workers int // 0: 2
}

// Rooms is the share of the rooms consistent with the readings in which every safety answer that depends on the room fits.
type Rooms struct {
	N, Fit   int      // rooms drawn, and those in which all of them fit
	Asked    []string // ids of the answers that count
	Untold   []string // ids of those that nobody can tell yet: they do not count
	Accepted []string // ids of those that the maker lives with: they do not count either
	Fails    []Failing
	Moves    string  // key of the reading that moves the share most, "" where none does
	ByMoves  float64 // and how much of what the share varies by it alone explains, 0 to 1; 0 where it is taken from the answer that decides
}

// Failing is in how many rooms one answer does not fit.
type Failing struct {
	ID string
	N  int
}

// Share returns the share of rooms in which all fits, 0 to 1.
func (r *Rooms) Share() float64 {
	if r.N == 0 {
		return math.NaN()
	}
	return float64(r.Fit) / float64(r.N)
}

// U returns the standard uncertainty of the share that comes from drawing only so many rooms.
func (r *Rooms) U() float64 {
	p := r.Share()
	return math.Sqrt(p * (1 - p) / float64(r.N))
}

// Words returns the share for people, never more than it is: "in 97 of 100 rooms that agree with these readings".
func (r *Rooms) Words() string {
	const rooms = "rooms that agree with these readings"
	switch {
	case len(r.Asked) == 0:
		return "no safety answer that can be told depends on the room"
	case r.Fit == r.N:
		return fmt.Sprintf("in all of %d %s", r.N, rooms)
	}
	return fmt.Sprintf("in %d of 100 %s", r.Fit*100/r.N, rooms)
}

// farFrom is from how many standard uncertainties on an answer is not asked again in every room: it would come out otherwise in less than one of
// a thousand million.
const farFrom = 6

// PlausibleRooms draws rooms: all readings at once move as far as their uncertainties have it, normally distributed and each for itself, and
// take the quantities of the survey with them by its gain, which is how these hang together. In each room the safety answers that depend on it
// are asked as if it were exactly so. Answers are those of the scene, with how sure they are; the scene stays as it is.
func PlausibleRooms(ctx context.Context, s *fit.Scene, answers []fit.Answer, o RoomsOptions) (Rooms, error) {
	if o.N <= 0 {
		o.N = 10_000
	}
	if o.Workers <= 0 {
		o.Workers = 2
	}
	d := newDraw(s, answers, o)
	if err := d.run(ctx, s); err != nil {
		return Rooms{}, err
	}
	return d.sum(answers), nil
}

// A draw is rooms being drawn.
type draw struct {
	o     RoomsOptions
	gain  [][]part // by quantity: which source moves it, and how far for one standard uncertainty of it
	x     []float64
	key   []string // of the sources
	asks  []fit.Question
	out   Rooms
	fails [][]uint64 // by question, the rooms in which it fails, a bit each
}

// part is how far a quantity moves with one source.
type part struct {
	source int
	by     float64
}

func newDraw(s *fit.Scene, answers []fit.Answer, o RoomsOptions) *draw {
	d := &draw{o: o, x: append([]float64(nil), s.Survey.X...), out: Rooms{N: o.N}}
	for _, src := range s.Survey.Sources {
		d.key = append(d.key, src.Key)
	}
	var row []float64
	for i := range d.x {
		row = s.Survey.ByReading([]survey.Term{{Unknown: i, D: 1}}, row)
		var parts []part
		for k, by := range row {
			if by *= s.Survey.Sources[k].U; by != 0 {
				parts = append(parts, part{k, by})
			}
		}
		d.gain = append(d.gain, parts)
	}
	for i := range answers {
		d.count(&answers[i])
	}
	for range d.asks {
		d.fails = append(d.fails, make([]uint64, (o.N+63)/64))
	}
	return d
}

// count takes an answer in where it is one of those that count, and lists it to be asked in every room where that may change it.
func (d *draw) count(a *fit.Answer) {
	q, ok := fit.Find(a.ID)
	if !ok || q.Group != fit.Safety || q.OfBed || q.Depends == 0 {
		return
	}
	switch a.Verdict {
	case fit.NotApplicable, fit.None:
		return
	case fit.CannotTell:
		d.out.Untold = append(d.out.Untold, a.ID)
		return
	}
	if !hangsOnReadings(a) {
		return
	}
	if a.Accepted != "" {
		d.out.Accepted = append(d.out.Accepted, a.ID)
		return
	}
	d.out.Asked = append(d.out.Asked, a.ID)
	if mayChange(a) {
		d.asks = append(d.asks, q)
	}
}

// hangsOnReadings tells whether any judged line of an answer moves with a reading: how many alarms there are does not.
func hangsOnReadings(a *fit.Answer) bool {
	for i := range a.Lines {
		if l := &a.Lines[i]; l.Force.Judged() && l.U > 0 {
			return true
		}
	}
	return false
}

// mayChange tells whether any judged line of an answer lies so near to its limit that another room may move it over; what does not fit counts too.
func mayChange(a *fit.Answer) bool {
	for i := range a.Lines {
		l := &a.Lines[i]
		if !l.Force.Judged() || l.Verdict == fit.NotApplicable {
			continue
		}
		if l.Verdict != fit.Fits || l.U > 0 && l.Spare < farFrom*l.U {
			return true
		}
	}
	return false
}

// run asks in every room, some at a time. Each room has random numbers of its own, so that the same rooms are drawn however many work.
func (d *draw) run(ctx context.Context, s *fit.Scene) error {
	if len(d.asks) == 0 {
		return ctx.Err()
	}
	const words = 64 // rooms that share a word of bits belong to one worker
	errs := make([]error, d.o.Workers)
	var all sync.WaitGroup
	for w := range d.o.Workers {
		all.Go(func() {
			own, err := fit.NewScene(s.Job)
			for first := w * words; err == nil && first < d.o.N; first += d.o.Workers * words {
				if err = ctx.Err(); err == nil {
					d.rooms(own, first, min(first+words, d.o.N))
				}
			}
			errs[w] = err
		})
	}
	all.Wait()
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

func (d *draw) rooms(s *fit.Scene, first, end int) {
	e, x := make([]float64, len(d.key)), make([]float64, len(d.x))
	for n := first; n < end; n++ {
		d.moves(n, e)
		for i, parts := range d.gain {
			x[i] = d.x[i]
			for _, p := range parts {
				x[i] += p.by * e[p.source]
			}
		}
		s.InRoom(x)
		for k, q := range d.asks {
			if v, _ := s.Verdict(q); v == fit.DoesNotFit || v == fit.CannotTell {
				d.fails[k][n/64] |= 1 << (n % 64)
			}
		}
	}
}

// moves fills in how far every reading of a room is off, in standard uncertainties.
func (d *draw) moves(room int, e []float64) {
	r := rand.New(rand.NewPCG(d.o.Seed, uint64(room)))
	for k := range e {
		e[k] = r.NormFloat64()
	}
}

func (d *draw) failed(room int) bool {
	for k := range d.fails {
		if d.fails[k][room/64]&(1<<(room%64)) != 0 {
			return true
		}
	}
	return false
}

// sum counts, and looks for the reading that moves the share most.
func (d *draw) sum(answers []fit.Answer) Rooms {
	out := d.out
	for k, q := range d.asks {
		n := 0
		for room := range out.N {
			if d.fails[k][room/64]&(1<<(room%64)) != 0 {
				n++
			}
		}
		if n > 0 {
			out.Fails = append(out.Fails, Failing{q.ID, n})
		}
	}
	for room := range out.N {
		if !d.failed(room) {
			out.Fit++
		}
	}
	if out.Moves, out.ByMoves = d.most(&out); out.Moves == "" {
		out.Moves = d.tightest(answers)
	}
	return out
}

// classes is into how many parts of equal chance the error of a reading is divided to see what the share does over them.
const classes = 10

// most returns the reading whose error alone explains most of whether all fits: the variance of the share over classes of that error, less what
// chance would give, as a part of its whole variance.
func (d *draw) most(out *Rooms) (key string, by float64) {
	p := out.Share()
	if p == 0 || p == 1 {
		return "", 0
	}
	var bounds [classes - 1]float64
	for i := range bounds {
		bounds[i] = survey.NormalQuantile(float64(i+1) / classes)
	}
	n, fits := make([][classes]int, len(d.key)), make([][classes]int, len(d.key))
	e := make([]float64, len(d.key))
	for room := range out.N {
		d.moves(room, e)
		ok := !d.failed(room)
		for k := range e {
			c := 0
			for c < len(bounds) && e[k] > bounds[c] {
				c++
			}
			n[k][c]++
			if ok {
				fits[k][c]++
			}
		}
	}
	for k := range n {
		explained := 0.0
		for c := range n[k] {
			if n[k][c] > 0 {
				off := float64(fits[k][c])/float64(n[k][c]) - p
				explained += off * off * float64(n[k][c]) / float64(out.N)
			}
		}
		explained = explained/(p*(1-p)) - float64(classes-1)/float64(out.N)
		if explained > by {
			key, by = d.key[k], explained
		}
	}
	return key, by
}

// tightest returns the reading with the largest share in the answer that is nearest to its limit for what is not sure about it, where all rooms
// come out alike.
func (d *draw) tightest(answers []fit.Answer) string {
	key, least := "", math.Inf(1)
	for i := range answers {
		a := &answers[i]
		for _, id := range d.out.Asked {
			if id == a.ID && a.HasSpare && a.U > 0 && math.Abs(a.Spare)/a.U < least && len(a.Inputs) > 0 {
				key, least = a.Inputs[0].Key, math.Abs(a.Spare)/a.U
			}
		}
	}
	return key
}
