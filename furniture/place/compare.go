package place

import (
	"context"
	"math"
	"slices"

	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// A Named is a job with the name that a comparison gives it: the job as it is, or one of its other ways.
type Named struct {
	Name string
	Job  *job.Job
}

// A Comparison sets some ways of a job side by side: a column for each.
type Comparison struct {
	Names   []string
	Places  []job.Placement
	Answers []AnswerRow // in table order
	Heads   []HeadRow   // headrooms
	Boards  []BoardRow  // by stock, in the order in which the first way has them
}

// An AnswerRow is one question over all ways.
type AnswerRow struct {
	ID      string
	Answers []fit.Answer
}

// Differs tells whether the ways answer otherwise: by verdict, or by more than rounding in spare.
func (r *AnswerRow) Differs() bool {
	first := &r.Answers[0]
	return slices.ContainsFunc(r.Answers, func(a fit.Answer) bool {
		return a.Verdict != first.Verdict || a.HasSpare != first.HasSpare || math.Abs(a.Spare-first.Spare) > shownSpare
	})
}

// shownSpare is what two spares may differ by that are shown as one, in the unit of the answer.
const shownSpare = 1e-3

// A HeadRow is the free height over one mattress, in mm, NaN where it is not known.
type HeadRow struct {
	ID   string // of the question that measures it
	Free []float64
}

// A BoardRow is what one stock comes to: pieces, and their finished lengths together in mm. Sheets have pieces alone.
type BoardRow struct {
	Stock  string
	Sheet  bool
	Pieces []int
	Long   []float64
}

// Differs tells whether the ways take another number or length of this stock.
func (r *BoardRow) Differs() bool {
	for i := range r.Pieces {
		if r.Pieces[i] != r.Pieces[0] || math.Abs(r.Long[i]-r.Long[0]) > shownSpare {
			return true
		}
	}
	return false
}

// Compare answers every way with how sure each answer is.
func Compare(ctx context.Context, ways []Named) (Comparison, error) {
	var c Comparison
	for _, q := range fit.All() {
		c.Answers = append(c.Answers, AnswerRow{ID: q.ID})
	}
	c.Heads = []HeadRow{{ID: "sit-up-top"}, {ID: "sit-up-bottom"}}
	for k, w := range ways {
		s, err := fit.NewScene(w.Job)
		if err != nil {
			return Comparison{}, err
		}
		answers, err := s.AnswersTo(ctx, fit.All())
		if err != nil {
			return Comparison{}, err
		}
		c.Names, c.Places = append(c.Names, w.Name), append(c.Places, w.Job.Place)
		for i := range answers {
			c.Answers[i].Answers = append(c.Answers[i].Answers, answers[i])
			for h := range c.Heads {
				if c.Heads[h].ID == answers[i].ID {
					c.Heads[h].Free = append(c.Heads[h].Free, headroom(&answers[i]))
				}
			}
		}
		c.boards(s, k, len(ways))
	}
	return c, nil
}

func headroom(a *fit.Answer) float64 {
	for _, f := range a.Figures {
		if f.Name == "headroom" {
			return f.Value
		}
	}
	return math.NaN()
}

// boards adds the boards of way k of n.
func (c *Comparison) boards(s *fit.Scene, k, n int) {
	if s.Bed == nil {
		return
	}
	for i := range s.Bed.Parts {
		p := &s.Bed.Parts[i]
		at := slices.IndexFunc(c.Boards, func(r BoardRow) bool { return r.Stock == p.Stock.Name })
		if at < 0 {
			at = len(c.Boards)
			c.Boards = append(c.Boards, BoardRow{Stock: p.Stock.Name, Sheet: p.Stock.Sheet, Pieces: make([]int, n), Long: make([]float64, n)})
		}
		c.Boards[at].Pieces[k]++
		c.Boards[at].Long[k] += p.Length.MM()
	}
}

// WhereWords says where a placement is: "wall AB, 6 in from A".
func WhereWords(p job.Placement, unit length.Unit) string {
	if p.Wall == "" {
		return "not placed yet"
	}
	from := p.From
	if from == "" {
		from = string([]rune(p.Wall)[0])
	}
	words := "wall " + p.Wall + ", in corner " + from
	if p.Along > 0 {
		words = "wall " + p.Wall + ", " + length.Format(p.Along, length.Style{Unit: unit}) + " from " + from
	}
	if p.Mirror {
		words += ", mirrored"
	}
	return words
}
