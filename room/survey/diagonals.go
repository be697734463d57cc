package survey

import (
	"math"
	"strings"

	"bunkwright/room"
)

// LeftOut is a reading of a diagonal that no room with these walls can have. The outline was worked out without it.
type LeftOut struct {
	Key         string // "diagonal.AC.length"
	Index       int    // which reading of it, 0 the first
	Value       float64
	Corners     string  // the corners that the walls in question run by: "ABC"
	Least, Most float64 // what those walls, as read, leave for it, mm
}

// impossible is how far a diagonal may be outside what the walls leave for it, in mm: what is off by less the adjustment weighs (our own
// figure).
const impossible = 50

func (b *builder) diagonal(d room.Diagonal) {
	i, j, ok := b.ends(d)
	if !ok {
		return
	}
	key := "diagonal." + d.Key + ".length"
	for k, r := range d.Length {
		out := b.leaveOut(key, k, i, j, r.Value.MM())
		b.readOne(key, k, r, func(v, u float64) Equation {
			return DistanceEquation(key, b.corners[i], b.corners[j], v, u)
		})
		if out {
			b.s.Sources[len(b.s.Sources)-1].Aside = true
		}
	}
}

// possible returns the readings of a diagonal that the walls allow, and notes the others.
func (b *builder) possible(d room.Diagonal) room.Measure {
	i, j, ok := b.ends(d)
	var out room.Measure
	for k, r := range d.Length {
		if !ok || !b.leaveOut("diagonal."+d.Key+".length", k, i, j, r.Value.MM()) {
			out = append(out, r)
		}
	}
	return out
}

// ends returns the corners of a diagonal.
func (b *builder) ends(d room.Diagonal) (i, j int, ok bool) {
	letters := []rune(d.Key)
	if len(letters) != 2 {
		return 0, 0, false
	}
	i, j = b.cornerIndex(string(letters[0])), b.cornerIndex(string(letters[1]))
	return i, j, i >= 0 && j >= 0 && i != j
}

// leaveOut notes a reading that the walls on one side of it or on the other do not allow: no side of a polygon is longer than the rest of
// them together.
func (b *builder) leaveOut(key string, index, i, j int, value float64) bool {
	if b.keepAll {
		return false
	}
	for _, way := range [][2]int{{i, j}, {j, i}} {
		least, most, ok := b.apart(way[0], way[1])
		if ok && (value > most+impossible || value < least-impossible) {
			b.s.LeftOut = append(b.s.LeftOut, LeftOut{key, index, value, b.by(way[0], way[1]), least, most})
			return true
		}
	}
	return false
}

// apart returns how near and how far apart the walls from corner i clockwise to corner j, as read, let these be, in mm; of several readings
// of a wall the shortest and the longest count. It is not ok where one of them was not read.
func (b *builder) apart(i, j int) (least, most float64, ok bool) {
	keys := b.s.wallKeys()
	for k := i; k != j; k = (k + 1) % len(keys) {
		w, _ := b.s.Room.Wall(keys[k])
		if len(w.Length) == 0 {
			return 0, 0, false
		}
		lo, hi := math.Inf(1), 0.0
		for _, r := range w.Length {
			lo, hi = min(lo, r.Value.MM()), max(hi, r.Value.MM())
		}
		least = max(least-hi, lo-most) // the wall, less all the others
		most += hi
	}
	return max(0, least), most, true
}

// by names the corners from i clockwise to j.
func (b *builder) by(i, j int) string {
	letters := []rune(b.s.Room.Outline)
	out := string(letters[i])
	for k := i; k != j; {
		k = (k + 1) % len(letters)
		out += string(letters[k])
	}
	return out
}

// wallsAgree tells whether the lengths of the walls hold together: none of them is off by more than any good reading is.
func (s *Survey) wallsAgree() bool {
	limit := NormalQuantile(1 - DefaultAlpha/2)
	for i, c := range s.adjusted.Checks {
		wall := strings.HasPrefix(s.Sources[i].Key, "wall.") && strings.HasSuffix(s.Sources[i].Key, ".length")
		if wall && c.Checked() && math.Abs(c.W) > limit && math.Abs(c.Error) > impossible {
			return false
		}
	}
	return true
}
