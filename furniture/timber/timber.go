// Package timber says what boards, sheets and screws really measure, and what wood does as it dries.
package timber

import (
	_ "embed"
	"encoding/csv"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"

	"bunkwright/room/length"
)

//go:embed lumber.csv
var lumberCSV string

//go:embed lumber_rules.csv
var lumberRulesCSV string

//go:embed sheet.csv
var sheetCSV string

//go:embed fasteners.csv
var fastenersCSV string

// ErrNoNumber reports a measurement that is missing (NaN) or absurd.
var ErrNoNumber = errors.New("a measurement is missing")

// An UnknownError says what the tables do not hold.
type UnknownError struct {
	What string   // lumber size, sheet category or fastener
	Name string   // as asked for
	Have []string // what the tables do hold
}

func (e *UnknownError) Error() string {
	return fmt.Sprintf("%s %q is not in the tables: want one of %s", e.What, e.Name, strings.Join(e.Have, ", "))
}

// A record is one line of a file by column name.
type record map[string]string

func records(text string) ([]record, error) {
	in := csv.NewReader(strings.NewReader(text))
	in.Comment = '#'
	lines, err := in.ReadAll()
	if err != nil || len(lines) == 0 {
		return nil, err
	}
	var out []record
	for _, line := range lines[1:] {
		rec := record{}
		for i, name := range lines[0] {
			rec[name] = line[i]
		}
		out = append(out, rec)
	}
	return out, nil
}

// number reads a column of plain numbers; an empty one is 0.
func (r record) number(column string) (float64, error) {
	if r[column] == "" {
		return 0, nil
	}
	x, err := strconv.ParseFloat(r[column], 64)
	if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, fmt.Errorf("column %s: %q is no number", column, r[column])
	}
	return x, nil
}

// inches reads a column of decimal inches as an exact length; an empty one is 0.
func (r record) inches(column string) (length.Length, error) {
	x, err := r.number(column)
	if err != nil {
		return 0, err
	}
	l := length.FromMM(x * length.Inch.MM())
	if !l.Valid() {
		return 0, fmt.Errorf("column %s: %q is no length", column, r[column])
	}
	return l, nil
}

// fill reads columns of decimal inches into lengths and returns the first error.
func (r record) fill(into map[string]*length.Length) error {
	var first error
	for column, to := range into {
		l, err := r.inches(column)
		if err != nil && first == nil {
			first = err
		}
		*to = l
	}
	return first
}

var rules = sync.OnceValue(func() map[string]record {
	byID := map[string]record{}
	for _, rec := range must(records(lumberRulesCSV)) {
		byID[rec["id"]] = rec
	}
	return byID
})

// rule returns a line of lumber_rules.csv.
func rule(id string) record {
	rec, ok := rules()[id]
	if !ok {
		panic("timber: no rule " + id)
	}
	return rec
}

func must[T any](value T, err error) T {
	if err != nil {
		panic(err)
	}
	return value
}
