package misread

import (
	"fmt"

	"bunkwright/room/length"
)

// asked are the questions where the table's own has figures of an example in it.
var asked = map[string]string{
	Inches:      "Did you start at the 1 mark, or take the fraction from the neighbour inch?",
	Feet:        "A foot dropped or added?",
	Swapped:     "Two digits swapped?",
	LookAlike:   "One digit for another, such as a 6 for a 9, or a tape held upside down?",
	CountedBack: "Was the fraction counted back from the next inch?",
}

// Question asks after the cause: "read as 9 ft instead of 10 ft? A foot dropped or added?"
func (c Cause) Question(s length.Style) string {
	ask := c.Ask
	if own := asked[c.ID]; own != "" {
		ask = own
	}
	if c.ID == OutOfPlumb || c.ID == NoneOfTheRest || c.ID == Small {
		return ask
	}
	about := ""
	if c.About {
		about = "about "
	}
	return fmt.Sprintf("read as %s instead of %s%s? %s", length.Format(c.Read, s), about, length.Format(c.Value, s), ask)
}
