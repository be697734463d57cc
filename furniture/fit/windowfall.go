package fit

import (
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var windowFall = Question{
	ID:       "window-fall",
	Sentence: "Is a child on the bed kept from falling out of the window?",
	Group:    Safety,
	Why:      "A mattress beside a window is a floor with a low sill.",
	How: "Where the ground outside is further below the clear opening than irc-fall-drop says: sill less mattress top for each mattress " +
		"within own-bed-beside of the window, level. A window with a guard, or one that does not open, is left out; a guard that nobody " +
		"entered counts as none, and a window that only opens a little still counts for the sill.",
	Caution: "A stop or guard must let the window open from inside in a fire. Screens hold nobody.",
	Depends: Standing | FarLean | Windows | Panes,
	Propose: []Driver{Slide, DeckDown, LowerDown, ThinnerUpper, Mirrored, OtherWall},
	Measure: func(s *Scene) Finding { return s.windowFall() },
}

const (
	fallDrop = "irc-fall-drop"
	fallSill = "irc-fall-sill"
)

// windowFallRows are the rows of one window: of the sill over a mattress beside it, of how far it opens, of the bed before it, of
// the bed near it.
var windowFallRows = [4][]string{
	{"own-window-sill", "own-sill-over-mattress"},
	{"irc-fall-opening", "cpsc-window-stop"},
	{"cpsc-window-furniture"},
	{"nz-window-near"},
}

// SillOverMattress returns how far a sill is over a mattress beside it: both heights over the floor, in one unit.
func SillOverMattress(sill, mattressTop float64) float64 { return sill - mattressTop }

func (s *Scene) windowFall() Finding {
	switch {
	case s.unlisted(len(s.Job.Room.Windows), "window"):
		return Finding{Readings: []Reading{ask("window", "is there a window?", windowFallRows[0]...)}}
	case len(s.Job.Room.Windows) == 0:
		return absent("there is no window")
	case !s.Stands:
		return Finding{Readings: []Reading{ask("window", s.Wants, windowFallRows[0]...)}}
	}
	var f Finding
	panes := s.panes()
	for i := range panes {
		f.Readings = append(f.Readings, s.fallReadings(&panes[i])...)
		f.Notes = append(f.Notes, s.otherSill(&panes[i])...)
	}
	return f
}

// otherSill tells of a sill that only buildings under the other code count as low.
func (s *Scene) otherSill(p *pane) []string {
	_, force, _ := s.row("irc-fall-opening")
	low, _, _ := s.row(fallSill)
	other, _, _ := s.row("ibc-fall-sill")
	sill := s.v(s.Survey.Layout.Windows[p.place].Sill)
	if force == yardstick.NoForce || low.Outcome(sill) != yardstick.NotApplies || other.Outcome(sill) != yardstick.Applies {
		return nil
	}
	return []string{p.key + ": in a building under the IBC a sill is low where it is " + Line{Row: other}.Against(s.unit())}
}

func (s *Scene) fallReadings(p *pane) []Reading {
	skip, doubt, what := s.fallApplies(p)
	out := make([]Reading, 0, 5)
	for _, b := range [2]bed{lowerBed, upperBed} {
		out = append(out, s.sillReading(p, b, skip, what))
	}
	out = append(out, s.opensReading(p, skip))
	for k, at := range [2]string{".before", ".near"} {
		r := Reading{At: p.key + at, Rows: windowFallRows[2+k], Skip: skip, Ask: what, Parts: []string{p.key}}
		if skip == "" && what == "" {
			s.answerNear(&r, p, k == 0)
		}
		out = append(out, r)
	}
	for i := range out {
		out[i].Doubt = doubt
	}
	return out
}

// fallApplies tells why a window is left out, why it may have to be, or what is missing to tell.
func (s *Scene) fallApplies(p *pane) (skip, doubt, what string) {
	rec := &s.Job.Room.Windows[p.place]
	row, _, _ := s.row(fallDrop)
	ref := s.Survey.Layout.Windows[p.place].Drop
	drop := s.v(ref)
	doubt = s.doubt(row, drop, s.Survey.Sigma(ref), Question{Group: Safety}.cover())
	switch {
	case p.shut:
		return p.key + " does not open", "", ""
	case rec.Guard == "yes":
		return "a guard is fitted to " + p.key, "", ""
	case doubt == "" && row.Outcome(drop) == yardstick.NotApplies:
		return s.outsideWords(row), "", ""
	case p.where != "":
		return "", doubt, p.where
	case row.Outcome(drop) == yardstick.NotJudged:
		return "", "", "how far below the clear opening of " + p.key + " on wall " + rec.Wall + " is the ground outside?"
	}
	return "", doubt, ""
}

func (s *Scene) sillReading(p *pane, b bed, skip, what string) Reading {
	r := Reading{At: p.key + "." + b.word(), Rows: windowFallRows[0], Skip: skip, Ask: what, Parts: []string{p.key, "mattress." + b.word()}}
	if skip != "" || p.where != "" {
		return r
	}
	if s.mattressFrom(p, b) > yardstick.Figure(yardstick.BedBeside) {
		r.Skip = "the " + b.word() + " mattress does not lie beside " + p.key
		return r
	}
	r.Have = SillOverMattress(p.whole.Lo.Y, s.mattressTop(b))
	r.Edge = "the " + b.word() + " mattress lies beside " + p.key
	r.orThick(s, b)
	r.Uses = s.thickUses(b)
	return r
}

// mattressFrom returns the level distance of a mattress from a window.
func (s *Scene) mattressFrom(p *pane, b bed) float64 {
	x, y := p.ends(s)
	return planGap(s.Boxes[b].Footprint(), geom.Polygon{x, y})
}

// opensReading is how far the window opens; whether that counts hangs on the drop and on the sill over the floor.
func (s *Scene) opensReading(p *pane, skip string) Reading {
	rec, refs := &s.Job.Room.Windows[p.place], &s.Survey.Layout.Windows[p.place]
	r := Reading{At: p.key + ".opens", Rows: windowFallRows[1], Skip: skip, Parts: []string{p.key}, Have: s.v(refs.Opens)}
	if s.unread(refs.Opens) {
		r.Ask = "how far does " + p.key + " on wall " + rec.Wall + " open?"
	}
	drop := Scope{Row: fallDrop, Have: s.v(refs.Drop), U: s.Survey.Sigma(refs.Drop)}
	sill := Scope{Row: fallSill, Have: s.v(refs.Sill), U: s.Survey.Sigma(refs.Sill)}
	if s.unread(refs.Drop) {
		drop.Ask = "how far below the clear opening of " + p.key + " on wall " + rec.Wall + " is the ground outside?"
	}
	if s.unread(refs.Sill) {
		sill.Ask = askHigh("the sill of", p.key, rec.Wall)
	}
	r.Scope = []Scope{drop, sill}
	return r
}

// answerNear answers whether the bed stands before the window itself, or near it at all; how near is own-bed-beside.
func (s *Scene) answerNear(r *Reading, p *pane, before bool) {
	near := yardstick.Figure(yardstick.BedBeside)
	if before {
		hidden := s.shades(p.wall, p.whole, near)
		if r.Yes = len(hidden) == 0; !r.Yes {
			r.Edge, r.Parts = hidden[0].name+" stands before "+p.key, append(r.Parts, hidden[0].name)
		} else {
			r.Ask = s.thickBefore(p.wall, p.whole, near)
		}
		return
	}
	a, b := p.ends(s)
	if r.Yes = planGap(s.foot(), geom.Polygon{a, b}) > near; !r.Yes {
		r.Edge = "the bed stands beside " + p.key
	}
}
