package timber

import (
	"fmt"
	"strconv"
	"strings"
	"sync"

	"bunkwright/room/length"
)

// A Sheet is a thickness category of plywood.
type Sheet struct {
	Category   string        // "23/32"
	Thick      length.Length // what the category says
	Min, Max   length.Length // what a sheet of the category may measure
	Wide, Long length.Length // of a whole sheet
	Density    float64       // lb per ft2 and inch of thickness
	Source     string
	Basis      string
}

var allSheets = sync.OnceValue(func() []Sheet { return must(parseSheets(sheetCSV)) })

func parseSheets(text string) ([]Sheet, error) {
	recs, err := records(text)
	if err != nil {
		return nil, err
	}
	var out []Sheet
	for _, rec := range recs {
		s, err := parseSheet(rec)
		if err != nil {
			return nil, fmt.Errorf("sheet %s: %w", rec["category"], err)
		}
		out = append(out, s)
	}
	return out, nil
}

func parseSheet(rec record) (Sheet, error) {
	s := Sheet{Category: rec["category"], Source: rec["source"], Basis: rec["basis"]}
	err := rec.fill(map[string]*length.Length{
		"min_in": &s.Min, "max_in": &s.Max, "sheet_width_in": &s.Wide, "sheet_length_in": &s.Long,
	})
	if err != nil {
		return s, err
	}
	if s.Density, err = rec.number("weight_lb_per_ft2_per_in"); err != nil {
		return s, err
	}
	s.Thick, err = fraction(s.Category)
	return s, err
}

// fraction reads "23/32" or "1" as inches.
func fraction(text string) (length.Length, error) {
	over, under, cut := strings.Cut(text, "/")
	if !cut {
		under = "1"
	}
	n, err := strconv.Atoi(over)
	d, bad := strconv.Atoi(under)
	if err != nil || bad != nil || n <= 0 || d <= 0 {
		return 0, fmt.Errorf("%q is no fraction of an inch", text)
	}
	return length.FromMM(float64(n) / float64(d) * length.Inch.MM()), nil
}

// FindSheet returns a thickness category, such as "23/32".
func FindSheet(category string) (Sheet, error) {
	var names []string
	for _, s := range allSheets() {
		if s.Category == category {
			return s, nil
		}
		names = append(names, s.Category)
	}
	return Sheet{}, &UnknownError{"sheet category", category, names}
}

// Sheets returns every thickness category, thinnest first.
func Sheets() []Sheet { return append([]Sheet(nil), allSheets()...) }

// SheetWithin reports whether a sheet that measures so many inches may be sold as a category, both ends of its range
// allowed. Source: Voluntary Product Standard PS 1, unsanded and touch-sanded panels at 9 percent moisture.
func SheetWithin(category string, measuredIn float64) (bool, error) {
	s, err := FindSheet(category)
	if err != nil {
		return false, err
	}
	measured := length.FromMM(measuredIn * length.Inch.MM())
	if !measured.Valid() {
		return false, ErrNoNumber
	}
	return s.Min <= measured && measured <= s.Max, nil
}
