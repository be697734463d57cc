package place

import (
	"fmt"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/job"
	"bunkwright/room/length"
)

// How far each driver goes: our own figures, beyond which nobody would call it the same bed.
const (
	mostDeck    = 12 * length.Inch
	mostLower   = 6 * length.Inch
	mostRail    = 8 * length.Inch
	mostPads    = 2 * length.Inch
	mostGap     = 4 * length.Inch
	mostPlay    = length.Inch
	mostScrew   = 2 * length.Inch
	mostShelf   = 24 * length.Inch
	mostBox     = 4 * length.Inch
	leastMatt   = 3 * length.Inch
	leastTravel = 8 * length.Inch
	mostTurns   = 3 // treads or slats more or less
)

// railBoards are what other boards a rail may be made of, as they are sold in inches.
var railBoards = []string{"1x4", "1x6", "1x8", "1x10", "2x4", "2x6"}

// attempts lists what a driver may do to the job of a scene, the least change first.
func attempts(s *fit.Scene, d fit.Driver) []attempt {
	g := &generator{s: s, j: s.Job, b: &s.Job.Bed, driver: d, step: StepOf(s.Job)}
	if s.Bed == nil {
		return nil
	}
	g.full = &s.Bed.Sizes
	if f, ok := generators[d]; ok {
		f(g)
	}
	return g.out
}

// A generator makes the attempts of one driver. Sizes that were not chosen are counted from their defaults.
type generator struct {
	s      *fit.Scene
	j      *job.Job
	b      *bunk.Sizes // as chosen
	full   *bunk.Sizes // with defaults
	driver fit.Driver
	step   length.Length
	out    []attempt
}

func (g *generator) add(edit func(*editor)) {
	g.out = append(g.out, attempt{driver: g.driver, edit: edit})
}

// steps adds one attempt for each multiple of a step up to a most.
func (g *generator) steps(step, most length.Length, edit func(e *editor, by length.Length)) {
	for by := step; by <= most; by += step {
		g.add(func(e *editor) { edit(e, by) })
	}
}

var generators map[fit.Driver]func(*generator)

func init() { // a table that would refer to itself otherwise
	generators = map[fit.Driver]func(*generator){
		fit.DeckUp:       func(g *generator) { g.deck(1) },
		fit.DeckDown:     func(g *generator) { g.deck(-1) },
		fit.LowerUp:      func(g *generator) { g.lower(1) },
		fit.LowerDown:    func(g *generator) { g.lower(-1) },
		fit.ThinnerUpper: func(g *generator) { g.thinner("upper") },
		fit.ThinnerLower: func(g *generator) { g.thinner("lower") },
		fit.RailUp:       (*generator).railUp,
		fit.RailRow:      (*generator).railRow,
		fit.RailStock:    (*generator).railStock,
		fit.RailAllRound: (*generator).railAllRound,
		fit.WayIn:        (*generator).wayIn,
		fit.LadderEnd:    (*generator).ladderEnd,
		fit.LadderSide:   (*generator).ladderSide,
		fit.Treads:       (*generator).treads,
		fit.ClimbEnd:     (*generator).climbEnd,
		fit.Slats:        (*generator).slats,
		fit.Play:         (*generator).play,
		fit.Mirrored:     (*generator).mirrored,
		fit.Slide:        (*generator).slide,
		fit.OtherWall:    (*generator).otherWall,
		fit.Notch:        (*generator).notch,
		fit.Pads:         (*generator).pads,
		fit.DrawerTravel: (*generator).drawerTravel,
		fit.DrawerLow:    (*generator).drawerLow,
		fit.ShelfUp:      func(g *generator) { g.shelfHeight(1) },
		fit.ShelfDown:    func(g *generator) { g.shelfHeight(-1) },
		fit.ShelfAlong:   (*generator).shelfAlong,
		fit.CleatShort:   (*generator).cleatShort,
		fit.ScrewLong:    (*generator).screwLong,
	}
}

func upOrDown(sign length.Length) string {
	if sign > 0 {
		return "up"
	}
	return "down"
}

// deck moves the upper deck; its rail goes with it.
func (g *generator) deck(sign length.Length) {
	g.steps(g.step, mostDeck, func(e *editor, by length.Length) {
		e.words = fmt.Sprintf("upper deck and its rail %s %s", e.say(by), upOrDown(sign))
		b := &e.j.Bed
		e.length("bed.upper.height", &b.Upper.Height, b.Upper.Height+sign*by)
		if b.Guard.Top != 0 {
			e.length("bed.guard.top", &b.Guard.Top, b.Guard.Top+sign*by)
		}
	})
}

func (g *generator) lower(sign length.Length) {
	g.steps(g.step, mostLower, func(e *editor, by length.Length) {
		e.words = fmt.Sprintf("lower deck %s %s", e.say(by), upOrDown(sign))
		e.length("bed.lower.height", &e.j.Bed.Lower.Height, e.j.Bed.Lower.Height+sign*by)
	})
}

func (g *generator) thinner(bed string) {
	of := func(b *bunk.Sizes) *bunk.Deck {
		if bed == "upper" {
			return &b.Upper
		}
		return &b.Lower
	}
	thick := of(g.b).MattressThick
	g.steps(2*g.step, thick-leastMatt, func(e *editor, by length.Length) {
		e.words = fmt.Sprintf("a mattress %s thinner on the %s bed, %s thick", e.say(by), bed, e.say(thick-by))
		e.length("bed."+bed+".mattress_thick", &of(&e.j.Bed).MattressThick, thick-by)
	})
}

func (g *generator) railUp() {
	top := g.full.Guard.Top
	g.steps(g.step, mostRail, func(e *editor, by length.Length) {
		e.words = "rail " + e.say(by) + " higher"
		e.length("bed.guard.top", &e.j.Bed.Guard.Top, top+by)
	})
}

// railRow adds a board; the rail's top then follows from the boards.
func (g *generator) railRow() {
	rows := g.full.Guard.Rows
	g.add(func(e *editor) {
		e.words = "one more rail board"
		e.count("bed.guard.rows", &e.j.Bed.Guard.Rows, rows+1)
		e.length("bed.guard.top", &e.j.Bed.Guard.Top, 0)
	})
}

func (g *generator) railStock() {
	if g.j.Unit == length.Millimetres.String() {
		return
	}
	for _, name := range railBoards {
		if name == g.full.Guard.Stock.Name {
			continue
		}
		g.add(func(e *editor) {
			e.words = "rail boards of " + name
			e.set("bed.guard.board", e.j.Bed.Guard.Stock.Name, name)
			stock := &e.j.Bed.Guard.Stock
			stock.Name, stock.Thick, stock.Wide, stock.Sheet = name, 0, 0, false
		})
	}
}

func (g *generator) railAllRound() {
	if !g.b.Guard.OpenWall && !g.b.Guard.OpenFront {
		return
	}
	g.add(func(e *editor) {
		e.words = "a rail on every side"
		e.flag("bed.guard.open_wall", &e.j.Bed.Guard.OpenWall, false)
		e.flag("bed.guard.open_front", &e.j.Bed.Guard.OpenFront, false)
	})
}

func (g *generator) wayIn() {
	gap := g.full.Guard.Gap
	if gap == 0 {
		return
	}
	g.steps(g.step, mostGap, func(e *editor, by length.Length) {
		e.words = "way in " + e.say(by) + " narrower"
		e.length("bed.guard.gap", &e.j.Bed.Guard.Gap, gap-by)
	})
	g.steps(g.step, mostGap, func(e *editor, by length.Length) {
		e.words = "way in " + e.say(by) + " wider"
		e.length("bed.guard.gap", &e.j.Bed.Guard.Gap, gap+by)
	})
}

func (g *generator) ladderEnd() {
	if g.b.Ladder == nil {
		return
	}
	to := g.full.Ladder.At.Other()
	g.add(func(e *editor) {
		e.words = "ladder at the " + string(to) + " end"
		word(e, "bed.ladder.at", &e.j.Bed.Ladder.At, to)
	})
}

func (g *generator) ladderSide() {
	if g.b.Ladder == nil {
		return
	}
	to, where := "end", "on the end"
	if g.b.Ladder.OnEnd {
		to, where = "front", "on the front"
	}
	g.add(func(e *editor) {
		e.words = "ladder " + where
		e.set("bed.ladder.on", map[bool]string{true: "end", false: "front"}[e.j.Bed.Ladder.OnEnd], to)
		e.j.Bed.Ladder.OnEnd = to == "end"
	})
}

func (g *generator) treads() {
	if g.b.Ladder == nil {
		return
	}
	n := g.full.Ladder.Treads
	for by := 1; by <= mostTurns; by++ {
		for _, to := range []int{n + by, n - by} {
			if to > 0 {
				g.add(func(e *editor) {
					e.words = fmt.Sprintf("%d treads", to)
					e.count("bed.ladder.treads", &e.j.Bed.Ladder.Treads, to)
				})
			}
		}
	}
}

func (g *generator) climbEnd() {
	if g.b.Climb == nil {
		return
	}
	to := g.full.Climb.At.Other()
	g.add(func(e *editor) {
		e.words = "climbing end at the " + string(to)
		word(e, "bed.climb.at", &e.j.Bed.Climb.At, to)
	})
}

func (g *generator) slats() {
	upper, lower := g.s.Bed.Upper.SlatCount, g.s.Bed.Lower.SlatCount
	for by := 1; by <= mostTurns; by++ {
		for _, which := range [][2]int{{by, 0}, {0, by}, {by, by}} {
			g.add(func(e *editor) {
				e.words = fmt.Sprintf("%d slats more on the upper bed, %d on the lower", which[0], which[1])
				if which[0] > 0 {
					e.count("bed.upper.slats", &e.j.Bed.Upper.Slats, upper+which[0])
				}
				if which[1] > 0 {
					e.count("bed.lower.slats", &e.j.Bed.Lower.Slats, lower+which[1])
				}
			})
		}
	}
}

func (g *generator) play() {
	play := g.full.Play
	for by := g.step / 2; by <= mostPlay; by += g.step / 2 {
		for _, to := range []length.Length{play - by, play + by} {
			if to > 0 {
				g.add(func(e *editor) {
					e.words = "frame " + e.say(to) + " larger than the mattress"
					e.length("bed.play", &e.j.Bed.Play, to)
				})
			}
		}
	}
}

// pads raises the whole bed over its feet: nothing within it changes.
func (g *generator) pads() {
	g.steps(g.step, mostPads, func(e *editor, by length.Length) {
		e.words = "pads " + e.say(by) + " thick under the feet (or posts that much longer): both decks and the rail higher"
		b := &e.j.Bed
		e.length("bed.lower.height", &b.Lower.Height, b.Lower.Height+by)
		e.length("bed.upper.height", &b.Upper.Height, b.Upper.Height+by)
		if b.Guard.Top != 0 {
			e.length("bed.guard.top", &b.Guard.Top, b.Guard.Top+by)
		}
	})
}

func (g *generator) drawerTravel() {
	if g.b.Drawers == nil {
		return
	}
	travel := g.full.Drawers.Travel
	g.steps(2*g.step, travel-leastTravel, func(e *editor, by length.Length) {
		e.words = "drawers that pull out " + e.say(by) + " less"
		e.length("bed.drawers.travel", &e.j.Bed.Drawers.Travel, travel-by)
	})
}

func (g *generator) drawerLow() {
	if g.b.Drawers == nil {
		return
	}
	high := g.full.Drawers.BoxHigh
	g.steps(g.step, min(mostBox, high/2), func(e *editor, by length.Length) {
		e.words = "drawer boxes " + e.say(by) + " lower"
		e.length("bed.drawers.box_high", &e.j.Bed.Drawers.BoxHigh, high-by)
	})
}
