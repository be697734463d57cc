package survey

import (
	"math"

	"bunkwright/room"
	"bunkwright/room/misread"
)

// A Chain is pieces along a wall that have to add up to a whole: a corner to a window, the window, and the rest of the wall. The pieces are
// readings of their own in the adjustment; this is the same sum as somebody with a pencil would make it.
type Chain struct {
	Wall       string
	Keys       []string // of the pieces, then of the whole
	Sum, Whole float64  // of the first readings, mm
	Tolerance  float64  // how far they may be apart before anybody is asked: 1/8 in, times the root of the number of pieces (project rule)
}

// Off is what the pieces are longer than the whole, mm.
func (c Chain) Off() float64 { return c.Sum - c.Whole }

// AddsUp tells whether the pieces agree with the whole.
func (c Chain) AddsUp() bool { return math.Abs(c.Off()) <= c.Tolerance+1e-6 }

// Chains lists the chains along the walls whose pieces and whole were all read, wall by wall.
func (s *Survey) Chains() []Chain {
	var out []Chain
	for _, key := range s.wallKeys() {
		w, _ := s.Room.Wall(key)
		whole := piece{"wall." + key + ".length", w.Length}
		add := func(prefix string, on room.OnWall, wide room.Measure) {
			if on.Wall != key {
				return
			}
			at, width := piece{prefix + ".at", on.At}, piece{prefix + ".wide", wide}
			out = appendChain(out, key, piece{prefix + ".far", on.Far}, at, width)
			rest, before := piece{prefix + ".rest", on.Rest}, len(out)
			if out = appendChain(out, key, whole, at, width, rest); len(out) == before {
				out = appendChain(out, key, whole, piece{prefix + ".far", on.Far}, rest)
			}
		}
		for i, d := range s.Room.Doors {
			add("door."+keyOr(d.Key, i), d.OnWall, d.Wide)
		}
		for i, w := range s.Room.Windows {
			add("window."+keyOr(w.Key, i), w.OnWall, w.Wide)
		}
	}
	return out
}

type piece struct {
	key  string
	read room.Measure
}

// appendChain adds a chain where all of it was read.
func appendChain(chains []Chain, wall string, whole piece, pieces ...piece) []Chain {
	c := Chain{Wall: wall, Tolerance: misread.QuietUpTo(len(pieces))}
	for _, p := range append(pieces, whole) {
		if len(p.read) == 0 {
			return chains
		}
		c.Keys = append(c.Keys, p.key)
	}
	for _, p := range pieces {
		c.Sum += p.read[0].Value.MM()
	}
	c.Whole = whole.read[0].Value.MM()
	return append(chains, c)
}
