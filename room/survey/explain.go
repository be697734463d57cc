package survey

import (
	"math"
	"strings"

	"bunkwright/room"
	"bunkwright/room/length"
	"bunkwright/room/misread"
)

// mostCauses is how many causes of one reading are worth asking about.
const mostCauses = 4

// explain looks up what a suspect may come from.
func (b *builder) explain(s *Suspect) {
	src := b.s.Sources[s.Source]
	u := 0.0
	if c := b.s.found.Checks[s.Source]; c.Checked() {
		u = src.U / math.Sqrt(c.Redundancy) // of how far it is off
	}
	causes := misread.Causes(src.Exact, src.Value-s.Off, u, b.taking(src.Key))
	if b.s.leans(src.Key) {
		causes = append(causes, misread.Cause{Signature: misread.Find(misread.OutOfPlumb), Read: src.Exact, Value: src.Exact})
	}
	s.Causes = causes[:min(len(causes), mostCauses)]
}

// taking tells how a quantity is read.
func (b *builder) taking(key string) misread.Context {
	table, rest, _ := strings.Cut(key, ".")
	last := rest[strings.LastIndexByte(rest, '.')+1:]
	c := misread.Context{Unit: b.o.Unit, Inside: inside(table, last), Casing: b.casing(key)}
	if last == "far" || last == "rest" {
		c.Pieces = 3
	}
	return c
}

// inside tells whether a measure runs between two faces, so that a tape's case has to be added.
func inside(table, measure string) bool {
	switch measure {
	case "length", "low", "high":
		return table == "wall" || table == "diagonal"
	case "height":
		return table == "ceiling"
	case "wide":
		return table == "door" || table == "window"
	}
	return measure == "clear_wide" || measure == "clear_high" || measure == "rest"
}

// casing returns the width of the trim round the opening that a key belongs to, 0 where there is none or nobody read it.
func (b *builder) casing(key string) length.Length {
	of := func(table, name string, i int, m room.Measure) length.Length {
		if strings.HasPrefix(key, table+"."+keyOr(name, i)+".") && len(m) > 0 {
			return m[0].Value
		}
		return 0
	}
	for i, d := range b.s.Room.Doors {
		if l := of("door", d.Key, i, d.Casing); l > 0 {
			return l
		}
	}
	for i, w := range b.s.Room.Windows {
		if l := of("window", w.Key, i, w.Casing); l > 0 {
			return l
		}
	}
	return 0
}

// leans tells whether a key is a length of a wall whose readings low, in the middle and high change steadily.
func (s *Survey) leans(key string) bool {
	parts := strings.Split(key, ".")
	if len(parts) != 3 || parts[0] != "wall" || parts[2] != "length" && parts[2] != "low" && parts[2] != "high" {
		return false
	}
	w, ok := s.Room.Wall(parts[1])
	return ok && len(w.LowLength) > 0 && len(w.Length) > 0 && len(w.HighLength) > 0 &&
		misread.Trend(w.LowLength[0].Value, w.Length[0].Value, w.HighLength[0].Value)
}
