package view

import (
	"bunkwright/furniture/bunk"
	"bunkwright/furniture/fit"
	"bunkwright/render"
)

// Named is one drawing of a job that can be asked for by itself.
type Named struct {
	Name  string // "plan", "wall-AB", as in a command or a file name
	Title string // "Room from above"
	Draw  func(Options) render.Drawing
}

// Drawings lists what can be drawn of a job, the room first. Where the bed cannot be built the views of it say why.
func Drawings(s *fit.Scene, answers []fit.Answer) []Named {
	out := []Named{
		{"plan", "Room from above", func(o Options) render.Drawing { return Plan(s, answers, o) }},
		{"room", "Room as it was read", func(o Options) render.Drawing { return RoomAsRead(s, o) }},
		{"section", "Section through both beds", func(o Options) render.Drawing { return Section(s, answers, o) }},
		{"stick", "Story stick", func(o Options) render.Drawing { return Stick(s, answers, o) }},
		{"sit-up", sitsUpTitle, func(o Options) render.Drawing { return whoSitsUp(s, o) }},
	}
	for i := range s.Walls {
		key := s.Walls[i].Key
		out = append(out, Named{"wall-" + key, "Wall " + between(key), func(o Options) render.Drawing { return Wall(s, answers, key, o) }})
	}
	return append(out, bedNamed(s)...)
}

// How far round and down the bed is seen from where nobody chose it, in degrees.
const (
	PlainTurn = 32
	PlainTilt = 26
)

func bedNamed(s *fit.Scene) []Named {
	corner := func(b *bunk.Bed, o Options) render.Drawing { return BedCorner(b, PlainTurn, PlainTilt, o) }
	return []Named{
		ofScene(s, "bed-front", "Bed from the front", BedFront),
		ofScene(s, "bed-left", "Bed from the left end", leftEnd),
		ofScene(s, "bed-right", "Bed from the right end", rightEnd),
		ofScene(s, "bed-above", "Bed from above", BedAbove),
		ofScene(s, "bed-corner", "Bed from a corner", corner),
	}
}

func ofScene(s *fit.Scene, name, title string, draw func(*bunk.Bed, Options) render.Drawing) Named {
	return Named{name, title, func(o Options) render.Drawing {
		if s.Bed == nil {
			return NoBed(s, title, o)
		}
		return ofBed(draw)(s, nil, o)
	}}
}
