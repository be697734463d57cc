package length

import (
	"fmt"
	"math/big"
)

// Unit is what a number without a unit is taken in, and what lengths are shown in.
type Unit int

// Units of a job. With Unstated a bare number is refused.
const (
	Unstated Unit = iota
	Inches
	Millimetres
)

// String returns the unit as files and flags write it: "in", "mm", "" where unstated.
func (u Unit) String() string {
	return [...]string{"", "in", "mm"}[u.index()]
}

func (u Unit) index() int {
	if u != Inches && u != Millimetres {
		return 0
	}
	return int(u)
}

// length is the length of one unit; an inch where unstated, for the values that a question offers.
func (u Unit) length() Length {
	if u == Millimetres {
		return Millimetre
	}
	return Inch
}

// ParseUnit reads "in" or "mm".
func ParseUnit(name string) (Unit, error) {
	for _, u := range []Unit{Inches, Millimetres} {
		if name == u.String() {
			return u, nil
		}
	}
	return Unstated, fmt.Errorf("unit %q: want in or mm", name)
}

// Field says what kind of thing is measured, and so which bare numbers are plausible.
type Field string

// Fields. Only a Section is two sizes, such as 2x4 or 18x95.
const (
	Plain          Field = "length"
	WallLength     Field = "wall_length"
	RoomHeight     Field = "room_height"
	BoardThickness Field = "board_thickness"
	Section        Field = "section"
)

// ParseField reads the name of a field; an empty name is Plain.
func ParseField(name string) (Field, error) {
	switch f := Field(name); f {
	case "":
		return Plain, nil
	case Plain, WallLength, RoomHeight, BoardThickness, Section:
		return f, nil
	}
	return Plain, fmt.Errorf("field %q: want length, wall_length, room_height, board_thickness or section", name)
}

// Context is what is known about a text before it is read. The zero Context takes a length with its unit written.
type Context struct {
	Unit  Unit     // unit of a number without one
	Field Field    // empty: Plain
	Near  []Length // readings of the same thing at other heights or by other people, to notice a swapped mark
}

// plausible is the range of a bare number in a field (notation rule R9).
type plausible struct {
	low, high   Length
	short, long string // what is said of a value outside
}

var plausibleIn = map[Field]plausible{
	WallLength:     {24 * Inch, 480 * Inch, "too short for a wall", "too long for a wall"},
	RoomHeight:     {72 * Inch, 144 * Inch, "too low for a room", "too high for a room"},
	BoardThickness: {Inch / 5, 4 * Inch, "too thin for a board", "too thick for a board"},
}

// outside says what is wrong with nm for the range; empty when nothing is.
func (r plausible) outside(nm *big.Rat) string {
	switch {
	case nm.Cmp(rat(r.low)) < 0:
		return r.short
	case nm.Cmp(rat(r.high)) > 0:
		return r.long
	}
	return ""
}
