package yardstick

import (
	_ "embed"
	"math"
	"strconv"
	"strings"
	"testing"
)

// Worked cases with the published source of each row in its own column; the header of the file says how they were made.
//
//go:embed testdata/rule_cases.csv
var ruleCases string

// TestRuleCases judges every case that names a row (those that name a calculation are tested where the calculation
// lives). The value measured is worked out here by hand from the inputs of the case.
func TestRuleCases(t *testing.T) {
	cases, err := records(ruleCases)
	if err != nil {
		t.Fatal(err)
	}
	judged := 0
	for _, c := range cases {
		if strings.HasPrefix(c["rule"], "calc-") {
			continue
		}
		judged++
		if got := judgeCase(t, c["rule"], readInputs(t, c["inputs"])); got.String() != c["expected"] {
			t.Errorf("%s: %s with %s: got %s, want %s (%s)", c["id"], c["rule"], c["inputs"], got, c["expected"], c["arithmetic"])
		}
	}
	if judged < 80 {
		t.Errorf("only %d cases were judged", judged)
	}
}

func judgeCase(t *testing.T, id string, in inputs) Outcome {
	t.Helper()
	r, ok := Find(id)
	if !ok {
		t.Fatalf("no row %s", id)
	}
	for _, w := range r.When {
		scope, _ := Find(w)
		if have := in.scope(w); !math.IsNaN(have) && scope.Outcome(have) == NotApplies {
			return NotApplies
		}
	}
	worst := Pass
	for _, have := range in.values(t, r) {
		if got := r.Outcome(have); got != Pass && worst != Fail {
			worst = got
		}
	}
	return worst
}

// inputs holds the numbers of a case by key without its unit: lengths in mm, all else as written.
type inputs map[string][]float64

var caseUnits = map[string]float64{"in": 25.4, "mm": 1, "m": 1000, "ft": 304.8}

func readInputs(t *testing.T, text string) inputs {
	t.Helper()
	in := inputs{}
	for _, pair := range strings.Split(text, ";") {
		key, value, _ := strings.Cut(pair, "=")
		scale := 1.0
		if i := strings.LastIndex(key, "_"); i > 0 {
			if mm, length := caseUnits[key[i+1:]]; length {
				key, scale = key[:i], mm
			}
		}
		for _, word := range strings.Split(value, "/") {
			if x, err := strconv.ParseFloat(word, 64); err == nil {
				in[key] = append(in[key], x*scale)
			}
		}
	}
	return in
}

func (in inputs) one(key string) float64 {
	if len(in[key]) == 0 {
		return math.NaN()
	}
	return in[key][0]
}

// scope returns the value that a scope row is about, NaN when the case does not give it (the row is asked then).
func (in inputs) scope(id string) float64 {
	switch id {
	case "irc-fall-drop":
		return in.one("drop")
	case "irc-fall-sill":
		return in.one("sill")
	}
	return math.NaN()
}

// values returns what the case measures for the row, one number for each thing that must meet it.
func (in inputs) values(t *testing.T, r Row) []float64 {
	t.Helper()
	if got := in.special(r.ID); got != nil {
		return got
	}
	for _, list := range [][]float64{
		in["gaps"], in["gap"], in["opening_short"], in["access"], in["heater_front"], in["heater_side"],
		in["alarm_to_fan_tip"], in["foothold"], in["foundation_underside"],
		{in.one("slat_pitch") - in.one("slat_width")},
		{in.one("rail_over_base") - in.one("mattress")},
		{in.one("ceiling") - in.one("upper_deck_top") - in.one("upper_mattress")},
		{in.one("upper_underside") - in.one("lower_deck_top") - in.one("lower_mattress")},
	} {
		if len(list) > 0 && !math.IsNaN(list[0]) {
			return list
		}
	}
	t.Fatalf("the test does not know what %s measures", r.ID)
	return nil
}

func (in inputs) special(id string) []float64 {
	switch id {
	case "au-mark-scope":
		return in["rail_over_base"]
	case "us-rail-each-side":
		return append(in["rails_front"], in["rails_wall"]...)
	case "us-end-share":
		return []float64{100 * sum(in["end_high_parts"]) / in.one("end_between_posts")}
	case "ladder-clear-gap":
		return []float64{in.one("tread_pitch") - in.one("tread_thick")}
	case "eu-tread-pitch":
		return in["tread_pitch"]
	case "asnzs-fan-distance", "qld-fan-distance", "nz-ceiling-fitting-distance":
		plan := max(0, in.one("fan_plan")-in.one("fan_radius"))
		return []float64{math.Hypot(plan, max(0, in.one("blade_z")-in.one("bunk_top_z")))}
	case "irc-escape-area", "irc-escape-area-grade":
		return []float64{in.one("opening_w") * in.one("opening_h") / (304.8 * 304.8)}
	case "irc-escape-width":
		return in["opening_w"]
	case "irc-escape-height":
		return in["opening_h"]
	case "irc-escape-sill":
		return in["sill"]
	case "irc-fall-opening", "cpsc-window-stop":
		return in["opens"]
	case "own-sill-over-mattress":
		return []float64{in.one("sill") - in.one("mattress_top")}
	case "irc-ceiling":
		return in["ceiling"]
	case "irc-ceiling-slope-share":
		return []float64{100 * in.one("area_at_84_ft2") / in.one("required_ft2")}
	case "irc-ceiling-slope-min":
		return in["lowest"]
	case "outlet-reach":
		return []float64{farthest(in.one("wall"), in["receptacles"])}
	case "own-mattress-gap":
		return []float64{in.one("frame_width") - in.one("mattress_width"), in.one("frame_length") - in.one("mattress_length")}
	}
	return nil
}

func sum(list []float64) float64 {
	total := 0.0
	for _, x := range list {
		total += x
	}
	return total
}

// farthest returns the longest way along a wall from a point of it to the nearest of the places on it.
func farthest(wall float64, at []float64) float64 {
	worst := max(at[0], wall-at[len(at)-1])
	for i := 1; i < len(at); i++ {
		worst = max(worst, (at[i]-at[i-1])/2)
	}
	return worst
}
