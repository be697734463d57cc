package worked

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"bunkwright/furniture/yardstick"
)

// ask answers words such as "us-bunk-scope foundation_underside_in=30".
func ask(line string) (Result, error) {
	fields := strings.Fields(line)
	in, err := ParseInputs(fields[1:])
	if err != nil {
		return Result{}, err
	}
	return Answer(fields[0], "", in)
}

// TestByHand asks rules with the inputs that the files of published cases leave out. The needs are those of rules.csv, whose rows
// name their sources; the arithmetic is in the last column.
func TestByHand(t *testing.T) {
	for _, c := range []struct{ line, outcome, arithmetic string }{
		// 16 CFR 1213 and 1513.
		{"us-bunk-scope foundation_underside_mm=762", "not-applies", "762 mm = 30 in, not more"},
		{"us-rail-each-side rails_front=1 rails_wall=1", "pass", "one on each"},
		{"us-rail-over-mattress rail_over_base_in=12 mattress_in=7 foundation_underside_in=28", "not-applies", "28 <= 30"},
		{"us-rail-over-mattress rail_over_base_in=12 upper_mattress_in=7.01", "fail", "4.99 < 5"},
		{"us-rail-over-mattress rail_top_in=75 base_top_in=62 mattress_in=8", "pass", "75 - 62 - 8 = 5"},
		{"us-rail-over-mattress rail_top_in=75 upper_deck_top_in=62 upper_mattress_in=8.5", "fail", "75 - 62 - 8.5 = 4.5"},
		{"us-rail-full-length-gap gaps_in=0.1/0.25", "fail", "the larger of the two ends, 0.25 > 0.22"},
		{"us-rail-short-end-gap head_gap_in=3 ladder_end_gap_in=14", "pass", "each end by itself, 14 <= 15"},
		{"us-rail-short-end-gap ladder_end_gap_in=3/15.5", "fail", "15.5 > 15"},
		{"us-rail-full-side ladder_side=front full_rail_side=wall", "pass", "against the wall"},
		{"us-rail-full-side ladder_side=front full_rail_side=front", "fail", "on the side of the ladder"},
		{"us-end-share end_between_posts_in=39 end_high_parts_in=10/10 end_over_mattress_in=6", "pass", "20/39 = 51.3 %"},
		{"us-end-share end_between_posts_in=39 end_high_parts_in=39 end_over_mattress_in=4.5", "fail", "no part is 5 in over it"},
		{"us-end-over-mattress end_over_mattress_in=4.5", "fail", "4.5 < 5"},
		{"us-lower-end-opening opening_short_in=5 lower_bunk=no", "not-applies", "needs a lower bunk"},
		{"us-lower-end-opening opening_above_lower_base_in=14 lower_mattress_in=6", "pass", "14 >= 9"},
		{"us-lower-end-opening-made-up opening_above_lower_base_in=14 lower_mattress_in=6", "fail", "14 - 6 = 8, between 3.5 and 9"},
		{"us-lower-end-opening-made-up opening_above_lower_base_in=5 lower_mattress_in=6", "pass", "nothing is left"},
		{"us-lower-end-opening-made-up gap_in=14 lower_mattress_in=6", "fail", "14 - 6 = 8, between 3.5 and 9"},
		{"us-lower-end-opening-made-up opening_short_in=12 lower_mattress_in=8.5", "borderline", "12 - 8.5 = 3.5, equal to the block"},
		{"us-lower-end-opening-made-up gap_in=10 opening_above_lower_base_in=3 lower_mattress_in=8", "fail", "begins at 3: 10 - (8 - 3) = 5"},
		{"us-lower-end-opening-made-up gap_in=10 opening_above_lower_base_in=9 lower_mattress_in=8", "pass", "begins over the mattress: 10 > 9"},
		{"us-ladder-lower-bunk-gap lower_deck_top_in=12 lower_mattress_in=6 tread_pitch_in=11 tread_thick_in=1", "pass", "22 - 1 - 18 = 3 <= 3.5"},
		{"us-ladder-lower-bunk-gap lower_deck_top_in=12 lower_mattress_in=3 tread_pitch_in=11 tread_thick_in=1", "fail", "22 - 1 - 15 = 6"},
		{"us-age-upper youngest_y=6", "pass", "6 >= 6"},
		{"asnzs-age-upper youngest_y=6", "fail", "6 < 9"},
		{"us-warning-label answer=yes", "pass", "the maker says so"},
		{"us-rail-release answer=no", "fail", "the maker says no"},
		// EN 747-1, AS/NZS 4220 and their neighbours.
		{"eu-bunk-scope-base base_top_mm=600", "applies", "600 >= 600"},
		{"eu-rail-over-mattress base_top_mm=599 rail_over_base_mm=300 mattress_mm=200", "not-applies", "599 < 600"},
		{"eu-bunk-scope-width frame_width_mm=1201", "not-applies", "1201 > 1200"},
		{"au-bunk-scope base_top_mm=800", "not-applies", "800 is not more than 800"},
		{"au-bunk-scope base_top_mm=800 lower_bunk=yes", "applies", "a stacked pair always"},
		{"au-rail-over-base base_top_mm=700 lower_bunk=yes rail_over_base_mm=250", "fail", "in scope, 250 < 260"},
		{"nz-bunk-scope base_top_mm=701", "applies", "701 > 700"},
		{"au-rail-four-sides rails_front=1 rails_wall=0", "fail", "three sides at most"},
		{"fr-rail-four-sides rails_front=1 rails_wall=1 rails_ends=2", "pass", "four"},
		{"ca-rail-all-sides rails_front=1 rails_wall=0", "fail", "none at the wall"},
		{"qld-wall-rail rails_wall=0 fixed_to_wall=yes", "pass", "fixed for good"},
		{"qld-wall-rail rails_front=1 rails_wall=0 fixed_to_wall=no", "fail", "no rail, not fixed"},
		{"qld-wall-gap to=shelf gap_mm=150", "not-applies", "about the wall"},
		{"qld-wall-gap to=wall rail_from_wall_mm=100", "fail", "95 <= 100 <= 230"},
		{"eu-access-opening ladder_end_gap_mm=400", "pass", "400 <= 400"},
		{"au-gap-rollout access_mm=401", "fail", "401 > 400"},
		{"au-gap-limb head_gap_mm=30", "fail", "30 is forbidden"},
		{"eu-adjoining-gap to=ceiling ceiling_mm=2400 rail_top_mm=2250", "fail", "75 < 150 <= 230"},
		{"eu-adjoining-gap to=ceiling ceiling_low_mm=2300 ceiling_high_mm=2600 rail_top_mm=2250", "pass", "50 <= 75"},
		{"eu-adjoining-gap to=slope knee_wall_mm=1200 rail_from_wall_mm=400 slope_deg=45 rail_top_mm=1500", "pass", "100 x cos 45 = 70.7 <= 75"},
		{"eu-adjoining-gap to=wall rail_from_wall_mm=80", "fail", "75 < 80 <= 230"},
		{"eu-base-slat-gap slat_gap_mm=76", "fail", "76 > 75"},
		{"eu-base-vent open_area_cm2=35", "pass", "35 >= 35"},
		{"au-mark-line mark_line_mm=140 rail_over_base_mm=370", "not-applies", "370 is not less than 360"},
		{"eu-tread-width ladder_width_mm=299", "fail", "299 < 300"},
		{"asnzs-fan-distance bunk_top_z_m=2 fan_plan_m=2.66 fan_radius_m=0.66 blade_z_m=2", "fail", "2 m is not more than 2 m"},
		{"qld-fan-distance bunk_top_z_m=2 fan_plan_m=2.66 fan_radius_m=0.66 blade_z_m=2", "pass", "2 m >= 2 m"},
		{"us-not-under-fan overlaps_in_plan=yes", "fail", "the bed is under it"},
		{"fan-floor blade_height_in=83.9", "fail", "83.9 < 84"},
		// Playgrounds and ladders.
		{"play-rung-slope ladder_angle_deg=74", "fail", "74 < 75"},
		{"play-even-spacing tread_pitches_in=10/10/12", "fail", "12 is not 10"},
		{"play-even-spacing tread_pitches_in=10/10/10", "pass", "equal"},
		{"eu-fall-surface-scope fall_height_m=0.6", "not-applies", "600 is not more than 600"},
		{"eu-fall-max top_grip_m=2.2", "pass", "2.2 - 1 = 1.2 <= 3"},
		{"eu-impact-area fall_height_m=0.5 clear_floor_m=1", "not-applies", "500 is not more than 600"},
		{"eu-impact-area fall_height_m=1.2 clear_floor_m=1.4", "fail", "1.4 < 1.5"},
		{"eu-impact-area fall_height_m=1.8 clear_floor_m=1.6", "not-applies", "the row ends at 1.5 m of fall"},
		{"eu-wall-deflection deflection_mm=6 span_mm=600", "pass", "6/600 = 1 %"},
		{"play-carpet-not-padding answer=yes", "fail", "no is the answer asked for"},
		// The house.
		{"irc-escape-area opening_w_in=40 opening_h_in=24 blocked_w_in=8", "fail", "32 x 24 / 144 = 5.33 < 5.7"},
		{"irc-escape-area-grade opening_w_in=40 opening_h_in=24 blocked_w_in=8", "pass", "5.33 >= 5.0"},
		{"irc-escape-width opening_w_in=24 blocked_w_in=4", "pass", "20 >= 20"},
		{"irc-fall-opening sill_in=22 drop_in=72 opens_in=10", "not-applies", "72 is not over 72"},
		{"irc-fall-opening sill_in=22 drop_in=110 opens_in=4", "fail", "4 is not under 4"},
		{"irc-fall-opening sill_in=22 drop_in=110 opens_in=10 guard=yes", "not-applies", "a guard is fitted"},
		{"ibc-fall-sill sill_in=35.9", "applies", "35.9 < 36"},
		{"cpsc-window-stop opens_in=4 drop_in=100", "pass", "4 <= 4"},
		{"own-sill-over-mattress sill_in=40 drop_in=60 mattress_top_in=20", "not-applies", "60 is not over 72"},
		{"own-sill-over-mattress sill_in=40 drop_in=110 lower_deck_top_in=14 lower_mattress_in=6", "fail", "40 - 14 - 6 = 20 < 24"},
		{"heater-front heater_front_in=14 bedding_overhang_in=3", "fail", "14 - 3 = 11 < 12"},
		{"heater-portable portable_heater_in=36", "pass", "36 >= 36"},
		{"heater-no-outlet-above answer=no", "pass", "no is the answer asked for"},
		{"alarm-count alarms_in_room=0", "fail", "0 < 1"},
		{"alarm-register alarm_to_register_in=36", "pass", "36 >= 36"},
		{"alarm-wall-drop alarm_below_ceiling_in=12.5", "fail", "12.5 > 12"},
		{"outlet-reach wall_ft=24 receptacles_ft=6/18", "pass", "6, 6 and 6 ft"},
		{"outlet-reach wall_ft=24 receptacles_ft=18/6", "pass", "in any order"},
		{"outlet-reach wall_space_ft=14 receptacles_ft=2", "fail", "14 - 2 = 12 ft, over 6"},
		{"outlet-reach wall_space_in=23 wall_in=23 receptacles_in=0", "not-applies", "23 < 24"},
		{"outlet-wall-space wall_space_in=24", "applies", "24 >= 24"},
		{"irc-room-area room_w_ft=7 room_l_ft=10", "pass", "70 ft2"},
		{"irc-room-least room_w_ft=6.9 room_l_ft=12", "fail", "6.9 ft = 82.8 in < 84"},
		{"camp-double bed_to_bed_in=48", "pass", "48 >= 48"},
		{"lth-bedside bed_to_wall_mm=749", "fail", "749 < 750"},
		{"irc-hall-width hall_in=35", "fail", "35 < 36"},
		{"irc-stair-width-one-rail stair_at_rail_in=31.5", "pass", "31.5 >= 31.5"},
		{"irc-stair-width-two-rails stair_at_rail_in=26", "fail", "26 < 27"},
		{"irc-stair-headroom stair_headroom_in=80", "pass", "80 >= 80"},
		// Heights over a sleeper.
		{"md-camp-upper ceiling_low_in=90 ceiling_high_in=110 upper_deck_top_in=56 upper_mattress_in=6", "fail", "90 - 56 - 6 = 28 < 36"},
		{"ny-camp upper_underside_in=44 lower_deck_top_in=14 lower_mattress_in=6 ceiling_in=96 upper_deck_top_in=50 upper_mattress_in=6", "fail", "44 - 14 - 6 = 24 < 27"},
		{"uscg-modu-gap berth_gap_mm=760 mattress_mm=150", "pass", "760 >= 760, from the berth bottom"},
		{"fmcsa-sleeper berth_gap_in=30 mattress_in=7", "fail", "30 - 7 = 23 < 24"},
		{"irc-loft ceiling_low_in=92 upper_deck_top_in=56", "pass", "92 - 56 = 36"},
		{"pa-resident headroom_mm=700 sitting_mm=701", "fail", "701 > 700"},
		// A planning figure that judges in the stead of a row: a mattress larger than its frame does not go in.
		{"own-mattress-gap frame_width_in=38 mattress_width_in=38.5", "fail", "-0.5 < 0"},
		// The value itself.
		{"irc-stair-riser value_in=7.75", "pass", "7.75 <= 7.75"},
		{"au-access-count value=5", "fail", "5 > 4"},
		{"play-corner-angle value_deg=60", "pass", "60 >= 60"},
	} {
		got, err := ask(c.line)
		if err != nil || got.Outcome != c.outcome {
			t.Errorf("%s: got %s, %v, want %s (%s)", c.line, told(got), err, c.outcome, c.arithmetic)
		}
	}
}

// TestUnits: the answer comes in the unit of the inputs, the spare of a length in mm.
func TestUnits(t *testing.T) {
	for _, c := range []struct {
		line  string
		value float64
		unit  string
		spare float64
	}{
		{"us-rail-over-mattress rail_over_base_in=13 mattress_in=7", 6, "in", 25.4},
		{"us-rail-over-mattress rail_over_base_mm=300 mattress_mm=150", 150, "mm", 23},
		{"us-rail-over-mattress rail_over_base_in=13 mattress_mm=177.8", 6, "in", 25.4},
		{"us-rail-over-mattress rail_over_base_in=13 mattress_in=7-1/2", 5.5, "in", 12.7},
		{"us-rail-opening gaps_in=2/3.25/3", 3.25, "in", 6.35},
		{"qld-fan-distance fan_distance_m=1.75", 1.75, "m", -250},
		{"irc-escape-area opening_w_mm=609.6 opening_h_mm=914.4", 6, "ft2", 0.3},
		{"us-age-upper youngest_y=8", 8, "year", 2},
		{"us-end-share end_between_posts_in=40 end_high_parts_in=10", 25, "%", -25},
		{"eu-base-vent open_area_m2=0.004", 40, "cm2", 5},
	} {
		got, err := ask(c.line)
		if err != nil || got.Value == nil || math.Abs(*got.Value-c.value) > 1e-9 || got.Unit != c.unit || math.Abs(*got.Spare-c.spare) > 1e-6 {
			t.Errorf("%s: got %s, spare %v, %v", c.line, told(got), got.Spare, err)
		}
	}
}

// TestCalculationsByHand works out calculations that have no published case, by the formulas of calcs.csv.
func TestCalculationsByHand(t *testing.T) {
	for _, c := range []struct {
		line  string
		value float64
		unit  string
	}{
		{"calc-hang-fall top_grip_m=2.1", 1.1, "m"},                       // highest grip - 1 m
		{"calc-berth-bottom berth_gap_mm=760 mattress_mm=150", 610, "mm"}, // gap - mattress
		{"calc-berth-bottom berth_gap_in=30 upper_mattress_in=6", 24, "in"},
		{"calc-max-mattress-us rail_over_base_in=12", 7, "in"}, // 12 - 5
		{"calc-headroom ceiling_low_in=90 ceiling_high_in=96 upper_deck_top_in=60 upper_mattress_in=6", 24, "in"},
		{"calc-slope-distance knee_wall_mm=1200 rail_from_wall_mm=400 slope_deg=45 rail_top_mm=1500", 100 * math.Sqrt2 / 2, "mm"},
		{"calc-fan-distance bunk_top_z_m=2.3 fan_plan_m=2.4 fan_radius_m=0.66 blade_z_m=2.2", 1.74, "m"}, // blades below the bed top: 0
		// A tape that lay supported all along has no sag: 250.3 (1 + 0.01/50 + 6.45e-6 x 17 + 5/(0.005 x 29e6)).
		{"taping_correction measured_ft=250.3 tape_true_ft=50.01 std_pull_lb=20 used_pull_lb=25 std_temp_F=68 used_temp_F=85 weight_lb=2.5" +
			" weight_length_ft=100 area_in2=0.005 E_psi=29000000 expansion_per_F=6.45e-6 supported_ft=250.3", 250.3 * (1 + 0.01/50 + 6.45e-6*17 + 5/(0.005*29e6)), "ft"},
		{"calc-impact-area top_grip_m=2.8", 1.7, "m"}, // falls 1.8 m
	} {
		got, err := ask(c.line)
		if err != nil || got.Outcome != valueOutcome || math.Abs(*got.Value-c.value) > 1e-9 || got.Unit != c.unit || got.Spare != nil {
			t.Errorf("%s: got %s, %v, want %v %s", c.line, told(got), err, c.value, c.unit)
		}
	}
}

// TestWordHasNoUnit: nothing checks the walls of a room with one diagonal (four walls and one diagonal are just enough for it), so no
// slip in them would be found.
func TestWordHasNoUnit(t *testing.T) {
	in := Inputs{{"a", "144"}, {"b", "120"}, {"sd_in", "0.125"}, {"angle_sd_deg", "0.5"}, {"set", "4 walls 1 diagonal"}}
	got, err := Answer("design", "mdb_wall_144", in)
	if err != nil || got.Outcome != "not checked" || got.Value != nil || got.Unit != "" {
		t.Errorf("got %+v, %v", got, err)
	}
}

// TestEveryExampleWorks asks everything with its own example.
func TestEveryExampleWorks(t *testing.T) {
	for _, id := range IDs() {
		example, ok := Example(id)
		if row, found := yardstick.Find(id); found && row.Role == yardstick.RoleParameter {
			if ok {
				t.Errorf("%s is no rule", id)
			}
			continue
		}
		if !ok {
			t.Errorf("%s: no example", id)
			continue
		}
		in, err := ParseInputs(example)
		if err != nil {
			t.Fatal(err)
		}
		quantity := ""
		if in[0].Key == "quantity" {
			quantity, in = in[0].Text, in[1:]
		}
		if r, err := Answer(id, quantity, in); err != nil || r.ID != id || r.Outcome == "" || r.Outcome == yardstick.NotJudged.String() {
			t.Errorf("%s %v: %+v, %v", id, example, r, err)
		}
	}
}

// TestEveryRuleIsMeasured: all rows but those that the maker answers, and own planning figures, are reached from what one measures.
func TestEveryRuleIsMeasured(t *testing.T) {
	for _, row := range yardstick.All() {
		if row.Relation.Answer() || row.Role == yardstick.RoleJudged || row.Role == yardstick.RoleParameter {
			continue
		}
		if len(measures()[row.ID].ways) == 0 {
			t.Errorf("%s: no way from inputs to its value", row.ID)
		}
	}
	for id := range measures() {
		if _, ok := yardstick.Find(id); !ok {
			t.Errorf("%s is no row", id)
		}
	}
}

// TestWaysUseKnownKeys: a way can ask only for keys that somebody can give.
func TestWaysUseKnownKeys(t *testing.T) {
	for id, m := range measures() {
		for _, w := range m.ways {
			for _, name := range slices.Concat(w.needs, w.any, w.not) {
				if _, ok := ruleKeys.find(name); !ok {
					t.Errorf("%s: key %s has no meaning", id, name)
				}
			}
		}
	}
}

func TestEveryCalculationIsThere(t *testing.T) {
	for _, c := range yardstick.Calcs() {
		if _, ok := calculations[c.ID]; !ok {
			t.Errorf("%s cannot be asked", c.ID)
		}
	}
	if len(calculations) != len(yardstick.Calcs()) {
		t.Errorf("%d calculations, %d in the file", len(calculations), len(yardstick.Calcs()))
	}
}

func TestRefusals(t *testing.T) {
	for line, want := range map[string]string{
		"us-rail-over-mattress rail_over_base_in=12":                           "us-rail-over-mattress: mattress: not given: want mattress_in=7 (thickness of the thickest mattress to be used) or the like",
		"us-rail-over-mattress rail_over_base=12 mattress_in=7":                `us-rail-over-mattress: rail_over_base: "12": want one number with its unit in the key, such as rail_over_base_in=12`,
		"us-rail-over-mattress rail_over_base_in=twelve mattress_in=7":         `us-rail-over-mattress: rail_over_base_in: "twelve": want one number with its unit in the key, such as rail_over_base_in=12`,
		"us-rail-over-mattress rail_over_base_in=NaN mattress_in=7":            `us-rail-over-mattress: rail_over_base_in: "NaN": want one number with its unit in the key, such as rail_over_base_in=12`,
		"us-rail-over-mattress rail_over_base_in=Inf mattress_in=7":            `us-rail-over-mattress: rail_over_base_in: "Inf": want one number with its unit in the key, such as rail_over_base_in=12`,
		"us-rail-over-mattress rail_over_base_in=1e999 mattress_in=7":          `us-rail-over-mattress: rail_over_base_in: "1e999": want one number with its unit in the key, such as rail_over_base_in=12`,
		"us-rail-over-mattress rail_over_base_in=12 matress_in=7":              "us-rail-over-mattress: matress_in: is no key that is known here",
		"us-rail-over-mattress rail_over_base_deg=12 mattress_in=7":            "us-rail-over-mattress: rail_over_base_deg: deg is no unit of rail_over_base: want the key to end in one of _in _mm _cm _m _ft",
		"us-rail-over-mattress rail_over_base_in=12 rail_over_base_mm=300":     "us-rail-over-mattress: rail_over_base_mm: rail_over_base is given twice",
		"us-rail-opening gaps_in=3//3":                                         `us-rail-opening: gaps_in: "3//3": want decimal numbers with / between them, such as gaps_in=3/3.25`,
		"us-warning-label answer=maybe":                                        `us-warning-label: answer: "maybe": want yes or no`,
		"us-rail-over-mattress":                                                "us-rail-over-mattress: rail_over_base and mattress: not given: want rail_over_base_in=12 (upper surface of the bed base to the top of the rail) and mattress_in=7 (thickness of the thickest mattress to be used) or the like",
		"own-head-cylinder value_mm=100":                                       "own-head-cylinder: is a planning figure that measurements take, no rule: nothing is held against it",
		"section nominal=2x4":                                                  "section: quantity: not given: want one of area_in2, S_edge_in3, I_edge_in4, S_flat_in3, I_flat_in4, weight_lb_per_ft_at_35pcf",
		"dressed_size nominal=2x5 state=dry":                                   "",
		"us_tape length_ft=101":                                                "us_tape: these inputs give no number",
		"eu-adjoining-gap to=slope rail_from_wall_mm=60":                       "eu-adjoining-gap: these inputs give no number",
		"slat_gap W=75 s=3.5 n=1.5":                                            "slat_gap: n: 1.5: want a whole number",
		"calc-named-child sex=M age_y=8 sitting_mm=700 ask=when":               "calc-named-child: ask: when: want z, age or years",
		"calc-named-child sex=M age_y=8 sitting_mm=700 ask=age":                "calc-named-child: headroom: not given: want headroom_mm=838.2 (free height over the mattress) or the like",
		"calc-sitting-height sex=X age_y=8 stat=p50":                           `calc-sitting-height: sex "X": want M, F, all or unknown`,
		"us-end-share end_between_posts_in=0 end_high_parts_in=20":             "us-end-share: these inputs give no number",
		"us-rail-over-mattress rail_over_base_in=12 mattress_in=7 extra_mm=12": "us-rail-over-mattress: extra_mm: is no key that is known here",
	} {
		r, err := ask(line)
		var bad *InputError
		if !errors.As(err, &bad) || want != "" && err.Error() != want {
			t.Errorf("%s: got %s and %q, want %q", line, told(r), err, want)
			continue
		}
		if _, can := Example(bad.ID); can && len(bad.Example) == 0 {
			t.Errorf("%s: the error has no example", line)
		}
	}
	var unknown *UnknownIDError
	if _, err := ask("us-rail-over-matress mattress_in=7"); !errors.As(err, &unknown) || !slices.Contains(unknown.Among, "us-rail-over-mattress") {
		t.Errorf("got %v for an unknown id", err)
	}
	for _, word := range []string{"mattress", "=7", "mattress=", " = "} {
		if _, err := ParseInputs([]string{word}); err == nil {
			t.Errorf("%q was read", word)
		}
	}
}

// FuzzAnswer: whatever is typed, there is an answer or an error, and no number that is none.
func FuzzAnswer(f *testing.F) {
	for _, id := range IDs() {
		if example, ok := Example(id); ok {
			f.Add(id, strings.Join(example, ";"))
		}
	}
	f.Add("outlet-reach", "wall_ft=13;receptacles_ft=0/20/-3")
	f.Add("us-end-share", "end_between_posts_in=0;end_high_parts_in=1e308/1e308")
	f.Fuzz(func(t *testing.T, id, line string) {
		in, err := ParseInputs(strings.Split(line, ";"))
		if err != nil {
			return
		}
		quantity := ""
		if in[0].Key == "quantity" {
			quantity, in = in[0].Text, in[1:]
		}
		r, err := Answer(id, quantity, in)
		if err != nil {
			return
		}
		if r.Outcome == "" || r.Value != nil && !finite(*r.Value) || r.Spare != nil && !finite(*r.Spare) {
			t.Errorf("%s %s: %+v", id, line, r)
		}
	})
}

// TestReadingTests holds the tests of one reading against room_reference.csv (case six_readings_DA_plus_12, o04), room_cases.csv roo-031 and
// roo-056, and the critical values against tau_critical.csv at their own chance.
func TestReadingTests(t *testing.T) {
	for _, c := range []struct {
		id, quantity, inputs string
		want, within         float64
	}{
		{"reading_test", "w", "residual=-1.190680 sd=0.125 redundancy=0.097921", -30.44023, 0.001},
		{"reading_test", "tau", "residual=-1.190680 sd=0.125 redundancy=0.097921 s0=30.44023", -1, 0.0001},
		{"reading_test", "estimated_error", "residual=-1.190680 redundancy=0.097921", 12.1596, 0.001},
		{"reading_test", "mdb", "sd=0.125 redundancy=0.14754", 1.34, 0.006},
		{"reading_test", "mdb", "sd_mm=3.175 redundancy=0.14754", 1.34 * 25.4, 0.15},
		{"slip_limit", "w", "readings=1 alpha=0.001", 3.2905, 0.0001},
		{"slip_limit", "tau", "readings=1 alpha=0.001 f=1", 1, 0},
	} {
		in, err := ParseInputs(strings.Fields(c.inputs))
		if err != nil {
			t.Fatal(err)
		}
		got, err := Answer(c.id, c.quantity, in)
		if err != nil || got.Value == nil || math.Abs(*got.Value-c.want) > c.within {
			t.Errorf("%s %s %s: %s, %v, want %g", c.id, c.quantity, c.inputs, told(got), err, c.want)
		}
	}
}
