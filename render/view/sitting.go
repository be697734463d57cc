package view

import (
	"math"
	"strconv"
	"strings"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/furniture/yardstick"
	"bunkwright/render"
	"bunkwright/room/geom"
)

// sitting is somebody who sits up in a bed, as the answer to that question has it: heights in mm over the floor.
type sitting struct {
	ref     string
	who     string // "Maren, 9"
	x       float64
	seat    float64 // top of the mattress
	tall    float64 // seated height
	free    float64 // headroom: from the mattress to the lowest thing over the head
	lowest  float64 // that thing's height
	what    string  // what that is
	spare   float64
	verdict fit.Verdict
	wants   string // what is missing to tell
	known   bool   // seated height and what is over the head are known
	legs    float64
}

// head returns the height of the crown of the head.
func (p *sitting) head() float64 { return p.seat + p.tall }

// sittings returns who sits up in the lower and in the upper bed.
func sittings(s *fit.Scene, answers []fit.Answer) [2]sitting {
	var out [2]sitting
	for i, id := range []string{"sit-up-bottom", "sit-up-top"} {
		p := &out[i]
		deck := decksOf(s.Bed)[i]
		*p = sitting{ref: "sitter." + deckNames[i], seat: heightOver(s, drawnTop(deck)), who: sleeperNames(s, deckNames[i]), legs: 1, x: deck.Mattress.C.X}
		if deck.HeadAtRight {
			p.legs = -1
		}
		for k := range answers {
			if answers[k].ID == id {
				p.take(s, deck, &answers[k])
			}
		}
	}
	return out
}

// decksOf returns the lower and the upper bed.
func decksOf(b *bunk.Bed) [2]*bunk.DeckAt { return [2]*bunk.DeckAt{&b.Lower, &b.Upper} }

// drawnTop returns the top of a mattress as it is drawn: flat on the deck where its thickness is not known.
func drawnTop(d *bunk.DeckAt) float64 {
	if math.IsNaN(d.MattressTop) {
		return d.Top
	}
	return d.MattressTop
}

// sameAir is by how much less air the seat that decides must have before the figure is drawn there and not at the pillow, mm.
const sameAir = 5.0

// take finds the seat that decides among the lines of the answer.
func (p *sitting) take(s *fit.Scene, deck *bunk.DeckAt, a *fit.Answer) {
	p.verdict, p.wants = a.Verdict, a.Ask
	free := math.NaN()
	for _, f := range a.Figures {
		if f.Name == "headroom" {
			free = f.Value
		}
	}
	if math.IsNaN(free) || !a.HasSpare {
		return
	}
	least, pillow, seat := math.Inf(1), -1, -1
	for i := range a.Lines {
		l := &a.Lines[i]
		if l.Row.ID != "own-sits" || l.Ask != "" {
			continue
		}
		least = min(least, l.Value)
		if seat < 0 || i == a.Decides {
			seat = i
		}
		if pillow < 0 && strings.HasSuffix(l.At, ".pillow") {
			pillow = i
		}
	}
	if seat < 0 {
		return
	}
	l := &a.Lines[seat]
	p.known, p.tall, p.spare = true, free-least, l.Value
	p.lowest = p.head() + l.Value
	if p.free = p.lowest - p.seat; math.Abs(p.free-free) < sameAir {
		p.free = free // as the answer has it, from whichever seat has the least
	}
	if len(l.Parts) > 1 {
		p.what = l.Parts[1]
	}
	at := l.At
	if pillow >= 0 && a.Lines[pillow].Value < l.Value+sameAir {
		at = a.Lines[pillow].At
	}
	p.sitAt(s, deck, at)
}

// sitAt puts the head where the seat is: at the pillow, opposite the ladder, or in the middle of the front edge.
func (p *sitting) sitAt(s *fit.Scene, deck *bunk.DeckAt, at string) {
	switch {
	case strings.HasSuffix(at, ".ladder"):
		p.x = wayInAt(s.Bed, deck)
		p.legs = math.Copysign(1, deck.Mattress.C.X-p.x)
	case strings.HasSuffix(at, ".front"):
	default:
		p.x = p.pillow(s, deck)
	}
}

// wayInAt returns how far along the bed somebody sits who has just climbed up.
func wayInAt(b *bunk.Bed, deck *bunk.DeckAt) float64 {
	lo, hi := deck.Mattress.Bounds()
	near := yardstick.Figure(yardstick.HeadCylinder)
	switch b.WayIn.Side {
	case "left":
		return lo.X + near
	case "right":
		return hi.X - near
	}
	return (b.WayIn.From + b.WayIn.To) / 2
}

// pillow returns where the head of who sits up from the pillow has the most air, as the question looks for it: the nearest place to the
// head end of the mattress that is as good as any.
func (p *sitting) pillow(s *fit.Scene, deck *bunk.DeckAt) float64 {
	const step = 50
	near, far := yardstick.Figure(yardstick.SeatNear), yardstick.Figure(yardstick.SeatFar)+p.tall
	end := deck.Mattress.C.X - p.legs*deck.Mattress.Half.X
	over := ceilingsOf(s)
	best, where := math.Inf(-1), near
	for d := near; d < far+step; d += step {
		if z := p.air(s, over, end+p.legs*min(d, far), deck.Mattress.C.Y); z > best+0.5 {
			best, where = z, min(d, far)
		}
	}
	return end + p.legs*where
}

// air returns the height of what is over a head at a place of the bed: for where it is drawn, not for how much there is.
func (p *sitting) air(s *fit.Scene, over ceilings, x, y float64) float64 {
	r := yardstick.Figure(yardstick.HeadCylinder)
	low := math.Inf(1)
	for _, d := range []geom.V3{{}, {X: r}, {X: -r}, {Y: r}, {Y: -r}} {
		if z, _, ok := over.at(s.ToRoom.Point(d.Add(geom.V3{X: x, Y: y})).XY()); ok {
			low = min(low, z)
		}
	}
	for i := range s.Bed.Parts {
		lo, hi := s.Bed.Parts[i].Box.Bounds()
		if lo.Z > p.seat && lo.X < x+r && hi.X > x-r && lo.Y < y+r && hi.Y > y-r {
			low = min(low, lo.Z)
		}
	}
	return low
}

// ink is what the spare is written in.
func (p *sitting) ink(c *canvas) render.Ink {
	if c.paper() {
		return render.InkMain
	}
	switch p.verdict {
	case fit.DoesNotFit:
		return render.InkNotFit
	case fit.TooClose:
		return render.InkTooClose
	case fit.Fits:
		return render.InkFits
	}
	return render.InkMain
}

// spareWords writes what is to spare over the head, as short as a drawing has it.
func (p *sitting) spareWords(c *canvas) string {
	words := fit.SpareWords(p.spare, yardstick.MM, c.o.Unit)
	words = strings.Replace(words, " to spare", " spare", 1)
	return strings.Replace(words, " mm", "", 1)
}

// heightOver turns a height over the post feet into one over the floor covering; a bed without a place stands on a hard floor.
func heightOver(s *fit.Scene, z float64) float64 {
	if s.Stands {
		return z + s.Feet
	}
	return z
}

// sleeperNames lists who sleeps in a bed, with their age.
func sleeperNames(s *fit.Scene, bed string) string {
	var names []string
	for _, p := range s.Job.Sleepers {
		if p.Bed != bed || p.Name == "" {
			continue
		}
		name := p.Name
		if p.Age > 0 {
			name += ", " + strconv.Itoa(int(p.Age))
		}
		names = append(names, name)
	}
	return strings.Join(names, "; ")
}
