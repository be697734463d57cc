package ask

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/room/survey"
)

// Again is a quantity worth measuring again, or at last, and the answers that hang on it.
type Again struct {
	Key       string   // "wall.DA.length"
	Read      bool     // it was read before
	Open      []string // ids of answers that are too close to call and that it would help to settle, the most helped first
	Unnoticed []string // ids of answers that fit, and that a slip in it which nobody would notice would turn
	Conflict  bool     // it is one of readings that do not agree
	Worth     float64  // see MeasureAgain
}

// Most is how many readings are worth asking for at once (issue of this project: six).
const Most = 6

// Figures of our own: what a slip is taken to be in a reading that nothing watches, in mm, and what an answer that it would turn counts beside
// one that is open.
const (
	usualSlip = 12 * 25.4
	turned    = 0.5
)

// MeasureAgain ranks what would settle the most answers, at most so many. A reading is worth its share of the uncertainty of every answer that
// is too close to call; one for every answer that is so because readings do not agree, for each of these; and half for every answer that fits
// and would not if the reading held a slip that nobody notices.
func MeasureAgain(s *survey.Survey, answers []fit.Answer, most int) []Again {
	r := ranking{s: s, by: map[string]*entry{}}
	for i := range answers {
		switch a := &answers[i]; {
		case a.Accepted != "" || a.Decides < 0:
		case a.Verdict == fit.TooClose && a.Doubt > 0:
			r.conflict(a)
		case a.Verdict == fit.TooClose:
			r.open(a)
		case a.Verdict == fit.Fits && a.HasSpare:
			r.unnoticed(a)
		}
	}
	return r.best(most)
}

// ranking collects what hangs on what.
type ranking struct {
	s  *survey.Survey
	by map[string]*entry
}

type entry struct {
	Again
	share []helped
}

type helped struct {
	id string
	by float64
}

// at returns the entry of what has to be read to know a quantity better.
func (r *ranking) at(key string) *entry {
	key, ok := r.toRead(key)
	if !ok {
		return &entry{}
	}
	e := r.by[key]
	if e == nil {
		e = &entry{Again: Again{Key: key, Read: r.read(key)}}
		r.by[key] = e
	}
	return e
}

func (r *ranking) read(key string) bool {
	return slices.ContainsFunc(r.s.Sources, func(src survey.Source) bool { return src.Key == key && src.Index >= 0 })
}

func (e *entry) helps(id string, by float64) {
	e.Worth += by
	for i := range e.share {
		if e.share[i].id == id {
			e.share[i].by += by
			return
		}
	}
	e.share = append(e.share, helped{id, by})
}

// open counts what each input has of the uncertainty of an answer.
func (r *ranking) open(a *fit.Answer) {
	for _, in := range a.Inputs {
		if in.Share > 0.001 {
			r.at(in.Key).helps(a.ID, in.Share)
		}
	}
}

// conflict counts every reading that the answer waits for.
func (r *ranking) conflict(a *fit.Answer) {
	once := map[string]bool{}
	for _, one := range r.s.Conflicts[a.Doubt-1].Suspects {
		key := r.s.Sources[one.Source].Key
		if e := r.at(key); !once[key] {
			e.Conflict = true
			e.helps(a.ID, 1)
			once[key] = true
		}
	}
}

// unnoticed counts the readings whose slip would turn an answer: what it moves with a reading is the root of that reading's share times u
// over the reading's own u.
func (r *ranking) unnoticed(a *fit.Answer) {
	for _, in := range a.Inputs {
		for i, src := range r.s.Sources {
			if src.Key != in.Key || src.Value != in.Value || src.Index < 0 || src.Aside || in.Share <= 0 {
				continue
			}
			moves := math.Sqrt(in.Share) * a.U / src.U
			if moves*min(r.s.Standing(i).Smallest, usualSlip) > a.Spare {
				e := r.at(in.Key)
				e.Worth += turned
				e.Unnoticed = append(e.Unnoticed, a.ID)
			}
			break
		}
	}
}

// best sorts: the most worth first, then by name.
func (r *ranking) best(most int) []Again {
	var out []Again
	for _, e := range r.by {
		slices.SortStableFunc(e.share, func(a, b helped) int { return cmp.Compare(b.by, a.by) })
		for _, h := range e.share {
			e.Open = append(e.Open, h.id)
		}
		slices.Sort(e.Unnoticed)
		e.Unnoticed = slices.Compact(e.Unnoticed)
		if len(e.Open)+len(e.Unnoticed) > 0 {
			out = append(out, e.Again)
		}
	}
	slices.SortFunc(out, func(a, b Again) int {
		if c := cmp.Compare(math.Round(b.Worth*1e9), math.Round(a.Worth*1e9)); c != 0 {
			return c
		}
		return cmp.Compare(a.Key, b.Key)
	})
	return out[:min(len(out), max(0, most))]
}
