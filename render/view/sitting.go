package view

import (
	"strings"

	"bunkwright/furniture/fit"
)

// sitting is somebody who sits up in a bed, as the answer to that question has it: heights in mm over the floor.
type sitting struct {
	name   string
	seat   float64 // top of the mattress
	tall   float64 // seated height
	lowest float64 // the lowest thing over the head
	what   string  // what that is
	spare  float64
	answer fit.Answer
	known  bool // the head's place and what is over it are known
}

// sittings returns who sits up in the lower and in the upper bed.
func sittings(s *fit.Scene, answers []fit.Answer) [2]sitting {
	var out [2]sitting
	for i, id := range []string{"sit-up-bottom", "sit-up-top"} {
		deck := s.Bed.Lower
		if i == 1 {
			deck = s.Bed.Upper
		}
		out[i] = sitting{seat: heightOver(s, deck.MattressTop), name: sleeperNames(s, deckNames[i])}
		for _, a := range answers {
			if a.ID == id {
				out[i].take(a)
			}
		}
	}
	return out
}

func (p *sitting) take(a fit.Answer) {
	p.answer = a
	for _, f := range a.Figures {
		if f.Name == "headroom" && a.HasSpare {
			p.known = true
			p.lowest, p.tall, p.spare = p.seat+f.Value, f.Value-a.Value, a.Spare
			p.what = strings.TrimPrefix(a.Reason, "under ")
		}
	}
}

// heightOver turns a height over the post feet into one over the floor covering; a bed without a place stands on a hard floor.
func heightOver(s *fit.Scene, z float64) float64 {
	if s.Stands {
		return z + s.Feet
	}
	return z
}

// sleeperNames lists who sleeps in a bed.
func sleeperNames(s *fit.Scene, bed string) string {
	var names []string
	for _, p := range s.Job.Sleepers {
		if p.Bed == bed && p.Name != "" {
			names = append(names, p.Name)
		}
	}
	return strings.Join(names, ", ")
}
