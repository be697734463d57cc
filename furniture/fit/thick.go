package fit

import (
	"math"

	"bunkwright/furniture/bunk"
	"bunkwright/room/geom"
)

// What hangs on how thick a mattress is cannot be told while nobody said so: there is no usual thickness that a rail or a head could
// rest on.

// askThick asks for the thickness of a mattress, "" where it is known.
func (s *Scene) askThick(b bed) string {
	if !math.IsNaN(s.deck(b).MattressTop) {
		return ""
	}
	return "how thick is the " + b.word() + " mattress, topper included?"
}

// orThick asks for the thickness of a mattress where a reading asks for nothing else yet.
func (r *Reading) orThick(s *Scene, b bed) {
	if r.Ask == "" && r.Skip == "" {
		r.Ask = s.askThick(b)
	}
}

// heightUse is the height of a deck as an input.
func (s *Scene) heightUse(b bed) Use {
	return Use{"bed." + b.word() + ".height", s.deck(b).Top, "mm", "chosen"}
}

// thickUses are the inputs of the height of a mattress top: those that are known.
func (s *Scene) thickUses(b bed) []Use {
	d, out := s.deck(b), []Use{s.heightUse(b)}
	if thick := d.MattressTop - d.Top; !math.IsNaN(thick) {
		out = append(out, Use{"bed." + b.word() + ".mattress_thick", thick, "mm", "chosen"})
	}
	return out
}

// lowestTop is the lowest that the top of a mattress may lie in the room: the deck itself while its thickness is not known.
func (s *Scene) lowestTop(b bed) float64 {
	if s.askThick(b) != "" {
		return s.Feet + s.deck(b).Top
	}
	return s.mattressTop(b)
}

// thickest is the thickness, mm, beyond which no mattress needs to be thought of.
var thickest = bunk.ThickestMattress.MM()

// thickBefore asks for the thickness of a mattress that may hide some of a rectangle of a wall from within deep of its face, "" where
// none can.
func (s *Scene) thickBefore(w *Wall, in geom.Rectangle, deep float64) string {
	band := [2]float64{s.Furthest(w, in.Lo.Y, in.Hi.Y) - touch, s.Nearest(w, in.Lo.Y, in.Hi.Y) + deep}
	for _, b := range [2]bed{lowerBed, upperBed} {
		what := s.askThick(b)
		if low := s.lowestTop(b); what == "" || low >= in.Hi.Y || low+thickest <= in.Lo.Y {
			continue
		}
		if lo, hi, ok := w.stretch(s.Boxes[b].Footprint(), band); ok && lo < in.Hi.X && hi > in.Lo.X {
			return what
		}
	}
	return ""
}

// thickNear asks for the thickness of a mattress that may come nearer to a fitting than d, "" where none can.
func (s *Scene) thickNear(f *fitting, d float64, beds ...bed) string {
	for _, b := range beds {
		box := &s.Boxes[b]
		if what := s.askThick(b); what != "" && f.from(planFrom(box, f.at), box.Bottom(), box.Bottom()+thickest) < d {
			return what
		}
	}
	return ""
}
