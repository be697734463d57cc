package fit

import "bunkwright/room/geom"

var climbSpace = Question{
	ID:       "climb-space",
	Sentence: "Is there clear floor below the climbing end?",
	Group:    Safety,
	Why:      "Who climbs falls; what stands below decides how.",
	How:      "From the outer face of the climbing end to the nearest wall, heater or furniture. Carpet does not count as fall protection.",
	Caution:  "The figures are those of playgrounds with padding under them; no floor of a bedroom is that. Clear the floor and stay near small children.",
	Depends:  Standing | FarLean | Heaters | Furniture,
	Propose:  []Driver{ClimbEnd, Slide, Mirrored, OtherWall},
	Measure:  func(s *Scene) Finding { return s.climbSpace() },
}

var (
	climbSpaceRows = []string{"play-use-zone", "eu-impact-area"}
	carpetRows     = []string{"play-carpet-not-padding"}
)

// ImpactArea returns the clear floor that a playground text asks for beside a climbing part, in mm, from the fall height in mm: 1.5 m up to
// a fall of 1.5 m, above that two thirds of the fall and half a metre (EN 1176-1, calc-impact-area; secondary).
func ImpactArea(fall float64) float64 {
	if fall <= 1500 {
		return 1500
	}
	return fall*2/3 + 500
}

// HangFall returns the fall height of a hanging child, in mm, from the height of the highest grip: 1 m less (EN 1176-1, calc-hang-fall).
func HangFall(grip float64) float64 { return grip - 1000 }

func (s *Scene) climbSpace() Finding {
	switch {
	case s.Bed == nil && s.Job.Bed.Climb == nil || s.Bed != nil && s.Bed.Climb == nil:
		return absent("there is no climbing end")
	case !s.Stands:
		return Finding{Readings: []Reading{ask("floor", s.Wants, climbSpaceRows...)}}
	}
	all, want := s.onFloor()
	b := s.climbStrip()
	depth, what := s.free(b, s.across(b))
	for _, x := range all[len(s.Walls):] {
		if x.what == "bed" {
			continue
		}
		if d, ok := b.reach(x.outline); ok && d < depth && (d > touching || !x.own) { // parts of the bed may lie on the climbing face
			depth, what = d, x.what
		}
	}
	fall := s.highestFoothold()
	carpet := Reading{At: "carpet", Rows: carpetRows, Yes: false, Edge: "carpet is not counted as fall protection"}
	if s.Job.Room.Floor.Cover == "hard" {
		carpet.Skip = "the floor is hard"
	}
	return s.traced(Finding{
		Figures: []Figure{{"impact_area", ImpactArea(fall), "mm"}, {"fall_height", fall, "mm"}},
		Readings: []Reading{
			{At: "floor", Rows: climbSpaceRows, Have: depth, Ask: want, Parts: append([]string{what}, s.Bed.Climb.Parts...), Edge: "to " + what,
				Scope: []Scope{{Row: "eu-fall-surface-scope", Have: fall}}},
			carpet,
		},
	})
}

// climbStrip is the band of floor before the climbing end.
func (s *Scene) climbStrip() strip {
	c := s.Bed.Climb
	lo, hi := s.Bed.Foot.Bounds()
	d := geom.V3{X: 1}
	if c.End == "left" {
		d.X = -1
	}
	from := s.ToRoom.Point(geom.V3{X: c.Face, Y: (lo.Y + hi.Y) / 2}).XY()
	return strip{from: from, out: s.ToRoom.Dir(d).XY(), half: (hi.Y - lo.Y) / 2}
}

// highestFoothold returns how far one may fall who stands on the climbing end, over the floor.
func (s *Scene) highestFoothold() float64 {
	top := 0.0
	for _, h := range s.Bed.Climb.Footholds {
		top = max(top, s.overFloor(h.Top))
	}
	return top
}
