package misread

import (
	"math"

	"bunkwright/room/length"
)

const inch = length.Inch

// Tolerances of the table.
const (
	eighth    = inch / 8
	sixteenth = inch / 16
	quarter   = inch / 4
	small     = 3 * sixteenth
	caseLeast = inch * 5 / 2 // of a tape's case
	caseMost  = inch * 4
)

// way is one value that the tape may have said instead, or a stretch of such values.
type way struct {
	id          string
	least, most length.Length
	within      length.Length // how far from it the value may be by the table
}

// waysOf lists what may have been misread as a reading, in the order of the table.
func waysOf(read length.Length, c Context) []way {
	var out []way
	add := func(id string, within length.Length, values ...length.Length) {
		for _, v := range values {
			if v > 0 && v != read {
				out = append(out, way{id, v, v, within})
			}
		}
	}
	add(Inches, eighth, read-inch, read+inch, read-2*inch, read+2*inch)
	add(Ten, eighth, read-10*inch, read+10*inch, read-100*length.Millimetre, read+100*length.Millimetre)
	for feet := length.Length(1); feet <= 9; feet++ {
		add(Feet, eighth, read-feet*length.Foot, read+feet*length.Foot)
	}
	if c.Inside {
		out = append(out, way{Case, read + caseLeast, read + caseMost, 0})
	}
	add(Swapped, eighth, swapped(read, c.whole())...)
	add(LookAlike, eighth, mistaken(read, c.whole())...)
	if part := read % inch; c.whole() == inch && part != 0 {
		add(CountedBack, sixteenth, read-part+inch-part)
	}
	out = append(out, way{Small, read - small, read + small, 0})
	for _, v := range []float64{read.MM() / 2.54, read.MM() * 2.54} {
		add(OtherUnit, length.FromMM(v/100), length.FromMM(v))
	}
	if c.Casing > 0 {
		add(Casing, quarter, read-2*c.Casing, read+2*c.Casing)
	}
	return out
}

// mark returns the nearest 1/16 in or whole millimetre.
func (c Context) mark(mm float64) length.Length {
	step := sixteenth
	if c.whole() != inch {
		step = length.Millimetre
	}
	return length.Length(math.Round(mm/step.MM())) * step
}
