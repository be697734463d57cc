package fit

import (
	"math"

	"bunkwright/room/geom"
)

var ladderLanding = Question{
	ID:       "ladder-landing",
	Sentence: "Is there room to step off the ladder?",
	Group:    Build,
	Why:      "Whoever comes down backwards in the dark wants floor there, and no door.",
	How:      "Depth of free floor before the lowest tread, over its width: up to walls, furniture, heaters, a door's arc or a floor register.",
	Depends:  Standing | FarLean | Doors | Leaves | Registers | Heaters | Furniture,
	Propose:  []Driver{Slide, Mirrored, LadderEnd, LadderSide, OtherWall},
	Measure:  func(s *Scene) Finding { return s.landing() },
}

var landingRows = []string{"own-ladder-landing", "hud-bedside", "lth-bedside", "ada-bedside", "ud-bedside"}

func (s *Scene) landing() Finding {
	switch {
	case !s.Stands:
		return Finding{Readings: []Reading{ask("landing", s.Wants, landingRows...)}}
	case s.Bed.Steps == nil:
		return absent("there is no ladder")
	}
	b := s.beforeTread()
	all, want := s.onFloorBut(s.ladderAssembly())
	registers, unread := s.floorRegisters()
	depth, what := s.free(b, append(all, registers...))
	for _, g := range s.swings() {
		if d := s.untilDoor(b, g, depth); d < depth {
			depth, what = d, g.what
		}
		if g.ask != "" {
			want = or(want, g.ask)
		}
	}
	r := Reading{At: "landing", Rows: landingRows, Have: depth, Parts: append([]string{what}, s.Bed.Steps.Parts...), Edge: "up to " + what}
	return s.traced(s.stillUnread(or(want, unread), Finding{Readings: []Reading{r}}))
}

// beforeTread is the band of floor before the lowest tread.
func (s *Scene) beforeTread() strip {
	st := s.Bed.Steps
	out := s.ToRoom.Dir(st.Out.At(0)).XY()
	across := out.Left()
	front, lo, hi := math.Inf(-1), math.Inf(1), math.Inf(-1)
	for _, p := range s.inRoom(st.Foot) {
		front = max(front, p.Dot(out))
		lo, hi = min(lo, p.Dot(across)), max(hi, p.Dot(across))
	}
	return strip{from: out.Mul(front).Add(across.Mul((lo + hi) / 2)), out: out, half: (hi - lo) / 2}
}

// ladderAssembly names what the treads belong to.
func (s *Scene) ladderAssembly() string {
	for i := range s.Bed.Parts {
		if s.Bed.Parts[i].ID == s.Bed.Steps.Parts[0] {
			return s.Bed.Parts[i].Assembly
		}
	}
	return ""
}

// onFloorBut returns everything in the way on the floor but one assembly of the bed.
func (s *Scene) onFloorBut(assembly string) (all []stander, want string) {
	list, want := s.onFloor()
	for _, x := range list {
		if x.what != assembly {
			all = append(all, x)
		}
	}
	return all, want
}

// floorRegisters returns the registers in the floor; want is set where one is there whose place nobody read.
func (s *Scene) floorRegisters() (out []stander, want string) {
	for i := range s.Job.Room.Registers {
		rec, refs := &s.Job.Room.Registers[i], &s.Survey.Layout.Registers[i]
		if rec.In != "floor" {
			continue
		}
		what := s.keys.registers[i]
		if p, ok := s.rect(refs.SpotRefs, refs.Wide, refs.Deep); ok {
			out = append(out, stander{what: what, outline: p})
		} else {
			want = askAlong("the near edge of", what, rec.Wall, rec.From)
		}
	}
	return out, want
}

// untilDoor returns how deep the band is free of what a door sweeps.
func (s *Scene) untilDoor(b strip, g swing, depth float64) float64 {
	for _, l := range g.leaves {
		for _, c := range l.Sectors() {
			if d, ok := b.reachSector(c); ok {
				depth = min(depth, d)
			}
		}
		if d, ok := b.reach(l.HandleSweep()); ok {
			depth = min(depth, d)
		}
	}
	return depth
}

// outline returns the band's outline to a depth, anticlockwise.
func (b strip) outline(depth float64) geom.Polygon {
	across := b.out.Left().Mul(b.half)
	far := b.from.Add(b.out.Mul(max(depth, touching)))
	return geom.Polygon{b.from.Sub(across), far.Sub(across), far.Add(across), b.from.Add(across)}
}
