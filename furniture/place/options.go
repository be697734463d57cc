package place

import (
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// Options say how a search goes. The zero value tries every wall both ways round, at 1/4 in or 5 mm.
type Options struct {
	Step    length.Length  // along a wall; 0: 1/4 in or 5 mm, by the unit of the job
	Turns   []job.Turn     // parts of the bed that may stand at a wall; nil: those that Turns returns
	Order   Order          // what counts first; nil: DefaultOrder
	Must    []string       // questions that have to fit for a place to be a spot at all, beside stands: "way-out"
	PerWall int            // how many spots of a wall are kept; 0: 3
	Sure    int            // of how many of the best it is worked out how sure their answers are; 0: 6, the others are ranked as if every reading were exact
	Workers int            // how many walls are tried at a time; 0: 2
	Nominal bool           // leave out how sure the answers are
	Found   func(Spot)     // called with every spot as it is found, and again when it is known how sure its answers are; never two at a time; the result keeps the best of them
	Tell    func(Progress) // called as the search goes on; never two at a time
}

// Progress is how far a search is.
type Progress struct {
	Tried, Places int // placements
	Sure, Spots   int // spots whose plus-or-minus is known, and all of them; 0 while placements are tried
}

// StepOf returns the step of a search in a job's unit: 1/4 in or 5 mm.
func StepOf(j *job.Job) length.Length {
	if j.Unit == length.Millimetres.String() {
		return 5 * length.Millimetre
	}
	return length.Inch / 4
}

// fineIn is into how many parts a step is cut to find where a verdict changes: 1/16 in, 1-1/4 mm.
const fineIn = 4

// Turns returns the parts of a bed that may stand at a wall: its wall side, and an end where no shelf of it hangs on the wall. The part that
// stands there now counts too.
func Turns(s *fit.Scene) []job.Turn {
	out, now := []job.Turn{job.AgainstSide}, turnOf(s.Job.Place)
	if s.Bed != nil && len(s.Bed.Cleats) == 0 {
		out = append(out, job.AgainstLeft, job.AgainstRight)
	}
	if !slices.Contains(out, now) {
		out = append(out, now)
	}
	return out
}

// climbedAt tells whether the end that a turn puts at the wall is one that somebody goes up at: there the bed does not stand.
func climbedAt(s *fit.Scene, turn job.Turn, mirror bool) bool {
	if turn != job.AgainstLeft && turn != job.AgainstRight {
		return false
	}
	end := "left"
	if (turn == job.AgainstRight) != mirror {
		end = "right"
	}
	return s.Bed.Climb != nil && string(s.Bed.Climb.End) == end || s.Bed.Steps != nil && s.Bed.Steps.Side == end
}

func (o Options) withDefaults(s *fit.Scene) Options {
	if o.Step <= 0 {
		o.Step = StepOf(s.Job)
	}
	if o.Turns == nil {
		o.Turns = Turns(s)
	}
	if o.PerWall <= 0 {
		o.PerWall = 3
	}
	if o.Sure <= 0 {
		o.Sure = 6
	}
	if o.Workers <= 0 {
		o.Workers = 2
	}
	return o
}
