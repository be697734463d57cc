package survey

import (
	"fmt"
	"strconv"
	"strings"

	"bunkwright/room/length"
)

// Say puts a conflict in one sentence, in the unit of the style: who is off, by how much, and what to do.
func (s *Survey) Say(c Conflict, style length.Style) string {
	switch first := s.Sources[c.Suspects[0].Source]; {
	case c.Cannot:
		return fmt.Sprintf("%s cannot be as read, %s, and the room is worked out without it: take it again%s", s.Named(c.Suspects[0].Source),
			read(first, style), s.alsoWalls(c))
	case c.Repeat || len(c.Suspects) == 2 && s.sameKey(c):
		second := s.Sources[c.Suspects[1].Source]
		if second.Index < first.Index {
			first, second = second, first
		}
		return fmt.Sprintf("two readings of %s do not agree, %s and %s: take it again", c.Key, read(first, style), read(second, style))
	case len(c.Suspects) == 1:
		return fmt.Sprintf("%s, read as %s, is %s %s than the other readings say%s: take it again", s.Named(c.Suspects[0].Source),
			read(first, style), amount(c.Suspects[0].Off, style), comparative(c.Suspects[0].Off), c.unless())
	default:
		return fmt.Sprintf("one of these %s is off, %s%s: take them again: %s", count(len(c.Suspects)), c.sizes(style), c.unless(), s.list(c))
	}
}

// alsoWalls names the walls that may be what is wrong instead of a diagonal.
func (s *Survey) alsoWalls(c Conflict) string {
	if len(c.Suspects) == 1 {
		return ""
	}
	return ", and with it " + s.list(Conflict{Suspects: c.Suspects[1:]})
}

// unless says what else may be so where only what is taken for granted speaks against a reading.
func (c Conflict) unless() string {
	if c.Believed {
		return ", if the room is as square, upright and level as it was taken to be"
	}
	return ""
}

// sizes says by how much one of several is off: "by 7-1/2 to 12 in depending on which".
func (c Conflict) sizes(style length.Style) string {
	least, most := c.Size()
	a, b := amount(least, coarse(style)), amount(most, coarse(style))
	if a == b {
		return "by about " + b
	}
	return "by " + a + " to " + b + " depending on which"
}

// coarse rounds to 1/2 in or 10 mm: how far off one of several is, is not better known.
func coarse(style length.Style) length.Style {
	style.Step, style.InchesOnly = length.Inch/2, true
	if style.Unit == length.Millimetres {
		style.Step = 10 * length.Millimetre
	}
	return style
}

func (s *Survey) sameKey(c Conflict) bool {
	return s.Sources[c.Suspects[0].Source].Key == s.Sources[c.Suspects[1].Source].Key
}

// list names the suspects.
func (s *Survey) list(c Conflict) string {
	var names []string
	for _, one := range c.Suspects {
		names = append(names, s.Named(one.Source))
	}
	return strings.Join(names, ", ")
}

// Named names a reading by the key of its quantity, and by its place among several: "wall.AB.length, reading 2".
func (s *Survey) Named(source int) string {
	src := s.Sources[source]
	for i, other := range s.Sources {
		if i != source && other.Key == src.Key && other.Index >= 0 && src.Index >= 0 {
			return src.Key + ", reading " + strconv.Itoa(src.Index+1)
		}
	}
	return src.Key
}

func read(src Source, style length.Style) string { return length.Format(src.Exact, style) }

func amount(mm float64, style length.Style) string {
	l := length.FromMM(mm)
	if l < 0 {
		l = -l
	}
	return length.Format(l, style)
}

func comparative(off float64) string {
	if off < 0 {
		return "less"
	}
	return "more"
}

// count writes a number up to twelve in words.
func count(n int) string {
	words := []string{"no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"}
	if n < len(words) {
		return words[n]
	}
	return strconv.Itoa(n)
}
