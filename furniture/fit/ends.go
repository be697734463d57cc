package fit

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/furniture/yardstick"
)

var endHeight = Question{
	ID:       "end-height",
	Sentence: "Are the ends high enough over the mattress?",
	Group:    Safety,
	Why:      "A sleeper rolls over a low end as over a low rail.",
	How:      "Top edge of each end of the upper bed less the top of the thickest mattress, over at least half the length between the posts.",
	Caution:  "The counted half may be in several pieces. Measure again with the real mattress and its topper.",
	OfBed:    true,
	Propose:  []Driver{RailUp, ThinnerUpper, RailRow},
	Measure:  func(s *Scene) Finding { return s.endHeight() },
}

// A stretch is a piece of the top edge of an end: how high it stands over the mattress, and how long it is.
type stretch struct{ over, long float64 }

func (s *Scene) endHeight() Finding {
	const over, half = "us-end-over-mattress", "us-end-share"
	if s.Bed == nil {
		return unbuilt("ends", over, half)
	}
	var f Finding
	for _, side := range bedSides[2:] {
		list, between, parts := s.endTop(side)
		what := s.askThick(upperBed)
		high := []Reading{{At: "end." + side, Rows: []string{over}, Have: heightOverShare(list, between, yardstick.Figure(half)), Ask: what, Parts: parts}}
		s.addBuildTolerance(high)
		row, _, _ := s.row(over)
		counted := countHigh(list, func(h float64) bool { return row.Outcome(h) == yardstick.Pass })
		f.Readings = append(f.Readings, high[0], Reading{At: "end." + side + ".share", Rows: []string{half}, Have: EndShare(counted, between), Ask: what, Parts: parts})
	}
	return s.traced(f)
}

// endTop returns the top edge of an end between its posts: the barriers on it, and what is left at the height of the deck.
func (s *Scene) endTop(side string) (list []stretch, between float64, parts []string) {
	mtop, post := s.Bed.Upper.MattressTop, s.Bed.Sizes.Post.Thick.MM()
	between = s.Bed.Wide - 2*post
	bare := between
	for i := range s.Bed.Guards {
		g := &s.Bed.Guards[i]
		if clear := min(g.To, s.Bed.Wide-post) - max(g.From, post); g.Side == side && clear > 0 {
			list, bare = append(list, stretch{g.Top - mtop, clear}), bare-clear
			parts = append(parts, g.Parts...)
		}
	}
	if bare > 1e-6 {
		list = append(list, stretch{s.Bed.Upper.Top - mtop, bare})
	}
	return list, between, parts
}

// countHigh returns the lengths of the stretches that are high enough.
func countHigh(list []stretch, enough func(over float64) bool) []float64 {
	var out []float64
	for _, t := range list {
		if enough(t.over) {
			out = append(out, t.long)
		}
	}
	return out
}

// EndShare returns the part of the length between the posts, in percent, that the high lengths of an end add up to; all in one unit.
func EndShare(high []float64, between float64) float64 {
	sum := 0.0
	for _, l := range high {
		sum += l
	}
	return 100 * sum / between
}

// heightOverShare returns the greatest height that at least a share, in percent, of the length between the posts reaches.
func heightOverShare(list []stretch, between, share float64) float64 {
	sorted := slices.Clone(list)
	slices.SortStableFunc(sorted, func(a, b stretch) int { return cmp.Compare(b.over, a.over) })
	sum := 0.0
	for _, t := range sorted {
		sum += t.long
		if 100*sum >= share*between*(1-1e-12) {
			return t.over
		}
	}
	return math.NaN()
}
