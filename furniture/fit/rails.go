package fit

var railHeight = Question{
	ID:       "rail-height",
	Sentence: "Is the rail high enough over the mattress?",
	Group:    Safety,
	Why:      "A thick mattress beats a guardrail: the sleeper rolls over it.",
	How:      "Top edge of the lowest rail less the top of the thickest mattress, and less the base; the thickest mattress each place would take.",
	Caution:  "Measure again with the real mattress and its topper on the deck, and write the thickest mattress inside the end.",
	OfBed:    true,
	Propose:  []Driver{RailUp, ThinnerUpper, RailRow, RailStock},
	Measure:  func(s *Scene) Finding { return s.railHeight() },
}

// US texts ask this of guardrails alone and leave the ends to a rule of their own; the others ask it of the barrier all round.
var (
	railOverRows    = []string{"us-rail-over-mattress", "or-camp-rail", "wi-camp-rail"}
	barrierOverRows = []string{"eu-rail-over-mattress", "au-rail-over-mattress"}
	overBaseRows    = []string{"eu-rail-over-base", "au-rail-over-base", "eu-barrier-height", "eu-guardrail-height"}
)

// RailOverMattress returns how far a rail stands over the mattress: both measured from the base, all in one unit.
func RailOverMattress(railOverBase, mattress float64) float64 { return railOverBase - mattress }

func (s *Scene) railHeight() Finding {
	if s.Bed == nil {
		return Finding{Readings: []Reading{ask("rail", noBed, railOverRows...), ask("barrier", noBed, barrierOverRows...), ask("barrier.base", noBed, overBaseRows...)}}
	}
	rail, barrier := s.lowestGuard(long), s.lowestGuard(anySide)
	f := Finding{Readings: []Reading{
		s.overMattress("rail", rail, railOverRows), s.overMattress("barrier", barrier, barrierOverRows), s.overBase(barrier)}}
	s.addBuildTolerance(f.Readings)
	f.Figures = s.thickestMattress()
	return f
}

const noBed = "choose sizes of which a bed can be built"

// overMattress measures a rail over the thickest mattress. Where there is none it stands no higher than the deck.
func (s *Scene) overMattress(at string, g *guardAt, rows []string) Reading {
	d := s.Bed.Upper
	r := Reading{At: at, Rows: rows, Have: RailOverMattress(s.railOverBase(g), d.MattressTop-d.Top), Ask: s.askThick(upperBed),
		Parts: []string{"mattress.upper"}, Uses: s.thickUses(upperBed)}
	r.onRail(g)
	return r
}

func (s *Scene) overBase(g *guardAt) Reading {
	r := Reading{At: "barrier.base", Rows: overBaseRows, Have: s.railOverBase(g), Uses: []Use{s.heightUse(upperBed)}}
	r.onRail(g)
	return r
}

// onRail tells which rail a reading is about.
func (r *Reading) onRail(g *guardAt) {
	r.Edge = "there is no rail"
	if g != nil {
		r.Edge, r.Parts = "the rail on the "+g.Side, append(r.Parts, g.Parts...)
		r.Uses = append(r.Uses, Use{"bed.guard.top", g.Top, "mm", "chosen"})
	}
}

// railOverBase returns how far a rail stands over the deck of the upper bed, 0 where there is none.
func (s *Scene) railOverBase(g *guardAt) float64 {
	if g == nil {
		return 0
	}
	return g.Top - s.Bed.Upper.Top
}

func long(side string) bool    { return side == "front" || side == "wall" }
func anySide(side string) bool { return true }

// lowestGuard returns the run of rail whose top edge is lowest on some sides, nil where there is none.
func (s *Scene) lowestGuard(on func(side string) bool) *guardAt {
	var low *guardAt
	for i := range s.Bed.Guards {
		if g := &s.Bed.Guards[i]; on(g.Side) && s.barrier(g) && (low == nil || g.Top < low.Top) {
			low = g
		}
	}
	return low
}

// barrier tells whether a guard stands over the frame of the bed; an end that nothing but its own member closes has none.
func (s *Scene) barrier(g *guardAt) bool {
	return g.Top > s.Bed.Upper.Frame+s.Bed.Sizes.Rail.Wide.MM()+1e-6
}
