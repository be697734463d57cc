// Package worked answers one worked case of a rule, a calculation or a trade table from plain inputs.
package worked

import (
	"math"
	"slices"
	"strconv"

	"bunkwright/furniture/yardstick"
)

// A Result is the answer to one case. Without uncertainty: the inputs count as exact.
type Result struct {
	ID       string
	Quantity string // what was asked for; of a rule or calculation, what is measured
	// Outcome is pass, fail, borderline, applies or not-applies for a rule, value for a number that nothing is held
	// against, and otherwise the answer itself: a word such as sits-freely, yes or fits, or a size such as 1.5x3.5.
	Outcome string
	Value   *float64 // in Unit; of several values the one that decides; nil where there is no number
	Unit    string   // of Value: for a length the unit of the inputs
	Spare   *float64 // mm for lengths, else the unit of the row; nil where nothing is held against a number
	Text    string   // a remark: what was taken as given, or why a rule does not apply
}

// valueOutcome is the outcome of a number that nothing is held against.
const valueOutcome = "value"

// Answer works out a case. The id is that of a row of the yardstick, of a calculation or of a case topic; the quantity
// chooses among those of a topic and stays empty for a row or a calculation. Errors are *UnknownIDError and *InputError.
func Answer(id, quantity string, in Inputs) (Result, error) {
	s, ok := find(id)
	if !ok {
		return Result{}, &UnknownIDError{id, IDs()}
	}
	r, err := s.answer(quantity, in)
	if err != nil {
		return Result{}, explained(err, id, s)
	}
	if r.Value != nil && (math.IsNaN(*r.Value) || math.IsInf(*r.Value, 0)) {
		return Result{}, explained(&InputError{Problem: "these inputs give no number"}, id, s)
	}
	r.ID = id
	return r, nil
}

// A subject is something that can be asked: a rule, a calculation or a case topic.
type subject interface {
	answer(quantity string, in Inputs) (Result, error)
	example() []string // words that work: key=value, and quantity=NAME where one must be chosen
}

func find(id string) (subject, bool) {
	if row, ok := yardstick.Find(id); ok {
		return rule{row, measures()[id]}, true
	}
	if c, ok := calculations[id]; ok {
		return c, true
	}
	for _, t := range topics {
		if t.name == id {
			return t, true
		}
	}
	return nil, false
}

// IDs returns everything that can be asked: rows, then calculations, then case topics.
func IDs() []string {
	var ids []string
	for _, r := range yardstick.All() {
		ids = append(ids, r.ID)
	}
	for _, c := range yardstick.Calcs() {
		ids = append(ids, c.ID)
	}
	return append(ids, Topics()...)
}

// Topics returns the names of the case topics, in the order of the files they come from.
func Topics() []string {
	var names []string
	for _, t := range topics {
		names = append(names, t.name)
	}
	return names
}

// Example returns words that work for an id, such as rail_over_base_in=12 mattress_in=7; false for an id that cannot be
// asked: an unknown one, or a planning figure that measurements take.
func Example(id string) ([]string, bool) {
	s, ok := find(id)
	if !ok || len(s.example()) == 0 {
		return nil, false
	}
	return slices.Clone(s.example()), true
}

// explained says which id an error belongs to, and what would work.
func explained(err error, id string, s subject) error {
	bad, ok := err.(*InputError)
	if !ok {
		bad = &InputError{Problem: err.Error(), Err: err}
	}
	bad.ID, bad.Example = id, s.example()
	return bad
}

// number keeps twelve figures: what is equal in exact arithmetic prints equal.
func number(x float64) *float64 {
	x, _ = strconv.ParseFloat(strconv.FormatFloat(x, 'g', 12, 64), 64)
	x += 0 // no negative zero
	return &x
}
