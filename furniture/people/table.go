package people

import (
	_ "embed"
	"encoding/csv"
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"
)

//go:embed sitting_height.csv
var sittingHeightCSV string

//go:embed sitting_ratio.csv
var sittingRatioCSV string

//go:embed child_sizes.csv
var childSizesCSV string

//go:embed adult_sizes.csv
var adultSizesCSV string

//go:embed stature_weight.csv
var statureWeightCSV string

var (
	sittingHeights = lazy("sitting heights", sittingHeightCSV)
	sittingRatios  = lazy("sitting ratios", sittingRatioCSV)
	childSizes     = lazy("child sizes", childSizesCSV)
	adultSizes     = lazy("adult sizes", adultSizesCSV)
	growthCharts   = lazy("growth charts", statureWeightCSV)
)

// A table holds statistics by measure, sex and age: sizes of groups, not of one child. The measure is empty in a table of
// one measure.
type table struct {
	name  string
	cells map[cell]float64
	units map[string]string // by measure
}

type cell struct {
	measure string
	sex     Sex
	age     float64
	stat    Stat
}

// grownUp is the age of every row in the table of grown-ups.
const grownUp = -1

// A NoSizeError says which size a table does not hold. It is never guessed.
type NoSizeError struct {
	Table   string
	Measure string // empty in a table of one measure
	Sex     Sex
	Age     float64 // years; negative for grown-ups
	Stat    Stat
}

func (e *NoSizeError) Error() string {
	what := strings.TrimSpace(fmt.Sprintf("%s %s", e.Stat, e.Measure))
	if e.Age == grownUp {
		return fmt.Sprintf("%s hold no %s for sex %s", e.Table, what, e.Sex)
	}
	return fmt.Sprintf("%s hold no %s for sex %s at age %g", e.Table, what, e.Sex, e.Age)
}

func lazy(name, text string) func() *table {
	return sync.OnceValue(func() *table {
		t, err := parseTable(name, text)
		if err != nil {
			panic(err)
		}
		return t
	})
}

func parseTable(name, text string) (*table, error) {
	in := csv.NewReader(strings.NewReader(text))
	in.Comment = '#'
	lines, err := in.ReadAll()
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	t := &table{name, map[cell]float64{}, map[string]string{}}
	for i, line := range lines {
		if i == 0 {
			continue
		}
		rec := map[string]string{}
		for j, column := range lines[0] {
			rec[column] = line[j]
		}
		if err := t.add(rec); err != nil {
			return nil, fmt.Errorf("%s, row %d: %w", name, i, err)
		}
	}
	return t, nil
}

func (t *table) add(rec map[string]string) error {
	age := float64(grownUp)
	if text := rec["age_years"]; text != "adult" {
		var err error
		if age, err = strconv.ParseFloat(text, 64); err != nil {
			return err
		}
	}
	t.units[rec["measure"]] = rec["unit"]
	for _, stat := range allStats {
		if rec[string(stat)] == "" {
			continue
		}
		value, err := strconv.ParseFloat(rec[string(stat)], 64)
		if err != nil {
			return err
		}
		t.cells[cell{rec["measure"], Sex(rec["sex"]), age, stat}] = value
	}
	return nil
}

// at looks one cell up.
func (t *table) at(c cell) (float64, error) {
	if value, ok := t.cells[c]; ok {
		return value, nil
	}
	return 0, t.lacks(c)
}

func (t *table) lacks(c cell) error {
	return &NoSizeError{t.name, c.measure, c.sex, c.age, c.stat}
}

// between takes the straight line between the two rows around an age; the rows are step years apart. An error names the
// age asked for, not that of a row.
func (t *table) between(c cell, step float64) (float64, error) {
	below := c
	below.age = math.Floor(c.age/step) * step
	low, err := t.at(below)
	if err != nil {
		return 0, t.lacks(c)
	}
	if below.age == c.age {
		return low, nil
	}
	above := below
	above.age += step
	high, err := t.at(above)
	if err != nil {
		return 0, t.lacks(c)
	}
	return low + (high-low)*(c.age-below.age)/step, nil
}
