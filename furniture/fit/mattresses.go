package fit

import (
	_ "embed"
	"encoding/csv"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"sync"

	"bunkwright/furniture/yardstick"
)

//go:embed mattresses.csv
var mattressesCSV string

// A namedMattress is what a name of a size may mean in a region, mm.
type namedMattress struct {
	Region, Name string
	Long, Wide   spread
}

// A spread is a range of sizes, mm.
type spread struct{ Min, Max float64 }

func (a spread) with(b spread) spread { return spread{min(a.Min, b.Min), max(a.Max, b.Max)} }

var mattressTable = sync.OnceValue(func() []namedMattress {
	list, err := readMattresses(mattressesCSV)
	if err != nil {
		panic(err)
	}
	return list
})

// readMattresses reads the table of usual sizes. The column that governs decides; inches are taken exactly, and what a text lets a
// mattress differ from its name is added either way.
func readMattresses(text string) ([]namedMattress, error) {
	in := csv.NewReader(strings.NewReader(text))
	in.Comment = '#'
	lines, err := in.ReadAll()
	if err != nil {
		return nil, err
	}
	if len(lines) == 0 {
		return nil, nil
	}
	var out []namedMattress
	for _, line := range lines[1:] {
		rec := map[string]string{}
		for i, name := range lines[0] {
			rec[name] = line[i]
		}
		m := namedMattress{Region: rec["region"], Name: rec["name"]}
		if m.Long, err = sizeOf(rec, "length"); err != nil {
			return nil, fmt.Errorf("mattress %s %s: %w", m.Region, m.Name, err)
		}
		if m.Wide, err = sizeOf(rec, "width"); err != nil {
			return nil, fmt.Errorf("mattress %s %s: %w", m.Region, m.Name, err)
		}
		out = append(out, m)
	}
	return out, nil
}

func sizeOf(rec map[string]string, axis string) (spread, error) {
	unit := 1.0
	if rec["governs"] == "in" {
		unit = 25.4
	}
	column := axis + "_" + rec["governs"]
	lo, err1 := strconv.ParseFloat(rec[column+"_min"], 64)
	hi, err2 := strconv.ParseFloat(rec[column+"_max"], 64)
	if err := errors.Join(err1, err2); err != nil {
		return spread{}, err
	}
	either := 0.0
	if text := rec["either_way_mm"]; text != "" {
		var err error
		if either, err = strconv.ParseFloat(text, 64); err != nil {
			return spread{}, err
		}
		if !(either >= 0) {
			return spread{}, fmt.Errorf("either way %s mm: want 0 or more", text)
		}
	}
	size := spread{lo*unit - either, hi*unit + either}
	if !(size.Min > 0 && size.Min <= size.Max && !math.IsInf(size.Max, 1)) {
		return spread{}, fmt.Errorf("%s from %g to %g: want a range", column, lo, hi)
	}
	return size, nil
}

// mattressRegions tells by whose names a mattress is called at a place.
var mattressRegions = map[yardstick.Place]string{
	yardstick.US: "US", yardstick.CA: "US", yardstick.EU: "EU", yardstick.FR: "EU", yardstick.UK: "UK", yardstick.AU: "AU", yardstick.NZ: "AU",
}

// mattressNamed returns what a name may mean at the places of the job: all of them together where they differ, and everything of that
// name anywhere where none of them has it.
func (s *Scene) mattressNamed(name string) (m namedMattress, ok bool) {
	here := map[string]bool{}
	for _, p := range s.Places {
		here[mattressRegions[p]] = true
	}
	if m, ok = joinMattresses(name, func(region string) bool { return here[region] }); ok {
		return m, ok
	}
	return joinMattresses(name, func(string) bool { return true })
}

func joinMattresses(name string, from func(region string) bool) (m namedMattress, ok bool) {
	for _, t := range mattressTable() {
		switch {
		case !strings.EqualFold(t.Name, strings.TrimSpace(name)) || !from(t.Region):
		case !ok:
			m, ok = t, true
		default:
			m.Long, m.Wide = m.Long.with(t.Long), m.Wide.with(t.Wide)
		}
	}
	return m, ok
}
