package place

import (
	"context"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/furniture/people"
	"bunkwright/room"
	"bunkwright/room/length"
)

// When is one of the times that a table of who can sit up looks at.
type When int

// The times.
const (
	Now When = iota
	InFiveYears
	AsAdults
	times
)

// Words names a time.
func (w When) Words() string { return [...]string{"now", "in five years", "as adults"}[w] }

// laterYears is how far ahead InFiveYears looks; grownAge is an age at which nobody grows any more.
const (
	laterYears = 5
	grownAge   = 25
)

// A SitTable says who can sit up in which bed, and how long, for heights of the upper deck round the one chosen.
type SitTable struct {
	Sleepers []SitSleeper
	Rows     []SitRow // the highest deck first
	Chosen   int      // place of the row of the deck as it is; -1 where it is not among them
	Wants    string   // what is missing to tell anything, "" where nothing is
}

// A SitSleeper is somebody in the table, with the seated height at each time in mm, NaN where it is not known.
type SitSleeper struct {
	Name, Bed string
	Age       float64
	Seated    [times]float64
	Own       bool // followed from its own measured size; else a tall one of the age is taken (P95)
}

// A SitRow is one height of the upper deck. Its rail goes with it.
type SitRow struct {
	Deck   length.Length
	Upper  [times]fit.Answer // sit-up-top at each time
	Lower  [times]fit.Answer // sit-up-bottom
	Spoils []string          // other answers that come out worse than with the deck as it is, as if every reading were exact
}

// SitOptions say which deck heights a table has. The zero value has those up to 6 in (150 mm) over and under the one chosen, 1 in (25 mm) apart.
type SitOptions struct {
	Step length.Length
	Each int // rows over and under
}

// WhoSitsUp works the table out. The scene stays as it is.
func WhoSitsUp(ctx context.Context, s *fit.Scene, o SitOptions) (SitTable, error) {
	if o.Step <= 0 {
		o.Step = 4 * StepOf(s.Job)
		if s.Job.Unit == length.Millimetres.String() {
			o.Step = 5 * StepOf(s.Job)
		}
	}
	if o.Each <= 0 {
		o.Each = 6
	}
	t := SitTable{Chosen: -1, Sleepers: sleepersLater(s)}
	switch {
	case !s.Stands:
		t.Wants = s.Wants
		return t, nil
	case len(s.Job.Sleepers) == 0:
		t.Wants = "who sleeps in the bed, and how old are they?"
		return t, nil
	}
	for k := o.Each; k >= -o.Each; k-- {
		t.Rows = append(t.Rows, SitRow{Deck: s.Job.Bed.Upper.Height + length.Length(k)*o.Step})
	}
	for w := Now; w < times; w++ {
		if err := t.fill(ctx, s, w); err != nil {
			return t, err
		}
	}
	t.Rows = slices.DeleteFunc(t.Rows, func(r SitRow) bool { return r.Upper[Now].ID == "" })
	t.Chosen = slices.IndexFunc(t.Rows, func(r SitRow) bool { return r.Deck == s.Job.Bed.Upper.Height })
	return t, nil
}

// fill asks for one time at every height, in a scene of its own; heights that no bed can be built at are left out.
func (t *SitTable) fill(ctx context.Context, s *fit.Scene, w When) error {
	j := laterJob(s.Job, t.Sleepers, w)
	own, err := fit.NewScene(j)
	if err != nil {
		return err
	}
	var plain []fit.Verdict
	if w == Now {
		for _, q := range fit.All() {
			v, _ := own.Verdict(q)
			plain = append(plain, v)
		}
	}
	top, _ := fit.Find("sit-up-top")
	bottom, _ := fit.Find("sit-up-bottom")
	for i := range t.Rows {
		r := &t.Rows[i]
		own.Change(atDeck(j, r.Deck))
		if own.Bed == nil {
			continue
		}
		answers, err := own.AnswersTo(ctx, []fit.Question{top, bottom})
		if err != nil {
			return err
		}
		r.Upper[w], r.Lower[w] = answers[0], answers[1]
		for k, was := range plain {
			q := fit.All()[k]
			if v, _ := own.Verdict(q); v.Worse(was) && q.ID != top.ID && q.ID != bottom.ID {
				r.Spoils = append(r.Spoils, q.ID)
			}
		}
	}
	return nil
}

// atDeck returns a job with its upper deck at a height, its rail moved along.
func atDeck(j *job.Job, deck length.Length) *job.Job {
	out := *j
	if out.Bed.Guard.Top != 0 {
		out.Bed.Guard.Top += deck - out.Bed.Upper.Height
	}
	out.Bed.Upper.Height = deck
	return &out
}

// sleepersLater works out how high everybody will sit.
func sleepersLater(s *fit.Scene) []SitSleeper {
	var out []SitSleeper
	for _, at := range s.Seated() {
		p := s.Job.Sleepers[at.Sleeper]
		q := SitSleeper{Name: p.Name, Bed: p.Bed, Age: p.Age, Own: at.Own}
		for w := Now; w < times; w++ {
			q.Seated[w] = seatedAt(p, at, w)
		}
		out = append(out, q)
	}
	return out
}

// seatedAt returns how high somebody sits at a time: who was measured is followed from there, else a tall one of that age is taken.
func seatedAt(p job.Sleeper, at fit.SeatedAt, w When) float64 {
	sex := sexOf(p.Sex)
	age := ageAt(p, w)
	if w == Now || p.Grown() {
		return at.Height
	}
	var h float64
	var err error
	if at.Own {
		h, err = people.SittingLater(sex, p.Age, at.Height, age)
	} else {
		h, err = people.SeatedHeight(sex, age, people.P95)
	}
	if err != nil {
		return math.NaN()
	}
	return h
}

func ageAt(p job.Sleeper, w When) float64 {
	switch {
	case w == InFiveYears:
		return p.Age + laterYears
	case w == AsAdults:
		return max(p.Age, grownAge)
	}
	return p.Age
}

// sexOf turns a sleeper's word into that of the tables.
func sexOf(word string) people.Sex {
	switch word {
	case "girl", "woman":
		return people.Female
	case "boy", "man":
		return people.Male
	}
	return people.Unknown
}

// laterJob returns the job at another time: everybody older, and as high as the table has them. What was read of them now keeps how sure it is.
func laterJob(j *job.Job, sleepers []SitSleeper, w When) *job.Job {
	out := *j
	if w == Now {
		return &out
	}
	out.Sleepers = slices.Clone(j.Sleepers)
	for i := range out.Sleepers {
		p := &out.Sleepers[i]
		if h := sleepers[i].Seated[w]; !p.Grown() && !math.IsNaN(h) {
			p.Seated, p.Stature = later(p, length.FromMM(h)), nil
		}
		p.Age = ageAt(*p, w)
	}
	return &out
}

// later makes a measure of a seated height that is worked out, known as what it was worked out from; a figure of a table is taken as it is.
func later(p *job.Sleeper, h length.Length) room.Measure {
	for _, m := range []room.Measure{p.Seated, p.Stature} {
		if len(m) > 0 {
			r := m[0]
			r.Value = h
			return room.Measure{r}
		}
	}
	return room.Exact(h)
}
