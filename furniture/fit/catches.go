package fit

import "math"

var nothingCatches = Question{
	ID:       "nothing-catches",
	Sentence: "Is the bed free of parts that could catch clothing?",
	Group:    Safety,
	Why:      "A hood or a cord that catches on a post or a bolt head holds a child who climbs down.",
	How:      "The highest post over its neighbour, and how far the proudest bolt or screw head stands out of an outside face.",
	Caution:  "Hang nothing on the bed: no cords, belts, bags or hooks.",
	OfBed:    true,
	Measure:  func(s *Scene) Finding { return s.nothingCatches() },
}

func (s *Scene) nothingCatches() Finding {
	const post, head = "eu-post-over-neighbour", "au-protrusion"
	f := Finding{Readings: s.confirmations("nothing-catches")}
	if s.Bed == nil {
		f.Readings = append(f.Readings, ask("posts", noBed, post), ask("heads", noBed, head))
		return f
	}
	out := s.Bed.Sizes.BoltStandOff
	heads := Reading{At: "heads", Rows: []string{head}, Have: out.Value.MM(), Edge: "the proudest bolt or screw head",
		Uses: []Use{{"bed.bolt_stand_out", out.Value.MM(), "mm", "chosen"}}}
	if !out.Set {
		heads.Ask = "how far does the proudest bolt or screw head stand out of an outside face? 0 where all are flush"
	}
	f.Readings = append(f.Readings, s.highestPost(post), heads)
	return s.traced(f)
}

// highestPost measures the post that stands furthest over the rail or end beside it; negative where it ends below.
func (s *Scene) highestPost(row string) Reading {
	r := Reading{At: "posts", Rows: []string{row}, Have: math.Inf(-1)}
	for _, p := range s.Bed.Posts {
		if d := p.Top - p.Neighbour; d > r.Have {
			r.Have, r.Parts, r.Edge = d, []string{p.Part}, p.Part
		}
	}
	return r
}
