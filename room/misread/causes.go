package misread

import (
	"cmp"
	"math"
	"slices"

	"bunkwright/room/length"
)

// Context is what is known of how a reading was taken.
type Context struct {
	Unit   length.Unit   // of the figures on the tape
	Inside bool          // between two faces, where the tape's case has to be added
	Casing length.Length // width of the trim round an opening; 0: none, or not known
	Pieces int           // of a chain that adds up to the reading; 0 or 1: none
}

// whole is the unit whose digits are read.
func (c Context) whole() length.Length {
	if c.Unit == length.Millimetres {
		return length.Millimetre
	}
	return length.Inch
}

// A Cause is one way in which a reading may have become what it is.
type Cause struct {
	Signature
	Read  length.Length // the reading
	Value length.Length // what the tape would have said
	About bool          // Value is known only roughly
	odds  float64
}

// Causes returns what a reading may come from that ought to be about should, with standard uncertainty u, both in mm: the likeliest first,
// each signature once. Where none of the table fits and the reading is further off than a good one, it is the row that says so. Nothing is
// offered for a reading that is right, or that is no length of a room (0 and less, more than length.MaxRead).
func Causes(read length.Length, should, u float64, c Context) []Cause {
	if read <= 0 || read > length.MaxRead || c.Casing < 0 || c.Casing > length.MaxRead || math.IsNaN(should) || math.IsInf(should, 0) {
		return nil
	}
	var out []Cause
	for _, w := range waysOf(read, c) {
		if cause, ok := w.against(read, should, u, c); ok {
			out = append(out, cause)
		}
	}
	slices.SortStableFunc(out, likelier)
	out = onceEach(out)
	if len(out) == 0 && math.Abs(read.MM()-should) > QuietUpTo(c.Pieces)+reach*u {
		out = append(out, Cause{Signature: Find(NoneOfTheRest), Read: read, Value: c.mark(should), About: true})
	}
	return out
}

// Pair returns the signatures of two readings of one thing, whichever of them is wrong: the likeliest first.
func Pair(first, second length.Length, c Context) []Signature {
	all := append(Causes(first, second.MM(), 0, c), Causes(second, first.MM(), 0, c)...)
	slices.SortStableFunc(all, likelier)
	var out []Signature
	for _, c := range onceEach(all) {
		if c.ID != NoneOfTheRest || len(out) == 0 {
			out = append(out, c.Signature)
		}
	}
	return out
}

// likelier sorts the likeliest first; equals stay in the order of the table.
func likelier(a, b Cause) int { return cmp.Compare(b.odds, a.odds) }

// Trend tells whether readings low, in the middle and high change steadily, so that the wall and not the reader is off: signature
// OutOfPlumb. Less than 1/8 in over all is no trend.
func Trend(low, middle, high length.Length) bool {
	a, b := middle-low, high-middle
	return (a > 0) == (b > 0) && a != 0 && b != 0 && max(a+b, -a-b) > eighth
}

// reach is how many standard uncertainties a value may be from what a reading ought to be, beyond the tolerance of the table.
const reach = 3

// against holds a way against what the reading ought to be.
func (w way) against(read length.Length, should, u float64, c Context) (Cause, bool) {
	off := max(w.least.MM()-should, should-w.most.MM(), 0)
	if off > w.within.MM()+reach*u+1e-6 || w.id == Small && off > 1e-6 {
		return Cause{}, false
	}
	spread := math.Hypot(u, w.within.MM()/2)
	out := Cause{Signature: Find(w.id), Read: read, Value: w.least}
	switch {
	case w.least < w.most: // any value of the stretch
		out.Value, out.About = c.mark(min(max(should, w.least.MM()), w.most.MM())), true
		out.odds = math.Exp(-off*off/2/max(spread*spread, 1e-9)) / (w.most - w.least).MM()
	default:
		out.odds = math.Exp(-off*off/2/(spread*spread)) / (spread * math.Sqrt(2*math.Pi))
	}
	return out, true
}

// onceEach keeps the likeliest of every signature.
func onceEach(causes []Cause) []Cause {
	var out []Cause
	for _, c := range causes {
		if !slices.ContainsFunc(out, func(o Cause) bool { return o.ID == c.ID }) {
			out = append(out, c)
		}
	}
	return out
}

// QuietUpTo is how far off a reading, or a sum of pieces, may be before anybody is asked, in mm: max(1/8 in, 1/8 in sqrt(n)), a rule of this
// project (1/16 in of tape by NIST Handbook 44, 5.52, and 1/16 in of reading).
func QuietUpTo(pieces int) float64 {
	return eighth.MM() * math.Sqrt(float64(max(1, pieces)))
}
