package fit

import (
	"math"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var wayOut = Question{
	ID:       "way-out",
	Sentence: "Is the window kept as a way out?",
	Group:    Safety,
	Why:      "In a fire the window is the second way out, and somebody has to come in by it.",
	How: "The clear opening of each window, less what the bed, its mattresses and shelves hide of it, looked at square to the wall, " +
		"within own-way-out-depth before it. Furniture that stays counts to any height where that is unread; where its place is unread, or " +
		"nobody said whether any stays, no window is counted on that is enough without it. " +
		"What is left is its largest free rectangle: area, width, height, and its lower edge as the sill. Of several windows the best counts. " +
		"A clear opening that nobody placed is taken in the middle of its window. A window that does not open is no way out.",
	Caution: "Open the window on the day, measure the clear opening and climb through it; local code and the landlord decide what counts as a way out.",
	Depends: Standing | FarLean | Windows | Panes | Furniture,
	Propose: []Driver{Slide, ShelfAlong, ShelfUp, DeckDown, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.wayOut() },
}

// SquareFeet returns an area in ft2 from two lengths in mm.
func SquareFeet(a, b float64) float64 { return a * b / squareFoot }

// squareFoot is 1 ft2 in mm2: (12 x 25.4)^2.
const squareFoot = 304.8 * 304.8

// The rows that a way out is held against beside its area, in the order of exit.have.
const (
	exitCount  = "irc-escape-count"
	exitArea   = "irc-escape-area"
	exitGround = "irc-escape-area-grade"
	exitHigh   = "irc-escape-height"
	exitWide   = "irc-escape-width"
	exitSill   = "irc-escape-sill"
	exitClear  = "nfpa-exits-clear"
)

// exit is what is left of one window.
type exit struct {
	key   string
	ask   string
	left  geom.Rectangle
	parts []string // the window, and what stands before it
}

// have returns area in ft2, height, width and sill in mm.
func (e *exit) have() [4]float64 {
	return [4]float64{SquareFeet(e.left.Wide(), e.left.High()), e.left.High(), e.left.Wide(), e.left.Lo.Y}
}

func (s *Scene) wayOut() Finding {
	rows := s.exitRows()
	switch {
	case s.unlisted(len(s.Job.Room.Windows), "window"):
		return Finding{Readings: s.exitsAsked("is there a window?", rows)}
	case len(s.Job.Room.Windows) == 0:
		return s.noExit(rows)
	case !s.Stands:
		return Finding{Readings: s.exitsAsked(s.Wants, rows)}
	}
	var exits []exit
	panes := s.panes()
	for i := range panes {
		exits = append(exits, s.exit(&panes[i]))
	}
	f := Finding{Readings: s.exitReadings(exits, rows)}
	f.Readings = append(f.Readings, s.confirmations("way-out")...)
	want := s.askPieces()
	f.Readings = append(f.Readings, s.exitsClear(panes, want))
	if want != "" {
		f.Readings = append(f.Readings, ask("furniture", want, exitCount))
	}
	f.Notes = s.otherExits()
	return f
}

// exitRows returns the rows of area, height, width and sill; which area is asked for hangs on the floor.
func (s *Scene) exitRows() [4]string {
	if s.Job.Room.Floor.Ground {
		return [4]string{exitGround, exitHigh, exitWide, exitSill}
	}
	return [4]string{exitArea, exitHigh, exitWide, exitSill}
}

// exitAt names the readings in the order of the rows.
var exitAt = [4]string{"opening.area", "opening.height", "opening.width", "opening.sill"}

// otherArea is the reading of the area that the floor does not ask for.
func (s *Scene) otherArea() Reading {
	if s.Job.Room.Floor.Ground {
		return Reading{At: "opening.area.upper", Rows: []string{exitArea}, Skip: "the floor is at ground level"}
	}
	return Reading{At: "opening.area.ground", Rows: []string{exitGround}, Skip: "the job does not say that the floor is at ground level"}
}

func (s *Scene) exitsAsked(what string, rows [4]string) []Reading {
	out := []Reading{ask("openings", what, exitCount)}
	for i, row := range rows {
		out = append(out, ask(exitAt[i], what, row))
	}
	return append(out, s.otherArea())
}

// noExit is the finding of a room without a window: not one opening, where a place asks for one.
func (s *Scene) noExit(rows [4]string) Finding {
	const why = "there is no window"
	if _, force, _ := s.row(exitCount); force == yardstick.NoForce {
		return absent(why)
	}
	f := Finding{Readings: []Reading{{At: "openings", Rows: []string{exitCount}, Edge: why}}, Notes: s.otherExits()}
	for i, row := range rows {
		f.Readings = append(f.Readings, Reading{At: exitAt[i], Rows: []string{row}, Skip: why})
	}
	return f
}

// otherExits tells of doors that lead outside: they may count as a way out, which is not for this question to say.
func (s *Scene) otherExits() []string {
	var out []string
	for i, d := range s.Job.Room.Doors {
		if d.LeadsTo == "outside" {
			out = append(out, s.keys.doors[i]+" leads outside: ask whether it counts as the way out of this room")
		}
	}
	return out
}

// exit finds what is left of a window.
func (s *Scene) exit(p *pane) exit {
	e := exit{key: p.key, ask: p.ask, parts: []string{p.key}}
	if p.shut {
		e.ask = "" // whatever is not read of it, it is no way out
		return e
	}
	if p.ask != "" {
		return e
	}
	if e.ask = s.thickBefore(p.wall, p.clear, yardstick.Figure(yardstick.WayOutDepth)); e.ask != "" {
		return e
	}
	taken, names := s.before(p.wall, p.clear)
	e.left = geom.LargestRectangle(p.clear, taken)
	e.parts = append(e.parts, names...)
	return e
}

// before returns what hides a rectangle of a wall from within own-way-out-depth, with the names of what does.
func (s *Scene) before(w *Wall, in geom.Rectangle) (taken []geom.Rectangle, names []string) {
	deep := yardstick.Figure(yardstick.WayOutDepth)
	list := append(s.shades(w, in, deep), s.pieceShades(w, in, deep)...)
	last := ""
	for _, sh := range list {
		taken = append(taken, sh.Rectangle)
		if sh.name != last {
			names, last = append(names, sh.name), sh.name
		}
	}
	return taken, names
}

// pieceShades returns what furniture that stays hides, as far as its place is known.
func (s *Scene) pieceShades(w *Wall, in geom.Rectangle, deep float64) []shade {
	var out []shade
	band := [2]float64{s.Furthest(w, in.Lo.Y, in.Hi.Y) - touch, s.Nearest(w, in.Lo.Y, in.Hi.Y) + deep}
	for i, refs := range s.Survey.Layout.Pieces {
		plan, ok := s.rect(refs.SpotRefs, refs.Wide, refs.Deep)
		if !ok {
			continue
		}
		high := s.v(refs.High)
		if math.IsNaN(high) {
			high = math.Inf(1)
		}
		if lo, hi, any := w.stretch(plan, band); any {
			r := geom.Rectangle{Lo: geom.V2{X: lo}, Hi: geom.V2{X: hi, Y: high}}
			if r.Overlaps(in) {
				out = append(out, shade{r, s.keys.pieces[i]})
			}
		}
	}
	return out
}

// exitReadings holds the number of openings that qualify, and the best of them, against the rows.
func (s *Scene) exitReadings(exits []exit, rows [4]string) []Reading {
	count, best, unread := 0, -1, ""
	most := math.Inf(-1)
	for i := range exits {
		e := &exits[i]
		if e.ask != "" {
			if unread == "" {
				unread = e.ask
			}
			continue
		}
		worst, all := s.rate(e, rows)
		if all {
			count++
		}
		if worst > most {
			best, most = i, worst
		}
	}
	if best < 0 || count == 0 && unread != "" {
		return s.exitsAsked(unread, rows)
	}
	return s.exitMeasured(&exits[best], count, rows)
}

// rate returns the least spare of a window, as a share of the need, over all that is asked of a way out, and whether all of it is met.
func (s *Scene) rate(e *exit, rows [4]string) (worst float64, all bool) {
	worst, all = math.Inf(1), true
	for i, have := range e.have() {
		row, _, _ := s.row(rows[i])
		worst = min(worst, row.Spare(have)/row.Need[0])
		all = all && row.Outcome(have) == yardstick.Pass
	}
	return worst, all
}

func (s *Scene) exitMeasured(e *exit, count int, rows [4]string) []Reading {
	edge := "what is left of " + e.key
	out := []Reading{{At: "openings", Rows: []string{exitCount}, Have: float64(count), Parts: e.parts, Edge: "windows that keep all of it"}}
	for i, have := range e.have() {
		out = append(out, Reading{At: exitAt[i], Rows: []string{rows[i]}, Have: have, Parts: e.parts, Edge: edge})
	}
	if e.left.Area() == 0 {
		out[4] = Reading{At: exitAt[3], Rows: []string{exitSill}, Skip: "nothing of the opening is left", Parts: e.parts}
	}
	return append(out, s.otherArea())
}

// exitsClear answers whether anything stands before a window or a door, within the same depth; want is what is missing of furniture.
func (s *Scene) exitsClear(panes []pane, want string) Reading {
	r := Reading{At: "clear", Rows: []string{exitClear}, Yes: true, Ask: want}
	if s.idle(r.Rows) {
		return r
	}
	for i := range panes {
		p := &panes[i]
		if p.shut {
			continue
		}
		if p.ask != "" {
			r.Ask = p.ask
			continue
		}
		r.blocked(s, p.key, p.wall, p.clear)
	}
	for i := range s.Job.Room.Doors {
		rec, refs := &s.Job.Room.Doors[i], &s.Survey.Layout.Doors[i]
		key := s.keys.doors[i]
		if what := s.askBeside(key, rec.OnWall, refs.OnWallRefs, refs.Wide); what != "" {
			r.Ask = what
			continue
		}
		w, lo, hi, _ := s.interval(refs.OnWallRefs, refs.Wide)
		r.blocked(s, key, w, geom.Rectangle{Lo: geom.V2{X: lo}, Hi: geom.V2{X: hi, Y: s.v(refs.High)}})
	}
	if !r.Yes {
		r.Ask = "" // one thing in the way is enough to tell
	}
	return r
}

func (r *Reading) blocked(s *Scene, key string, w *Wall, in geom.Rectangle) {
	if _, names := s.before(w, in); len(names) > 0 {
		r.Yes, r.Edge = false, names[0]+" stands before "+key
		r.Parts = append(append(r.Parts, key), names...)
	} else if what := s.thickBefore(w, in, yardstick.Figure(yardstick.WayOutDepth)); what != "" {
		r.Ask = what
	}
}
