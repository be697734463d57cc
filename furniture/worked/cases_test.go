package worked

import (
	"embed"
	"encoding/csv"
	"math"
	"strconv"
	"strings"
	"testing"
)

// Worked cases. The header of each file and its column source name what the expected answer comes from.
//
//go:embed testdata/*.csv
var caseFiles embed.FS

// A record is one line of a file by column name.
type record map[string]string

func records(t *testing.T, name string) []record {
	t.Helper()
	f, err := caseFiles.Open("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	in := csv.NewReader(f)
	in.Comment = '#'
	lines, err := in.ReadAll()
	if err != nil || len(lines) < 2 {
		t.Fatalf("%s: no rows: %v", name, err)
	}
	var out []record
	for _, line := range lines[1:] {
		rec := record{}
		for i, column := range lines[0] {
			rec[column] = line[i]
		}
		out = append(out, rec)
	}
	return out
}

// elsewhere lists the topics that are not asked here, and why.
var elsewhere = map[string]string{
	// A later part of the work: moving and raising parts.
	"corner": movingParts, "rect_in_rect": movingParts, "tilt_up": movingParts, "RWL": movingParts, "RWL_from_multipliers": movingParts,
	"corner_at_angle": movingParts, "corner_tilted": movingParts, "corner_slide": movingParts, "rect_longest": movingParts,
	"tilt_up_max_height": movingParts, "LI": movingParts, "multiplier": movingParts, "team_limit": movingParts,
	// A later part of the work: strength.
	"deflection_coefficient": strength, "joist_span_bending": strength, "joist_deflection": strength, "column_stability": strength,
	"Fb_adjusted": strength, "beam_stability": strength, "load_duration": strength, "slat_point_load": strength, "shelf_load": strength,
	"shelf_sag": strength, "sag_limit": strength, "rail": strength, "rung_bending": strength, "tread_bending": strength,
	"strength_class": strength, "lag_steel_table": strength, "wood_screw_table": strength, "nail_table": strength, "nail_lateral": strength,
	"bolt_concrete_table": strength, "bolt_double_shear_table": strength, "gap_joint": strength, "cleat_on_drywall": strength,
	"cleat_on_drywall_lag": strength, "dowel_bearing": strength, "reduction_term": strength, "withdrawal": strength,
	"withdrawal_ultimate": strength, "combined": strength, "cleat_statics": strength,
	// Their inputs name a data set and not a row: package survey runs them.
	"room": dataSet, "snoop": dataSet, "one_check": dataSet, "univariate": dataSet,
}

const (
	movingParts = "moving and raising parts"
	strength    = "strength"
	dataSet     = "a data set"
)

// TestCases runs every row of every case file through Answer.
func TestCases(t *testing.T) {
	files, err := caseFiles.ReadDir("testdata")
	if err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, f := range files {
		for _, c := range records(t, f.Name()) {
			seen[c["topic"]] = true
			if id := c["rule"]; id != "" {
				run(t, id, "", c)
			} else if elsewhere[c["topic"]] == "" {
				run(t, c["topic"], c["quantity"], c)
			}
		}
	}
	for topic := range elsewhere {
		if _, ok := find(topic); ok || !seen[topic] {
			t.Errorf("%s is listed as asked elsewhere, but has no case or can be asked here", topic)
		}
	}
}

func run(t *testing.T, id, quantity string, c record) {
	t.Helper()
	in, err := ParseInputs(strings.Split(c["inputs"], ";"))
	if err != nil {
		t.Errorf("%s: %v", c["id"], err)
		return
	}
	got, err := Answer(id, quantity, in)
	if err != nil || !agrees(t, got, c) {
		t.Errorf("%s: %s %s %s: got %s, %v, want %s within %q (%s)", c["id"], id, quantity, c["inputs"], told(got), err,
			c["expected"], c["tolerance"], c["source"])
	}
}

func told(r Result) string {
	if r.Value == nil {
		return r.Outcome
	}
	return r.Outcome + " " + strconv.FormatFloat(*r.Value, 'g', -1, 64) + " " + r.Unit
}

// agrees holds a result against the expected word, or number with its unit.
func agrees(t *testing.T, got Result, c record) bool {
	t.Helper()
	text, unit, _ := strings.Cut(c["expected"], " ")
	want, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return got.Outcome == c["expected"]
	}
	if c["rule"] == "" {
		unit = c["unit"]
	}
	return got.Outcome == valueOutcome && got.Value != nil && got.Unit == unit && within(t, *got.Value, want, c)
}

func within(t *testing.T, got, want float64, c record) bool {
	t.Helper()
	tolerance, err := strconv.ParseFloat(strings.TrimSuffix(c["tolerance"], "%"), 64)
	if err != nil {
		t.Fatalf("%s: tolerance %q", c["id"], c["tolerance"])
	}
	if strings.HasSuffix(c["tolerance"], "%") {
		tolerance /= 100
	}
	switch c["tolerance_kind"] {
	case "", "abs":
		return math.Abs(got-want) <= tolerance+1e-12*math.Abs(want)
	case "rel":
		return math.Abs(got-want) <= tolerance*math.Abs(want)
	case "round":
		return math.Floor(got/tolerance+0.5)*tolerance == want
	case "exact":
		return got == want
	case "ceil":
		return math.Ceil(got/tolerance)*tolerance == want
	}
	t.Fatalf("%s: unknown kind of tolerance %q", c["id"], c["tolerance_kind"])
	return false
}
