package yardstick

import "strings"

// A Relation says on which side of its need a value must lie, in the notation of the files: a square bracket counts
// the end to the band, a round one does not.
type Relation string

// The relations of the rows. A parameter has Equals: it is a figure, not a need.
const (
	AtLeast         Relation = ">="
	AtMost          Relation = "<="
	MoreThan        Relation = ">"
	LessThan        Relation = "<"
	Inside          Relation = "inside [a..b]"
	OutsideOpen     Relation = "outside (a..b)" // both ends allowed
	OutsideClosed   Relation = "outside [a..b]" // both ends forbidden
	OutsideUpperEnd Relation = "outside (a..b]" // a allowed, b forbidden
	AnswerYes       Relation = "yes"
	AnswerNo        Relation = "no"
	Equals          Relation = "="
)

// Band reports whether the need has a lower and an upper end.
func (r Relation) Band() bool { return r == Inside || r.outside() }

// Answer reports whether the row is met by a yes or a no instead of a number.
func (r Relation) Answer() bool { return r == AnswerYes || r == AnswerNo }

func (r Relation) outside() bool { return strings.HasPrefix(string(r), "outside") }

func (r Relation) known() bool {
	switch r {
	case AtLeast, AtMost, MoreThan, LessThan, Inside, OutsideOpen, OutsideClosed, OutsideUpperEnd,
		AnswerYes, AnswerNo, Equals:
		return true
	}
	return false
}

// equality returns what the relation itself says about a value equal to its lower (or only) and its upper end.
func (r Relation) equality() (low, high Equality) {
	switch r {
	case AtLeast, AtMost, Inside, OutsideOpen:
		return EqualPasses, EqualPasses
	case MoreThan, LessThan, OutsideClosed:
		return EqualFails, EqualFails
	case OutsideUpperEnd:
		return EqualPasses, EqualFails
	}
	return EqualUnsaid, EqualUnsaid
}
