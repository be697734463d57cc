package length_test

import (
	"strings"
	"testing"

	"bunkwright/room/length"
)

var (
	inches      = length.Context{Unit: length.Inches}
	millimetres = length.Context{Unit: length.Millimetres}
)

func in(f length.Field) length.Context { return length.Context{Unit: length.Inches, Field: f} }
func mm(f length.Field) length.Context { return length.Context{Unit: length.Millimetres, Field: f} }

// sixtyFourths of an inch in nanometres: 25.4 mm / 64, exactly.
func sixtyFourths(n int64) length.Length { return length.Length(n * 396_875) }

// TestValues holds texts that the rows of notations.csv have as neighbours. What they mean is worked out here by hand from
// the rule named (notation rules R1 to R15): inches are given in 64ths, metric in nanometres.
func TestValues(t *testing.T) {
	in64 := sixtyFourths
	for _, c := range []struct {
		text string
		ctx  length.Context
		want length.Length
	}{
		// R1: 5 ft 7-3/8 in is 67.375 in, 67.375 * 64 = 4312; 8 ft 0-1/2 in is 96.5 in, 6176.
		{`5' 7 3/8`, inches, in64(4312)},
		{`5'-7-3/8"`, inches, in64(4312)},
		{`5' - 7 3/8"`, inches, in64(4312)}, // dash with spaces on both sides, as on drawings
		{`5'- 7 3/8"`, inches, in64(4312)},
		{`5 FT. 7-3/8 IN.`, inches, in64(4312)},
		{`5 foot 7 3/8 inch`, inches, in64(4312)},
		{"5'\t7-3/8\"", inches, in64(4312)},
		{`67-3/8"`, millimetres, in64(4312)},
		{`5' 7.375"`, inches, in64(4312)},
		{`8' 1/2"`, inches, in64(6176)},
		{`8' .5"`, inches, in64(6176)},
		{`0'`, inches, 0},
		// R2
		{"67\u20113/8", inches, in64(4312)}, // non-breaking hyphen
		{"67\u20103/8 in", inches, in64(4312)},
		{`67-12/32`, inches, in64(4312)},
		// R3
		{`5 feet and 7 3/8 inches`, inches, in64(4312)},
		{`5 ft 7 and 3/8 in`, inches, in64(4312)},
		// R4
		{"67-\u215c", inches, in64(4312)},
		{"5\u2032\u20137\u215c\u2033", inches, in64(4312)},
		{"5\u2019 7\u215c\u2019\u2019", inches, in64(4312)},
		{"\u215b\u201d", inches, in64(8)},
		{"67\u00a0\u215c\u00a0in", inches, in64(4312)},
		// R5: 67.33333 in * 25.4 mm = 1710.266582 mm
		{`67.33333`, inches, 1_710_266_582},
		{`067.50`, inches, in64(4320)},
		{`0/8`, inches, 0},
		// R6
		{`2*(38+1/4)`, inches, in64(4896)},
		{`2*(3-1/2)`, inches, in64(448)},
		{`2*3 1/2`, inches, in64(448)},
		{`3-1/2*14`, inches, in64(3136)},
		{`(36+3/4) in`, millimetres, in64(2352)},
		{`36 + 3/4"`, inches, in64(2352)},
		{`5' + 7`, inches, in64(4288)},
		{`2*5'`, inches, in64(7680)},
		{`1 m + 2 cm`, inches, 1_020_000_000},
		{`5 ft + 7 cm`, inches, 1_594_000_000},
		// R9
		{`2440`, mm(length.RoomHeight), 2_440_000_000},
		{`24`, in(length.WallLength), in64(1536)},
		{`480`, in(length.WallLength), in64(30720)},
		{`5.08`, mm(length.BoardThickness), 5_080_000},
		{`12 in`, in(length.WallLength), in64(768)}, // a written unit is not doubted
		// R10
		{`1 m 700 mm`, millimetres, 1_700_000_000},
		{"12\u2009345.5 mm", inches, 12_345_500_000},
		{"1\u00a0700 Mm", inches, 1_700_000_000},
		{`1.7 metres`, inches, 1_700_000_000},
		// R11: 67.5 in is 4320
		{`67,5"`, millimetres, in64(4320)},
		{`1,7000 m`, millimetres, 1_700_000_000},
		// R17
		{`67 4/8`, inches, in64(4320)},
		{`67 32/64`, inches, in64(4320)},
	} {
		if got := length.Read(c.text, c.ctx); got.Outcome != length.Value || got.Value != c.want {
			t.Errorf("%q: %v %v, want %v: %s %s", c.text, got.Outcome, got.Value, c.want, got.Reason, got.Question)
		}
	}
}

// TestQuestions holds texts with more than one meaning, the rule that asks, and what the question must offer.
func TestQuestions(t *testing.T) {
	for _, c := range []struct {
		text, rule string
		ctx        length.Context
		offers     string
	}{
		{`67.333333`, "R5", inches, `67-21/64|67-11/32`},
		{`67 3 / 8`, "R5", inches, `67-3/8`},
		{`2*5'-7"`, "R6", inches, `134|113`},
		{`120 -3`, "R7", inches, `117|123`},
		{"12\u22121/2", "R7", inches, `11-1/2|12-1/2`}, // the true minus sign
		{`5' -7"`, "R7", inches, `53|67`},
		{`8' - 1/2"`, "R7", inches, `95-1/2|96-1/2`},
		{`5 - 7`, "R7", inches, `67`},
		{`5.10 ft`, "R8", inches, `61.2|70`},
		{`5.08'`, "R8", inches, `60.96|68`},
		{`5½ ft`, "R8", inches, `66|5-1/2`},
		{`5.5' 3"`, "R8", inches, `69`},
		{`8`, "R9", in(length.RoomHeight), `96`},
		{`244`, "R9", in(length.RoomHeight), `96.06299`},
		{`0`, "R9", in(length.WallLength), ``},
		{`67 3/8`, "R9", millimetres, `67-3/8|2.65256`},
		{`481`, "R9", in(length.WallLength), `189.37008`}, // 481 mm is no wall either,
		{`1 700 in`, "R10", inches, `1700`},
		{`67 170 cm`, "R10", inches, `26444.88189`},
		{`1 m 70`, "R18", inches, `66.92913`},
		{`1,700 mm`, "R11", millimetres, `0.06693|66.92913`},
		{`1.700,5 mm`, "R11", millimetres, `66.94882`},
		{`67,3/8`, "R11", inches, `67-3/8`},
		{`5 ft, 7 in`, "R11", inches, `67`},
		{`5-7-3/8`, "R13", inches, `67-3/8`},
		{`5 7"`, "R13", inches, `67`},
		{`5:07`, "R13", inches, `67`},
		{`5/11`, "R13", inches, `71`},
		{`5 and 7`, "R13", millimetres, `67`},
		{`5' 12"`, "R17", inches, `72`},
		{`9/8`, "R17", inches, `1-1/8|116`},
		{`67 3/10`, "R17", inches, `67-1/4|67-5/16`},
		{`5' 7 3/7"`, "R17", inches, `67-3/8|67-7/16`},
		{`67.3/8`, "R17", inches, `67-3/8`},
		{`67 in (170 cm)`, "R18", inches, `67|66.92913`},
		{`67" / 170 cm`, "R18", inches, `67|66.92913`},
		{`5 ft 7 in 170 cm`, "R18", inches, `67|66.92913`},
		{`67" 3/8`, "R18", inches, `67-3/8`},
		{`5' 7'`, "R18", inches, `67`},
		{`67 to 68 in`, "R18", inches, `67|68`},
		{`~67`, "R18", inches, `67`},
		{`0.33333333 mm`, "R5", inches, `0.01181|0.01575`}, // 0.3 or 0.4 mm
		{`67 68`, "R18", inches, `67|68`},
		{`5 7 3`, "R18", inches, `5|7|3`},
		{`67, 68`, "R11", inches, `67|68`},
		{`(5 ft) 7`, "R18", inches, `60|7`},
		{`1 m 170 cm`, "R18", inches, `106.29921`},
		{`1.5 m 20 cm`, "R18", inches, `66.92913`},
		{`1.234,5/8`, "R11", inches, ``},
		{`67 3/128`, "R17", inches, `67|67-1/16`},
		{`1/3 m`, "R17", inches, ``},
		{`120-3`, "R13", inches, `1443`},
		{`1700 - 5 mm`, "R7", millimetres, `66.73228`},
		{`67 or so`, "R18", inches, `67`},
		{`67 +/- 1/8`, "R18", inches, `67|1/8`},
		{`about 12 1/3`, "R17", inches, `12-5/16|12-3/8`}, // one question at a time
		{`36 + 10 mm`, "R18", inches, ``},
		{`6"`, "R19", near(length.Inches, 66, 78), `72|6`},
		{`6`, "R19", near(length.Inches, 66, 78), `72|6`},
	} {
		got := length.Read(c.text, c.ctx)
		if got.Outcome != length.Ask {
			t.Errorf("%q: %v %v %s, want a question", c.text, got.Outcome, got.Value, got.Reason)
			continue
		}
		checkWords(t, c.text, got, c.rule)
		if offers := inchList(got.Offers); offers != c.offers {
			t.Errorf("%q: offers %s, want %s (%s)", c.text, offers, c.offers, got.Question)
		}
	}
}

func near(u length.Unit, low, high length.Length) length.Context {
	return length.Context{Unit: u, Near: []length.Length{high * length.Inch, low * length.Inch}}
}

// inchList writes lengths in inches: fractions where exact, otherwise to five decimals.
func inchList(ls []length.Length) string {
	var out []string
	for _, l := range ls {
		text := strings.TrimSuffix(length.Exact(l, length.Inches), " in")
		if strings.HasSuffix(text, " mm") {
			text = strings.TrimSuffix(length.Exact(l.Round(254, length.Nearest), length.Inches), " in")
		}
		out = append(out, text)
	}
	return strings.Join(out, "|")
}

// TestNearStaysQuiet: a mark that fits its neighbours, or fits them no better the other way, is not asked about (R19).
func TestNearStaysQuiet(t *testing.T) {
	for text, ctx := range map[string]length.Context{
		`6"`:  near(length.Inches, 5, 6),
		`6'`:  near(length.Inches, 66, 78),
		`66"`: near(length.Inches, 66, 78),
		`20'`: near(length.Inches, 66, 78), // neither 240 nor 20 in fits
		`18`:  {Unit: length.Millimetres, Near: []length.Length{216 * length.Millimetre}},
	} {
		if got := length.Read(text, ctx); got.Outcome != length.Value {
			t.Errorf("%q: %v %s", text, got.Outcome, got.Question)
		}
	}
}

// TestRefusals holds what is no length (R12, R15, R16), with the words that say why.
func TestRefusals(t *testing.T) {
	for text, want := range map[string]string{
		"   ": "missing, not zero", "?": "no number", "about": "no number", "ft": "no number", "()": "no number",
		"twelve": "twelve", "67 yd": "yd", "67 and a half": `"a"`, "67 shy": "shy", "inf": "inf", "∞": "∞", "0x1F": "F",
		"-1e3": "exponent", "1E3": "exponent", "- 5": "not negative", "−5 mm": "not negative", "5 + -2": "belong",
		"67-": "not finished", "5'-": "not finished", "3/": "not finished", "5+": "not finished", "67.": "not finished",
		"67 or": "not finished", "(5') in": "order",
		"67 3/0": "zero", "0/0": "zero", "12 - 1/0": "zero", "/8": "belong", "+5": "belong", "67 3/8.5": "whole number",
		"36+3/4)": "not opened", "((36)": "not closed", "'5": "order", `6 in"`: "order", `6"'`: "order", `"5' 7""`: "order",
		"5 in 7 ft": "inches before feet", "70 cm 1 m": "centimetres before metres",
		"5 ft 7 mm": "feet and millimetres", "1 m 7 in": "metres and inches", "67 in 5 mm": "inches and millimetres",
		"5.7.3": "survey shorthand", "3.10.1 in": "survey shorthand", "1.2.3.4": "no number",
		"5' * 2'": "area", "1.5x5.5": "size of lumber", "5 by 7": "size of lumber", "x5.5": "size of lumber",
		"67 light light": "once", "67 light in": "once", "strong": "no number",
		"1000.001 m": "1 km", strings.Repeat("9", 150): "1 km", strings.Repeat("1+", 150) + "1": "too long",
		"5\u200b7": "U+200B", "67\x00": "U+0000", "67\xff": "not a text", "5ft.7in": "point",
	} {
		got := length.Read(text, inches)
		if got.Outcome != length.Refuse || !strings.Contains(got.Reason, want) || got.Rule == "" {
			t.Errorf("%q: %v %q %q, want a refusal with %q", text, got.Outcome, got.Reason, got.Question, want)
		}
	}
}

// TestRemarks: strong and heavy are +2/64, light -2/64, at either end and in any case (R14).
func TestRemarks(t *testing.T) {
	for text, want := range map[string]int{
		"67 strong": 2, `67-3/8" HEAVY`: 2, "strong 67 in": 2, "5' 7 light": -2, "67": 0,
	} {
		if got := length.Read(text, inches); got.Outcome != length.Value || got.Note64 != want {
			t.Errorf("%q: %v, remark %d, want %d", text, got.Outcome, got.Note64, want)
		}
	}
}

// TestUnstatedUnit: without a unit in the context a bare number is no length and a marked one is.
func TestUnstatedUnit(t *testing.T) {
	if got := length.Read("31-1/2 in", length.Context{}); got.Outcome != length.Value || got.Value != sixtyFourths(2016) {
		t.Errorf("31-1/2 in: %+v", got)
	}
	for _, text := range []string{"3", "67-3/8", "2*3"} {
		if got := length.Read(text, length.Context{}); got.Outcome != length.Refuse {
			t.Errorf("%q: %+v", text, got)
		}
	}
	if (length.Reading{}).Outcome != length.Refuse {
		t.Error("the zero reading must not be a value")
	}
}
