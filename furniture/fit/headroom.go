package fit

import (
	"math"

	"bunkwright/furniture/people"
	"bunkwright/furniture/yardstick"
	"bunkwright/room/geom"
)

var sitUpTop = Question{
	ID:       "sit-up-top",
	Sentence: "Can the top sleeper sit up?",
	Group:    Comfort,
	Why:      "A head that meets the ceiling every morning makes the upper bed a place only to lie in.",
	How: "Air over the head: lowest thing over a free cylinder on the centre line of the mattress, less the mattress top, less the seated " +
		"height; the best place near the pillow, and the place opposite the ladder.",
	Depends: Standing | Ceiling | Fans | Lights | People,
	Propose: []Driver{DeckDown, ThinnerUpper, Slide, OtherWall},
	Measure: func(s *Scene) Finding { return s.sitUp(upperBed) },
}

var sitUpBottom = Question{
	ID:       "sit-up-bottom",
	Sentence: "Can the lower sleeper sit up?",
	Group:    Comfort,
	Why:      "Under the upper bed a head meets slats, ledges and side rails first.",
	How:      "As for the top sleeper, under whatever of the upper bed is over the cylinder; also near the open front edge.",
	Depends:  Standing | Ceiling | Fans | Lights | People,
	Propose:  []Driver{DeckUp, ThinnerLower, LowerDown},
	Measure:  func(s *Scene) Finding { return s.sitUp(lowerBed) },
}

var lieAndTurn = Question{
	ID:       "lie-and-turn",
	Sentence: "Is there room to lie and turn over?",
	Group:    Comfort,
	Why:      "Under a slope or a beam a sleeper turns over into it.",
	How:      "Lowest thing over the whole mattress less the mattress top, each bed.",
	Depends:  Standing | Ceiling | Fans | Lights,
	Propose:  []Driver{DeckDown, ThinnerUpper, DeckUp, ThinnerLower, Slide, OtherWall},
	Measure:  func(s *Scene) Finding { return s.lieAndTurn() },
}

// bed names one of the two beds.
type bed int

const (
	lowerBed bed = iota
	upperBed
)

func (b bed) word() string { return [...]string{"lower", "upper"}[b] }
func (b bed) at() string   { return [...]string{"bottom", "top"}[b] }

// deck returns the heights of a bed.
func (s *Scene) deck(b bed) *deckAt {
	if b == upperBed {
		return &s.Bed.Upper
	}
	return &s.Bed.Lower
}

// sitUp measures the air over everyone who sits up in a bed.
func (s *Scene) sitUp(b bed) Finding {
	rows := []string{"own-sits", yardstick.SeatClearance}
	who := s.sitters(b.word())
	switch {
	case !s.Stands:
		return Finding{Readings: []Reading{ask(b.at()+".pillow", s.Wants, rows...)}}
	case len(who) == 0:
		return Finding{Readings: []Reading{ask(b.at()+".pillow", "who sleeps in the "+b.word()+" bed?", rows...)}}
	}
	var f Finding
	free, air := math.Inf(1), math.Inf(1) // over the mattress, over the head
	for _, q := range who {
		for _, spot := range s.seats(b, q) {
			r := spot.reading(q, b, s, rows)
			f.Readings = append(f.Readings, r)
			if r.Ask == "" {
				free, air = min(free, r.Have+q.seated), min(air, r.Have)
			}
		}
	}
	if !math.IsInf(free, 1) {
		f.Readings = append(f.Readings, s.campReadings(b, free, air >= 0)...)
	}
	f.finish = func(a *Answer) {
		a.Band = posture(a)
		if !math.IsInf(free, 1) {
			if sex, any := growthSex(who); any {
				a.Figures = outgrown(free, sex)
			}
			a.Figures = append(a.Figures, Figure{"headroom", free, "mm"})
		}
	}
	return f
}

// growthSex is the sex that the growth figures are for: that of all children who sit there, unknown where they differ. any is false
// where only grown-ups do: they outgrow nothing.
func growthSex(who []sitter) (sex people.Sex, any bool) {
	for _, q := range who {
		switch {
		case q.grown:
		case !any:
			sex, any = q.sex, true
		case q.sex != sex:
			return people.Unknown, true
		}
	}
	return sex, any
}

// posture calls how the sitter who decides sits: freely only where 50 mm of air are beyond doubt.
func posture(a *Answer) string {
	if !a.HasSpare {
		return ""
	}
	clear, slump := yardstick.Figure(yardstick.SeatClearance), yardstick.Figure(yardstick.Slump)
	band := string(people.PostureBand(a.Spare, 0, clear, slump)) // the air over the head, as over a head at height 0
	if band == string(people.SitsFreely) && a.Spare-clear < a.PlusMinus {
		band = string(people.ErectTight)
	}
	return band
}

// seat is a place where a head may be, with the best free height there.
type seat struct {
	at string
	o  Overhead
}

func (t seat) reading(q sitter, b bed, s *Scene, rows []string) Reading {
	r := Reading{At: t.at, Rows: rows, U: q.u, UKey: q.key + ".stature ratio", Ask: q.ask, Parts: []string{"mattress." + b.word(), t.o.What}}
	if t.o.Ask != "" {
		r.Ask = t.o.Ask
	}
	r.Have = Headroom(t.o.Z, s.mattressTop(b)) - q.seated
	r.orThick(s, b)
	r.Uses = s.thickUses(b)
	if q.use.Key != "" {
		r.Uses = append(r.Uses, q.use)
	}
	r.Edge = "under " + t.o.What
	return r
}

// Headroom returns the free height over a mattress: the lowest thing over it less the top of the mattress, all in one unit
// (calc-headroom).
func Headroom(lowest, mattressTop float64) float64 { return lowest - mattressTop }

// mattressTop returns the height of the top of a mattress in the room, NaN where its thickness is not known.
func (s *Scene) mattressTop(b bed) float64 { return s.Feet + s.deck(b).MattressTop }

// seatStep is how closely the centre line is tried for the best seat, mm.
const seatStep = 50

// seats returns the places where somebody's head may be: the best near the pillow, and each further spot.
func (s *Scene) seats(b bed, q sitter) []seat {
	prefix := b.at()
	if q.name != "" {
		prefix += "." + q.name
	}
	near, far := yardstick.Figure(yardstick.SeatNear), yardstick.Figure(yardstick.SeatFar)+q.seated
	d, above := s.deck(b), s.above(b)
	best := Overhead{Z: math.Inf(-1)}
	for x := near; ; x += seatStep {
		x = min(x, far)
		if o := s.overHead(above, s.headX(d, x), s.middleY(d)); o.Ask != "" || o.Z > best.Z {
			best = o
		}
		if x == far || best.Ask != "" || s.brief && Headroom(best.Z, s.mattressTop(b)) >= q.seated {
			break
		}
	}
	out := []seat{{prefix + ".pillow", best}}
	if b == upperBed && s.Bed.Steps != nil {
		x, y := s.wayInSpot(d)
		out = append(out, seat{prefix + ".ladder", s.overHead(above, x, y)})
	}
	if b == lowerBed {
		y := d.Mattress.C.Y - d.Mattress.Half.Y + yardstick.Figure(yardstick.SeatFront)
		out = append(out, seat{prefix + ".front", s.overHead(above, d.Mattress.C.X, y)})
	}
	return out
}

// headX returns the place x mm from the head end of the mattress, in the bed's axes.
func (s *Scene) headX(d *deckAt, x float64) float64 {
	if d.HeadAtRight {
		return d.Mattress.C.X + d.Mattress.Half.X - x
	}
	return d.Mattress.C.X - d.Mattress.Half.X + x
}

func (s *Scene) middleY(d *deckAt) float64 { return d.Mattress.C.Y }

// wayInSpot returns the place on the centre line opposite the middle of the ladder gap; with the ladder on an end, the near end of it.
func (s *Scene) wayInSpot(d *deckAt) (x, y float64) {
	w := s.Bed.WayIn
	switch w.Side {
	case "left":
		return d.Mattress.C.X - d.Mattress.Half.X + yardstick.Figure(yardstick.HeadCylinder), s.middleY(d)
	case "right":
		return d.Mattress.C.X + d.Mattress.Half.X - yardstick.Figure(yardstick.HeadCylinder), s.middleY(d)
	}
	return (w.From + w.To) / 2, s.middleY(d)
}

// overHead returns the lowest thing over a head, of some solids, at a place in the bed's axes.
func (s *Scene) overHead(above []*Solid, x, y float64) Overhead {
	p := s.ToRoom.Point(geom.V3{X: x, Y: y}).XY()
	return s.over(disc(p, yardstick.Figure(yardstick.HeadCylinder)), above)
}

// campReadings holds the free height against the rules of camps, ships and worker housing, which are only shown.
func (s *Scene) campReadings(b bed, free float64, sits bool) []Reading {
	if b == upperBed {
		return []Reading{
			{At: "top.free", Have: free, Rows: []string{"ny-camp", "md-camp-upper", "mi-camp-upper", "wi-camp-upper", "or-camp-upper",
				"oh-resident-camp-upper", "oh-labor-upper", "fl-labor-upper"}},
			{At: "top.loft", Have: free + s.Bed.Upper.MattressTop - s.Bed.Upper.Top, Rows: []string{"irc-loft"}},
			{At: "top.resident", Yes: sits, Rows: []string{"pa-resident"}},
		}
	}
	return []Reading{
		{At: "bottom.free", Have: free, Rows: []string{"md-camp-lower", "mi-camp-lower", "wi-camp-lower", "or-camp-lower",
			"oh-resident-camp-lower", "oh-labor-lower", "osha-labor", "wa-labor", "fl-labor-lower", "nc-child"}},
		{At: "bottom.berth", Have: s.Bed.Upper.Frame - s.Bed.Lower.Underside, Rows: []string{"uscg-modu-gap"}},
	}
}

// lieAndTurn measures the free height over the whole of each mattress.
func (s *Scene) lieAndTurn() Finding {
	rows := []string{"own-lie-height"}
	if !s.Stands {
		return Finding{Readings: []Reading{ask("mattress", s.Wants, rows...)}}
	}
	var f Finding
	for _, b := range []bed{upperBed, lowerBed} {
		box := s.Boxes[b]
		o := s.over(patch(box.Footprint()), s.above(b))
		r := Reading{At: b.at(), Rows: rows, Have: Headroom(o.Z, s.mattressTop(b)), Ask: o.Ask, Parts: []string{"mattress." + b.word(), o.What}, Edge: "under " + o.What}
		r.orThick(s, b)
		f.Readings = append(f.Readings, r)
		if r.Ask == "" {
			f.Readings = append(f.Readings, Reading{At: b.at() + ".berth", Have: r.Have, Rows: []string{"fmcsa-sleeper", "uscg-passenger"}})
		}
	}
	return f
}
