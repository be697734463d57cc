package fit

import (
	"strings"

	"bunkwright/furniture/bunk"
)

var slatGaps = Question{
	ID:       "slat-gaps",
	Sentence: "Will the slats carry the mattress evenly?",
	Group:    Build,
	Why:      "A foam mattress sags into wide gaps, and a slat that walks lets it through.",
	How:      "Clear gap from slat to slat of each bed, and the open area under the mattress.",
	OfBed:    true,
	Propose:  []Driver{Slats},
	Measure:  func(s *Scene) Finding { return s.slatGaps() },
}

var (
	slatGapRows  = []string{"own-slat-gap", "eu-base-slat-gap", "uk-1987-surface-gap"}
	slatVentRows = []string{"eu-base-vent"}
)

func (s *Scene) slatGaps() Finding {
	if s.Bed == nil {
		return unbuilt("slats", append(slatVentRows[:1:1], slatGapRows...)...)
	}
	var f Finding
	for _, b := range []bed{upperBed, lowerBed} {
		d := s.deck(b)
		free := s.Bed.Inside.Wide - 2*s.Bed.Sizes.Ledge.Thick.MM()
		f.Readings = append(f.Readings,
			Reading{At: b.at(), Rows: slatGapRows, Have: d.SlatGap, U: s.gapU(), UKey: "bed.gaps", Parts: s.slatsOf(b)},
			Reading{At: b.at() + ".open", Rows: slatVentRows, Have: SlatVent(d.SlatGap, d.SlatCount, free), Edge: "between slats and ledges"})
	}
	f.Readings = append(f.Readings, s.confirmations("slat-gaps")...)
	return s.traced(f)
}

// SlatVent returns the open area between the slats and at both ends of them, in cm2, from sizes in mm: free is the clear width between
// the ledges.
func SlatVent(gap float64, slats int, free float64) float64 {
	return gap * float64(slats+1) * free / 100
}

func (s *Scene) slatsOf(b bed) []string {
	var out []string
	for i := range s.Bed.Parts {
		if p := &s.Bed.Parts[i]; p.Role == bunk.RoleSlat && strings.HasPrefix(p.ID, b.word()+".") {
			out = append(out, p.ID)
		}
	}
	return out
}
