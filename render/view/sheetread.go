package view

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"bunkwright/furniture/fit"
	"bunkwright/room/length"
)

// lowered returns a title as it stands within a sentence.
func lowered(title string) string {
	if strings.HasPrefix(title, "Wall ") || title == "" {
		return "w" + strings.TrimPrefix(title, "W")
	}
	return strings.ToLower(title[:1]) + title[1:]
}

// readBy says who read the room, when, and how often.
func (b *binder) readBy() string {
	var names, days []string
	for _, src := range b.s.Survey.Sources {
		if src.Index < 0 {
			continue
		}
		if src.By != "" && !slices.Contains(names, src.By) {
			names = append(names, src.By)
		}
		if src.When != "" && !slices.Contains(days, src.When) {
			days = append(days, src.When)
		}
	}
	slices.Sort(days)
	when := ""
	if len(days) > 0 {
		when = days[0]
		if last := days[len(days)-1]; last != when {
			when += " to " + last
		}
	}
	twice := 0
	for _, firm := range b.known {
		if firm {
			twice++
		}
	}
	counts := fmt.Sprintf("%d twice, %d once", twice, len(b.known)-twice)
	return joined("; ", joined(", ", strings.Join(names, " and "), when), counts)
}

// howSure says how well the shape of the room is known: twice the largest standard uncertainty of a corner.
func (b *binder) howSure() string {
	if len(b.s.Walls) == 0 {
		return "the shape of the room is not determined"
	}
	return "the corners of the room are known to ±" + ShapeKnown(b.s, b.o.Unit) + "; ± is 2 u for safety, 1.645 u for the rest"
}

// ShapeKnown says within what the corners of a room are known: twice the largest standard uncertainty, "" where they are not determined.
func ShapeKnown(s *fit.Scene, u length.Unit) string {
	if len(s.Walls) == 0 {
		return ""
	}
	most := 0.0
	for i := range s.Survey.Layout.X {
		most = math.Max(most, s.Survey.Sigma(s.Survey.Layout.X[i]))
		most = math.Max(most, s.Survey.Sigma(s.Survey.Layout.Y[i]))
	}
	return length.Format(length.FromMM(2*most), length.Style{Unit: u, Rounding: length.AwayFromZero})
}

// besidePlan lists what is to be read again, and readings that the plan does not show.
func (b *binder) besidePlan(c *column) {
	if again := b.readAgain(); len(again) > 0 {
		c.heading("Read again on arrival, before any cut")
		for i, words := range again {
			words = strings.TrimPrefix(words, "wall ")
			if left := len(again) - i; left > 1 && !c.fits(c.boxLines(words)+1) {
				c.line(b.moreWords(left))
				break
			}
			c.tickBox(words)
		}
	}
	b.diagonals(c)
}

// moreWords says how many readings are left out, and where all of them are.
func (b *binder) moreWords(left int) string {
	words := fmt.Sprintf("and %d more", left)
	if b.againOn > 0 {
		words += fmt.Sprintf("; all on sheet %d", b.againOn)
	}
	return words
}

// diagonals lists the readings from corner to corner.
func (b *binder) diagonals(c *column) {
	var list [][2]string
	for _, d := range b.s.Job.Room.Diagonals {
		if len(d.Length) > 0 {
			value := length.Format(d.Length[0].Value, length.Style{Unit: b.o.Unit})
			if !b.known.firm("diagonal." + d.Key + ".length") {
				value = "(" + value + ")"
			}
			list = append(list, [2]string{between(d.Key) + ", corners", value})
		}
	}
	if len(list) == 0 || !c.fits(len(list)+2) {
		return
	}
	c.heading("Other readings")
	for _, d := range list {
		c.pair(d[0], d[1])
	}
}
