// Package yardstick says what a value is held against: which published requirement or planning figure, with what force at a place, and with how much to spare.
package yardstick

import (
	_ "embed"
	"slices"
	"sync"
)

//go:embed rules.csv
var rulesCSV string

//go:embed practice.csv
var practiceCSV string

//go:embed places.csv
var placesCSV string

//go:embed calcs.csv
var calcsCSV string

type table struct {
	rows       []Row
	byID       map[string]int
	byQuestion map[string][]Row
}

var loaded = sync.OnceValue(func() table {
	t, err := load(rulesCSV, practiceCSV)
	if err != nil {
		panic(err)
	}
	return t
})

func load(rules, practice string) (table, error) {
	rows, err := parseRules(rules)
	if err != nil {
		return table{}, err
	}
	own, err := parsePractice(practice)
	if err != nil {
		return table{}, err
	}
	return index(append(rows, own...))
}

func index(rows []Row) (table, error) {
	t := table{rows: rows, byID: map[string]int{}, byQuestion: map[string][]Row{}}
	for i, r := range rows {
		if _, taken := t.byID[r.ID]; taken {
			return t, &RowError{ID: r.ID, Column: "id", Text: r.ID, Want: "an id used once"}
		}
		t.byID[r.ID] = i
		for _, q := range r.Questions {
			t.byQuestion[q] = append(t.byQuestion[q], r)
		}
	}
	return t, nil
}

// All returns every row, the published requirements first, each file in its own order.
func All() []Row { return slices.Clone(loaded().rows) }

// Find returns the row with that id.
func Find(id string) (Row, bool) {
	i, ok := loaded().byID[id]
	if !ok {
		return Row{}, false
	}
	return loaded().rows[i], true
}

// OfQuestion returns the rows that belong to a question, in the order of All. The slice is shared: read it only.
func OfQuestion(id string) []Row { return slices.Clip(loaded().byQuestion[id]) }
