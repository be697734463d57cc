package fit

import (
	"fmt"
	"math"

	"bunkwright/furniture/yardstick"
	"bunkwright/room/length"
)

var mattressFits = Question{
	ID:       "mattress-fits",
	Sentence: "Does the mattress fit its frame?",
	Group:    Safety,
	Why:      "A mattress that is too large stands on its edge; beside one that is too small a child slips down between bed and frame.",
	How:      "Inside of the frame less the mattress, lengthways and across, both sides together; the real mattress, else all that its name may mean.",
	Caution:  "Names of sizes are trade habit. Measure the real mattress before the side rails are cut.",
	OfBed:    true,
	Propose:  []Driver{Play},
	Measure:  func(s *Scene) Finding { return s.mattressFits() },
}

var mattressGapRows = []string{"own-mattress-gap-need"}

func (s *Scene) mattressFits() Finding {
	if s.Bed == nil {
		return unbuilt("mattress", mattressGapRows...)
	}
	var f Finding
	for _, b := range []bed{upperBed, lowerBed} {
		f.Readings = append(f.Readings, s.mattressFit(b, "long"), s.mattressFit(b, "wide"))
	}
	s.addBuildTolerance(f.Readings)
	return f
}

// MattressGap returns what a frame leaves round a mattress on one axis, both sides together, all in one unit.
func MattressGap(frame, mattress float64) float64 { return frame - mattress }

// mattressFit measures one axis of one bed.
func (s *Scene) mattressFit(b bed, axis string) Reading {
	size := s.Bed.Sizes.Lower
	if b == upperBed {
		size = s.Bed.Sizes.Upper
	}
	frame, real := s.Bed.Inside.Long, size.MattressLong
	if axis == "wide" {
		frame, real = s.Bed.Inside.Wide, size.MattressWide
	}
	r := Reading{At: b.at() + "." + axis, Rows: mattressGapRows, Parts: []string{"mattress." + b.word()},
		Uses: []Use{{"frame inside, " + axis, frame, "mm", "worked out"}}}
	if size.MattressKnown && real > 0 {
		r.Have = MattressGap(frame, real.MM())
		r.Uses = append(r.Uses, Use{"bed." + b.word() + ".mattress_" + axis, real.MM(), "mm", "measured"})
		return r
	}
	named, ok := s.mattressNamed(size.MattressName)
	if !ok {
		r.Ask = fmt.Sprintf("how long and how wide is the %s mattress? measure it", b.word())
		return r
	}
	s.byName(&r, b, named, axis)
	return r
}

// byName holds everything that the name of a size may mean against the frame. Where some of it fits and some does not, the mattress has
// to be measured.
func (s *Scene) byName(r *Reading, b bed, named namedMattress, axis string) {
	size := named.Long
	if axis == "wide" {
		size = named.Wide
	}
	frame := r.Uses[0].Value
	r.Uses = append(r.Uses, Use{"usual size of a " + named.Name, size.Max, "mm", "table"})
	row, _, _ := s.row(mattressGapRows[0])
	have, same := sameVerdict(*row, MattressGap(frame, size.Max), MattressGap(frame, size.Min))
	r.Have, r.Edge = have, "by the usual size of a "+named.Name+": measure the real one"
	if !same {
		r.Ask = fmt.Sprintf("how %s is the %s mattress? a %s may be %s to %s: measure it", axis, b.word(), named.Name,
			s.words(size.Min, length.Nearest), s.words(size.Max, length.Nearest))
	}
}

// sameVerdict tells whether all values from lo to hi meet a row that allows a band, or none does. have is then the one nearest to
// changing that.
func sameVerdict(row yardstick.Row, lo, hi float64) (have float64, same bool) {
	inside := func(x float64) bool { return row.Outcome(x) == yardstick.Pass }
	switch {
	case inside(lo) && inside(hi):
		if row.Spare(lo) < row.Spare(hi) {
			return lo, true
		}
		return hi, true
	case hi < row.Need[0]:
		return hi, true
	case lo > row.Need[1]:
		return lo, true
	}
	return math.NaN(), false
}
