package timber

import (
	_ "embed"
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"
)

// Worked cases; the published source of each stands in its row.
var (
	//go:embed testdata/lumber_cases.csv
	lumberCases string
	//go:embed testdata/slat_cases.csv
	slatCases string
	//go:embed testdata/sheet_cases.csv
	sheetCases string
	//go:embed testdata/cable_window_cases.csv
	cableCases string
)

// A question holds the inputs of a case and what is asked for.
type question struct {
	t        *testing.T
	in       record
	quantity string
}

func (q question) num(key string) float64 {
	q.t.Helper()
	x, err := q.in.number(key)
	if err != nil || q.in[key] == "" {
		q.t.Fatalf("no number %s in %v", key, q.in)
	}
	return x
}

var topics = map[string]func(q question) (any, error){
	"dressed_size": func(q question) (any, error) {
		s, err := DressedSize(q.in["nominal"], State(q.in["state"]))
		return fmt.Sprintf("%gx%g", s.Thick.Inches(), s.Wide.Inches()), err
	},
	"section": section,
	"shrink_to_8_percent": func(q question) (any, error) {
		return Shrink(q.num("width_in"), q.num("from_moisture_percent"), q.num("to_moisture_percent"))
	},
	"slat_gap": func(q question) (any, error) {
		return SlatGap(q.num("W"), q.num("s"), int(q.num("n"))), nil
	},
	"slat_count": func(q question) (any, error) {
		n, err := SlatCount(q.num("W"), q.num("s"), q.num("max_gap"))
		return float64(n), err
	},
	"sheet_thickness_in_category": func(q question) (any, error) {
		within, err := SheetWithin(q.in["category"], q.num("measured_in"))
		return yesNo(within), err
	},
	"cable_window": func(q question) (any, error) {
		least := LeastPenetration(WoodScrew, q.num("D"))
		if q.quantity == "min_penetration" {
			return least, nil
		}
		return yesNo(ClearOfCable(least, q.num("limit"))), nil
	},
}

func yesNo(b bool) string {
	if b {
		return "yes"
	}
	return "no"
}

func section(q question) (any, error) {
	size, err := DressedSize(q.in["nominal"], Dry)
	s := size.Section()
	if pcf, ok := strings.CutPrefix(q.quantity, "weight_lb_per_ft_at_"); ok {
		density, bad := strconv.ParseFloat(strings.TrimSuffix(pcf, "pcf"), 64)
		return s.PoundsPerFoot(density), errors.Join(err, bad)
	}
	value, ok := map[string]float64{"area_in2": s.Area, "S_edge_in3": s.SEdge, "I_edge_in4": s.IEdge,
		"S_flat_in3": s.SFlat, "I_flat_in4": s.IFlat}[q.quantity]
	if !ok {
		q.t.Fatalf("unknown quantity %s", q.quantity)
	}
	return value, err
}

func TestCases(t *testing.T) {
	for name, text := range map[string]string{"lumber": lumberCases, "slat": slatCases, "sheet": sheetCases, "cable": cableCases} {
		cases, err := records(text)
		if err != nil || len(cases) == 0 {
			t.Fatal(name, err)
		}
		for _, c := range cases {
			runCase(t, c)
		}
	}
}

func runCase(t *testing.T, c record) {
	t.Helper()
	answer, ok := topics[c["topic"]]
	if !ok {
		t.Errorf("%s: no function for %s", c["id"], c["topic"])
		return
	}
	in := record{}
	for _, pair := range strings.Split(c["inputs"], ";") {
		key, value, _ := strings.Cut(pair, "=")
		in[key] = value
	}
	got, err := answer(question{t, in, c["quantity"]})
	if err != nil || !agrees(t, got, c) {
		t.Errorf("%s: %s with %s: got %v, %v, want %s within %q", c["id"], c["quantity"], c["inputs"], got, err, c["expected"], c["tolerance"])
	}
}

func agrees(t *testing.T, got any, c record) bool {
	t.Helper()
	x, numeric := got.(float64)
	if !numeric {
		return got == c["expected"]
	}
	want, err := c.number("expected")
	if err != nil {
		return false
	}
	switch c["tolerance_kind"] {
	case "exact":
		return x == want
	case "abs":
		off, err := c.number("tolerance")
		return err == nil && math.Abs(x-want) <= off
	}
	t.Fatalf("%s: unknown tolerance kind %q", c["id"], c["tolerance_kind"])
	return false
}
