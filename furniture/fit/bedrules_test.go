package fit

import (
	"encoding/csv"
	"math"
	"os"
	"slices"
	"strconv"
	"strings"
	"testing"

	"bunkwright/furniture/bunk"
	"bunkwright/furniture/yardstick"
)

// bedInput puts the inputs of a worked case, lengths in mm, into the plain bed and names the question that is then asked.
type bedInput struct {
	question string
	set      func(s *Scene, in map[string][]float64)
}

var bedInputs = map[string]bedInput{
	"us-bunk-scope":         {"rail-sides", func(s *Scene, in map[string][]float64) { s.Bed.Upper.Underside = in["foundation_underside"][0] }},
	"us-rail-over-mattress": {"rail-height", railAndMattress},
	"eu-rail-over-mattress": {"rail-height", railAndMattress},
	"au-rail-over-mattress": {"rail-height", railAndMattress},
	"au-mark-scope":         {"marks", railAndMattress},
	"us-rail-full-length-gap": {"rail-ends", func(s *Scene, in map[string][]float64) {
		s.Bed.Guards[0].GapTo = in["gap"][0]
	}},
	"us-rail-short-end-gap": {"rail-ends", access},
	"eu-access-opening":     {"rail-ends", access},
	"au-gap-rollout":        {"rail-ends", access},
	"us-rail-each-side": {"rail-sides", func(s *Scene, in map[string][]float64) {
		s.Bed.Guards = nil
		for side, key := range map[string]string{"front": "rails_front", "wall": "rails_wall"} {
			for range int(in[key][0]) {
				s.Bed.Guards = append(s.Bed.Guards, bunk.GuardAt{Side: side, Top: 1800})
			}
		}
	}},
	"us-rail-opening":      {"rail-openings", holes(bunk.ZoneRail)},
	"eu-rail-base-gap":     {"rail-openings", holes(bunk.ZoneRail)},
	"uk-1987-other-gap":    {"rail-openings", holes(bunk.ZoneRail)},
	"au-gap-head":          {"end-openings", holes(bunk.ZoneUpper)},
	"au-gap-limb":          {"rail-openings", holes(bunk.ZoneRail)},
	"eu-small-gap":         {"end-openings", holes(bunk.ZoneUpper)},
	"us-upper-end-opening": {"end-openings", holes(bunk.ZoneUpper)},
	"us-lower-end-opening": {"end-openings", holes(bunk.ZoneLower)},
	"us-end-share": {"end-height", func(s *Scene, in map[string][]float64) {
		post, between := 40.0, in["end_between_posts"][0]
		s.Bed.Wide, s.Bed.Guards = between+2*post, s.Bed.Guards[:2]
		top := s.Bed.Upper.MattressTop + in["end_over_mattress"][0]
		for _, side := range bedSides[2:] {
			s.Bed.Guards = append(s.Bed.Guards, bunk.GuardAt{Side: side, Top: top, From: post, To: post + in["end_high_parts"][0]})
		}
	}},
	"ladder-clear-gap": {"ladder-steps", treads},
	"eu-tread-pitch":   {"ladder-steps", treads},
	"play-climb-attached": {"climb-steps", func(s *Scene, in map[string][]float64) {
		slats(in["foothold"][0])(s)
	}},
	"own-mattress-gap": {"mattress-fits", func(s *Scene, in map[string][]float64) {
		s.Bed.Inside = bunk.Inside{Long: in["frame_length"][0], Wide: in["frame_width"][0]}
		deck := bunk.Deck{MattressLong: mm(in["mattress_length"][0]), MattressWide: mm(in["mattress_width"][0]), MattressKnown: true}
		s.Bed.Sizes.Upper, s.Bed.Sizes.Lower = deck, deck
	}},
}

func railAndMattress(s *Scene, in map[string][]float64) {
	for i := range s.Bed.Guards {
		s.Bed.Guards[i].Top = s.Bed.Upper.Top + in["rail_over_base"][0]
	}
	if len(in["mattress"]) > 0 {
		s.Bed.Upper.MattressTop = s.Bed.Upper.Top + in["mattress"][0]
	}
}

func access(s *Scene, in map[string][]float64) {
	s.Bed.WayIn.Clear, s.Bed.Guards[1].GapFrom = in["access"][0], in["access"][0]
}

func treads(s *Scene, in map[string][]float64) {
	pitch := in["tread_pitch"][0]
	s.Bed.Steps.Tops, s.Bed.Steps.Thick = []float64{pitch, 2 * pitch, 3 * pitch}, in["tread_thick"][0]
}

// holes makes an opening of a zone for each that the case names; a side that it leaves out is long.
func holes(zone string) func(*Scene, map[string][]float64) {
	return func(s *Scene, in map[string][]float64) {
		high := slices.Concat(in["gap"], in["gaps"], in["opening_short"])
		if len(in["slat_pitch"]) > 0 {
			high = append(high, ClearGap(in["slat_pitch"][0], in["slat_width"][0]))
		}
		wide := 1500.0
		if len(in["opening_long"]) > 0 {
			wide = in["opening_long"][0]
		}
		s.Bed.Lower.Top, s.Bed.Lower.MattressTop, s.Bed.Openings = 350, 500, nil
		bottom := map[string]float64{bunk.ZoneRail: 1580, bunk.ZoneUpper: 1580, bunk.ZoneLower: 700}[zone]
		for i, h := range high {
			s.Bed.Openings = append(s.Bed.Openings, bunk.Opening{ID: strconv.Itoa(i), Side: "left", Zone: zone, Bottom: bottom, Top: bottom + h, Wide: wide})
		}
	}
}

// TestBedRuleCases puts every worked case of these questions through the question itself; the source of each is in its own column.
func TestBedRuleCases(t *testing.T) {
	for _, c := range bedCases(t) {
		in := mmInputs(t, c["inputs"])
		if strings.HasPrefix(c["rule"], "calc-") {
			checkMaxMattress(t, c, in)
			continue
		}
		todo, ok := bedInputs[c["rule"]]
		if !ok {
			t.Errorf("%s: the test does not know %s", c["id"], c["rule"])
			continue
		}
		row, _ := yardstick.Find(c["rule"])
		s := plainScene(t, placeOf(row))
		todo.set(s, in)
		if got := worst(answer(t, s, todo.question), c["rule"]); got != c["expected"] {
			t.Errorf("%s: %s with %s: %s, want %s (%s)", c["id"], c["rule"], c["inputs"], got, c["expected"], c["arithmetic"])
		}
	}
}

func placeOf(r yardstick.Row) string {
	if r.Jurisdiction == "any" {
		return "US"
	}
	return r.Jurisdiction[:2]
}

// worst says what the lines of a row come to; a scope row is told by whether a row that hangs on it applies.
func worst(a Answer, id string) string {
	hangs := map[string]string{"us-bunk-scope": "us-rail-each-side", "au-mark-scope": "au-mark-line", "own-mattress-gap": "own-mattress-gap-need"}
	row, _ := yardstick.Find(id)
	asked := id
	if hangs[id] != "" {
		asked = hangs[id]
	}
	out := yardstick.NotJudged
	for _, l := range a.Lines {
		switch got := l.Row.Outcome(l.Value); {
		case l.Row.ID != asked:
		case row.Role == yardstick.RoleScope && l.Verdict == NotApplicable:
			return yardstick.NotApplies.String()
		case row.Role == yardstick.RoleScope:
			return yardstick.Applies.String()
		case out != yardstick.Fail && (got != yardstick.Pass || out == yardstick.NotJudged):
			out = got
		}
	}
	return out.String()
}

func checkMaxMattress(t *testing.T, c map[string]string, in map[string][]float64) {
	t.Helper()
	rule := map[string]string{"calc-max-mattress-us": "us-rail-over-mattress", "calc-max-mattress-eu": "eu-rail-over-mattress"}[c["rule"]]
	row, _ := yardstick.Find(rule)
	want, _ := strconv.ParseFloat(strings.TrimSuffix(c["expected"], " mm"), 64)
	within, _ := strconv.ParseFloat(c["tolerance"], 64)
	if got := MaxMattress(in["rail_over_base"][0], row.Need[0]); math.Abs(got-want) > within {
		t.Errorf("%s: %v, want %v", c["id"], got, want)
	}
}

func bedCases(t *testing.T) []map[string]string {
	t.Helper()
	data, err := os.ReadFile("testdata/bed_cases.csv")
	if err != nil {
		t.Fatal(err)
	}
	in := csv.NewReader(strings.NewReader(string(data)))
	in.Comment = '#'
	lines, err := in.ReadAll()
	if err != nil || len(lines) < 40 {
		t.Fatalf("%d lines, %v", len(lines), err)
	}
	var out []map[string]string
	for _, l := range lines[1:] {
		rec := map[string]string{}
		for i, name := range lines[0] {
			rec[name] = l[i]
		}
		out = append(out, rec)
	}
	return out
}

// mmInputs reads "key_unit=value;..." into numbers by key, lengths in mm; words are left out.
func mmInputs(t *testing.T, text string) map[string][]float64 {
	t.Helper()
	out := map[string][]float64{}
	for _, pair := range strings.Split(text, ";") {
		key, value, _ := strings.Cut(pair, "=")
		scale := 1.0
		for suffix, by := range map[string]float64{"_in": 25.4, "_mm": 1} {
			if name, ok := strings.CutSuffix(key, suffix); ok {
				key, scale = name, by
			}
		}
		for _, word := range strings.Split(value, "/") {
			if x, err := strconv.ParseFloat(word, 64); err == nil {
				out[key] = append(out[key], x*scale)
			}
		}
	}
	return out
}
