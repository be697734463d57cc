package survey

import (
	"fmt"
	"math"
	"strings"
)

// gaps names what the readings do not determine and what was done about it.
func (b *builder) gaps() {
	for _, k := range b.s.wallKeys() {
		if w, _ := b.s.Room.Wall(k); len(w.Length) == 0 {
			b.gap("wall."+k+".length", fmt.Sprintf("wall %s not read%s", span(k), b.instead("worked out from the others")))
		}
	}
	if b.diagonalsUsed() == 0 && len(b.corners) > 3 {
		d, why := b.openDiagonal()
		b.gap("diagonal."+d+".length", fmt.Sprintf("diagonal %s %s%s", span(d), why, b.instead("corners taken as square")))
	}
	switch {
	case b.unsettled:
		b.gap("outline", "the shape of the room is not determined: readings of its walls are missing, or one is grossly wrong")
	case !b.s.Outline:
		b.gap("outline", "the shape of the room is not determined: read the missing walls, or a diagonal")
	}
	if len(b.s.Room.Ceilings) == 0 {
		b.gap("ceiling", "no height of the ceiling was read")
	}
	for i, c := range b.s.Layout.Ceilings {
		if c.Z == 0 || math.IsNaN(b.s.Value(c.Z)) || math.IsNaN(b.s.Value(c.SlopeX)) || math.IsNaN(b.s.Value(c.SlopeY)) {
			key := "ceiling." + keyOr(b.s.Room.Ceilings[i].Key, i)
			b.gap(key, "the readings do not tell how "+strings.ReplaceAll(key, ".", " ")+" lies: read its height at one more point")
		}
	}
}

// instead tells what stands in for a reading of the outline, where the outline could be worked out.
func (b *builder) instead(what string) string {
	if !b.s.Outline {
		return ""
	}
	return ": " + what
}

func (b *builder) gap(key, text string) { b.s.Gaps = append(b.s.Gaps, Gap{Key: key, Text: text}) }

// diagonalsUsed counts the readings of diagonals that went into the outline.
func (b *builder) diagonalsUsed() int {
	n := -len(b.s.LeftOut)
	for _, d := range b.s.Room.Diagonals {
		n += len(d.Length)
	}
	return n
}

// openDiagonal names a diagonal to read, and why.
func (b *builder) openDiagonal() (key, why string) {
	if len(b.s.LeftOut) > 0 {
		_, rest, _ := strings.Cut(b.s.LeftOut[0].Key, ".")
		return strings.TrimSuffix(rest, ".length"), "cannot be as read"
	}
	return b.firstDiagonal(), "not read"
}

func (b *builder) firstDiagonal() string {
	letters := []rune(b.s.Room.Outline)
	return string(letters[0]) + string(letters[2])
}

// span writes a pair of corner letters as "A to B".
func span(key string) string {
	letters := []rune(key)
	if len(letters) != 2 {
		return key
	}
	return string(letters[0]) + " to " + string(letters[1])
}
