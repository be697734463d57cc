package survey

import (
	"math"
	"slices"
	"strings"

	"bunkwright/room"
)

// Figures of our own, of s0: up to settled a room is settled without a reading, with errors five times what is honest; beyond distorted it is
// so far from any shape that the tests, which see small errors, tell nothing.
const (
	settled   = 5
	distorted = 100
)

// withoutGross works a room out that does not settle, or only far from any shape, because one length of its outline is grossly off, such as a 7 read for a 1: it sets each
// aside in turn. Where one alone will do, that is the one; where several would, the room is worked out without the one that goes best with the
// rest, and all are suspects. It returns nil where none will do.
func withoutGross(r *room.Room, o Options, b *builder) *builder {
	var best *builder
	var suspects []int
	possible := b.possibleAlone()
	for i, src := range b.s.Sources {
		if !possible[i] {
			continue
		}
		one, err := adjust(r, o, manner{keepAll: true, without: &src})
		if err != nil || one.s.adjusted.S0 > settled {
			continue
		}
		suspects = append(suspects, i)
		if best == nil || one.s.adjusted.VPV < best.s.adjusted.VPV {
			best = one
			slices.Reverse(suspects) // the best first
		}
	}
	if best != nil {
		best.s.gross = suspects
	}
	return best
}

// possibleAlone finds the lengths of the outline any one of which alone may be what is off: no triangle of three other readings has a side
// longer than the other two.
func (b *builder) possibleAlone() map[int]bool {
	out := map[int]bool{}
	between := map[[2]int][]int{}
	for i, src := range b.s.Sources {
		if p, ok := b.span(src); ok {
			between[p], out[i] = append(between[p], i), true
		}
	}
	n := len(b.corners)
	for i := range n {
		for j := i + 1; j < n; j++ {
			for k := j + 1; k < n; k++ {
				b.triangles(between[[2]int{i, j}], between[[2]int{j, k}], between[[2]int{i, k}], out)
			}
		}
	}
	return out
}

// triangles keeps of the readings those that are part of every triangle, of one reading a side, that cannot be.
func (b *builder) triangles(x, y, z []int, keep map[int]bool) {
	for _, i := range x {
		for _, j := range y {
			for _, k := range z {
				p, q, r := b.s.Sources[i].Value, b.s.Sources[j].Value, b.s.Sources[k].Value
				if 2*max(p, q, r)-(p+q+r) <= impossible {
					continue
				}
				for e := range keep {
					if e != i && e != j && e != k {
						delete(keep, e)
					}
				}
			}
		}
	}
}

// span returns the two corners that a length of the outline runs between, the first letter first.
func (b *builder) span(src Source) ([2]int, bool) {
	parts := strings.Split(src.Key, ".")
	if src.Index < 0 || len(parts) != 3 || parts[0] != "wall" && parts[0] != "diagonal" || parts[2] != "length" {
		return [2]int{}, false
	}
	ends := []rune(parts[1])
	if len(ends) != 2 {
		return [2]int{}, false
	}
	i, j := b.cornerIndex(string(ends[0])), b.cornerIndex(string(ends[1]))
	return [2]int{min(i, j), max(i, j)}, i >= 0 && j >= 0 && i != j
}

// grossly makes a conflict of the readings one of which kept the room from settling.
func (b *builder) grossly() {
	s := b.s
	if len(s.gross) == 0 {
		return
	}
	c := Conflict{Key: s.Sources[s.gross[0]].Key, Agree: impossible}
	for _, i := range s.gross {
		c.Suspects = append(c.Suspects, Suspect{Source: i, Off: s.found.Checks[i].Error})
	}
	first := &c.Suspects[0]
	if math.Abs(first.Off) < impossible {
		first.Off = math.Copysign(impossible, first.Off)
	}
	s.Conflicts = append(s.Conflicts, c)
}
