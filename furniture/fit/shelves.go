package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture/people"
)

var shelfHeights = Question{
	ID:       "shelf-heights",
	Sentence: "Can the sleeper reach the shelf, with nothing heavy over a head?",
	Group:    Safety,
	Why:      "A shelf out of reach is climbed for, and one over a pillow drops its books on it.",
	How: "Grip reach of a sitter over the mattress (P5 of the age; of several sleepers the one who reaches least) less the height of the top " +
		"of the shelf board over it; how far away the board is level is not counted. A shelf hangs over a sleeper where its board lies over any part of " +
		"the next mattress below. A shelf of the upper bed lower than the rail's top is told: a foot on it makes the rail that much lower.",
	Caution: "Keep heavy things low, with a lip or a strap on the shelf. No load is promised here.",
	Depends: Standing,
	Propose: []Driver{ShelfDown, ShelfUp, DeckUp},
	Measure: func(s *Scene) Finding { return s.shelfHeights() },
}

const (
	shelfReach = "own-shelf-reach"
	shelfOver  = "shelf-over-bed"
)

// ShelfReach returns how far within a sitter's grip reach a shelf board is: grip reach over the mattress less the board's height over
// it, in one unit.
func ShelfReach(grip, board, mattressTop float64) float64 { return grip - (board - mattressTop) }

func (s *Scene) shelfHeights() Finding {
	rows := []string{shelfReach, shelfOver}
	switch {
	case s.Bed == nil && len(s.Job.Bed.Shelves) > 0:
		return Finding{Readings: []Reading{ask("shelf", noBed, rows...)}}
	case s.Bed == nil || len(s.Bed.Sizes.Shelves) == 0:
		return absent("there is no wall shelf")
	case !s.Stands:
		return Finding{Readings: []Reading{ask("shelf", s.Wants, rows...)}}
	}
	var f Finding
	i := 0
	for k := range s.Solids {
		if b := &s.Solids[k]; b.isBoard() {
			s.shelfReadings(i, b, &f)
			i++
		}
	}
	return f
}

// shelfReadings measures one shelf: its board comes in the order of the shelves chosen.
func (s *Scene) shelfReadings(i int, board *Solid, f *Finding) {
	shelf := &s.Bed.Sizes.Shelves[i]
	b := lowerBed
	if shelf.For == upperBed.word() {
		b = upperBed
	}
	key := fmt.Sprintf("shelf.%d", i+1)
	r := Reading{At: key + ".reach", Rows: []string{shelfReach}, Parts: []string{board.Part.ID, "mattress." + b.word()}}
	grip, what := s.leastReach(b, people.SeatedGripReach)
	r.Have, r.Ask = ShelfReach(grip, board.Hi.Z, s.mattressTop(b)), what
	r.orThick(s, b)
	r.Uses = []Use{{fmt.Sprintf("bed.shelf.%d.height", i+1), shelf.Height.MM(), "mm", "chosen"}, {"seated grip reach", grip, "mm", "table"}}
	over := Reading{At: key + ".over", Rows: []string{shelfOver}, Yes: true, Parts: []string{board.Part.ID}}
	if what, is := s.under(board); is {
		over.Yes, over.Edge, over.Parts = false, board.Part.ID+" is over "+what, append(over.Parts, what)
	}
	f.Readings = append(f.Readings, r, over)
	if b == upperBed {
		s.footOnShelf(board, f)
	}
}

// under returns the mattress that a shelf hangs over: the highest one below it, where the board lies over any part of it.
func (s *Scene) under(board *Solid) (what string, is bool) {
	plan := patch(board.Box.Footprint())
	for _, b := range [2]bed{upperBed, lowerBed} {
		if s.lowestTop(b) <= board.Lo.Z && plan.touchesBox(&s.Boxes[b]) {
			return "mattress." + b.word(), true
		}
	}
	return "", false
}

// footOnShelf tells what is left of the rail over a shelf that is lower than the rail's top.
func (s *Scene) footOnShelf(board *Solid, f *Finding) {
	low := math.Inf(1)
	for _, g := range s.Bed.Guards {
		low = min(low, s.Feet+g.Top)
	}
	if math.IsInf(low, 1) {
		return
	}
	f.Figures = append(f.Figures, Figure{railOver + board.Part.ID, low - board.Hi.Z, "mm"})
	if low > board.Hi.Z && board.Hi.Z > s.lowestTop(upperBed) {
		f.Notes = append(f.Notes, board.Part.ID+" is a foothold below the top of the rail: keep the bed's rail between it and the sleeper, or hang it higher")
	}
}
