package yardstick

import (
	"errors"
	"slices"
	"strings"
	"testing"
)

// TestCounts holds the data against the counts stated with it: 214 requirements, 57 planning figures, 18 calculations.
func TestCounts(t *testing.T) {
	published := slices.DeleteFunc(All(), func(r Row) bool { return r.Role == RoleJudged || r.Role == RoleParameter })
	if len(published) != 214 || len(All()) != 214+57 || len(Calcs()) != 18 {
		t.Errorf("%d published rows, %d in all, %d calculations", len(published), len(All()), len(Calcs()))
	}
}

// The questions of the project, and those of the strength and carrying checks that planning figures already name.
const questionIDs = `sit-up-top sit-up-bottom lie-and-turn old-enough rail-height rail-sides rail-ends rail-openings
end-height end-openings ladder-steps climb-steps slat-gaps mattress-fits nothing-catches marks stands wall-gap
doors-swing ladder-landing walkway drawers-slide drawers-open climb-space make-the-bed see-them way-out window-fall
window-cords fan-and-lights heat air power smoke-alarm room-height studs-hit screw-length shelf-heights
gets-in stands-up slats-hold side-rails-hold ledges-hold rungs-hold shelves-hold shelves-sag rail-push
does-not-sway does-not-tip`

func TestEveryRowIsWhole(t *testing.T) {
	known := strings.Fields(questionIDs)
	for _, r := range All() {
		for _, q := range r.Questions {
			if !slices.Contains(known, q) {
				t.Errorf("%s: unknown question %q", r.ID, q)
			}
		}
		if len(r.Questions) == 0 && r.ID != "own-agree" || r.Quantity == "" || r.Source == "" || r.Basis == "" || r.Jurisdiction == "" {
			t.Errorf("%s: question, quantity, source, basis or jurisdiction is missing", r.ID)
		}
		for _, w := range r.When {
			if scope, ok := Find(w); !ok || scope.Role != RoleScope {
				t.Errorf("%s: when %q is no scope row", r.ID, w)
			}
		}
		if !r.Relation.Answer() && r.Relation != Equals && (r.Written == "" || r.Unit == NoUnit) {
			t.Errorf("%s: no need or no unit", r.ID)
		}
	}
}

// The relation words a file uses say themselves whether an end is allowed; at_limit may only soften that to borderline.
func TestAtLimitAgreesWithRelation(t *testing.T) {
	for _, r := range All() {
		low, high := r.Relation.equality()
		if r.equalLow != low && r.equalLow != EqualBorderline || r.equalHigh != high && r.equalHigh != EqualBorderline {
			t.Errorf("%s: %s, but at_limit says otherwise", r.ID, r.Relation)
		}
	}
}

func TestFindAndOfQuestion(t *testing.T) {
	r, ok := Find("us-lower-end-opening")
	if !ok || r.Written != "3.5..9 in" || r.Source != "16 CFR 1213.3(b)(3) with test 1213.4(c)(1) (2003)" || r.Basis != "published" {
		t.Errorf("got %+v", r)
	}
	if _, ok := Find("no-such-row"); ok {
		t.Error("found a row that is not there")
	}
	for question, want := range map[string]string{
		"smoke-alarm":  "alarm-count alarm-fan alarm-register alarm-wet-door alarm-wall-drop",
		"lie-and-turn": "fmcsa-sleeper uscg-passenger own-lie-height",
		"wall-gap":     "eu-adjoining-gap qld-wall-gap",
		"no-question":  "",
	} {
		var ids []string
		for _, r := range OfQuestion(question) {
			ids = append(ids, r.ID)
		}
		if got := strings.Join(ids, " "); got != want {
			t.Errorf("%s: got %q, want %q", question, got, want)
		}
	}
	bands := OfQuestion("rail-openings")
	if !slices.ContainsFunc(bands, func(r Row) bool { return r.ID == "au-gap-head" }) {
		t.Error("the Australian gap bands are asked of the rails too")
	}
}

// A planning figure that judges in the stead of a published row asks for the same; the mattress band adds its lower end.
func TestRepeatsAgree(t *testing.T) {
	for id := range repeats {
		r, ok := Find(id)
		by, _ := r.JudgedBy()
		own, found := Find(by)
		if !ok || !found || own.Role != RoleJudged || r.Role != RoleAdvisory {
			t.Fatalf("%s judged by %s: one of them is missing or of another role", id, by)
		}
		if r.Need[0] != own.Need[len(own.Need)-1] || r.Unit != own.Unit || r.Questions[0] != own.Questions[0] {
			t.Errorf("%s and %s differ", id, by)
		}
	}
	outlet, _ := Find("heater-no-outlet-above")
	if by, ok := outlet.JudgedBy(); ok {
		t.Errorf("%s stands for itself, not for %s", outlet.ID, by)
	}
}

// Values read by hand from practice.csv.
func TestFigures(t *testing.T) {
	for id, want := range map[string][]float64{
		HeadCylinder: {100}, SeatNear: {300}, SeatFar: {100}, SeatFront: {150}, SeatClearance: {50}, Slump: {40},
		WayOutDepth: {609.6}, BedBeside: {914.4}, AirHeight: {101.6}, BuildByEye: {6.35}, BuildBySpacer: {1.5875},
		FootholdDepth: {19.05}, ScrewsPerStud: {2}, Agree: {2.58}, StairTurn: {25.4}, TiltAir: {12.7},
		BedLoad: {400}, PointLoad: {250}, BookLoad: {25}, RailPush: {50}, SwayPush: {50}, TipLoad: {150},
		Pillow: {660.4, 508, 101.6}, ParentStand: {1421, 1753},
	} {
		if got := Figures(id); !slices.Equal(got, want) {
			t.Errorf("%s: got %v, want %v", id, got, want)
		}
	}
}

// Every parameter that has a number has a name in this package.
func TestParametersAreNamed(t *testing.T) {
	named := []string{HeadCylinder, SeatNear, SeatFar, SeatFront, Slump, WayOutDepth, BedBeside, AirHeight, BuildByEye,
		BuildBySpacer, FootholdDepth, Agree, StairTurn, TiltAir, BedLoad, PointLoad, BookLoad, RailPush, SwayPush,
		TipLoad, Pillow, ParentStand}
	for _, r := range All() {
		if r.Role == RoleParameter && len(r.Need) > 0 && !slices.Contains(named, r.ID) {
			t.Errorf("%s has no name", r.ID)
		}
	}
}

func TestFigurePanicsOnASlip(t *testing.T) {
	for _, id := range []string{"own-nothing", "own-drying", Pillow} {
		func() {
			defer func() {
				if recover() == nil {
					t.Errorf("%s gave a number", id)
				}
			}()
			Figure(id)
		}()
	}
}

func TestCalcs(t *testing.T) {
	c, ok := FindCalc("calc-headroom-age")
	if !ok || c.Unit != "year" || !strings.Contains(c.Formula, "not-by-18 if never") {
		t.Errorf("got %+v", c)
	}
	if _, ok := FindCalc("calc-nothing"); ok {
		t.Error("found a calculation that is not there")
	}
}

func TestBadRowsAreRefused(t *testing.T) {
	const head = "id,question,quantity,relation,value_in,value_mm,value_other,unit_other,governs,use,force,basis,note\n"
	for line, want := range map[string]string{
		"a,q,x,=>,1,,,,in,judged,need,practice,":                           `row a: relation: "=>"`,
		"a,q,x,>=,one,,,,in,judged,need,practice,":                         `row a: value: "one"`,
		"a,q,x,>=,1e9,,,,in,judged,need,practice,":                         `row a: value: "1e9"`,
		"a,q,x,>=,0.00000001,,,,in,judged,need,practice,":                  `row a: value: "0.00000001"`,
		"a,q,x,>=,,,,,in,judged,need,practice,":                            `row a: value: ""`,
		"a,q,x,inside [a..b],9..1,,,,in,judged,need,p,":                    `row a: value: "9..1"`,
		"a,q,x,>=,1,,,,none,judged,need,practice,":                         `row a: value: ""`,
		"a,q,x,>=,1..2,,,,in,judged,need,practice,":                        `row a: value: "1..2"`,
		"a,q,x,>=,1,,,,inch,judged,need,practice,":                         `row a: governs: "inch"`,
		"a,q,x,>=,1,,,,in,judged,must,practice,":                           `row a: force: "must"`,
		"a,q,x,>=,1,,,,in,law,need,practice,":                              `row a: role: "law"`,
		"a,q,x,>=,1,,,,in,judged,need,p,\na,q,x,>=,1,,,,in,judged,need,p,": `row a: id: "a"`,
	} {
		rows, err := parsePractice(head + line)
		if err == nil {
			_, err = index(rows)
		}
		var bad *RowError
		if !errors.As(err, &bad) || !strings.HasPrefix(err.Error(), want) {
			t.Errorf("%s: got %v, want %s", line, err, want)
		}
	}
}

func FuzzParse(f *testing.F) {
	f.Add("id,question,relation,value_in,governs,role,at_limit\na,q,>=,3.5,in,limit,pass\n")
	f.Add("id,relation,value_mm,governs,role,at_limit\nb,outside (a..b],75..230,mm,limit,pass/fail\n")
	f.Add("id,relation,governs,role,at_limit\nd,outside [a..b],none,limit,fail\n")
	f.Add("id,relation,value_in,governs,use,force\nc,=,26x20x4,in,parameter,need\n")
	f.Fuzz(func(t *testing.T, text string) {
		for _, parse := range []func(string) ([]Row, error){parseRules, parsePractice} {
			rows, err := parse(text)
			if err != nil {
				continue
			}
			for _, r := range rows {
				r.Outcome(1)
				r.AtLimit(1)
			}
		}
	})
}

func BenchmarkOfQuestion(b *testing.B) {
	if len(OfQuestion("ladder-steps")) < 20 {
		b.Fatal("rows are missing")
	}
	for b.Loop() {
		rows = OfQuestion("ladder-steps")
	}
}

var rows []Row
